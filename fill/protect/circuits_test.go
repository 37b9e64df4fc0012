package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
)

// twoOf has two receptacles of a kind on a circuit, and what else.
func twoOf(use plan.Use, kind string, more func(*ruletest.House, *ruletest.Room, *plan.Circuit)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(use, 0, 0, 240, 120)
		c := h.Circuit(20)
		tagged(r, c, kind, "A", "B")
		if more != nil {
			more(h, r, c)
		}
	}
}

// one adds an opening of a kind in another room of a use, or with none in the same.
func one(kind string, use plan.Use, change ...func(*plan.Opening)) func(*ruletest.House, *ruletest.Room, *plan.Circuit) {
	return func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
		if use != "" {
			r = h.Square(use, 0, 300, 240, 120)
		}
		at := r.On(2, 60)
		switch kind {
		case "ceiling-light", "exhaust-fan", "junction-ceiling":
			at = plan.OnCeiling(r.Room.ID, geom.Point{X: ruletest.In(60), Y: ruletest.In(360)})
		}
		r.Opening(kind, at, append(change, ruletest.On(c))...)
	}
}

// Who belongs on the circuits of 210.11(C), each part of the sentence met and not.
func TestWhoIsOnAnApplianceCircuit(t *testing.T) {
	old := ruletest.Existing
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("two baths", twoOf(plan.UseBath, "gfci", one("gfci", plan.UseBath)), 0, "210.11(C)(3): receptacles of bathrooms"),
		ruletest.Case("two baths, and the light of one", twoOf(plan.UseBath, "gfci", func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			one("gfci", plan.UseBath)(h, r, c)
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
		}), 2, "210.11(C)(3): told in each bath; the exception is for one"),
		ruletest.Case("a bath, and what goes elsewhere", twoOf(plan.UseBath, "gfci", one("ceiling-light", plan.UseBedroom, ruletest.Removed)), 0, "it will not be there"),
		ruletest.Case("a bath, and a switch elsewhere", twoOf(plan.UseBath, "gfci", one("switch", plan.UseBedroom)), 0, "a switch is no outlet, article 100"),
		ruletest.Case("a bath, and a splice elsewhere", twoOf(plan.UseBath, "gfci", one("junction", plan.UseBedroom)), 0, "a splice is no outlet, article 100"),
		ruletest.Case("a laundry, and its own light", twoOf(plan.UseLaundry, "gfci", func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
		}), 1, "210.11(C)(2): no other outlets"),
		ruletest.Case("a laundry, and another", twoOf(plan.UseLaundry, "gfci", one("gfci", plan.UseLaundry)), 0, "210.11(C)(2)"),
		ruletest.Case("a laundry, and a bath", twoOf(plan.UseLaundry, "gfci", one("gfci", plan.UseBath)), 2, "210.11(C)(2) and (3): no other outlets; two circuits are alike wrong"),
		ruletest.Case("a garage, and the outdoors", twoOf(plan.UseGarage, "garage", one("outdoor", plan.UseOutdoors)), 0, "210.11(C)(4) exception: readily accessible outdoor receptacles"),
		ruletest.Case("a garage, and a bedroom", twoOf(plan.UseGarage, "garage", one("duplex", plan.UseBedroom)), 1, "210.11(C)(4)"),
		ruletest.Case("a bedroom, and a den", twoOf(plan.UseBedroom, "duplex", one("duplex", plan.UseDen)), 0, "210.11(C) names neither"),
		ruletest.Case("a breakfast room, and a pantry", twoOf(plan.UseBreakfast, "duplex", one("duplex", plan.UsePantry)), 0, "210.52(B)(1)"),
		ruletest.Case("a pantry, and a bedroom", twoOf(plan.UsePantry, "duplex", one("duplex", plan.UseBedroom)), 1, "210.52(B)(2)"),
		ruletest.Case("a dining room, and a dishwasher", twoOf(plan.UseDining, "duplex", one("dishwasher", "")), 1, "210.52(B)(2)"),
		ruletest.Case("a dining room, and a microwave", twoOf(plan.UseDining, "duplex", one("microwave", "")), 1, "210.52(B)(2)"),
		ruletest.Case("a dining room, and a fan", twoOf(plan.UseDining, "duplex", func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("exhaust-fan", r.Ceiling(60, 60), ruletest.On(c))
		}), 1, "210.52(B)(2)"),
		ruletest.Case("one of a dishwasher and one of a microwave", func(h *ruletest.House) {
			r := h.Square(plan.UseDining, 0, 0, 240, 120)
			c := h.Circuit(20)
			tagged(r, c, "dishwasher", "A")
			tagged(h.Square(plan.UseDining, 0, 300, 240, 120), c, "microwave", "B")
		}, 0, "no small-appliance circuit: nobody plugs in there"),
		ruletest.Case("a washer in a bath", func(h *ruletest.House) {
			c := h.Circuit(15)
			tagged(h.Square(plan.UseBath, 0, 0, 240, 120), c, "washer", "A")
		}, 0, "210.11(C)(3): receptacles for the bathroom; a machine's own is not"),
		ruletest.Case("old receptacles of a bath on 15 A", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 120)
			r.Opening("gfci", r.On(0, 40), ruletest.On(h.Circuit(15)), old)
		}, 0, "what is there already is not checked"),
		ruletest.Case("nobody says the rating", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 120)
			r.Opening("gfci", r.On(0, 40), ruletest.On(h.Circuit(0)))
		}, 0, "what a file does not say is no fault"),
	})
	garage := func(edition string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			twoOf(plan.UseGarage, "garage", one("duplex", plan.UseBedroom))(h)
		}
	}
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("a garage in 2014", garage("2014"), 0, "210.11(C)(4) began with 2017"),
		ruletest.Case("a garage in 2017", garage("2017"), 1, "210.11(C)(4), 2017"),
	})
}

// Which receptacles the count of a kitchen's circuits goes by.
func TestWhichReceptaclesServeACounter(t *testing.T) {
	kitchen := func(make func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
			r.Fixture(plan.FixtureCounter, 0, 0, 200)
			a, b := h.Circuit(20), h.Circuit(20)
			r.Opening("counter", r.On(0, 40), ruletest.On(a))
			make(h, r, a, b)
		}
	}
	const count = "210.52(B)(3): counters by two circuits or more"
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("the other at the counter's end", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 200), ruletest.On(b))
		}), 0, count),
		ruletest.Case("the other below its top", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 150), ruletest.On(b), ruletest.Up(36-sixteenth))
		}), 1, count),
		ruletest.Case("the other level with its top", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 150), ruletest.On(b), ruletest.Up(36))
		}), 0, count),
		ruletest.Case("the other past its end", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 201+sixteenth), ruletest.On(b))
		}), 1, count+"; a filler is an inch, common practice"),
		ruletest.Case("the other goes", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 150), ruletest.On(b), ruletest.Removed)
		}), 1, "it will not be there"),
		ruletest.Case("the other is a refrigerator's", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("refrigerator", r.On(0, 150), ruletest.On(b))
		}), 1, count+"; nobody plugs a toaster in there"),
		ruletest.Case("the other in an island", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			i := r.Island(100, 100, 60, 30)
			r.Opening("island", plan.Anchor{Host: i.ID, Part: plan.PartFront, Along: ruletest.In(30)}, ruletest.On(b))
		}), 0, count),
		ruletest.Case("the other above what hangs", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Fixture(plan.FixtureCounter, 2, 0, 60, func(f *plan.Fixture) { f.Bottom = ruletest.In(30) })
			r.Opening("duplex", r.On(2, 30), ruletest.On(b), ruletest.Up(70))
		}), 1, count+"; a shelf is no counter"),
		ruletest.Case("the other above a desk", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Fixture(plan.FixtureDesk, 2, 0, 60)
			r.Opening("duplex", r.On(2, 30), ruletest.On(b), ruletest.Up(42))
		}), 1, count+"; a desk is no counter"),
		ruletest.Case("one names no circuit", kitchen(func(h *ruletest.House, r *ruletest.Room, a, b *plan.Circuit) {
			r.Opening("counter", r.On(0, 150))
		}), 0, "what a file does not say is no fault"),
	})
}

// How much is on a circuit, and who counts.
func TestWhoCountsOnACircuit(t *testing.T) {
	// Eleven of a room on 15 A, or 14 on 20 A, are one too many.
	with := func(amps, count int, change func(*plan.Circuit), more func(*ruletest.House, *plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 400, 120)
			c := h.Circuit(amps)
			if change != nil {
				change(c)
			}
			for i := range count {
				r.Opening("duplex", r.On(0, float64(20+20*i)), ruletest.On(c))
			}
			if more != nil {
				more(h, c)
			}
		}
	}
	const usual = "common practice: 8 to 10 on 15 A, 10 to 13 on 20 A"
	ruletest.Try(t, &protect.CircuitLoad, []ruletest.Trial{
		ruletest.Case("11 of two rooms", with(15, 10, nil, func(h *ruletest.House, c *plan.Circuit) {
			r := h.Square(plan.UseBedroom, 0, 300, 400, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.On(c))
		}), 1, usual+"; told once"),
		ruletest.Case("11 on 240 V", with(15, 11, func(c *plan.Circuit) { c.Volts = 240 }, nil), 0, "circuits of 120 V serve receptacles and lights"),
		ruletest.Case("11 on 125 V", with(15, 11, func(c *plan.Circuit) { c.Volts = 125 }, nil), 1, usual),
		ruletest.Case("11 on 30 A", with(30, 11, nil, nil), 0, "no general circuit"),
		ruletest.Case("10 and a jack", with(15, 10, nil, func(h *ruletest.House, c *plan.Circuit) {
			r := h.Square(plan.UseBedroom, 0, 300, 400, 120)
			r.Opening("data", r.On(0, 40), ruletest.On(c))
		}), 0, "a jack takes no current of it"),
	})
}
