package plan

import (
	"testing"

	"studbay/plan/unit"
)

// TestFixtureFaceTurnsBack walks along each face of a fixture: what is on it is behind it
// by nothing, and is found where it was put.
func TestFixtureFaceTurnsBack(t *testing.T) {
	f := &Fixture{Width: 60 * unit.Inch, Depth: 24 * unit.Inch, At: Anchor{Part: PartFloor}}
	for _, tc := range []struct {
		part       Part
		along, out unit.Length // 10 in from the left end as one stands before it
	}{
		{PartFront, 10 * unit.Inch, 24 * unit.Inch},
		{PartBack, 50 * unit.Inch, 0},
		{PartLeft, 0, 10 * unit.Inch},
		{PartRight, 60 * unit.Inch, 14 * unit.Inch},
	} {
		along, out := f.Within(Anchor{Part: tc.part, Along: 10 * unit.Inch})
		if along != tc.along || out != tc.out {
			t.Errorf("%s: within at %v, %v; want %v, %v", tc.part, along, out, tc.along, tc.out)
		}
		if at, behind := f.Facing(tc.part, along, out); at != 10*unit.Inch || behind != 0 {
			t.Errorf("%s: found again at %v, %v behind; want 10 in, 0", tc.part, at, behind)
		}
	}
	if !f.Holds(PartBack) {
		t.Error("an island has no back to set an opening into")
	}
	f.At.Part = PartFace
	if f.Holds(PartBack) {
		t.Error("a counter at a wall has a back to set an opening into")
	}
}
