package frame

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// besideMargin is how far beside what would hide it a box is offered, so that a plug has
// room (common practice).
const besideMargin = 2 * unit.Inch

// Clearance says what a box keeps clear of beside what it cannot meet: what would hide it,
// and studs.
type Clearance struct{ OfHiding, OfStuds bool }

// ClearOfAll is of a box that is in reach and in the way of no stud.
var ClearOfAll = Clearance{true, true}

// Free returns where along a side the centre of an opening of its size and height may be,
// ends included: its plate within the face and clear of all that is InTheWay of it, of what
// else is named and, where asked, of what is Hiding a box and of studs.
func Free(s *index.SideView, room *plan.Room, o *plan.Opening, of Clearance, also ...Rect) []geom.Interval {
	f := FaceIn(s)
	mine := RectOf(o, room)
	width := mine.Right - mine.Left
	half := width - width/2
	edge := half + overOf(o).Width
	free := []geom.Interval{{From: edge, To: f.Length - edge}}
	if f.Side.Kind != plan.SideWall || free[0].From > free[0].To {
		return nil
	}
	taken := append(InTheWay(s, room, o), also...)
	if of.OfHiding {
		taken = append(taken, Hiding(s)...)
	}
	for _, r := range taken {
		if r.Bottom < mine.Top && mine.Bottom < r.Top {
			free = outside(free, geom.Interval{From: r.Left - half, To: r.Right + half})
		}
	}
	if !of.OfStuds {
		return free
	}
	for stud := range f.Framed().Between(mine.Bottom, mine.Top) {
		free = outside(free, geom.Interval{From: stud.Left() - half, To: stud.Right() + half})
	}
	return free
}

// IsFree reports whether the centre of an opening of its size and height may be at a place
// along a side, as Free has them.
func IsFree(s *index.SideView, room *plan.Room, o *plan.Opening, at unit.Length, of Clearance, also ...Rect) bool {
	return slices.ContainsFunc(Free(s, room, o, of, also...), func(i geom.Interval) bool { return i.From <= at && at <= i.To })
}

// overOf is how far the plate of an opening reaches past its box, to either side and up and
// down; nothing where it does not.
func overOf(o *plan.Opening) part.Outline {
	plate, front := PlateOf(o), FrontOf(o)
	return part.Outline{
		Width:  max(0, (plate.Width-front.Width+1)/2),
		Height: max(0, (plate.Height-front.Height+1)/2),
	}
}

// PastPlate returns what the box of an opening may not meet for its plate to stay clear of a
// part of its face.
func PastPlate(o *plan.Opening, r Rect) Rect {
	over := overOf(o)
	return Rect{r.Left - over.Width, r.Right + over.Width, r.Bottom - over.Height, r.Top + over.Height}
}

// InTheWay returns what the box of an opening may not meet on a side: other boxes, doors and
// windows, and, farther by what its plate reaches past the box, other plates, casings,
// cabinets and what else stands there for good.
func InTheWay(s *index.SideView, room *plan.Room, o *plan.Opening) (all []Rect) {
	plate := func(r Rect) { all = append(all, PastPlate(o, r)) }
	for _, other := range s.Openings {
		if !other.IsGone() && other.ID != o.ID {
			all = append(all, RectOf(other, room))
			plate(PlacedIn(s.Side, room, other).Plate())
		}
	}
	all = append(all, Blocked(s.Side)...)
	for _, c := range s.Cuts {
		all = append(all, RectOfCut(c))
		if trim, any := CasingOf(c); any {
			plate(trim)
		}
	}
	for _, v := range s.Fixtures {
		kind := part.All().Fixture(v.Fixture.Kind)
		if kind.Encloses || kind.FloorLine == part.CounterLine || kind.Covers == part.CoversFixed {
			plate(standing(s, v))
		}
	}
	return all
}

// Hiding returns what of a side is behind something that could be pulled out, with room for a
// plug beside it.
func Hiding(s *index.SideView) (all []Rect) {
	for _, v := range s.Fixtures {
		if part.All().Fixture(v.Fixture.Kind).Hides {
			r := standing(s, v)
			all = append(all, Rect{r.Left - besideMargin, r.Right + besideMargin, r.Bottom, r.Top})
		}
	}
	return all
}

// standing returns the part of a side that a fixture at it stands before.
func standing(s *index.SideView, v index.FixtureView) Rect {
	left, _ := s.Frame.Project(v.Frame.Origin)
	return Rect{left, left + v.Fixture.Width, v.Fixture.Bottom, v.Fixture.Top()}
}

// outside returns what of some intervals lies outside of another, whose ends stay.
func outside(list []geom.Interval, taken geom.Interval) (out []geom.Interval) {
	for _, i := range list {
		if taken.To <= i.From || i.To <= taken.From {
			out = append(out, i)
			continue
		}
		if i.From <= taken.From {
			out = append(out, geom.Interval{From: i.From, To: taken.From})
		}
		if taken.To <= i.To {
			out = append(out, geom.Interval{From: taken.To, To: i.To})
		}
	}
	return out
}
