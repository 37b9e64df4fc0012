package alarm_test

import (
	"testing"

	"studbay/fill/alarm"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestWhatIsToldOfAlarms(t *testing.T) {
	ruletest.Tells(t, &alarm.SmokeAlarm, []ruletest.Telling{
		ruletest.Told("none", func(h *ruletest.House) { bedroomAndHall(h) }, `
			stop, IRC R314.3: bedroom; 0 of 1
			bedroom has no smoke alarm
			Each room to sleep in needs one.
			Add a smoke alarm in bedroom:
			  now R1 smoke on bedroom ceiling 60", 60", RD1

			stop, IRC R314.3: bedroom; 0 of 1
			No smoke alarm is outside of bedroom
			Each group of bedrooms needs one outside of them, near them.
			Add a smoke alarm in hall:
			  now R1 smoke on hall ceiling 60", 174", RD1

			stop, IRC R314.3: ; 0 of 1
			Ground floor has no smoke alarm
			Each level where people live needs one, a basement too.
			Add a smoke alarm in hall:
			  now R1 smoke on hall ceiling 60", 174", RD1`, "IRC R314.3"),
		ruletest.Told("20 in from the door of a bath", func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			hall.Opening("smoke", hall.Ceiling(55, 204), ruletest.Tagged("S"))
		}, `
			warn, IRC R314.3: S in hall; 20" of 36"
			S is 1' 8" from the door of bath
			Steam sets it off: 3 ft are kept, unless no other place is left.
`, "IRC R314.3: at least 3 ft"),
		ruletest.Told("2 ft from a range", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 48), ruletest.Tagged("S"))
		}, `
			warn, IRC R314.3: S in kitchen; 24" of 72"
			S is 2' 0" from a range
			Cooking sets it off: 6 ft are kept at least, more by some technologies.`, "IRC R314.3.1"),
		ruletest.Told("over a range", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 12), ruletest.Tagged("S"))
		}, `
			warn, IRC R314.3: S in kitchen; 0" of 72"
			S is 0" from a range
			Cooking sets it off: 6 ft are kept at least, more by some technologies.`, "IRC R314.3.1"),
	})
	ruletest.Tells(t, &alarm.CarbonAlarm, []ruletest.Telling{
		ruletest.Told("something burns in the bedroom", func(h *ruletest.House) {
			bedroom, _, _ := bedroomAndHall(h)
			bedroom.Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
		}, `
			stop, IRC R315.3: bedroom; 0 of 1
			No carbon-monoxide alarm is outside of bedroom
			It is asked for since something in the house burns fuel: water heater.
			Add a smoke and carbon-monoxide alarm in hall:
			  now R1 smoke-co on hall ceiling 60", 174", RD1

			stop, IRC R315.3: bedroom; 0 of 1
			bedroom holds what burns fuel and has no carbon-monoxide alarm
			It is asked for since something in the house burns fuel: water heater.
			Add a smoke and carbon-monoxide alarm in bedroom:
			  now R1 smoke-co on bedroom ceiling 60", 60", RD1`, "IRC R315.2, R315.3"),
		ruletest.Told("a garage with a door", func(h *ruletest.House) {
			bedroomAndHall(h)
			h.Square(plan.UseGarage, 124, 124, 240, 240).Break(plan.BreakDoor, 3, 160, 36)
		}, `
			stop, IRC R315.3: bedroom; 0 of 1
			No carbon-monoxide alarm is outside of bedroom
			It is asked for since a garage is attached with a door into hall.
			Add a smoke and carbon-monoxide alarm in hall:
			  now R1 smoke-co on hall ceiling 60", 174", RD1`, "IRC R315.2.1"),
	})
}

func burning(f *plan.Fixture) { f.Fuel = "gas" }

func TestLimitsOfAlarms(t *testing.T) {
	ruletest.Edges(t, &alarm.SmokeAlarm, []ruletest.Edge{
		ruletest.Limit("3 ft from the door of a bath", func(h *ruletest.House, over unit.Length) {
			bedroom, hall, _ := bedroomAndHall(h)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			hall.Opening("smoke", hall.Ceiling(55, 188)).At.At.Y += over
		}, rule.Grain, 0, 1, "IRC R314.3"),
		ruletest.Limit("6 ft from a range", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 96)).At.At.Y -= over
		}, rule.Grain, 0, 1, "IRC R314.3.1"),
	})
}

// What counts as an alarm, as outside, as a bath with steam and as a range.
func TestWhichAlarms(t *testing.T) {
	// A bedroom with an alarm; the one outside stands as told.
	outside := func(change func(h *ruletest.House, bedroom, hall, bath *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, bath := bedroomAndHall(h)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			change(h, bedroom, hall, bath)
		}
	}
	const said = "IRC R314.3: outside each sleeping area in its vicinity; two rooms is the reading here"
	ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
		ruletest.Case("two rooms away", outside(func(h *ruletest.House, _, hall, _ *ruletest.Room) {
			next := h.Square(plan.UseDen, 124, 124, 120, 100)
			hall.Break(plan.BreakDoor, 1, 20, 30)
			next.Opening("smoke", next.Ceiling(180, 170))
		}), 0, said),
		ruletest.Case("three rooms away", outside(func(h *ruletest.House, _, hall, _ *ruletest.Room) {
			next := h.Square(plan.UseDen, 124, 124, 120, 100)
			hall.Break(plan.BreakDoor, 1, 20, 30)
			next.Break(plan.BreakDoor, 1, 20, 30)
			far := h.Square(plan.UseLiving, 248, 124, 120, 100)
			far.Opening("smoke", far.Ceiling(300, 170))
		}), 1, said),
		ruletest.Case("in a bath", outside(func(_ *ruletest.House, _, _, bath *ruletest.Room) { bath.Opening("smoke", bath.Ceiling(60, 300)) }), 1, said+"; a bath is none"),
		ruletest.Case("past a bath", outside(func(h *ruletest.House, bedroom, _, _ *ruletest.Room) {
			bath := h.Square(plan.UseBath, 124, 0, 60, 100)
			bedroom.Break(plan.BreakDoor, 1, 20, 30)
			bath.Break(plan.BreakDoor, 1, 20, 30)
			den := h.Square(plan.UseDen, 188, 0, 60, 100)
			den.Opening("smoke", den.Ceiling(220, 50))
		}), 1, said+"; one does not go through a bath"),
		ruletest.Case("in another bedroom", outside(func(h *ruletest.House, bedroom, _, _ *ruletest.Room) {
			next := h.Square(plan.UseBedroom, 124, 0, 60, 100)
			bedroom.Break(plan.BreakDoor, 1, 20, 30)
			next.Opening("smoke", next.Ceiling(150, 50))
		}), 2, said+"; neither has one outside"),
		ruletest.Case("one that goes", outside(func(_ *ruletest.House, _, hall, _ *ruletest.Room) {
			hall.Opening("smoke", hall.Ceiling(55, 150), ruletest.Removed)
		}), 1, "it will not be there"),
		ruletest.Case("a door to where nothing is drawn", outside(func(_ *ruletest.House, bedroom, hall, _ *ruletest.Room) {
			bedroom.Break(plan.BreakDoor, 0, 20, 30)
			hall.Opening("smoke", hall.Ceiling(55, 150))
		}), 0, said),
		ruletest.Case("near a bath without tub and shower", func(h *ruletest.House) {
			hall := h.Square(plan.UseHall, 0, 124, 120, 100)
			h.Square(plan.UseBath, 0, 228, 120, 96)
			hall.Break(plan.BreakDoor, 2, 50, 30)
			hall.Opening("smoke", hall.Ceiling(55, 220))
		}, 0, "IRC R314.3: a bathroom with a tub or shower"),
		ruletest.Case("near a bath with a shower and a toilet", func(h *ruletest.House) {
			hall := h.Square(plan.UseHall, 0, 124, 120, 100)
			bath := h.Square(plan.UseBath, 0, 228, 120, 96)
			bath.Fixture(plan.FixtureShower, 2, 0, 36)
			bath.Fixture(plan.FixtureToilet, 2, 60, 20)
			hall.Break(plan.BreakDoor, 2, 50, 30)
			hall.Opening("smoke", hall.Ceiling(55, 220))
		}, 1, "IRC R314.3"),
		ruletest.Case("near a laundry with a tub", func(h *ruletest.House) {
			hall := h.Square(plan.UseHall, 0, 124, 120, 100)
			h.Square(plan.UseLaundry, 0, 228, 120, 96).Fixture(plan.FixtureTub, 2, 0, 60)
			hall.Break(plan.BreakDoor, 2, 50, 30)
			hall.Opening("smoke", hall.Ceiling(55, 220))
		}, 0, "IRC R314.3: a bathroom"),
		ruletest.Case("one that is there, near a range", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 48), ruletest.Existing)
		}, 0, "it is where it is"),
		ruletest.Case("near a range in the next room", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 1, 60, 30)
			next := h.Square(plan.UseDen, 164, 0, 160, 160)
			next.Opening("smoke", next.Ceiling(170, 75))
		}, 0, "IRC R314.3.1 as read here: in its room"),
		ruletest.Case("near a refrigerator", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRefrigerator, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 48))
		}, 0, "IRC R314.3.1: cooking appliances"),
	})
	for _, u := range plan.Uses {
		want := 1
		switch u {
		case plan.UseOutdoors, plan.UseAttic, plan.UseGarage, plan.UseStorage, plan.UseUnknown:
			want = 0
		case plan.UseBedroom:
			want = 3 // the room and outside, too
		}
		ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
			ruletest.Case("a level of one room for "+string(u), func(h *ruletest.House) { h.Square(u, 0, 0, 120, 120) }, want, "IRC R314.3: each storey, basements too, attics and crawl spaces not"),
		})
	}
}

// What makes carbon-monoxide alarms necessary, and where.
func TestWhichCarbonAlarms(t *testing.T) {
	with := func(change func(h *ruletest.House, bedroom, hall *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			change(h, bedroom, hall)
		}
	}
	ruletest.Try(t, &alarm.CarbonAlarm, []ruletest.Trial{
		ruletest.Case("a smoke alarm alone outside", with(func(_ *ruletest.House, bedroom, hall *ruletest.Room) {
			hall.Opening("smoke", hall.Ceiling(55, 150))
			hall.Fixture(plan.FixtureWaterHeater, 1, 0, 22, burning)
		}), 1, "IRC R315.3"),
		ruletest.Case("burning in the bedroom, alarms in both", with(func(_ *ruletest.House, bedroom, hall *ruletest.Room) {
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			bedroom.Opening("smoke-co", bedroom.Ceiling(60, 60))
			bedroom.Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
		}), 0, "IRC R315.3"),
		ruletest.Case("burning in the bedroom before what does not, an alarm outside", with(func(_ *ruletest.House, bedroom, hall *ruletest.Room) {
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			bedroom.Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
			bedroom.Fixture(plan.FixtureBed, 0, 40, 60)
		}), 1, "IRC R315.3: in a bedroom that holds such an appliance"),
		ruletest.Case("burning on what stands in the bedroom", with(func(_ *ruletest.House, bedroom, hall *ruletest.Room) {
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			c := bedroom.Fixture(plan.FixtureCounter, 0, 40, 60)
			bedroom.InTop(c, plan.FixtureRange, 30, 12, 20, 20).Fuel = "gas"
		}), 1, "IRC R315.3"),
		ruletest.Case("a garage with a door to the outdoors", with(func(h *ruletest.House, _, _ *ruletest.Room) {
			h.Square(plan.UseGarage, 124, 124, 240, 240).Break(plan.BreakDoor, 1, 100, 36)
			h.Square(plan.UseOutdoors, 368, 124, 240, 240)
		}), 0, "IRC R315.2.1: an opening into the house"),
		ruletest.Case("a garage with a door to another", with(func(h *ruletest.House, _, _ *ruletest.Room) {
			h.Square(plan.UseGarage, 124, 124, 240, 240).Break(plan.BreakDoor, 1, 100, 36)
			h.Square(plan.UseGarage, 368, 124, 240, 240)
		}), 0, "IRC R315.2.1"),
		ruletest.Case("a garage with a door to where nothing is drawn", with(func(h *ruletest.House, _, _ *ruletest.Room) {
			h.Square(plan.UseGarage, 124, 124, 240, 240).Break(plan.BreakDoor, 1, 100, 36)
		}), 0, "IRC R315.2.1"),
		ruletest.Case("a shed with a door into the house", with(func(h *ruletest.House, _, _ *ruletest.Room) {
			h.Square(plan.UseStorage, 124, 124, 240, 240).Break(plan.BreakDoor, 3, 160, 36)
		}), 0, "IRC R315.2.1: garages"),
		ruletest.Case("burning on the level above", func(h *ruletest.House) {
			bedroomAndHall(h)
			h.RoomOn(h.Level("Upper"), plan.UseUtility, 0, 0, 120, 0, 120, 120, 0, 120).Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
		}, 1, "IRC R315.2: in the dwelling"),
	})
}
