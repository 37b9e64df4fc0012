package fill

import (
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// piece is a part of one side along the floor line that is wall space, in whole.
type piece struct {
	side     *plan.SideView
	from, to unit.Length // along the side
	start    unit.Length // of the piece along its run
	// canMount is false where no box can be set in the wall: glass, a railing, a fixed
	// panel of a slider.
	canMount bool
}

func (p piece) length() unit.Length { return p.to - p.from }

// run is a wall space: pieces that follow one another round corners. A closed run has
// no break and its end meets its start.
type run struct {
	pieces   []piece
	length   unit.Length
	isClosed bool
}

// looks says what the floor line along a stretch of a side is.
type looks int

const (
	isWall looks = iota
	isMountless
	isAppliance // where an edition does not let appliances end a wall space
	isCounter
	isBreak
)

// stretch is a part of a side of one look.
type stretch struct {
	from, to unit.Length
	looks    looks
}

// wallSpaces returns the wall spaces of a room, however short, and the stretches
// along counters, which are another rule's.
func wallSpaces(v plan.RoomView, fig *code.Figures) (runs []run, counters []Stretch) {
	var all [][]stretch
	for i := range v.Sides {
		s := floorLine(&v, i, fig)
		all = append(all, s)
		for _, part := range s {
			if part.looks == isCounter {
				counters = append(counters, stretchOn(&v.Sides[i], part.from, part.to))
			}
		}
	}
	return joined(v, all), counters
}

// floorLine divides a side by what stands on its floor line.
func floorLine(v *plan.RoomView, i int, fig *code.Figures) []stretch {
	s := &v.Sides[i]
	base := isWall
	switch s.Side.Kind {
	case plan.SideOpen:
		return []stretch{{0, s.Length, isBreak}}
	case plan.SideRailing:
		if !fig.Spacing.RoomDividerCounts {
			return []stretch{{0, s.Length, isBreak}}
		}
		base = isMountless
	case plan.SideGlass:
		if !fig.Spacing.FixedPanelCounts {
			return []stretch{{0, s.Length, isBreak}}
		}
		base = isMountless
	}
	line := floorMarks{stretches: []stretch{{0, s.Length, base}}}
	line.layFixtures(s, v.Standing, fig)
	for _, other := range v.Sides {
		line.layFixtures(s, other.Fixtures, fig)
	}
	for _, c := range s.Cuts {
		line.layCut(c, fig)
	}
	return settled(line.stretches)
}

// settled gives an appliance that stands in a row of counters to the counters, whose
// rule says what is behind it; any other leaves the wall as it is.
func settled(line []stretch) (out []stretch) {
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

// fixtureLooks says what a fixture at a side makes of the floor line. Furniture and
// what hangs above the floor changes nothing.
func fixtureLooks(f *plan.Fixture, fig *code.Figures) looks {
	if f.Bottom > 0 {
		return isWall
	}
	switch f.Kind {
	case plan.FixtureCounter, plan.FixturePeninsula, plan.FixtureSink:
		return isCounter
	case plan.FixtureCabinet:
		if fig.Spacing.FixedCabinetBreaks {
			return isBreak
		}
	case plan.FixtureRange, plan.FixtureRefrigerator, plan.FixtureDishwasher,
		plan.FixtureWasher, plan.FixtureDryer, plan.FixtureWaterHeater:
		if fig.Spacing.StationaryApplianceBreaks {
			return isBreak
		}
		return isAppliance
	}
	return isWall
}

// floorMarks is a side's floor line while breaks are laid on it. A worse look wins.
type floorMarks struct{ stretches []stretch }

// touches is how near a fixture's edge is to a face that it stands against: less than
// a scribe or filler strip (common practice).
const touches = unit.Inch

// layFixtures lays what stands against a side, with its back or with an end: the end
// of a counter on the next wall takes its floor line as well.
func (m *floorMarks) layFixtures(s *plan.SideView, fixtures []plan.FixtureView, fig *code.Figures) {
	for _, f := range fixtures {
		kind := fixtureLooks(f.Fixture, fig)
		if kind == isWall {
			continue
		}
		for i, corner := range f.Footprint {
			from, out := s.Frame.Project(corner)
			to, outTo := s.Frame.Project(f.Footprint[(i+1)%len(f.Footprint)])
			if max(out.Abs(), outTo.Abs()) <= touches {
				m.lay(min(from, to), max(from, to), kind)
			}
		}
	}
}

func (m *floorMarks) layCut(c plan.Cut, fig *code.Figures) {
	switch c.Break.Kind {
	case plan.BreakDoor, plan.BreakFireplace:
		m.lay(c.From, c.To, isBreak)
	case plan.BreakPassage:
		if c.Break.Sill == 0 {
			m.lay(c.From, c.To, isBreak)
		}
	case plan.BreakSlider:
		m.layPanels(c, fig)
	case plan.BreakWindow:
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
func (m *floorMarks) layPanels(c plan.Cut, fig *code.Figures) {
	for i, panel := range c.Break.Panels {
		from, to := c.Break.PanelAt(i)
		if !c.IsOwn {
			from, to = c.Break.Width-to, c.Break.Width-from
		}
		kind := isBreak
		if panel == plan.PanelFixed && fig.Spacing.FixedPanelCounts {
			kind = isMountless
		}
		m.lay(c.From+from, min(c.From+to, c.To), kind)
	}
	if len(c.Break.Panels) == 0 {
		m.lay(c.From, c.To, isBreak)
	}
}

// lay gives the line from one place to another a look, where what it has is not worse.
func (m *floorMarks) lay(from, to unit.Length, kind looks) {
	var out []stretch
	for _, s := range m.stretches {
		lo, hi := max(s.from, from), min(s.to, to)
		if lo >= hi || s.looks >= kind {
			out = grow(out, s)
			continue
		}
		out = grow(out, stretch{s.from, lo, s.looks})
		out = grow(out, stretch{lo, hi, kind})
		out = grow(out, stretch{hi, s.to, s.looks})
	}
	m.stretches = out
}

// grow appends a stretch, or lengthens the last one of the same look.
func grow(list []stretch, s stretch) []stretch {
	if s.from >= s.to {
		return list
	}
	if n := len(list); n > 0 && list[n-1].looks == s.looks {
		list[n-1].to = s.to
		return list
	}
	return append(list, s)
}

// joined strings the wall stretches of all sides into runs. Corners do not end a run;
// one that goes on over the first corner is put together.
func joined(v plan.RoomView, all [][]stretch) (runs []run) {
	isOpen, anyBreak := false, false
	for i, line := range all {
		for _, s := range line {
			if s.looks >= isCounter {
				isOpen, anyBreak = false, true
				continue
			}
			if !isOpen {
				runs = append(runs, run{})
				isOpen = true
			}
			r := &runs[len(runs)-1]
			r.add(piece{side: &v.Sides[i], from: s.from, to: s.to, canMount: s.looks == isWall})
		}
	}
	switch {
	case len(runs) == 0:
		return nil
	case !anyBreak:
		runs[0].isClosed = true
	case isOpen && all[0][0].looks < isCounter && len(runs) > 1:
		last := runs[len(runs)-1]
		for _, p := range runs[0].pieces {
			last.add(p)
		}
		runs[0] = last
		runs = runs[:len(runs)-1]
	}
	return runs
}

func (r *run) add(p piece) {
	p.start = r.length
	r.pieces = append(r.pieces, p)
	r.length += p.length()
}

// stretches returns the parts of sides between two places along the run. On a closed
// run To may lie past the end.
func (r run) stretches(from, to unit.Length) (out []Stretch) {
	for _, turn := range []unit.Length{0, r.length} {
		if turn > 0 && !r.isClosed {
			break
		}
		for _, p := range r.pieces {
			lo := max(from-turn, p.start)
			hi := min(to-turn, p.start+p.length())
			if lo < hi {
				out = append(out, stretchOn(p.side, p.from+lo-p.start, p.from+hi-p.start))
			}
		}
	}
	return out
}

// at returns the piece and the place along its side for a place along the run.
func (r run) at(place unit.Length) (piece, unit.Length) {
	if r.isClosed {
		place = (place%r.length + r.length) % r.length
	}
	for _, p := range r.pieces {
		if place <= p.start+p.length() {
			return p, p.from + place - p.start
		}
	}
	last := r.pieces[len(r.pieces)-1]
	return last, last.to
}

func stretchOn(s *plan.SideView, from, to unit.Length) Stretch {
	line := geom.Segment{A: s.Frame.Point(from, 0), B: s.Frame.Point(to, 0)}
	return Stretch{Side: s.Side.ID, From: from, To: to, Line: line}
}
