package geom

import (
	"testing"

	"studbay/plan/unit"
)

// The straight way is that of Pythagoras: 3-4-5 twelve times; along one of both it is exact.
func TestSlantIsTheStraightWay(t *testing.T) {
	p := Point{X: 5 * unit.Inch, Y: 7 * unit.Inch}
	for _, tt := range []struct{ along, up, want unit.Length }{
		{36 * unit.Inch, 48 * unit.Inch, 60 * unit.Inch}, {36 * unit.Inch, -48 * unit.Inch, 60 * unit.Inch},
		{36*unit.Inch + 1, 0, 36*unit.Inch + 1}, {0, 7, 7}, {0, -7, 7}, {0, 0, 0},
	} {
		if got := p.Slant(Point{X: p.X, Y: p.Y - tt.along}, tt.up); got != tt.want {
			t.Errorf("%v along and %v up is %v, want %v", tt.along, tt.up, got, tt.want)
		}
	}
}
