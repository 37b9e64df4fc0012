package clash_test

import (
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

var in = walltest.In

// A door slab from 40 to 72: rough opening to 73 (1 in more), the king's far flank at 76 (3
// in of jack and king). The casing's outer edge is 72 + 5/16 + W. A box against the king:
//
//	nail-on 2-5/16 wide: middle 77-5/32, plate of 2-3/4 from 75-25/32
//	  W 2-1/4: 75-25/32 − 74-9/16 = 1-7/32        3-1/2: 75-13/16: −1/32
//	  4-1/2: 76-13/16: −1-1/32                    5-1/2: 77-13/16: −2-1/32
//	4 in square, one-gang ring: middle 78, plate from 76-5/8
//	  2-1/16; 13/16; −3/16; −1-3/16
//	nail-on on one pad of 1-1/2: plate from 77-9/32
//	  2-23/32; 1-15/32; 15/32; −17/32; on two pads 31/32
//	two gangs in a box of 4 in: middle 78, plate of 4-1/2 from 75-3/4
//	  1-3/16; −1/16; −1-1/16; −2-1/16
//
// What is below zero is told. (The nail-on box of two gangs in the catalogue is 4-1/8 wide,
// so that it stands 1/16 farther off than in the table; the square of two gangs is 4.)
func TestCasingAndPlates(t *testing.T) {
	const one, square, pad, pads, two = 77.15625, 78, 78.65625, 80.15625, 78.0
	for _, tt := range []struct {
		code   string
		gangs  int
		along  float64
		casing float64
		over   float64 // 0: clear
	}{
		{"PN1", 1, one, 2.25, 0}, {"PN1", 1, one, 3.5, 0.03125}, {"PN1", 1, one, 4.5, 1.03125}, {"PN1", 1, one, 5.5, 2.03125},
		{"SQ1", 1, square, 2.25, 0}, {"SQ1", 1, square, 3.5, 0}, {"SQ1", 1, square, 4.5, 0.1875}, {"SQ1", 1, square, 5.5, 1.1875},
		{"PN1", 1, pad, 2.25, 0}, {"PN1", 1, pad, 3.5, 0}, {"PN1", 1, pad, 4.5, 0}, {"PN1", 1, pad, 5.5, 0.53125}, {"PN1", 1, pads, 5.5, 0},
		{"SQ5", 2, two, 2.25, 0}, {"SQ5", 2, two, 3.5, 0.0625}, {"SQ5", 2, two, 4.5, 1.0625}, {"SQ5", 2, two, 5.5, 2.0625},
		{"SQ1", 1, square, 4.3125, 0},     // 72 + 5/16 + 4-5/16 = 76-5/8: it touches
		{"SQ1", 1, square, 4.375, 0.0625}, // a 16th over
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		h.Door(room.Sides[0], 40, 32, tt.casing)
		h.Box(room.Sides[0], "switch", tt.code, tt.along, 46, func(o *plan.Opening) { o.Gangs = tt.gangs })
		found := h.Found("casing")
		switch {
		case tt.over == 0 && len(found) == 0:
		case len(found) != 1 || found[0].Severity != rule.Stop || found[0].Measured != rule.LengthOf(in(tt.over)):
			t.Errorf("%s at %v beside %v: %v, want %v", tt.code, tt.along, tt.casing, found, tt.over)
		}
	}
}

// The trim is on both faces: seen from behind, the door from 40 to 72 of a wall of 144 is
// from 72 to 104, its casing of 3-1/2 ends at 72 − 3-13/16 = 68-3/16. Above, it ends at 80 +
// 3-13/16 = 83-13/16: a plate 4.49 high, its middle at 86-1/16, begins at 83.8175.
func TestCasingOnBothFacesAndAbove(t *testing.T) {
	for _, tt := range []struct {
		along, centre float64
		want          int
	}{{66.8125, 46, 0}, {66.875, 46, 1}, {88, 86.0625, 0}, {88, 86, 1}} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		for _, side := range []plan.ID{face, back} {
			ref, _ := h.Plan.Side(side)
			s := *ref.Side()
			s.Studs.Spacing = 0
			h.Do(edit.ChangeSide{Side: s})
		}
		h.Door(face, 40, 32, 3.5)
		h.Box(back, "switch", "PN1", tt.along, tt.centre, nil)
		if got := h.Found("casing"); len(got) != tt.want {
			t.Errorf("%v, %v up: %v", tt.along, tt.centre, got)
		}
	}
}

// Its remedy stands clear of trim, studs and all else.
func TestCasingRemedies(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	h.Door(room.Sides[0], 40, 32, 5.5)
	h.Box(room.Sides[0], "switch", "PN1", 77.15625, 46, nil)
	if found := h.Found("casing"); len(found) != 1 || len(found[0].Remedies) == 0 {
		t.Errorf("%v", found)
	}
	h.Cures("casing")
}

// Plates of one gang are 2-3/4 wide: boxes 2-3/4 apart touch plates, a 16th less overlaps by
// that. A plate of one gang and one of two: 1-3/8 + 2-1/4 = 3-5/8. Canopies are 5. Heights
// count too: 4.49.
func TestPlateClash(t *testing.T) {
	for _, tt := range []struct {
		name      string
		a, b      string
		gangs     int
		apart, up float64
		want      []string
	}{
		{"touching", "PN1", "PN1", 1, 2.75, 0, nil},
		{"1/16 over", "PN1", "PN1", 1, 2.6875, 0, []string{`stop: The plates of A1 and A2 overlap by 1/16"`}},
		{"two gangs, touching", "PN1", "SQ5", 2, 3.625, 0, nil},
		{"two gangs, 1/16 over", "PN1", "SQ5", 2, 3.5625, 0, []string{`stop: The plates of A1 and A2 overlap by 1/16"`}},
		{"one above the other", "PN1", "PN1", 1, 0, 4.5, nil},
		{"boxes over each other are another rule's", "PN1", "PN1", 1, 2, 0, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		h.Box(room.Sides[0], "duplex", tt.a, 40, 16, nil)
		h.Box(room.Sides[0], "duplex", tt.b, 40+tt.apart, 16+tt.up, func(o *plan.Opening) { o.Gangs = tt.gangs })
		if got := h.Said("plate-clash"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// In a corner the plate wants 1-3/8 from the middle of its box.
func TestPlatesInCorners(t *testing.T) {
	for along, want := range map[float64]int{1.375: 0, 1.3125: 1, 142.625: 0, 142.6875: 1} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		h.Box(room.Sides[0], "duplex", "PN1", along, 16, nil)
		if got := h.Found("plate-clash"); len(got) != want {
			t.Errorf("at %v: %v", along, got)
		}
	}
}
