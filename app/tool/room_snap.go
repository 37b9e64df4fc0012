package tool

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// lookAround is how far from the pointer faces are looked for that a new corner may
// line up with.
const lookAround = 40 * unit.Foot

// lines are the places a corner may line up with, by axis.
type lines struct{ xs, ys []stop }

func (l *lines) add(isX bool, s stop) {
	if isX {
		l.xs = append(l.xs, s)
		return
	}
	l.ys = append(l.ys, s)
}

// linesNear gathers the faces of rooms along the axes, each with the place a partition
// away from it, and those of the level that shows as a ghost. Those of one room may be left
// out.
func linesNear(t Window, at geom.Point, but plan.ID) (l lines) {
	l.ofGhost(t, at)
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(at).Expand(lookAround)) {
		if id.Kind() != plan.KindSide {
			continue
		}
		ref, ok := t.Index().Side(id)
		if !ok || ref.Room.ID == but {
			continue
		}
		s := ref.Line()
		v := s.Vector()
		name := nameOf(ref.Room)
		thick := frame.PartitionBehind(ref.Side())
		switch {
		case v.X == 0:
			// Downwards the room lies to the left, so that its wall is to the right.
			out := thick
			if v.Y < 0 {
				out = -thick
			}
			l.face(true, s.A.X, out, thick, name)
		case v.Y == 0:
			out := -thick
			if v.X < 0 {
				out = thick
			}
			l.face(false, s.A.Y, out, thick, name)
		}
	}
	return l
}

// ofGhost gathers the faces of the rooms of the ghost along the axes.
func (l *lines) ofGhost(t Window, at geom.Point) {
	for _, ref := range ghostSides(t, geom.BoxOf(at).Expand(lookAround)) {
		s := ref.Line()
		name := onGhost(t, ref)
		switch v := s.Vector(); {
		case v.X == 0:
			l.add(true, stop{s.A.X, name, rankMiddle})
		case v.Y == 0:
			l.add(false, stop{s.A.Y, name, rankMiddle})
		}
	}
}

// onGhost names the snap to a side of the ghost.
func onGhost(t Window, side plan.SideRef) words.Text {
	return words.New("snap.ghost", "in line with {0} on {1}", nameOf(side.Room), t.Plan().Level(side.Level).Name)
}

// ghostSides lists the sides of the ghost's rooms in a box.
func ghostSides(t Window, box geom.Box) (all []plan.SideRef) {
	if t.Ghost() == "" {
		return nil
	}
	for _, id := range t.Index().Search(t.Ghost(), box) {
		if ref, ok := t.Index().Side(id); ok && id.Kind() == plan.KindSide {
			all = append(all, *ref)
		}
	}
	return all
}

func (l *lines) face(isX bool, at, out, thick unit.Length, room string) {
	l.add(isX, stop{at, words.New("snap.face", "in line with a face of {0}", room), rankEqual})
	l.add(isX, stop{at + out, words.New("snap.partition", "{0} partition from {1}", words.Height(thick), room), rankMiddle})
}

// corner is where the next corner would go.
type corner struct {
	at     geom.Point
	snap   words.Text
	closes bool // it is the first corner
}

// next works out where the pointer and what was typed put the next corner.
func (r *room) next(t Window) corner {
	p := r.last
	if n := len(r.corners); n >= 3 && r.corners[0].Distance(p.At) <= p.Reach {
		return corner{r.corners[0], words.New("snap.close", "close the room"), true}
	}
	if len(r.corners) == 0 {
		return r.first(t)
	}
	from := r.corners[len(r.corners)-1]
	free := p.At.Sub(from)
	if l, ok := r.typed.place(t.System()); ok {
		return corner{at: from.Add(towards(free, l, p.Shift))}
	}
	if p.Shift {
		return corner{at: gridPoint(p.At, from, t.System().Grid())}
	}
	if c, ok := otherCorner(t, p, r.corners); ok && (c.at.X == from.X || c.at.Y == from.Y) {
		return c
	}
	l := linesNear(t, p.At, "")
	for i, c := range r.corners[:len(r.corners)-1] {
		name := words.New("snap.corner", "in line with corner {0}", i+1)
		l.add(true, stop{c.X, name, rankLevel})
		l.add(false, stop{c.Y, name, rankLevel})
	}
	square := words.New("snap.square", "square")
	if free.X.Abs() >= free.Y.Abs() {
		x, name := restFrom(l.xs, p.At.X, from.X, p.Reach, t.System().Grid())
		return corner{at: geom.Point{X: x, Y: from.Y}, snap: both(square, name)}
	}
	y, name := restFrom(l.ys, p.At.Y, from.Y, p.Reach, t.System().Grid())
	return corner{at: geom.Point{X: from.X, Y: y}, snap: both(square, name)}
}

// restFrom returns the stop within reach, or the place a whole number of steps from
// where the line begins.
func restFrom(stops []stop, at, from, reach, step unit.Length) (unit.Length, words.Text) {
	stops = slices.DeleteFunc(slices.Clone(stops), func(s stop) bool { return s.at == from })
	if s, ok := nearest(stops, at, reach); ok {
		return s.at, s.name
	}
	return from + toGrid(at-from, step), words.Text{}
}

// first returns where the first corner goes: on another's corner, in line with faces, a
// partition away from one, or on the grid.
func (r *room) first(t Window) corner {
	if r.last.Shift {
		return corner{at: r.last.At}
	}
	return free(t, r.last, linesNear(t, r.last.At, ""), nil)
}

// free returns where a corner comes to rest that nothing holds to a direction: where lines
// cross, or on another's corner, if lines on both axes are not nearer. Own are the corners
// of the room itself.
func free(t Window, p Pointer, l lines, own []geom.Point) corner {
	x, nameX := rest(l.xs, p.At.X, p.Reach, t.System().Grid())
	y, nameY := rest(l.ys, p.At.Y, p.Reach, t.System().Grid())
	at := geom.Point{X: x, Y: y}
	c, ok := otherCorner(t, p, own)
	if ok && (nameX.IsZero() || nameY.IsZero() || c.at.Distance(p.At) <= at.Distance(p.At)) {
		return c
	}
	return corner{at: at, snap: both(nameX, nameY)}
}

// otherCorner returns a corner of another room within reach.
func otherCorner(t Window, p Pointer, own []geom.Point) (best corner, ok bool) {
	least := p.Reach + 1
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(p.At).Expand(p.Reach)) {
		ref, there := t.Index().Side(id)
		if id.Kind() != plan.KindSide || !there || slices.Contains(own, ref.Side().Start) {
			continue
		}
		if d := ref.Side().Start.Distance(p.At); d < least {
			least, ok = d, true
			best = corner{at: ref.Side().Start, snap: words.New("snap.room-corner", "corner of {0}", nameOf(ref.Room))}
		}
	}
	for _, ref := range ghostSides(t, geom.BoxOf(p.At).Expand(p.Reach)) {
		if d := ref.Side().Start.Distance(p.At); d < least && !slices.Contains(own, ref.Side().Start) {
			least, ok = d, true
			best = corner{at: ref.Side().Start, snap: words.New("snap.ghost-corner", "corner of {0} on {1}", nameOf(ref.Room), t.Plan().Level(ref.Level).Name)}
		}
	}
	return best, ok
}

// towards returns a vector of a length in the direction of v: along the axis nearest to
// it, or freely.
func towards(v geom.Point, l unit.Length, isFree bool) geom.Point {
	if isFree && v != (geom.Point{}) {
		return geom.Segment{B: v}.At(l)
	}
	sign := func(d unit.Length) unit.Length {
		if d < 0 {
			return -l
		}
		return l
	}
	if v.X.Abs() >= v.Y.Abs() {
		return geom.Point{X: sign(v.X)}
	}
	return geom.Point{Y: sign(v.Y)}
}

func gridPoint(p, from geom.Point, step unit.Length) geom.Point {
	return geom.Point{X: from.X + toGrid(p.X-from.X, step), Y: from.Y + toGrid(p.Y-from.Y, step)}
}
