package geom

import "studbay/plan/unit"

// Box is an upright rectangle; its edges belong to it. Min is its left upper corner
// on the sheet, Max its right lower. The zero value is the origin alone.
type Box struct {
	Min, Max Point
}

// BoxOf returns the least box that holds the points; the zero Box of none.
func BoxOf(points ...Point) Box {
	if len(points) == 0 {
		return Box{}
	}
	b := Box{points[0], points[0]}
	for _, p := range points[1:] {
		b.Min = Point{min(b.Min.X, p.X), min(b.Min.Y, p.Y)}
		b.Max = Point{max(b.Max.X, p.X), max(b.Max.Y, p.Y)}
	}
	return b
}

// Width returns the extent along X.
func (b Box) Width() unit.Length { return b.Max.X - b.Min.X }

// Height returns the extent along Y.
func (b Box) Height() unit.Length { return b.Max.Y - b.Min.Y }

// Center returns the middle, a half nanometre dropped towards Min.
func (b Box) Center() Point {
	return Point{b.Min.X + b.Width()/2, b.Min.Y + b.Height()/2}
}

// Contains reports whether p lies in b or on its edge.
func (b Box) Contains(p Point) bool {
	return b.Min.X <= p.X && p.X <= b.Max.X && b.Min.Y <= p.Y && p.Y <= b.Max.Y
}

// ContainsBox reports whether all of c lies in b.
func (b Box) ContainsBox(c Box) bool { return b.Contains(c.Min) && b.Contains(c.Max) }

// Intersects reports whether b and c share a point; touching edges do.
func (b Box) Intersects(c Box) bool {
	return b.Min.X <= c.Max.X && c.Min.X <= b.Max.X && b.Min.Y <= c.Max.Y && c.Min.Y <= b.Max.Y
}

// Expand returns b moved outwards by the margin on every side. A negative margin moves
// inwards, to the centre at most.
func (b Box) Expand(margin unit.Length) Box {
	x := max(margin, -b.Width()/2)
	y := max(margin, -b.Height()/2)
	return Box{Point{b.Min.X - x, b.Min.Y - y}, Point{b.Max.X + x, b.Max.Y + y}}
}

// Union returns the least box that holds b and c.
func (b Box) Union(c Box) Box { return BoxOf(b.Min, b.Max, c.Min, c.Max) }

// Corners returns the four corners clockwise as seen on the sheet, from Min.
func (b Box) Corners() Polygon {
	return Polygon{b.Min, {b.Max.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}}
}
