package cut

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// Frame says where a cut is drawn: within a width about a middle, from a top down.
type Frame struct {
	Middle, Top, Width float64 // in scene units
}

// drawing is a cut in the making.
type drawing struct {
	Cut
	m     render.Medium
	at    Frame
	face  float64 // y of the face of the studs toward the room
	items []scene.Item
}

// Tall returns how high a cut is drawn.
func (c Cut) Tall(m render.Medium) float64 {
	far, _ := c.Far()
	return m.Length(plan.Thickness(far) + c.Framing + max(c.Proud, c.Body.Raise))
}

// Draw draws a cut, without a word: what it says stands beside it.
func Draw(c Cut, m render.Medium, at Frame) []scene.Item {
	far, hasFar := c.Far()
	d := &drawing{Cut: c, m: m, at: at}
	d.face = at.Top + m.Length(plan.Thickness(far)+c.Framing)
	d.studs()
	d.block()
	d.layers(d.Side().Finish, 1, d.face, true)
	d.layers(far, -1, d.face-m.Length(c.Framing), false)
	if !hasFar {
		d.line(d.face-m.Length(c.Framing), d.pen(1), true)
	}
	d.farBoxes()
	d.box()
	return d.items
}

func (d *drawing) pen(times float64) scene.Pen {
	return scene.Pen{Width: times * d.m.Pixel, Color: d.m.Theme.Ink}
}

func (d *drawing) dashed(p scene.Pen) scene.Pen {
	p.Dash = []float64{4 * d.m.Pixel, 3 * d.m.Pixel}
	return p
}

// x returns where a place along the face stands, kept within the width drawn.
func (d *drawing) x(along unit.Length) float64 {
	x := d.at.Middle + d.m.Length(along-d.Opening.At.Along)
	return min(max(x, d.at.Middle-d.at.Width/2), d.at.Middle+d.at.Width/2)
}

func (d *drawing) rect(left, right unit.Length, top, bottom float64) scene.Rect {
	return scene.Rect{Min: scene.Point{X: d.x(left), Y: top}, Max: scene.Point{X: d.x(right), Y: bottom}}
}

func (d *drawing) line(y float64, p scene.Pen, isDashed bool) {
	if isDashed {
		p = d.dashed(p)
	}
	half := d.at.Width / 2
	d.items = append(d.items, scene.Stroke{Path: scene.LinePath(scene.Point{X: d.at.Middle - half, Y: y}, scene.Point{X: d.at.Middle + half, Y: y}), Pen: p})
}

// studs draws what stands at the height of the box: crossed as cut wood, in dashes where
// its place is assumed.
func (d *drawing) studs() {
	top := d.face - d.m.Length(d.Framing)
	for s := range d.Wall.Between(d.Box.Bottom, d.Box.Top) {
		r := d.rect(s.Left(), s.Right(), top, d.face)
		if r.Width() < d.m.Pixel {
			continue
		}
		pen := d.pen(2)
		if s.State == plan.StudAssumed {
			pen = d.dashed(pen)
		}
		d.items = append(d.items, scene.Stroke{Path: r.Path(), Pen: pen},
			scene.Stroke{Path: scene.LinePath(r.Min, r.Max), Pen: d.pen(1)},
			scene.Stroke{Path: scene.LinePath(scene.Point{X: r.Min.X, Y: r.Max.Y}, scene.Point{X: r.Max.X, Y: r.Min.Y}), Pen: d.pen(1)})
	}
}

// block draws the lumber behind the box, hatched: it is to be added.
func (d *drawing) block() {
	b := d.Hold.Block
	if b == nil || !d.Hold.HasBay {
		return
	}
	deep := b.Deep()
	near := d.face - d.m.Length(b.SetBack)
	r := d.rect(d.Hold.Bay.From, d.Hold.Bay.To, near-d.m.Length(deep), near)
	d.items = append(d.items, scene.Stroke{Path: r.Path(), Pen: d.pen(2)})
	step := 18 * d.m.Pixel
	for x := r.Min.X + step; x < r.Max.X; x += step {
		slant := min(r.Height(), x-r.Min.X)
		d.items = append(d.items, scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: r.Min.Y}, scene.Point{X: x - slant, Y: r.Min.Y + slant}), Pen: d.pen(1)})
	}
}

// layers draws those of a face from the studs outward, those of the near face broken at
// the hole for the box.
func (d *drawing) layers(all []plan.Layer, way, from float64, isNear bool) {
	half := d.at.Width / 2
	reach := unit.FromMillimetres(half/d.m.Scale) + unit.Inch
	at := d.Opening.At.Along
	parts := [][2]unit.Length{{at - reach, at + reach}}
	if isNear {
		parts = [][2]unit.Length{{at - reach, at - d.Collar/2}, {at + d.Collar/2, at + reach}}
	}
	for i, l := range all {
		to := from + way*d.m.Length(l.Thickness)
		for _, p := range parts {
			r := d.rect(p[0], p[1], min(from, to), max(from, to))
			pen := d.pen(1.4)
			if l.Undecided {
				pen = d.dashed(pen)
			}
			d.items = append(d.items, scene.Fill{Path: r.Path(), Color: d.shade(i)}, scene.Stroke{Path: r.Path(), Pen: pen})
		}
		from = to
	}
}

// shade is the colour of the i-th layer: a grey of paper, or what stands for it on a board.
func (d *drawing) shade(i int) scene.Color {
	if d.m.Kind == render.Sheet {
		return shades[i%len(shades)]
	}
	c := d.m.Theme.Line
	c.A = [...]uint8{0x60, 0xc0, 0x90}[i%3]
	return c
}

// shades tell a layer from the next on paper.
var shades = []scene.Color{{R: 0xee, G: 0xee, B: 0xee, A: 0xff}, {R: 0xc8, G: 0xc8, B: 0xc8, A: 0xff}, {R: 0xdd, G: 0xdd, B: 0xdd, A: 0xff}}

// farBoxes draws the boxes of the other face in dashes.
func (d *drawing) farBoxes() {
	top := d.face - d.m.Length(d.Framing)
	for _, p := range d.Cut.Behind(unit.FromMillimetres(d.at.Width / 2 / d.m.Scale)) {
		r := d.rect(p.Left, p.Right, top, top+d.m.Length(p.InFraming()))
		d.items = append(d.items, scene.Stroke{Path: r.Path(), Pen: d.dashed(d.pen(2))})
	}
}

// box draws the body, and the collar of its ring through the finish.
func (d *drawing) box() {
	front := d.face + d.m.Length(d.Front())
	back := front - d.m.Length(d.Body.Depth)
	pen := d.pen(4)
	if d.Body.Depth == 0 { // nobody tells how deep it is
		back, pen = front-d.m.Length(unit.Inch), d.dashed(pen)
	}
	r := d.rect(d.Box.Left, d.Box.Right, back, front)
	d.items = append(d.items, scene.Fill{Path: r.Path(), Color: d.m.Theme.Paper}, scene.Stroke{Path: r.Path(), Pen: pen})
	if !d.Body.HasRing || d.Body.Raise == 0 {
		return
	}
	at := d.Opening.At.Along
	collar := d.rect(at-d.Collar/2, at+d.Collar/2, d.face, d.face+d.m.Length(d.Body.Raise))
	d.items = append(d.items, scene.Fill{Path: collar.Path(), Color: d.m.Theme.Paper}, scene.Stroke{Path: collar.Path(), Pen: d.pen(3)})
}
