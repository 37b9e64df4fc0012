package tool

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// onSide is a side that is pointed at.
type onSide struct {
	ref   *plan.SideRef
	along unit.Length // of the place pointed at, within the side
	off   unit.Length // into the room
	from  plan.ID     // what a typed distance along it is told from; empty: its left end
}

func (s onSide) id() plan.ID { return s.ref.Key() }

func (s onSide) length() unit.Length { return s.ref.Line().Length() }

// roomAt returns the room a point is in, or nil; the one of the lower ID where two meet.
func roomAt(ix *index.Index, level plan.ID, p geom.Point) *plan.Room {
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
// point is in, which is returned though it does not fit; outside of rooms, such as within a
// wall, the nearest within reach that fits.
func faceAt(t Window, p Pointer, fits func(*plan.Side) bool) (onSide, bool) {
	if p.OnUnfold {
		return faceOf(t.Index(), p.Side, p.At)
	}
	if r := roomAt(t.Index(), t.Level(), p.At); r != nil {
		side, ok := nearestSide(t.Index(), r.Sides, p.At, plan.Reach, nil)
		return side, ok && (fits == nil || fits(side.ref.Side()))
	}
	reach := max(p.Reach, index.MaxPartition/2)
	var sides []*plan.Side
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(p.At).Expand(reach)) {
		if ref, ok := t.Index().Side(id); ok && id.Kind() == plan.KindSide {
			sides = append(sides, ref.Side())
		}
	}
	return nearestSide(t.Index(), sides, p.At, reach, fits)
}

// faceOf returns a side by its ID with the place on it nearest to a point.
func faceOf(ix *index.Index, side plan.ID, at geom.Point) (onSide, bool) {
	ref, ok := ix.Side(side)
	if !ok {
		return onSide{}, false
	}
	along, off := ref.Line().Project(at)
	return onSide{ref: ref, along: max(0, min(ref.Line().Length(), along)), off: off}, true
}

func nearestSide(ix *index.Index, sides []*plan.Side, at geom.Point, reach unit.Length, fits func(*plan.Side) bool) (onSide, bool) {
	ref, ok := ix.NearestSide(sides, at, reach, fits)
	if !ok {
		return onSide{}, false
	}
	return faceOf(ix, ref.Key(), at)
}

// takesOpening reports whether a box can sit in a side.
func takesOpening(s *plan.Side) bool { return s.Kind != plan.SideOpen }

// heightOf returns the height of an opening's centre above the finished floor.
func heightOf(ix *index.Index, o *plan.Opening) unit.Length {
	place, _ := ix.Place(o.At)
	return frame.CentreHeight(o, place.Room)
}

// distances are the live dimensions of a place on a side: to its neighbours on either
// hand, or to the corners.
func distances(t Window, s onSide, at unit.Length, self plan.ID) []Dim {
	f, ok := frame.FaceOf(t.Index(), s.id())
	if !ok {
		return nil
	}
	left, right := f.Neighbours(at, self)
	return liveDims(t, s, f, [2]unit.Length{left.At, at}, [2]unit.Length{at, right.At})
}

// besides are the live dimensions of a stretch of a side: from its ends to the corners.
func besides(t Window, s onSide, from, to unit.Length) []Dim {
	f, ok := frame.FaceOf(t.Index(), s.id())
	if !ok {
		return nil
	}
	left, right := f.Ends()
	return liveDims(t, s, f, [2]unit.Length{left.At, from}, [2]unit.Length{to, right.At})
}

// liveDims shows spans of the face of a side that have any length.
func liveDims(t Window, side onSide, f frame.Face, spans ...[2]unit.Length) (dims []Dim) {
	line := geom.FrameOf(f.Line)
	d := Dim{Aside: line.Out(), Wall: wallDepth(t.Index(), side.id())}
	for _, corner := range side.ref.Room.Outline() {
		_, out := line.Project(corner)
		d.Deep = max(d.Deep, out)
	}
	for _, s := range spans {
		if from, to := s[0], s[1]; to > from {
			d.From, d.To, d.Text = line.Point(from, 0), line.Point(to, 0), t.System().Format(to-from)
			dims = append(dims, d)
		}
	}
	return dims
}

// onStep returns the multiple of a step nearest to l that lies within two bounds, or l kept
// within them where none does.
func onStep(l, low, high, step unit.Length) unit.Length {
	least, most := (low+step-1)/step*step, high/step*step
	if least > most {
		return between(l, low, high)
	}
	return between(toGrid(l, step), least, most)
}

// restWithin returns the stop within reach, or else the place on the step, from 0 to a most.
func restWithin(stops []stop, at, reach, most, step unit.Length) (unit.Length, words.Text) {
	if s, ok := nearest(stops, at, reach); ok {
		return s.at, s.name
	}
	return onStep(at, 0, most, step), words.Text{}
}

// between keeps l within two bounds; where they cross, it is halfway.
func between(l, low, high unit.Length) unit.Length {
	if low > high {
		return (low + high) / 2
	}
	return max(low, min(high, l))
}
