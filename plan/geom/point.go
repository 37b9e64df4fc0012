// Package geom holds points, segments and polygons of exact lengths.
//
// x grows to the right of the sheet and y grows down it, as on a board. A polygon
// listed clockwise as seen on the sheet has its inside on the right hand of each
// edge. The package knows no room and no box. Orientation, area and intersection
// tests are exact; only results that need a root or a division are rounded, once,
// to the nearest nanometre.
package geom

import "studbay/plan/unit"

// Point is a place on a level, from the plan's origin: X to the right, Y down.
type Point struct {
	X, Y unit.Length
}

// Add returns p moved by v.
func (p Point) Add(v Point) Point { return Point{p.X + v.X, p.Y + v.Y} }

// Sub returns the vector from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }
