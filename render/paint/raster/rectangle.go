package raster

import (
	"image"
	"image/color"
	"image/draw"
	"math"

	"studbay/render/scene"
)

// rectangle returns the box of a fill that is one upright rectangle of opaque ink.
func (o *op) rectangle() (r scene.Rect, is bool) {
	if len(o.lines) != 1 || o.color.A != 0xff {
		return r, false
	}
	q := o.lines[0].points
	if len(q) == 5 && q[4] == q[0] {
		q = q[:4]
	}
	if len(q) != 4 {
		return r, false
	}
	level := q[0].Y == q[1].Y && q[1].X == q[2].X && q[2].Y == q[3].Y && q[3].X == q[0].X
	upright := q[0].X == q[1].X && q[1].Y == q[2].Y && q[2].X == q[3].X && q[3].Y == q[0].Y
	r = scene.Rect{
		Min: scene.Point{X: min(q[0].X, q[2].X), Y: min(q[0].Y, q[2].Y)},
		Max: scene.Point{X: max(q[0].X, q[2].X), Y: max(q[0].Y, q[2].Y)},
	}
	return r, level || upright
}

// rectangle fills an upright rectangle. Its whole pixels are set at once, of which there
// may be millions, and the border about them goes through gg: each pixel comes out as
// if all did.
func (c *canvas) rectangle(r scene.Rect, ink scene.Color) {
	inner := scene.Rect{
		Min: scene.Point{X: math.Ceil(r.Min.X), Y: math.Ceil(r.Min.Y)},
		Max: scene.Point{X: math.Floor(r.Max.X), Y: math.Floor(r.Max.Y)},
	}
	c.corners(r.Min, r.Max)
	if inner.Min.X < inner.Max.X && inner.Min.Y < inner.Max.Y {
		// The other way round, so that gg leaves it out.
		c.corners(scene.Point{X: inner.Max.X, Y: inner.Min.Y}, scene.Point{X: inner.Min.X, Y: inner.Max.Y})
		whole := image.Rect(round(inner.Min.X), round(inner.Min.Y), round(inner.Max.X), round(inner.Max.Y))
		at := image.Pt(round(c.origin.X), round(c.origin.Y))
		draw.Draw(c.view, whole.Sub(at), image.NewUniform(color.NRGBA(ink)), image.Point{}, draw.Src)
	}
	c.gg.Fill()
}

// corners traces the rectangle between two corners, from the first along a row.
func (c *canvas) corners(a, b scene.Point) {
	c.lineTo(a)
	c.lineTo(scene.Point{X: b.X, Y: a.Y})
	c.lineTo(b)
	c.lineTo(scene.Point{X: a.X, Y: b.Y})
	c.gg.NewSubPath()
}
