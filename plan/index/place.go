package index

import (
	"cmp"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Place is where an anchor comes to on the plan.
type Place struct {
	Level plan.ID
	Room  *plan.Room
	Side  *plan.Side    // nil where the host is not a side
	On    *plan.Fixture // nil where the host is not a fixture
	Foot  geom.Point
	// Into is the direction away from the host's face, a metre long; zero in a
	// ceiling, a floor or a top.
	Into geom.Point
}

// IsFlat reports whether the place is in a ceiling, a floor or a top.
func (p Place) IsFlat() bool { return p.Into == geom.Point{} }

// Place resolves an anchor. It reports false where the host is not in the plan.
func (ix *Index) Place(a plan.Anchor) (Place, bool) {
	switch a.Part {
	case plan.PartFace:
		ref, ok := ix.Side(a.Host)
		if !ok {
			return Place{}, false
		}
		f := geom.FrameOf(ref.Line())
		return Place{Level: ref.Level, Room: ref.Room, Side: ref.Side(), Foot: f.Point(a.Along, 0), Into: f.Out()}, true
	case plan.PartCeiling, plan.PartFloor:
		ref, ok := ix.rooms.Get(a.Host)
		if !ok {
			return Place{}, false
		}
		return Place{Level: ref.level, Room: ref.room, Foot: a.At}, true
	}
	return ix.placeOnFixture(a)
}

// NearestSide returns that of some sides which is nearest to a point, within reach of it, and
// fits; the one of the lower ID where two are as near.
func (ix *Index) NearestSide(sides []*plan.Side, at geom.Point, reach unit.Length, fits func(*plan.Side) bool) (best *plan.SideRef, ok bool) {
	var least unit.Length
	for _, s := range sides {
		ref, there := ix.Side(s.ID)
		if !there || fits != nil && !fits(s) {
			continue
		}
		_, d := ref.Line().Nearest(at)
		if d > reach || ok && cmp.Or(cmp.Compare(d, least), cmp.Compare(s.ID, best.Key())) >= 0 {
			continue
		}
		best, least, ok = ref, d, true
	}
	return best, ok
}

func (ix *Index) placeOnFixture(a plan.Anchor) (Place, bool) {
	f, ok := ix.fixtures.Get(a.Host)
	if !ok {
		return Place{}, false
	}
	frame, place, ok := ix.FixtureFrame(f.fixture)
	if !ok {
		return Place{}, false
	}
	place.On, place.Side = f.fixture, nil
	place.Foot, place.Into = onFixture(frame, f.fixture, a)
	return place, true
}

// onFixture returns the foot and the direction outward of an anchor on a fixture.
func onFixture(f geom.Frame, on *plan.Fixture, a plan.Anchor) (foot, into geom.Point) {
	minus := func(p geom.Point) geom.Point { return geom.Point{X: -p.X, Y: -p.Y} }
	foot = f.Point(on.Within(a))
	switch a.Part {
	case plan.PartTop:
		return foot, geom.Point{}
	case plan.PartFront:
		return foot, f.Out()
	case plan.PartBack:
		return foot, minus(f.Out())
	case plan.PartLeft:
		return foot, minus(f.Along())
	}
	return foot, f.Along()
}

// FixtureFrame returns the frame of a fixture: its back left corner as seen from its
// front, and the place it stands at. It reports false where its host is not there.
func (ix *Index) FixtureFrame(f *plan.Fixture) (geom.Frame, Place, bool) {
	return ix.fixtureFrame(f, 0)
}

func (ix *Index) fixtureFrame(f *plan.Fixture, depth int) (geom.Frame, Place, bool) {
	switch f.At.Part {
	case plan.PartFace:
		place, ok := ix.Place(f.At)
		if !ok {
			return geom.Frame{}, Place{}, false
		}
		ref, _ := ix.Side(f.At.Host)
		return geom.FrameOf(ref.Line()).Moved(f.At.Along, 0), place, true
	case plan.PartCeiling, plan.PartFloor:
		place, ok := ix.Place(f.At)
		frame := geom.FrameAt(place.Foot).Turned(f.Turn)
		return frame.Moved(-f.Width/2, -f.Depth/2), place, ok
	}
	host, ok := ix.fixtures.Get(f.At.Host)
	if !ok || depth == plan.MaxStack {
		return geom.Frame{}, Place{}, false
	}
	frame, place, ok := ix.fixtureFrame(host.fixture, depth+1)
	place.On, place.Side = host.fixture, nil
	return frame.Moved(f.At.Along-f.Width/2, f.At.Out-f.Depth/2), place, ok
}

// Footprint returns the outline of a fixture on the plan, clockwise as seen on the
// sheet. It reports false where its host is not there.
func (ix *Index) Footprint(f *plan.Fixture) (geom.Polygon, bool) {
	frame, _, ok := ix.FixtureFrame(f)
	return frame.Rectangle(f.Width, f.Depth), ok
}

// BreakLine returns the stretch of the host side that a break takes.
func (ix *Index) BreakLine(b *plan.Break) (geom.Segment, bool) {
	ref, ok := ix.Side(b.At.Host)
	if !ok {
		return geom.Segment{}, false
	}
	f := geom.FrameOf(ref.Line())
	return geom.Segment{A: f.Point(b.At.Along, 0), B: f.Point(b.At.Along+b.Width, 0)}, true
}

// wallReach is how far across its wall a break is looked for on either side: no wall of
// a house is thicker. It is common practice.
const wallReach = unit.Foot

// boxOver returns the box of a break that takes a stretch of its side: across the wall,
// and on the side where its leaf swings as far as that goes. What stands out behind the
// wall, a fireplace, goes at most as far back as it is wide.
func boxOver(b *plan.Break, line geom.Segment) geom.Box {
	f := geom.FrameOf(line)
	front, back := wallReach, wallReach
	switch {
	case b.Kind == plan.BreakFireplace:
		front, back = max(front, b.Width), max(back, b.Width)
	case b.Kind == plan.BreakDoor && b.Swing == plan.SwingIn:
		front = max(front, b.Width)
	case b.Kind == plan.BreakDoor && b.Swing == plan.SwingOut:
		back += b.Width
	}
	return boxAround(0, f.Point(0, front), f.Point(b.Width, front), f.Point(0, -back), f.Point(b.Width, -back))
}

// boxAround returns the box of points grown by a margin.
func boxAround(margin unit.Length, points ...geom.Point) geom.Box {
	return geom.BoxOf(points...).Expand(margin)
}

func boxOfRoom(_ *Index, r *plan.Room) (geom.Box, bool) { return boxAround(0, r.Outline()...), true }

func boxOfBreak(ix *Index, b *plan.Break) (geom.Box, bool) {
	line, ok := ix.BreakLine(b)
	return boxOver(b, line), ok
}

func boxOfFixture(ix *Index, f *plan.Fixture) (geom.Box, bool) {
	foot, ok := ix.Footprint(f)
	return boxAround(0, foot...), ok
}

func boxOfOpening(ix *Index, o *plan.Opening) (geom.Box, bool) {
	at, ok := ix.Place(o.At)
	return boxAround(0, at.Foot), ok
}
