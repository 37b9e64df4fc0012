package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// aPanel stands at 42 in, 4 in deep and 30 in high.
func aPanel(r *ruletest.Room, at, width float64) *plan.Fixture {
	return r.Fixture(plan.FixturePanel, 0, at, width, func(f *plan.Fixture) {
		f.Depth, f.Bottom, f.Height = ruletest.In(4), ruletest.In(42), ruletest.In(30)
	})
}

// by moves what a fixture begins at.
func by(over unit.Length) func(*plan.Fixture) { return func(f *plan.Fixture) { f.At.Along += over } }

func TestWhatIsToldOfAPanel(t *testing.T) {
	ruletest.Tells(t, &protect.PanelPlace, []ruletest.Telling{
		ruletest.Told("a washer at either hand, 29 in between", func(h *ruletest.House) {
			r := h.Square(plan.UseUtility, 0, 0, 120, 120)
			r.Fixture(plan.FixtureWasher, 0, 1, 30)
			aPanel(r, 40, 15)
			r.Fixture(plan.FixtureWasher, 0, 60, 30)
		}, `
			stop, NEC 2023 110.26(A)(2): panel in utility; 29" of 30"
			The panel in utility has 2' 5" of clear width before it
			To work at it 2' 6" is kept clear before it, 3 ft deep.
			on utility/0 face from 40" to 55"`, "110.26(A)(2), from memory: 60 - 31"),
		ruletest.Told("a panel of 34 in, the width that is asked", func(h *ruletest.House) {
			r := h.Square(plan.UseUtility, 0, 0, 120, 120)
			r.Fixture(plan.FixtureWasher, 0, 11, 30)
			aPanel(r, 40, 34)
		}, `
			stop, NEC 2023 110.26(A)(2): panel in utility; 0" of 34"
			The panel in utility has 0" of clear width before it
			To work at it 2' 10" is kept clear before it, 3 ft deep.
			on utility/0 face from 40" to 74"`, "110.26(A)(2), from memory: as wide as the panel; the washer stands before an inch of it"),
		ruletest.Told("a bath", func(h *ruletest.House) { aPanel(h.Square(plan.UseBath, 0, 0, 120, 120), 40, 15) }, `
			stop, NEC 2023 240.24: panel in bath
			A panel is in bath
			None is in a bathroom or a clothes closet.
			on bath/0 face from 40" to 55"`, "240.24(E), from memory"),
	})
}

func TestLimitsOfAPanelsSpace(t *testing.T) {
	utility := func(h *ruletest.House) *ruletest.Room { return h.Square(plan.UseUtility, 0, 0, 120, 120) }
	ruletest.Edges(t, &protect.PanelPlace, []ruletest.Edge{
		ruletest.Limit("30 in between two washers", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			r.Fixture(plan.FixtureWasher, 0, 1, 30)
			aPanel(r, 40, 15)
			r.Fixture(plan.FixtureWasher, 0, 61, 30, by(-over))
		}, rule.Grain, 0, 1, "110.26(A)(2), from memory"),
		ruletest.Limit("a panel of 36 in between", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			r.Fixture(plan.FixtureWasher, 0, 1, 30)
			aPanel(r, 31, 36)
			r.Fixture(plan.FixtureWasher, 0, 67, 30, by(-over))
		}, 0, 0, 1, "110.26(A)(2), from memory: as wide as the panel; nothing stands before it"),
		ruletest.Limit("what hangs at 6-1/2 ft", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			aPanel(r, 40, 15)
			r.Fixture(plan.FixtureUpper, 0, 56, 30, func(f *plan.Fixture) { f.Bottom = ruletest.In(78) - over })
			r.Fixture(plan.FixtureUpper, 0, 9, 30, func(f *plan.Fixture) { f.Bottom = ruletest.In(78) - over })
		}, 0, 0, 1, "110.26(A)(3), from memory: 6-1/2 ft; 17 in are left below it"),
		ruletest.Limit("a shelf no deeper than the panel", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			aPanel(r, 40, 15)
			r.Fixture(plan.FixtureWasher, 0, 57, 30)
			r.Fixture(plan.FixtureWasher, 0, 9, 30, func(f *plan.Fixture) { f.Depth = ruletest.In(4) + over })
		}, rule.Grain, 0, 1, "110.26(A)(1), from memory: the space begins at the panel's front"),
		ruletest.Limit("an island 3 ft before the panel", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			aPanel(r, 40, 15)
			r.Stand(plan.FixtureIsland, plan.OnFloor(r.Room.ID, geom.Point{X: ruletest.In(47), Y: ruletest.In(40+12) - over}), 30, 24)
		}, rule.Grain, 0, 1, "110.26(A)(1), from memory: 3 ft deep"),
		// A wall that runs aslant from (100, 10) to (60, 50) comes to 70 in at the end of the
		// space, 40 in out; left of there are the panel's 30.
		ruletest.Limit("a wall that runs aslant to it", func(h *ruletest.House, over unit.Length) {
			r := h.Room(plan.UseUtility, 0, 0, 100, 0, 100, 10, 60, 50, 60, 120, 0, 120)
			aPanel(r, 40, 30).At.Along += over
		}, 0, 0, 1, "110.26(A), from memory"),
		// One that runs aslant from (60, 0) to (100, 40) is at 64 in where the space begins, 4
		// in out.
		ruletest.Limit("a wall that runs aslant from it", func(h *ruletest.House, over unit.Length) {
			r := h.Room(plan.UseUtility, 0, 0, 60, 0, 100, 40, 100, 120, 0, 120)
			aPanel(r, 34, 26).Width += ruletest.In(4) + over
		}, 0, 0, 1, "110.26(A), from memory"),
		ruletest.Limit("a deep counter at one hand", func(h *ruletest.House, over unit.Length) {
			r := utility(h)
			aPanel(r, 60, 15)
			r.Fixture(plan.FixtureCounter, 0, 20, 40, func(f *plan.Fixture) { f.Depth = ruletest.In(96) }, by(over))
		}, 0, 0, 1, "110.26(A), from memory: it stands before the panel"),
	})
	ruletest.Try(t, &protect.PanelPlace, []ruletest.Trial{
		ruletest.Case("past an open side", func(h *ruletest.House) {
			r := h.Square(plan.UseUtility, 0, 0, 120, 30)
			r.Sides[2].Kind = plan.SideOpen
			aPanel(r, 40, 15)
		}, 0, "110.26(A), from memory: nothing stands there"),
		ruletest.Case("no panel", func(h *ruletest.House) { utility(h).Fixture(plan.FixtureWasher, 0, 0, 30) }, 0, "110.26(A)"),
		ruletest.Case("a bath, and crowded", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 25, 120)
			aPanel(r, 5, 15)
		}, 2, "240.24(E) and 110.26(A)(2), from memory"),
	})
}
