package edit_test

import (
	"math/rand/v2"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// TestTheSameLengthInEitherUnit: a length that is typed in feet and inches, in inches or in
// millimetres, in a plan of either system, makes the same plan. A sixty-fourth of an inch is
// 0.396875 mm exactly (an inch is 25.4 mm by definition: NIST SP 811, app. B.8).
func TestTheSameLengthInEitherUnit(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	for range 400 {
		l := unit.Length(64*12+r.IntN(64*40)) * unit.Inch / 64
		var first plan.Plan
		for i, text := range []string{l.FeetInches(64), l.Inches(64), l.Exact() + " mm"} {
			for _, system := range []unit.System{unit.Imperial, unit.Metric} {
				typed, err := system.Parse(text)
				if err != nil {
					t.Fatalf("%q: %v", text, err)
				}
				now := after(t, shed(t), edit.MoveOpening{ID: n1, To: plan.OnFace(north, typed)})
				if i == 0 && system == unit.Imperial {
					first = now
				}
				if typed != l || !plan.Equal(now, first) {
					t.Errorf("%q in a plan in %v: %s, want %s", text, system, typed, l)
				}
			}
		}
	}
}
