package remodel_test

import (
	"testing"

	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Along a wall 76-1/2 − 30 in; round a corner 3 and 4 ft apart it is 5 straight.
func TestHowFarAnOpeningWasMoved(t *testing.T) {
	light := func(by unit.Length) { // in the ceiling, 3 and 4 ft away
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		old := r.Opening("ceiling-light", r.Ceiling(20, 20), func(o *plan.Opening) { o.Status = plan.StatusMoved })
		now := r.Opening("ceiling-light", r.Ceiling(56, 68), func(o *plan.Opening) { o.Was = old.ID })
		if _, got, ok := remodel.MovedFrom(index.New(h.Made()), now); !ok || got != by {
			t.Errorf("in the ceiling by %v, want %v", got, by)
		}
		now.Was = "ogone"
		if _, _, ok := remodel.MovedFrom(index.New(h.Made()), now); ok {
			t.Error("from one that is gone it was moved")
		}
	}
	light(5 * unit.Foot)
	for _, tt := range []struct {
		name   string
		status plan.Status
		side   int
		along  float64
		want   unit.Length // 0: it was not moved
	}{
		{"along its wall", plan.StatusMoved, 0, 76.5, ruletest.In(46.5)},
		{"round the corner", plan.StatusMoved, 1, 48, 5 * unit.Foot},
		{"replaced", plan.StatusReplaced, 0, 30, 0},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 66, 120)
		old := put(r, "A-old", "switch", 30, func(o *plan.Opening) { o.Status = tt.status })
		now := r.Opening("switch", r.On(tt.side, tt.along), func(o *plan.Opening) { o.Was = old.ID })
		was, by, ok := remodel.MovedFrom(index.New(h.Made()), now)
		if ok != (tt.want > 0) || by != tt.want || ok && was.ID != old.ID {
			t.Errorf("%s: %v by %v, want %v", tt.name, ok, by, tt.want)
		}
		if _, _, ok := remodel.MovedFrom(index.New(h.Made()), old); ok {
			t.Errorf("%s: the old place was moved", tt.name)
		}
	}
}
