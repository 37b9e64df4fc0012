package protect_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
)

const sixteenth = 1.0 / 16

// onCircuit makes a room of a use with one receptacle on a circuit.
func onCircuit(edition string, use plan.Use, kind string, more ...func(*plan.Circuit)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(use, 0, 0, 120, 120)
		r.Opening(kind, r.On(0, 40), ruletest.On(h.Circuit(20, more...)))
	}
}

func ground(c *plan.Circuit) { c.GFCI = plan.FlagYes }
func arc(c *plan.Circuit)    { c.AFCI = plan.FlagYes }

// unsaid leaves open what the breaker is.
func unsaid(c *plan.Circuit) { c.GFCI, c.AFCI = plan.FlagUnsaid, plan.FlagUnsaid }

// bySink has a kitchen sink in a counter, with its edge so far from a receptacle in the
// next wall, outside of what serves counters.
func bySink(edition string, away float64) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseUtility, 0, 0, 240, 120)
		r.Fixture(plan.FixtureSink, 0, 0, 30)
		r.Opening("duplex", r.On(0, 30+away), ruletest.On(h.Circuit(20)))
	}
}

// byTub has a receptacle beside a tub, so far from its end along the wall.
func byTub(away float64) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = "2023"
		r := h.Square(plan.UseUtility, 0, 0, 240, 120)
		r.Fixture(plan.FixtureTub, 0, 0, 60)
		r.Opening("duplex", r.On(0, 60+away), ruletest.On(h.Circuit(20)))
	}
}

// inCabinet has the receptacle of a disposer within the cabinet of a sink, 2 ft from it.
func inCabinet(edition string) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
		c := r.Fixture(plan.FixtureCounter, 0, 0, 120)
		r.InTop(c, plan.FixtureSink, 20, 12, 30, 18)
		r.Opening("dishwasher", r.On(0, 59), ruletest.On(h.Circuit(20)))
	}
}

func TestGroundFault(t *testing.T) {
	chain := func(first, second string, drawn bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			panel := r.Fixture(plan.FixturePanel, 2, 0, 15)
			c := h.Circuit(20)
			a := r.Opening(first, r.On(0, 40), ruletest.On(c))
			b := r.Opening(second, r.On(0, 80), ruletest.On(c))
			if drawn {
				h.Cable(panel.ID, a.ID, 12, 2, c)
				h.Cable(a.ID, b.ID, 12, 2, c)
			}
		}
	}
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a bath", onCircuit("2014", plan.UseBath, "duplex"), 1, "210.8(A)(1)"),
		ruletest.Case("a device of its own", onCircuit("2023", plan.UseBath, "gfci"), 0, "210.8(A)(1)"),
		ruletest.Case("the breaker", onCircuit("2023", plan.UseBath, "duplex", ground), 0, "210.8(A)(1)"),
		ruletest.Case("a garage", onCircuit("2017", plan.UseGarage, "duplex"), 1, "210.8(A)(2)"),
		ruletest.Case("outdoors", onCircuit("2017", plan.UseOutdoors, "duplex"), 1, "210.8(A)(3)"),
		ruletest.Case("an unfinished basement", onCircuit("2014", plan.UseBasement, "duplex"), 1, "210.8(A)(5)"),
		ruletest.Case("a laundry", onCircuit("2014", plan.UseLaundry, "duplex"), 1, "210.8(A)(10)"),
		ruletest.Case("a mudroom with a washer", func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 200, 120)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Opening("duplex", r.On(2, 40), ruletest.On(h.Circuit(20)))
		}, 1, "210.8(A)(10): laundry areas, 210.52(F)"),
		ruletest.Case("6 ft from a tub", byTub(72), 1, "210.8(A)(9)"),
		ruletest.Case("a sixteenth farther", byTub(72+sixteenth), 0, "210.8(A)(9)"),
		ruletest.Case("a dryer of 250 V in 2017", onCircuit("2017", plan.UseLaundry, "dryer"), 0, "210.8(A), 2017: 125 V, 15 A and 20 A"),
		ruletest.Case("a dryer of 250 V in 2020", onCircuit("2020", plan.UseLaundry, "dryer"), 1, "210.8(A), 2020: 125 V to 250 V"),
		ruletest.Case("a bedroom", onCircuit("2023", plan.UseBedroom, "duplex"), 0, "210.8(A)"),
		ruletest.Case("a kitchen wall in 2020", onCircuit("2020", plan.UseKitchen, "duplex"), 0, "210.8(A)(6), 2020: what serves counters"),
		ruletest.Case("a kitchen wall in 2023", onCircuit("2023", plan.UseKitchen, "duplex"), 1, "210.8(A)(6), 2023: all"),
		ruletest.Case("6 ft from a sink", bySink("2023", 72), 1, "210.8(A)(7)"),
		ruletest.Case("a sixteenth more", bySink("2023", 72+sixteenth), 0, "210.8(A)(7)"),
		ruletest.Case("a disposer in 2014", inCabinet("2014"), 1, "captaincode2014.leviton.com/node/17"),
		ruletest.Case("a disposer in 2017", inCabinet("2017"), 0, "forums.mikeholt.com 149255: the path passes a door"),
		ruletest.Case("a disposer in 2020", inCabinet("2020"), 1, "forums.mikeholt.com 2573284"),
		ruletest.Case("a disposer in 2023", inCabinet("2023"), 1, "forums.mikeholt.com 2573284: all kitchen receptacles"),
		ruletest.Case("behind a device, drawn", chain("gfci", "duplex", true), 0, "210.8(A): upstream on the same circuit"),
		ruletest.Case("ahead of a device, drawn", chain("duplex", "gfci", true), 1, "the device protects what is behind it"),
		ruletest.Case("one that goes", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.Removed)
		}, 0, "it will not be there"),
	})
	for name, make := range map[string]func(*ruletest.House){
		"the order is not drawn": chain("gfci", "duplex", false),
		"no circuit": func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40))
			r.Opening("duplex", r.On(0, 80))
		},
	} {
		h := ruletest.New(t)
		make(h)
		if found := h.Found(&protect.GroundFault); len(found) != 1 || found[0].Severity != rule.Note || !found[0].IsOpen {
			t.Errorf("%s: %q", name, filltest.Said(found))
		}
	}
}

// The cord goes round the corner that a room turns at.
func TestTheCordGoesRoundACorner(t *testing.T) {
	for away, want := range map[float64]int{72 - 30: 1, 72 - 30 + sixteenth: 0} {
		h := ruletest.New(t)
		r := h.Room(plan.UseUtility, 0, 0, 200, 0, 200, 60, 100, 60, 100, 200, 0, 200)
		// The sink stands in the right arm with its left edge 30 in past the inner corner at
		// (100, 60), along the side from (200, 60); the receptacle is down the other arm.
		r.Fixture(plan.FixtureSink, 2, 40, 30)
		r.Opening("duplex", r.On(3, away), ruletest.On(h.Circuit(20)))
		if found := h.Found(&protect.GroundFault); len(found) != want {
			t.Errorf("%v in down the arm: %q, want %d: 30 in + that, 72 in at most", away, filltest.Said(found), want)
		}
	}
}

func TestArcFault(t *testing.T) {
	ruletest.Try(t, &protect.ArcFault, []ruletest.Trial{
		ruletest.Case("a bedroom", onCircuit("2014", plan.UseBedroom, "duplex"), 1, "210.12(A)"),
		ruletest.Case("protected at the breaker", onCircuit("2014", plan.UseBedroom, "duplex", arc), 0, "210.12(A)(1)"),
		ruletest.Case("a kitchen", onCircuit("2014", plan.UseKitchen, "duplex"), 1, "210.12(A): new in 2014"),
		ruletest.Case("a bathroom", onCircuit("2023", plan.UseBath, "duplex"), 0, "210.12 does not name bathrooms"),
		ruletest.Case("a garage", onCircuit("2023", plan.UseGarage, "duplex"), 0, "210.12 does not name garages"),
		ruletest.Case("a switch", onCircuit("2014", plan.UseHall, "switch"), 1, "210.12: outlets and devices"),
		ruletest.Case("a range", onCircuit("2023", plan.UseKitchen, "range", func(c *plan.Circuit) { c.Volts, c.Amps = 240, 50 }), 0, "210.12: 120 V, 15 A and 20 A"),
		ruletest.Case("a jack", onCircuit("2023", plan.UseBedroom, "data"), 0, "210.12: outlets of branch circuits"),
		ruletest.Case("nobody says the circuit", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40))
			r.Opening("duplex", r.On(0, 80))
		}, 1, "one note a room"),
	})
	for edition, want := range map[string]string{"2014": "NEC 2014 210.12(A)", "2020": "NEC 2020 210.12(A)", "2023": "NEC 2023 210.12(B)"} {
		h := ruletest.New(t)
		onCircuit(edition, plan.UseBedroom, "duplex")(h)
		if found := h.Found(&protect.ArcFault); len(found) != 1 || found[0].Section != want {
			t.Errorf("%s: %q cites %q, want %s: electricallicenserenewal.com, section 1429", edition, filltest.Said(found), found[0].Section, want)
		}
	}
}

// A basement that is finished is one by what it or its level is called.
func TestFinishedBasementsWantGroundFaultProtection(t *testing.T) {
	named := func(edition, level, room string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition, h.Plan.Levels[0].Name = edition, level
			r := h.Square(plan.UseRecreation, 0, 0, 120, 120)
			r.Name = room
			r.Opening("duplex", r.On(0, 40), ruletest.On(h.Circuit(20)))
		}
	}
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("in 2017", named("2017", "Basement", "Finished basement"), 0, "210.8(A)(5) of 2017: unfinished basements"),
		ruletest.Case("in 2020 by the room", named("2020", "Level 1", "Finished basement"), 1, "210.8(A)(5) of 2020: basements"),
		ruletest.Case("in 2023 by the level", named("2023", "Basement", "Playroom"), 1, "210.8(A)(5) of 2023: basements"),
		ruletest.Case("in Spanish", named("2023", "Sótano", "Sala de juegos"), 1, "210.8(A)(5) of 2023: basements"),
		ruletest.Case("above the ground", named("2023", "Ground floor", "Playroom"), 0, "210.8(A) names no recreation rooms"),
	})
}

func TestApplianceCircuits(t *testing.T) {
	counters := func(circuits int, amps int, more func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 240)
			var c *plan.Circuit
			for i := range 4 {
				if i < circuits {
					c = h.Circuit(amps)
				}
				r.Opening("counter", r.On(0, float64(24+48*i)), ruletest.On(c))
			}
			if more != nil {
				more(h, r, c)
			}
		}
	}
	laundry := func(amps int, shared bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 100, 96)
			c := h.Circuit(amps)
			r.Opening("washer", r.On(0, 50), ruletest.On(c))
			if shared {
				b := h.Square(plan.UseBedroom, 0, 200, 120, 120)
				b.Opening("ceiling-light", b.Ceiling(60, 260), ruletest.On(c))
			}
		}
	}
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("two circuits", counters(2, 20, nil), 0, "210.52(B)(3): counters by at least two"),
		ruletest.Case("one", counters(1, 20, nil), 1, "210.52(B)(3)"),
		ruletest.Case("of 15 A", counters(2, 15, nil), 2, "210.11(C)(1): 20 A"),
		ruletest.Case("a light on one", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
		}), 1, "210.52(B)(2): no other outlets"),
		ruletest.Case("a switch on one, of which no light is drawn", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("switch", r.On(2, 50), ruletest.On(c))
		}), 0, "210.52(B)(2): outlets; article 100: a switch is none"),
		ruletest.Case("a hood on one", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("microwave", r.On(0, 120), ruletest.On(c))
		}), 1, "210.52(B)(2)"),
		ruletest.Case("outdoors on one", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			o := h.Square(plan.UseOutdoors, 0, 300, 100, 100)
			o.Opening("outdoor", o.On(0, 50), ruletest.On(c))
		}), 1, "210.52(B)(2)"),
		ruletest.Case("a dining room on one", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			o := h.Square(plan.UseDining, 0, 300, 100, 100)
			o.Opening("duplex", o.On(0, 50), ruletest.On(c))
		}), 0, "210.52(B)(1): dining rooms too"),
		ruletest.Case("the refrigerator on one", counters(2, 20, func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("refrigerator", r.On(2, 50), ruletest.On(c))
		}), 0, "210.52(B)(1): refrigeration equipment too"),
		ruletest.Case("a washer of a laundry on 15 A", laundry(15, false), 1, "210.11(C)(2): 20 A"),
		ruletest.Case("a washer and a bedroom's light", laundry(20, true), 1, "210.11(C)(2): no other outlets"),
		ruletest.Case("a washer alone", laundry(20, false), 0, "210.11(C)(2)"),
		ruletest.Case("a bath alone on its circuit, with its light", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			c := h.Circuit(20)
			r.Opening("gfci", r.On(0, 40), ruletest.On(c))
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
		}, 0, "210.11(C)(3) exception: one bathroom"),
		ruletest.Case("a bath with a bedroom's light", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			b := h.Square(plan.UseBedroom, 200, 0, 120, 120)
			c := h.Circuit(20)
			r.Opening("gfci", r.On(0, 40), ruletest.On(c))
			b.Opening("ceiling-light", b.Ceiling(260, 60), ruletest.On(c))
		}, 1, "210.11(C)(3)"),
		ruletest.Case("nobody says the circuits", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 240)
			r.Opening("counter", r.On(0, 24))
		}, 0, "what a file does not say is no fault"),
	})
}

func TestCircuitLoad(t *testing.T) {
	with := func(amps, count int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 400, 120)
			c := h.Circuit(amps)
			for i := range count {
				r.Opening("duplex", r.On(0, float64(20+20*i)), ruletest.On(c))
			}
			r.Opening("switch", r.On(1, 40), ruletest.On(c))
		}
	}
	ruletest.Try(t, &protect.CircuitLoad, []ruletest.Trial{
		ruletest.Case("10 on 15 A", with(15, 10), 0, "common practice: 8 to 10"),
		ruletest.Case("11 on 15 A", with(15, 11), 1, "common practice: 8 to 10"),
		ruletest.Case("13 on 20 A", with(20, 13), 0, "common practice: 10 to 13"),
		ruletest.Case("14 on 20 A", with(20, 14), 1, "common practice: 10 to 13"),
	})
}

func TestOldOutlet(t *testing.T) {
	old := func(kind string, grounded plan.Answer, more ...func(*plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening(kind, r.On(0, 40), ruletest.On(h.Circuit(15, more...)), func(o *plan.Opening) {
				o.Status, o.Grounded = plan.StatusExisting, grounded
			})
		}
	}
	ruletest.Try(t, &protect.OldOutlet, []ruletest.Trial{
		ruletest.Case("ungrounded", old("duplex", plan.AnswerNo), 1, "406.4(D)(2), from memory"),
		ruletest.Case("grounded", old("duplex", plan.AnswerYes), 0, "406.4(D)(1), from memory"),
		ruletest.Case("nobody says", old("duplex", plan.Unsaid), 0, "what a file does not say is no fault"),
		ruletest.Case("a GFCI receptacle", old("gfci", plan.AnswerNo), 0, "406.4(D)(2)(b), from memory"),
		ruletest.Case("protected at the breaker", old("duplex", plan.AnswerNo, ground), 0, "406.4(D)(2)(c), from memory"),
	})
}

func TestPanelPlace(t *testing.T) {
	panel := func(use plan.Use, width, depth, at float64, more func(*ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(use, 0, 0, width, depth)
			r.Fixture(plan.FixturePanel, 0, at, 15, func(f *plan.Fixture) { f.Depth, f.Bottom, f.Height = ruletest.In(4), ruletest.In(42), ruletest.In(30) })
			if more != nil {
				more(r)
			}
		}
	}
	washer := func(at float64) func(*ruletest.Room) {
		return func(r *ruletest.Room) { r.Fixture(plan.FixtureWasher, 0, at, 30) }
	}
	ruletest.Try(t, &protect.PanelPlace, []ruletest.Trial{
		ruletest.Case("a utility room", panel(plan.UseUtility, 120, 120, 40, nil), 0, "110.26, from memory"),
		ruletest.Case("a bath", panel(plan.UseBath, 120, 120, 40, nil), 1, "240.24(E), from memory"),
		ruletest.Case("a closet", panel(plan.UseCloset, 120, 120, 40, nil), 1, "240.24(D), from memory"),
		ruletest.Case("in the corner, 30 in to the other side", panel(plan.UseUtility, 120, 120, 0, nil), 0, "110.26(A)(2): not about its middle, from memory"),
		ruletest.Case("a room 40 in deep: 36 before the panel", panel(plan.UseUtility, 120, 40, 40, nil), 0, "110.26(A)(1), from memory"),
		ruletest.Case("a sixteenth less deep", panel(plan.UseUtility, 120, 40-sixteenth, 40, nil), 1, "110.26(A)(1), from memory"),
		ruletest.Case("a room 30 in wide", panel(plan.UseUtility, 30, 120, 5, nil), 0, "110.26(A)(2), from memory"),
		ruletest.Case("a sixteenth narrower", panel(plan.UseUtility, 30-sixteenth, 120, 5, nil), 1, "110.26(A)(2), from memory"),
		ruletest.Case("a washer 30 in from the corner", panel(plan.UseUtility, 120, 120, 0, washer(30)), 0, "110.26(A)(2), from memory"),
		ruletest.Case("a washer a sixteenth nearer", panel(plan.UseUtility, 120, 120, 0, washer(30-sixteenth)), 1, "110.26(A)(2), from memory"),
	})
}

// What a file does not say of a breaker is never a fault: at most one note a circuit and
// room, with the breaker as its remedy.
func TestABreakerNobodyTellsOfIsANote(t *testing.T) {
	for name, of := range map[string]struct {
		rule *rule.Rule
		use  plan.Use
	}{
		"arc faults":    {&protect.ArcFault, plan.UseBedroom},
		"ground faults": {&protect.GroundFault, plan.UseBath},
	} {
		ruletest.Try(t, of.rule, []ruletest.Trial{
			ruletest.Case(name+", unsaid, one", onCircuit("2023", of.use, "duplex", unsaid), 1, "what is not said is a note"),
			ruletest.Case(name+", unsaid, two", func(h *ruletest.House) {
				r := h.Square(of.use, 0, 0, 120, 120)
				c := h.Circuit(20, unsaid)
				r.Opening("duplex", r.On(0, 40), ruletest.On(c))
				r.Opening("duplex", r.On(0, 80), ruletest.On(c))
			}, 1, "one note a circuit and room"),
		})
		h := ruletest.New(t)
		onCircuit("2023", of.use, "duplex", unsaid)(h)
		for _, f := range h.Found(of.rule) {
			if f.Severity != rule.Note || !f.IsOpen {
				t.Errorf("%s: %q is a %s, want an open note", name, f.Message, f.Severity)
			}
		}
	}
	ruletest.Try(t, &protect.OldOutlet, []ruletest.Trial{
		ruletest.Case("an old box, the breaker unsaid", func(h *ruletest.House) {
			r := h.Square(plan.UseLiving, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.On(h.Circuit(15, unsaid)), func(o *plan.Opening) {
				o.Status, o.Grounded = plan.StatusExisting, plan.AnswerNo
			})
		}, 1, "what is not said is a note"),
	})
}
