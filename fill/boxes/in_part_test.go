package boxes_test

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill/part"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// "Two cables, size and ground not seen" is at least four conductors of 14 AWG, 8.00 in³
// (Table 314.16(B)), and the receptacle on them 4.00: a box of 12.0 in³ may yet fit, one of
// 11.9 is over full whatever is found. A box that comes with clamps holds 2.00 more.
func TestWhatWasSeenInPartIsALowerBound(t *testing.T) {
	for _, tt := range []struct {
		marked string
		items  []plan.Item
		want   []string
	}{
		{"12.0", []plan.Item{{What: plan.ItemCable, Times: 2}}, []string{"note: A1: what is in the box is not known"}},
		{"11.9", []plan.Item{{What: plan.ItemCable, Times: 2}}, []string{"stop: A1: what was seen in the box needs at least 12 in³; it has 11.9 in³"}},
		{"14.0", []plan.Item{{What: plan.ItemCable, Times: 3}}, []string{"stop: A1: what was seen in the box needs at least 16 in³; it has 14 in³"}},
		{"14.0", []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}}, []string{"stop: A1: what was seen in the box needs at least 15.75 in³; it has 14 in³"}}, // 4 × 2.25, yoke 4.50, one ground 2.25
		{"5.0", nil, []string{"note: A1: what is in the box is not known"}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "duplex", "PN1", 40, 16, func(o *plan.Opening) {
			o.Status = plan.StatusExisting
			v, err := unit.ParseVolume(tt.marked)
			if err != nil {
				t.Fatal(err)
			}
			o.Assembly = part.TakenApart(o.Assembly)
			o.Assembly.Marked = &v
			o.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: tt.items}
		})
		if got := h.Said("box-fill"); !slices.Equal(got, tt.want) {
			t.Errorf("%v in %s: %q, want %q", tt.items, tt.marked, got, tt.want)
		}
	}
}

// A cable that is drawn as an existing one is among those that were found in the box: it
// does not count once more. One that is new does: 2 × 2.00 and one ground of 2.00.
func TestExistingCablesAreAmongWhatWasFound(t *testing.T) {
	for existing, want := range map[bool]string{true: "12 in³", false: "18 in³"} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		old := h.Box(room.Sides[0], "duplex", "", 40, 16, func(o *plan.Opening) {
			o.Status, o.Assembly = plan.StatusExisting, plan.Assembly{}
			o.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: []plan.Item{{What: plan.ItemCable, Times: 2}}}
		})
		other := h.Box(room.Sides[0], "duplex", "PN1", 80, 16, nil)
		h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: old.ID, To: other.ID, Size: 14, Wires: 2, Ground: !existing, Existing: existing}})
		found := h.Found("box-fill")
		if len(found) != 1 || !strings.Contains(h.Say(found[0].Why), "at least "+want+";") {
			t.Errorf("existing %t: %v", existing, found)
		}
	}
}
