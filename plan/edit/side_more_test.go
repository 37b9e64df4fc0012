package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// TestAChangedSideStaysWhereItIs: an edit of what a side is made of does not move it,
// whatever corner comes with it.
func TestAChangedSideStaysWhereItIs(t *testing.T) {
	p := shed(t)
	ref, _ := p.Side(north)
	was := ref.Side().Start
	s := *ref.Side()
	s.Start, s.Kind = at(5*ft, 5*ft), plan.SideGlass
	q := after(t, p, edit.ChangeSide{Side: s})
	now, _ := q.Side(north)
	if now.Side().Start != was || now.Side().Kind != plan.SideGlass {
		t.Errorf("it starts at %v and is %s, want %v and glass", now.Side().Start, now.Side().Kind, was)
	}
}

// TestASplitMayTouchADoor: at either edge of it, within what rounding leaves.
func TestASplitMayTouchADoor(t *testing.T) {
	p := shed(t)
	d, _ := p.Break(door)
	for _, tt := range []struct {
		name string
		at   unit.Length
		ok   bool
	}{
		{"its left edge", d.At.Along, true},
		{"its right edge", d.At.Along + d.Width, true},
		{"within rounding of its left edge", d.At.Along + plan.Slack, true},
		{"within rounding of its right edge", d.At.Along + d.Width - plan.Slack, true},
		{"past that at the left", d.At.Along + plan.Slack + 1, false},
		{"past that at the right", d.At.Along + d.Width - plan.Slack - 1, false},
	} {
		_, err := edit.SplitSide{Side: d.At.Host, At: tt.at, NewID: "saaaaaaaa"}.Apply(p)
		if (err == nil) != tt.ok {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}

// TestSidesAreRefusedAtTheirEnds: a split is within the side, a length above zero and within
// the reach of a plan, both by the smallest step there is.
func TestSidesAreRefusedAtTheirEnds(t *testing.T) {
	p := plantest.Bedroom()
	ref, _ := p.Side("saaaaaaaa")
	long := ref.Line().Length()
	for _, tt := range []struct {
		name string
		do   edit.Edit
		ok   bool
	}{
		{"split at the left end", edit.SplitSide{Side: ref.Side().ID, At: 0, NewID: "szzzzzzzz"}, false},
		{"split before it", edit.SplitSide{Side: ref.Side().ID, At: -1, NewID: "szzzzzzzz"}, false},
		{"split at the right end", edit.SplitSide{Side: ref.Side().ID, At: long, NewID: "szzzzzzzz"}, false},
		{"split past it", edit.SplitSide{Side: ref.Side().ID, At: long + 1, NewID: "szzzzzzzz"}, false},
		{"split an inch within", edit.SplitSide{Side: ref.Side().ID, At: unit.Inch, NewID: "szzzzzzzz"}, true},
		{"no length", edit.SetSideLength{Side: ref.Side().ID}, false},
		{"less than none", edit.SetSideLength{Side: ref.Side().ID, Length: -long}, false},
		{"past the reach of a plan", edit.SetSideLength{Side: ref.Side().ID, Length: plan.Reach + 1}, false},
		{"a foot more", edit.SetSideLength{Side: ref.Side().ID, Length: long + unit.Foot}, true},
	} {
		if _, err := tt.do.Apply(p); (err == nil) != tt.ok {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}
