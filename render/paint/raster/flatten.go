package raster

import (
	"math"

	"studbay/render/scene"
)

// flatness is how far a flattened curve may be from the true one, in pixels.
const flatness = 0.05

// grid is the pixel's parts that gg works in.
const grid = 64

// onGrid returns p on the grid. Taking whole pixels off it keeps it there exactly.
func onGrid(p scene.Point) scene.Point { return scene.Point{X: toGrid(p.X), Y: toGrid(p.Y)} }

func toGrid(v float64) float64 { return math.Floor(v*grid+0.5) / grid }

// flatten turns a path in pixels into straight segments on the grid.
func flatten(p scene.Path) (lines []line) {
	var last scene.Point // before rounding
	p.Each(func(o scene.Op, points []scene.Point) {
		if o == scene.MoveOp {
			lines = append(lines, line{})
		}
		l := &lines[len(lines)-1]
		switch o {
		case scene.MoveOp, scene.LineOp:
			last = points[0]
			l.to(last)
		case scene.CubicOp:
			l.curve(last, points[0], points[1], points[2])
			last = points[2]
		case scene.CloseOp:
			l.closed = true
		}
	})
	return lines
}

// to adds a point, unless the line is there already.
func (l *line) to(p scene.Point) {
	p = onGrid(p)
	if n := len(l.points); n == 0 || l.points[n-1] != p {
		l.points = append(l.points, p)
	}
}

// curve adds as many segments as keep within flatness: a cubic in n segments is off by
// at most 6/8 of its largest second difference over n².
func (l *line) curve(a, b, c, d scene.Point) {
	bend := max(second(a, b, c), second(b, c, d))
	n := max(1, int(math.Ceil(math.Sqrt(0.75*bend/flatness))))
	for i := 1; i < n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		at := a.Mul(u * u * u).Add(b.Mul(3 * u * u * t)).Add(c.Mul(3 * u * t * t)).Add(d.Mul(t * t * t))
		l.to(at)
	}
	l.to(d)
}

func second(a, b, c scene.Point) float64 {
	return math.Hypot(a.X-2*b.X+c.X, a.Y-2*b.Y+c.Y)
}
