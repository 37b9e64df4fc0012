package price

import (
	"bytes"
	"strings"
	"testing"

	"studbay/plan/unit"
)

func TestCost(t *testing.T) {
	for _, tt := range []struct {
		name   string
		pack   int64
		per    int
		q      Quantity
		want   int64
		source string
	}{
		{"three connectors of a bag", 450, 10, Of(3), 135, "3 × 0.45"},
		{"a block of 22-1/2 in", 456, 96, OfLength(45*unit.Inch/2, unit.Inch), 107, "22.5 × 4.56 / 96 = 1.06875"},
		{"half a cent goes up", 1, 2, One, 1, "0.5 rounds to 1"},
		{"under half a cent is nothing", 1, 3, One, 0, "0.33 rounds to 0"},
		{"a foot of cable", 11500, 250, One, 46, "115.00 / 250"},
	} {
		p := Price{unit.Money{Cents: tt.pack, Currency: "USD"}, Of(tt.per)}
		if got := p.Cost(tt.q); got.Cents != tt.want {
			t.Errorf("%s: %d cents, want %d (%s)", tt.name, got.Cents, tt.want, tt.source)
		}
	}
}

func TestEachAndPacks(t *testing.T) {
	board := Price{unit.Money{Cents: 456}, Of(96)}
	if got := board.Each(); got != "0.0475" {
		t.Errorf("an inch is %s, want 4.56 / 96 = 0.0475", got)
	}
	bag := Price{unit.Money{Cents: 450}, Of(10)}
	if got := bag.Each(); got != "0.45" {
		t.Errorf("one of ten at 4.50 is %s", got)
	}
	for need, want := range map[int]int64{0: 0, 1: 1, 10: 1, 11: 2, 26: 3} {
		if got := bag.Packs(Of(need)); got != want {
			t.Errorf("%d take %d packs of ten, want %d", need, got, want)
		}
	}
}

func TestQuantity(t *testing.T) {
	for q, want := range map[Quantity]string{0: "0", One: "1", One * 45 / 2: "22.5", 1: "0.0001", OfLength(137*unit.Inch/16, unit.Inch): "8.5625"} {
		if got := q.String(); got != want {
			t.Errorf("%d is %s, want %s", q, got, want)
		}
	}
}

// TestTrialBook holds that our own prices are marked as what they are.
func TestTrialBook(t *testing.T) {
	b := Trial()
	if !b.Invented || b.Date == "" || !strings.Contains(b.Text().String(), "invented") {
		t.Errorf("%+v does not say that its prices are invented, and when", b)
	}
	for _, p := range All() {
		if p.Name.String() == "" || p.Unit == "" || p.Group == "" {
			t.Errorf("%+v lacks a name, unit or group", p)
		}
	}
}

// TestBookComesBack writes our book, which anyone may then change, and reads it.
func TestBookComesBack(t *testing.T) {
	var out bytes.Buffer
	if err := Write(&out, Trial()); err != nil {
		t.Fatal(err)
	}
	b, err := Read("prices.csv", &out)
	if err != nil {
		t.Fatal(err)
	}
	if b.Currency != "USD" || b.Date != Trial().Date || !b.Invented {
		t.Errorf("read back: %+v", b)
	}
	if !strings.Contains(b.Text().String(), "invented") {
		t.Errorf("%q does not say that its prices are invented", b.Text())
	}
	for _, p := range All() {
		want, had := Trial().Of(p.ID)
		got, has := b.Of(p.ID)
		if got != want || had != has {
			t.Errorf("%s: %v %v, written as %v %v", p.ID, got, has, want, had)
		}
	}
}

// What a book has a price of besides the parts of the table is written with them: a cable
// that the table has not, a box of the user's own.
func TestABookComesBackWithWhatNoTableHas(t *testing.T) {
	const text = "part,price,pack\ncable-4-3g,2.50,1\npn1-18,0.75,5\nyaaaaaaaa,4.00,1\n"
	b, err := Read("prices.csv", strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := Write(&out, b); err != nil {
		t.Fatal(err)
	}
	again, err := Read("prices.csv", &out)
	if err != nil {
		t.Fatal(err)
	}
	for _, id := range []string{"cable-4-3g", "pn1-18", "yaaaaaaaa"} {
		want, _ := b.Of(id)
		if got, ok := again.Of(id); !ok || got != want {
			t.Errorf("%s: %v, written as %v", id, got, want)
		}
	}
	if again.Invented {
		t.Error("a price that somebody said is called invented")
	}
}

func TestReadBook(t *testing.T) {
	b, err := Read("mine.csv", strings.NewReader("\ufeffprice,part,pack\r\n$4.5,cable-connector,10\r\n,staple,\r\n12,cable-8-3,25\r\n,,\r\n"))
	if err != nil {
		t.Fatal(err)
	}
	if p, ok := b.Of("cable-connector"); !ok || p.Pack.Cents != 450 || p.Per != Of(10) {
		t.Errorf("connector: %v %v", p, ok)
	}
	if _, ok := b.Of("staple"); ok {
		t.Error("an empty price is one")
	}
	if p, ok := b.Of("cable-8-3"); !ok || p.Pack.Cents != 1200 {
		t.Error("a cable that we have no price of has none")
	}
	if b.Invented {
		t.Error("the user's prices are said to be invented")
	}
	for _, tt := range []struct{ text, want string }{
		{"", "mine.csv:1: no line of titles"},
		{"part,cost\n", `mine.csv:1: cost: no such column`},
		{"part,pack\n", `mine.csv:1: the column "price" is missing`},
		{"part,price\nnail,1\n", `mine.csv:2: part: no part "nail"`},
		{"part,price\nstaple,1\nstaple,2\n", "mine.csv:3: part: staple stands on line 2 already"},
		{"part,price\nstaple,1.234\n", `mine.csv:2: price: "1.234" is no price`},
		{"part,price\nstaple,-1\n", `mine.csv:2: price: "-1" is no price`},
		{"part,price,pack\nstaple,1,0\n", `mine.csv:2: pack: "0" is not a whole number above zero`},
		{"part,price,currency\nstaple,1,USD\npatch,1,EUR\n", "mine.csv:3: currency: EUR after USD"},
		{"part,price,date\nstaple,1,yesterday\n", `mine.csv:2: date: "yesterday" is no day`},
		{"part,price\n,1\n", "mine.csv:2: part: empty"},
		{"part,price\n\"staple,1\n", "mine.csv:2"},
	} {
		if _, err := Read("mine.csv", strings.NewReader(tt.text)); err == nil || !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%q: %v, want %s", tt.text, err, tt.want)
		}
	}
}
