package frame

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// BareEnds returns how much farther out than the ends of a finished side of a room those of
// the bare studs are: at an inner corner by what will be put on the wall round it, at an
// outer one by so much nearer, which is below zero. At what is no wall nothing is put on.
func BareEnds(room *plan.Room, at int) (left, right unit.Length) {
	n := len(room.Sides)
	return bareEnd(room, at, (at+n-1)%n), bareEnd(room, at, (at+1)%n)
}

// bareEnd returns it of the corner with one of the next sides.
func bareEnd(room *plan.Room, at, next int) unit.Length {
	side := room.Sides[next]
	if side.Kind != plan.SideWall {
		return 0
	}
	line, beside := geom.FrameOf(room.Segment(at)), room.Segment(next)
	far := beside.B
	if n := len(room.Sides); next == (at+n-1)%n {
		far = beside.A
	}
	switch _, out := line.Project(far); {
	case out > 0:
		return SetProud(side)
	case out < 0:
		return -SetProud(side)
	}
	return 0
}
