package plan

import "studbay/plan/unit"

// leastRoom is how small a room may be in one direction and still be meant: common
// practice, a chase or a shallow closet is hardly less.
const leastRoom = unit.Foot

// IsTiny reports whether a room is so narrow that its size was hardly meant.
func IsTiny(r Room) bool {
	box := r.Outline().Box()
	return min(box.Width(), box.Height()) < leastRoom
}
