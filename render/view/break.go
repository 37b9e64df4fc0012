package view

import (
	"studbay/fill/part"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// usualHead is drawn for a break that does not say its head: 80 in, common practice.
const usualHead = 80 * unit.Inch

// breakBodies draws, within its box on a face, each body that a kind of break may have.
var breakBodies = map[string]func(*builder, patch, index.Cut, rect) []shape{
	"door":      (*builder).door,
	"slider":    (*builder).slider,
	"window":    (*builder).window,
	"passage":   (*builder).passage,
	"fireplace": (*builder).fireplace,
}

// cut draws what interrupts a face: its casing and what is in it.
func (b *builder) cut(g patch, c index.Cut) {
	head := c.Break.Head
	if head <= 0 {
		head = usualHead
	}
	box := rect{c.From.Millimetres(), min(c.Break.Sill, head).Millimetres(), c.To.Millimetres(), min(head.Millimetres(), g.high)}
	if trim := c.Break.Casing.Millimetres(); trim > 0 {
		round := rect{max(0, box.left-trim), box.low, min(g.wide, box.right+trim), min(g.high, box.high+trim)}
		if box.low > 0 {
			round.low -= trim
		}
		b.add(g.box(round, b.style.Theme.Surface, b.pen(1.25)))
	}
	if body := breakBodies[part.All().Break(c.Break.Kind).Body]; body != nil {
		b.add(body(b, g, c, box)...)
		return
	}
	b.add(g.box(box, b.style.Theme.Surface, b.pen(1.25)))
}

// door draws a leaf shut, with four plain panels and a knob.
func (b *builder) door(g patch, c index.Cut, box rect) []shape {
	leaf := render.Mixed(b.style.Theme.Surface, b.style.Theme.Wall, 0.07)
	all := []shape{g.box(box, leaf, b.pen(1.25))}
	wide, high := box.right-box.left, box.high-box.low
	for _, y := range [][2]float64{{0.08, 0.42}, {0.52, 0.92}} {
		for _, x := range [][2]float64{{0.13, 0.44}, {0.56, 0.87}} {
			panel := rect{box.left + x[0]*wide, box.low + y[0]*high, box.left + x[1]*wide, box.low + y[1]*high}
			all = append(all, g.box(panel, b.style.Theme.Surface, b.thin()))
		}
	}
	x := box.right - 2.75*25.4 // common practice for the set of a knob
	if isRight := (c.Break.Hand == "right") == c.IsOwn; isRight {
		x = box.left + 2.75*25.4
	}
	y := 38 * 25.4 // common practice
	return append(all, g.oval(rect{x - 28, y - 28, x + 28, y + 28}, b.style.Theme.Paper, b.pen(1)))
}

// slider draws panels of glass beside one another.
func (b *builder) slider(g patch, c index.Cut, box rect) []shape {
	all := []shape{g.box(box, b.style.Theme.Surface, b.pen(1.25))}
	n := max(2, len(c.Break.Panels))
	wide := (box.right - box.left) / float64(n)
	for i := range n {
		pane := rect{box.left + wide*float64(i), box.low, box.left + wide*float64(i+1), box.high}.in(2 * 25.4)
		if !pane.isEmpty() {
			all = append(all, g.box(pane, b.glass(), b.pen(1)))
			all = append(all, b.glints(g, pane)...)
		}
	}
	return all
}

// window draws two sashes of panes and a stool under them.
func (b *builder) window(g patch, _ index.Cut, box rect) []shape {
	all := []shape{g.box(box, b.style.Theme.Surface, b.pen(1.25))}
	middle := (box.low + box.high) / 2
	for _, sash := range []rect{{box.left, box.low, box.right, middle}, {box.left, middle, box.right, box.high}} {
		pane := sash.in(1.75 * 25.4)
		if pane.isEmpty() {
			continue
		}
		x := (pane.left + pane.right) / 2
		all = append(all, g.box(pane, b.glass(), b.pen(1)), g.line(b.pen(1.5), x, pane.low, x, pane.high))
	}
	stool := rect{max(0, box.left-3*25.4), box.low - 1.25*25.4, min(g.wide, box.right+3*25.4), box.low}
	return append(all, g.box(stool, b.style.Theme.Surface, b.pen(1)))
}

// passage draws the shade beyond a cased opening.
func (b *builder) passage(g patch, _ index.Cut, box rect) []shape {
	return []shape{g.box(box, render.Mixed(b.style.Theme.Paper, b.style.Theme.Wall, 0.28), b.pen(1.25))}
}

// fireplace draws a surround with its firebox.
func (b *builder) fireplace(g patch, _ index.Cut, box rect) []shape {
	wide, high := box.right-box.left, box.high-box.low
	hole := rect{box.left + 0.18*wide, box.low, box.right - 0.18*wide, box.low + 0.72*high}
	return []shape{
		g.box(box, render.Mixed(b.style.Theme.Paper, b.style.Theme.Line, 0.7), b.pen(1.25)),
		g.box(hole, render.Mixed(b.style.Theme.Paper, scene.Color{A: 0xff}, 0.8), b.pen(1)),
	}
}

// glints draws two strokes on glass.
func (b *builder) glints(g patch, r rect) []shape {
	d := 0.14 * min(r.right-r.left, r.high-r.low)
	x, y := (r.left+r.right)/2, (r.low+r.high)/2+d
	pen := scene.Pen{Width: 1.5 * b.style.Pixel, Color: render.Mixed(b.glass(), b.style.Theme.Paper, 0.8)}
	var all []shape
	for _, off := range []float64{-0.45, 0.45} {
		all = append(all, g.line(pen, x+off*d-d, y-d, x+off*d+d, y+d))
	}
	return all
}
