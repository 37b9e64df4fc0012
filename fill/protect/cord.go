package protect

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// cordTo returns how far a cord runs from a point of a room to the edge of a fixture, in
// the plan and never through a wall of the room: straight, or round its corners.
func cordTo(v *index.RoomView, from geom.Point, f index.FixtureView) unit.Length {
	if f.Footprint.Contains(from) {
		return 0
	}
	way := newWays(v, from)
	best := unit.Length(-1)
	for i, p := range way.points {
		near, away := f.Footprint.Nearest(p)
		if d := way.far[i]; d >= 0 && way.isClear(p, near) && (best < 0 || d+away < best) {
			best = d + away
		}
	}
	return best
}

// ways are the shortest ways from the first point to the corners that a room turns at.
type ways struct {
	v      *index.RoomView
	points []geom.Point
	far    []unit.Length // -1 where none leads
}

func newWays(v *index.RoomView, from geom.Point) *ways {
	w := &ways{v: v, points: []geom.Point{from}, far: []unit.Length{0}}
	n := len(v.Sides)
	for i := range v.Sides {
		before, line := v.Sides[(i+n-1)%n].Line, v.Sides[i].Line
		if geom.Orientation(before.A, line.A, line.B) < 0 { // the outline turns away: a corner that stands into the room
			w.points, w.far = append(w.points, line.A), append(w.far, -1)
		}
	}
	done := make([]bool, len(w.points))
	for {
		at := -1
		for i, d := range w.far {
			if !done[i] && d >= 0 && (at < 0 || d < w.far[at]) {
				at = i
			}
		}
		if at < 0 {
			return w
		}
		done[at] = true
		for i, p := range w.points {
			d := w.far[at] + w.points[at].Distance(p)
			if !done[i] && w.isClear(w.points[at], p) && (w.far[i] < 0 || d < w.far[i]) {
				w.far[i] = d
			}
		}
	}
}

// isClear reports whether a straight line between two points of the room crosses no side.
// A point on a side that runs aslant may be rounded to one behind it.
func (w *ways) isClear(a, b geom.Point) bool {
	line := geom.Segment{A: a, B: b}
	for _, s := range w.v.Sides {
		if s.Line.Crosses(line) && !isOn(s.Line, a) && !isOn(s.Line, b) {
			return false
		}
	}
	middle := geom.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
	return w.v.Room.Outline().Contains(middle) || slices.ContainsFunc(w.v.Sides, func(s index.SideView) bool {
		_, away := s.Line.Nearest(middle)
		return away <= rule.Grain
	})
}

// isOn reports whether a point is on the line of a side, but for what rounding adds.
func isOn(side geom.Segment, p geom.Point) bool {
	_, off := side.Project(p)
	return off.Abs() <= rule.Grain
}
