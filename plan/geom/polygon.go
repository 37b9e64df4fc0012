package geom

import "studbay/plan/unit"

// Polygon is a closed outline by its corners; the last joins the first. What is said
// of its inside holds for polygons that pass Check.
type Polygon []Point

// Edge returns the edge from corner i to the next; i is counted round and round.
func (p Polygon) Edge(i int) Segment {
	i = ((i % len(p)) + len(p)) % len(p)
	return Segment{p[i], p[(i+1)%len(p)]}
}

// Edges returns all edges, edge i starting at corner i.
func (p Polygon) Edges() []Segment {
	edges := make([]Segment, len(p))
	for i := range p {
		edges[i] = p.Edge(i)
	}
	return edges
}

// TwiceArea returns twice the signed area, exactly: above zero where p runs clockwise
// as seen on the sheet.
func (p Polygon) TwiceArea() unit.Area {
	var sum unit.Area
	for i := 1; i+1 < len(p); i++ {
		// From the first corner, so that places far from the origin cost no range.
		sum = sum.Add(cross(p[i].Sub(p[0]), p[i+1].Sub(p[0])))
	}
	return sum
}

// Area returns the area without sign. Where TwiceArea is odd, half a square nanometre
// is dropped.
func (p Polygon) Area() unit.Area {
	twice := p.TwiceArea()
	if twice.Sign() < 0 {
		twice = twice.Neg()
	}
	return twice.Half()
}

// IsClockwise reports whether p runs clockwise as seen on the sheet, its inside on the
// right hand of each edge.
func (p Polygon) IsClockwise() bool { return p.TwiceArea().Sign() > 0 }

// Clockwise returns p running clockwise: p itself, or its corners from the first on in
// the other order.
func (p Polygon) Clockwise() Polygon {
	if p.TwiceArea().Sign() >= 0 {
		return p
	}
	turned := make(Polygon, 0, len(p))
	turned = append(turned, p[0])
	for i := len(p) - 1; i > 0; i-- {
		turned = append(turned, p[i])
	}
	return turned
}

// Perimeter returns the sum of the edges' lengths.
func (p Polygon) Perimeter() unit.Length {
	var sum unit.Length
	for i := range p {
		sum += p.Edge(i).Length()
	}
	return sum
}

// Box returns the least box around p.
func (p Polygon) Box() Box { return BoxOf(p...) }

// Contains reports whether q lies inside p or on its boundary. It is exact.
func (p Polygon) Contains(q Point) bool { return p.OnBoundary(q) || p.isAround(q) }

// OnBoundary reports whether q lies on an edge of p. It is exact.
func (p Polygon) OnBoundary(q Point) bool {
	for i := range p {
		if e := p.Edge(i); OnSegment(q, e.A, e.B) {
			return true
		}
	}
	return false
}

// InteriorContains reports whether q lies inside p and not on its boundary. It is
// exact.
func (p Polygon) InteriorContains(q Point) bool {
	return !p.OnBoundary(q) && p.isAround(q)
}

// isAround reports whether a point that is on no edge lies inside p.
func (p Polygon) isAround(q Point) bool {
	inside := false
	for i := range p {
		if e := p.Edge(i); crossesRay(e, q) {
			inside = !inside
		}
	}
	return inside
}

// crossesRay reports whether e cuts the ray from q to the right. An edge owns its upper
// end and not its lower, so that a ray through a corner is counted once.
func crossesRay(e Segment, q Point) bool {
	if (e.A.Y > q.Y) == (e.B.Y > q.Y) {
		return false
	}
	if e.A.Y > e.B.Y {
		e = e.Reversed()
	}
	return Orientation(e.A, e.B, q) > 0
}

// Moved returns p moved by v.
func (p Polygon) Moved(v Point) Polygon {
	moved := make(Polygon, len(p))
	for i, q := range p {
		moved[i] = q.Add(v)
	}
	return moved
}

// Turned returns p turned about the origin by quarter turns, clockwise as seen on the
// sheet.
func (p Polygon) Turned(quarters int) Polygon {
	turned := make(Polygon, len(p))
	for i, q := range p {
		turned[i] = q.Turned(quarters)
	}
	return turned
}

// Distance returns how far q is from the polygon, 0 within it.
func (p Polygon) Distance(q Point) unit.Length {
	if p.Contains(q) {
		return 0
	}
	_, away := p.Nearest(q)
	return away
}

// Nearest returns the place on the edges that is nearest to q, and how far away it is.
func (p Polygon) Nearest(q Point) (at Point, away unit.Length) {
	for i := range p {
		e := p.Edge(i)
		if along, d := e.Nearest(q); i == 0 || d < away {
			at, away = e.At(along), d
		}
	}
	return at, away
}
