package frame

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// MemberKind says what lumber that lies in a wall is there for.
type MemberKind string

// The kinds of lumber that lies.
const (
	BottomPlate MemberKind = "bottom-plate"
	TopPlate    MemberKind = "top-plate"
	Header      MemberKind = "header"
	Sill        MemberKind = "sill" // of a window's rough opening
)

// Member is lumber that lies in a wall as seen in a face.
type Member struct {
	Kind MemberKind
	Rect
	Break *plan.Break // of a header or a sill
}

// Members returns the plates of a wall and the headers and sills of its breaks, where its
// studs are told: a bottom plate on the subfloor, out at doors, and two top plates under the
// ceiling (common practice), which is taken to end where the ceiling's finish does, since
// nobody tells how thick that is.
func (f Framed) Members(room *plan.Room) (all []Member) {
	if len(f.All) == 0 {
		return nil
	}
	roughs, foot := f.roughs(), -room.FloorThickness()
	for _, s := range f.solid(roughs) {
		all = append(all, Member{Kind: BottomPlate, Rect: Rect{Left: s.From, Right: s.To, Bottom: foot, Top: foot + StudThick}})
	}
	for i := range unit.Length(2) {
		if top := room.Ceiling - i*StudThick; room.Ceiling > 0 {
			all = append(all, Member{Kind: TopPlate, Rect: Rect{Left: 0, Right: f.Length, Bottom: top - StudThick, Top: top}})
		}
	}
	for _, r := range roughs {
		left, right := max(0, r.Left-StudThick), min(f.Length, r.Right+StudThick) // on the jacks
		all = append(all, Member{Header, Rect{Left: left, Right: right, Bottom: r.Top, Top: r.Top + headerHigh}, r.Break})
		if r.Bottom > sillHigh {
			all = append(all, Member{Sill, Rect{Left: max(0, r.Left), Right: min(f.Length, r.Right), Bottom: r.Bottom - sillHigh, Top: r.Bottom}, r.Break})
		}
	}
	return all
}

// solid returns what of the length of a face is between the rough openings that reach the
// floor.
func (f Face) solid(roughs []Rough) (parts []geom.Interval) {
	parts = []geom.Interval{{From: 0, To: f.Length}}
	for _, r := range roughs {
		if r.Bottom <= 0 {
			parts = outside(parts, geom.Interval{From: r.Left, To: r.Right})
		}
	}
	return slices.DeleteFunc(parts, func(i geom.Interval) bool { return i.From >= i.To })
}
