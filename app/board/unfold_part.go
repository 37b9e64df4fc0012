package board

import (
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/unfold"
)

// whole returns the strip as wide as it is with the faces of fixtures beside it.
func (u *Unfold) whole() unfold.Strip {
	s := u.strip
	if n := len(u.faces); n > 0 {
		s.Width = u.partLeft(u.faces[n-1]) + u.faces[n-1].Length
	}
	return s
}

// partLeft returns where a fixture's face begins, from the left end of the strip.
func (u *Unfold) partLeft(f unfold.FixtureFace) unit.Length {
	return u.strip.Width + unfold.FixtureFaceGap + f.Left
}

// faceOf returns the face that a place is on, in the row; one of a fixture has no side.
func (u *Unfold) faceOf(at plan.Anchor) (unfold.Face, bool) {
	if at.Part == plan.PartFace {
		return u.strip.Face(at.Host)
	}
	for _, f := range u.faces {
		if f.Fixture.ID == at.Host && f.Part == at.Part {
			return unfold.Face{Left: u.partLeft(f), Length: f.Length}, true
		}
	}
	return unfold.Face{}, false
}

// onFixture returns what tools are told of a place at a distance along the row and a
// height, or false where no fixture's face is nearest.
func (u *Unfold) onFixture(x, high unit.Length) (tool.Pointer, bool) {
	if len(u.faces) == 0 || x < u.strip.Width+unfold.FixtureFaceGap/2 {
		return tool.Pointer{}, false
	}
	face := u.faces[0]
	for _, f := range u.faces {
		if x >= u.partLeft(f)-unfold.FixtureFaceGap/2 {
			face = f
		}
	}
	at := plan.Anchor{Host: face.Fixture.ID, Part: face.Part, Along: max(0, min(face.Length, x-u.partLeft(face)))}
	place, _ := u.pic.Index.Place(at)
	return tool.Pointer{
		At: place.Foot, OnUnfold: true, Part: at, Height: max(face.Fixture.Bottom, min(face.Fixture.Top(), high)),
	}, true
}
