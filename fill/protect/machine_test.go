package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// said tells for which machine an outlet is, and what that draws in milliamperes.
func said(machine plan.Appliance, draws unit.Current) func(*plan.Opening) {
	return func(o *plan.Opening) { o.For, o.Draws = machine, draws }
}

// TestOutletsOfMachinesThatAreSaid: 210.8(D) of 2014 and 2017 names dishwashers
// (electricallicenserenewal.com, section 19), of 2020 sump pumps too (422.5(A), from memory), of
// 2023 microwave ovens, electric ranges and dryers beside them (captaincode2023.leviton.com).
func TestOutletsOfMachinesThatAreSaid(t *testing.T) {
	of := func(edition, kind string, machine plan.Appliance, stands plan.FixtureKind, fuel string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseDining, 0, 0, 240, 120)
			if stands != "" {
				r.Fixture(stands, 0, 100, 24).Fuel = fuel
			}
			r.Opening(kind, r.On(0, 40), ruletest.On(h.Circuit(20)), said(machine, 0))
		}
	}
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a duplex, 2014", of("2014", "duplex", "", plan.FixtureDishwasher, ""), 0, "nobody says what it is for"),
		ruletest.Case("one for a dishwasher, none drawn, 2014", of("2014", "duplex", plan.ApplianceDishwasher, "", ""), 1, "210.8(D), 2014"),
		ruletest.Case("one for a disposer beside a dishwasher, 2023", of("2023", "dishwasher", plan.ApplianceDisposer, plan.FixtureDishwasher, ""), 0, "210.8(D), 2023: what is said wins"),
		ruletest.Case("a sump pump, 2017", of("2017", "duplex", plan.ApplianceSumpPump, "", ""), 0, "210.8(D), 2017 names dishwashers alone"),
		ruletest.Case("a sump pump, 2020", of("2020", "duplex", plan.ApplianceSumpPump, "", ""), 1, "422.5(A), 2020, from memory"),
		ruletest.Case("a sump pump, 2023", of("2023", "duplex", plan.ApplianceSumpPump, "", ""), 1, "210.8(D), 2023, from memory"),
		ruletest.Case("a microwave oven, 2020", of("2020", "duplex", plan.ApplianceMicrowave, "", ""), 0, "422.5(A), 2020 names none"),
		ruletest.Case("a microwave oven, 2023", of("2023", "duplex", plan.ApplianceMicrowave, "", ""), 1, "210.8(D)(12), 2023"),
		ruletest.Case("of a microwave oven or a hood, 2023", of("2023", "microwave", "", "", ""), 0, "nobody says which"),
		ruletest.Case("for a hood, 2023", of("2023", "microwave", plan.ApplianceHood, "", ""), 0, "210.8(D) names none"),
		ruletest.Case("a feed for a dryer, 2023", of("2023", "equipment", plan.ApplianceDryer, "", ""), 1, "210.8(D)(11), 2023"),
		ruletest.Case("a feed for a dryer, 2020", of("2020", "equipment", plan.ApplianceDryer, "", ""), 0, "422.5(A), 2020 names none"),
		ruletest.Case("for a dryer that burns gas, 2023", of("2023", "duplex", plan.ApplianceDryer, plan.FixtureDryer, "gas"), 0, "210.8(D)(11): electric dryers"),
		ruletest.Case("for an electric dryer, 2023", of("2023", "duplex", plan.ApplianceDryer, plan.FixtureDryer, ""), 1, "210.8(D)(11), 2023"),
		ruletest.Case("for a range beside a dryer that burns gas, 2023", of("2023", "duplex", plan.ApplianceRange, plan.FixtureDryer, "gas"), 1, "210.8(D)(8), 2023"),
		ruletest.Case("a freezer, 2023", of("2023", "duplex", plan.ApplianceFreezer, "", ""), 0, "210.8(D) names none"),
	})
}

// TestCircuitsOfMachinesThatAreSaid: 210.11(C) and 210.52(B) are for receptacles to plug things
// into; refrigeration is let on circuits for small appliances, 210.52(B)(1), what is built in not.
func TestCircuitsOfMachinesThatAreSaid(t *testing.T) {
	kitchen := func(machine plan.Appliance) func(*ruletest.House) {
		return func(h *ruletest.House) {
			c, other := h.Circuit(20), h.Circuit(20)
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 200)
			r.Opening("counter", r.On(0, 20), ruletest.On(c))
			r.Opening("counter", r.On(0, 60), ruletest.On(other))
			r.Opening("duplex", r.On(2, 60), ruletest.On(c), said(machine, 0))
		}
	}
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("nobody says", kitchen(""), 0, "210.52(B)(1)"),
		ruletest.Case("a freezer", kitchen(plan.ApplianceFreezer), 0, "210.52(B)(1): refrigeration equipment"),
		ruletest.Case("a disposer", kitchen(plan.ApplianceDisposer), 1, "210.52(B)(2): no other outlets"),
		ruletest.Case("a furnace", kitchen(plan.ApplianceFurnace), 1, "210.52(B)(2): no other outlets"),
		ruletest.Case("a second circuit that serves a machine alone", func(h *ruletest.House) {
			c, other := h.Circuit(20), h.Circuit(20)
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 200)
			r.Opening("counter", r.On(0, 20), ruletest.On(c))
			r.Opening("counter", r.On(0, 60), ruletest.On(other), said(plan.ApplianceRefrigerator, 0))
		}, 1, "210.52(B)(3): the counters are on one"),
		ruletest.Case("a washer of 15 A in a laundry", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 60), ruletest.On(h.Circuit(15)), said(plan.ApplianceWasher, 0))
		}, 1, "210.11(C)(2): 20 A"),
		ruletest.Case("a freezer of 15 A in a laundry", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 60), ruletest.On(h.Circuit(15)), said(plan.ApplianceFreezer, 0))
		}, 0, "210.11(C)(2) is for the laundry"),
	})
	laundry := func(machine plan.Appliance) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 60), ruletest.On(h.Circuit(20, func(c *plan.Circuit) { c.Role = plan.RoleLaundry })), said(machine, 0))
		}
	}
	ruletest.Try(t, &protect.CircuitRole, []ruletest.Trial{
		ruletest.Case("said to be for a washer", laundry(plan.ApplianceWasher), 0, "210.11(C)(2): the laundry outlet"),
		ruletest.Case("said to be for a freezer", laundry(plan.ApplianceFreezer), 1, "210.11(C)(2)"),
	})
}

// TestLoadsOfMachines: one machine on a cord 80 percent of a circuit that serves more, those that
// are fastened in place 50 percent where lights or cords share it (210.23, 2023 text); a circuit
// for one alone what it carries.
func TestLoadsOfMachines(t *testing.T) {
	type outlet struct {
		kind    string
		machine plan.Appliance
		draws   unit.Current
	}
	on := func(amps int, outlets ...outlet) func(*ruletest.House) {
		return func(h *ruletest.House) {
			c := h.Circuit(amps)
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			for i, o := range outlets {
				at := r.On(0, 20+20*float64(i))
				if o.kind == "ceiling-light" {
					at = r.Ceiling(60, 60)
				}
				r.Opening(o.kind, at, ruletest.On(c), said(o.machine, o.draws))
			}
		}
	}
	freezer := func(draws unit.Current) outlet { return outlet{"duplex", plan.ApplianceFreezer, draws} }
	disposer := func(draws unit.Current) outlet { return outlet{"duplex", plan.ApplianceDisposer, draws} }
	dish := func(draws unit.Current) outlet { return outlet{"dishwasher", "", draws} }
	feed := func(draws unit.Current) outlet { return outlet{"equipment", "", draws} }
	light, plug, box := outlet{kind: "ceiling-light"}, outlet{kind: "duplex"}, outlet{kind: "junction"}
	ruletest.Try(t, &protect.CircuitLoad, []ruletest.Trial{
		ruletest.Case("a cord at 80 percent of 20 A", on(20, freezer(16000), light), 0, "210.23: 80 percent"),
		ruletest.Case("a milliampere over", on(20, freezer(16001), light), 1, "210.23: 80 percent"),
		ruletest.Case("a cord at 80 percent of 15 A", on(15, freezer(12000), light), 0, "210.23: 80 percent"),
		ruletest.Case("a milliampere over it", on(15, freezer(12001), light), 1, "210.23: 80 percent"),
		ruletest.Case("beside another that draws nothing said", on(15, freezer(12001), plug), 1, "210.23: 80 percent"),
		ruletest.Case("both over", on(15, freezer(12001), freezer(13000)), 2, "210.23: any one"),
		ruletest.Case("alone it may take all", on(15, freezer(15000)), 0, "210.22: an individual circuit"),
		ruletest.Case("alone, with a box it passes", on(15, freezer(15000), box), 0, "210.22: a splice takes no current"),
		ruletest.Case("alone and more than that", on(15, freezer(15001)), 1, "210.22: no more than its rating"),
		ruletest.Case("fastened at half of 20 A", on(20, dish(10000), light), 0, "210.23: 50 percent"),
		ruletest.Case("a milliampere over half", on(20, dish(10001), light), 1, "210.23: 50 percent"),
		ruletest.Case("half of 15 A", on(15, dish(7500), plug), 0, "210.23: 50 percent"),
		ruletest.Case("over half of 15 A", on(15, dish(7501), plug), 1, "210.23: 50 percent"),
		ruletest.Case("two that make it together", on(20, dish(5001), disposer(5000), light), 1, "210.23: the total"),
		ruletest.Case("two at half together", on(20, dish(5000), disposer(5000), light), 0, "210.23: the total"),
		ruletest.Case("fastened alone together", on(20, dish(9000), disposer(9000)), 0, "210.23: where lights or cords share it"),
		ruletest.Case("a feed with a light", on(20, feed(10001), light), 1, "210.23: fastened in place"),
		ruletest.Case("a feed with a box", on(20, feed(10001), box), 0, "210.23: a splice takes no current"),
		ruletest.Case("nobody says what it draws", on(20, freezer(0), dish(0), light), 0, "what a file does not say is no fault"),
		ruletest.Case("of a circuit of no rating told", on(0, freezer(30000), light), 0, "what a file does not say is no fault"),
		ruletest.Case("alone on one of no rating told", on(0, freezer(30000)), 0, "what a file does not say is no fault"),
		ruletest.Case("a larger circuit that serves two", on(30, freezer(29000), light), 0, "not checked"),
		ruletest.Case("a larger circuit for one", on(30, outlet{"dryer", "", 30001}), 1, "210.22: no more than its rating"),
		ruletest.Case("a machine that goes", func(h *ruletest.House) {
			c := h.Circuit(20)
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Opening("duplex", r.On(0, 20), ruletest.On(c), said(plan.ApplianceFreezer, 19000), ruletest.Removed)
			r.Opening("duplex", r.On(0, 60), ruletest.On(c))
		}, 0, "it will not be there"),
	})
	inEdition := func(edition string, make func(*ruletest.House)) func(*ruletest.House) {
		return func(h *ruletest.House) { h.Edition = edition; make(h) }
	}
	for _, tt := range []struct {
		make func(*ruletest.House)
		want string
	}{
		{inEdition("2020", on(20, freezer(16500), light)), "NEC 2020 210.23(A)(1)"},
		{inEdition("2023", on(20, freezer(16500), light)), "NEC 2023 210.23(B)(1)"},
		{inEdition("2014", on(20, dish(11000), light)), "NEC 2014 210.23(A)(2)"},
		{inEdition("2014", on(20, freezer(20001))), "NEC 2014 210.22"}, // individual branch circuits, from memory
		{inEdition("2023", on(20, freezer(20001))), "NEC 2023 210.22"},
		{inEdition("2023", on(20, dish(11000), light)), "NEC 2023 210.23(B)(2)"},
	} {
		h := ruletest.New(t)
		tt.make(h)
		if found := h.Found(&protect.CircuitLoad); len(found) != 1 || found[0].Section != tt.want || found[0].ByPractice {
			t.Errorf("%s: %+v", tt.want, found)
		}
	}
}

// TestPlacesThatAreSaid: 210.8(A)(5), unfinished portions of a basement up to 2017, all of it from
// 2020 on; indoor damp and wet locations from 2020 on; areas with a sink for food or drink from
// 2023 on (2020 and 2023 text, trade pages on the changes).
func TestPlacesThatAreSaid(t *testing.T) {
	store := func(edition, level string, finished plan.Answer, damp plan.Dampness) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition, h.Plan.Levels[0].Name = edition, level
			r := h.Square(plan.UseStorage, 0, 0, 120, 120)
			r.Finished, r.Damp = finished, damp
			r.Opening("duplex", r.On(0, 40), ruletest.On(h.Circuit(20)))
		}
	}
	cellar := func(edition string, finished plan.Answer) func(*ruletest.House) {
		return func(h *ruletest.House) {
			onCircuit(edition, plan.UseBasement, "duplex")(h)
			h.Rooms()[0].Finished = finished
		}
	}
	bar := func(edition, kind string, said plan.Answer) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseFamily, 0, 0, 400, 120)
			c := r.Fixture(plan.FixtureCounter, 0, 0, 180)
			r.InTop(c, plan.FixtureSink, 20, 12, 24, 18).Bar = said
			at, up := r.On(0, 170), 42.0
			if kind == "wall" {
				at, up = r.On(0, 300), 16
			}
			r.Opening("duplex", at, ruletest.Up(up), ruletest.On(h.Circuit(20)))
		}
	}
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("an unfinished store, 2017", store("2017", "Basement", plan.AnswerNo, ""), 1, "210.8(A)(5), 2017"),
		ruletest.Case("a store of which nobody says it, 2017", store("2017", "Basement", "", ""), 0, "what a file does not say is no fault"),
		ruletest.Case("a finished store, 2017", store("2017", "Basement", plan.AnswerYes, ""), 0, "210.8(A)(5), 2017: unfinished"),
		ruletest.Case("a finished store, 2020", store("2020", "Basement", plan.AnswerYes, ""), 1, "210.8(A)(5), 2020: basements"),
		ruletest.Case("an unfinished store above, 2017", store("2017", "Ground", plan.AnswerNo, ""), 0, "210.8(A)(5): basements"),
		ruletest.Case("an unfinished basement, 2014", cellar("2014", ""), 1, "210.8(A)(5), 2014"),
		ruletest.Case("one said to be finished, 2017", cellar("2017", plan.AnswerYes), 0, "210.8(A)(5), 2017: what is said wins"),
		ruletest.Case("one said to be finished, 2020", cellar("2020", plan.AnswerYes), 1, "210.8(A)(5), 2020: basements"),
		ruletest.Case("a damp store, 2017", store("2017", "Ground", "", plan.DampDamp), 0, "210.8(A), 2017 names none"),
		ruletest.Case("a damp store, 2020", store("2020", "Ground", "", plan.DampDamp), 1, "210.8(A), 2020: damp locations"),
		ruletest.Case("a wet store, 2023", store("2023", "Ground", "", plan.DampWet), 1, "210.8(A), 2023: wet locations"),
		ruletest.Case("a dry store, 2023", store("2023", "Ground", "", plan.DampDry), 0, "210.8(A)"),
		ruletest.Case("a store of which nobody says it, 2023", store("2023", "Ground", "", ""), 0, "what a file does not say is no fault"),
		ruletest.Case("far along a bar, 2023", bar("2023", "counter", plan.AnswerYes), 1, "210.8(A)(7), 2023"),
		ruletest.Case("far along a bar, 2020", bar("2020", "counter", plan.AnswerYes), 0, "210.8(A), 2020: within 6 ft of the sink"),
		ruletest.Case("a counter of which nobody says it, 2023", bar("2023", "counter", ""), 0, "what a file does not say is no fault"),
		ruletest.Case("a counter that is no bar, 2023", bar("2023", "counter", plan.AnswerNo), 0, "210.8(A)(7)"),
		ruletest.Case("in the wall beyond a bar, 2023", bar("2023", "wall", plan.AnswerYes), 0, "our reading: the area is the counter"),
	})
}
