package frame

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Dim is one dimension of a thing in a ceiling or a floor: from it to a wall.
type Dim struct {
	From, To geom.Point
	Length   unit.Length
	Wall     plan.ID
}

// ToWalls returns the dimensions of a place in a room's ceiling or floor along the axes
// of the sheet: to the nearest wall to the left, to the right, up and down. Those that
// slant are rounded once to the nearest nanometre.
func ToWalls(room *plan.Room, at geom.Point) (dims []Dim) {
	for _, way := range []geom.Point{{X: -1}, {X: 1}, {Y: -1}, {Y: 1}} {
		best := Dim{Length: -1}
		for i, s := range room.Sides {
			if away, ok := rayHit(at, way, room.Segment(i)); ok && (best.Length < 0 || away < best.Length) {
				to := at.Add(geom.Point{X: way.X * away, Y: way.Y * away})
				best = Dim{at, to, away, s.ID}
			}
		}
		if best.Length >= 0 {
			dims = append(dims, best)
		}
	}
	return dims
}

// rayHit returns how far from a point, along an axis, a segment lies.
func rayHit(from, way geom.Point, s geom.Segment) (unit.Length, bool) {
	if way.X == 0 { // turn the picture so that the ray runs along x
		swap := func(p geom.Point) geom.Point { return geom.Point{X: p.Y, Y: p.X} }
		from, way, s = swap(from), swap(way), geom.Segment{A: swap(s.A), B: swap(s.B)}
	}
	if s.A.Y == s.B.Y || from.Y < min(s.A.Y, s.B.Y) || from.Y > max(s.A.Y, s.B.Y) {
		return 0, false
	}
	share := (from.Y - s.A.Y).Millimetres() / (s.B.Y - s.A.Y).Millimetres()
	x := s.A.X + unit.FromMillimetres((s.B.X-s.A.X).Millimetres()*share)
	away := (x - from.X) * way.X
	return away, away >= 0
}
