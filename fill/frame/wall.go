package frame

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Wall is a face with its studs and the boxes of either face, as they will be built.
type Wall struct {
	Framed
	Room  *plan.Room
	Boxes []Placed // in this face, from left to right
	// Behind are those set from the other side, as they lie when seen from this one.
	Behind []Placed
}

// Placed is the box of an opening where it is in a wall. What is to be removed has none.
type Placed struct {
	Rect
	Opening *plan.Opening
	Side    *plan.Side // the face that it is set in, as it is there
	Room    *plan.Room
	Box     *part.Box // nil where none is chosen or known
	Body    Body      // the zero value where there is no Box
	// IsHoused tells a thing that comes with a housing of its own in place of a box.
	IsHoused bool
}

// InFraming returns how deep the box reaches behind the face of the studs.
func (p Placed) InFraming() unit.Length { return p.Body.InFraming(SetProud(p.Side)) }

// IsBuiltIn reports whether the box is known and lies within the wall: one on its surface,
// on the end of a raceway or in masonry does not.
func (p Placed) IsBuiltIn() bool {
	if p.Box == nil {
		return false
	}
	switch p.Box.Mounting {
	case part.Surface, part.InMasonry, part.OnRaceways, part.InFloor:
		return false
	}
	return true
}

// IsThere reports whether the box is built in already: where it stands is no question.
func (p Placed) IsThere() bool { return p.Opening.HasOldBox() }

// WallIn returns the wall of a side of a room's view, worked out once.
func WallIn(s *index.SideView, room *plan.Room) *Wall {
	w := &Wall{Framed: FaceIn(s).Framed(), Room: room, Boxes: make([]Placed, 0, len(s.Openings))}
	for _, o := range s.Openings {
		if !o.IsGone() {
			w.Boxes = append(w.Boxes, placed(o, s.Side, room))
		}
	}
	for i, b := range s.Behind {
		w.addBehind(b, s.OpeningsBehind[i])
	}
	return w
}

// PlacedIn returns the box of an opening as it would be built in a face.
func PlacedIn(side *plan.Side, room *plan.Room, o *plan.Opening) Placed { return placed(o, side, room) }

func placed(o *plan.Opening, side *plan.Side, room *plan.Room) Placed {
	p := Placed{Rect: RectOf(o, room), Opening: o, Side: FaceAt(side, room, o), Room: room, Box: BoxOf(o.Assembly)}
	p.Body, _ = BodyOf(o.Assembly)
	p.IsHoused = IsHoused(o)
	return p
}

// FaceAt returns a face as it is where an opening is set in it: with the layers and the
// framing of that part, and over them a baseboard or a rail that the plate lies on whole. Such
// trim is taken as wood (common practice).
func FaceAt(side *plan.Side, room *plan.Room, o *plan.Opening) *plan.Side {
	here := side.At(o.At.Along)
	if len(here.Trim) == 0 {
		return here
	}
	plate := Placed{Rect: RectOf(o, room), Opening: o}.Plate()
	for _, t := range here.Trim {
		if t.Thick > 0 && t.Holds(plate.Bottom, plate.Top) {
			trimmed := *here
			trimmed.Finish = append(slices.Clone(here.Finish), plan.Layer{Name: t.Name, Thickness: t.Thick, Combustible: true})
			return &trimmed
		}
	}
	return here
}

// addBehind adds the boxes of a face behind as they lie along this one. Their heights are
// above this room's finished floor: both rooms stand on one subfloor.
func (w *Wall) addBehind(b index.Backing, openings []*plan.Opening) {
	_, end := w.across(b)
	up := b.Room.FloorThickness() - w.Room.FloorThickness()
	first := len(w.Behind)
	w.Behind = slices.Grow(w.Behind, len(openings))
	for _, o := range openings {
		if at := end - o.At.Along; o.IsGone() || at < b.From || at > b.To {
			continue
		}
		p := placed(o, b.Side, b.Room)
		p.Rect = Rect{Left: end - p.Right, Right: end - p.Left, Bottom: p.Bottom + up, Top: p.Top + up}
		w.Behind = append(w.Behind, p)
	}
	slices.SortStableFunc(w.Behind[first:], func(a, b Placed) int { return int(min(max(a.Left-b.Left, -1), 1)) })
}
