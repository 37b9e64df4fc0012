package raster

import (
	"math"
	"slices"

	"studbay/render/scene"
)

// roundEnded returns lines with round ends, as shapes that gg draws alike wherever
// they lie. Its own round caps are curves that it cuts more or less finely by where
// they lie on the picture; its round joins are not. So the end of a line is a join
// with a segment that turns straight back, and a straight segment is filled as the shape
// it has.
func roundEnded(lines []line, pen scene.Pen) []stroke {
	pen.Cap = scene.ButtCap
	var body, filled []line
	straight := !slices.ContainsFunc(lines, func(l line) bool { return l.closed || len(l.points) > 2 })
	for _, whole := range lines {
		l := whole.spaced()
		switch {
		case l.closed:
			body = append(body, l.overlapped(pen.Width))
		case straight || l.isSpeck(pen.Width):
			filled = append(filled, capsule(whole.points[0], whole.points[len(whole.points)-1], pen.Width)...)
		case pen.Join == scene.RoundJoin:
			body = append(body, l.turningBack(pen.Width))
		default:
			// One path has one kind of join, so the ends are laid over the line, a
			// pixel deep to leave no seam. A half transparent pen shows there.
			body = append(body, l)
			for _, end := range l.ends() {
				filled = append(filled, capsule(end[0], toward(end[0], end[1], 1), pen.Width)...)
			}
		}
	}
	return []stroke{{body, &pen}, {lines: filled}}
}

// capsule returns the outline of all within half a width of the segment from a to b.
func capsule(a, b scene.Point, width float64) []line {
	way := math.Atan2(b.Y-a.Y, b.X-a.X) * 180 / math.Pi
	var p scene.Path
	p.ArcTo(a, width/2, way+90, 180)
	p.ArcTo(b, width/2, way-90, 180)
	p.Close()
	return flatten(p)
}

// isSpeck reports whether the line is too short to turn back at both ends.
func (l line) isSpeck(width float64) bool {
	a, b := l.points[0], l.points[1]
	return len(l.points) == 2 && math.Hypot(b.X-a.X, b.Y-a.Y) < 2*(wayBack(width)+slack)+shortest
}

// ends returns the end points, each with the one that follows it inward.
func (l line) ends() [2][2]scene.Point {
	last := len(l.points) - 1
	return [2][2]scene.Point{{l.points[0], l.points[1]}, {l.points[last], l.points[last-1]}}
}

// thin is the width under which gg may leave out the curve of a join.
const thin = 1.1

// turningBack returns the line with a segment to and fro at each end. The way back is
// also the way on, so that it turns by half a circle exactly.
func (l line) turningBack(width float64) (out line) {
	if width < thin {
		return l.lengthened(width)
	}
	ends := l.ends()
	first, last := turnback(ends[0][0], ends[0][1], width), turnback(ends[1][0], ends[1][1], width)
	out.to(first)
	for _, p := range slices.Concat(l.points[:1], []scene.Point{first}, l.points[1:len(l.points)-1]) {
		out.to(p)
	}
	for _, p := range []scene.Point{last, ends[1][0], last} {
		out.to(p)
	}
	return out
}

// lengthened returns the line longer by as much ink as two half discs would have. On
// a pen of a pixel that is all that can be told of them.
func (l line) lengthened(width float64) line {
	points := slices.Clone(l.points)
	for i, end := range l.ends() {
		way := end[0].Sub(end[1])
		points[i*(len(points)-1)] = onGrid(end[0].Add(way.Mul(math.Pi / 8 * width / math.Hypot(way.X, way.Y))))
	}
	return line{points: points}
}
