package frame

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Rough is the rough opening of a break as seen in a face: what is left clear between
// jacks, header and floor or sill.
type Rough struct {
	Break *plan.Break
	Rect
}

// RoughOf returns the rough opening of a cut: as usual for the kind of break unless that
// says otherwise. A fireplace has none: what holds the wall round it is not known.
func RoughOf(c index.Cut) (r Rough, ok bool) {
	b := c.Break
	if b.Kind == plan.BreakFireplace {
		return Rough{}, false
	}
	kind := part.All().Break(b.Kind)
	side, top := kind.RoughSide, kind.RoughTop
	if b.Rough.Side != nil {
		side = *b.Rough.Side
	}
	bottom := side
	if b.Rough.Bottom != nil {
		bottom = *b.Rough.Bottom
	}
	if b.Rough.Top != nil {
		top = *b.Rough.Top
	}
	r = Rough{b, Rect{Left: c.Start - side, Right: c.Start + b.Width + side, Top: b.Head + top}}
	if b.Sill > 0 {
		r.Bottom = max(b.Sill-bottom, 0)
	}
	return r, true
}

// roughs returns those of a face's breaks.
func (f Face) roughs() (all []Rough) {
	for _, c := range f.Cuts {
		if r, ok := RoughOf(c); ok {
			all = append(all, r)
		}
	}
	return all
}

// The height of a header and of a sill (common practice: 2×6 and 2× lumber laid flat).
const (
	headerHigh = 11 * unit.Inch / 2
	sillHigh   = StudThick
)

// framedMore is how many studs an opening adds as a rule: four of its own, and cripples above
// and below.
const framedMore = 8

// framed returns the studs of a wall once the opening is framed: a jack against it at
// either hand, a king against each jack; what of the layout is between the kings goes,
// and over the header and under the sill stays as a cripple. It writes to the list that it is
// given, which grows by framedMore as a rule.
func (r Rough) framed(studs []Stud) []Stud {
	left, right := r.Left-2*StudThick, r.Right+2*StudThick
	upright := func(at unit.Length, kind StudKind, top unit.Length) Stud {
		return Stud{At: at, Thick: StudThick, Kind: kind, State: plan.StudAssumed, Top: top}
	}
	var few [32]Stud // a wall's, as a rule
	all := studs[:0]
	for _, s := range append(few[:0], studs...) {
		// A king of another opening, and an end of the face, stand where they stand.
		if s.Kind != CommonStud && s.Kind != Cripple || s.Right() <= left || s.Left() >= right {
			all = append(all, s)
			continue
		}
		if s.Kind == CommonStud && s.Left() >= r.Left && s.Right() <= r.Right {
			above := s
			above.Kind, above.Bottom = Cripple, r.Top+headerHigh
			all = append(all, above)
			if r.Bottom > sillHigh {
				below := s
				below.Kind, below.Top = Cripple, r.Bottom-sillHigh
				all = append(all, below)
			}
		}
	}
	for _, s := range []Stud{
		upright(left+StudThick/2, KingStud, 0), upright(left+StudThick*3/2, JackStud, r.Top),
		upright(right-StudThick*3/2, JackStud, r.Top), upright(right-StudThick/2, KingStud, 0),
	} {
		if s.Kind == KingStud {
			all = slices.DeleteFunc(all, func(t Stud) bool { return t.Kind == EndStud && s.overlaps(t) })
		}
		all = append(all, s)
	}
	return all
}
