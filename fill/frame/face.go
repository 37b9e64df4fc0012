package frame

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Face is one side of a room with what is behind and in it: the wall as seen from there.
type Face struct {
	Side     *plan.Side
	Line     geom.Segment // from its left end to its right as seen in the room
	Length   unit.Length
	Behind   []index.Backing // from left to right
	Cuts     []index.Cut     // from left to right
	Openings []*plan.Opening // in any order
}

// FaceOf returns the face of a side. It reports false where the side is gone.
func FaceOf(ix *index.Index, side plan.ID) (Face, bool) {
	ref, ok := ix.Side(side)
	if !ok {
		return Face{}, false
	}
	line := ref.Line()
	return Face{ref.Side(), line, line.Length(), ix.Behind(side), ix.Cuts(side), ix.OpeningsOn(side)}, true
}

// FaceIn returns the face of a side of a room's view.
func FaceIn(s *index.SideView) Face {
	return Face{s.Side, s.Line, s.Length, s.Behind, s.Cuts, s.Openings}
}
