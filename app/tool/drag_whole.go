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

// rest snaps a way to where faces of the room come in line with those of others, or
// stand a partition from them, each axis for itself; else to the grid.
func (d *dragRoom) rest(t Window, way geom.Point, reach unit.Length) (geom.Point, words.Text) {
	var xs, ys []stop
	box := d.room.Outline().Box()
	near := geom.BoxOf(box.Min.Add(way), box.Max.Add(way)).Expand(lookAround)
	for _, id := range d.ix.Search(t.Level(), near) {
		ref, ok := d.ix.Side(id)
		if !ok || id.Kind() != plan.KindSide || ref.Room.ID == d.room.ID {
			continue
		}
		for i := range d.room.Sides {
			own := d.room.Segment(i)
			switch v, w := own.Vector(), ref.Line().Vector(); {
			case v.X == 0 && w.X == 0:
				xs = append(xs, meeting(own.A.X, ref.Line().A.X, rightward(v.Y), rightward(w.Y), ref)...)
			case v.Y == 0 && w.Y == 0:
				ys = append(ys, meeting(own.A.Y, ref.Line().A.Y, -rightward(v.X), -rightward(w.X), ref)...)
			}
		}
	}
	x, nameX := rest(xs, way.X, reach, t.System().Grid())
	y, nameY := rest(ys, way.Y, reach, t.System().Grid())
	return geom.Point{X: x, Y: y}, both(nameX, nameY)
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
