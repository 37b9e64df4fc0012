package raster

import (
	"image"
	"image/color"
	"math"

	"github.com/fogleman/gg"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// Items draws items onto an image whose pixel (0, 0) is the drawing's.
func Items(dst *image.RGBA, scale float64, at scene.Point, items ...scene.Item) {
	d := New(scale, at)
	scene.Paint(d, items...)
	d.Draw(dst, dst.Rect.Min, nil)
}

// Draw puts the part of the drawing that begins at a pixel onto the whole of dst,
// over what is there. It may be called from several goroutines at once on images of
// their own. It asks stop now and then, if there is one, and leaves off where that
// is true.
func (d *Drawing) Draw(dst *image.RGBA, from image.Point, stop func() bool) {
	c := newCanvas(dst, from, d.margin())
	for i := range d.ops {
		o := &d.ops[i]
		if !o.box.Overlaps(c.window) {
			continue
		}
		if i%64 == 0 && stop != nil && stop() {
			return
		}
		c.clipTo(o.clip)
		c.draw(o)
	}
}

// canvas is a window of the drawing with gg on the part of it that the clip in force
// leaves.
type canvas struct {
	dst    *image.RGBA
	window image.Rectangle // in pixels of the drawing
	part   image.Rectangle // of it that is drawn on now
	margin int
	origin scene.Point // of gg, in pixels of the drawing
	view   *image.RGBA // of dst, that gg paints on
	gg     *gg.Context
}

// leastMargin is the rows above and columns to the left that gg works out and does
// not paint. It divides toward zero, so it puts what lies up to a pixel outside into
// its first row and column, and rounds a curve of negative coordinates otherwise than
// one of positive. The curves it sees are the round joins of pens: a wider pen wants
// a wider margin.
const leastMargin = 16

// mostMargin bounds what an absurdly wide pen may ask for.
const mostMargin = 1024

// fineWidth is a width from which on gg cuts curves as finely as it ever does: it
// cuts them more coarsely for narrow pictures, and all parts must agree.
const fineWidth = 128

// margin returns the margin that the widest pen wants.
func (d *Drawing) margin() int {
	return leastMargin + int(min(math.Ceil(d.widest/2), mostMargin))
}

// newCanvas sets gg up for a window. gg takes the size to work on from the picture
// when it is given it, and asks for the picture's bounds anew whenever it paints. So
// it is first given one as large as window and margin, without pixels, that then
// becomes a view of dst: nothing is copied, and a clip costs nothing.
func newCanvas(dst *image.RGBA, from image.Point, margin int) *canvas {
	size := dst.Rect.Size()
	view := &image.RGBA{Rect: image.Rect(0, 0, max(size.X+margin, fineWidth), size.Y+margin)}
	c := &canvas{dst: dst, margin: margin, view: view, gg: gg.NewContextForRGBA(view)}
	c.moveTo(from)
	return c
}

// moveTo makes a pixel of the drawing the canvas's first, and asks for clipTo.
func (c *canvas) moveTo(from image.Point) {
	c.window = image.Rectangle{Min: from, Max: from.Add(c.dst.Rect.Size())}
	c.origin = scene.Point{X: float64(from.X - c.margin), Y: float64(from.Y - c.margin)}
	c.part = image.Rectangle{}
}

// clipTo makes ready for a clip. A clip is a rectangle, so a view of the image does
// what a mask would, for nothing.
func (c *canvas) clipTo(clip image.Rectangle) {
	part := c.window.Intersect(clip)
	if part == c.part {
		return
	}
	c.part = part
	at := part.Sub(c.window.Min)
	*c.view = image.RGBA{
		Pix:    c.dst.Pix[c.dst.PixOffset(c.dst.Rect.Min.X+at.Min.X, c.dst.Rect.Min.Y+at.Min.Y):],
		Stride: c.dst.Stride,
		Rect:   at.Add(image.Pt(c.margin, c.margin)),
	}
}

func (c *canvas) draw(o *op) {
	c.gg.SetColor(color.NRGBA(o.color))
	switch {
	case len(o.letters) > 0:
		c.lay(o.letters, o.color)
	case o.run != nil:
		c.text(o.run)
	case o.pen != nil:
		c.stroke(o.lines, o.pen)
	default:
		c.fill(o)
	}
}

var (
	caps  = [...]gg.LineCap{scene.ButtCap: gg.LineCapButt, scene.SquareCap: gg.LineCapSquare} // round ones are lines
	joins = [...]gg.LineJoin{scene.RoundJoin: gg.LineJoinRound, scene.BevelJoin: gg.LineJoinBevel}
)

// stroke inks all lines as one shape, so that a half transparent pen does not show
// where they cross.
func (c *canvas) stroke(lines []line, pen *scene.Pen) {
	c.trace(lines)
	c.gg.SetLineWidth(toGrid(pen.Width))
	c.gg.SetLineCap(caps[pen.Cap])
	c.gg.SetLineJoin(joins[pen.Join])
	c.gg.Stroke()
}

// trace puts lines into gg's path. Ending each subpath closes it for a fill, which
// spares gg a copy of the path.
func (c *canvas) trace(lines []line) {
	for _, l := range lines {
		for _, p := range l.points {
			c.lineTo(p)
		}
		c.gg.NewSubPath()
	}
}

// lineTo goes on to a point of the drawing, put on the grid, or begins a subpath there.
func (c *canvas) lineTo(p scene.Point) {
	p = onGrid(p).Sub(c.origin)
	c.gg.LineTo(p.X, p.Y)
}

// text fills the letters that reach into the part in hand, one by one: gg looks for the
// place of each edge from the beginning of its row of pixels, past all before it.
func (c *canvas) text(r *scene.Run) {
	pen := pen(r)
	for _, letter := range r.Text {
		g := glyph.Of(r.Weight, letter)
		if len(g.Outline) > 0 && inkBox(g, pen).Overlaps(c.part) {
			c.letter(g, pen)
			c.gg.Fill()
		}
		pen.At = pen.At.Add(pen.X.Mul(g.Advance))
	}
}

func (c *canvas) letter(g *glyph.Glyph, t scene.Transform) {
	var last scene.Point
	for _, s := range g.Outline {
		at := func(i int) scene.Point { return t.Apply(scene.Point(s.Points[i])) }
		switch s.Op {
		case glyph.Move:
			c.gg.NewSubPath()
			last = at(0)
			c.lineTo(last)
		case glyph.Line:
			last = at(0)
			c.lineTo(last)
		case glyph.Quad:
			c.quad(last, at(0), at(1))
			last = at(1)
		case glyph.Cubic:
			l := line{}
			l.curve(last, at(0), at(1), at(2))
			for _, p := range l.points {
				c.lineTo(p)
			}
			last = at(2)
		}
	}
	c.gg.NewSubPath()
}

// quad adds a quadratic curve as straight segments: in n of them it is off by at most
// a quarter of its second difference over n².
func (c *canvas) quad(a, b, to scene.Point) {
	n := max(1, int(math.Ceil(math.Sqrt(0.25*second(a, b, to)/flatness))))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		c.lineTo(a.Mul(u * u).Add(b.Mul(2 * u * t)).Add(to.Mul(t * t)))
	}
	c.lineTo(to)
}
