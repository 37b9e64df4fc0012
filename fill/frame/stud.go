package frame

import (
	"cmp"
	"iter"
	"slices"

	"studbay/plan"
	"studbay/plan/unit"
)

// StudThick is how much of a face a usual stud on edge takes: 1-1/2 in, the dressed
// thickness of 2× lumber (American Softwood Lumber Standard, PS 20).
const StudThick = 3 * unit.Inch / 2

// StudKind says what an upright of a wall is there for.
type StudKind uint8

// The kinds of upright.
const (
	EndStud StudKind = iota
	CommonStud
	KingStud // full height, beside the jack of a break
	JackStud // under a header
	Cripple  // above a header or under a sill, on the layout
)

// Stud is an upright of a wall as seen in a face: its centre, from the left end.
type Stud struct {
	At    unit.Length
	Thick unit.Length // along the face; 0 is StudThick
	State plan.StudState
	Kind  StudKind
	// isPlaced tells one told by itself, not by a layout.
	isPlaced bool
	// Bottom and Top bound one that is not of the wall's full height, above the finished
	// floor; a Top of 0 goes up to the plate.
	Bottom, Top unit.Length
}

func (s Stud) thick() unit.Length { return cmp.Or(s.Thick, StudThick) }

// Left and Right return the flanks of the stud. Those of one at a corner may lie past the
// end of the face.
func (s Stud) Left() unit.Length { return s.At - s.thick()/2 }

// Right returns the flank at the right.
func (s Stud) Right() unit.Length { return s.Left() + s.thick() }

// Beside returns the centres of a box of a width that stands against a flank of a stud.
func (s Stud) Beside(width unit.Length) (left, right unit.Length) {
	return s.Left() - (width - width/2), s.Right() + width/2
}

// IsBetween reports whether the stud is there anywhere from one height to another.
func (s Stud) IsBetween(bottom, top unit.Length) bool {
	return s.Bottom < top && (s.Top == 0 || bottom < s.Top)
}

func (s Stud) overlaps(t Stud) bool { return s.Left() < t.Right() && t.Left() < s.Right() }

// Studs returns the uprights of full height behind a face, from left to right: none where
// it is no wall or nobody tells a spacing. They belong to the wall, so that the other face
// of a partition is given the same ones.
func (f Face) Studs() []Stud {
	return fullHeight(f.Uprights())
}

// fullHeight keeps the uprights that go from plate to plate.
func fullHeight(all []Stud) []Stud {
	return slices.DeleteFunc(all, func(s Stud) bool { return s.Kind == JackStud || s.Kind == Cripple })
}

// Framed is a face with its uprights, worked out once.
type Framed struct {
	Face
	All   []Stud // from left to right
	State plan.StudState
}

// Framed returns the face with its uprights.
func (f Face) Framed() Framed {
	laid := f.laidOut()
	state := surest(laid)
	return Framed{f, f.uprights(laid), state}
}

// Studs is that of Face, of the uprights worked out already.
func (f Framed) Studs() []Stud { return fullHeight(slices.Clone(f.All)) }

// Between gives the uprights that are there anywhere from one height above the finished
// floor to another.
func (f Framed) Between(bottom, top unit.Length) iter.Seq[*Stud] {
	return func(yield func(*Stud) bool) {
		for i := range f.All {
			if s := &f.All[i]; s.IsBetween(bottom, top) && !yield(s) {
				return
			}
		}
	}
}

// Uprights returns all of them: common and end studs, and at each break king and jack at
// either hand and cripples that keep the layout. A stud of a layout has no place where one
// at an end of the face stands, and that one none where a stud was taped or said by itself.
func (f Face) Uprights() []Stud { return f.uprights(f.laidOut()) }

// uprights writes to the list of studs that it is given.
func (f Face) uprights(laid []Stud) []Stud {
	if !f.isTold() {
		return nil
	}
	ends, all := f.knownEnds(laid), laid[:0]
	for _, s := range laid {
		if !s.isPlaced && (slices.ContainsFunc(ends, s.overlaps) || slices.ContainsFunc(all, s.overlaps)) {
			continue
		}
		if s.isPlaced {
			ends = slices.DeleteFunc(ends, s.overlaps)
		}
		all = append(all, s)
	}
	roughs := f.roughs()
	all = append(slices.Grow(all, len(ends)+framedMore*len(roughs)), ends...)
	for _, r := range roughs {
		all = r.framed(all)
	}
	slices.SortStableFunc(all, func(a, b Stud) int {
		return cmp.Or(cmp.Compare(a.At, b.At), cmp.Compare(a.Bottom, b.Bottom))
	})
	return all
}

// knownEnds returns the studs at the ends of the face by what is known of those laid out. Where
// these were taped or said one by one and the wall stands already, nobody has seen those.
func (f Face) knownEnds(laid []Stud) []Stud {
	ends := f.ends(surest(laid))
	if !slices.ContainsFunc(laid, func(s Stud) bool { return s.isPlaced }) {
		return ends
	}
	for i := range ends {
		if at := min(max(ends[i].At, 0), f.Length); f.Side.ConditionAt(at) != plan.ConditionNew {
			ends[i].State = plan.StudAssumed
		}
	}
	return ends
}

// Bay is the clear space between two studs, or between a stud and an end of the face.
type Bay struct {
	From, To unit.Length // the near flanks of the studs
	// Left and Right are the studs at either hand, nil where the face ends first.
	Left, Right *Stud
}

// Clear returns how wide the bay is.
func (b Bay) Clear() unit.Length { return b.To - b.From }

// Bays gives the clear spaces of a face between studs that come from left to right, as far
// as there is anything between them.
func Bays(studs iter.Seq[*Stud], length unit.Length) iter.Seq[Bay] {
	return func(yield func(Bay) bool) {
		next := Bay{}
		for s := range studs {
			next.To, next.Right = min(s.Left(), length), s
			if next.From < next.To && !yield(next) {
				return
			}
			next = Bay{From: max(next.From, s.Right()), Left: s}
		}
		if next.To, next.Right = length, nil; next.From < next.To {
			yield(next)
		}
	}
}

// BayAt returns the bay of a place. Of a place within a stud it is the nearer bay, the
// left one where both are as near. It reports false where the face has none.
func BayAt(bays iter.Seq[Bay], at unit.Length) (best Bay, ok bool) {
	var away unit.Length
	for b := range bays {
		if off := max(b.From-at, at-b.To, 0); !ok || off < away {
			best, away, ok = b, off, true
		}
	}
	return best, ok
}
