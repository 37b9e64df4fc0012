package takeoff

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestPartsInTheOrderOfTheBook sums every part there is, shuffled, and some that have no
// place in the book: by groups, in each as the book has them, then those without a place.
func TestPartsInTheOrderOfTheBook(t *testing.T) {
	var want []string
	for _, g := range price.Groups {
		for _, p := range price.All() {
			if p.Group == g {
				want = append(want, p.ID)
			}
		}
		switch g {
		case price.Cable:
			want = append(want, "cable-6-4", "cable-8-4")
		case price.Devices:
			want = append(want, "a thing unheard of", "some other thing")
		}
	}
	lines := []Line{
		{Part: new(price.OfDevice("some other thing"))}, {Part: new(price.OfDevice("a thing unheard of"))},
		{Part: new(price.OfCable(8, 4, true))}, {Part: new(price.OfCable(6, 4, true))},
	}
	for _, p := range price.All() {
		lines = append(lines, Line{Part: &p})
	}
	r := rand.New(rand.NewPCG(1, 1))
	r.Shuffle(len(lines), func(i, j int) { lines[i], lines[j] = lines[j], lines[i] })
	o := Opening{View: index.OpeningView{Opening: &plan.Opening{Tag: "A"}}, Lines: lines}
	var got []string
	for _, s := range Parts([]Opening{o}) {
		got = append(got, s.Part.ID)
	}
	if !slices.Equal(got, want) {
		t.Errorf("%q\nwant %q", got, want)
	}
}

// TestSumsOfParts: quantities and costs add up, each opening that takes a part is named.
func TestSumsOfParts(t *testing.T) {
	usd := func(cents int64) unit.Money { return unit.Money{Cents: cents, Currency: "USD"} }
	one := price.Price{Pack: usd(250), Per: 1}
	line := func(id string, n int, cents int64) Line {
		return Line{Part: new(price.OfDevice(id)), Quantity: price.Of(n), Price: one, Cost: usd(cents)}
	}
	of := func(tag string, minutes int, blocks int, cut Cut, lines ...Line) Opening {
		return Opening{View: index.OpeningView{Opening: &plan.Opening{Tag: tag}}, Lines: lines, Minutes: minutes, Blocks: make([]unit.Length, blocks), Cut: cut}
	}
	free := Line{Part: new(price.OfDevice("c")), Quantity: price.One}
	all := []Opening{of("A", 9, 1, CutBox, line("a", 1, 100), line("b", 2, 300)), of("B", 6, 2, CutBox, free, line("a", 3, 250)), of("C", 1, 0, NoCut)}
	sums := Parts(all)
	if len(sums) != 3 || sums[0].Quantity != price.Of(4) || sums[0].Cost != usd(350) || !slices.Equal(sums[0].Openings, []string{"A", "B"}) ||
		sums[1].Quantity != price.Of(2) || sums[1].Cost != usd(300) || !slices.Equal(sums[1].Openings, []string{"A"}) {
		t.Errorf("%+v, want 4 of a at 3.50 and 2 of b at 3", sums)
	}
	w := &Takeoff{Book: price.Trial(), Openings: all}
	if got := w.Unpriced(); len(got) != 1 || got[0].Part.ID != "c" {
		t.Errorf("without a price: %+v, want c", got)
	}
	if cuts := w.Cuts(); len(cuts) != 1 || cuts[CutBox] != 2 || w.Blocks() != 3 || w.Minutes() != 16 || w.Cost() != usd(650) {
		t.Errorf("%v, %d blocks, %d min, %v, want two outlines, 3, 16 and 6.50", cuts, w.Blocks(), w.Minutes(), w.Cost())
	}
	g := Group{Openings: []Opening{all[2], all[0], all[1]}}
	if g.Minutes() != 16 || g.Cost() != usd(650) {
		t.Errorf("a group of %d min at %v", g.Minutes(), g.Cost())
	}
	if got := all[0].Cost(); got != usd(400) {
		t.Errorf("the first costs %v, want 1 + 3", got)
	}
	if !(Line{Price: one}).HasPrice() || free.HasPrice() {
		t.Error("a pack of any size has a price, none has none")
	}
	// Three blocks of 50 in take a board of 96 each, though their sum is less than two.
	wood := Line{Part: new(price.Must(lumber)), Quantity: price.Of(150), Price: price.Price{Pack: usd(400), Per: price.Of(96)}}
	blocks := []unit.Length{50 * unit.Inch, 50 * unit.Inch, 50 * unit.Inch}
	w = &Takeoff{Book: price.Trial(), Openings: []Opening{{View: index.OpeningView{Opening: &plan.Opening{Tag: "A"}}, Lines: []Line{wood}, Blocks: blocks}}}
	if got := w.Shopping(); len(got) != 1 || got[0].Packs != 3 || got[0].Pay != usd(1200) {
		t.Errorf("three blocks: %+v, want three boards", got)
	}
	if got := Pay([]Buy{{Pay: usd(250)}, {Pay: usd(99)}}, usd(0)); got != usd(349) {
		t.Errorf("to pay %v, want 2.50 + .99", got)
	}
}

// TestSpares: a tenth on top in whole pieces, of what is not bought exactly.
func TestSpares(t *testing.T) {
	for _, tt := range []struct {
		part string
		need price.Quantity
		want int
	}{
		{"staple", price.Of(1), 1}, {"staple", price.Of(10), 1}, {"staple", price.Of(10) + 1, 2}, {"staple", price.Of(11), 2},
		{"staple", price.Of(20), 2}, {"staple", price.Of(20) + 1, 3}, {"plate-1g", price.Of(10), 1}, {lumber, price.Of(10), 0},
	} {
		if got := spare(price.Must(tt.part), tt.need); got != price.Of(tt.want) {
			t.Errorf("%s %s: %s on top, want %d", tt.need, tt.part, got, tt.want)
		}
	}
	if got := spare(price.OfDevice("duplex receptacle"), price.Of(10)); got != 0 {
		t.Errorf("%s receptacles on top, want none", got)
	}
}

// TestCircuitsInOrder: by the first space they take, then what has none or too great a one,
// by the text.
func TestCircuitsInOrder(t *testing.T) {
	want := []string{"0", "1 A", "2", "9", "10/12", "10:1", "10A", "19", "90", "700000000", "99999999999999999999", "A", "B"}
	for i, a := range want {
		for k, b := range want {
			if got := byNumber(&plan.Circuit{Number: a}, &plan.Circuit{Number: b}); got != cmp.Compare(i, k) {
				t.Errorf("%s and %s: %d, want %d", a, b, got, cmp.Compare(i, k))
			}
		}
	}
}

// TestSameParts: of the same box and the same things on it, however that is written; what the
// catalogue has not is compared by its names.
func TestSameParts(t *testing.T) {
	marked := unit.Volume(1)
	by := func(box string, parts ...string) (a plan.Assembly) {
		a.Box = box
		for _, p := range parts {
			a.Parts = append(a.Parts, plan.AssemblyPart{Part: p})
		}
		return a
	}
	for _, tt := range []struct {
		name string
		a, b plan.Assembly
		want bool
	}{
		{"one code", plan.Assembly{Code: "SQ3"}, plan.Assembly{Code: "SQ3"}, true},
		{"another code", plan.Assembly{Code: "SQ3"}, plan.Assembly{Code: "PN2"}, false},
		{"a code and its parts", plan.Assembly{Code: "SQ3"}, by("sq4-2.125", "ring4-1g-0.5"), true},
		{"another ring", plan.Assembly{Code: "SQ3"}, by("sq4-2.125", "ring4-1g-0.75"), false},
		{"another box under the ring", plan.Assembly{Code: "SQ3"}, by("sq4-1.5", "ring4-1g-0.5"), false},
		{"no ring", plan.Assembly{Code: "SQ3"}, by("sq4-2.125"), false},
		{"another mark", by("sq4-2.125"), plan.Assembly{Box: "sq4-2.125", Marked: &marked}, true},
		{"a code nobody knows, the same", plan.Assembly{Code: "X1"}, plan.Assembly{Code: "X1"}, true},
		{"codes nobody knows", plan.Assembly{Code: "X1"}, plan.Assembly{Code: "X2"}, false},
		{"a box nobody knows, the same", by("x"), by("x"), true},
		{"boxes nobody knows", by("x"), by("y"), false},
		{"boxes nobody knows of one code", plan.Assembly{Code: "X", Box: "x"}, plan.Assembly{Code: "X", Box: "y"}, false},
		{"a box that is known, and a code that is not", by("sq4-2.125"), plan.Assembly{Code: "X1"}, false},
		{"nothing and nothing", plan.Assembly{}, plan.Assembly{}, true},
		{"nothing and a box", plan.Assembly{}, plan.Assembly{Code: "PN2"}, false},
	} {
		if got := SameParts(tt.a, tt.b); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
		if got := SameParts(tt.b, tt.a); got != tt.want {
			t.Errorf("%s, the other way: %v, want %v", tt.name, got, tt.want)
		}
	}
}
