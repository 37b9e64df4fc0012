package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// TestCircuitRole: a circuit for one machine is an individual branch circuit, Article 100 of the
// NEC: it supplies one utilization equipment. Those of 210.11(C) have 20 A and serve receptacles
// of their rooms.
func TestCircuitRole(t *testing.T) {
	with := func(role plan.CircuitRole, amps int, use plan.Use, kinds ...string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			c := h.Circuit(amps, func(c *plan.Circuit) { c.Role = role })
			r := h.Square(use, 0, 0, 240, 120)
			for i, kind := range kinds {
				at := r.On(0, 20+20*float64(i))
				if kind == "ceiling-light" {
					at = r.Ceiling(60, 60)
				}
				r.Opening(kind, at, ruletest.On(c))
			}
		}
	}
	in := func(edition string, make func(*ruletest.House)) func(*ruletest.House) {
		return func(h *ruletest.House) { h.Edition = edition; make(h) }
	}
	const individual = "Article 100, branch circuit, individual"
	ruletest.Try(t, &protect.CircuitRole, []ruletest.Trial{
		ruletest.Case("a machine by itself", with(plan.RoleMachine, 20, plan.UseKitchen, "microwave"), 0, individual),
		ruletest.Case("two machines", with(plan.RoleMachine, 20, plan.UseKitchen, "microwave", "refrigerator"), 1, individual),
		ruletest.Case("a machine and a light", with(plan.RoleMachine, 20, plan.UseKitchen, "microwave", "ceiling-light"), 1, individual),
		ruletest.Case("a machine and its switch", with(plan.RoleMachine, 20, plan.UseKitchen, "microwave", "switch"), 0, individual+": a switch takes no current"),
		ruletest.Case("a feed and a receptacle", with(plan.RoleMachine, 20, plan.UseKitchen, "equipment", "duplex"), 1, individual),
		ruletest.Case("two that nobody says are for one", with(plan.RoleUnsaid, 20, plan.UseKitchen, "microwave", "refrigerator"), 0, "what a file does not say is no fault"),
		ruletest.Case("counters", with(plan.RoleAppliance, 20, plan.UseKitchen, "counter"), 0, "210.11(C)(1)"),
		ruletest.Case("a pantry", with(plan.RoleAppliance, 20, plan.UsePantry, "duplex"), 0, "210.52(B)(1)"),
		ruletest.Case("for counters, and a bedroom's", with(plan.RoleAppliance, 20, plan.UseBedroom, "duplex"), 1, "210.11(C)(1)"),
		ruletest.Case("for counters, a light alone", with(plan.RoleAppliance, 20, plan.UseKitchen, "ceiling-light"), 1, "210.11(C)(1)"),
		ruletest.Case("for counters, a bedroom's and 15 A", with(plan.RoleAppliance, 15, plan.UseBedroom, "duplex"), 2, "210.11(C)(1): 20 A"),
		ruletest.Case("for counters, a bedroom's and no rating told", with(plan.RoleAppliance, 0, plan.UseBedroom, "duplex"), 1, "what a file does not say is no fault"),
		ruletest.Case("laundry", with(plan.RoleLaundry, 20, plan.UseLaundry, "duplex"), 0, "210.11(C)(2)"),
		ruletest.Case("a washer in a mud room", with(plan.RoleLaundry, 20, plan.UseMudroom, "washer"), 0, "210.11(C)(2): the laundry outlet"),
		ruletest.Case("for laundry, a mud room's", with(plan.RoleLaundry, 20, plan.UseMudroom, "duplex"), 1, "210.11(C)(2)"),
		ruletest.Case("for baths, a washer", with(plan.RoleBath, 20, plan.UseMudroom, "washer"), 1, "210.11(C)(3)"),
		ruletest.Case("bath", with(plan.RoleBath, 20, plan.UseBath, "basin"), 0, "210.11(C)(3)"),
		ruletest.Case("for a garage, a bedroom's, 2014", in("2014", with(plan.RoleGarage, 20, plan.UseBedroom, "duplex")), 0, "210.11(C)(4) is of 2017"),
		ruletest.Case("for a garage, a bedroom's, 2017", in("2017", with(plan.RoleGarage, 20, plan.UseBedroom, "duplex")), 1, "210.11(C)(4)"),
		ruletest.Case("garage", with(plan.RoleGarage, 20, plan.UseGarage, "garage"), 0, "210.11(C)(4)"),
		ruletest.Case("lights", with(plan.RoleLights, 15, plan.UseBedroom, "duplex"), 0, "no section keeps receptacles off"),
		ruletest.Case("one that goes", func(h *ruletest.House) {
			c := h.Circuit(20, func(c *plan.Circuit) { c.Role = plan.RoleMachine })
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Opening("microwave", r.On(0, 20), ruletest.On(c))
			r.Opening("duplex", r.On(0, 60), ruletest.On(c), ruletest.Removed)
		}, 0, "it will not be there"),
		ruletest.Case("told once, in two rooms", func(h *ruletest.House) {
			c := h.Circuit(20, func(c *plan.Circuit) { c.Role = plan.RoleMachine })
			for _, x := range []float64{0, 300} {
				r := h.Square(plan.UseKitchen, x, 0, 240, 120)
				r.Opening("microwave", r.On(0, 20), ruletest.On(c))
			}
		}, 1, individual),
	})
}
