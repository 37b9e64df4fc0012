package depth_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

// The table of boxes facing each other in a wall with 1/2 in of board on both faces, faces
// flush. A 4 in square with its ring takes its full depth of the framing, a nail-on its
// depth less 1/2.
//
//	2×4: 3-1/2                          2×6: 5-1/2
//	1-1/2 + 1-1/2 = 3: 1/2 spare         3-1/2 − 1/2 twice = 6: 1/2 too deep
//	1-1/2 + 2-1/8 = 3-5/8: 1/8 too deep  2-1/8 twice = 4-1/4: fits
//	2-1/8 + 2-1/8 = 4-1/4: 3/4 too deep
//	nail-on 2-1/2: 2 + 2 = 4: 1/2 too deep
//	nail-on 2-7/8: 2-3/8 twice = 4-3/4: 1-1/4 too deep
//
// The catalogue has no nail-on box of 2-1/2 or 2-7/8: a steel device box of 2-1/2 without a
// ring stands for the first, one of 2-3/4 (2-1/4 each, 4-1/2: 1 too deep) beside it; both
// are reckoned below.
func TestBackToBack(t *testing.T) {
	square := func(box string) plan.Assembly {
		return plan.Assembly{Box: box, Parts: []plan.AssemblyPart{{Part: "ring4-1g-0.5"}}}
	}
	alone := func(box string) plan.Assembly { return plan.Assembly{Box: box} }
	shallow, deep := square("sq4-1.5"), square("sq4-2.125")
	for _, tt := range []struct {
		name    string
		framing float64
		a, b    plan.Assembly
		want    []string
	}{
		{"1-1/2 + 1-1/2", 3.5, shallow, shallow, nil},
		{"1-1/2 + 1-1/2, exactly", 3, shallow, shallow, nil},
		{"1-1/2 + 1-1/2, 1/16 over", 2.9375, shallow, shallow, []string{`stop: A1 and B1, back to back, are 1/16" too deep`}},
		{"1-1/2 + 2-1/8", 3.5, shallow, deep, []string{`stop: A1 and B1, back to back, are 1/8" too deep`}},
		{"2-1/8 + 2-1/8", 3.5, deep, deep, []string{`stop: A1 and B1, back to back, are 3/4" too deep`}},
		{"device 2-1/2 pair", 3.5, alone("dev3-2.5"), alone("dev3-2.5"), []string{`stop: A1 and B1, back to back, are 1/2" too deep`}},
		{"nail-on 2-3/4 pair", 3.5, alone("pn1-18"), alone("pn1-18"), []string{`stop: A1 and B1, back to back, are 1" too deep`}},
		{"2-1/8 pair in a 2×6", 5.5, deep, deep, nil},
		{"nail-on 3-1/2 pair in a 2×6", 5.5, alone("pn1-22.5"), alone("pn1-22.5"), []string{`stop: A1 and B1, back to back, are 1/2" too deep`}},
	} {
		h := walltest.New(t)
		face, back := h.Partition(tt.framing)
		h.Box(back, "duplex", "", 144-28, 16, func(o *plan.Opening) { o.Assembly = tt.a })
		h.Box(face, "duplex", "", 28, 16, func(o *plan.Opening) { o.Assembly = tt.b })
		if got := h.Said("back-to-back"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("back-to-back")
	}
}

// The rows of that table whose boxes the catalogue has not, by their depths alone.
func TestNailOnDepthsFacingEachOther(t *testing.T) {
	for _, tt := range []struct{ deep, spare float64 }{{2.5, -0.5}, {2.875, -1.25}} {
		deep := frame.Body{Depth: in(tt.deep)}.InFraming(in(0.5))
		if got := frame.Spare(in(3.5), deep, deep); got != in(tt.spare) {
			t.Errorf("%v deep: %s spare, want %v", tt.deep, got, tt.spare)
		}
	}
}

// Two boxes 4 in wide whose centres are 4 in apart stand beside each other; at 3-15/16 they
// overlap by 1/16. The same holds for heights. The other room's floor is told from the same
// subfloor: with 3/4 in of boards on it a height there is 3/4 more here.
func TestBackToBackOnlyWhereTheyFaceEachOther(t *testing.T) {
	for _, tt := range []struct {
		name   string
		along  float64 // of the second box from the left of the first face
		centre float64
		floor  float64 // of the second room
		want   int
	}{
		{"beside", 32, 16, 0, 0},
		{"1/16 over each other", 31.9375, 16, 0, 1},
		{"on the left", 24, 16, 0, 0},
		{"on the left, 1/16 over", 24.0625, 16, 0, 1},
		{"above", 28, 20, 0, 0},
		{"above, 1/16 over", 28, 19.9375, 0, 1},
		{"above by a thicker floor", 28, 19.25, 0.75, 0},
		{"1/16 less", 28, 19.1875, 0.75, 1},
	} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		if tt.floor > 0 {
			ref, _ := h.Plan.Side(back)
			room := *ref.Room
			room.Floor = walltest.Layers(tt.floor)
			h.Do(edit.ChangeRoom{Room: room})
		}
		h.Box(face, "duplex", "SQ3", 28, 16, nil)
		h.Box(back, "duplex", "SQ3", 144-tt.along, tt.centre, nil)
		if got := h.Found("back-to-back"); len(got) != tt.want {
			t.Errorf("%s: %d found, want %d", tt.name, len(got), tt.want)
		}
	}
}

// A clash with a box that is there already is told of the new one, whichever came first.
func TestBackToBackIsToldOfTheNewBox(t *testing.T) {
	for _, old := range []bool{false, true} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		status := func(is bool) func(*plan.Opening) {
			return func(o *plan.Opening) {
				if is {
					o.Status = plan.StatusExisting
				}
			}
		}
		a := h.Box(face, "duplex", "SQ3", 28, 16, status(old))
		b := h.Box(back, "duplex", "SQ3", 116, 16, status(!old))
		want := a.ID
		if old {
			want = b.ID
		}
		if found := h.Found("back-to-back"); len(found) != 1 || found[0].Opening != want {
			t.Errorf("old first %t: %+v", old, found)
		}
	}
}
