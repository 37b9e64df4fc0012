package spacing_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
)

// A receptacle that is said to be for a machine is taken by it: it serves no wall and no counter
// (210.52: the required outlets are in addition to those of appliances; 210.52(C)(3): none that
// an appliance in dedicated space takes).
func TestAReceptacleForAMachineServesNothingElse(t *testing.T) {
	wall := func(machine plan.Appliance) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 30, 30)
			r.Opening("duplex", r.On(0, 15), func(o *plan.Opening) { o.For = machine })
		}
	}
	counter := func(machine plan.Appliance) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 200, 200)
			r.Fixture(plan.FixtureCounter, 0, 20, 40)
			r.Opening("counter", r.On(0, 40), func(o *plan.Opening) { o.For = machine })
		}
	}
	ruletest.Try(t, &spacing.WallReach, []ruletest.Trial{
		ruletest.Case("nobody says", wall(""), 0, "210.52(A)(1)"),
		ruletest.Case("a freezer", wall(plan.ApplianceFreezer), 1, "210.52"),
	})
	ruletest.Try(t, &spacing.CounterReach, []ruletest.Trial{
		ruletest.Case("nobody says", counter(""), 0, "210.52(C)(1)"),
		ruletest.Case("a microwave oven", counter(plan.ApplianceMicrowave), 1, "210.52(C)(3)"),
	})
}
