package frame_test

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"testing"
)

// A face 120 in long: a receptacle at 16, a door from 40 to 70 with casing of 3 in, a
// receptacle at 90 and one at 100.
func measured(t *testing.T) (h *house, side plan.ID, door plan.ID, boxes [3]plan.ID) {
	h = newHouse(t)
	side = h.room(0, 0, 120, 100, nil)[0]
	door = h.door(side, 40, 30, 3)
	for i, along := range []float64{16, 90, 100} {
		boxes[i] = h.opening(side, along)
	}
	return h, side, door, boxes
}

func TestNeighbours(t *testing.T) {
	h, side, door, boxes := measured(t)
	f, _ := frame.FaceOf(index.New(h.p), side)
	for _, tt := range []struct {
		name        string
		at          float64
		but         plan.ID
		left, right float64
		leftOf      plan.ID
		rightOf     plan.ID
	}{
		{"the first box", 16, boxes[0], 0, 40, side, door},
		{"a free place between a box and a door", 30, "", 16, 40, boxes[0], door},
		{"after the door", 80, "", 70, 90, door, boxes[1]},
		{"between boxes", 95, "", 90, 100, boxes[1], boxes[2]},
		{"the last box", 100, boxes[2], 90, 120, boxes[1], side},
		{"the door in hand is none", 50, door, 16, 90, boxes[0], boxes[1]},
		{"over another box", 90, "", 70, 100, door, boxes[2]},
	} {
		left, right := f.Neighbours(in(tt.at), tt.but)
		if left.At != in(tt.left) || right.At != in(tt.right) || left.Of != tt.leftOf || right.Of != tt.rightOf {
			t.Errorf("%s: %s of %s and %s of %s, want %v of %s and %v of %s", tt.name, left.At, left.Of, right.At, right.Of, tt.left, tt.leftOf, tt.right, tt.rightOf)
		}
		if f.IsEnd(left) != (tt.leftOf == side) || f.IsEnd(right) != (tt.rightOf == side) {
			t.Errorf("%s: an end is told wrongly", tt.name)
		}
	}
}

func TestNearest(t *testing.T) {
	h, side, door, _ := measured(t)
	f, _ := frame.FaceOf(index.New(h.p), side)
	for _, tt := range []struct {
		at, from, away float64
		of             plan.ID
		isRight        bool
		source         string
	}{
		{16, 0, 16, side, false, "the left corner"},
		{30, 36.6875, 6.6875, door, false, "casing: 40 - 5/16 - 3"},
		{18.3125, 0, 18.3125, side, false, "nearer to the corner: 18-3/8 to the casing"},
		{80, 73.3125, 6.6875, door, true, "casing: 70 + 5/16 + 3"},
		{100, 120, 20, side, true, "the right corner"},
	} {
		m, away := frame.Nearest(f.Tapes(), in(tt.at))
		if m.At != in(tt.from) || away != in(tt.away) || m.Of != tt.of || m.IsRight != tt.isRight {
			t.Errorf("at %v: %s from %+v, want %v from %v (%s)", tt.at, away, m, tt.away, tt.from, tt.source)
		}
	}
	if m, away := f.NearerEnd(in(60)); m.IsRight || away != in(60) {
		t.Errorf("halfway: %s from %+v, want the left end", away, m)
	}
	if m, away := f.NearerEnd(in(60.0625)); !m.IsRight || away != in(59.9375) {
		t.Errorf("past halfway: %s from %+v, want the right end", away, m)
	}
}
