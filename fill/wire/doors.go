package wire

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// along is where a box is on the way round the faces of its room, which a cable goes that is
// drilled through their studs.
type along struct {
	room  plan.ID // empty: nobody says
	at    unit.Length
	round unit.Length // all the way
	stops []stop      // where nothing can be drilled
	walls []shared    // where the studs are those of another room too
}

// stop is a part of that way without studs at the height of the holes: a door, a low window, a
// side that is open or glass.
type stop struct{ from, to unit.Length }

// shared is a part of that way along a wall that stands between two rooms.
type shared struct {
	from, to     unit.Length
	face, behind plan.ID // the sides of either room
}

// alongOf returns where an opening on a face is on the way round its room.
func alongOf(ix *index.Index, room plan.ID, at plan.Anchor) (way along) {
	if at.Part != plan.PartFace {
		return along{}
	}
	v, _ := ix.RoomView(room)
	found := false
	for i := range v.Sides {
		s := &v.Sides[i]
		place := func(x unit.Length) unit.Length { // faces are told from their left, sides go round
			if s.Frame.Point(0, 0) != s.Line.A {
				x = s.Length - x
			}
			return way.round + x
		}
		part := func(from, to unit.Length) stop {
			a, b := place(from), place(to)
			return stop{min(a, b), max(a, b)}
		}
		if s.Side.ID == at.Host {
			way.at, found = place(at.Along), true
		}
		if s.Side.Kind != plan.SideWall {
			way.stops = append(way.stops, stop{way.round, way.round + s.Length})
		}
		for _, c := range s.Cuts {
			if c.Break.Sill < Drilled && c.Break.Head > Drilled {
				way.stops = append(way.stops, part(c.From, c.To))
			}
		}
		for _, b := range s.Behind {
			between := part(b.From, b.To)
			way.walls = append(way.walls, shared{between.from, between.to, s.Side.ID, b.Side.ID})
		}
		way.round += s.Length
	}
	if !found {
		return along{}
	}
	way.room = room
	return way
}

// isTold reports whether the way round is known.
func (a along) isTold() bool { return a.room != "" }

// way is how far it is from one box to another along studs.
type way struct {
	length unit.Length // the shortest that nothing bars
	isOpen bool        // there is one
	direct unit.Length // the shortest, were there no doors
}

// isPastDoor reports whether a door is in the shortest way.
func (w way) isPastDoor() bool { return !w.isOpen || w.length > w.direct }

// wayTo returns how far it is from a box to another place on the way round its room.
func (a along) wayTo(to unit.Length) (w way) {
	from, to := min(a.at, to), max(a.at, to)
	inside, outside := to-from, a.round-(to-from)
	w.direct = min(inside, outside)
	isBarred, isRestBarred := false, false
	for _, s := range a.stops {
		isBarred = isBarred || s.from < to && s.to > from
		isRestBarred = isRestBarred || s.from < from || s.to > to
	}
	switch {
	case !isBarred && (isRestBarred || inside <= outside):
		w.length, w.isOpen = inside, true
	case !isRestBarred:
		w.length, w.isOpen = outside, true
	}
	return w
}

// drilledWay returns how far it is along studs from one box to another, in one room or in two
// that share a wall, through which the cable comes from one into the other. It reports false
// where they share none.
func drilledWay(a, b along) (best way, ok bool) {
	if a.room == b.room {
		return a.wayTo(b.at), true
	}
	for _, here := range a.walls {
		for _, there := range b.walls {
			if here.behind != there.face || here.face != there.behind {
				continue
			}
			for _, x := range crossings(here, there, a.at, b.at) {
				first, last := a.wayTo(x), b.wayTo(across(x, here, there))
				one := way{first.length + last.length, first.isOpen && last.isOpen, first.direct + last.direct}
				if !best.isOpen || one.isOpen && one.length < best.length {
					best.length, best.isOpen = one.length, one.isOpen
				}
				if !ok || one.direct < best.direct {
					best.direct = one.direct
				}
				ok = true
			}
		}
	}
	return best, ok
}

// crossings returns where a cable from one box to another may come through the wall of two
// rooms: at its ends, and where either box is in it. Places are those on the way round the
// first room.
func crossings(here, there shared, from, to unit.Length) []unit.Length {
	return []unit.Length{
		here.from, here.to,
		min(max(from, here.from), here.to),
		min(max(across(to, there, here), here.from), here.to),
	}
}

// across returns the place on the way round another room of one in a wall of both: ways round
// run with the clock, so that those of two rooms run against one another there.
func across(x unit.Length, here, there shared) unit.Length {
	return min(max(there.to-(x-here.from), there.from), there.to)
}
