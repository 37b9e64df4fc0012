package frame

import (
	"math"

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

// NearWalls returns the dimensions of a place in a room's ceiling or floor to the nearest
// of its sides that is not open, and to the nearest of those across to it.
func NearWalls(room *plan.Room, at geom.Point) (dims []Dim) {
	var first geom.Segment
	for range 2 {
		best, found := -1, Dim{}
		for i, s := range room.Sides {
			line := room.Segment(i)
			if s.Kind == plan.SideOpen || len(dims) > 0 && !isSquare(first, line) {
				continue
			}
			if along, away := line.Nearest(at); best < 0 || away < found.Length {
				best, found = i, Dim{at, geom.FrameOf(line).Point(along, 0), away, s.ID}
			}
		}
		if best < 0 {
			break
		}
		dims, first = append(dims, found), room.Segment(best)
	}
	return dims
}

// isSquare reports whether two lines are nearer to square than to parallel.
func isSquare(a, b geom.Segment) bool {
	u, v := geom.FrameOf(a).Along(), geom.FrameOf(b).Along()
	cross := u.X.Millimetres()*v.Y.Millimetres() - u.Y.Millimetres()*v.X.Millimetres()
	return math.Abs(cross) > 1000*1000*math.Sqrt2/2
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
