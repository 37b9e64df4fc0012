package level

import (
	"math"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// thinWall is the least thickness drawn as a body: under it a wall is a line.
const thinWall = unit.Inch

// body is a part of a side behind which the wall has one thickness.
type body struct {
	from, to  unit.Length
	thickness unit.Length
	backed    bool // the face of another room ends it
}

// wall is what stands behind one side.
type wall struct {
	side   *index.SideView
	bodies []body
}

// thicknessAt returns how thick the wall is behind a place along the side.
func (w wall) thicknessAt(along unit.Length) unit.Length {
	for _, b := range w.bodies {
		if along <= b.to {
			return b.thickness
		}
	}
	if n := len(w.bodies); n > 0 {
		return w.bodies[n-1].thickness
	}
	return 0
}

func (w wall) first() unit.Length { return w.thicknessAt(0) }
func (w wall) last() unit.Length  { return w.thicknessAt(w.side.Length) }

// isSolid reports whether a side has a wall body.
func (w wall) isSolid() bool { return w.side.Side.Kind == plan.SideWall }

// wallBehind cuts a side into bodies: between faces the gap tells; where nothing
// stands behind, the build-up does. A part no longer than a partition is thick,
// where rooms behind meet or a corner is turned, is as thick as its neighbour.
func wallBehind(s *index.SideView) wall {
	w := wall{side: s}
	free := frame.FreeThickness(s.Side)
	at := unit.Length(0)
	for _, b := range s.Behind {
		if b.To <= at {
			continue
		}
		w.gap(at, b.From, b.Gap, free)
		w.add(body{max(at, b.From), b.To, b.Gap, true})
		at = b.To
	}
	w.gap(at, s.Length, -1, free)
	return w
}

// gap adds what lies between two backings; next is the thickness after it, or −1.
func (w *wall) gap(from, to, next, free unit.Length) {
	if to <= from {
		return
	}
	thickness := free
	if to-from <= index.MaxPartition {
		if n := len(w.bodies); n > 0 {
			thickness = max(w.bodies[n-1].thickness, next)
		} else if next >= 0 {
			thickness = next
		}
	}
	w.add(body{from: from, to: to, thickness: thickness})
}

func (w *wall) add(b body) {
	if n := len(w.bodies); n > 0 && w.bodies[n-1].thickness == b.thickness {
		w.bodies[n-1].to = b.to
		w.bodies[n-1].backed = w.bodies[n-1].backed || b.backed
		return
	}
	w.bodies = append(w.bodies, b)
}

// walls draws what stands behind the sides of a room.
func (d *drawing) walls(r *roomDrawing) {
	for i := range r.view.Sides {
		r.walls = append(r.walls, wallBehind(&r.view.Sides[i]))
	}
	var solid scene.Path
	var thin []scene.Item
	for i, w := range r.walls {
		if d.Medium.Hides(w.side.Side.ID) {
			continue
		}
		if w.isSolid() {
			d.solid(r, i, &solid)
			thin = append(thin, d.thinWalls(w)...)
		}
	}
	var items []scene.Item
	if !solid.IsEmpty() {
		items = append(items, scene.Fill{Path: solid, Color: d.Theme.Wall})
	}
	d.Put(r.view.Room.ID, render.LayerWalls, items...)
	d.Put(r.view.Room.ID, render.LayerBreaks, thin...)
	for _, w := range r.walls {
		if !w.isSolid() && !d.Medium.Hides(w.side.Side.ID) {
			items := d.lightSide(w)
			d.Put(w.side.Side.ID, render.LayerBreaks, items...)
			d.Avoid(w.side.Side.ID, items...)
		}
	}
}

// solid adds the bodies of one side to a path.
func (d *drawing) solid(r *roomDrawing, i int, path *scene.Path) {
	w, n := r.walls[i], len(r.view.Sides)
	f := d.face(w.side.Frame)
	for k, b := range w.bodies {
		if b.thickness == 0 {
			continue
		}
		t := b.thickness.Millimetres()
		from, to := b.from.Millimetres(), b.to.Millimetres()
		outerFrom, outerTo := from, to
		if k == 0 {
			outerFrom = r.corner(i, (i+n-1)%n, t)
		}
		if k == len(w.bodies)-1 {
			outerTo = to + r.corner(i, (i+1)%n, t)
		}
		if outerFrom >= outerTo {
			outerFrom, outerTo = from, to
		}
		// Clockwise as seen, as every body is, so that overlaps do not cancel.
		path.Append(scene.Polygon(d.snapped(f.at(outerFrom, -t), f.at(outerTo, -t), f.at(to, 0), f.at(from, 0))...))
	}
}

// corner returns how far along side i, in millimetres from the corner it shares with
// a neighbour, their outer faces meet. A mitre is no longer than three thicknesses.
func (r *roomDrawing) corner(i, neighbour int, t float64) float64 {
	other := 0.0
	if w := r.walls[neighbour]; w.isSolid() {
		other = w.last().Millimetres()
		if neighbour == (i+1)%len(r.walls) {
			other = w.first().Millimetres()
		}
	}
	u, v := unitVector(r.walls[i].side.Frame.Along()), unitVector(r.walls[neighbour].side.Frame.Along())
	cross, dot := u.X*v.Y-u.Y*v.X, u.X*v.X+u.Y*v.Y
	if math.Abs(cross) < 0.02 {
		return 0 // they run on in line
	}
	// P = corner + x·u + t·n(u) lies on the neighbour's outer line, P·n(v) = other,
	// where n is the normal outward: u·n(v) is the cross product, n(u)·n(v) the dot.
	limit := 3 * max(t, other)
	return max(-limit, min(limit, (other-t*dot)/cross))
}

// thinWalls draws as a line the parts of a wall that have next to no body.
func (d *drawing) thinWalls(w wall) (items []scene.Item) {
	f := d.face(w.side.Frame)
	for _, b := range w.bodies {
		if b.thickness >= thinWall {
			continue
		}
		pen := scene.Pen{Width: 2 * d.Medium.Pixel, Color: d.Theme.Wall, Cap: scene.SquareCap}
		for _, s := range uncut(w.side, b.from, b.to) {
			items = append(items, scene.Stroke{Path: f.line(s.from, 0, s.to, 0), Pen: pen})
		}
	}
	return items
}

// span is a part of a side in millimetres.
type span struct{ from, to float64 }

// uncut returns what of a part of a side no break takes.
func uncut(s *index.SideView, from, to unit.Length) (spans []span) {
	for _, c := range s.Cuts {
		if c.From > from && c.From < to {
			spans = append(spans, span{from.Millimetres(), c.From.Millimetres()})
		}
		if c.To > from {
			from = c.To
		}
	}
	if from < to {
		spans = append(spans, span{from.Millimetres(), to.Millimetres()})
	}
	return spans
}
