package frame_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
)

func TestFronts(t *testing.T) {
	rectangle := func(width, height float64) part.Outline {
		return part.Outline{Width: in(width), Height: in(height)}
	}
	round := func(size float64) part.Outline {
		return part.Outline{Width: in(size), Height: in(size), IsRound: true}
	}
	box := func(id string) plan.Assembly { return plan.Assembly{Box: id} }
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		want   part.Outline
		source string
	}{
		{"a square box", plan.Opening{Gangs: 1, Assembly: box("sq4-1.5")}, rectangle(4, 4), "Table 314.16(A): 4 × 1-1/2 square"},
		{"a square box without gangs", plan.Opening{Assembly: plan.Assembly{Code: "SQ9"}}, rectangle(4, 4), "Table 314.16(A)"},
		{"of a listed assembly", plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "SQ7"}}, rectangle(4.6875, 4.6875), "Table 314.16(A): 4-11/16 square"},
		{"an octagon", plan.Opening{Assembly: box("oct4-1.5")}, round(4), "Table 314.16(A): 4 × 1-1/2 round or octagonal"},
		{"the box goes before the code", plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "SQ7", Box: "sq4-1.5"}}, rectangle(4, 4), "what was put together by hand is what there is"},
		{"none chosen", plan.Opening{Gangs: 1}, rectangle(2.3125, 3.75), "common practice: a nail-on box"},
		{"none chosen, three gangs", plan.Opening{Gangs: 3}, rectangle(5.9375, 3.75), "two steps of 1-13/16 more"},
		{"none chosen, round", plan.Opening{}, round(4), "Table 314.16(A) lists no other round size"},
		{"a box nobody knows", plan.Opening{Gangs: 2, Assembly: box("tin")}, rectangle(4.125, 3.75), "as one of its gangs"},
		{"a box of no told size", plan.Opening{Gangs: 1, Assembly: box("fs1")}, rectangle(2.3125, 3.75), "its outside depends on the maker"},
		{"a kind with its own housing", plan.Opening{Kind: "recessed"}, round(6.375), "common practice: a housing of 6 in nominal"},
		{"one with a box in place of it", plan.Opening{Kind: "recessed", Assembly: box("oct4-1.5")}, round(4), "what is chosen is what there is"},
		{"a fan", plan.Opening{Kind: "exhaust-fan"}, rectangle(9.25, 9.5), "common practice"},
		{"a panel", plan.Opening{Kind: "panel-feed"}, rectangle(14.5, 30), "a clear bay at 16 in is 14-1/2"},
	} {
		if got := frame.FrontOf(&tt.o); got != tt.want {
			t.Errorf("%s: %+v, want %+v (%s)", tt.name, got, tt.want, tt.source)
		}
	}
}

// Each kind that the catalogue gives neither a box nor gangs has a housing to stand for
// it: nothing is checked as one size and drawn as another.
func TestKindsWithoutABoxHaveAHousing(t *testing.T) {
	for _, k := range part.All().Kinds {
		if k.Assembly == nil && k.Gangs == 0 && k.Cutout.IsZero() {
			t.Errorf("%s has no box, no gangs and no cut-out", k.ID)
		}
	}
}

func TestCutouts(t *testing.T) {
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		want   part.Outline
		source string
	}{
		{"a nail-on box", plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "PN1"}}, part.Outline{Width: in(2.3125), Height: in(3.75)}, "the box comes through the board"},
		{"a one-gang ring", plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "SQ1"}}, part.Outline{Width: in(2), Height: in(3)}, "only the collar comes through: a device box is 3 × 2"},
		{"a two-gang ring", plan.Opening{Gangs: 2, Assembly: plan.Assembly{Code: "SQ5"}}, part.Outline{Width: in(3.8125), Height: in(3)}, "a step of 1-13/16 more"},
		{"a ring to round", plan.Opening{Assembly: plan.Assembly{Code: "SQ10"}}, part.Outline{Width: in(3.5), Height: in(3.5), IsRound: true}, "from memory"},
		{"a blank cover", plan.Opening{Assembly: plan.Assembly{Code: "SQ9"}}, part.Outline{Width: in(4), Height: in(4)}, "no ring: the box itself"},
		{"a housing", plan.Opening{Kind: "recessed"}, part.Outline{Width: in(6.375), Height: in(6.375), IsRound: true}, "common practice"},
	} {
		if got := frame.CutoutOf(&tt.o); got != tt.want {
			t.Errorf("%s: %+v, want %+v (%s)", tt.name, got, tt.want, tt.source)
		}
	}
}

// The height is told to a line of the box, from a floor; what is measured is the centre
// above the finished floor.
func TestCentreHeights(t *testing.T) {
	room := &plan.Room{Floor: []plan.Layer{{Thickness: in(0.75)}}}
	for _, tt := range []struct {
		height plan.Height
		want   float64
		source string
	}{
		{plan.Height{Value: in(16), To: plan.BoxCentre, From: plan.FinishedFloor}, 16, "as told"},
		{plan.Height{Value: in(16), To: plan.BoxBottom, From: plan.FinishedFloor}, 18, "16 + 4/2"},
		{plan.Height{Value: in(16), To: plan.BoxTop, From: plan.Subfloor}, 13.25, "16 - 4/2 - 3/4"},
	} {
		o := plan.Opening{Height: tt.height, Assembly: plan.Assembly{Box: "sq4-1.5"}} // 4 in high
		if got := frame.CentreHeight(&o, room); got != in(tt.want) {
			t.Errorf("%+v: %s, want %v (%s)", tt.height, got, tt.want, tt.source)
		}
	}
}

// A height is said another way, or set anew and said as before; the box is 4 in high and the
// floor 3/4 in thick.
func TestHeightsRestated(t *testing.T) {
	room := &plan.Room{Floor: []plan.Layer{{Thickness: in(0.75)}}}
	o := plan.Opening{Height: plan.Height{Value: in(16), To: plan.BoxTop, From: plan.Subfloor}, Assembly: plan.Assembly{Box: "sq4-1.5"}}
	if got, want := frame.Restated(&o, room, plan.BoxBottom, plan.FinishedFloor), (plan.Height{Value: in(11.25), To: plan.BoxBottom, From: plan.FinishedFloor}); got != want {
		t.Errorf("%+v, want %+v: 16 - 4 - 3/4", got, want)
	}
	if got, want := frame.HeightAt(&o, room, in(46)), (plan.Height{Value: in(48.75), To: plan.BoxTop, From: plan.Subfloor}); got != want {
		t.Errorf("%+v, want %+v: 46 + 4/2 + 3/4", got, want)
	}
	if got := frame.HeightAt(&plan.Opening{Gangs: 1}, room, in(46)); got != plan.CentreAt(in(46)) {
		t.Errorf("%+v, want the centre at 46 above the finished floor where nothing was said", got)
	}
}

func TestRects(t *testing.T) {
	o := plan.Opening{Gangs: 1, Assembly: plan.Assembly{Box: "sq4-1.5"}, At: plan.OnFace("", in(30)), Height: plan.CentreAt(in(16))}
	want := frame.Rect{Left: in(28), Right: in(32), Bottom: in(14), Top: in(18)} // 4 in square about (30, 16)
	got := frame.RectOf(&o, nil)
	if got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	for _, tt := range []struct {
		by   float64
		want bool
	}{{4, false}, {3.9375, true}, {-4, false}, {-3.9375, true}} {
		if meets := got.Meets(got.Moved(in(tt.by))); meets != tt.want {
			t.Errorf("moved by %v: meets %v, want %v: edge to edge is clear", tt.by, meets, tt.want)
		}
	}
	if high := got.Centred(in(46)); high != (frame.Rect{Left: in(28), Right: in(32), Bottom: in(44), Top: in(48)}) {
		t.Errorf("at 46: %+v", high)
	}
}
