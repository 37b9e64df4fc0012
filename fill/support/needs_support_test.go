package support_test

import (
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
)

// A wall of 12 ft with studs at 16 in: the bay between 32-3/4 and 47-1/4 is 14-1/2 clear. A
// box in its middle, 40, touches neither stud. Set back: a 4 in square with its ring its
// depth, a nail-on its depth less 1/2 of board. A flat block takes 1-1/2 more.
//
//	1-1/2 + 1-1/2 = 3 of 3-1/2: fits      2-1/8 + 1-1/2 = 3-5/8 of 3-1/2: does not
//	2-1/4 + 1-1/2 = 3-3/4 of 3-1/2: no    3 + 1-1/2 = 4-1/2 of 5-1/2: fits
func TestNeedsSupport(t *testing.T) {
	for _, tt := range []struct {
		code    string
		framing float64
		along   float64
		want    []string
	}{
		{"SQ1", 3.5, 40, []string{`note: A1 touches no stud: it wants a block of 14-1/2", set back 1-1/2"`}},
		{"SQ1", 3, 40, []string{`note: A1 touches no stud: it wants a block of 14-1/2", set back 1-1/2"`}},
		{"SQ1", 2.9375, 40, []string{"note: A1 touches no stud, and no block fits behind it"}},
		{"SQ3", 3.5, 40, []string{"note: A1 touches no stud, and no block fits behind it"}},
		{"PN1", 3.5, 40, []string{"note: A1 touches no stud, and no block fits behind it"}},
		{"PN3", 5.5, 40, []string{`note: A1 touches no stud: it wants a block of 14-1/2", set back 3"`}},
		{"PN1", 3.5, 46.09375, nil}, // 46-3/32 + 1-5/32 = 47-1/4: nailed to the stud at its right
		{"PN1", 3.5, 46.0625, nil},  // 1/32 off it
		{"PN1", 3.5, 46.03125, []string{"note: A1 touches no stud, and no block fits behind it"}}, // 1/16 off it
		{"OW1", 3.5, 40, nil}, // it grips the board
		{"PN1", 3.5, 48, nil}, // in the stud: told for that
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Depth = in(tt.framing) })
		h.Box(room.Sides[0], "duplex", tt.code, tt.along, 16, nil)
		if got := h.Said("needs-support"); !slices.Equal(got, tt.want) {
			t.Errorf("%s at %v in %v: %q, want %q", tt.code, tt.along, tt.framing, got, tt.want)
		}
		h.Cures("needs-support")
	}
}

// The box stands before the block with its middle in the block's, 3-1/2 in high: at 16 from
// 14-1/4 to 17-3/4. The figures of one that does not fit are what it needs and what there is.
func TestNeedsSupportTellsTheBlock(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	fits := h.Box(room.Sides[0], "duplex", "SQ1", 40, 16, nil)
	h.Box(room.Sides[0], "duplex", "SQ3", 72, 16, nil)
	for _, f := range h.Found("needs-support") {
		why, measured, limit := h.Say(f.Why), f.Measured, f.Limit
		if f.Opening == fits.ID {
			if want := `A 2×4 laid flat between the studs, from 14-1/4" to 17-3/4" above the finished floor.`; why != want || measured != (rule.Quantity{}) {
				t.Errorf("%q of %v, want %q", why, measured, want)
			}
			continue
		}
		want := `Set back 2-1/8", a flat block of 1-1/2" would need 3-5/8"; the framing is 3-1/2" deep. An upright piece at a stud would hold the box, or a place at one.`
		if why != want || measured != rule.LengthOf(in(3.625)) || limit != rule.LengthOf(in(3.5)) {
			t.Errorf("%q, %v of %v", why, measured, limit)
		}
	}
}

// Three gangs are 5-15/16 wide. Against the stud at 32-3/4 they leave 14-1/2 − 5-15/16 =
// 8-9/16 of the bay for a block at the far side; two gangs want none.
func TestFarSideOfAWideBox(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	gangs := func(n int) func(*plan.Opening) { return func(o *plan.Opening) { o.Gangs = n } }
	h.Box(room.Sides[0], "switch-3", "PN6", 32.75+2.96875, 46, gangs(3))
	h.Box(room.Sides[0], "switch-2", "PN4", 64.75+2.0625, 46, gangs(2))
	if got, want := h.Said("needs-support"), []string{`note: A1: its far side wants a block of 8-9/16"`}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
