// Package frame is the built wall: where its studs stand and the bays between them, how
// deep it is, what of a box shows in its face and how deep that reaches into it, what is
// cut out of its finish, and how far things are from one another along a face.
//
// Places are along a face from its left end as seen standing in its room, heights are
// above the finished floor of that room. Both faces of a partition are given the same
// studs. Nothing here is kept: all of it is a function of the plan and the catalogue, in
// whole nanometres. Whether what stands so may be built is for the rules to say.
package frame

import (
	"cmp"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The outside of a usual box where nothing tells which it is: a nail-on device box and
// the step from one gang to the next (common practice; the step is that of standard
// plates), and a round one of the size that Table 314.16(A) lists.
const (
	oneGangWidth = 2*unit.Inch + 5*unit.Inch/16
	nailOnHeight = 3*unit.Inch + 3*unit.Inch/4
	gangStep     = unit.Inch + 13*unit.Inch/16
	roundSize    = 4 * unit.Inch
)

// FrontOf returns the outside of what an opening sets in its wall, ceiling or floor, as one
// looks at it: of the assembly's box, else of the housing that its kind comes with, else
// of a usual box of its gangs; no gangs are a round box.
func FrontOf(o *plan.Opening) part.Outline {
	if b := BoxOf(o.Assembly); b != nil && !b.Outline().IsZero() {
		return b.Outline()
	}
	if housing := housingOf(o); !housing.IsZero() {
		return housing
	}
	if o.Gangs <= 0 {
		return part.Outline{Width: roundSize, Height: roundSize, IsRound: true}
	}
	return part.Outline{Width: oneGangWidth + unit.Length(o.Gangs-1)*gangStep, Height: nailOnHeight}
}

// IsHoused reports whether a thing comes with a housing of its own in place of a box.
func IsHoused(o *plan.Opening) bool { return !housingOf(o).IsZero() }

// housingOf returns the cut-out of a kind that comes with its own housing, where no
// assembly was chosen in its place.
func housingOf(o *plan.Opening) part.Outline {
	if o.Assembly.Box != "" || o.Assembly.Code != "" {
		return part.Outline{}
	}
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Cutout
	}
	return part.Outline{}
}

// BoxOf returns the box of an assembly: the one it names goes before that of its code. It
// is nil where none is chosen or the catalogue does not know it.
func BoxOf(a plan.Assembly) *part.Box {
	box, _ := part.Known(a)
	return box
}

// CentreHeight returns the height of an opening's centre above the finished floor of its
// room, which is nil where the host is gone.
func CentreHeight(o *plan.Opening, room *plan.Room) unit.Length {
	return o.Height.Centre(FrontOf(o).Height, floorOf(room))
}

// Restated returns the height of an opening said another way: to another line of its box,
// from another floor. The box stays where it is.
func Restated(o *plan.Opening, room *plan.Room, to plan.BoxLine, from plan.Datum) plan.Height {
	return o.Height.Restated(to, from, FrontOf(o).Height, floorOf(room))
}

// HeightAt returns the height of an opening whose centre is set to one above the finished
// floor, measured as it was: to the same line of the box, from the same floor.
func HeightAt(o *plan.Opening, room *plan.Room, centre unit.Length) plan.Height {
	return plan.CentreAt(centre).Restated(cmp.Or(o.Height.To, plan.BoxCentre), cmp.Or(o.Height.From, plan.FinishedFloor),
		FrontOf(o).Height, floorOf(room))
}

func floorOf(room *plan.Room) unit.Length {
	if room == nil {
		return 0
	}
	return room.FloorThickness()
}

// Rect is a part of a face: along it, and up from the finished floor.
type Rect struct{ Left, Right, Bottom, Top unit.Length }

// RectOf returns where an opening's front lies on its face.
func RectOf(o *plan.Opening, room *plan.Room) Rect {
	front, centre := FrontOf(o), CentreHeight(o, room)
	left, bottom := o.At.Along-front.Width/2, centre-front.Height/2
	return Rect{left, left + front.Width, bottom, bottom + front.Height}
}

// RectOfCut returns what a break takes of a face.
func RectOfCut(c index.Cut) Rect {
	return Rect{Left: c.From, Right: c.To, Bottom: c.Break.Sill, Top: c.Break.Head}
}

// Meets reports whether two parts of a face overlap; edge to edge they do not.
func (r Rect) Meets(s Rect) bool {
	return r.Left < s.Right && s.Left < r.Right && r.Bottom < s.Top && s.Bottom < r.Top
}

// Moved returns it moved along the face.
func (r Rect) Moved(by unit.Length) Rect {
	return Rect{r.Left + by, r.Right + by, r.Bottom, r.Top}
}

// Centred returns it with its middle at another height.
func (r Rect) Centred(at unit.Length) Rect {
	by := at - (r.Bottom+r.Top)/2
	return Rect{r.Left, r.Right, r.Bottom + by, r.Top + by}
}
