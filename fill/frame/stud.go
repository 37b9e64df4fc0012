package frame

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// StudThick is how much of a face a stud on edge takes: 1-1/2 in, the dressed thickness of
// 2× lumber (American Softwood Lumber Standard, PS 20).
const StudThick = 3 * unit.Inch / 2

// Stud is a stud as seen in a face: its centre, from the left end.
type Stud struct{ At unit.Length }

// Left and Right return the flanks of the stud. Those of one at a corner may lie past the
// end of the face.
func (s Stud) Left() unit.Length { return s.At - StudThick/2 }

// Right returns the flank at the right.
func (s Stud) Right() unit.Length { return s.Left() + StudThick }

// Studs returns the common studs behind a face, from left to right: none where it is no
// wall or nobody tells a spacing. They belong to the wall, so that the other face of a
// partition is given the same ones.
//
// Of two faces with different layouts the one that states its first stud holds, of two
// alike the longer, whose wall was framed in one piece, and of two as long that of the
// lower ID.
func (f Face) Studs() (studs []Stud) {
	if f.Side.Kind != plan.SideWall {
		return nil
	}
	at := unit.Length(0)
	for _, b := range f.Behind {
		if b.Side.Kind != plan.SideWall || b.To <= at {
			continue
		}
		studs = append(studs, f.ownStuds(at, b.From-1)...)
		studs = append(studs, f.studsWith(b, max(at, b.From), b.To)...)
		at = b.To + 1
	}
	studs = append(studs, f.ownStuds(at, f.Length)...)
	slices.SortStableFunc(studs, func(a, b Stud) int { return cmp.Compare(a.At, b.At) })
	return studs
}

// ownStuds returns what the face's own layout puts between two places, both included.
func (f Face) ownStuds(from, to unit.Length) (studs []Stud) {
	for _, at := range commons(f.Side.Studs, f.Length) {
		if from <= at && at <= to {
			studs = append(studs, Stud{at})
		}
	}
	return studs
}

// studsWith returns the studs between two places where another wall stands behind.
func (f Face) studsWith(b index.Backing, from, to unit.Length) (studs []Stud) {
	line := b.Room.Segment(b.Room.SideAt(b.Side.ID))
	length := line.Length()
	if f.goesBefore(b.Side, length) {
		return f.ownStuds(from, to)
	}
	// The other face runs the other way: its left end is at the right as seen from here.
	end, _ := geom.FrameOf(f.Line).Project(line.A)
	for _, at := range slices.Backward(commons(b.Side.Studs, length)) {
		if here := end - at; from <= here && here <= to {
			studs = append(studs, Stud{here})
		}
	}
	return studs
}

// goesBefore reports whether the layout of the face holds before that of a side behind it.
func (f Face) goesBefore(other *plan.Side, length unit.Length) bool {
	return cmp.Or(
		cmp.Compare(said(f.Side.Studs), said(other.Studs)),
		cmp.Compare(f.Length, length),
		cmp.Compare(other.ID, f.Side.ID),
	) > 0
}

// said ranks what a side tells of its studs: nothing, a spacing, and where they begin.
func said(s plan.Studs) int {
	switch {
	case s.Spacing <= 0:
		return 0
	case s.First == 0:
		return 1
	}
	return 2
}

// commons returns the centres of the studs of a layout along a side of a length, from left
// to right, both ends included.
func commons(s plan.Studs, length unit.Length) (centres []unit.Length) {
	if s.Spacing <= 0 {
		return nil
	}
	for at := s.First % s.Spacing; at <= length; at += s.Spacing {
		centres = append(centres, at)
	}
	return centres
}

// Bay is the clear space between two studs, or between a stud and an end of the face.
type Bay struct {
	From, To unit.Length // the near flanks of the studs
	// Left and Right are the studs at either hand, nil where the face ends first.
	Left, Right *Stud
}

// Bays returns the clear spaces of a face between studs that come from left to right, as
// far as there is anything between them.
func Bays(studs []Stud, length unit.Length) (bays []Bay) {
	next := Bay{}
	for i := range studs {
		next.To, next.Right = min(studs[i].Left(), length), &studs[i]
		if next.From < next.To {
			bays = append(bays, next)
		}
		next = Bay{From: max(next.From, studs[i].Right()), Left: &studs[i]}
	}
	if next.To = length; next.From < next.To {
		bays = append(bays, next)
	}
	return bays
}

// BayAt returns the bay of a place. Of a place within a stud it is the nearer bay, the
// left one where both are as near. It reports false where the face has none.
func BayAt(bays []Bay, at unit.Length) (best Bay, ok bool) {
	var away unit.Length
	for _, b := range bays {
		if off := max(b.From-at, at-b.To, 0); !ok || off < away {
			best, away, ok = b, off, true
		}
	}
	return best, ok
}

// Beside returns the centres of a box of a width that stands against a flank of a stud.
func (s Stud) Beside(width unit.Length) (left, right unit.Length) {
	off := (StudThick + width) / 2
	return s.At - off, s.At + off
}
