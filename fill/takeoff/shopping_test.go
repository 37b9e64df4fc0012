package takeoff_test

import (
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/price"
	"studbay/fill/ruletest"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestShoppingByHand buys for eleven steel boxes and a block: spares and packs on paper.
func TestShoppingByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 300, 120)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2}
	}
	for i := range 11 {
		r.Opening("duplex", r.On(0, 18.75+float64(i)*16), func(o *plan.Opening) {
			o.Assembly = plan.Assembly{Code: "SQ3"}
			o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}, {What: plan.ItemDevice, Size: 12}}}
		})
	}
	r.Opening("wall-light", r.On(2, 24))
	p := h.Made()
	whole := taker(t, p).Whole(p)
	got := map[string]takeoff.Buy{}
	for _, b := range whole.Shopping() {
		got[b.Part.ID] = b
	}
	for _, tt := range []struct {
		part         string
		need, spare  string
		packs, cents int64
		source       string
	}{
		{"sq4-2.125", "11", "2", 13, 13 * 260, "a tenth of 11, up"},
		{"cable-connector", "22", "3", 3, 3 * 450, "25 in bags of 10"},
		{"ground-screw", "11", "2", 2, 2 * 380, "13 in bags of 10"},
		{"duplex receptacle", "11", "0", 11, 11 * 185, "devices exactly"},
		{"plate-1g", "11", "2", 13, 13 * 60, "plates with a tenth"},
		{"block-2x4", "14.5", "0", 1, 456, "one board"},
		{"block-screw", "4", "1", 1, 300, "a pack of 50"},
	} {
		b := got[tt.part]
		if b.Quantity.String() != tt.need || b.Spare.String() != tt.spare || b.Packs != tt.packs || b.Pay.Cents != tt.cents {
			t.Errorf("%s: need %s, spare %s, %d packs at %d; want %s, %s, %d, %d (%s)", tt.part, b.Quantity, b.Spare, b.Packs, b.Pay.Cents, tt.need, tt.spare, tt.packs, tt.cents, tt.source)
		}
	}
	if b := got["luminaire"]; b.HasPrice() || b.Packs != 0 {
		t.Errorf("a luminaire without a price: %+v", b)
	}
}

// TestBoardsAsTheBookSellsThem: blocks of 14-1/2 in are cut six from a board of 96 in (6 × 14-1/2
// and as many kerfs of 1/8 are 87-3/4) and twelve from one of 192 in (175-1/2).
func TestBoardsAsTheBookSellsThem(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 400, 120)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2}
	}
	for i := range 12 {
		r.Opening("wall-light", r.On(0, 24+float64(i)*32))
	}
	p := h.Made()
	for _, tt := range []struct {
		book   string
		board  unit.Length
		boards int
	}{
		{"part,price,pack\nblock-2x4,4.56,96\n", 96 * unit.Inch, 2},
		{"part,price,pack\nblock-2x4,9.80,192\n", 192 * unit.Inch, 1},
		{"part,price\nstaple,1\n", 96 * unit.Inch, 2}, // no price: studs as they are usual
	} {
		book, err := price.Read("mine.csv", strings.NewReader(tt.book))
		if err != nil {
			t.Fatal(err)
		}
		fig, err := fill.FiguresOf(p)
		if err != nil {
			t.Fatal(err)
		}
		list := takeoff.NewTaker(index.New(p), fig, book).Whole(p).CutList()
		if list.Stock.Board != tt.board || len(list.Boards) != tt.boards {
			t.Errorf("%q: %d boards of %v, want %d of %v", tt.book, len(list.Boards), list.Stock.Board, tt.boards, tt.board)
		}
	}
}

// TestPanelInOrder lists circuits by the first space they take.
func TestPanelInOrder(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 300, 120)
	number := func(text string) func(*plan.Circuit) { return func(c *plan.Circuit) { c.Number = text } }
	ten, two := h.Circuit(15, number("10/12")), h.Circuit(20, number("2"))
	a := r.Opening("duplex", r.On(0, 24), ruletest.On(two))
	b := r.Opening("duplex", r.On(0, 48), ruletest.On(two))
	r.Opening("duplex", r.On(0, 72), ruletest.On(two), ruletest.Removed)
	r.Opening("duplex", r.On(0, 96), ruletest.On(ten))
	h.Cable(a.ID, b.ID, 12, 2, two)
	h.Cable(b.ID, a.ID, 14, 2, two)
	got := takeoff.Panel(h.Made())
	if len(got) != 2 || got[0].Circuit != two || got[0].Openings != 2 || got[0].Wire != 14 || got[1].Openings != 1 || got[1].Wire != 0 {
		t.Errorf("%+v", got)
	}
}
