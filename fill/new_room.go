package fill

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// The build-up a new room begins with, common practice: 1/2 in board on 2×4 studs at 16
// in, an 8 ft ceiling. All is the user's to change.
const (
	usualCeiling = 8 * unit.Foot
	usualSpacing = 16 * unit.Inch
	usualStud    = 7 * unit.Inch / 2
	usualBoard   = unit.Inch / 2
)

// NewRoom returns a room of usual walls with the corners, in either direction, and an
// ID for each side. Its use is what the name tells, else a living room.
func NewRoom(id plan.ID, name string, corners geom.Polygon, sides []plan.ID) plan.Room {
	use, _ := plan.UseOf(name)
	r := plan.NewRoom(id, name, use, corners, sides)
	r.Ceiling = usualCeiling
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: usualSpacing, Depth: usualStud}
		s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: usualBoard}}
	}
	return r
}
