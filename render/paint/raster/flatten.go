package raster

import (
	"math"

	"studbay/render/scene"
)

// flatness is how far a flattened curve may be from the true one, in pixels.
const flatness = 0.05

// onGrid returns p on the rasteriser's grid of 1/64 pixel.
func onGrid(p scene.Point) scene.Point {
	return scene.Point{X: math.Floor(p.X*64+0.5) / 64, Y: math.Floor(p.Y*64+0.5) / 64}
}

// flatten turns a path in pixels into straight pieces on the grid.
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

// curve adds as many pieces as keep within flatness: a cubic in n pieces is off by
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

// dashed cuts lines into the dashes of a pattern, in pixels. A pattern that is not
// longer than half a pixel in all leaves the lines whole, as the eye would.
func dashed(lines []line, pattern []float64) (out []line) {
	total := 0.0
	for _, d := range pattern {
		total += d
	}
	if !(total > 0.5) {
		return lines
	}
	for _, l := range lines {
		out = append(out, l.dashes(pattern)...)
	}
	return out
}

func (l line) dashes(pattern []float64) (out []line) {
	points := l.points
	if l.closed {
		points = append(points[:len(points):len(points)], points[0])
	}
	var dash line
	index, left := 0, pattern[0]
	for i := 1; i < len(points); i++ {
		from, to := points[i-1], points[i]
		for {
			length := math.Hypot(to.X-from.X, to.Y-from.Y)
			inked := index%2 == 0
			if inked && len(dash.points) == 0 {
				dash.to(from)
			}
			if length < left {
				left -= length
				if inked {
					dash.to(to)
				}
				break
			}
			if length > 0 {
				from = from.Add(to.Sub(from).Mul(left / length))
			}
			if inked {
				dash.to(from)
				out, dash = append(out, dash), line{}
			}
			index++
			left = pattern[index%len(pattern)]
		}
	}
	if len(dash.points) > 1 {
		out = append(out, dash)
	}
	return out
}
