package geom_test

import (
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// An L of 20 by 20 ft of which the upper right quarter is missing: ways lead round the
// corner in its middle.
func TestWays(t *testing.T) {
	const foot = unit.Foot
	at := func(x, y unit.Length) geom.Point { return geom.Point{X: x * foot, Y: y * foot} }
	room := geom.Polygon{at(0, 0), at(10, 0), at(10, 10), at(20, 10), at(20, 20), at(0, 20)}
	for _, tt := range []struct {
		name     string
		from, to geom.Point
		want     unit.Length
		source   string
	}{
		{"straight", at(1, 1), at(4, 5), 5 * foot, "3, 4 and 5"},
		{"along a wall", at(0, 0), at(0, 20), 20 * foot, "one side"},
		{"round the corner", at(6, 7), at(14, 13), 10 * foot, "3, 4 and 5 on either side of the corner"},
		{"past the corner", at(5, 5), at(5, 20), 15 * foot, "straight down"},
		{"through the corner", at(10, 5), at(10, 15), 10 * foot, "straight down along the wall"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got, ok := room.WaysFrom(tt.from).To(tt.to); !ok || got != tt.want {
				t.Errorf("%v to %v: %v, %v, want %v (%s)", tt.from, tt.to, got, ok, tt.want, tt.source)
			}
			if got, ok := room.WaysFrom(tt.to).To(tt.from); !ok || got != tt.want {
				t.Errorf("back: %v, %v, want %v (%s)", got, ok, tt.want, tt.source)
			}
		})
	}
	area := geom.Polygon{at(14, 13), at(16, 13), at(16, 14), at(14, 14)}
	if got, ok := room.WaysFrom(at(6, 7)).ToArea(area); !ok || got != 10*foot {
		t.Errorf("to an area: %v, %v, want 10 ft: to its nearest corner", got, ok)
	}
	if got, ok := room.WaysFrom(at(15, 13)).ToArea(area); !ok || got != 0 {
		t.Errorf("from within an area: %v, %v, want none", got, ok)
	}
	if got, ok := room.WaysFrom(at(10, 13)).ToLine(geom.Segment{A: at(13, 10), B: at(13, 20)}); !ok || got != 3*foot {
		t.Errorf("to a line: %v, %v, want 3 ft", got, ok)
	}
	if got, ok := room.WaysFrom(at(1, 1)).To(at(15, 5)); ok {
		t.Errorf("to a point outside: %v, want none", got)
	}
	if got, ok := room.WaysFrom(at(15, 5)).To(at(11, 11)); ok {
		t.Errorf("from a point outside: %v, want none", got)
	}
}
