package takeoff_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
)

// TestMovingLaterByHand: a plastic box is cut out and bought again at .60 (PN1) with a patch at
// 3.50 and 10 ft of 12/2 at 180.00 for 250 ft, 7.20; a steel one is used again. Patch 30 min and
// box 120 min either way; what is there already is not moved by this.
func TestMovingLaterByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 300, 120)
	for i, code := range []string{"PN1", "SQ3"} {
		r.Opening("duplex", r.On(0, 40+float64(i)*60), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} })
	}
	r.Opening("duplex", r.On(2, 40), func(o *plan.Opening) { o.Status, o.Assembly = plan.StatusExisting, plan.Assembly{Code: "PN1"} })
	p := h.Made()
	whole := taker(t, p).Whole(p)
	cost, minutes, boxes := whole.Moving()
	if want := int64(60+350+720) + 350 + 720; cost.Cents != want || minutes != 300 || boxes != 2 {
		t.Errorf("%d cents, %d minutes for %d boxes; want %d, 300, 2", cost.Cents, minutes, boxes, want)
	}
}
