package frame_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestPlacesAlongAWall: past the end of a side a place is on the next where the wall goes
// straight on, at the very end still on its own.
func TestPlacesAlongAWall(t *testing.T) {
	h := walltest.New(t)
	at := func(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }
	room := h.RoomOf(nil, at(0, 0), at(60, 0), at(144, 0), at(144, 120), at(0, 120))
	ix := index.New(h.Plan)
	first, second := room.Sides[0], room.Sides[1]
	for _, tt := range []struct {
		side plan.ID
		at   unit.Length
		want plan.ID
		on   unit.Length
	}{
		{first, in(60), first, in(60)}, {first, in(60) + 1, second, 1}, {first, in(70), second, in(10)}, {first, 0, first, 0}, {first, -in(5), first, -in(5)},
		{second, 0, second, 0}, {second, -1, first, in(60) - 1}, {second, -in(5), first, in(55)}, {second, in(84), second, in(84)}, {second, in(90), second, in(90)},
		{"sgone", in(5), "sgone", in(5)}, {"sgone", -in(5), "sgone", -in(5)},
	} {
		if got, on := frame.OnWall(ix, tt.side, tt.at); got != tt.want || on != tt.on {
			t.Errorf("%s of %s: %s of %s, want %s of %s", tt.at, tt.side, on, got, tt.on, tt.want)
		}
	}
	left, right := frame.FixtureEnds(&plan.Fixture{ID: "f1", Width: in(40), Depth: in(24)}, plan.PartFront)
	if left.At != 0 || right.At != in(40) || left.IsRight || !right.IsRight || left.Of != "f1" || right.Of != "f1" {
		t.Errorf("the ends of a front: %+v, %+v", left, right)
	}
}

// TestOverlaps: by how little a part of a face moves clear of another, whichever way that is.
func TestOverlaps(t *testing.T) {
	rect := func(left, right, bottom, top float64) frame.Rect {
		return frame.Rect{Left: in(left), Right: in(right), Bottom: in(bottom), Top: in(top)}
	}
	r := rect(10, 20, 30, 40)
	for _, tt := range []struct {
		of   frame.Rect
		want float64
	}{
		{rect(18, 28, 30, 40), 2}, {rect(3, 12, 30, 40), 2}, {rect(10, 20, 37, 47), 3}, {rect(10, 20, 20, 33), 3}, {rect(17, 27, 38, 48), 2},
		{rect(20, 30, 30, 40), 0}, {rect(0, 10, 30, 40), 0}, {rect(10, 20, 40, 50), 0}, {rect(22, 30, 30, 40), 0}, {rect(18, 28, 45, 50), 0},
	} {
		if a, b := r.OverlapOf(tt.of), tt.of.OverlapOf(r); a != in(tt.want) || b != a {
			t.Errorf("%+v: %v and %v, want %v", tt.of, a, b, tt.want)
		}
	}
}

// TestTrim: of a window it goes round, of a door down to the floor, and without a casing there
// is none. A door leaves 1/8 in of gap and 3/16 of reveal: 5/16 in.
func TestTrim(t *testing.T) {
	for _, tt := range []struct {
		sill, casing float64
		want         frame.Rect
		any          bool
	}{
		{0, 0, frame.Rect{}, false},
		{0, 3, frame.Rect{Left: in(36.6875), Right: in(73.3125), Top: in(83.3125)}, true},
		{30, 3, frame.Rect{Left: in(36.6875), Right: in(73.3125), Bottom: in(26.6875), Top: in(83.3125)}, true},
		{2, 3, frame.Rect{Left: in(36.6875), Right: in(73.3125), Top: in(83.3125)}, true},
	} {
		b := &plan.Break{Kind: plan.BreakDoor, Width: in(30), Sill: in(tt.sill), Head: in(80), Casing: in(tt.casing)}
		if got, any := frame.CasingOf(index.Cut{Break: b, Start: in(40), From: in(40), To: in(70)}); got != tt.want || any != tt.any {
			t.Errorf("sill %v, casing %v: %+v, %v, want %+v", tt.sill, tt.casing, got, any, tt.want)
		}
	}
	b := &plan.Break{Kind: plan.BreakDoor, Width: in(30), Head: in(80), Casing: 1}
	if got, any := frame.CasingOf(index.Cut{Break: b, Start: in(40)}); !any || got.Left != in(40)-in(0.3125)-1 {
		t.Errorf("a casing of a nanometer: %+v, %v", got, any)
	}
}
