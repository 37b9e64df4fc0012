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

	left, right past // where the wall goes straight on
}

// FaceOf returns the face of a side. It reports false where the side is gone.
func FaceOf(ix *index.Index, side plan.ID) (Face, bool) {
	ref, ok := ix.Side(side)
	if !ok {
		return Face{}, false
	}
	line := ref.Line()
	f := Face{Side: ref.Side(), Line: line, Length: line.Length(), Behind: ix.Behind(side), Cuts: ix.Cuts(side), Openings: ix.OpeningsOn(side)}
	f.left.to, f.left.by = ix.EndOf(ref, false)
	f.right.to, f.right.by = ix.EndOf(ref, true)
	return f, true
}

// FaceIn returns the face of a side of a room's view, which does not show where the wall
// goes on in another room.
func FaceIn(s *index.SideView) Face {
	return Face{Side: s.Side, Line: s.Line, Length: s.Length, Behind: s.Behind, Cuts: s.Cuts, Openings: s.Openings}
}
