package frame

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// KeptFrom returns from what the distance of a thing on a side is told, given what it keeps:
// the side that meets its own at the right end, another thing, or empty: the left end. A side
// that does not meet its own is of a wall where it once was.
func KeptFrom(ix *index.Index, host, kept plan.ID) plan.ID {
	if kept.Kind() == plan.KindSide && kept != RightOf(ix, host) {
		return ""
	}
	return kept
}

// RightOf returns the side that meets a side at its right end: what a distance from its right
// corner is kept as. It is empty where there is no such side.
func RightOf(ix *index.Index, side plan.ID) plan.ID {
	if ref, ok := ix.Side(side); ok {
		return ref.Room.Sides[(ref.At+1)%len(ref.Room.Sides)].ID
	}
	return ""
}

// Kept returns the mark that the distance of an opening on the face is told from, an end of
// the wall or the near edge of another thing on the face, and how far that is.
func (f Face) Kept(ix *index.Index, o *plan.Opening) (Mark, unit.Length) {
	left, right := f.Ends()
	switch from := KeptFrom(ix, f.Side.ID, o.From); {
	case from == "":
	case from.Kind() == plan.KindSide:
		return right, right.At - o.At.Along
	default:
		away, ok := arrange.Apart(ix.Plan(), o.ID, from)
		if !ok {
			break // it is on another face by now
		}
		thing, _ := ix.Plan().Find(from)
		if plan.AnchorOf(thing).Along > o.At.Along {
			return Mark{At: o.At.Along + away, Of: from}, away
		}
		return Mark{At: o.At.Along - away, Of: from, IsRight: true}, away
	}
	return left, o.At.Along - left.At
}
