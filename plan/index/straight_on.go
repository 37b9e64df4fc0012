package index

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// StraightOn returns the side by which the wall of a side goes straight on past its left
// or its right end: the next side of its room, or past an open side one of the room beyond.
// It reports false where the wall ends there.
func (ix *Index) StraightOn(ref *plan.SideRef, isRight bool) (next *plan.SideRef, ok bool) {
	n := len(ref.Room.Sides)
	beside := ref.Room.Sides[(ref.At+n-1)%n]
	line := ref.Line()
	end, away := line.A, line.B
	if isRight {
		beside, end, away = ref.Room.Sides[(ref.At+1)%n], line.B, line.A
	}
	ix.within(ref.Level, boxAround(plan.Slack, end), func(id plan.ID) {
		if id.Kind() != plan.KindSide || id == ref.Key() || ok {
			return
		}
		other, found := ix.Side(id)
		if !found || !hasFace(other.Side()) || beside.Kind != plan.SideOpen && other.Key() != beside.ID {
			return
		}
		from, to := other.Line().A, other.Line().B
		if !isRight {
			from, to = to, from
		}
		if from.Distance(end) <= plan.Slack && isStraight(away, end, to) {
			next, ok = other, true
		}
	})
	return next, ok
}

// isStraight reports whether a line from one point to the next goes straight on to a third.
func isStraight(from, end, to geom.Point) bool {
	along, out := geom.FrameOf(geom.Segment{A: from, B: end}).Project(to)
	return along > from.Distance(end) && out.Abs() <= plan.Slack
}

// mostStraight bounds how many sides a wall goes straight on by.
const mostStraight = 16

// EndOf returns the last side by which the wall of a side goes straight on past its left or
// its right end, and how far past that end the wall goes: none and 0 where it ends there.
func (ix *Index) EndOf(ref *plan.SideRef, isRight bool) (last *plan.SideRef, past unit.Length) {
	at := ref
	for range mostStraight {
		next, ok := ix.StraightOn(at, isRight)
		if !ok || next.Key() == ref.Key() {
			break
		}
		at, last, past = next, next, past+next.Line().Length()
	}
	return last, past
}
