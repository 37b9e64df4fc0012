package frame

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// UsualStud is how deep the studs of a wall are that does not tell it (common practice): a
// 2×4, 3-1/2 in dressed (American Softwood Lumber Standard, PS 20).
const UsualStud = 7 * unit.Inch / 2

// usualOutside is the sheathing and cladding outside of the studs of a wall with nothing
// behind it: 1-1/4 in (common practice).
const usualOutside = 5 * unit.Inch / 4

// FramingBetween returns the depth that is left for framing between a side and one that
// stands behind it: the gap between the faces less both finishes. It is zero or less where
// the finishes leave none.
func FramingBetween(s *plan.Side, behind index.Backing) unit.Length {
	return behind.Gap - SetProud(s) - SetProud(behind.Side)
}

// FramingAt returns the depth of the framing behind a place along the face: what the
// geometry leaves where another wall stands behind, else what the side states there; 0 where
// nobody tells. Behind plaster the keys that hold it take their part.
func (f Face) FramingAt(along unit.Length) unit.Length {
	here := f.Side.At(along)
	if b, ok := f.wallBehind(along); ok {
		return max(FramingBetween(here, b)-f.KeysAt(along), 0)
	}
	return max(here.Studs.Depth-f.KeysAt(along), 0)
}

// KeysAt returns how much of the depth of the framing the keys of plaster take at a place along
// the face, those of a wall behind with them.
func (f Face) KeysAt(along unit.Length) unit.Length {
	keys := keysOf(f.Side.At(along))
	if b, ok := f.wallBehind(along); ok {
		keys += keysOf(b.Side)
	}
	return keys
}

// wallBehind returns the wall that stands behind a place along the face, as it is there.
func (f Face) wallBehind(along unit.Length) (index.Backing, bool) {
	for _, b := range f.Behind {
		if b.Side.Kind == plan.SideWall && b.From <= along && along <= b.To {
			_, end := f.across(b)
			b.Side = b.Side.At(end - along)
			return b, true
		}
	}
	return index.Backing{}, false
}

// UsualKeys is how far plaster that has run through between laths and curled over reaches
// behind them where nobody has measured it (common practice).
const UsualKeys = unit.Inch / 2

// LathPlay is how far up or down a box may go to sit on the middle of a lath: half of a lath of
// 1-1/2 in and a gap of 1/4 (common practice).
const LathPlay = 7 * unit.Inch / 8

// IsOnWoodLath reports whether a face is plastered on wood lath.
func IsOnWoodLath(s *plan.Side) bool {
	return slices.ContainsFunc(s.Finish, func(l plan.Layer) bool { return l.Lath == plan.WoodLath })
}

// keysOf returns how far the keys of the plaster on a face reach into the wall, 0 without any.
func keysOf(s *plan.Side) (far unit.Length) {
	for _, l := range s.Finish {
		if l.Lath != plan.NoLath {
			far = max(far, cmp.Or(l.Keys, UsualKeys))
		}
	}
	return far
}

// FreeThickness returns how thick a side is drawn where nothing stands behind it: a wall
// from its face to the outside of its cladding, anything else as thick as its layers.
func FreeThickness(s *plan.Side) unit.Length {
	if s.Kind != plan.SideWall {
		return SetProud(s)
	}
	return SetProud(s) + studDepth(s) + usualOutside
}

// Extent returns the box round all of a level with the walls behind its faces as they are
// drawn, or false where it is empty.
func Extent(ix *index.Index, level plan.ID) (geom.Box, bool) {
	box, ok := ix.Extent(level)
	l := ix.Plan().Level(level)
	if !ok || l == nil {
		return box, ok
	}
	for r := range l.Rooms.All() {
		for i, s := range r.Sides {
			box = box.Union(r.Segment(i).Box().Expand(FreeThickness(s)))
		}
	}
	return box, true
}

// PartitionBehind returns how thick a partition behind a side would be, finished like it on
// both faces, with a usual stud and board where the side does not tell.
func PartitionBehind(s *plan.Side) unit.Length {
	finish := SetProud(s)
	if finish == 0 {
		finish = part.UsualBoard
	}
	return studDepth(s) + 2*finish
}

func studDepth(s *plan.Side) unit.Length {
	if s.Studs.Depth == 0 {
		return UsualStud
	}
	return s.Studs.Depth
}
