package spacing

import (
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func edition(t *testing.T, name string) *code.Figures {
	t.Helper()
	fig, err := code.Edition(name)
	if err != nil {
		t.Fatal(err)
	}
	return fig
}

// TestWhatFixturesMakeOfAFloorLine: fixed cabinets without a work surface break it in each
// edition, those with one only in 2014 (210.52(A)(2)(1)) and appliances from 2023 on; where
// 210.52(C) names the room, what has a work surface is a counter. What hangs, and furniture,
// changes nothing.
func TestWhatFixturesMakeOfAFloorLine(t *testing.T) {
	for _, tt := range []struct {
		kind plan.FixtureKind
		in   map[string]looks // by edition, in a bedroom
		here looks            // in a kitchen, of 2020
	}{
		{plan.FixtureCabinet, map[string]looks{"2014": isFixedEnd, "2017": isFixedEnd, "2020": isFixedEnd, "2023": isFixedEnd}, isFixedEnd},
		{plan.FixtureCounter, map[string]looks{"2014": isFixedEnd, "2017": isWall, "2020": isWall, "2023": isWall}, isCounter},
		{plan.FixturePeninsula, map[string]looks{"2014": isFixedEnd, "2017": isWall, "2020": isWall, "2023": isWall}, isCounter},
		{plan.FixtureRefrigerator, map[string]looks{"2014": isAppliance, "2017": isAppliance, "2020": isAppliance, "2023": isFixedEnd}, isAppliance},
		{plan.FixtureWasher, map[string]looks{"2014": isAppliance, "2023": isFixedEnd}, isAppliance},
		{plan.FixtureBed, map[string]looks{"2014": isWall, "2023": isWall}, isWall},
		{plan.FixtureDesk, map[string]looks{"2014": isWall, "2023": isWall}, isWall},
		{plan.FixtureUpper, map[string]looks{"2014": isWall, "2023": isWall}, isWall},
	} {
		for name, want := range tt.in {
			l := looker{plan.UseBedroom, edition(t, name)}
			if got := l.of(&plan.Fixture{Kind: tt.kind}); got != want {
				t.Errorf("%s in a bedroom of %s: %d, want %d", tt.kind, name, got, want)
			}
			if got := l.of(&plan.Fixture{Kind: tt.kind, Bottom: 1}); got != isWall {
				t.Errorf("%s that hangs: %d", tt.kind, got)
			}
		}
		for _, use := range counterUses {
			if got := (looker{use, edition(t, "2020")}).of(&plan.Fixture{Kind: tt.kind}); got != tt.here {
				t.Errorf("%s in a %s: %d, want %d", tt.kind, use, got, tt.here)
			}
		}
	}
}

// TestWhatBreaksMakeOfAFloorLine: doors, fireplaces, moving panels and passages to the floor
// break it; fixed panels and glass are wall in which no box is set (210.52(A)(2)), as is wall
// too low for one: a box at 16 in and a sill want 20 in below glass (common practice). Fixed
// panels are wall where the edition says so, as all four do.
func TestWhatBreaksMakeOfAFloorLine(t *testing.T) {
	const sill = 20 * unit.Inch
	fig := *edition(t, "2023")
	without := fig
	without.Spacing.FixedPanelCounts = false
	fixed, moving := plan.PanelFixed, plan.PanelMoving
	wall, glass, gap := marks(marking{0, in(100), isWall}), []looks{isWall, isMountless, isWall}, []looks{isWall, isBreak, isWall}
	for _, tt := range []struct {
		name   string
		of     plan.Break
		isBack bool
		fig    *code.Figures
		want   []marking // nil: by looks, from 20 to 60 in
		looks  []looks
	}{
		{"a door", plan.Break{Kind: plan.BreakDoor}, false, &fig, nil, gap},
		{"a fireplace", plan.Break{Kind: plan.BreakFireplace}, false, &fig, nil, gap},
		{"a passage", plan.Break{Kind: plan.BreakPassage}, false, &fig, nil, gap},
		{"a passage with a low sill", plan.Break{Kind: plan.BreakPassage, Sill: 1}, false, &fig, nil, glass},
		{"a passage with one just too low", plan.Break{Kind: plan.BreakPassage, Sill: sill - 1}, false, &fig, nil, glass},
		{"a passage over wall", plan.Break{Kind: plan.BreakPassage, Sill: sill}, false, &fig, wall, nil},
		{"a window to the floor", plan.Break{Kind: plan.BreakWindow}, false, &fig, nil, glass},
		{"a window just too low", plan.Break{Kind: plan.BreakWindow, Sill: sill - 1}, false, &fig, nil, glass},
		{"a window over wall", plan.Break{Kind: plan.BreakWindow, Sill: sill}, false, &fig, wall, nil},
		{"a slider of one fixed panel", plan.Break{Kind: plan.BreakSlider, Panels: []plan.Panel{fixed}}, false, &fig, nil, glass},
		{"where those do not count", plan.Break{Kind: plan.BreakSlider, Panels: []plan.Panel{fixed}}, false, &without, nil, gap},
		{"a slider of one moving panel", plan.Break{Kind: plan.BreakSlider, Panels: []plan.Panel{moving}}, false, &fig, nil, gap},
		{"a slider that says none", plan.Break{Kind: plan.BreakSlider}, false, &fig, nil, gap},
		{"one of each", plan.Break{Kind: plan.BreakSlider, Panels: []plan.Panel{fixed, moving}}, false, &fig,
			marks(marking{0, in(20), isWall}, marking{in(20), in(40), isMountless}, marking{in(40), in(60), isBreak}, marking{in(60), in(100), isWall}), nil},
		{"one of each, from behind", plan.Break{Kind: plan.BreakSlider, Panels: []plan.Panel{fixed, moving}}, true, &fig,
			marks(marking{0, in(20), isWall}, marking{in(20), in(40), isBreak}, marking{in(40), in(60), isMountless}, marking{in(60), in(100), isWall}), nil},
	} {
		b := tt.of
		b.Width = in(40)
		m := floorMarks{marks(marking{0, in(100), isWall})}
		m.layCut(index.Cut{Break: &b, From: in(20), To: in(60), Start: in(20), IsOwn: !tt.isBack}, tt.fig)
		want := tt.want
		if want == nil {
			want = marks(marking{0, in(20), tt.looks[0]}, marking{in(20), in(60), tt.looks[1]}, marking{in(60), in(100), tt.looks[2]})
		}
		if !slices.Equal(m.markings, want) {
			t.Errorf("%s: %s, want %s", tt.name, line(m.markings), line(want))
		}
	}
	// A slider that lies across the ends of its side: what is of it here.
	m := floorMarks{marks(marking{0, in(30), isWall})}
	slider := plan.Break{Kind: plan.BreakSlider, Width: in(60), Panels: []plan.Panel{moving, fixed, moving}}
	m.layCut(index.Cut{Break: &slider, From: 0, To: in(30), Start: -in(10), IsOwn: true}, &fig)
	if want := marks(marking{0, in(10), isBreak}, marking{in(10), in(30), isMountless}); !slices.Equal(m.markings, want) {
		t.Errorf("a slider from -10 to 50 on a side of 30: %s, want %s", line(m.markings), line(want))
	}
}

// TestSidesThatAreNoWall: an open side ends a wall space; a railing and a side of glass are wall
// in which no box is set where the edition counts room dividers and fixed panels.
func TestSidesThatAreNoWall(t *testing.T) {
	counted := *edition(t, "2023")
	counted.Spacing.RoomDividerCounts, counted.Spacing.FixedPanelCounts = true, true
	dividers, panels := counted, counted
	dividers.Spacing.FixedPanelCounts, panels.Spacing.RoomDividerCounts = false, false
	for _, tt := range []struct {
		kind plan.SideKind
		fig  *code.Figures
		want looks
	}{
		{plan.SideWall, &counted, isWall}, {plan.SideOpen, &counted, isBreak},
		{plan.SideRailing, &counted, isMountless}, {plan.SideRailing, &dividers, isMountless}, {plan.SideRailing, &panels, isBreak},
		{plan.SideGlass, &counted, isMountless}, {plan.SideGlass, &panels, isMountless}, {plan.SideGlass, &dividers, isBreak},
	} {
		v := index.RoomView{Room: &plan.Room{Use: plan.UseBedroom}, Sides: []index.SideView{{Side: &plan.Side{Kind: tt.kind}, Length: in(50)}}}
		if got := floorLine(&v, 0, tt.fig); !slices.Equal(got, marks(marking{0, in(50), tt.want})) {
			t.Errorf("%s: %s, want all %d", tt.kind, line(got), tt.want)
		}
	}
}

// TestCountersInALine: a dishwasher is counter where one stands within an inch of it (a filler,
// common practice), and no longer where it parts nothing.
func TestCountersInALine(t *testing.T) {
	m := floorMarks{marks(marking{0, in(20), isWall}, marking{in(20), in(50), isCounter}, marking{in(50), in(100), isWall})}
	for _, tt := range []struct {
		from, to unit.Length
		want     bool
	}{
		{0, in(20), true}, {0, in(20) - 1, false}, {in(50), in(60), true}, {in(50) + 1, in(60), false}, {in(30), in(31), true}, {0, in(100), true}, {in(60), in(100), false},
	} {
		if got := m.hasCounterAt(tt.from, tt.to); got != tt.want {
			t.Errorf("from %v to %v: %v", tt.from, tt.to, got)
		}
	}
}
