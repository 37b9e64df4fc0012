package geom_test

import (
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// rect is a rectangle of whole millimetres.
func rect(x, y, w, h unit.Length) geom.Polygon {
	return quad(x, y, x+w, y, x+w, y+h, x, y+h)
}

func quad(of ...unit.Length) (p geom.Polygon) {
	for i := 0; i < len(of); i += 2 {
		p = append(p, geom.Point{X: of[i] * unit.Millimetre, Y: of[i+1] * unit.Millimetre})
	}
	return p
}

func TestOverlaps(t *testing.T) {
	room := rect(0, 0, 100, 80)
	elbow := quad(0, 0, 100, 0, 100, 40, 40, 40, 40, 80, 0, 80)
	for _, tt := range []struct {
		name string
		p, q geom.Polygon
		want bool
	}{
		{"apart", room, rect(110, 0, 50, 80), false},
		{"one edge in common", room, rect(100, 0, 50, 80), false},
		{"a part of an edge in common", room, rect(100, 20, 50, 200), false},
		{"a corner in common", room, rect(100, 80, 50, 50), false},
		{"one millimetre over", room, rect(99, 0, 50, 80), true},
		{"a corner over", room, rect(90, 70, 50, 50), true},
		{"one inside", room, rect(10, 10, 20, 20), true},
		{"inside at an edge", room, rect(0, 0, 20, 20), true},
		{"the same", room, room, true},
		{"across, no corner of either inside", room, rect(40, -20, 20, 200), true},
		{"across from edge to edge", room, rect(40, 0, 20, 80), true},
		{"corner to corner of it", room, quad(0, 0, 100, 80, 0, 80), true},
		{"in the corner of an L, outside it", elbow, rect(40, 40, 60, 40), false},
		{"in the corner of an L, over its edge", elbow, rect(39, 40, 60, 40), true},
		{"both sides of a slanted edge", quad(0, 0, 300, 100, 0, 100), quad(0, 0, 300, 0, 300, 100), false},
	} {
		if got := tt.p.Overlaps(tt.q, 1000*unit.Nanometre); got != tt.want {
			t.Errorf("%s: %v", tt.name, got)
		}
		if got := tt.q.Overlaps(tt.p, 1000*unit.Nanometre); got != tt.want {
			t.Errorf("%s, the other way: %v", tt.name, got)
		}
	}
}
