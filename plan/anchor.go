package plan

import (
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Part says which face of the host a thing is on.
type Part string

// The parts: PartFace is of a side; PartCeiling and PartFloor are of a room; the
// rest are of a fixture, whose front looks away from the wall it stands at.
const (
	PartFace    Part = "face"
	PartCeiling Part = "ceiling"
	PartFloor   Part = "floor"
	PartTop     Part = "top"
	PartFront   Part = "front"
	PartBack    Part = "back"
	PartLeft    Part = "left"  // as seen from its front
	PartRight   Part = "right" // as seen from its front
)

// Anchor is the one place of an opening, break or fixture. Which fields count
// depends on the part; the others are zero.
//
//   - face: Along is from the side's left end as seen in the room.
//   - ceiling, floor: At is a point of the plan.
//   - top: Along is from the fixture's left edge as seen from its front, Out from
//     its back edge.
//   - front, back, left, right: Along is from that face's left edge as seen by one
//     who looks at it.
//
// Along and At are of the centre of an opening. Along is of the left end of a break
// or of a fixture as one sees it from within the room; At and Out of a fixture are
// of its centre.
type Anchor struct {
	Host  ID          `json:"host"`
	Part  Part        `json:"part"`
	Along unit.Length `json:"along,omitempty"`
	Out   unit.Length `json:"out,omitempty"`
	At    geom.Point  `json:"at,omitzero"`
}

// OnFace returns the anchor at a distance along a side.
func OnFace(side ID, along unit.Length) Anchor {
	return Anchor{Host: side, Part: PartFace, Along: along}
}

// OnCeiling returns the anchor at a point of a room's ceiling.
func OnCeiling(room ID, at geom.Point) Anchor {
	return Anchor{Host: room, Part: PartCeiling, At: at}
}

// OnFloor returns the anchor at a point of a room's floor.
func OnFloor(room ID, at geom.Point) Anchor {
	return Anchor{Host: room, Part: PartFloor, At: at}
}

// FromRight turns the place along a face so long of a thing of a width, 0 where the place
// is its middle, into how far it is from the right end of the face, and that into the place.
func FromRight(long, along, width unit.Length) unit.Length { return long - width - along }

// FaceLength returns how long the face is that an anchor is on: that of a side, or the
// width or depth of a fixture; 0 where it is on none.
func (p Plan) FaceLength(a Anchor) unit.Length {
	if a.Part == PartFace {
		if ref, _ := p.Side(a.Host); ref != nil {
			return ref.Line().Length()
		}
	} else if f, _ := p.Fixture(a.Host); f != nil {
		return f.FaceLength(a.Part)
	}
	return 0
}

// Datum says from which floor a height is measured.
type Datum string

// The data: finished floor is the default.
const (
	FinishedFloor Datum = "finished floor"
	Subfloor      Datum = "subfloor"
)

// BoxLine says to which line of the box a height is measured.
type BoxLine string

// The lines: only the centre stays true when the box is changed for another.
const (
	BoxCentre BoxLine = "centre"
	BoxBottom BoxLine = "bottom"
	BoxTop    BoxLine = "top"
)

// Height is a height as its giver said it: to which line of the box, from which
// floor. Converting needs the box's outer height and the room's floor build-up.
type Height struct {
	Value unit.Length `json:"value"`
	To    BoxLine     `json:"to"`
	From  Datum       `json:"from"`
}

// CentreAt returns a height to the centre above the finished floor.
func CentreAt(value unit.Length) Height { return Height{value, BoxCentre, FinishedFloor} }

// Centre returns the height of the box's centre above the finished floor, given the
// box's outer height and the floor's thickness on the subfloor.
func (h Height) Centre(box, floor unit.Length) unit.Length {
	v := h.Value
	if h.From == Subfloor {
		v -= floor
	}
	switch h.To {
	case BoxBottom:
		v += box / 2
	case BoxTop:
		v -= box / 2
	}
	return v
}

// Restated returns the same centre measured to another line and from another floor.
func (h Height) Restated(to BoxLine, from Datum, box, floor unit.Length) Height {
	v := h.Centre(box, floor)
	if from == Subfloor {
		v += floor
	}
	switch to {
	case BoxBottom:
		v -= box / 2
	case BoxTop:
		v += box / 2
	}
	return Height{v, to, from}
}
