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
}

// stop is a part of that way without studs at the height of the holes: a door, a low window, a
// side that is open or glass.
type stop struct{ from, to unit.Length }

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
		if s.Side.ID == at.Host {
			way.at, found = place(at.Along), true
		}
		if s.Side.Kind != plan.SideWall {
			way.stops = append(way.stops, stop{way.round, way.round + s.Length})
		}
		for _, c := range s.Cuts {
			if c.Break.Sill < Drilled && c.Break.Head > Drilled {
				a, b := place(c.From), place(c.To)
				way.stops = append(way.stops, stop{min(a, b), max(a, b)})
			}
		}
		way.round += s.Length
	}
	if !found {
		return along{}
	}
	way.room = room
	return way
}

// isBarred reports whether something without studs stands in the shorter way round a room from
// one box to another. Of boxes of different rooms nobody says.
func isBarred(a, b along) bool {
	if a.room == "" || a.room != b.room {
		return false
	}
	from, to := min(a.at, b.at), max(a.at, b.at)
	outside := 2*(to-from) > a.round
	for _, s := range a.stops {
		if outside && (s.from < from || s.to > to) || !outside && s.from < to && s.to > from {
			return true
		}
	}
	return false
}
