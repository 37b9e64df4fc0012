package depth_test

import (
	"testing"

	"studbay/fill/depth"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestLimitsOfDepths(t *testing.T) {
	// A face with one layer so thick, over or less than told, and a box in it.
	layered := func(thick float64, sign unit.Length, code string, more ...func(*plan.Layer)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			l := layer(thick, more...)
			l.Thickness += sign * over
			duplex(faced(h, 3.5, l), "A", 20, coded(code))
		}
	}
	const practice, clamps = "common practice: two things cannot be in one place", "from memory: the clamps grip 1/4 to 1 in"
	ruletest.Edges(t, &depth.BoxDepth, []ruletest.Edge{
		ruletest.Limit("a box of 1-1/2 in with a ring", func(h *ruletest.House, over unit.Length) {
			r := faced(h, 1.5)
			r.Sides[0].Studs.Depth -= over
			duplex(r, "A", 20, coded("SQ1"))
		}, 0, 0, 1, practice),
		// 2-3/4 deep less 1/2 of finish.
		ruletest.Limit("a box of 2-3/4 in through 1/2 in of board", func(h *ruletest.House, over unit.Length) {
			r := faced(h, 2.25, layer(0.5))
			r.Sides[0].Studs.Depth -= over
			duplex(r, "A", 20, coded("PN1"))
		}, 0, 0, 1, practice),
	})
	ruletest.Edges(t, &depth.BackToBack, []ruletest.Edge{
		ruletest.Limit("two of 2-1/8 in", func(h *ruletest.House, over unit.Length) {
			r, next := h.Square(plan.UseLiving, 0, 0, 144, 120), h.Square(plan.UseBath, 0, -124.25, 144, 120)
			for _, s := range next.Sides {
				s.Start.Y += over
			}
			duplex(r, "A", 28, square("sq4-2.125", "ring4-1g-0.5"))
			next.Opening("duplex", next.On(2, 116), square("sq4-2.125", "ring4-1g-0.5"), ruletest.Tagged("B"))
		}, 0, 0, 1, practice+": 4-1/4 in"),
		// Each is 4 in wide: past one another they are in nobody's way.
		ruletest.Limit("side by side", func(h *ruletest.House, over unit.Length) {
			r, next := h.Square(plan.UseLiving, 0, 0, 144, 120), h.Square(plan.UseBath, 0, -123.5, 144, 120)
			duplex(r, "A", 24, square("sq4-2.125", "ring4-1g-0.5"))
			next.Opening("duplex", next.On(2, 116), square("sq4-2.125", "ring4-1g-0.5"), ruletest.Tagged("B")).At.Along += over
		}, 0, 0, 1, practice+": 24 and 28 in from the left"),
	})
	ruletest.Edges(t, &depth.OldWorkRange, []ruletest.Edge{
		ruletest.Limit("1 in of finish", layered(1, 1, "OW1"), 0, 0, 1, clamps),
		ruletest.Limit("1/4 in of finish", layered(0.25, -1, "OW1"), 0, 0, 1, clamps),
	})
	ruletest.Edges(t, &depth.RingSetBack, []ruletest.Edge{
		ruletest.Limit("a ring 1/4 in back", layered(0.75, 1, "SQ1"), 0, 0, 1, "314.20: not more than 1/4 in"),
		ruletest.Limit("a ring even with board", layered(0.5, -1, "SQ1"), 0, 0, 1, "common practice: a plate lies on the wall"),
		ruletest.Limit("a box 1 in out", layered(1, 1, "PN1"), 0, 0, 1, "its ears, from memory"),
	})
}
