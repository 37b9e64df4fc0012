package plan

import "studbay/plan/unit"

// The faces of a fixture are seen by one who stands before each, so that a place along
// one counts from its left end. Within a fixture a place is told from its back left corner
// as seen from its front: along its width, and out from its back.

// FaceLength returns how long a face of the fixture is along the floor, and of its top how
// wide that is; 0 for what it has not.
func (f *Fixture) FaceLength(part Part) unit.Length {
	switch part {
	case PartFront, PartBack, PartTop:
		return f.Width
	case PartLeft, PartRight:
		return f.Depth
	}
	return 0
}

// Within returns where in the fixture an anchor on its top or on one of its faces is.
func (f *Fixture) Within(a Anchor) (along, out unit.Length) {
	switch a.Part {
	case PartTop:
		return a.Along, a.Out
	case PartFront:
		return a.Along, f.Depth
	case PartBack:
		return f.Width - a.Along, 0
	case PartLeft:
		return 0, a.Along
	}
	return f.Width, f.Depth - a.Along
}

// Facing returns where along one of its four faces a place within the fixture is, and how
// far it is behind that face.
func (f *Fixture) Facing(part Part, along, out unit.Length) (at, behind unit.Length) {
	switch part {
	case PartFront:
		return along, f.Depth - out
	case PartBack:
		return f.Width - along, out
	case PartLeft:
		return out, along
	}
	return f.Depth - out, f.Width - along
}

// Holds reports whether openings are set into a face of the fixture: what stands at a wall
// or on another thing has no back to set one into.
func (f *Fixture) Holds(face Part) bool { return face != PartBack || f.At.Part == PartFloor }
