package drywall

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestCeilingByHand lays a ceiling of 120 by 100 in whose joists run beside its left wall, at 16 in
// and so on: rows of 48, 48 and 4 in across them, butt joints at 48 (the third joist) and none
// farther from one another than a sheet. A round box of 4 in at 30, 20 in from the upper left
// corner is cut 4-1/8 in wide about 30 in from the left and 80 in from the lower edge.
func TestCeilingByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 120, 100)
	light := r.Opening("ceiling-light", r.Ceiling(30, 20), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "RD1"} })
	r.Opening("ceiling-light", r.Ceiling(90, 50), func(o *plan.Opening) { o.Status = plan.StatusExisting })
	for _, s := range r.Sides {
		if line := r.Room.Segment(indexOf(r.Room, s)); line.A.X == 0 && line.B.X == 0 {
			r.Room.Joists = plan.Joists{Along: s.ID, Spacing: 16 * unit.Inch}
		}
	}
	v := view(t, h, r.Room.ID)
	l := ceiling(v.Room, v.Ceiling[:1], Long8)
	if !l.AcrossJoists || !l.IsCeiling {
		t.Errorf("across joists %v", l.AcrossJoists)
	}
	if got, want := pieces(l), "A 0-48 0-4; B 48-120 0-4; C 0-96 4-52; D 96-120 4-52; E 0-48 52-100; F 48-120 52-100"; got != want {
		t.Errorf("pieces: %s, want %s", got, want)
	}
	best, ok := LayCeiling(&v)
	if !ok || best.Count() != 1 || best.Holes[0].Opening.ID != light.ID {
		t.Fatalf("%v, %d cut-outs", ok, best.Count())
	}
	half := 33 * unit.Inch / 16
	want := frame.Rect{Left: 30*unit.Inch - half, Right: 30*unit.Inch + half, Bottom: 80*unit.Inch - half, Top: 80*unit.Inch + half}
	if got := best.Holes[0].Rect; got != want {
		t.Errorf("cut at %+v, want %+v", got, want)
	}
	var area, room int64
	for _, p := range l.Pieces {
		area += int64((p.Right-p.Left)/unit.Inch) * int64((p.Top-p.Bottom)/unit.Inch)
	}
	if room = 120 * 100; area != room {
		t.Errorf("the pieces are %d in², the ceiling %d", area, room)
	}
	r.Room.Overhead = plan.ConditionClosed
	v = view(t, h, r.Room.ID)
	if _, ok := LayCeiling(&v); ok {
		t.Error("a ceiling that stays closed gets board")
	}
}

func indexOf(r *plan.Room, s *plan.Side) int {
	for i, one := range r.Sides {
		if one.ID == s.ID {
			return i
		}
	}
	return -1
}
