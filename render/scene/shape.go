package scene

// LinePath returns the straight line between two points.
func LinePath(a, b Point) Path { return Polyline(a, b) }

// Polyline returns the open path through points.
func Polyline(points ...Point) (p Path) {
	for i, q := range points {
		if i == 0 {
			p.MoveTo(q)
			continue
		}
		p.LineTo(q)
	}
	return p
}

// Polygon returns the closed path through points.
func Polygon(points ...Point) Path {
	p := Polyline(points...)
	if len(points) > 0 {
		p.Close()
	}
	return p
}

// Path returns the outline of r.
func (r Rect) Path() Path {
	return Polygon(r.Min, Point{r.Max.X, r.Min.Y}, r.Max, Point{r.Min.X, r.Max.Y})
}

// RoundedPath returns the outline of r with its corners rounded. A radius over half
// the shorter edge counts as that half.
func (r Rect) RoundedPath(radius float64) (p Path) {
	d := min(radius, r.Width()/2, r.Height()/2)
	if d <= 0 {
		return r.Path()
	}
	inner := r.Expanded(-d)
	p.ArcTo(inner.Min, d, 180, 90)
	p.ArcTo(Point{inner.Max.X, inner.Min.Y}, d, 270, 90)
	p.ArcTo(inner.Max, d, 0, 90)
	p.ArcTo(Point{inner.Min.X, inner.Max.Y}, d, 90, 90)
	p.Close()
	return p
}

// Circle returns a whole circle.
func Circle(middle Point, radius float64) (p Path) {
	p.ArcTo(middle, radius, 0, 360)
	p.Close()
	return p
}

// Arc returns part of a circle, open, by the angles of ArcTo.
func Arc(middle Point, radius, start, sweep float64) (p Path) {
	p.ArcTo(middle, radius, start, sweep)
	return p
}
