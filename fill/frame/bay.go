package frame

import (
	"slices"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// IsClosed reports whether the box is in a part of a wall that stays closed.
func (p Placed) IsClosed() bool {
	return p.Side.ConditionAt(p.Opening.At.Along) == plan.ConditionClosed
}

// IsOneBay reports whether two openings are in one bay of a wall, in one face of it or in
// both, so that a cable from one to the other crosses no stud. Where a stud that would
// bound the bay is not known they are not.
func IsOneBay(ix *index.Index, a, b *plan.Opening) bool {
	face, ok := FaceOf(ix, a.At.Host)
	if !ok || a.At.Part != plan.PartFace || b.At.Part != plan.PartFace {
		return false
	}
	at, ok := face.placeOf(b)
	if !ok {
		return false
	}
	room := roomOf(ix, a)
	other := RectOf(b, roomOf(ix, b))
	rect := RectOf(a, room)
	wall := face.Framed()
	bay, ok := BayAt(Bays(wall.Between(min(rect.Bottom, other.Bottom), max(rect.Top, other.Top)), wall.Length), a.At.Along)
	return ok && wall.knows(bay) && bay.From <= at && at <= bay.To
}

// BayOf returns the bay of an opening on a face, at the height of its box. It reports false
// where a stud that bounds it is not known.
func BayOf(ix *index.Index, o *plan.Opening) (Face, Bay, bool) {
	face, ok := FaceOf(ix, o.At.Host)
	if !ok || o.At.Part != plan.PartFace {
		return face, Bay{}, false
	}
	rect, wall := RectOf(o, roomOf(ix, o)), face.Framed()
	bay, ok := BayAt(Bays(wall.Between(rect.Bottom, rect.Top), wall.Length), o.At.Along)
	return face, bay, ok && wall.knows(bay)
}

func roomOf(ix *index.Index, o *plan.Opening) *plan.Room {
	place, _ := ix.Place(o.At)
	return place.Room
}

// placeOf returns how far along the face an opening in it, or in one behind it, is.
func (f Face) placeOf(o *plan.Opening) (unit.Length, bool) {
	if o.At.Host == f.Side.ID {
		return o.At.Along, true
	}
	for _, b := range f.Behind {
		if _, end := f.across(b); b.Side.ID == o.At.Host {
			at := end - o.At.Along
			return at, b.From <= at && at <= b.To
		}
	}
	return 0, false
}

// knows reports whether both studs of a bay are known: past the last of those that were
// taped or said one by one, from the corner where the tape began, nothing tells whether the
// next is the one at the other corner.
func (f Framed) knows(b Bay) bool {
	if b.Left == nil || b.Right == nil {
		return false
	}
	last := b.Right
	if f.Side.Tape.FromRight {
		last = b.Left
	}
	return !f.isPlaced() || last.Kind != EndStud
}

// isPlaced is that of Face, of the uprights worked out already.
func (f Framed) isPlaced() bool {
	return slices.ContainsFunc(f.All, func(s Stud) bool { return s.isPlaced })
}
