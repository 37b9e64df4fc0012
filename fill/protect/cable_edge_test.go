package protect_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

func cable(h *walltest.House, from, to *plan.Opening) {
	h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: from.ID, To: to.ID, Size: 12, Wires: 2, Ground: true}})
}

// A hole of 3/4 in the middle of a stud leaves (depth − 3/4) / 2 on either side: 1-3/8 in a
// 2×4 (3-1/2), 7/8 in a 2×3 (2-1/2), just 1-1/4 in 3-1/4. 300.4(A)(1) asks for 1-1/4.
// Between boxes at 40 and 72 stand the studs at 48 and 64.
func TestCableEdge(t *testing.T) {
	for _, tt := range []struct {
		depth float64
		to    float64
		steel bool
		want  []string
	}{
		{3.5, 72, false, nil},
		{3.25, 72, false, nil},
		{3.125, 72, false, []string{`stop: A1 to A2: holes for the cable lie 1-3/16" from the edges of the studs`}},
		{2.5, 72, false, []string{`stop: A1 to A2: holes for the cable lie 7/8" from the edges of the studs`}},
		{2.5, 44, false, nil}, // both in one bay
		{2.5, 72, true, nil},  // bushings are another matter
		{0, 72, false, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Depth, r.Sides[0].Studs.Steel = in(tt.depth), tt.steel })
		a := h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
		b := h.Box(room.Sides[0], "duplex", "PN1", tt.to, 16, nil)
		cable(h, a, b)
		if got := h.Said("cable-edge"); !slices.Equal(got, tt.want) {
			t.Errorf("%v to %v: %q, want %q", tt.depth, tt.to, got, tt.want)
		}
	}
}

// Between boxes of both faces it is told once, on the face that the cable begins in; to a box
// of another wall it is not told.
func TestCableEdgeAcrossAWall(t *testing.T) {
	h := walltest.New(t)
	face, back := h.Partition(2.5)
	a := h.Box(face, "duplex", "PN1", 40, 16, nil)
	b := h.Box(back, "duplex", "PN1", 144-72, 16, nil)
	ref, _ := h.Plan.Side(face)
	c := h.Box(ref.Room.Sides[1].ID, "duplex", "PN1", 40, 16, nil)
	cable(h, b, a)
	cable(h, a, c)
	found := h.Found("cable-edge")
	if len(found) != 1 || found[0].Opening != b.ID {
		t.Errorf("%+v", found)
	}
}

// Plates make it right (NEC 300.4(A)(1)): the remedy says that they are there, the finding goes
// and comes with nothing else, and a cable that is said to be plated is not told.
func TestPlatesAtTheHolesOfACable(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Depth = in(2.5) })
	a := h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
	b := h.Box(room.Sides[0], "duplex", "PN1", 72, 16, nil)
	cable(h, a, b)
	found := h.Found("cable-edge")
	if len(found) != 1 || len(found[0].Remedies) != 1 {
		t.Fatalf("%+v", found)
	}
	if label := h.Say(found[0].Remedies[0].Label); label != "Put steel plates on both edges of each stud that it bores" {
		t.Errorf("offered: %s", label)
	}
	h.Cures("cable-edge")
	h.Do(found[0].Remedies[0].Edit)
	if left := h.Found("cable-edge"); len(left) != 0 {
		t.Errorf("with plates: %+v", left)
	}
}
