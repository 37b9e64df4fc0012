package spacing

import (
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
	side  plan.ID     // on a face; empty in the floor
	along unit.Length // on a face
	at    geom.Point  // in the floor
}

// receptacles returns the receptacle outlets of a room that a wall space may count:
// not those to be removed, too high, within a cabinet, or lit and put out as a whole by
// a switch.
func receptacles(v index.RoomView, fig *code.Figures) (out []outlet) {
	for _, s := range v.Sides {
		for _, o := range s.Openings {
			if countsForWalls(o, v.Room, fig) && !isInCabinet(o, v.Room, s.Fixtures) {
				out = append(out, outlet{side: s.Side.ID, along: o.At.Along})
			}
		}
	}
	for _, o := range v.Floor {
		if countsForWalls(o, v.Room, fig) {
			out = append(out, outlet{at: o.At.At})
		}
	}
	return out
}

func countsForWalls(o *plan.Opening, room *plan.Room, fig *code.Figures) bool {
	if o.Status == plan.StatusRemove || !kindCounts(o.Kind, room.Use) || isWhollySwitched(o) {
		return false
	}
	return o.At.Part != plan.PartFace || frame.CentreHeight(o, room) <= fig.Spacing.ReceptacleMaxHeight
}

// isInCabinet reports whether an opening on a side is within a cabinet at that side.
func isInCabinet(o *plan.Opening, room *plan.Room, at []index.FixtureView) bool {
	for _, f := range at {
		if !isCabinet(f.Fixture) {
			continue
		}
		left, height := f.Fixture.At.Along, frame.CentreHeight(o, room)
		if left <= o.At.Along && o.At.Along <= left+f.Fixture.Width &&
			f.Fixture.Bottom <= height && height <= f.Fixture.Top() {
			return true
		}
	}
	return false
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
		for _, p := range r.pieces {
			if p.side.Side.ID == o.side && p.holds(o.along) {
				places = append(places, p.start+o.along-p.from)
			}
		}
	}
	slices.Sort(places)
	return slices.Compact(places)
}

// holds reports whether a place along the piece's side is in the piece.
func (p piece) holds(along unit.Length) bool { return p.from-grain <= along && along <= p.to+grain }

// placesOfFloor returns where a point of the floor stands before a run, near enough and
// with no wall between: straight off a piece, or else off an outside corner.
func (r run) placesOfFloor(at geom.Point, v *index.RoomView, reach unit.Length) (places []unit.Length) {
	for _, p := range r.pieces {
		along, out := p.side.Frame.Project(at)
		if p.holds(along) && -grain <= out && out <= reach+grain && isClear(v, p.side, at, p.side.Frame.Point(along, 0)) {
			places = append(places, p.start+along-p.from)
		}
	}
	if len(places) > 0 {
		return places
	}
	for i, p := range r.pieces {
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
