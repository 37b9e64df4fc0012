package fill

import (
	"studbay/fill/frame"
	"studbay/fill/naming"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// usualRoom is the build-up a new room begins with: 1/2 in board on 2×4 studs at 16 in
// and an 8 ft ceiling, or the same in the metric sizes such parts are sold in. Common
// practice; all is the user's to change.
var usualRoom = map[unit.System]struct{ ceiling, spacing, stud, board unit.Length }{
	unit.Imperial: {8 * unit.Foot, 16 * unit.Inch, frame.UsualStud, part.UsualBoard},
	unit.Metric:   {2400 * unit.Millimetre, 400 * unit.Millimetre, 89 * unit.Millimetre, part.UsualBoard},
}

// NewRoom returns a room of walls usual where people think in the units, with the
// corners, in either direction, and an ID for each side. Its use is what the name tells.
func NewRoom(units unit.System, id plan.ID, name string, corners geom.Polygon, sides []plan.ID) plan.Room {
	r := plan.NewRoom(id, name, naming.UseOf(name), corners, sides)
	usual := usualRoom[units]
	r.Ceiling = usual.ceiling
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: usual.spacing, Depth: usual.stud}
		s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: usual.board}}
	}
	return r
}

// RenameRoom gives a room another name. Its use follows as long as it is what the old name
// told and the new one tells one: a use that somebody chose stays.
func RenameRoom(r *plan.Room, title string) edit.RenameRoom {
	e := edit.RenameRoom{ID: r.ID, Title: title}
	if told := naming.UseOf(title); told != plan.UseUnknown && r.Use == naming.UseOf(r.Name) {
		e.Use = told
	}
	return e
}

// usualLayer is how thick a layer begins: common practice for board and for tile.
const usualLayer = part.UsualBoard

// NewTrim returns a trim along a face as it begins: a baseboard of an old house is about 7 in
// high (common practice); all of it is the user's to change.
func NewTrim(name string) plan.Trim { return plan.Trim{Name: name, Height: 7 * unit.Inch} }

// NewProbe returns a place that was looked behind as it begins: as wide as a bay between
// studs at 16 in, found clear.
func NewProbe(from unit.Length) plan.Probe {
	return plan.Probe{From: from, To: from + 29*unit.Inch/2, Clear: true}
}

// NewZone returns the part of a face that goes on from those there are up to a place, opened
// until it is said otherwise.
func NewZone(before []plan.Zone, to unit.Length) plan.Zone {
	z := plan.Zone{To: to, Condition: plan.ConditionOpened}
	if len(before) > 0 {
		z.From = before[len(before)-1].To
	}
	return z
}

// NewLayer returns a layer of a build-up as it begins; all of it is the user's to change.
func NewLayer(name string) plan.Layer { return plan.Layer{Name: name, Thickness: usualLayer} }
