package tool

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// dragRoom moves a whole room with what is in it.
type dragRoom struct {
	ix   *index.Index // as the drag began
	room *plan.Room
	from geom.Point
}

func (d *dragRoom) name() words.Text { return edit.MoveRoom{}.Name() }

// back takes no step: a gesture's edits are each from where it began.
func (d *dragRoom) back() edit.Edit { return edit.MoveRoom{ID: d.room.ID} }

func (d *dragRoom) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	way, name := p.At.Sub(d.from), words.Text{}
	if l, ok := typed.place(t.System()); ok {
		way = towards(way, l, p.Shift)
	} else if !p.Shift {
		way, name = d.rest(t, way, p.Reach)
	}
	preview := Preview{Snap: name}
	for i := range d.room.Sides {
		s := d.room.Segment(i)
		preview.Lines = append(preview.Lines, geom.Segment{A: s.A.Add(way), B: s.B.Add(way)})
	}
	across := d.from.Add(geom.Point{X: way.X})
	for _, s := range []geom.Segment{{A: d.from, B: across}, {A: across, B: d.from.Add(way)}} {
		if s.A != s.B {
			preview.Dims = append(preview.Dims, Dim{From: s.A, To: s.B, Text: t.System().Format(s.Length())})
		}
	}
	return edit.MoveRoom{ID: d.room.ID, By: way}, preview
}

// rest snaps a way to where faces of the room come in line with those of others or of the
// ghost, or stand a partition from others, each axis for itself; else to the grid.
func (d *dragRoom) rest(t Window, way geom.Point, reach unit.Length) (geom.Point, words.Text) {
	var l lines
	box := d.room.Outline().Box()
	near := geom.BoxOf(box.Min.Add(way), box.Max.Add(way)).Expand(lookAround)
	for _, id := range d.ix.Search(t.Level(), near) {
		if ref, ok := d.ix.Side(id); ok && id.Kind() == plan.KindSide && ref.Room.ID != d.room.ID {
			d.against(&l, ref.Line(), func(own, other, outside, othersOutside unit.Length) []stop {
				return meeting(own, other, outside, othersOutside, ref)
			})
		}
	}
	for _, ref := range ghostSides(t, near) {
		d.against(&l, ref.Line(), func(own, other, _, _ unit.Length) []stop {
			return []stop{{other - own, onGhost(t, ref), rankMiddle}}
		})
	}
	x, nameX := rest(l.xs, way.X, reach, t.System().Grid())
	y, nameY := rest(l.ys, way.Y, reach, t.System().Grid())
	return geom.Point{X: x, Y: y}, both(nameX, nameY)
}

// against adds the stops of the room's sides that run as another does along an axis. Stops
// is told where both are on the other axis, and on which side of each is its outside.
func (d *dragRoom) against(l *lines, other geom.Segment, stops func(own, other, outside, othersOutside unit.Length) []stop) {
	w := other.Vector()
	for i := range d.room.Sides {
		own := d.room.Segment(i)
		switch v := own.Vector(); {
		case v.X == 0 && w.X == 0:
			l.xs = append(l.xs, stops(own.A.X, other.A.X, rightward(v.Y), rightward(w.Y))...)
		case v.Y == 0 && w.Y == 0:
			l.ys = append(l.ys, stops(own.A.Y, other.A.Y, -rightward(v.X), -rightward(w.X))...)
		}
	}
}

// rightward is the sign of the outside of a side that runs a way along its axis: to the
// right of one that runs down the sheet is its wall at the greater X.
func rightward(along unit.Length) unit.Length {
	if along > 0 {
		return 1
	}
	return -1
}

// meeting lists how far a face has to go to stand by another: in line with one whose
// wall is on the same side, a partition away from one it turns its back to.
func meeting(own, other, outside, othersOutside unit.Length, ref *plan.SideRef) []stop {
	room := nameOf(ref.Room)
	if outside == othersOutside {
		return []stop{{other - own, words.New("snap.face", "in line with a face of {0}", room), rankEqual}}
	}
	thick := frame.PartitionBehind(ref.Side())
	return []stop{{other + othersOutside*thick - own, words.New("snap.partition", "{0} partition from {1}", words.Height(thick), room), rankMiddle}}
}

// nameOf returns what a room is called, or else what it is for.
func nameOf(r *plan.Room) string {
	if r.Name != "" {
		return r.Name
	}
	return r.Use.Text().String()
}
