package geom

import (
	"math"

	"studbay/plan/unit"
)

// Taped is what a tape read in an outline of four sides: along each, clockwise as seen on the
// sheet, and across. The zero value is nothing read; 0 is one not read.
type Taped struct {
	First    unit.Length `json:"first,omitempty"`
	Second   unit.Length `json:"second,omitempty"`
	Third    unit.Length `json:"third,omitempty"`
	Fourth   unit.Length `json:"fourth,omitempty"`
	Diagonal unit.Length `json:"diagonal,omitempty"` // from the beginning of the first side
	Other    unit.Length `json:"other,omitempty"`    // from its end: a check
}

// IsWhole reports whether the readings tell a shape: all four sides and the first diagonal.
func (t Taped) IsWhole() bool {
	return min(t.First, t.Second, t.Third, t.Fourth, t.Diagonal) > 0
}

// TurnedRound returns the readings with the sides in the other direction from the same first
// corner, as of an outline that was mirrored.
func (t Taped) TurnedRound() Taped {
	t.First, t.Second, t.Third, t.Fourth = t.Fourth, t.Third, t.Second, t.First
	return t
}

// Corners returns the corners of the outline that the readings tell. The first is where base
// begins, and the first side runs along base. Each coordinate is rounded once. It reports false
// where they tell none: one is missing, or two sides and the diagonal make no triangle.
func (t Taped) Corners(base Segment) (corners Polygon, ok bool) {
	d := t.Diagonal.Millimetres()
	near, isNear := apex(t.First.Millimetres(), t.Second.Millimetres(), d)
	far, isFar := apex(t.Fourth.Millimetres(), t.Third.Millimetres(), d)
	ux, uy := base.direction()
	if !isNear || !isFar || ux == 0 && uy == 0 {
		return nil, false
	}
	at := func(angle float64, l unit.Length) Point {
		x, y := math.Cos(angle)*l.Millimetres(), math.Sin(angle)*l.Millimetres()
		return Point{base.A.X + unit.FromMillimetres(x*ux-y*uy), base.A.Y + unit.FromMillimetres(x*uy+y*ux)}
	}
	return Polygon{base.A, at(0, t.First), at(near, t.Diagonal), at(near+far, t.Fourth)}, true
}

// Misclosure returns by how much the other diagonal was read longer than the rest makes it,
// below zero where shorter. It reports false where that was not read, or the rest tells no
// shape.
func (t Taped) Misclosure() (by unit.Length, ok bool) {
	corners, ok := t.Corners(Segment{B: Point{X: t.First}})
	if !ok || t.Other <= 0 {
		return 0, false
	}
	return t.Other - corners[1].Distance(corners[3]), true
}

// apex returns the angle between sides of lengths a and c of a triangle whose third is b. It
// reports false where they make none, or one without an inside.
func apex(a, b, c float64) (angle float64, ok bool) {
	if a <= 0 || b <= 0 || c <= 0 || a+b <= c || a+c <= b || b+c <= a {
		return 0, false
	}
	return math.Acos((a*a + c*c - b*b) / (2 * a * c)), true
}

// direction returns the way of the segment as a unit vector, none where it has no length.
func (s Segment) direction() (x, y float64) {
	v := s.Vector()
	x, y = v.X.Millimetres(), v.Y.Millimetres()
	far := math.Hypot(x, y)
	if far == 0 {
		return 0, 0
	}
	return x / far, y / far
}
