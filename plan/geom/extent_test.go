package geom_test

import (
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// The figures are those the outlines are drawn by; the oblique one is a 3-4-5 triangle's
// frame, 10 ft along (8, 6) and 5 ft square to it.
func TestExtent(t *testing.T) {
	ft := func(x, y float64) geom.Point {
		return geom.Point{X: unit.Length(x * float64(unit.Foot)), Y: unit.Length(y * float64(unit.Foot))}
	}
	for name, tt := range map[string]struct {
		outline      geom.Polygon
		across, down float64
		whole        bool
	}{
		"wide":                      {geom.Polygon{ft(0, 0), ft(12, 0), ft(12, 10), ft(0, 10)}, 12, 10, true},
		"deep":                      {geom.Polygon{ft(3, 1), ft(11, 1), ft(11, 21), ft(3, 21)}, 8, 20, true},
		"a side in two":             {geom.Polygon{ft(0, 0), ft(5, 0), ft(12, 0), ft(12, 10), ft(0, 10)}, 12, 10, true},
		"an ell":                    {geom.Polygon{ft(0, 0), ft(12, 0), ft(12, 6), ft(8, 6), ft(8, 10), ft(0, 10)}, 12, 10, false},
		"aslant":                    {geom.Polygon{ft(0, 0), ft(8, 6), ft(5, 10), ft(-3, 4)}, 10, 5, true},
		"aslant, less a corner":     {geom.Polygon{ft(0, 0), ft(8, 6), ft(5.6, 9.2), ft(4.8, 8.6), ft(4.2, 9.4), ft(-3, 4)}, 10, 5, false},
		"steep":                     {geom.Polygon{ft(0, 0), ft(6, 8), ft(2, 11), ft(-4, 3)}, 5, 10, true},
		"short of a box by an inch": {geom.Polygon{ft(0, 0), ft(12, 0), ft(12, 10), ft(1.0/12, 10)}, 12, 10, false},
	} {
		across, down, whole := tt.outline.Extent()
		if near(across, tt.across) && near(down, tt.down) && whole == tt.whole {
			continue
		}
		t.Errorf("%s: %v × %v, whole %v; want %v × %v ft, %v", name, across, down, whole, tt.across, tt.down, tt.whole)
	}
}

// near allows for corners that are rounded to the nanometre.
func near(l unit.Length, feet float64) bool {
	return (l - unit.Length(feet*float64(unit.Foot))).Abs() <= 3*unit.Nanometre
}
