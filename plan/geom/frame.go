package geom

import (
	"math"

	"studbay/plan/unit"
)

// Frame places things that stand along a line: Origin is the left end as one sees it
// from in front, Along runs to the right and Out towards the one who looks.
type Frame struct {
	Origin Point
	x, y   float64 // direction of Along, of length one
}

// FrameOf returns the frame of a segment whose left end, as one sees it from in front, is A.
func FrameOf(s Segment) Frame {
	d := s.B.Sub(s.A)
	dx, dy := float64(d.X), float64(d.Y)
	n := math.Hypot(dx, dy)
	if n == 0 {
		return Frame{s.A, 1, 0}
	}
	return Frame{s.A, dx / n, dy / n}
}

// FrameAt returns the frame at a point whose Along runs to the right on the sheet.
func FrameAt(origin Point) Frame { return Frame{origin, 1, 0} }

// Point returns the point at a distance along and out, rounded once to the nearest
// nanometre; it is exact where the frame is along an axis.
func (f Frame) Point(along, out unit.Length) Point {
	a, o := float64(along), float64(out)
	return Point{
		X: f.Origin.X + unit.Length(math.Round(a*f.x-o*f.y)),
		Y: f.Origin.Y + unit.Length(math.Round(a*f.y+o*f.x)),
	}
}

// Along returns the direction along as a vector a metre long.
func (f Frame) Along() Point { return f.vector(f.x, f.y) }

// Out returns the direction out, towards the one who looks, as a vector a metre long.
func (f Frame) Out() Point { return f.vector(-f.y, f.x) }

func (f Frame) vector(x, y float64) Point {
	m := float64(unit.Metre)
	return Point{X: unit.Length(math.Round(x * m)), Y: unit.Length(math.Round(y * m))}
}

// Moved returns the frame with its origin moved along and out.
func (f Frame) Moved(along, out unit.Length) Frame {
	f.Origin = f.Point(along, out)
	return f
}

// Turned returns the frame turned by quarter turns clockwise as seen on the sheet.
func (f Frame) Turned(quarters int) Frame {
	for range ((quarters % 4) + 4) % 4 {
		f.x, f.y = -f.y, f.x
	}
	return f
}

// Rectangle returns the corners of a width along and a depth out, clockwise as seen
// on the sheet.
func (f Frame) Rectangle(width, depth unit.Length) Polygon {
	return Polygon{f.Point(0, 0), f.Point(width, 0), f.Point(width, depth), f.Point(0, depth)}
}

// Project returns how far along and out of the frame a point lies, each rounded once
// to the nearest nanometre.
func (f Frame) Project(p Point) (along, out unit.Length) {
	d := p.Sub(f.Origin)
	x, y := float64(d.X), float64(d.Y)
	return unit.Length(math.Round(x*f.x + y*f.y)), unit.Length(math.Round(y*f.x - x*f.y))
}

// IsOpposite reports whether two frames run against each other, but for an angle whose
// sine is below the one given.
func (f Frame) IsOpposite(g Frame, sine float64) bool {
	return f.x*g.x+f.y*g.y < 0 && math.Abs(f.x*g.y-f.y*g.x) < sine
}
