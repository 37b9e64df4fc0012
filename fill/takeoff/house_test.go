package takeoff_test

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// framed says of all walls of a room that studs of a depth stand at every 16 in.
func framed(r *ruletest.Room, deep float64) *ruletest.Room {
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: ruletest.In(deep)}
		s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: unit.Inch / 2}}
	}
	return r
}

func code(c string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: c} }
}

// want holds an opening's parts to those that are written, in any order.
func want(t *testing.T, name string, got takeoff.Opening, parts ...string) {
	t.Helper()
	var all []string
	for _, l := range got.Lines {
		all = append(all, l.Quantity.String()+" "+l.Part.ID)
	}
	slices.Sort(all)
	slices.Sort(parts)
	if !slices.Equal(all, parts) {
		t.Errorf("%s: %q, want %q", name, all, parts)
	}
}

// TestWhatAnOpeningTakes of cables, plates, blocks and devices, by the table of recipes.
func TestWhatAnOpeningTakes(t *testing.T) {
	h := ruletest.New(t)
	// Studs of 2-1/2 in leave a hole of 3/4 in 7/8 in to either edge: less than the 1-1/4 of
	// NEC 300.4(A)(1). They stand at 16, 32, 48 ...
	r := framed(h.Square(plan.UseBedroom, 0, 0, 160, 120), 2.5)
	a := r.Opening("duplex", r.On(0, 24), code("OW2"))
	b, c := r.Opening("duplex", r.On(0, 56), code("OW2")), r.Opening("duplex", r.On(0, 72), code("OW2"))
	old := r.Opening("duplex", r.On(2, 24), ruletest.Existing, code("PN2"), func(o *plan.Opening) {
		o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}, {What: plan.ItemDevice, Size: 12}}}
	})
	gone := r.Opening("duplex", r.On(2, 56), ruletest.Removed, code("PN2"))
	h.Cable(a.ID, b.ID, 12, 2, nil)
	h.Cable(a.ID, c.ID, 12, 2, nil)
	h.Cable(c.ID, old.ID, 12, 2, nil)
	h.Cable(b.ID, old.ID, 12, 2, nil)
	h.Cable(old.ID, gone.ID, 12, 2, nil)
	p := h.Made()
	took := taker(t, p).Of
	// From 24 to 56 two studs, from 24 to 72 three: two plates each, on the side that the
	// cables begin; they are paid where they end. A foot more at both ends and 8 in up and down.
	want(t, "where two begin", took(a), "1 ow1-20", "1 plate-1g", "1 duplex receptacle", "10 nail-plate", "3 wire-connector")
	// 32 + 16 + 24 = 72 in, 6 ft; b's own cable goes to the other wall.
	want(t, "where one ends and one begins", took(b), "1 ow1-20", "1 plate-1g", "1 duplex receptacle", "6 cable-12-2", "3 wire-connector")
	// To what is there only cables are bought, round the room: from 56 to the corner 104, the
	// wall 120, on to the box 24 and 40 for the ends: 288 in, 24 ft; from 72, 16 less: 272 in,
	// 22.67 and so 23 ft: by one line.
	want(t, "there already", took(old), "47 cable-12-2")
	if fill := took(old).Fill; len(fill.Contents.Present()) == 0 {
		t.Error("of a box that is there nobody works out how full it is")
	}
	want(t, "one that goes, with a cable in it", took(gone), "1 blank-1g")

	// As a copy: the old box in another is bought anew, with all that goes with it.
	copied := *old
	copied.Assembly = plan.Assembly{Code: "OW2"}
	want(t, "there already, in another box", took(&copied), "1 ow1-20", "1 plate-1g", "1 duplex receptacle", "47 cable-12-2", "3 wire-connector")
	other := *b
	other.Assembly = plan.Assembly{Code: "SQ3"}
	if got := took(&other); got.View.Opening.Assembly.Code != "SQ3" || !slices.ContainsFunc(got.Lines, func(l takeoff.Line) bool { return l.Part.ID == "sq4-2.125" }) || got.Cut != takeoff.CutRing {
		t.Errorf("a copy in another box: %+v", got)
	}
	unknown := *b
	unknown.Assembly = plan.Assembly{Code: "X1"}
	want(t, "in a box nobody knows", took(&unknown), "1 duplex receptacle", "6 cable-12-2")
	unheard := plan.Opening{ID: b.ID, Kind: "unheard-of", At: b.At, Status: plan.StatusNew}
	want(t, "of a kind nobody knows", took(&unheard), "6 cable-12-2")
	want(t, "one that is not in the plan", took(&plan.Opening{ID: "onowhere", Kind: "duplex", Assembly: plan.Assembly{Code: "PN2"}}))
	h = ruletest.New(t)
	r = framed(h.Square(plan.UseBedroom, 0, 0, 160, 120), 3.5)
	junction := r.Opening("junction", r.On(0, 17.875))
	strange := r.Opening("duplex", r.On(2, 24), ruletest.Existing, code("X1"))
	next := taker(t, h.Made())
	for _, l := range next.Of(junction).Lines {
		if l.Part.ID == "" {
			t.Error("a junction box has a device without a name")
		}
	}
	if got := next.Of(strange); len(got.Lines) != 0 || len(got.Fill.Contents.Present()) != 0 {
		t.Errorf("there already, in a box nobody knows: %+v", got)
	}
}

// TestBlocksOverhead: between joists at 16 in the bay is 14-1/2 in; a box at one is held by it.
func TestBlocksOverhead(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 160, 120)
	r.Joists = plan.Joists{Along: r.Sides[0].ID, Spacing: ruletest.In(16)}
	between, at := r.Opening("ceiling-light", r.Ceiling(60, 40), code("RD1")), r.Opening("ceiling-light", r.Ceiling(60, 48), code("RD1"))
	front := r.Opening("duplex", plan.Anchor{Host: r.Island(100, 80, 40, 30).ID, Part: plan.PartFront, Along: ruletest.In(20)}, code("PN2"))
	taking := taker(t, h.Made())
	for _, tt := range []struct {
		name string
		of   *plan.Opening
		want []unit.Length
	}{{"between joists", between, []unit.Length{ruletest.In(14.5)}}, {"at a joist", at, nil}, {"in a cabinet", front, nil}} {
		if got := taking.Of(tt.of).Blocks; !slices.Equal(got, tt.want) {
			t.Errorf("%s: blocks %v, want %v (16 - 1-1/2)", tt.name, got, tt.want)
		}
	}
	// A wide box at a stud takes a block to the next: the bay less the box.
	h = ruletest.New(t)
	r = framed(h.Square(plan.UseBedroom, 0, 0, 160, 120), 3.5)
	wide := r.Opening("switch", r.On(0, 0), code("PN5"), func(o *plan.Opening) { o.Gangs = 3 })
	width := frame.FrontOf(wide).Width
	wide.At.Along = ruletest.In(16.75) + width/2
	if got := taker(t, h.Made()).Of(wide).Blocks; len(got) != 1 || got[0] != ruletest.In(14.5)-width {
		t.Errorf("a box %v wide: blocks %v, want the rest of 14-1/2 in", width.Inches(16), got)
	}
}

// TestGroupsInOrder: rooms and levels as they come, circuits by their numbers, what has none
// last.
func TestGroupsInOrder(t *testing.T) {
	h := ruletest.New(t)
	ten, two := h.Circuit(15, func(c *plan.Circuit) { c.Number, c.Name = "10", "Lights" }), h.Circuit(20, func(c *plan.Circuit) { c.Number = "2" })
	den, attic := h.Square(plan.UseDen, 0, 0, 120, 120), h.Square(plan.UseAttic, 200, 0, 120, 120)
	up := h.RoomOn(h.Level("Upper"), plan.UseBath, 0, 0, 120, 0, 120, 120, 0, 120)
	den.Opening("duplex", den.On(0, 60), ruletest.Tagged("D10"), code("SQ3"))
	den.Opening("duplex", den.On(0, 20), ruletest.Tagged("D2"), ruletest.On(ten), code("PN2"))
	attic.Opening("thermostat", attic.On(0, 20), ruletest.Tagged("A1"), ruletest.On(two))
	up.Opening("duplex", up.On(0, 20), ruletest.Tagged("A1"), ruletest.On(ten), code("PN2"))
	up.Opening("duplex", plan.OnFace("sgone", 0), ruletest.Tagged("N1"), code("X1"))
	p := h.Made()
	p.Levels[0], p.Levels[1] = p.Levels[1], p.Levels[0] // the upper one first
	whole := taker(t, p).Whole(p)
	for _, tt := range []struct {
		by   takeoff.By
		want string
	}{
		{takeoff.ByPlan, "whole house: N1 A1 A1 D2 D10"},
		{takeoff.ByLevel, "Upper: N1 A1; Ground floor: A1 D2 D10"},
		{takeoff.ByRoom, "in no room: N1; bath: A1; attic: A1; den: D2 D10"},
		{takeoff.ByCircuit, "2 : A1; 10 Lights: A1 D2; on no circuit: N1 D10"},
	} {
		var all []string
		for _, g := range whole.Groups(tt.by) {
			text := g.Name.String() + ":"
			for _, o := range g.Openings {
				text += " " + o.View.Opening.Tag
			}
			all = append(all, text)
		}
		if got := strings.Join(all, "; "); got != tt.want {
			t.Errorf("by %q: %s, want %s", tt.by, got, tt.want)
		}
	}
	groups := whole.Groups(takeoff.ByAssembly)
	last := groups[len(groups)-1]
	if len(groups) != 4 || len(last.Openings) != 1 || last.Openings[0].View.Opening.Tag != "A1" || last.Name.String() != "no box of its own" {
		t.Errorf("by box: %d groups, %s last", len(groups), last.Name)
	}
	for _, name := range []string{"room", "Circuit", "ASSEMBLY"} {
		if by, err := takeoff.ByNamed(name); err != nil || string(by) != strings.ToLower(name) {
			t.Errorf("%s: %q, %v", name, by, err)
		}
	}
	for _, name := range []string{"", "level", "rooms"} {
		if by, err := takeoff.ByNamed(name); err == nil || by != "" || !strings.Contains(err.Error(), "room, circuit, assembly") {
			t.Errorf("%q: %q, %v, want the names there are", name, by, err)
		}
	}
}

// TestCablesInOrder: by their kind, then from tag to tag; a panel has none, and a cable to
// nowhere is left out.
func TestCablesInOrder(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 160, 120)
	a, b, c := r.Opening("duplex", r.On(0, 20), ruletest.Tagged("A2")), r.Opening("duplex", r.On(0, 60), ruletest.Tagged("A10")), r.Opening("duplex", r.On(0, 90), ruletest.Tagged("B1"))
	panel := r.Fixture(plan.FixturePanel, 1, 20, 14)
	h.Cable(b.ID, c.ID, 12, 2, nil)
	h.Cable(c.ID, a.ID, 14, 2, nil)
	h.Cable(a.ID, "onowhere", 12, 2, nil)
	h.Cable(a.ID, c.ID, 12, 2, nil)
	h.Cable(a.ID, b.ID, 12, 2, nil)
	h.Cable(panel.ID, b.ID, 12, 2, nil)
	var got []string
	for _, r := range takeoff.Cables(index.New(h.Made())) {
		got = append(got, r.Part.ID+" "+r.From+"-"+r.To)
	}
	if want := []string{"cable-12-2 -A10", "cable-12-2 A2-A10", "cable-12-2 A2-B1", "cable-12-2 A10-B1", "cable-14-2 B1-A2"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestFeedsOfAPanel: what names no circuit hangs on none, and the thinnest wire is told.
func TestFeedsOfAPanel(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 160, 120)
	one, two, none := h.Circuit(20), h.Circuit(20), h.Circuit(20)
	a, b := r.Opening("duplex", r.On(0, 20), ruletest.On(one)), r.Opening("duplex", r.On(0, 60), ruletest.On(two))
	r.Opening("duplex", r.On(0, 90))
	h.Cable(a.ID, b.ID, 16, 2, nil)
	for _, size := range []unit.AWG{12, 14, 10} {
		h.Cable(a.ID, b.ID, size, 2, one)
		h.Cable(b.ID, a.ID, 26-size, 2, two) // 14, 12, 16
	}
	got := takeoff.Panel(h.Made())
	if len(got) != 3 || got[0].Openings != 1 || got[0].Wire != 14 || got[1].Openings != 1 || got[1].Wire != 16 || got[2].Circuit != none || got[2].Openings != 0 || got[2].Wire != 0 {
		t.Errorf("%+v, want one opening on 14 AWG, one on 16, none", got)
	}
}
