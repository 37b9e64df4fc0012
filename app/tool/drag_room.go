package tool

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// dragCorner moves the corner at the left end of a side.
type dragCorner struct {
	side plan.ID
	was  geom.Point
}

func (d *dragCorner) name() words.Text { return edit.MoveCorner{}.Name() }

func (d *dragCorner) back() edit.Edit { return edit.MoveCorner{Side: d.side, To: d.was, Clamp: true} }

// typed returns the corner at a typed length from the one of its neighbours that the
// drag goes towards or away from.
func (d *dragCorner) typed(p Pointer, l unit.Length, before, after geom.Point) geom.Point {
	way := p.At.Sub(d.was)
	from, most := before, unit.Length(-1)
	for _, c := range []geom.Point{before, after} {
		if along, _ := (geom.Segment{A: c, B: d.was}).Project(c.Add(way)); along.Abs() > most {
			from, most = c, along.Abs()
		}
	}
	return geom.Segment{A: from, B: d.was}.At(l)
}

func (d *dragCorner) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	ref, ok := t.Index().Side(d.side)
	if !ok {
		return nil, Preview{}
	}
	n := len(ref.Room.Sides)
	before, after := ref.Room.Sides[(ref.At+n-1)%n].Start, ref.Room.Sides[(ref.At+1)%n].Start
	at, name := p.At, words.Text{}
	if l, ok := typed.place(t.System()); ok && l > 0 {
		at = d.typed(p, l, before, after)
	} else if !p.Shift {
		l := linesNear(t, p.At, ref.Room.ID)
		square := words.New("snap.square", "square")
		for _, c := range []geom.Point{before, after} {
			l.add(true, stop{c.X, square, rankLevel})
			l.add(false, stop{c.Y, square, rankLevel})
		}
		c := free(t, p, l, ref.Room.Outline())
		at, name = c.at, c.snap
	}
	preview := Preview{Snap: name, Lines: []geom.Segment{{A: before, B: at}, {A: at, B: after}}}
	if !name.IsZero() {
		preview.SnapAt = &at
	}
	for _, c := range []geom.Point{before, after} {
		preview.Dims = append(preview.Dims, Dim{From: c, To: at, Text: t.System().Format(c.Distance(at))})
	}
	return edit.MoveCorner{Side: d.side, To: at, Clamp: true}, preview
}

// dragSide moves a side square to itself.
type dragSide struct {
	side   plan.ID
	was    geom.Segment
	joints [2]plan.ID
}

func (d *dragSide) name() words.Text { return edit.MoveSide{}.Name() }

func (d *dragSide) back() edit.Edit { return d.by(0) }

func (d *dragSide) by(l unit.Length) edit.Edit {
	return edit.MoveSide{Side: d.side, By: l, Joints: d.joints, Clamp: true}
}

func (d *dragSide) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	_, off := d.was.Project(p.At)
	by, name := -off, words.Text{}
	if l, ok := typed.place(t.System()); ok {
		if by < 0 {
			l = -l
		}
		by = l
	} else if !p.Shift {
		by, name = d.rest(t, p, by)
	}
	f := geom.FrameOf(d.was)
	moved := geom.Segment{A: f.Point(0, -by), B: f.Point(d.was.Length(), -by)}
	preview := Preview{Lines: []geom.Segment{moved}, Snap: name}
	middle := d.was.Length() / 2
	if by != 0 {
		preview.Dims = []Dim{{From: f.Point(middle, 0), To: f.Point(middle, -by), Text: t.System().Format(by.Abs())}}
	}
	if room := depthOf(t, d.side); room > 0 {
		preview.Dims = append(preview.Dims, Dim{From: f.Point(middle/2, -by), To: f.Point(middle/2, -by+room), Text: t.System().Format(room)})
	}
	return d.by(by), preview
}

// rest snaps an upright or level side to faces of other rooms and partitions from them.
func (d *dragSide) rest(t Window, p Pointer, by unit.Length) (unit.Length, words.Text) {
	v := d.was.Vector()
	ref, ok := t.Index().Side(d.side)
	if !ok {
		return by, words.Text{}
	}
	l := linesNear(t, p.At, ref.Room.ID)
	out := geom.FrameOf(d.was).Point(0, -unit.Metre).Sub(d.was.A) // a metre outward
	switch {
	case v.X == 0 && out.X > 0:
		return d.along(t, l.xs, d.was.A.X, 1, by, p.Reach)
	case v.X == 0:
		return d.along(t, l.xs, d.was.A.X, -1, by, p.Reach)
	case v.Y == 0 && out.Y > 0:
		return d.along(t, l.ys, d.was.A.Y, 1, by, p.Reach)
	case v.Y == 0:
		return d.along(t, l.ys, d.was.A.Y, -1, by, p.Reach)
	}
	return toGrid(by, t.System().Grid()), words.Text{}
}

func (d *dragSide) along(t Window, stops []stop, from, sign, by, reach unit.Length) (unit.Length, words.Text) {
	at, name := restFrom(stops, from+sign*by, from, reach, t.System().Grid())
	return (at - from) * sign, name
}

// depthOf returns how far the facing side of its room is from a side as it stands now, or
// 0 where none faces it.
func depthOf(t Window, side plan.ID) unit.Length {
	ref, ok := t.Index().Side(side)
	if !ok {
		return 0
	}
	line := ref.Line()
	least := unit.Length(0)
	for i := range ref.Room.Sides {
		_, gap, ok := line.Overlap(ref.Room.Segment(i), unit.Inch)
		if i != ref.At && ok && gap < 0 && (least == 0 || -gap < least) {
			least = -gap
		}
	}
	return least
}
