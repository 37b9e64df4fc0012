package frame_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// A nail-on of 3-3/4 with its middle at 16 has its bottom at 14-1/8, a square of 4 in at 14;
// the finished floor is 3/4 over the subfloor, so that sticks on that are 14-7/8 and 14-3/4.
// The block of the square in the middle of its bay, 3-1/2 high, begins at 16 − 1-3/4 =
// 14-1/4. What is to be removed, and what is there already, wants no stick.
func TestSticks(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 144, 120, nil)[0]
	ref, _ := h.p.Side(side)
	room := *ref.Room
	room.Floor = []plan.Layer{{Name: "oak", Thickness: in(0.75)}}
	h.do(edit.ChangeRoom{Room: room})
	h.box(side, 32.75+1.15625, 16, "PN1", 1)
	h.box(side, 48.75+1.15625, 16, "PN1", 1)
	h.box(side, 72, 16, "SQ1", 1)
	h.box(side, 96.75+1.15625, 46, "PN1", 1)
	gone := h.box(side, 112.75+1.15625, 50, "PN1", 1)
	h.do(edit.SetStatus{ID: gone.ID, Status: plan.StatusRemove})
	var got []string
	for _, s := range frame.Sticks(index.New(h.p), h.p.Levels[0]) {
		line := fmt.Sprintf("%d at %s: %s, %s", len(s.Openings), s.Center.Inches(16), s.FromFinished().Inches(16), s.FromSubfloor().Inches(16))
		if s.HasBlock {
			line += fmt.Sprintf("; block %s, %s", s.Block.Inches(16), s.BlockFromSubfloor().Inches(16))
		}
		got = append(got, line)
	}
	want := []string{
		`1 at 16": 14", 14-3/4"; block 14-1/4", 15"`,
		`2 at 16": 14-1/8", 14-7/8"`,
		`1 at 46": 44-1/8", 44-7/8"`,
	}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
