package house

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Stairs are a flight that is drawn on the level of its foot and leads to a room of the
// level that they are said to lead to, or else of the next level up.
type Stairs struct {
	Fixture    *plan.Fixture
	From, To   *plan.Room   // at its foot and at its head
	Foot, Head geom.Segment // where one steps on and off, at the same place on both levels
	Upper      *plan.Level
}

// StairsFrom returns the flights that are drawn on a level and lead to a room of another: to
// one that lies over their middle, else to one that lies a step past their head.
func StairsFrom(ix *index.Index, level *plan.Level) (all []Stairs) {
	for f := range level.Fixtures.All() {
		if f.Kind != plan.FixtureStairs {
			continue
		}
		upper := ix.Plan().Level(f.Leads)
		if upper == nil {
			upper = above(ix.Plan(), level)
		}
		if upper == nil {
			continue
		}
		frame, place, ok := ix.FixtureFrame(f)
		if !ok || place.Room == nil {
			continue
		}
		s := Stairs{Fixture: f, From: place.Room, Upper: upper}
		s.Foot, s.Head = EndsOf(f, frame)
		if s.To = upstairs(upper, f, frame, s.Head); s.To != nil {
			all = append(all, s)
		}
	}
	return all
}

// above returns the next level up, or nil.
func above(p plan.Plan, level *plan.Level) (next *plan.Level) {
	for _, l := range p.Levels {
		if l.Elevation > level.Elevation && (next == nil || l.Elevation < next.Elevation) {
			next = l
		}
	}
	return next
}

// EndsOf returns the foot and the head of stairs: as they are drawn they lead to their back
// where they are deeper than wide, else to their right.
func EndsOf(f *plan.Fixture, frame geom.Frame) (foot, head geom.Segment) {
	at := func(x, y unit.Length) geom.Point { return frame.Point(x, y) }
	w, d := f.Width, f.Depth
	if d > w {
		return geom.Segment{A: at(0, d), B: at(w, d)}, geom.Segment{A: at(0, 0), B: at(w, 0)}
	}
	return geom.Segment{A: at(0, 0), B: at(0, d)}, geom.Segment{A: at(w, 0), B: at(w, d)}
}

// step is how far past the head of stairs one stands: more than a wall is thick.
const step = unit.Foot

func upstairs(upper *plan.Level, f *plan.Fixture, frame geom.Frame, head geom.Segment) *plan.Room {
	past := frame.Point(f.Width/2, -step)
	if f.Depth <= f.Width {
		past = frame.Point(f.Width+step, f.Depth/2)
	}
	rooms := slices.Collect(upper.Rooms.All())
	for _, p := range []geom.Point{frame.Point(f.Width/2, f.Depth/2), head.At(head.Length() / 2), past} {
		if i := slices.IndexFunc(rooms, func(r *plan.Room) bool { return r.Outline().Contains(p) }); i >= 0 {
			return rooms[i]
		}
	}
	return nil
}
