package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// counterLine divides a side by the counters that stand along it: counter is wall space
// of its own kind, all else a break.
func counterLine(v *index.RoomView, i int, fig *code.Figures) []marking {
	s := &v.Sides[i]
	switch s.Side.Kind {
	case plan.SideOpen, plan.SideRailing:
		return []marking{{0, s.Length, isBreak}}
	}
	top := counterMarks{behind: fig.Outlets.CounterBehindStraight, line: s}
	for _, f := range v.Standing {
		top.take(f)
	}
	for _, other := range v.Sides {
		for _, f := range other.Fixtures {
			top.take(f)
		}
	}
	return top.markings()
}

// counterMarks gathers what of a side is counter and what parts it.
type counterMarks struct {
	behind   unit.Length // a wall so far behind a sink, or farther, is counter
	line     *index.SideView
	counters []marking
	parted   []marking
	under    []marking // machines that stand under a counter or between two
}

// take looks at a fixture that stands against the side and at what is on it.
func (m *counterMarks) take(f index.FixtureView) {
	from, to, ok := m.against(f)
	if !ok || f.Fixture.Bottom > 0 {
		return
	}
	at := marking{from: from, to: to}
	switch kind := part.All().Fixture(f.Fixture.Kind); {
	case f.Fixture.Kind == plan.FixtureSink:
		m.counters = append(m.counters, at)
		m.parted = append(m.parted, at) // its rim stands at the wall
	case kind.FloorLine == part.CounterLine:
		m.counters = append(m.counters, at)
		if f.Fixture.At.Host == m.line.Side.ID {
			for _, on := range f.OnIt {
				m.parts(f.Fixture, on)
			}
		}
	case f.Fixture.Kind == plan.FixtureDishwasher:
		m.under = append(m.under, at)
	case kind.FloorLine == part.ApplianceLine, kind.FloorLine == part.CabinetLine:
		m.parted = append(m.parted, at)
	}
}

// parts takes a sink or a cooktop in a counter: the wall behind it is counter where it is
// far enough behind.
func (m *counterMarks) parts(counter *plan.Fixture, on index.FixtureView) {
	f := on.Fixture
	if partsCounter(f.Kind) && f.At.Out-f.Depth/2 < m.behind {
		from := counter.At.Along + f.At.Along - f.Width/2
		m.parted = append(m.parted, marking{from: max(from, 0), to: min(from+f.Width, m.line.Length)})
	}
}

// partsCounter reports whether a thing set in a counter parts it.
func partsCounter(k plan.FixtureKind) bool {
	return k == plan.FixtureSink || k == plan.FixtureRange || k == plan.FixtureBasin
}

// against returns what of the side a fixture takes that stands at it with its back or
// with an end.
func (m *counterMarks) against(f index.FixtureView) (from, to unit.Length, ok bool) {
	for i, corner := range f.Footprint {
		along, out := m.line.Frame.Project(corner)
		next, outNext := m.line.Frame.Project(f.Footprint[(i+1)%len(f.Footprint)])
		if max(out.Abs(), outNext.Abs()) > touches {
			continue
		}
		from, to = max(min(along, next), 0), min(max(along, next), m.line.Length)
		if from < to {
			return from, to, true
		}
	}
	return 0, 0, false
}

// markings lays what was taken on the side: what parts a counter wins, and a door or
// fireplace over all.
func (m *counterMarks) markings() (out []marking) {
	marks := floorMarks{markings: []marking{{0, m.line.Length, isWall}}}
	for _, s := range m.counters {
		marks.lay(s.from, s.to, isCounter)
	}
	for _, s := range m.under {
		if marks.hasCounterAt(s.from-touches, s.to+touches) {
			marks.lay(s.from, s.to, isCounter)
		}
	}
	for _, s := range m.parted {
		marks.lay(s.from, s.to, isBreak)
	}
	for _, c := range m.line.Cuts {
		if c.Break.Kind != plan.BreakWindow && c.Break.Sill == 0 {
			marks.lay(c.From, c.To, isBreak)
		}
	}
	for _, s := range marks.markings {
		if s.looks == isCounter {
			out = grow(out, marking{s.from, s.to, isWall})
		} else {
			out = grow(out, marking{s.from, s.to, isBreak})
		}
	}
	return out
}

// hasCounterAt reports whether a counter is anywhere from one place to another.
func (m *floorMarks) hasCounterAt(from, to unit.Length) bool {
	return slices.ContainsFunc(m.markings, func(s marking) bool {
		return s.looks == isCounter && s.from <= to && from <= s.to
	})
}
