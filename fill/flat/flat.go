// Package flat is of ceilings and floors: what an opening takes of them, and how far a place
// in them is from the walls.
package flat

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

// StandsAt reports whether a side is a wall that a tape can be laid against in a ceiling or
// a floor: at a ceiling a railing is none.
func StandsAt(s *plan.Side, part plan.Part) bool {
	return s.Kind != plan.SideOpen && (s.Kind != plan.SideRailing || part == plan.PartFloor)
}

// NearWalls returns the dimensions of a place in a room's ceiling or floor as a tape is
// laid: square to the nearest wall that stands opposite it, and square to the nearest of
// those across to that one. None runs aslant to the end of a wall that the place is not
// before, so there may be one, or none.
func NearWalls(room *plan.Room, part plan.Part, at geom.Point) (dims []Dim) {
	var first geom.Segment
	for range 2 {
		best, found := -1, Dim{}
		for i, s := range room.Sides {
			line := room.Segment(i)
			if !StandsAt(s, part) || len(dims) > 0 && !isSquare(first, line) {
				continue
			}
			foot, away, ok := opposite(line, at)
			if ok && (best < 0 || away < found.Length) && isInSight(room, i, at, foot) {
				best, found = i, Dim{at, foot, away, s.ID}
			}
		}
		if best < 0 {
			break
		}
		dims, first = append(dims, found), room.Segment(best)
	}
	return dims
}

// opposite returns the foot of a place on a line and how far off it is, and reports whether
// the place is before the line.
func opposite(line geom.Segment, at geom.Point) (foot geom.Point, away unit.Length, ok bool) {
	f := geom.FrameOf(line)
	along, out := f.Project(at)
	return f.Point(along, 0), out, out >= 0 && -plan.Slack <= along && along <= line.Length()+plan.Slack
}

// isInSight reports whether no other side of a room lies between a place and one of a side.
func isInSight(room *plan.Room, side int, at, foot geom.Point) bool {
	way := geom.Segment{A: at, B: foot}
	for i := range room.Sides {
		if i != side && room.Segment(i).Crosses(way) {
			return false
		}
	}
	return true
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
