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

// TestZonesStayWhereNoStudIsTaped: a corner that is moved 2 ft out leaves what is told of a
// wall where it is on the plan, whether studs are told of it or not.
func TestZonesStayWhereNoStudIsTaped(t *testing.T) {
	p := plantest.Bedroom()
	ref, _ := p.Side("saaaaaaaa")
	s := *ref.Side()
	s.Studs, s.Places = plan.Studs{}, nil
	s.Zones = []plan.Zone{{From: 20 * unit.Inch, To: 50 * unit.Inch, Condition: plan.ConditionOpened}}
	s.Probes = []plan.Probe{{From: 30 * unit.Inch, To: 32 * unit.Inch, Clear: true}}
	p = after(t, p, edit.ChangeSide{Side: s})
	long := ref.Line().Length()
	p = after(t, p, edit.SetSideLength{Side: s.ID, Length: long + 2*unit.Foot, FromRight: true})
	now, _ := p.Side(s.ID)
	zone, probe := now.Side().Zones[0], now.Side().Probes[0]
	if zone.From != 44*unit.Inch || zone.To != 74*unit.Inch || probe.From != 54*unit.Inch || probe.To != 56*unit.Inch {
		t.Errorf("the zone is at %v to %v, want 44 to 74 in; the probe at %v to %v, want 54 to 56", zone.From, zone.To, probe.From, probe.To)
	}
}
