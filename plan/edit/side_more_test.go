package edit_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
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
