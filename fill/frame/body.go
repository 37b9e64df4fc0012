package frame

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// Body is what of an assembly reaches into the wall, and how it comes to the face.
type Body struct {
	// Depth is that of the box with its extensions; 0 where the catalogue does not tell.
	Depth unit.Length
	// Raise is how far the ring stands out from the box. HasRing tells one that is raised
	// by nothing from none.
	Raise   unit.Length
	HasRing bool
}

// BodyOf returns the body of an assembly. It reports false where no box is chosen or known.
func BodyOf(a plan.Assembly) (b Body, ok bool) {
	box, adds := part.Known(a)
	if box == nil {
		return Body{}, false
	}
	b.Depth = box.Depth
	for _, add := range adds {
		switch add.Kind {
		case part.Extension:
			b.Depth += add.Raise
		case part.Ring:
			b.Raise, b.HasRing = add.Raise, true
		}
	}
	return b, true
}

// InFraming returns how deep the body reaches behind the face of the studs. A box with a
// ring stands even with the studs and only its collar comes through the finish; a box
// without one comes through itself, as far as the layers are thick.
func (b Body) InFraming(layers unit.Length) unit.Length {
	if b.HasRing {
		return b.Depth
	}
	return max(b.Depth-layers, 0)
}

// SetProud returns how far the front edge of a ring, or of a box without one, stands out
// from the face of the studs of a side: the sum of its layers.
func SetProud(s *plan.Side) unit.Length { return plan.Thickness(s.Finish) }

// Spare returns what of a wall's framing the bodies that face each other in one bay leave
// between them: below zero they are too deep by so much.
func Spare(framing unit.Length, bodies ...unit.Length) unit.Length {
	for _, b := range bodies {
		framing -= b
	}
	return framing
}

// How near to a box a cable of the nonmetallic kind is fastened: to a plastic one of one gang
// without clamps (NEC 314.17(B), exception), and to all others (NEC 334.30).
const (
	StapleUnclamped = 8 * unit.Inch
	StapleUsual     = unit.Foot
)

// StapleWithin returns which of the two is that of a box.
func StapleWithin(box *part.Box) unit.Length {
	if box.Material == part.Plastic && box.Gangs == 1 && !box.Clamps {
		return StapleUnclamped
	}
	return StapleUsual
}
