package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// looks says what the floor line along a marking of a side is.
type looks int

const (
	isWall looks = iota
	isMountless
	isAppliance // where an edition does not let appliances end a wall space
	isFixedEnd  // a cabinet, or an appliance where it ends a wall space
	isCounter   // also what stands under it
	isBreak
)

// marking is a part of a side of one look.
type marking struct {
	from, to unit.Length
	looks    looks
}

// floorLine divides a side by what stands on its floor line.
func floorLine(v *index.RoomView, i int, fig *code.Figures) []marking {
	s := &v.Sides[i]
	base := isWall
	switch s.Side.Kind {
	case plan.SideOpen:
		return []marking{{0, s.Length, isBreak}}
	case plan.SideRailing:
		if !fig.Spacing.RoomDividerCounts {
			return []marking{{0, s.Length, isBreak}}
		}
		base = isMountless
	case plan.SideGlass:
		if !fig.Spacing.FixedPanelCounts {
			return []marking{{0, s.Length, isBreak}}
		}
		base = isMountless
	}
	line := floorMarks{markings: []marking{{0, s.Length, base}}}
	looksOf := looker{v.Room.Use, fig}
	line.layFixtures(s, v.Standing, looksOf)
	for _, other := range v.Sides {
		line.layFixtures(s, other.Fixtures, looksOf)
	}
	for _, c := range s.Cuts {
		line.layCut(c, fig)
	}
	return settled(line.markings)
}

// settled gives an appliance that stands in a row of counters to the counters, whose
// rule says what is behind it; any other leaves the wall as it is.
func settled(line []marking) (out []marking) {
	isCounterAt := func(i int) bool { return i >= 0 && i < len(line) && line[i].looks == isCounter }
	for i, s := range line {
		if s.looks == isAppliance {
			s.looks = isWall
			if isCounterAt(i-1) || isCounterAt(i+1) {
				s.looks = isCounter
			}
		}
		out = grow(out, s)
	}
	return out
}

// looker says what fixtures make of the floor line in a room of a use.
type looker struct {
	use plan.Use
	fig *code.Figures
}

// of says what a fixture at a side makes of the floor line. Furniture and what hangs
// above the floor changes nothing; a cabinet with a work surface is a counter only where
// the counter rule is on it.
func (l looker) of(f *plan.Fixture) looks {
	if f.Bottom > 0 {
		return isWall
	}
	fig := l.fig
	switch part.All().Fixture(f.Kind).FloorLine {
	case part.CounterLine:
		switch {
		case slices.Contains(counterUses, l.use):
			return isCounter
		case fig.Spacing.WorkedCabinetBreaks:
			return isFixedEnd
		}
	case part.CabinetLine:
		if fig.Spacing.FixedCabinetBreaks {
			return isFixedEnd
		}
	case part.ApplianceLine:
		if fig.Spacing.StationaryApplianceBreaks {
			return isFixedEnd
		}
		return isAppliance
	}
	return isWall
}

// floorMarks is a side's floor line while breaks are laid on it. A worse look wins.
type floorMarks struct{ markings []marking }

// touches is how near a fixture's edge is to a face that it stands against: less than
// a scribe or filler strip (common practice).
const touches = unit.Inch

// layFixtures lays what stands against a side, with its back or with an end: the end
// of a counter on the next wall takes its floor line as well.
func (m *floorMarks) layFixtures(s *index.SideView, fixtures []index.FixtureView, looksOf looker) {
	for _, f := range fixtures {
		kind := looksOf.of(f.Fixture)
		if kind == isWall {
			continue
		}
		for _, at := range standsAt(s, f) {
			m.lay(at.from, at.to, kind)
		}
	}
}

// standsAt returns the parts of a side that a fixture stands against, with its back or with
// an end.
func standsAt(s *index.SideView, f index.FixtureView) (parts []marking) {
	for i, corner := range f.Footprint {
		from, out := s.Frame.Project(corner)
		to, outTo := s.Frame.Project(f.Footprint[(i+1)%len(f.Footprint)])
		if max(out.Abs(), outTo.Abs()) <= touches {
			parts = append(parts, marking{from: min(from, to), to: max(from, to)})
		}
	}
	return parts
}

func (m *floorMarks) layCut(c index.Cut, fig *code.Figures) {
	switch part.All().Break(c.Break.Kind).FloorLine {
	case part.OpenLine:
		m.lay(c.From, c.To, isBreak)
	case part.PassageLine:
		switch {
		case c.Break.Sill == 0:
			m.lay(c.From, c.To, isBreak)
		case c.Break.Sill < lowestBox:
			m.lay(c.From, c.To, isMountless)
		}
	case part.PanelsLine:
		m.layPanels(c, fig)
	case part.GlassLine:
		if c.Break.Sill < lowestBox {
			m.lay(c.From, c.To, isMountless) // glass to the floor is wall space all the same
		}
	}
}

// lowestBox is how high glass must begin to leave wall for a box below it: a
// receptacle at 16 in to the centre in a box 4 in high, and a sill (common practice).
const lowestBox = 20 * unit.Inch

// layPanels lays a slider: its moving panels are an opening, its fixed ones wall.
// A break seen from its other face has its panels in the other order.
func (m *floorMarks) layPanels(c index.Cut, fig *code.Figures) {
	for i, panel := range c.Break.Panels {
		from, to := c.Break.PanelAt(i)
		if !c.IsOwn {
			from, to = c.Break.Width-to, c.Break.Width-from
		}
		kind := isBreak
		if panel == plan.PanelFixed && fig.Spacing.FixedPanelCounts {
			kind = isMountless
		}
		m.lay(max(c.Start+from, c.From), min(c.Start+to, c.To), kind)
	}
	if len(c.Break.Panels) == 0 {
		m.lay(c.From, c.To, isBreak)
	}
}

// lay gives the line from one place to another a look, where what it has is not worse.
func (m *floorMarks) lay(from, to unit.Length, kind looks) {
	var out []marking
	for _, s := range m.markings {
		lo, hi := max(s.from, from), min(s.to, to)
		if lo >= hi || s.looks >= kind {
			out = grow(out, s)
			continue
		}
		out = grow(out, marking{s.from, lo, s.looks})
		out = grow(out, marking{lo, hi, kind})
		out = grow(out, marking{hi, s.to, s.looks})
	}
	m.markings = out
}

// grow appends a marking, or lengthens the last one of the same look.
func grow(list []marking, s marking) []marking {
	if s.from >= s.to {
		return list
	}
	if n := len(list); n > 0 && list[n-1].looks == s.looks {
		list[n-1].to = s.to
		return list
	}
	return append(list, s)
}
