package frame

import (
	"studbay/plan"
	"studbay/plan/geom"
)

// RunsOn reports whether the wall of a side of a room goes straight on past its left and
// its right end: there the side ends, but no wall does, and no tape finds a corner.
func RunsOn(room *plan.Room, side plan.ID) (left, right bool) {
	at, n := room.SideAt(side), len(room.Sides)
	if at < 0 {
		return false, false
	}
	return isStraight(room, (at+n-1)%n, at), isStraight(room, at, (at+1)%n)
}

// isStraight reports whether a wall goes straight on from one side to the next.
func isStraight(room *plan.Room, from, to int) bool {
	a, b := room.Segment(from), room.Segment(to)
	return room.Sides[from].Kind == plan.SideWall && room.Sides[to].Kind == plan.SideWall &&
		geom.Orientation(a.A, a.B, b.B) == 0 && !geom.OnSegment(b.B, a.A, a.B)
}
