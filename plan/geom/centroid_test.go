package geom

import (
	"testing"

	"studbay/plan/unit"
)

// TestCentresOfMass: of an L of a 4 × 2 and a 2 × 2 m piece the centres, (2, 1) and (1, 3),
// weighed by 8 and 4 m²: (5/3, 5/3). One without area has none but that of its box.
func TestCentresOfMass(t *testing.T) {
	const m = unit.Metre
	at := func(x, y unit.Length) Point { return Point{x * m, y * m} }
	l := Polygon{at(0, 0), at(4, 0), at(4, 2), at(2, 2), at(2, 4), at(0, 4)}
	third := Point{5 * m / 3, 5 * m / 3}
	for _, tt := range []struct {
		name string
		p    Polygon
		want Point
	}{
		{"a square", Polygon{at(1, 1), at(3, 1), at(3, 3), at(1, 3)}, at(2, 2)},
		{"a triangle", Polygon{at(0, 0), at(6, 0), at(0, 3)}, at(2, 1)},
		{"an L", l, third},
		{"the other way round", reversed(l), third},
		{"far out", l.Moved(at(900, -700)), third.Add(at(900, -700))},
		{"a line there and back", Polygon{at(0, 0), at(2, 0), at(6, 0)}, at(3, 0)},
		{"one point", Polygon{at(5, 6)}, at(5, 6)},
	} {
		if got := tt.p.Centroid(); (got.X-tt.want.X).Abs() > 1000*unit.Nanometre || (got.Y-tt.want.Y).Abs() > 1000*unit.Nanometre {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
