package price

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/iotest"

	"studbay/plan"
	"studbay/plan/unit"
)

func TestABookSaysWhatItIs(t *testing.T) {
	for _, tt := range []struct {
		book Book
		want string
	}{
		{Book{Name: "mine.csv"}, "mine.csv"},
		{Book{Name: "mine.csv", Date: "2026-05-01"}, "mine.csv of 2026-05-01"},
		{Book{Name: "mine.csv", Invented: true}, "mine.csv, with invented prices"},
		{Book{Name: "mine.csv", Date: "2026-05-01", Invented: true}, "mine.csv of 2026-05-01, with invented prices"},
	} {
		if got := tt.book.Text().String(); got != tt.want {
			t.Errorf("%+v is called %q, want %q", tt.book, got, tt.want)
		}
	}
	if got := Trial().Text().String(); got != "trial prices of 2026-11-12, invented" {
		t.Errorf("ours is called %q", got)
	}
	if z := (&Book{Currency: "EUR"}).Zero(); z != (unit.Money{Currency: "EUR"}) {
		t.Errorf("no money is %+v", z)
	}
}

// TestLinesOfABook: a part with a price, one of a pack, one without; RFC 4180 has commas
// between cells and quotes round those that hold one.
func TestLinesOfABook(t *testing.T) {
	b := &Book{Date: "2026-05-01", Currency: "EUR", Invented: true, prices: map[string]Price{
		"pn1-18": {unit.Money{Cents: 60}, One}, "cable-connector": {unit.Money{Cents: 450}, Of(10)},
	}}
	var out bytes.Buffer
	if err := Write(&out, b); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(out.String(), "\n")
	if lines[0] != "part,price,pack,unit,currency,date,name,note" {
		t.Errorf("titles %q", lines[0])
	}
	for _, want := range []string{
		`pn1-18,0.60,1,each,EUR,2026-05-01,"Plastic nail-on, one gang, 18.0",invented`,
		`pn1-20,,1,each,EUR,2026-05-01,"Plastic nail-on, one gang, 20.0",`,
	} {
		if !strings.Contains(out.String(), "\n"+want+"\n") {
			t.Errorf("no line %s", want)
		}
	}
	if !strings.Contains(out.String(), "\ncable-connector,4.50,10,") {
		t.Error("the pack of ten is not written")
	}
	b.Invented = false
	out.Reset()
	if err := Write(&out, b); err != nil || strings.Contains(out.String(), "invented") {
		t.Errorf("%v: a book of real prices says invented", err)
	}
	full := errors.New("disk full")
	if err := Write(failing{full}, b); !errors.Is(err, full) {
		t.Errorf("on a full disk: %v", err)
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

// TestHowABookIsRead: titles in any order and any case, what is missing at the end of a line
// is empty, the latest day holds, and a price is in cents.
func TestHowABookIsRead(t *testing.T) {
	read := func(text string) *Book {
		t.Helper()
		b, err := Read("mine.csv", strings.NewReader(text))
		if err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		return b
	}
	b := read(" Part ,PRICE,date,currency,note,pack\nstaple,$12.5,2026-05-02,EUR,invented,1000000\npatch,3,2026-05-01\n\ncable-connector,0.07,,EUR,\nnail-plate,999999999999.99\nground-screw,,2026-04-01,,invented\n")
	if b.Name != "mine.csv" || b.Date != "2026-05-02" || b.Currency != "EUR" || !b.Invented {
		t.Errorf("%+v", b)
	}
	for id, want := range map[string]Price{
		"staple":          {unit.Money{Cents: 1250, Currency: "EUR"}, Of(1_000_000)},
		"patch":           {unit.Money{Cents: 300, Currency: "EUR"}, One},
		"cable-connector": {unit.Money{Cents: 7, Currency: "EUR"}, One},
		"nail-plate":      {unit.Money{Cents: 99_999_999_999_999, Currency: "EUR"}, One},
	} {
		if got, ok := b.Of(id); !ok || got != want {
			t.Errorf("%s costs %+v, %v, want %+v", id, got, ok, want)
		}
	}
	if _, ok := b.Of("ground-screw"); ok {
		t.Error("an empty price is one")
	}
	if b := read("part,price\nstaple,4.\n"); b.Currency != "USD" || b.Invented || b.prices["staple"].Pack != (unit.Money{Cents: 400, Currency: "USD"}) {
		t.Errorf("nothing said: %+v", b)
	}
	if b := read("part,price,note\nstaple,,invented\n"); b.Invented {
		t.Error("a line without a price makes the prices invented ones")
	}
	for _, tt := range []struct{ text, want string }{
		{"part,price,Part\n", "mine.csv:1: part: it comes twice"},
		{"price\n", `mine.csv:1: the column "part" is missing`},
		{"part,price\nstaple,1000000000000.00\n", "mine.csv:2: price: "},
		{"part,price\nstaple,9999999999999\n", "mine.csv:2: price: "},
		{"part,price\nstaple,.50\n", "mine.csv:2: price: "},
		{"part,price\nstaple,$\n", "mine.csv:2: price: "},
		{"part,price\nstaple,1.x\n", "mine.csv:2: price: "},
		{"part,price\nstaple,1.2x\n", "mine.csv:2: price: "},
		{"part,price,pack\nstaple,1,1000001\n", "mine.csv:2: pack: "},
		{"part,price,pack\nstaple,1,2.5\n", "mine.csv:2: pack: "},
		{"part,price,note\n,,mine\n", "mine.csv:2: part: empty"},
		{"part,price\nstaple,1\npatch,\"1\n", "mine.csv:3: extraneous"},
		{"part,price\nstaple,1\n\ncable,1\n", `mine.csv:4: part: no part "cable"`},
		{"part,price\nstaple,\nstaple,2\n", "mine.csv:3: part: staple stands on line 2 already"},
	} {
		if _, err := Read("mine.csv", strings.NewReader(tt.text)); err == nil || !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%q: %v, want %s", tt.text, err, tt.want)
		}
	}
	torn := errors.New("torn off")
	if _, err := Read("mine.csv", iotest.ErrReader(torn)); !errors.Is(err, torn) || !strings.HasPrefix(err.Error(), "mine.csv: ") {
		t.Errorf("a file that cannot be read: %v", err)
	}
}

func TestQuantitiesAndSums(t *testing.T) {
	for q, want := range map[Quantity]int64{0: 0, 1: 1, One: 1, One + 1: 2, 2*One - 1: 2} {
		if got := q.RoundedUp(); got != want {
			t.Errorf("%s rounds up to %d, want %d", q, got, want)
		}
	}
	if got := (-One * 5 / 4).String(); got != "-1.25" {
		t.Errorf("less than none is %s, want -1.25", got)
	}
	if got := (One * 3 / 2).Times(Of(5)); got != One*15/2 {
		t.Errorf("1.5 × 5 = %s, want 7.5", got)
	}
	if got := OfLength(unit.Inch+1, unit.Inch); got != One+1 {
		t.Errorf("a hair over an inch is %s", got)
	}
	for _, tt := range []struct {
		price Price
		want  string
	}{
		{Price{unit.Money{Cents: 100}, Of(3)}, "0.333333"},
		{Price{unit.Money{Cents: 200}, Of(1)}, "2.00"},
		{Price{unit.Money{Cents: 1}, Of(1000)}, "0.00001"},
	} {
		if got := tt.price.Each(); string(got) != tt.want {
			t.Errorf("one of %+v is %s, want %s", tt.price, got, tt.want)
		}
	}
	if got := Amount(unit.Money{Cents: 1205}); got != "12.05" {
		t.Errorf("1205 cents are %s", got)
	}
	if got := (Quantity(One * 9 / 4)).Decimal(); got != "2.25" {
		t.Errorf("2-1/4 is %s", got)
	}
}

// TestALineOfItsOwn: each price has its own day and word; a line that is changed leaves the others
// as they were, the book is as old as its latest price and invented while any price is; one
// without a pack has none.
func TestALineOfItsOwn(t *testing.T) {
	old, err := Read("mine.csv", strings.NewReader("part,price,pack,date,note,currency\nstaple,4.00,100,2026-05-01,invented,EUR\npatch,3.00,,2026-06-01,,EUR\n"))
	if err != nil {
		t.Fatal(err)
	}
	now := old.With("staple", Entry{Price: Price{unit.Money{Cents: 425}, Of(50)}, Date: "2026-07-01"})
	if e, ok := now.Entry("staple"); !ok || e != (Entry{Price{unit.Money{Cents: 425, Currency: "EUR"}, Of(50)}, "2026-07-01", false}) {
		t.Errorf("the line that was changed: %+v", e)
	}
	if e, _ := now.Entry("patch"); e != (Entry{Price{unit.Money{Cents: 300, Currency: "EUR"}, One}, "2026-06-01", false}) {
		t.Errorf("the other line: %+v", e)
	}
	if now.Date != "2026-07-01" || now.Invented || !old.Invented || old.Date != "2026-06-01" {
		t.Errorf("now %+v, before %+v", now, old)
	}
	if e, _ := old.Entry("staple"); e.Pack.Cents != 400 || !e.Invented || e.Date != "2026-05-01" {
		t.Errorf("the book before was written: %+v", e)
	}
	none := now.With("staple", Entry{Date: "2026-08-01"})
	if _, ok := none.Entry("staple"); ok || none.Date != "2026-06-01" {
		t.Errorf("without a pack: %+v", none)
	}
	if e, ok := Trial().Entry("staple"); !ok || !e.Invented || e.Date != "2026-11-12" {
		t.Errorf("ours: %+v", e)
	}
	if trial := Trial().With("staple", Entry{Price: Price{unit.Money{Cents: 425}, Of(50)}, Date: "2027-01-02"}); !trial.Invented || trial.Text().String() != "trial prices of 2027-01-02, with invented prices" {
		t.Errorf("ours with one price changed: %s", trial.Text())
	}
}

// TestABookWithRecipes: a book brings recipes of its own only once one was changed; they are
// written and read back, and a line of them has no price.
func TestABookWithRecipes(t *testing.T) {
	if Trial().HasOwnRecipes() || len(Trial().Recipes()) == 0 {
		t.Error("our book brings recipes of its own, or has none")
	}
	var plain, own bytes.Buffer
	changed := Trial().WithStep(11, 3, 7) // two screws a box on a bracket, no minutes
	if err := errors.Join(Write(&plain, Trial()), Write(&own, changed)); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(plain.String(), "nail-on gangs") || !strings.Contains(own.String(), "\nbox-screw,,,,,,\"Wood screw, 1-1/4\",common practice,bracket,box,3,7\n") {
		t.Errorf("it is written %s", own.String())
	}
	back, err := Read("mine.csv", &own)
	if err != nil {
		t.Fatal(err)
	}
	if !back.HasOwnRecipes() || len(back.Recipes()) != len(Trial().Recipes()) {
		t.Fatalf("%d steps come back", len(back.Recipes()))
	}
	for i, s := range back.Recipes() {
		want := changed.Recipes()[i]
		if s.When != want.When || s.Per != want.Per || s.Part != want.Part || s.Count != want.Count || s.Minutes != want.Minutes || s.Source != want.Source {
			t.Errorf("step %d: %+v, want %+v", i, s, want)
		}
	}
	if Trial().Recipes()[11].Count != 2 {
		t.Error("our own recipes were written")
	}
	for _, tt := range []struct{ text, want string }{
		{"part,price,per,count\nstaple,1,box,1\n", "mine.csv:2: price: a line of a recipe has no price"},
		{"part,price,per,count\nstaple,,yoke,1\n", "mine.csv:2: per: "},
	} {
		if _, err := Read("mine.csv", strings.NewReader(tt.text)); err == nil || !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%q: %v, want %s", tt.text, err, tt.want)
		}
	}
	if b, err := Read("mine.csv", strings.NewReader("part,price,per,count\nstaple,,cable,0\nstaple,4,,\n")); err != nil || b.Recipes()[0].Count != 0 || len(b.Recipes()) != 1 {
		t.Errorf("none of a part: %v", err)
	}
}

// TestWhichBookAPlanNames: by its way from the plan where it lies beside or below, else by its
// whole path; a plan that names none has ours.
func TestWhichBookAPlanNames(t *testing.T) {
	home := t.TempDir()
	planFile := filepath.Join(home, "house", "a.studbay")
	mine := filepath.Join(home, "house", "lists", "mine.csv")
	for _, tt := range []struct{ plan, book, name string }{
		{planFile, mine, "lists/mine.csv"},
		{planFile, filepath.Join(home, "mine.csv"), filepath.Join(home, "mine.csv")},
		{"", mine, mine},
		{planFile, "", ""},
	} {
		name := NameIn(tt.plan, tt.book)
		if name != tt.name || Beside(tt.plan, name) != tt.book {
			t.Errorf("%s of %s is named %q and found at %q", tt.book, tt.plan, name, Beside(tt.plan, name))
		}
	}
	if err := errors.Join(os.MkdirAll(filepath.Dir(mine), 0o700), os.WriteFile(mine, []byte("part,price\nstaple,1.25\n"), 0o600)); err != nil {
		t.Fatal(err)
	}
	b, err := OfPlan(planFile, &plan.Header{Prices: "lists/mine.csv"})
	if err != nil || b.Name != "lists/mine.csv" {
		t.Fatalf("%+v, %v", b, err)
	}
	for _, h := range []*plan.Header{nil, {}} {
		if b, err := OfPlan(planFile, h); err != nil || b != Trial() {
			t.Errorf("without a name: %+v, %v", b, err)
		}
	}
	for _, name := range []string{"none.csv", "lists"} {
		if _, err := OfPlan(planFile, &plan.Header{Prices: name}); err == nil {
			t.Errorf("%s was read", name)
		}
	}
	large := filepath.Join(home, "house", "large.csv")
	if err := os.WriteFile(large, bytes.Repeat([]byte("x"), mostBytes+1), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := ReadSmall(large); err == nil || !strings.Contains(err.Error(), "too large") {
		t.Errorf("a large one: %v", err)
	}
}
