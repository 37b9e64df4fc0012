package spacing

import (
	"iter"
	"slices"
	"sync"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// outlet is a receptacle that spacing may count on, where it stands.
type outlet struct {
	of    plan.ID
	side  plan.ID     // on a face; empty in the floor
	along unit.Length // on a face
	at    geom.Point  // in the floor
}

// receptacles returns the receptacle outlets of a room that a wall space may count:
// not those to be removed, said to be for a machine, too high, in glass, within a cabinet, or
// lit and put out as a whole by a switch.
func receptacles(v index.RoomView, fig *code.Figures) (out []outlet) {
	for i := range v.Sides {
		s := &v.Sides[i]
		cabinets := cabinetsAt(v, s)
		for _, o := range s.Openings {
			if countsForWalls(o, v, fig) && !isInGlass(o, v.Room, s) && !isInCabinet(o, v.Room, cabinets) {
				out = append(out, outlet{of: o.ID, side: s.Side.ID, along: o.At.Along})
			}
		}
	}
	for _, o := range v.Floor {
		if countsForWalls(o, v, fig) && !isUnderCabinet(o.At.At, v) {
			out = append(out, outlet{of: o.ID, at: o.At.At})
		}
	}
	return out
}

func countsForWalls(o *plan.Opening, v index.RoomView, fig *code.Figures) bool {
	if !o.IsInUse() || o.For != plan.ApplianceUnsaid || !kindCounts(o.Kind, v.Room.Use) || isWhollySwitched(o) || isWhollyControlled(o, v) {
		return false
	}
	return o.At.Part != plan.PartFace || frame.CentreHeight(o, v.Room) <= fig.Spacing.ReceptacleMaxHeight
}

// isWhollyControlled reports whether a receptacle, of a kind that is known, is drawn as the
// load of a switch and nothing says that only a half of it is.
func isWhollyControlled(o *plan.Opening, v index.RoomView) bool {
	k := part.All().Kind(o.Kind)
	isHalf := len(o.Devices) == 0 && k.Switched == part.HalfSwitched ||
		slices.ContainsFunc(o.Devices, func(d plan.Device) bool { return d.Switched == plan.HalfSwitched })
	return v.IsLoad(o.ID) && !isHalf
}

// isInGlass reports whether an opening on a side is in glass: that of the side, or of what
// is cut through it. No box can be set there.
func isInGlass(o *plan.Opening, room *plan.Room, s *index.SideView) bool {
	height := frame.CentreHeight(o, room)
	return s.Side.Kind == plan.SideGlass || slices.ContainsFunc(s.Cuts, func(c index.Cut) bool {
		return c.From < o.At.Along && o.At.Along < c.To && c.Break.Sill < height && height < c.Break.Head
	})
}

// cabinetsAt returns what the cabinets of a room take of a side that they stand against,
// with the back or with an end.
func cabinetsAt(v index.RoomView, s *index.SideView) (all []frame.Rect) {
	for f := range fixturesOf(v) {
		if isCabinet(f.Fixture) {
			all = append(all, before(s, f, f.Fixture.Top())...)
		}
	}
	return all
}

// stairsAt returns what the flights of a room take of a side that they run along, up to its
// ceiling: nobody reaches a receptacle in or under a flight (common practice).
func stairsAt(v index.RoomView, s *index.SideView) (all []frame.Rect) {
	for f := range fixturesOf(v) {
		if f.Fixture.Kind == plan.FixtureStairs {
			all = append(all, before(s, f, max(v.Room.Ceiling, f.Fixture.Top()))...)
		}
	}
	return all
}

// before returns the parts of a side that a fixture stands before, up to a height.
func before(s *index.SideView, f index.FixtureView, top unit.Length) (all []frame.Rect) {
	for _, at := range standsAt(s, f) {
		if left, right := max(at.from, 0), min(at.to, s.Length); left < right {
			all = append(all, frame.Rect{Left: left, Right: right, Bottom: f.Fixture.Bottom, Top: top})
		}
	}
	return all
}

// fixturesOf yields what stands in a room, at its sides and on its floor.
func fixturesOf(v index.RoomView) iter.Seq[index.FixtureView] {
	return func(yield func(index.FixtureView) bool) {
		for _, s := range v.Sides {
			for _, f := range s.Fixtures {
				if !yield(f) {
					return
				}
			}
		}
		for _, f := range v.Standing {
			if !yield(f) {
				return
			}
		}
	}
}

// isInStairs reports whether a place of the floor is within a flight of stairs.
func isInStairs(at geom.Point, v index.RoomView) bool {
	for f := range fixturesOf(v) {
		if f.Fixture.Kind == plan.FixtureStairs && f.Footprint.Contains(at) {
			return true
		}
	}
	return false
}

// isUnderCabinet reports whether a place of the floor is within a cabinet that goes down to
// it.
func isUnderCabinet(at geom.Point, v index.RoomView) bool {
	for f := range fixturesOf(v) {
		if isCabinet(f.Fixture) && f.Fixture.Bottom == 0 && f.Footprint.Contains(at) {
			return true
		}
	}
	return false
}

// isInCabinet reports whether an opening on a side is within one of the cabinets there.
func isInCabinet(o *plan.Opening, room *plan.Room, cabinets []frame.Rect) bool {
	height := frame.CentreHeight(o, room)
	return slices.ContainsFunc(cabinets, func(c frame.Rect) bool {
		return c.Left <= o.At.Along && o.At.Along <= c.Right && c.Bottom <= height && height <= c.Top
	})
}

// isCabinet reports whether what is set in the wall behind a fixture is inside of it: a
// cabinet, or one with a work surface on top.
func isCabinet(f *plan.Fixture) bool {
	kind := part.All().Fixture(f.Kind)
	return kind.Encloses || kind.FloorLine == part.CounterLine
}

// isWhollySwitched reports whether every receptacle in the opening is controlled as
// a whole by a wall switch. What else shares the box does not matter.
func isWhollySwitched(o *plan.Opening) bool {
	isOther := func(d plan.Device) bool { return !receptacleDevices()[d.Kind] }
	devices := slices.DeleteFunc(slices.Clone(o.Devices), isOther)
	if len(devices) == 0 {
		devices = o.Devices // named by the user's own words
	}
	if len(devices) == 0 {
		return kindWhollySwitched(o.Kind)
	}
	return !slices.ContainsFunc(devices, func(d plan.Device) bool { return d.Switched != plan.WhollySwitched })
}

// receptacleDevices are the devices that the catalogue's receptacles have.
var receptacleDevices = sync.OnceValue(func() map[string]bool {
	names := map[string]bool{}
	for _, k := range part.All().Kinds {
		if k.Family == part.Receptacle {
			names[k.Device] = true
		}
	}
	return names
})

// places returns where along a run its receptacles are, in order. One in the floor
// counts for each wall line it is near enough to.
func (r run) places(outlets []outlet, v *index.RoomView, floorReach unit.Length) (places []unit.Length) {
	for _, o := range outlets {
		if o.side == "" {
			places = append(places, r.placesOfFloor(o.at, v, floorReach)...)
			continue
		}
		for _, p := range r.legs {
			if p.side.Side.ID == o.side && p.holds(o.along) {
				places = append(places, p.start+o.along-p.from)
			}
		}
	}
	slices.Sort(places)
	return slices.Compact(places)
}

// holds reports whether a place along the leg's side is in the leg.
func (p leg) holds(along unit.Length) bool { return p.from-grain <= along && along <= p.to+grain }

// placesOfFloor returns where a point of the floor stands before a run, near enough and
// with no wall between: straight off a leg, or else off an outside corner.
func (r run) placesOfFloor(at geom.Point, v *index.RoomView, reach unit.Length) (places []unit.Length) {
	for _, p := range r.legs {
		along, out := p.side.Frame.Project(at)
		if p.holds(along) && -grain <= out && out <= reach+grain && isClear(v, p.side, at, p.side.Frame.Point(along, 0)) {
			places = append(places, p.start+along-p.from)
		}
	}
	if len(places) > 0 {
		return places
	}
	for i, p := range r.legs {
		if i == 0 && !r.isClosed || p.from > 0 {
			continue // a run's own end is at a break
		}
		if corner := p.side.Line.A; at.Distance(corner) <= reach+grain && isClear(v, p.side, at, corner) {
			places = append(places, p.start)
		}
	}
	return places
}

// isClear reports whether no other side of the room lies between a point and one of a
// face, which is rounded and may lie a nanometre behind its own.
func isClear(v *index.RoomView, face *index.SideView, at, foot geom.Point) bool {
	way := geom.Segment{A: at, B: foot}
	return !slices.ContainsFunc(v.Sides, func(s index.SideView) bool {
		return s.Side != face.Side && s.Line.Crosses(way)
	})
}
