package trade

import (
	"slices"

	"studbay/fill/drywall"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/fullsize"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/scene"
)

// drawBoard draws a face at a scale, its floor line at the foot.
func (f *flow) drawBoard(l drywall.Layout, scale paper.Scale) {
	k := f.b.Paper.Times(scale)
	d := &boardDrawing{flow: f, left: f.Left(), foot: f.Y + l.Height.Millimetres()*k, k: k, layout: l}
	d.On.Add(layout.HLine(d.left, d.left+l.Face.Length.Millimetres()*d.k, d.foot, layout.Pen(layout.Border)))
	for _, p := range l.Pieces {
		d.On.Add(scene.Stroke{Path: d.edge(p), Pen: layout.Pen(layout.Divider)})
	}
	for _, h := range l.Holes {
		d.taken = append(d.taken, d.rect(h.Left, h.Right, h.Bottom, h.Top).Expanded(0.5))
	}
	for _, p := range l.Covered {
		r := d.rect(max(p.Left, 0), min(p.Right, l.Face.Length), p.Bottom, p.Top)
		d.taken = append(d.taken, r.Expanded(0.5))
		thin := layout.Pen(layout.Hairline)
		d.On.Add(scene.Stroke{Path: r.Path(), Pen: thin},
			scene.Stroke{Path: scene.LinePath(r.Min, r.Max), Pen: thin},
			scene.Stroke{Path: scene.LinePath(scene.Point{X: r.Min.X, Y: r.Max.Y}, scene.Point{X: r.Max.X, Y: r.Min.Y}), Pen: thin})
	}
	d.holes()
	d.names()
	if !l.IsCeiling {
		d.floorMarks()
	}
}

// collarCorner is how far the corners of a ring's collar are rounded: 1/4 in (common
// practice).
const collarCorner = unit.Inch / 4

// boardDrawing is a face in the making.
type boardDrawing struct {
	*flow
	left, foot, k float64
	layout        drywall.Layout
	taken         []scene.Rect // where no letter may stand
}

func (d *boardDrawing) rect(left, right, bottom, top unit.Length) scene.Rect {
	return scene.Rect{
		Min: scene.Point{X: d.left + left.Millimetres()*d.k, Y: d.foot - top.Millimetres()*d.k},
		Max: scene.Point{X: d.left + right.Millimetres()*d.k, Y: d.foot - bottom.Millimetres()*d.k},
	}
}

// edge is the outline of a piece.
func (d *boardDrawing) edge(p drywall.Piece) (path scene.Path) {
	if p.Outline == nil {
		return d.rect(p.Left, p.Right, p.Bottom, p.Top).Path()
	}
	for i, c := range p.Outline {
		at := d.rect(c.X, c.X, c.Y, c.Y).Min
		if i == 0 {
			path.MoveTo(at)
		} else {
			path.LineTo(at)
		}
	}
	path.Close()
	return path
}

// isOn reports whether all of a box lies on a piece.
func (d *boardDrawing) isOn(p drywall.Piece, box scene.Rect) bool {
	in := d.rect(p.Left, p.Right, p.Bottom, p.Top).Expanded(-0.4)
	if !in.Contains(box.Min) || !in.Contains(box.Max) {
		return false
	}
	if p.Outline == nil {
		return true
	}
	place := func(x, y float64) geom.Point {
		return geom.Point{X: unit.FromMillimetres((x - d.left) / d.k), Y: unit.FromMillimetres((d.foot - y) / d.k)}
	}
	m := box.Middle()
	for _, at := range []geom.Point{place(box.Min.X, box.Min.Y), place(box.Max.X, box.Min.Y), place(box.Max.X, box.Max.Y), place(box.Min.X, box.Max.Y), place(m.X, box.Min.Y), place(m.X, box.Max.Y)} {
		if !p.Outline.Contains(at) {
			return false
		}
	}
	return true
}

// holes draws the cut-outs, each with its tag where there is room beside it.
func (d *boardDrawing) holes() {
	heavy := layout.Pen(layout.Border)
	named := map[plan.ID]bool{}
	for _, h := range d.layout.Holes {
		r := d.rect(h.Left, h.Right, h.Bottom, h.Top)
		path := r.Path()
		body, _ := frame.BodyOf(h.Opening.Assembly)
		switch {
		case h.OnJoint:
		case h.Outline.IsRound:
			path = scene.Circle(r.Middle(), r.Width()/2)
		case body.HasRing:
			path = r.RoundedPath(collarCorner.Millimetres() * d.k)
		}
		d.On.Add(scene.Stroke{Path: path, Pen: heavy})
		if !h.OnJoint {
			d.screwHeads(h)
		}
		if !named[h.Opening.ID] {
			named[h.Opening.ID] = d.beside(r, h.Piece, layout.Strong, h.Opening.Tag)
		}
	}
	for _, p := range d.layout.Covered {
		r := d.rect(p.Left, p.Right, p.Bottom, p.Top)
		for i := range d.layout.Pieces {
			if d.beside(r, i, layout.Fine, p.Opening.Tag) {
				break
			}
		}
	}
}

// screwHeads marks the heads of a ring's screws, which stand behind the board.
func (d *boardDrawing) screwHeads(h drywall.Hole) {
	middle := d.rect(h.Left, h.Right, h.Bottom, h.Top).Middle()
	for _, at := range fullsize.CutOutOf(h.Opening).Heads() {
		head := middle.Add(at.Mul(d.k))
		d.taken = append(d.taken, scene.RectAround(head, 1.4, 1.4))
		d.On.Add(scene.Fill{Path: scene.Circle(head, 0.35), Color: layout.Theme.Ink})
	}
}

// beside writes a text over, under or to a side of a rectangle, within a piece, where it
// touches nothing. It reports whether there was room: the table has it all the same.
func (d *boardDrawing) beside(r scene.Rect, piece int, s layout.Style, text string) bool {
	wide, tall := s.Width(text), s.Cap()
	m := r.Middle()
	for _, at := range []scene.Point{
		{X: m.X - wide/2, Y: r.Min.Y - 1.2}, {X: r.Max.X + 1.2, Y: m.Y + tall/2}, {X: r.Min.X - 1.2 - wide, Y: m.Y + tall/2}, {X: m.X - wide/2, Y: r.Max.Y + 1.2 + tall},
	} {
		if d.write(at, piece, s, text) {
			return true
		}
	}
	return false
}

// write writes a text with its baseline at a place where that is free.
func (d *boardDrawing) write(at scene.Point, piece int, s layout.Style, text string) bool {
	box := scene.Rect{Min: scene.Point{X: at.X - 0.4, Y: at.Y - s.Cap() - 0.6}, Max: scene.Point{X: at.X + s.Width(text) + 0.4, Y: at.Y + 0.8}}
	if !d.isOn(d.layout.Pieces[piece], box) || slices.ContainsFunc(d.taken, box.Overlaps) {
		return false
	}
	d.taken = append(d.taken, box)
	d.On.Add(s.At(at.X, at.Y, text))
	return true
}

// names writes letter and size of each piece where there is room in it.
func (d *boardDrawing) names() {
	b := d.b
	for i, p := range d.layout.Pieces {
		r := d.rect(p.Left, p.Right, p.Bottom, p.Top)
		size := b.Say("drywall.size", "{0}: {1} × {2}", p.Letter, words.Height(p.Right-p.Left), words.Height(p.Top-p.Bottom))
		for _, text := range []string{size, p.Letter} {
			if d.write(scene.Point{X: r.Min.X + 1.6, Y: r.Min.Y + 1.4 + layout.Strong.Cap()}, i, layout.Strong, text) ||
				d.write(scene.Point{X: r.Min.X + 1.6, Y: r.Max.Y - 1.6}, i, layout.Strong, text) {
				break
			}
		}
	}
}

// floorMarks sets dots under each cut-out as they are drawn on the floor.
func (d *boardDrawing) floorMarks() {
	right := d.left - 1
	for _, h := range d.layout.Holes {
		x := d.left + h.Opening.At.Along.Millimetres()*d.k
		n := dotsOf(h.Opening)
		wide := 1.6 * float64(n)
		if x-wide/2 < right {
			continue
		}
		for i := range n {
			at := scene.Point{X: x + 1.6*(float64(i)-float64(n-1)/2), Y: d.foot + 2}
			d.On.Add(scene.Fill{Path: scene.Circle(at, 0.55), Color: layout.Theme.Ink})
		}
		right = x + wide/2 + 0.6
	}
}

// dotsOf is how many dots mark an opening on the floor.
func dotsOf(o *plan.Opening) int {
	k := part.All().Kind(o.Kind)
	if k == nil {
		return 4
	}
	switch k.Family {
	case part.Receptacle:
		return 1
	case part.Switch:
		return 2
	case part.Light:
		return 3
	}
	return 4
}
