package frame

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// besideMargin is how far beside what would hide it a box is offered, so that a plug has
// room (common practice).
const besideMargin = 2 * unit.Inch

// Free returns where along a side the centre of an opening of its size and height may be,
// ends included: clear of other boxes, of studs, of doors and windows with their casing,
// within no cabinet and behind nothing that would hide it.
func Free(s *index.SideView, room *plan.Room, o *plan.Opening) []geom.Interval {
	f := FaceIn(s)
	mine := RectOf(o, room)
	width := mine.Right - mine.Left
	half := width - width/2
	free := []geom.Interval{{From: half, To: f.Length - half}}
	if f.Side.Kind != plan.SideWall || free[0].From > free[0].To {
		return nil
	}
	take := func(r Rect) {
		if r.Bottom < mine.Top && mine.Bottom < r.Top {
			free = outside(free, geom.Interval{From: r.Left - half, To: r.Right + half})
		}
	}
	for _, other := range s.Openings {
		if other.Status != plan.StatusRemove && other.ID != o.ID {
			take(RectOf(other, room))
		}
	}
	for _, v := range s.Fixtures {
		kind, margin := part.All().Fixture(v.Fixture.Kind), unit.Length(0)
		switch {
		case kind.Encloses, kind.FloorLine == part.CounterLine:
		case kind.Hides:
			margin = besideMargin
		default:
			continue
		}
		left := v.Fixture.At.Along
		take(Rect{left - margin, left + v.Fixture.Width + margin, v.Fixture.Bottom, v.Fixture.Top()})
	}
	for _, c := range s.Cuts {
		b := c.Break
		take(Rect{c.From - b.Casing, c.To + b.Casing, b.Sill - b.Casing, b.Head + b.Casing})
	}
	for stud := range f.Framed().Between(mine.Bottom, mine.Top) {
		take(Rect{stud.Left(), stud.Right(), mine.Bottom, mine.Top})
	}
	return free
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
