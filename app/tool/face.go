package tool

import (
	"cmp"
	"slices"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// onSide is a side that is pointed at.
type onSide struct {
	ref   *plan.SideRef
	along unit.Length // of the place pointed at, within the side
	off   unit.Length // into the room
}

func (s onSide) id() plan.ID { return s.ref.Key() }

func (s onSide) length() unit.Length { return s.ref.Line().Length() }

// roomAt returns the room a point is in, or nil; the one of the lower ID where two meet.
func roomAt(ix *plan.Index, level plan.ID, p geom.Point) *plan.Room {
	for _, id := range ix.Search(level, geom.BoxOf(p)) {
		if id.Kind() != plan.KindRoom {
			continue
		}
		if r := ix.RoomOf(id); r != nil && r.Outline().Contains(p) {
			return r
		}
	}
	return nil
}

// faceAt returns the face of the side that is pointed at: the nearest of the room the
// point is in; outside of rooms, such as within a wall, the nearest within reach.
func faceAt(t Table, p Pointer, fits func(*plan.Side) bool) (onSide, bool) {
	if p.OnUnfold {
		return faceOf(t.Index(), p.Side, p.At)
	}
	if r := roomAt(t.Index(), t.Level(), p.At); r != nil {
		return nearestSide(t.Index(), r.Sides, p.At, plan.Reach, fits)
	}
	reach := max(p.Reach, plan.MaxPartition/2)
	var sides []*plan.Side
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(p.At).Expand(reach)) {
		if ref, ok := t.Index().Side(id); ok && id.Kind() == plan.KindSide {
			sides = append(sides, ref.Side())
		}
	}
	return nearestSide(t.Index(), sides, p.At, reach, fits)
}

// faceOf returns a side by its ID with the place on it nearest to a point.
func faceOf(ix *plan.Index, side plan.ID, at geom.Point) (onSide, bool) {
	ref, ok := ix.Side(side)
	if !ok {
		return onSide{}, false
	}
	along, off := ref.Line().Project(at)
	return onSide{ref, max(0, min(ref.Line().Length(), along)), off}, true
}

func nearestSide(ix *plan.Index, sides []*plan.Side, at geom.Point, reach unit.Length, fits func(*plan.Side) bool) (best onSide, ok bool) {
	type found struct {
		id       plan.ID
		distance unit.Length
	}
	var near []found
	for _, s := range sides {
		ref, there := ix.Side(s.ID)
		if !there || fits != nil && !fits(s) {
			continue
		}
		if _, d := ref.Line().Nearest(at); d <= reach {
			near = append(near, found{s.ID, d})
		}
	}
	if len(near) == 0 {
		return onSide{}, false
	}
	n := slices.MinFunc(near, func(a, b found) int {
		return cmp.Or(cmp.Compare(a.distance, b.distance), cmp.Compare(a.id, b.id))
	})
	return faceOf(ix, n.id, at)
}

// takesOpening reports whether a box can sit in a side.
func takesOpening(s *plan.Side) bool { return s.Kind != plan.SideOpen }

// heightOf returns the height of an opening's centre above the finished floor.
func heightOf(ix *plan.Index, o *plan.Opening) unit.Length {
	place, ok := ix.Place(o.At)
	if !ok || place.Room == nil {
		return o.Height.Value
	}
	return fill.CentreHeight(o, place.Room)
}

// distances are the live dimensions of a place on a side: to the neighbours on either
// hand, or to the corners.
func distances(t Table, s onSide, at unit.Length, self plan.ID) []Dim {
	left, right := unit.Length(0), s.length()
	for _, o := range t.Index().OpeningsOn(s.id()) {
		switch x := o.At.Along; {
		case o.ID == self:
		case x <= at && x > left:
			left = x
		case x > at && x < right:
			right = x
		}
	}
	f := plan.FrameOf(s.ref.Line())
	dim := func(a, b unit.Length) Dim {
		return Dim{From: f.Point(a, 0), To: f.Point(b, 0), Text: t.System().Format(b - a), Aside: f.Out()}
	}
	var dims []Dim
	if at > left {
		dims = append(dims, dim(left, at))
	}
	if right > at {
		dims = append(dims, dim(at, right))
	}
	return dims
}

// besides are the live dimensions of a stretch of a side: from its ends to the corners.
func besides(t Table, s onSide, from, to unit.Length) (dims []Dim) {
	f := plan.FrameOf(s.ref.Line())
	for _, d := range [][2]unit.Length{{0, from}, {to, s.length()}} {
		if d[1] > d[0] {
			dims = append(dims, Dim{From: f.Point(d[0], 0), To: f.Point(d[1], 0), Text: t.System().Format(d[1] - d[0]), Aside: f.Out()})
		}
	}
	return dims
}

// between keeps l within two bounds; where they cross, it is halfway.
func between(l, low, high unit.Length) unit.Length {
	if low > high {
		return (low + high) / 2
	}
	return max(low, min(high, l))
}
