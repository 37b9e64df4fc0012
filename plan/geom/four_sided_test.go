package geom_test

import (
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Right triangles of 3, 4 and 5 put corners at whole feet.
func TestFourSidesAndADiagonal(t *testing.T) {
	const foot = unit.Foot
	at := func(x, y unit.Length) geom.Point { return geom.Point{X: x * foot, Y: y * foot} }
	for _, tt := range []struct {
		name   string
		taped  geom.Taped
		base   geom.Segment
		want   geom.Polygon
		source string
	}{
		{"a rectangle", geom.Taped{First: 4 * foot, Second: 3 * foot, Third: 4 * foot, Fourth: 3 * foot, Diagonal: 5 * foot},
			geom.Segment{A: at(1, 1), B: at(2, 1)}, geom.Polygon{at(1, 1), at(5, 1), at(5, 4), at(1, 4)}, "3, 4, 5"},
		{"turned", geom.Taped{First: 4 * foot, Second: 3 * foot, Third: 4 * foot, Fourth: 3 * foot, Diagonal: 5 * foot},
			geom.Segment{A: at(1, 1), B: at(1, 9)}, geom.Polygon{at(1, 1), at(1, 5), at(-2, 5), at(-2, 1)}, "3, 4, 5, a quarter turned"},
		{"a kite", geom.Taped{First: 4 * foot, Second: 3 * foot, Third: 3 * foot, Fourth: 4 * foot, Diagonal: 5 * foot},
			geom.Segment{A: at(0, 0), B: at(1, 0)}, geom.Polygon{at(0, 0), at(4, 0), at(4, 3), {X: 28 * foot / 25, Y: 96 * foot / 25}}, "the corner mirrored about the line 4 to 3: 4·(7/25, 24/25)"},
	} {
		got, ok := tt.taped.Corners(tt.base)
		if !ok || len(got) != 4 {
			t.Errorf("%s: %v, %v", tt.name, got, ok)
			continue
		}
		for i := range got {
			if off := got[i].Distance(tt.want[i]); off > 2 {
				t.Errorf("%s: corner %d at %v, want %v (%s)", tt.name, i, got[i], tt.want[i], tt.source)
			}
		}
	}
}

// Two sides as long as the third, or shorter, leave no inside.
func TestLengthsThatDoNotClose(t *testing.T) {
	whole := geom.Taped{First: 4 * unit.Foot, Second: 3 * unit.Foot, Third: 4 * unit.Foot, Fourth: 3 * unit.Foot, Diagonal: 5 * unit.Foot}
	base := geom.Segment{B: geom.Point{X: unit.Foot}}
	for name, change := range map[string]func(*geom.Taped){
		"first missing":         func(t *geom.Taped) { t.First = 0 },
		"second missing":        func(t *geom.Taped) { t.Second = 0 },
		"third missing":         func(t *geom.Taped) { t.Third = 0 },
		"fourth missing":        func(t *geom.Taped) { t.Fourth = 0 },
		"diagonal missing":      func(t *geom.Taped) { t.Diagonal = 0 },
		"diagonal as long":      func(t *geom.Taped) { t.Diagonal = 7 * unit.Foot },
		"second as long":        func(t *geom.Taped) { t.Second = 9 * unit.Foot },
		"first as long":         func(t *geom.Taped) { t.First = 8 * unit.Foot },
		"third and fourth flat": func(t *geom.Taped) { t.Third, t.Fourth = 2*unit.Foot, 3*unit.Foot },
	} {
		taped := whole
		change(&taped)
		if got, ok := taped.Corners(base); ok {
			t.Errorf("%s: %v", name, got)
		}
		if got, want := taped.IsWhole(), name != "first missing" && name != "second missing" && name != "third missing" && name != "fourth missing" && name != "diagonal missing"; got != want {
			t.Errorf("%s: whole is %v", name, got)
		}
		taped.Other = 5 * unit.Foot
		if by, ok := taped.Misclosure(); ok {
			t.Errorf("%s: misses by %v", name, by)
		}
	}
	if got, ok := whole.Corners(geom.Segment{}); ok {
		t.Errorf("along nothing: %v", got)
	}
}

// In a rectangle both diagonals are alike.
func TestMisclosureOfAnotherDiagonal(t *testing.T) {
	taped := geom.Taped{First: 4 * unit.Foot, Second: 3 * unit.Foot, Third: 4 * unit.Foot, Fourth: 3 * unit.Foot, Diagonal: 5 * unit.Foot}
	if _, ok := taped.Misclosure(); ok {
		t.Error("the other diagonal was not taped")
	}
	for _, off := range []unit.Length{unit.Inch / 2, 0, -unit.Inch / 4} {
		taped.Other = 5*unit.Foot + off
		if by, ok := taped.Misclosure(); !ok || (by-off).Abs() > 2 {
			t.Errorf("off by %v: %v, %v", off, by, ok)
		}
	}
}

// Turned round, the last side comes first, the diagonal begins at the same corner, and the other
// joins the same two: what was told of an outline is told of its mirror image.
func TestReadingsTurnedRound(t *testing.T) {
	const foot = unit.Foot
	taped := geom.Taped{First: 4 * foot, Second: 3 * foot, Third: 2 * foot, Fourth: 5 * foot, Diagonal: 5 * foot, Other: 6 * foot}
	turned := taped.TurnedRound()
	if want := (geom.Taped{First: 5 * foot, Second: 2 * foot, Third: 3 * foot, Fourth: 4 * foot, Diagonal: 5 * foot, Other: 6 * foot}); turned != want {
		t.Errorf("turned to %+v, want %+v", turned, want)
	}
	if turned.TurnedRound() != taped {
		t.Errorf("turned twice: %+v", turned.TurnedRound())
	}
	was, isClosed := taped.Misclosure()
	now, isTurned := turned.Misclosure()
	if !isClosed || !isTurned || (was-now).Abs() > 4 {
		t.Errorf("missed by %v and, turned, by %v", was, now)
	}
}
