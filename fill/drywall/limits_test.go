package drywall

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestLimitsOfSheets: a row that would be no higher than the base covers, 1-1/2 in, is left
// out; a wall as long as a sheet is not begun with a half; a joint goes back to a stud past
// the one before, never to that again.
func TestLimitsOfSheets(t *testing.T) {
	for _, tt := range []struct {
		name          string
		length, high  float64
		way           Way
		pieces        int
		joints        float64
		height, wides []float64 // of the pieces, by their letters
	}{
		{"two rows of 4 ft", 96, 96, Way{Long8, false}, 2, 96, []float64{48, 48}, []float64{96, 96}},
		{"1-1/2 in more", 96, 97.5, Way{Long8, false}, 2, 96, []float64{48, 48}, []float64{96, 96}},
		{"a sixteenth more than that", 96, 97.5625, Way{Long8, false}, 3, 192, []float64{1.5625, 48, 48}, []float64{96, 96, 96}},
		{"a sixteenth longer", 96.0625, 96, Way{Long8, false}, 4, 96.0625 + 2*48, []float64{48, 48, 48, 48}, []float64{96, 0.0625, 48, 48.0625}},
		{"upright, 1-1/2 in more", 96, 97.5, Way{Long8, true}, 2, 97.5 - 1.5, []float64{96, 96}, []float64{48, 48}},
		{"upright, a sixteenth more than that", 96, 97.5625, Way{Long8, true}, 4, 97.5625 + 96, []float64{1.5625, 1.5625, 96, 96}, []float64{48, 48, 48, 48}},
		{"upright, as wide as a sheet", 48, 96, Way{Long8, true}, 1, 0, []float64{96}, []float64{48}},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, tt.length, 90)
		r.Room.Ceiling = ruletest.In(tt.high)
		r.Opening("duplex", r.On(0, 10))
		v := view(t, h, r.Room.ID)
		l := lay(wallOf(&v), tt.way)
		var height, wides []float64
		for _, p := range l.Pieces {
			height, wides = append(height, float64(p.Top-p.Bottom)/float64(unit.Inch)), append(wides, float64(p.Right-p.Left)/float64(unit.Inch))
		}
		if len(l.Pieces) != tt.pieces || l.Joints != ruletest.In(tt.joints) || !slices.Equal(height, tt.height) || !slices.Equal(wides, tt.wides) {
			t.Errorf("%s: %v high, %v wide, %v of joints; want %v, %v, %v", tt.name, height, wides, l.Joints.Inches(16), tt.height, tt.wides, tt.joints)
		}
	}
	at := func(inches ...float64) (all []frame.Stud) {
		for _, i := range inches {
			all = append(all, frame.Stud{At: ruletest.In(i)})
		}
		return all
	}
	for _, tt := range []struct {
		name  string
		studs []frame.Stud
		want  string
	}{
		{"no stud", nil, "[96 192 200]"}, {"one stud, passed once", at(48), "[48 144 200]"}, {"at a sheet's end", at(96, 192), "[96 192 200]"},
		{"just past it", at(95, 96.0625), "[95 96.0625 192.0625 200]"}, {"at both", at(90, 96, 180), "[96 180 200]"},
	} {
		var got []float64
		for _, end := range joints(tt.studs, ruletest.In(200), Long8, Long8) {
			got = append(got, float64(end)/float64(unit.Inch))
		}
		if fmt.Sprint(got) != tt.want {
			t.Errorf("%s: joints at %v, want %s", tt.name, got, tt.want)
		}
	}
}
