package frame_test

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"testing"
)

// open makes the i-th side of a room one that rooms flow together at.
func openAt(i int) func([]*plan.Side) {
	return func(sides []*plan.Side) { sides[i].Kind = plan.SideOpen }
}

// Two rooms 120 in and 90 in wide flow together; their upper walls are one line, their
// lower ones are not. A tape along the line finds its corners only at its far ends.
func TestATapeFindsNoCornerWhereTheWallGoesOnInTheNextRoom(t *testing.T) {
	h := newHouse(t)
	living := h.room(0, 0, 120, 100, openAt(1))
	dining := h.room(120, 0, 210, 80, openAt(3))
	ix := index.New(h.p)
	for _, tt := range []struct {
		name        string
		side        plan.ID
		left, right float64 // of the wall, from the left end of the face
		past        plan.ID // the side with which it ends
	}{
		{"the upper wall, seen in the first room", living[0], 0, 210, dining[0]},
		{"the same, seen in the second", dining[0], -120, 90, living[0]},
		{"the lower wall of the first ends at the open side", living[2], 0, 120, ""},
		{"so does that of the second", dining[2], 0, 90, ""},
		{"a wall between two corners", living[3], 0, 100, ""},
	} {
		f, ok := frame.FaceOf(ix, tt.side)
		left, right := f.Ends()
		if !ok || left.At != in(tt.left) || right.At != in(tt.right) {
			t.Errorf("%s: from %s to %s, want %v to %v in", tt.name, left.At, right.At, tt.left, tt.right)
		}
		for _, m := range []frame.Mark{left, right} {
			if m.Past != nil && m.Past.Key() != tt.past || m.Past == nil && (m.At < 0 || m.At > f.Length) {
				t.Errorf("%s: past %+v", tt.name, m)
			}
		}
	}
	f, _ := frame.FaceOf(ix, living[0])
	if end, away := f.NearerEnd(in(115)); !end.IsRight || away != in(95) {
		t.Errorf("115 in along is %s from the end, right %v", away, end.IsRight)
	}
}

// A place past an end of a side is on the next of the same wall, and stays where no wall
// goes on: read off the same two rooms.
func TestAPlacePastAnEndIsOnTheNextSideOfTheWall(t *testing.T) {
	h := newHouse(t)
	living := h.room(0, 0, 120, 100, openAt(1))
	dining := h.room(120, 0, 210, 80, openAt(3))
	ix := index.New(h.p)
	for _, tt := range []struct {
		side plan.ID
		at   float64
		want plan.ID
		on   float64
	}{
		{living[0], 100, living[0], 100},
		{living[0], 120, living[0], 120},
		{living[0], 150, dining[0], 30},
		{dining[0], -20, living[0], 100},
		{living[0], -10, living[0], -10},
		{living[0], 215, dining[0], 95},
		{living[2], 130, living[2], 130},
	} {
		if got, on := frame.OnWall(ix, tt.side, in(tt.at)); got != tt.want || on != in(tt.on) {
			t.Errorf("%v in along %s is %s along %s, want %v along %s", tt.at, tt.side, on, got, tt.on, tt.want)
		}
	}
}

// A room whose upper wall is drawn as two sides in one line.
func TestATapeFindsNoCornerWithinAWall(t *testing.T) {
	h := newHouse(t)
	corners := geom.Polygon{{X: 0, Y: 0}, {X: in(50), Y: 0}, {X: in(120), Y: 0}, {X: in(120), Y: in(100)}, {X: 0, Y: in(100)}}
	r := plan.NewRoom(h.ids.New(plan.KindRoom), "Room", plan.UseBedroom, corners, h.ids.Row(plan.KindSide, 5))
	l := h.p.Levels[0]
	level := *l
	level.Rooms = l.Rooms.With(&r)
	ix := index.New(h.p.WithLevel(&level))
	f, _ := frame.FaceOf(ix, r.Sides[0].ID)
	if left, right := f.Ends(); left.At != 0 || right.At != in(120) || right.Past.Key() != r.Sides[1].ID {
		t.Errorf("from %s to %s", left.At, right.At)
	}
	if end, away := f.NearerEnd(in(48)); end.IsRight || away != in(48) {
		t.Errorf("48 in along is %s from an end", away)
	}
	f, _ = frame.FaceOf(ix, r.Sides[1].ID)
	if left, _ := f.Ends(); left.At != -in(50) {
		t.Errorf("the second begins at %s", left.At)
	}
}
