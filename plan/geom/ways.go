package geom

import "studbay/plan/unit"

// Ways are the shortest ways within a polygon from one point: straight, or round corners
// that stand into it. Lengths are rounded as those of segments are.
type Ways struct {
	in     Polygon
	points []Point       // where they start, then the corners that they turn at
	far    []unit.Length // to each of them; -1 where none leads
}

// WaysFrom returns the ways from a point of p, which is clockwise as seen on the sheet.
func (p Polygon) WaysFrom(from Point) *Ways {
	w := &Ways{in: p, points: []Point{from}, far: []unit.Length{0}}
	for i := range p {
		before, next := p[(i+len(p)-1)%len(p)], p[(i+1)%len(p)]
		if Orientation(before, p[i], next) < 0 { // the outline turns away
			w.points, w.far = append(w.points, p[i]), append(w.far, -1)
		}
	}
	w.spread()
	return w
}

// spread finds the shortest way to each corner, the nearest first.
func (w *Ways) spread() {
	done := make([]bool, len(w.points))
	for {
		at := -1
		for i, d := range w.far {
			if !done[i] && d >= 0 && (at < 0 || d < w.far[at]) {
				at = i
			}
		}
		if at < 0 {
			return
		}
		done[at] = true
		for i, p := range w.points {
			d := w.far[at] + w.points[at].Distance(p)
			if !done[i] && (w.far[i] < 0 || d < w.far[i]) && w.isClear(w.points[at], p) {
				w.far[i] = d
			}
		}
	}
}

// To returns how long the way to a point is. It reports false where none leads there.
func (w *Ways) To(q Point) (far unit.Length, ok bool) {
	return w.least(func(from Point) (Point, unit.Length) { return q, from.Distance(q) })
}

// ToArea returns how long the way to the nearest edge of an area is, none where it begins
// within. It reports false where none leads there.
func (w *Ways) ToArea(area Polygon) (far unit.Length, ok bool) {
	if area.Contains(w.points[0]) {
		return 0, true
	}
	return w.least(area.Nearest)
}

// ToLine returns how long the way to the nearest point of a segment is.
func (w *Ways) ToLine(line Segment) (far unit.Length, ok bool) {
	return w.least(func(from Point) (Point, unit.Length) {
		along, away := line.Nearest(from)
		return line.At(along), away
	})
}

// least returns the shortest of the ways that end straight from one of the corners.
func (w *Ways) least(last func(from Point) (to Point, away unit.Length)) (best unit.Length, ok bool) {
	for i, p := range w.points {
		if w.far[i] < 0 {
			continue
		}
		to, away := last(p)
		if d := w.far[i] + away; (!ok || d < best) && w.isClear(p, to) {
			best, ok = d, true
		}
	}
	return best, ok
}

// slack is the most that rounding adds to a point on an edge that runs aslant, which may
// lie behind it then.
const slack = 100 * unit.Nanometre

// isClear reports whether a straight line stays in the polygon: so does the middle of each
// piece between two edges that it meets.
func (w *Ways) isClear(a, b Point) bool {
	line := Segment{A: a, B: b}
	cuts := line.cutBy(w.in)
	for i := range cuts[1:] {
		middle := line.At((cuts[i] + cuts[i+1]) / 2)
		if w.in.Contains(middle) {
			continue
		}
		if _, away := w.in.Nearest(middle); away > slack {
			return false
		}
	}
	return true
}
