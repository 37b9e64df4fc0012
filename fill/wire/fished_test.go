package wire

import (
	"testing"

	"studbay/fill/fish"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// A cable that is fished goes in its bay to the attic or the cellar, over or under to the
// next bay, and in that to the other box; two ends take a foot each. The ceiling is 96 in up.
func TestFishedRunsByHand(t *testing.T) {
	for _, tt := range []struct {
		name   string
		to     float64 // along the wall, from 40
		way    plan.CableWay
		closed bool
		want   unit.Length // 0: none
		source string
	}{
		{"open, for comparison", 70, "", false, unit.FeetInches(6, 0, 0), "30 level, 8 up and 8 down, 24 = 70 in = 5.83 ft"},
		{"no way said", 70, "", true, 0, "nobody knows"},
		{"up", 70, plan.WayAttic, true, unit.FeetInches(18, 0, 0), "80 up, 30 level, 80 down, 24 = 214 in = 17.83 ft"},
		{"down", 70, plan.WayCellar, true, unit.FeetInches(7, 6, 0), "16 down, 30 level, 16 up, 24 = 86 in = 7.17 ft"},
		{"through the opened part", 70, plan.WayOpenParts, true, unit.FeetInches(6, 0, 0), "as through an open wall"},
		{"within the bay", 45, "", true, unit.FeetInches(2, 6, 0), "5 level, 24 = 29 in = 2.42 ft: studs at 32 and 48"},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Sides[0].Studs.Spacing = 16 * unit.Inch
		if tt.closed {
			r.Sides[0].Condition = plan.ConditionClosed
		}
		c := h.Cable(r.Opening("duplex", r.On(0, 40)).ID, r.Opening("duplex", r.On(0, tt.to)).ID, 14, 2, nil)
		c.Way = tt.way
		ix := index.New(h.Made())
		run, ok := RunOf(ix, c)
		if ok != (tt.want > 0) || run.Total != tt.want {
			t.Errorf("%s: %v %v, want %v (%s)", tt.name, run.Total, ok, tt.want, tt.source)
		}
		if f := fish.Of(ix, c); f.Is() != tt.closed || f.Wants() != (tt.want == 0) {
			t.Errorf("%s: %+v", tt.name, f)
		}
		now := *c
		if now.Existing = true; fish.Of(ix, &now).Is() {
			t.Errorf("%s: one that is there is fished", tt.name)
		}
	}
}
