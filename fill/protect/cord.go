package protect

import (
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// cordTo returns how far a cord runs from a point of a room to the edge of a fixture, in
// the plan and never through a wall of the room: straight, or round its corners. It
// reports false where none does.
func cordTo(v *index.RoomView, from geom.Point, f index.FixtureView) (unit.Length, bool) {
	return v.Room.Outline().WaysFrom(from).ToArea(f.Footprint)
}
