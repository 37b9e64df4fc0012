package scene

// Rect is an upright box in scene units, its edges part of it. It is empty where
// Max is not greater than Min in both directions; the zero value is empty.
type Rect struct{ Min, Max Point }

// RectAround returns the box of a width and height about a middle.
func RectAround(middle Point, width, height float64) Rect {
	half := Point{width / 2, height / 2}
	return Rect{middle.Sub(half), middle.Add(half)}
}

// IsEmpty reports whether r has no inside.
func (r Rect) IsEmpty() bool { return r.Max.X <= r.Min.X || r.Max.Y <= r.Min.Y }

// Width returns the extent of r along x.
func (r Rect) Width() float64 { return r.Max.X - r.Min.X }

// Height returns the extent of r along y.
func (r Rect) Height() float64 { return r.Max.Y - r.Min.Y }

// Middle returns the point halfway between the corners.
func (r Rect) Middle() Point { return r.Min.Add(r.Max).Mul(0.5) }

// Expanded returns r with each edge moved out by d, or in where d is negative.
func (r Rect) Expanded(d float64) Rect {
	return Rect{Point{r.Min.X - d, r.Min.Y - d}, Point{r.Max.X + d, r.Max.Y + d}}
}

// Moved returns r shifted by v.
func (r Rect) Moved(v Point) Rect { return Rect{r.Min.Add(v), r.Max.Add(v)} }

// Union returns the least box that holds both; an empty one adds nothing.
func (r Rect) Union(s Rect) Rect {
	if r.IsEmpty() {
		return s
	}
	if s.IsEmpty() {
		return r
	}
	return Rect{
		Point{min(r.Min.X, s.Min.X), min(r.Min.Y, s.Min.Y)},
		Point{max(r.Max.X, s.Max.X), max(r.Max.Y, s.Max.Y)},
	}
}

// Intersect returns the box common to both, the zero Rect if there is none.
func (r Rect) Intersect(s Rect) Rect {
	both := Rect{
		Point{max(r.Min.X, s.Min.X), max(r.Min.Y, s.Min.Y)},
		Point{min(r.Max.X, s.Max.X), min(r.Max.Y, s.Max.Y)},
	}
	if both.IsEmpty() {
		return Rect{}
	}
	return both
}

// Overlaps reports whether r and s have more than an edge in common.
func (r Rect) Overlaps(s Rect) bool { return !r.Intersect(s).IsEmpty() }

// Contains reports whether p lies in r or on its edge.
func (r Rect) Contains(p Point) bool {
	return p.X >= r.Min.X && p.X <= r.Max.X && p.Y >= r.Min.Y && p.Y <= r.Max.Y
}
