package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// near has a fixture in a room and a receptacle 6 ft and so much along the wall from it.
func near(kind plan.FixtureKind) func(*ruletest.House, unit.Length) {
	return func(h *ruletest.House, over unit.Length) {
		r := h.Square(plan.UseUtility, 0, 0, 240, 120)
		r.Fixture(kind, 0, 0, 30)
		r.Opening("duplex", r.On(0, 102), ruletest.On(h.Circuit(20))).At.Along += over
	}
}

// within has a receptacle in 2017 by a sink of which a base cabinet, from 10 in up to 46 in
// and from 40 to 70 in along the wall, hides it where it is inside.
func within(change func(*plan.Opening, unit.Length)) func(*ruletest.House, unit.Length) {
	return func(h *ruletest.House, over unit.Length) {
		h.Edition = "2017"
		r := h.Square(plan.UseUtility, 0, 0, 240, 120)
		r.Fixture(plan.FixtureSink, 0, 0, 30)
		r.Fixture(plan.FixtureCabinet, 0, 40, 30, func(f *plan.Fixture) { f.Bottom = ruletest.In(10) })
		o := r.Opening("duplex", r.On(0, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		change(o, over)
	}
}

func TestLimitsOfGroundFaults(t *testing.T) {
	const near6 = "210.8(A)(7), (8), (9): within 6 ft"
	const door = "forums.mikeholt.com 149255: in 2017 the cord passes no door"
	ruletest.Edges(t, &protect.GroundFault, []ruletest.Edge{
		ruletest.Limit("from a sink", near(plan.FixtureSink), rule.Grain, 1, 0, near6),
		ruletest.Limit("from a basin", near(plan.FixtureBasin), rule.Grain, 1, 0, near6),
		ruletest.Limit("from a tub", near(plan.FixtureTub), rule.Grain, 1, 0, near6),
		ruletest.Limit("from a shower", near(plan.FixtureShower), rule.Grain, 1, 0, near6),
		ruletest.Limit("from a toilet", near(plan.FixtureToilet), 0, 0, 0, "210.8(A) names no toilets"),
		ruletest.Limit("at the right end of a cabinet", within(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(70) + over }), 0, 0, 1, door),
		ruletest.Limit("at the left end of a cabinet", within(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(40) - over }), 0, 0, 1, door),
		ruletest.Limit("at the bottom of a cabinet", within(func(o *plan.Opening, over unit.Length) { o.Height.Value = ruletest.In(10) - over }), 0, 0, 1, door),
		ruletest.Limit("at the top of a cabinet", within(func(o *plan.Opening, over unit.Length) { o.Height.Value = ruletest.In(46) - 1 + over }), 0, 0, 1, door+"; what is level with its top is above it"),
		ruletest.Limit("level with a counter's top, in 2020", func(h *ruletest.House, over unit.Length) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 60)
			r.Opening("duplex", r.On(0, 30), ruletest.On(h.Circuit(20))).Height.Value = ruletest.In(36) - over
		}, 0, 1, 0, "210.8(A)(6), 2020: what serves the counter"),
		ruletest.Limit("past the end of a counter, in 2020", func(h *ruletest.House, over unit.Length) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 60)
			r.Opening("duplex", r.On(0, 61), ruletest.Up(42), ruletest.On(h.Circuit(20))).At.Along += over
		}, 0, 1, 0, "210.8(A)(6), 2020; a filler is an inch, common practice"),
	})
	tub := within(func(*plan.Opening, unit.Length) {})
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("in a cabinet by a sink, 2014", func(h *ruletest.House) { tub(h, 0); h.Edition = "2014" }, 1, "captaincode2014.leviton.com/node/17"),
		ruletest.Case("in a cabinet by a tub, 2017", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureTub, 0, 0, 30)
			r.Fixture(plan.FixtureCabinet, 0, 40, 30)
			r.Opening("duplex", r.On(0, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		}, 1, "210.8(A)(9), 2017: a door ends the path to a sink alone"),
		ruletest.Case("in the next wall, as far along it as a cabinet", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseUtility, 0, 0, 70, 120)
			r.Fixture(plan.FixtureSink, 0, 0, 30)
			r.Fixture(plan.FixtureCabinet, 0, 40, 30)
			r.Opening("duplex", r.On(1, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		}, 1, "210.8(A)(7): 50 in from the sink's edge"),
		ruletest.Case("behind a desk", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureSink, 0, 0, 30)
			r.Fixture(plan.FixtureDesk, 0, 40, 30)
			r.Opening("duplex", r.On(0, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		}, 1, "210.8(A)(7): a desk has no door"),
		ruletest.Case("within the cabinet of a counter, 2017", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureSink, 0, 0, 30)
			r.Fixture(plan.FixtureCounter, 0, 40, 30)
			r.Opening("duplex", r.On(0, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		}, 0, door),
	})
}

// What comes first on the way from the panel, by the cables that are drawn.
func TestOnTheWayFromThePanel(t *testing.T) {
	// A bath with a panel beside it, two receptacles and a device, whose cables are told as
	// pairs: p the panel, a and b receptacles, g the device.
	bath := func(pairs ...string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			c := h.Circuit(20)
			ids := map[byte]plan.ID{'p': h.Square(plan.UseUtility, 0, 300, 120, 120).Fixture(plan.FixturePanel, 0, 40, 15).ID}
			for i, kind := range []string{"a duplex", "b duplex", "g gfci"} {
				ids[kind[0]] = r.Opening(kind[2:], r.On(0, float64(20+30*i)), ruletest.On(c)).ID
			}
			for _, pair := range pairs {
				h.Cable(ids[pair[0]], ids[pair[1]], 12, 2, c)
			}
		}
	}
	const first = "210.8(A); what a device protects comes after it"
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("device, a, b", bath("pg", "ga", "ab"), 0, first),
		ruletest.Case("device, a, b, each cable drawn the other way", bath("ga", "ab", "pg"), 0, first),
		ruletest.Case("a, device, b", bath("pa", "ag", "gb"), 1, first),
		ruletest.Case("a, b, device", bath("pa", "ab", "bg"), 2, first),
		ruletest.Case("device, a; b by itself", bath("pg", "ga", "pb"), 1, first),
		ruletest.Case("a ring past the device", bath("pg", "ga", "ab", "pb"), 2, first+": power comes the other way as well"),
		ruletest.Case("no way to b", bath("pg", "ga"), 1, "what is not drawn is told in a note"),
		ruletest.Case("b told from the far end", bath("pg", "ga", "ba"), 0, first),
	})
}

// A device that protects is one by its yokes, or by its kind where they are not told.
func TestWhatProtectsByItself(t *testing.T) {
	of := func(kind string, devices ...string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Opening(kind, r.On(0, 40), ruletest.Up(16), ruletest.On(h.Circuit(20)), func(o *plan.Opening) {
				for _, d := range devices {
					o.Devices = append(o.Devices, plan.Device{Kind: d})
				}
			})
		}
	}
	const own = "210.8(A): protection by a device of the outlet"
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a kind with one", of("gfci"), 0, own),
		ruletest.Case("a kind with one, another put in", of("gfci", "duplex receptacle"), 1, own),
		ruletest.Case("a kind without, one put in", of("duplex", "ground-fault receptacle"), 0, own),
		ruletest.Case("the second of two", of("quad", "duplex receptacle", "ground-fault receptacle"), 0, own),
		ruletest.Case("a switch", of("switch"), 0, "210.8(A): receptacles"),
		ruletest.Case("a kind that nobody knows", of("gramophone"), 0, "nobody says that it is a receptacle"),
		ruletest.Case("one that is there", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.Existing, ruletest.On(h.Circuit(20)))
		}, 0, "what is there already is not checked"),
		ruletest.Case("behind a device that goes", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			c := h.Circuit(20)
			r.Opening("duplex", r.On(0, 40), ruletest.On(c))
			r.Opening("gfci", r.On(0, 80), ruletest.On(c), ruletest.Removed)
		}, 1, "it will not be there"),
	})
	for _, edition := range []string{"2014", "2017", "2020", "2023"} {
		want := 0
		if edition >= "2020" {
			want = 1
		}
		ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
			ruletest.Case("a range receptacle of a garage in "+edition, func(h *ruletest.House) {
				of("range")(h)
				h.Edition = edition
			}, want, "210.8(A): 125 V, 15 A and 20 A until 2017; 125 V to 250 V from 2020 on"),
		})
	}
}

// 210.12 is on circuits of 120 V up to 20 A, and their outlets and devices.
func TestWhichCircuitsOfArcFaults(t *testing.T) {
	of := func(kind string, change func(*plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening(kind, r.On(0, 40), ruletest.Up(16), ruletest.On(h.Circuit(20, change)))
		}
	}
	const said = "210.12(B): 120 V, 15 A and 20 A"
	ruletest.Try(t, &protect.ArcFault, []ruletest.Trial{
		ruletest.Case("20 A", of("duplex", func(*plan.Circuit) {}), 1, said),
		ruletest.Case("21 A", of("duplex", func(c *plan.Circuit) { c.Amps = 21 }), 0, said),
		ruletest.Case("125 V", of("duplex", func(c *plan.Circuit) { c.Volts = 125 }), 1, said),
		ruletest.Case("126 V", of("duplex", func(c *plan.Circuit) { c.Volts = 126 }), 0, said),
		ruletest.Case("a dryer's on a circuit that nobody rated", of("dryer", func(c *plan.Circuit) { c.Amps = 0 }), 0, said),
		ruletest.Case("a splice", of("junction", func(*plan.Circuit) {}), 0, "210.12(B): outlets and devices"),
		ruletest.Case("a jack", of("data", func(*plan.Circuit) {}), 0, "210.12(B): of branch circuits"),
		ruletest.Case("a kind that nobody knows", of("gramophone", func(*plan.Circuit) {}), 0, "nobody says that it is an outlet"),
		ruletest.Case("one that is there", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.Existing, ruletest.On(h.Circuit(20)))
		}, 0, "what is there already is not checked"),
		ruletest.Case("protected and 240 V, nobody says of the breaker", of("duplex", func(c *plan.Circuit) { c.Volts, c.AFCI = 240, plan.FlagUnsaid }), 0, said),
	})
}

// An old box is looked at where it is said to hold no ground, and nothing protects it.
func TestWhichOldOutlets(t *testing.T) {
	of := func(kind string, change ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			o := r.Opening(kind, r.On(0, 40), ruletest.Existing, func(o *plan.Opening) { o.Grounded = plan.AnswerNo })
			for _, c := range change {
				c(o)
			}
		}
	}
	const said = "406.4(D), from memory"
	ruletest.Try(t, &protect.OldOutlet, []ruletest.Trial{
		ruletest.Case("nobody says the circuit", of("duplex"), 1, said+"; what is not said is a note"),
		ruletest.Case("a new one", of("duplex", func(o *plan.Opening) { o.Status = plan.StatusNew }), 0, "its cable brings a ground"),
		ruletest.Case("a range's", of("range"), 0, "of 125 V, for what plugs in everywhere"),
		ruletest.Case("a switch", of("switch"), 0, "406.4: receptacles"),
		ruletest.Case("one that protects by itself", of("gfci"), 0, said),
		ruletest.Case("nobody says of the ground", of("duplex", func(o *plan.Opening) { o.Grounded = plan.Unsaid }), 0, "what is not said is no fault"),
	})
}
