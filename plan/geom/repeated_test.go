package geom

import (
	"errors"
	"testing"
)

// TestWhichCornersAreOnePoint: the least corner that stands again, and the next place
// where it does, wherever in the list they are.
func TestWhichCornersAreOnePoint(t *testing.T) {
	a, b, c, d := Point{0, 0}, Point{10, 0}, Point{10, 10}, Point{0, 10}
	for _, tt := range []struct {
		name    string
		corners Polygon
		i, j    int
	}{
		{"the first and a later one", Polygon{a, b, a, c}, 0, 2},
		{"the second and the last", Polygon{a, b, c, d, b}, 1, 4},
		{"the first of three times", Polygon{a, b, c, b, d, b}, 1, 3},
		{"two pairs, the lesser", Polygon{a, b, c, b, d, a, c}, 0, 5},
	} {
		var flaw *PolygonError
		if err := tt.corners.Check(); !errors.As(err, &flaw) || flaw.Flaw != RepeatedCorner || flaw.I != tt.i || flaw.J != tt.j {
			t.Errorf("%s: %v, want corners %d and %d", tt.name, err, tt.i+1, tt.j+1)
		}
	}
}
