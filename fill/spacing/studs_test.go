package spacing_test

import (
	"testing"

	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestReceptaclesStandAgainstStuds: a nail-on box of 2-5/16 in stands beside a stud of 1-1/2, its
// middle 1-29/32 in off that of the stud, to the sixteenth of a tape that is next to it. A remedy
// takes such a place nearest to the middle of what it serves; where none serves, the bay, and
// only where that does not either, in the way of a stud. What is proposed for a room does so too.
func TestReceptaclesStandAgainstStuds(t *testing.T) {
	const off, tape = 1.90625, unit.Inch / 32
	for _, tt := range []struct {
		length, first float64
		remedy        float64 // where the remedy sets it
		low, high     float64 // between what the proposal does
	}{
		{100, 0, 48 + off, 28, 72}, {110, 0, 48 + off, 38, 72}, {120, 0, 64 - off, 48, 72}, {90, 0, 48 - off, 18, 72},
		{142, 8, 72 - off, 72 - off, 72 - off}, {140, 0, 70, 68, 72}, {144, 8, 72, 72, 72},
	} {
		r := filltest.OneWall(t, tt.length)
		r.Room.Sides[0].Studs = plan.Studs{Spacing: in(16), Depth: in(3.5), First: in(tt.first)}
		all := found(r, &spacing.WallReach, code.Latest())
		if len(all) != 1 || len(all[0].Remedies) != 1 {
			t.Errorf("%v in: %+v", tt.length, all)
			continue
		}
		exact := unit.Length(tt.remedy * float64(unit.Inch))
		if o := added(r, all[0].Remedies[0]); (o.At.Along - exact).Abs() > tape {
			t.Errorf("%v in: offered at %s, want %v", tt.length, o.At.Along.Inches(32), tt.remedy)
		}
		s, _ := serve(t, r.Plan(), r.Room.ID)
		if len(s.Added) != 1 {
			t.Errorf("%v in: %d are proposed", tt.length, len(s.Added))
			continue
		}
		at := s.Added[0].At.Along
		low, high := unit.Length(tt.low*float64(unit.Inch)), unit.Length(tt.high*float64(unit.Inch))
		if at < low-tape || at > high+tape {
			t.Errorf("%v in: proposed at %s, want %v to %v", tt.length, at.Inches(32), tt.low, tt.high)
		}
		past := (at - in(tt.first)) % in(16)
		beside := min((past - unit.Length(off*float64(unit.Inch))).Abs(), (in(16) - past - unit.Length(off*float64(unit.Inch))).Abs())
		if wantsBeside := tt.length < 140 || tt.length == 142; wantsBeside != (beside <= tape) {
			t.Errorf("%v in: proposed at %s, which is %v from beside a stud", tt.length, at.Inches(32), beside)
		}
	}
}
