package part

import (
	"studbay/plan"
	"studbay/plan/unit"
)

// BoxSize returns the outer width and height of an opening's box as one looks at it,
// those of a usual nail-on box where it is not known (common practice).
func BoxSize(o *plan.Opening) (width, height unit.Length) {
	if b := boxOf(o.Assembly); b != nil && b.Width != 0 {
		return b.Width, b.Height
	}
	gangs := unit.Length(max(o.Gangs, 1))
	return oneGangWidth + (gangs-1)*gangStep, nailOnHeight
}

// boxOf returns the box of an assembly, or nil.
func boxOf(a plan.Assembly) *Box {
	if a.Box != "" {
		return All().Box(a.Box)
	}
	if listed := All().Assembly(a.Code); listed != nil {
		return listed.Box
	}
	return nil
}

// The outside of a usual nail-on box and the step from one device to the next
// (common practice; the step is that of standard plates).
const (
	oneGangWidth = 2*unit.Inch + 5*unit.Inch/16
	nailOnHeight = 3*unit.Inch + 3*unit.Inch/4
	gangStep     = unit.Inch + 13*unit.Inch/16
)

// CentreHeight returns the height of an opening's centre above the finished floor of
// its room.
func CentreHeight(o *plan.Opening, room *plan.Room) unit.Length {
	_, height := BoxSize(o)
	var floor unit.Length
	if room != nil {
		floor = room.FloorThickness()
	}
	return o.Height.Centre(height, floor)
}

// Rect is a part of a face: along it from its left end, and up from the finished floor.
type Rect struct{ Left, Right, Bottom, Top unit.Length }

// Meets reports whether two rectangles share more than an edge.
func (r Rect) Meets(s Rect) bool {
	return r.Left < s.Right && s.Left < r.Right && r.Bottom < s.Top && s.Bottom < r.Top
}

// Moved returns it moved along the face.
func (r Rect) Moved(by unit.Length) Rect {
	return Rect{r.Left + by, r.Right + by, r.Bottom, r.Top}
}

// Centred returns it at another height.
func (r Rect) Centred(at unit.Length) Rect {
	by := at - (r.Bottom+r.Top)/2
	return Rect{r.Left, r.Right, r.Bottom + by, r.Top + by}
}

// RectOf returns what the box of an opening takes of its face.
func RectOf(o *plan.Opening, room *plan.Room) Rect {
	w, h := BoxSize(o)
	centre := CentreHeight(o, room)
	left, bottom := o.At.Along-w/2, centre-h/2
	return Rect{left, left + w, bottom, bottom + h}
}
