package level

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// breaks draws what interrupts the sides of a room, each once, whichever room of its
// partition is met first.
func (d *drawing) breaks(r *roomDrawing) {
	for i := range r.walls {
		for _, c := range r.walls[i].side.Cuts {
			if d.drawn[c.Break.ID] || d.Medium.Hides(c.Break.ID) {
				continue
			}
			d.drawn[c.Break.ID] = true
			ref, ok := d.Index.Side(c.Break.At.Host)
			if !ok {
				continue
			}
			b := breakDrawing{
				d: d, of: c.Break, f: d.face(geom.FrameOf(ref.Line())),
				from: c.Break.At.Along.Millimetres(), wide: c.Break.Width.Millimetres(),
				deep: r.walls[i].thicknessAt((c.From + c.To) / 2).Millimetres(),
			}
			b.draw()
			d.Put(c.Break.ID, render.LayerBreaks, append(b.under, b.lines...)...)
			d.Avoid(c.Break.ID, b.lines...)
		}
	}
}

// breakDrawing is one break in the making, in millimetres along its host side and
// out of it; the far face lies at −deep.
type breakDrawing struct {
	d                *drawing
	of               *plan.Break
	f                face
	from, wide, deep float64
	under            []scene.Item // grounds: no label keeps clear of them
	lines            []scene.Item
}

func (b *breakDrawing) to() float64 { return b.from + b.wide }

func (b *breakDrawing) add(path scene.Path, pen scene.Pen) {
	b.lines = append(b.lines, scene.Stroke{Path: path, Pen: pen})
}

// breakBodies draws each body that a kind of break may have.
var breakBodies = map[string]func(*breakDrawing){
	"door":      (*breakDrawing).door,
	"slider":    (*breakDrawing).slider,
	"window":    (*breakDrawing).window,
	"passage":   (*breakDrawing).passage,
	"fireplace": (*breakDrawing).fireplace,
}

// draw draws the body of the kind; one that is not known is a passage.
func (b *breakDrawing) draw() {
	body := breakBodies[b.d.Medium.Catalogue().Break(b.of.Kind).Body]
	if body == nil {
		body = (*breakDrawing).passage
	}
	body(b)
}

// cut takes the whole body of the wall away, on a sheet a hair more, so that no edge of
// it shows through.
func (b *breakDrawing) cut() {
	hair := 0.0
	if b.d.Medium.Kind == render.Sheet {
		hair = 0.6 * b.d.Medium.Pixel / b.d.Medium.Scale
	}
	corners := b.d.snapped(b.f.at(b.from, hair), b.f.at(b.to(), hair), b.f.at(b.to(), -b.deep-hair), b.f.at(b.from, -b.deep-hair))
	b.under = append(b.under, scene.Fill{Path: scene.Polygon(corners...), Color: b.d.Theme.Paper})
}

// thresholds draws a hairline along both faces.
func (b *breakDrawing) thresholds(pen scene.Pen) {
	b.add(b.f.line(b.from, 0, b.to(), 0), pen)
	b.add(b.f.line(b.from, -b.deep, b.to(), -b.deep), pen)
}

// door draws the leaf open at a right angle and the quarter circle it sweeps.
func (b *breakDrawing) door() {
	b.cut()
	b.thresholds(b.d.Hairline())
	switch {
	case b.of.Swing == plan.SwingNone:
		// Pocket, barn, bifold or not known: the leaf stands in its opening.
		b.add(b.f.line(b.from, -b.deep/2, b.to(), -b.deep/2), b.d.InkPen(1.5))
	case b.of.Hand == plan.HandUnknown:
		b.add(b.f.line(b.from, -b.deep/2, b.to(), -b.deep/2), b.d.Dashed(b.d.InkPen(1), 4, 3))
		b.question()
	case b.of.Hand == plan.HandDouble:
		b.leaf(b.from, b.wide/2)
		b.leaf(b.to(), -b.wide/2)
	case b.of.Hand == plan.HandRight:
		b.leaf(b.to(), -b.wide)
	default:
		b.leaf(b.from, b.wide)
	}
}

// leaf draws a leaf hinged at a place, whose other edge shuts reach further along.
func (b *breakDrawing) leaf(hinge, reach float64) {
	face, open := 0.0, 1.0 // into the room of the host side
	if b.of.Swing == plan.SwingOut {
		face, open = -b.deep, -1
	}
	size := max(reach, -reach)
	b.add(b.f.line(hinge, face, hinge, face+open*size), b.d.InkPen(1.75))
	const k = 0.5523 // control points of a quarter circle
	var arc scene.Path
	arc.MoveTo(b.f.at(hinge, face+open*size))
	arc.CubicTo(
		b.f.at(hinge+k*reach, face+open*size),
		b.f.at(hinge+reach, face+open*k*size),
		b.f.at(hinge+reach, face))
	b.add(arc, b.d.Dashed(b.d.MutedPen(), 3.5, 2.5))
}

// question marks that the hand is not known yet.
func (b *breakDrawing) question() {
	size := b.d.Medium.Text
	if b.wide*b.d.Medium.Scale < 2*size {
		return
	}
	at := b.f.at(b.from+b.wide/2, -b.deep/2)
	b.under = append(b.under, scene.Fill{Path: scene.Circle(at, 0.75*size), Color: b.d.Theme.Paper})
	b.lines = append(b.lines, scene.Run{
		At: at, Text: "?", Size: size, Weight: glyph.Bold, Align: scene.Center, VAlign: scene.Middle,
		Color: b.d.Theme.Note,
	})
}

// slider draws its panels on two tracks: fixed ones on the outer, moving ones on the
// inner, each lapping its neighbours a little.
func (b *breakDrawing) slider() {
	b.cut()
	b.thresholds(b.d.Hairline())
	shown := *b.of
	if len(shown.Panels) == 0 {
		shown.Panels = []plan.Panel{plan.PanelFixed, plan.PanelMoving}
	}
	thick := max(b.deep*0.16, 2*b.d.Medium.Pixel/b.d.Medium.Scale)
	lap := 25.0
	for i, p := range shown.Panels {
		from, to := shown.PanelAt(i)
		x, end := b.from+from.Millimetres(), b.from+to.Millimetres()
		track := -b.deep * 0.64
		if p == plan.PanelMoving {
			track = -b.deep * 0.36
			x, end = max(b.from, x-lap), min(b.to(), end+lap)
		}
		box := b.f.box(x, track-thick/2, end, track+thick/2)
		b.under = append(b.under, scene.Fill{Path: box, Color: b.d.Theme.Surface})
		b.add(box, b.d.InkPen(1))
	}
}

// window draws the frame along both faces and two lines of glass between.
func (b *breakDrawing) window() {
	b.cut()
	b.under = append(b.under, scene.Fill{Path: b.f.box(b.from, 0, b.to(), -b.deep), Color: b.d.Theme.Surface})
	pen := b.d.InkPen(1)
	b.add(b.f.box(b.from, 0, b.to(), -b.deep), pen)
	for _, share := range []float64{0.36, 0.64} {
		b.add(b.f.line(b.from, -b.deep*share, b.to(), -b.deep*share), pen)
	}
}

// passage draws the ends of the casing and a dashed line along both faces.
func (b *breakDrawing) passage() {
	b.cut()
	b.thresholds(b.d.Dashed(b.d.Hairline(), 4, 3))
	for _, x := range []float64{b.from, b.to()} {
		b.add(b.f.line(x, 0, x, -b.deep), b.d.InkPen(1.5))
	}
}

// fireplace draws a hearth before the wall and a firebox that narrows into it.
func (b *breakDrawing) fireplace() {
	pen := b.d.InkPen(1)
	deep := max(b.deep, 400)
	hearth := 400.0
	b.under = append(b.under, scene.Fill{Path: b.f.box(b.from, 0, b.to(), -deep), Color: b.d.Theme.Wall})
	x, to, inset := b.from+0.14*b.wide, b.to()-0.14*b.wide, 0.12*b.wide
	firebox := scene.Polygon(b.f.at(x, 0), b.f.at(to, 0), b.f.at(to-inset, -0.8*deep), b.f.at(x+inset, -0.8*deep))
	b.under = append(b.under, scene.Fill{Path: firebox, Color: b.d.Theme.Surface})
	b.add(firebox, pen)
	b.add(b.f.box(b.from, 0, b.to(), hearth), b.d.MutedPen())
}
