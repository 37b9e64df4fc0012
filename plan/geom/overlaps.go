package geom

import (
	"slices"

	"studbay/plan/unit"
)

// Overlaps reports whether two simple polygons share an area that is deeper than the
// tolerance somewhere. Those that share edges or corners alone do not, nor do those that
// run over each other by no more than rounding.
func (p Polygon) Overlaps(q Polygon, tolerance unit.Length) bool {
	return p.Box().Intersects(q.Box()) && (p.reachesInto(q, tolerance) || q.reachesInto(p, tolerance))
}

// reachesInto reports whether a corner of p, the middle of a piece of an edge between two
// edges of q, or the inside of p is within q, farther from its edges than the tolerance.
func (p Polygon) reachesInto(q Polygon, tolerance unit.Length) bool {
	isIn := func(at Point) bool {
		if !q.InteriorContains(at) {
			return false
		}
		_, away := q.Nearest(at)
		return away > tolerance
	}
	for i := range p {
		e := p.Edge(i)
		if isIn(e.A) {
			return true
		}
		cuts := e.cutBy(q)
		for j := range cuts[1:] {
			if isIn(e.At((cuts[j] + cuts[j+1]) / 2)) {
				return true
			}
		}
	}
	return isIn(p.LabelPoint())
}

// Within lists the stretches of s inside of a simple polygon, from A to B. What runs along
// its edges is not inside.
func (s Segment) Within(q Polygon) (all []Interval) {
	cuts := s.cutBy(q)
	for i, to := range cuts[1:] {
		from := cuts[i]
		if from == to || !q.InteriorContains(s.At((from+to)/2)) {
			continue
		}
		if n := len(all); n > 0 && all[n-1].To == from {
			all[n-1].To = to
			continue
		}
		all = append(all, Interval{from, to})
	}
	return all
}

// cutBy returns the places along s where edges of a polygon meet it, and both its ends, in
// order.
func (s Segment) cutBy(q Polygon) []unit.Length {
	length := s.Length()
	cuts := []unit.Length{0, length}
	for i := range q {
		e := q.Edge(i)
		if !s.Intersects(e) {
			continue
		}
		from, offA := s.Project(e.A)
		to, offB := s.Project(e.B)
		if offA == offB { // along it
			cuts = append(cuts, min(max(from, 0), length), min(max(to, 0), length))
			continue
		}
		share := offA.Millimetres() / (offA - offB).Millimetres()
		at := from + unit.FromMillimetres((to-from).Millimetres()*share)
		cuts = append(cuts, min(max(at, 0), length))
	}
	slices.Sort(cuts)
	return cuts
}
