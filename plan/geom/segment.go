package geom

import (
	"math/big"

	"studbay/plan/unit"
)

// Segment is the straight piece from A to B, both included.
type Segment struct {
	A, B Point
}

// Vector returns the way from A to B.
func (s Segment) Vector() Point { return s.B.Sub(s.A) }

// Reversed returns s from B to A.
func (s Segment) Reversed() Segment { return Segment{s.B, s.A} }

// Middle returns the point halfway from A to B, rounded towards A.
func (s Segment) Middle() Point {
	return Point{s.A.X + (s.B.X-s.A.X)/2, s.A.Y + (s.B.Y-s.A.Y)/2}
}

// Box returns the least box around s.
func (s Segment) Box() Box { return BoxOf(s.A, s.B) }

// Length returns the length: exact where s runs along an axis, else the integer root
// rounded once to the nearest nanometre.
func (s Segment) Length() unit.Length {
	d := s.Vector()
	switch {
	case d.X == 0:
		return d.Y.Abs()
	case d.Y == 0:
		return d.X.Abs()
	}
	return s.square().Sqrt()
}

// square is the exact square of the length.
func (s Segment) square() unit.Area {
	d := s.Vector()
	return dot(d, d)
}

// At returns the point so far along s from A, each coordinate rounded once to the
// nearest nanometre. At(0) is A and At(s.Length()) is B; beyond them the line goes on.
// On a segment without length every place is A.
func (s Segment) At(along unit.Length) Point {
	length := s.Length()
	if length == 0 {
		return s.A
	}
	if along == length {
		return s.B
	}
	d := s.Vector()
	if d.X == 0 || d.Y == 0 {
		return s.A.Add(Point{sign(d.X) * along, sign(d.Y) * along})
	}
	root := s.square().Big()
	return s.A.Add(Point{overRoot(d.X.Times(along), root), overRoot(d.Y.Times(along), root)})
}

func sign(l unit.Length) unit.Length {
	switch {
	case l < 0:
		return -1
	case l > 0:
		return 1
	}
	return 0
}

// overRoot returns a / √square rounded half away from zero to the nearest nanometre.
func overRoot(a unit.Area, square *big.Int) unit.Length {
	// round(|a|/√s) = (⌊√⌊4a²/s⌋⌋ + 1) / 2, all in whole numbers
	n := a.Big()
	n.Mul(n, n).Lsh(n, 2).Quo(n, square).Sqrt(n)
	n.Add(n, big.NewInt(1)).Rsh(n, 1)
	if a.Sign() < 0 {
		return -unit.Length(n.Int64())
	}
	return unit.Length(n.Int64())
}

// Project returns how far along s from A the foot of p's perpendicular lies, and how far
// p is off the line: above zero on the right hand, which is the inside of a clockwise
// polygon. Both are rounded once to the nearest nanometre. Along may lie beyond the
// ends. On a segment without length along is 0 and off the distance from A.
func (s Segment) Project(p Point) (along, off unit.Length) {
	d, v := s.Vector(), p.Sub(s.A)
	switch {
	case d.X == 0 && d.Y == 0:
		return 0, s.A.Distance(p)
	case d.Y == 0:
		return sign(d.X) * v.X, sign(d.X) * v.Y
	case d.X == 0:
		return sign(d.Y) * v.Y, -sign(d.Y) * v.X
	}
	root := s.square().Big()
	return overRoot(dot(d, v), root), overRoot(cross(d, v), root)
}

// Nearest returns the place on s nearest to p, as a distance from A, and how far p is
// from it.
func (s Segment) Nearest(p Point) (along, distance unit.Length) {
	along, off := s.Project(p)
	length := s.Length()
	switch {
	case along <= 0:
		return 0, p.Distance(s.A)
	case along >= length:
		return length, p.Distance(s.B)
	}
	return along, off.Abs()
}

// Intersects reports whether s and t share a point, ends included. It is exact.
func (s Segment) Intersects(t Segment) bool {
	if !s.Box().Intersects(t.Box()) {
		return false
	}
	return Orientation(s.A, s.B, t.A)*Orientation(s.A, s.B, t.B) <= 0 &&
		Orientation(t.A, t.B, s.A)*Orientation(t.A, t.B, s.B) <= 0
}

// Crosses reports whether s and t meet in one point that is an end of neither. It is
// exact.
func (s Segment) Crosses(t Segment) bool {
	return Orientation(s.A, s.B, t.A)*Orientation(s.A, s.B, t.B) < 0 &&
		Orientation(t.A, t.B, s.A)*Orientation(t.A, t.B, s.B) < 0
}

// Interval is a stretch along a segment, measured from its A. Both ends belong to it.
type Interval struct {
	From, To unit.Length
}

// Length returns the length of the stretch.
func (i Interval) Length() unit.Length { return i.To - i.From }

// Contains reports whether the place is in the stretch or at its end.
func (i Interval) Contains(at unit.Length) bool { return i.From <= at && at <= i.To }

// Overlap finds how two edges that run against each other stand back to back, as the
// two faces of one partition do. Covered is the stretch of s that t covers, seen square
// to s. Gap is the mean distance of t behind s, on its left hand; it is below zero where
// t stands before s, as the opposite wall of the same room does. It reports false where
// t does not run against s, where its ends differ by more than the tolerance in their
// distance from the line of s, or where it covers no stretch.
func (s Segment) Overlap(t Segment, tolerance unit.Length) (covered Interval, gap unit.Length, ok bool) {
	if dot(s.Vector(), t.Vector()).Sign() >= 0 {
		return Interval{}, 0, false
	}
	to, offA := s.Project(t.A)
	from, offB := s.Project(t.B)
	if (offA - offB).Abs() > tolerance {
		return Interval{}, 0, false
	}
	covered = Interval{max(from, 0), min(to, s.Length())}
	if covered.From >= covered.To {
		return Interval{}, 0, false
	}
	return covered, -(offA + offB) / 2, true
}
