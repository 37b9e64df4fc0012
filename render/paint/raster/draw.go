package raster

import (
	"image"
	"image/color"
	"math"

	"github.com/golang/freetype/raster"
	"golang.org/x/image/math/fixed"

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
	size := dst.Rect.Size()
	c := canvas{dst: dst, window: image.Rectangle{Min: from, Max: from.Add(size)}}
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

// canvas is a window of the drawing with the rasteriser on the part of it that the
// clip in force leaves.
type canvas struct {
	dst    *image.RGBA
	window image.Rectangle // in pixels of the drawing
	part   image.Rectangle // of it that is drawn on now
	lines  *raster.Rasterizer
	paint  *raster.RGBAPainter
	path   raster.Path // scratch
}

// guard is the rows above and columns to the left that are drawn and thrown away.
// The rasteriser divides toward zero, so it puts what lies up to a pixel outside into
// the first row and column, and rounds a curve of negative coordinates otherwise
// than one of positive. No curve it sees (the round ends and corners of pens) should
// reach over more rows than this.
const guard = 16

// fineWidth is a width from which on the rasteriser cuts curves as finely as it ever
// does: it cuts them more coarsely for narrow pictures, and all pieces must agree.
const fineWidth = 128

// clipTo makes ready for a clip. A clip is a rectangle, so a view of the image does
// what a mask would, for nothing.
func (c *canvas) clipTo(clip image.Rectangle) {
	part := c.window.Intersect(clip)
	if c.lines != nil && part == c.part {
		return
	}
	at := part.Min.Sub(c.window.Min).Add(c.dst.Rect.Min)
	view := &image.RGBA{
		Pix:    c.dst.Pix[c.dst.PixOffset(at.X, at.Y):],
		Stride: c.dst.Stride,
		Rect:   image.Rectangle{Max: part.Size()},
	}
	c.part, c.paint = part, raster.NewRGBAPainter(view)
	c.lines = raster.NewRasterizer(max(part.Dx()+guard, fineWidth), part.Dy()+guard)
	c.lines.Dx, c.lines.Dy = -guard, -guard
	c.lines.UseNonZeroWinding = true
}

func (c *canvas) draw(o *op) {
	c.paint.SetColor(color.NRGBA(o.color))
	switch {
	case o.run != nil:
		c.text(o.run)
	case o.pen != nil:
		c.stroke(o.lines, o.pen)
	default:
		c.fill(o.lines)
	}
}

// local returns where a point of the drawing lies for the rasteriser, to the nearest
// 1/64 pixel.
func (c *canvas) local(p scene.Point) fixed.Point26_6 {
	return fixed.Point26_6{
		X: fixed.Int26_6(math.Floor(p.X*64+0.5)) - fixed.I(c.part.Min.X-guard),
		Y: fixed.Int26_6(math.Floor(p.Y*64+0.5)) - fixed.I(c.part.Min.Y-guard),
	}
}

func (c *canvas) fill(lines []line) {
	c.lines.Clear()
	for _, l := range lines {
		for i, p := range l.points {
			if i == 0 {
				c.lines.Start(c.local(p))
				continue
			}
			c.lines.Add1(c.local(p))
		}
		c.lines.Add1(c.local(l.points[0]))
	}
	c.lines.Rasterize(c.paint)
}

var (
	cappers = [...]raster.Capper{
		scene.ButtCap: raster.ButtCapper, scene.RoundCap: raster.CapperFunc(roundCap), scene.SquareCap: raster.SquareCapper,
	}
	joiners = [...]raster.Joiner{scene.RoundJoin: raster.RoundJoiner, scene.BevelJoin: raster.BevelJoiner}
)

// roundCap ends a line with half a disc, as four quadratic curves. The rasteriser's
// own takes cubic ones, which it cuts more or less finely by where they lie on the
// picture. along is square to the line and half a pen long.
func roundCap(p raster.Adder, _ fixed.Int26_6, pivot, along fixed.Point26_6) {
	x, y := float64(along.X), float64(along.Y)
	at := func(degrees, reach float64) fixed.Point26_6 {
		d := scene.Direction(degrees).Mul(reach)
		return pivot.Add(fixed.Point26_6{
			X: fixed.Int26_6(math.Round(-x*d.X + y*d.Y)),
			Y: fixed.Int26_6(math.Round(-y*d.X - x*d.Y)),
		})
	}
	for _, begin := range []float64{0, 45, 90, 135} {
		p.Add2(at(begin+22.5, 1/math.Cos(math.Pi/8)), at(begin+45, 1))
	}
}

// stroke inks all lines as one shape, so that a half transparent pen does not show
// where they cross.
func (c *canvas) stroke(lines []line, pen *scene.Pen) {
	c.lines.Clear()
	for _, l := range lines {
		if len(l.points) < 2 {
			continue
		}
		c.path.Clear()
		for i, p := range l.points {
			if i == 0 {
				c.path.Start(c.local(p))
				continue
			}
			c.path.Add1(c.local(p))
		}
		if l.closed {
			c.overlap(l.points)
		}
		c.lines.AddStroke(c.path, fixed.Int26_6(pen.Width*64+0.5), cappers[pen.Cap], joiners[pen.Join])
	}
	c.lines.Rasterize(c.paint)
}

// overlap closes the path and runs on a little along its first piece. The rasteriser
// caps both ends of a closed line and would leave a notch in the corner between.
func (c *canvas) overlap(points []scene.Point) {
	a, b := points[0], points[1]
	if points[len(points)-1] != a {
		c.path.Add1(c.local(a))
	}
	on := min(1, 0.5/math.Hypot(b.X-a.X, b.Y-a.Y))
	c.path.Add1(c.local(a.Add(b.Sub(a).Mul(on))))
}

// text fills the letters that reach into the part in hand.
func (c *canvas) text(r *scene.Run) {
	pen := scene.Turning(r.Angle, r.Origin())
	pen.X, pen.Y = pen.X.Mul(r.Size), pen.Y.Mul(r.Size)
	c.lines.Clear()
	for _, letter := range r.Text {
		g := glyph.Of(r.Weight, letter)
		if c.sees(g, pen) {
			c.letter(g, pen)
		}
		pen.At = pen.At.Add(pen.X.Mul(g.Advance))
	}
	c.lines.Rasterize(c.paint)
}

func (c *canvas) sees(g *glyph.Glyph, t scene.Transform) bool {
	if len(g.Outline) == 0 {
		return false
	}
	box := scene.Rect{Min: scene.Point(g.Min), Max: scene.Point(g.Max)}.Path().Placed(t).Bounds()
	return pixelsOver(box).Overlaps(c.part)
}

func (c *canvas) letter(g *glyph.Glyph, t scene.Transform) {
	var start, last scene.Point
	for i, s := range g.Outline {
		at := func(i int) scene.Point { return t.Apply(scene.Point(s.Points[i])) }
		switch s.Op {
		case glyph.Move:
			if i > 0 {
				c.lines.Add1(c.local(start))
			}
			start, last = at(0), at(0)
			c.lines.Start(c.local(start))
		case glyph.Line:
			last = at(0)
			c.lines.Add1(c.local(last))
		case glyph.Quad:
			c.quad(last, at(0), at(1))
			last = at(1)
		case glyph.Cubic:
			l := line{}
			l.curve(last, at(0), at(1), at(2))
			for _, p := range l.points {
				c.lines.Add1(c.local(p))
			}
			last = at(2)
		}
	}
	c.lines.Add1(c.local(start))
}

// quad adds a quadratic curve as straight pieces: in n of them it is off by at most
// a quarter of its second difference over n².
func (c *canvas) quad(a, b, to scene.Point) {
	n := max(1, int(math.Ceil(math.Sqrt(0.25*second(a, b, to)/flatness))))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		c.lines.Add1(c.local(a.Mul(u * u).Add(b.Mul(2 * u * t)).Add(to.Mul(t * t))))
	}
	c.lines.Add1(c.local(to))
}
