// Package geom holds points, segments and polygons of exact lengths.
//
// x grows to the right of the sheet and y grows down it, as on a board. A polygon
// listed clockwise as seen on the sheet has its inside on the right hand of each
// edge. The package knows no room and no box. Orientation, area and intersection
// tests are exact; only results that need a root or a division are rounded, once,
// to the nearest nanometre. That holds for points within Reach; Polygon.Check refuses
// others.
package geom

import (
	"math"

	"studbay/plan/unit"
)

// Point is a place on a level, from the plan's origin: X to the right, Y down.
type Point struct {
	X unit.Length `json:"x"`
	Y unit.Length `json:"y"`
}

// Add returns p moved by v.
func (p Point) Add(v Point) Point { return Point{p.X + v.X, p.Y + v.Y} }

// Sub returns the vector from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Reach is the greatest coordinate, either way, that the exact tests are made for:
// over a million kilometres. Within it no difference or product of theirs overflows.
const Reach = unit.Length(1) << 60

// WithinReach reports whether both coordinates are within Reach.
func (p Point) WithinReach() bool {
	return -Reach <= p.X && p.X <= Reach && -Reach <= p.Y && p.Y <= Reach
}

// Turned returns p turned about the origin by quarter turns, clockwise as seen on the
// sheet; negative counts turn the other way.
func (p Point) Turned(quarters int) Point {
	switch quarters & 3 {
	case 1:
		return Point{-p.Y, p.X}
	case 2:
		return Point{-p.X, -p.Y}
	case 3:
		return Point{p.Y, -p.X}
	}
	return p
}

// Distance returns the distance from p to q, rounded to the nearest nanometre.
func (p Point) Distance(q Point) unit.Length { return Segment{p, q}.Length() }

// Slant returns the straight way from p to a place over or under q that is so much higher. It
// needs a root, so it is worked in floats and rounded once; where only one of both differs it
// is exact.
func (p Point) Slant(q Point, up unit.Length) unit.Length {
	flat := p.Distance(q)
	switch {
	case up == 0:
		return flat
	case flat == 0:
		return up.Abs()
	}
	return unit.FromMillimetres(math.Hypot(flat.Millimetres(), up.Millimetres()))
}

// cross is the z of u × v: above zero where v points to the right hand of u.
func cross(u, v Point) unit.Area { return u.X.Times(v.Y).Sub(u.Y.Times(v.X)) }

func dot(u, v Point) unit.Area { return u.X.Times(v.X).Add(u.Y.Times(v.Y)) }

// Orientation tells where c lies for someone who walks from a to b on the sheet: 1 on
// the right hand, -1 on the left, 0 on the line. It is exact.
func Orientation(a, b, c Point) int { return cross(b.Sub(a), c.Sub(a)).Sign() }

// OnSegment reports whether p lies on the segment from a to b, its ends included. It
// is exact.
func OnSegment(p, a, b Point) bool {
	return BoxOf(a, b).Contains(p) && Orientation(a, b, p) == 0
}
