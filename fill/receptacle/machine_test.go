package receptacle_test

import (
	"testing"

	"studbay/fill/receptacle"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// What is said to be for a machine is as one of its kind: a garage and a basement want one more
// (210.52(G): in addition to those for specific equipment), a washer one of its own within 6 ft
// (210.50(C)).
func TestMachinesThatAreSaid(t *testing.T) {
	in := func(use plan.Use, machine plan.Appliance, washer bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(use, 0, 0, 200, 60)
			h.Square(plan.UseBath, 204, 0, 60, 60)
			if washer {
				r.Fixture(plan.FixtureWasher, 0, 60, 27)
			}
			r.Opening("duplex", r.On(0, 40), func(o *plan.Opening) { o.For = machine })
		}
	}
	ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
		ruletest.Case("nobody says", in(plan.UseGarage, "", false), 0, "210.52(G)(1)"),
		ruletest.Case("a freezer", in(plan.UseGarage, plan.ApplianceFreezer, false), 1, "210.52(G): specific equipment"),
	})
	ruletest.Try(t, &receptacle.Basement, []ruletest.Trial{
		ruletest.Case("nobody says", in(plan.UseBasement, "", false), 0, "210.52(G)(3)"),
		ruletest.Case("a sump pump", in(plan.UseBasement, plan.ApplianceSumpPump, false), 1, "210.52(G): specific equipment"),
	})
	ruletest.Try(t, &receptacle.Laundry, []ruletest.Trial{
		ruletest.Case("nobody says", in(plan.UseMudroom, "", true), 0, "210.50(C)"),
		ruletest.Case("the washer", in(plan.UseMudroom, plan.ApplianceWasher, true), 0, "210.50(C)"),
		ruletest.Case("a freezer", in(plan.UseMudroom, plan.ApplianceFreezer, true), 1, "210.50(C): the freezer's is not the washer's"),
	})
}
