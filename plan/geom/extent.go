package geom

import "studbay/plan/unit"

// Extent returns how far an outline reaches along its longest side and square to it, the one
// that lies nearer to the level of the sheet first. It is whole where the outline fills that
// box: a rectangle, whichever way it lies.
func (p Polygon) Extent() (across, down unit.Length, whole bool) {
	var longest Segment
	for _, e := range p.Edges() {
		if e.Length() > longest.Length() {
			longest = e
		}
	}
	f := FrameOf(longest)
	var most, least Point
	for i, q := range p {
		along, out := f.Project(q)
		at := Point{X: along, Y: out}
		if i == 0 {
			most, least = at, at
		}
		most = Point{X: max(most.X, at.X), Y: max(most.Y, at.Y)}
		least = Point{X: min(least.X, at.X), Y: min(least.Y, at.Y)}
	}
	across, down = most.X-least.X, most.Y-least.Y
	// Corners aslant are rounded to the nanometre, and so is each place along the side.
	missing := across.Times(down).Sub(p.Area())
	whole = missing.Cmp(p.Perimeter().Times(2*unit.Nanometre)) <= 0
	if v := longest.B.Sub(longest.A); v.X.Abs() < v.Y.Abs() {
		across, down = down, across
	}
	return across, down, whole
}
