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

func TestHowFarFromCookingByHowAnAlarmSenses(t *testing.T) {
	var edges []ruletest.Edge
	for _, tt := range []struct {
		senses plan.Sensing
		inches float64
	}{{plan.SensesUnsaid, 72}, {plan.SensesLight, 72}, {plan.SensesIons, 240}, {plan.SensesIonsQuiet, 120}} {
		edges = append(edges, ruletest.Limit("from a range: "+string(tt.senses), func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 400)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			o := r.Opening("smoke", r.Ceiling(75, 24+tt.inches))
			o.Senses, o.At.At.Y = tt.senses, o.At.At.Y-over
		}, rule.Grain, 0, 1, "IRC R314.3.1: ionization 20 ft, with a silencing switch 10 ft, photoelectric 6 ft"))
	}
	ruletest.Edges(t, &alarm.SmokeAlarm, edges)
	at := func(senses plan.Sensing) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("smoke", r.Ceiling(75, 48), ruletest.Tagged("S")).Senses = senses
		}
	}
	ruletest.Tells(t, &alarm.SmokeAlarm, []ruletest.Telling{
		ruletest.Told("photoelectric", at(plan.SensesLight), `
			warn, IRC R314.3: S in kitchen; 24" of 72"
			S is 2' 0" from a range
			Cooking sets it off: a photoelectric alarm is kept 6 ft away at least.`, "IRC R314.3.1"),
		ruletest.Told("ionization", at(plan.SensesIons), `
			warn, IRC R314.3: S in kitchen; 24" of 240"
			S is 2' 0" from a range
			Cooking sets it off: an ionization alarm is kept 20 ft away at least, a photoelectric one 6 ft.`, "IRC R314.3.1"),
		ruletest.Told("ionization, silencing", at(plan.SensesIonsQuiet), `
			warn, IRC R314.3: S in kitchen; 24" of 120"
			S is 2' 0" from a range
			Cooking sets it off: an ionization alarm with a silencing switch is kept 10 ft away at least, a photoelectric one 6 ft.`, "IRC R314.3.1"),
	})
}

func TestAlarmsThatSoundAlone(t *testing.T) {
	house := func(joined plan.Answer, more ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60), append(more, ruletest.Tagged("S"))...).Joined = joined
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
		}
	}
	const why = "\n\t\t\tWhere a house has more than one, all sound as soon as one does, by a wire between them or by listed radio. Where an old house is altered without opening walls, this may be let off."
	ruletest.Tells(t, &alarm.SmokeAlarm, []ruletest.Telling{
		ruletest.Told("not said", house(plan.Unsaid), "", "what a file does not say is no fault"),
		ruletest.Told("with the others", house(plan.AnswerYes), "", "IRC R314.4"),
		ruletest.Told("alone", house(plan.AnswerNo), `
			stop, IRC R314.4: S in bedroom
			S does not sound with the other smoke alarms`+why, "IRC R314.4: where more than one is required they are interconnected"),
		ruletest.Told("alone, there already", house(plan.AnswerNo, ruletest.Existing), `
			note, IRC R314.4: S in bedroom
			S does not sound with the other smoke alarms`+why, "IRC R314.4, from memory: let off in existing areas"),
	})
	ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
		ruletest.Case("the only one", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Opening("smoke", r.Ceiling(75, 120)).Joined = plan.AnswerNo
		}, 0, "IRC R314.4: more than one"),
		ruletest.Case("the other is to be removed", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
			r.Opening("smoke", r.Ceiling(75, 120)).Joined = plan.AnswerNo
			r.Opening("smoke", r.Ceiling(40, 120), ruletest.Removed)
		}, 0, "IRC R314.4: more than one"),
	})
}

func TestWhereFuelBurnsByABedroom(t *testing.T) {
	// All have an alarm outside of the bedroom: what is left is the bedroom's own.
	house := func(say func(bedroom, bath *ruletest.Room, hearth *plan.Break), inBedroom ...string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			own := h.Square(plan.UseBath, 124, 0, 80, 80)
			bedroom.Break(plan.BreakDoor, 1, 20, 30)
			hearth := bedroom.Break(plan.BreakFireplace, 0, 30, 40)
			hall.Break(plan.BreakFireplace, 3, 30, 40)
			for _, kind := range inBedroom {
				bedroom.Opening(kind, bedroom.Ceiling(60, 60))
			}
			say(bedroom, own, hearth)
		}
	}
	bath := func(_, bath *ruletest.Room, _ *plan.Break) { bath.Fixture(plan.FixtureWaterHeater, 1, 0, 22, burning) }
	hearth := func(_, _ *ruletest.Room, hearth *plan.Break) { hearth.Fuel = "wood" }
	ruletest.Try(t, &alarm.CarbonAlarm, []ruletest.Trial{
		ruletest.Case("a fireplace of which nobody says so", house(func(_, _ *ruletest.Room, _ *plan.Break) {}), 0, "nothing burns fuel unless it is said"),
		ruletest.Case("a fireplace, an alarm within", house(hearth, "smoke-co"), 0, "IRC R315.3"),
		ruletest.Case("in its bath, an alarm within", house(bath, "smoke-co"), 0, "IRC R315.3"),
		ruletest.Case("in its bath, a smoke alarm alone within", house(bath, "smoke"), 1, "IRC R315.3: of carbon monoxide"),
		ruletest.Case("in the bath of the hall", func(h *ruletest.House) {
			_, hall, bath := bedroomAndHall(h)
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			bath.Fixture(plan.FixtureWaterHeater, 1, 0, 22, burning)
		}, 0, "IRC R315.3: in the bedroom or its attached bath"),
		ruletest.Case("a fireplace of the hall", func(h *ruletest.House) {
			_, hall, _ := bedroomAndHall(h)
			hall.Opening("smoke-co", hall.Ceiling(55, 150))
			hall.Break(plan.BreakFireplace, 3, 30, 40).Fuel = "gas"
		}, 0, "IRC R315.3: in the bedroom"),
	})
	ruletest.Tells(t, &alarm.CarbonAlarm, []ruletest.Telling{
		ruletest.Told("a fireplace", house(hearth), `
			stop, IRC R315.3: bedroom; 0 of 1
			bedroom holds what burns fuel and has no carbon-monoxide alarm
			It is asked for since something in the house burns fuel: fireplace.
			Add a smoke and carbon-monoxide alarm in bedroom:
			  now R1 smoke-co on bedroom ceiling 60", 60", RD1`, "IRC R315.3: a fuel-burning appliance in the bedroom"),
		ruletest.Told("in its bath", house(bath), `
			stop, IRC R315.3: bedroom; 0 of 1
			Something burns fuel in bath, the bath of bedroom, which has no carbon-monoxide alarm
			It is asked for since something in the house burns fuel: water heater.
			Add a smoke and carbon-monoxide alarm in bedroom:
			  now R1 smoke-co on bedroom ceiling 60", 60", RD1`, "IRC R315.3: or in its attached bathroom"),
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

// longHall is a bedroom with an alarm whose door opens, 85 in from the left, at the end of a hall
// 400 in long, that has an alarm so far down it.
func longHall(h *ruletest.House, kind string, down float64) (hall *ruletest.Room, outside *plan.Opening) {
	bedroom := h.Square(plan.UseBedroom, 0, 0, 120, 120)
	hall = h.Square(plan.UseHall, 0, 124, 120, 400)
	bedroom.Break(plan.BreakDoor, 2, 20, 30)
	bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
	return hall, hall.Opening(kind, hall.Ceiling(85, 124+down))
}

// Within 21 ft of a bedroom's door as one walks, 4 in of it through the wall.
func TestHowFarOutsideAlarmsAre(t *testing.T) {
	const said = "NFPA 72: within 21 ft of any door to a sleeping room, along a path of travel"
	ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
		ruletest.Case("21 ft", func(h *ruletest.House) { longHall(h, "smoke", 248) }, 0, said),
		ruletest.Case("a sixteenth more", func(h *ruletest.House) { longHall(h, "smoke", 248+sixteenth) }, 1, said),
		ruletest.Case("one near and one far", func(h *ruletest.House) {
			hall, _ := longHall(h, "smoke", 300)
			hall.Opening("smoke", hall.Ceiling(85, 150))
		}, 0, said),
		ruletest.Case("near by a second door", func(h *ruletest.House) {
			longHall(h, "smoke", 300)
			bedroom := h.Rooms()[0]
			den := h.Square(plan.UseDen, 124, 0, 100, 120)
			bedroom.Break(plan.BreakDoor, 1, 20, 30)
			den.Opening("smoke", den.Ceiling(170, 60))
		}, 0, said),
		ruletest.Case("near through the wall, far round the corner", func(h *ruletest.House) {
			bedroom := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			bedroom.Break(plan.BreakDoor, 2, 20, 30)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			hall := h.Room(plan.UseHall, 0, 124, 120, 124, 120, 300, 160, 300, 160, 124, 280, 124, 280, 400, 0, 400)
			hall.Opening("smoke", hall.Ceiling(180, 140))
		}, 1, said+": 4 in, then 85, 176 in to the corner, 40 in along it and 160 in back"),
		ruletest.Case("in a hall of 180 ft² behind the door, past a passage 21 ft away", func(h *ruletest.House) {
			hall, far := longHall(h, "smoke", 248)
			hall.Sides[2].Start.Y, hall.Sides[3].Start.Y = ruletest.In(324), ruletest.In(324)
			den := h.Square(plan.UseDen, 0, 328, 120, 120)
			hall.Break(plan.BreakPassage, 2, 20, 30)
			far.At = den.Ceiling(85, 372)
		}, 0, said),
		ruletest.Case("a sixteenth more past the passage", func(h *ruletest.House) {
			hall, far := longHall(h, "smoke", 248)
			hall.Sides[2].Start.Y, hall.Sides[3].Start.Y = ruletest.In(324), ruletest.In(324)
			den := h.Square(plan.UseDen, 0, 328, 120, 120)
			hall.Break(plan.BreakPassage, 2, 20, 30)
			far.At = den.Ceiling(85, 372+sixteenth)
		}, 1, said),
	})
	ruletest.Tells(t, &alarm.SmokeAlarm, []ruletest.Telling{
		ruletest.Told("25 ft away", func(h *ruletest.House) { longHall(h, "smoke", 296) }, `
			stop, IRC R314.1, NFPA 72: bedroom; 300" of 252"
			The nearest smoke alarm outside of bedroom is 25' 0" from its door
			As one walks it is within 21 ft, and behind no further door.
			Add a smoke alarm in hall:
			  now R1 smoke on hall ceiling 60", 324", RD1`, said),
		ruletest.Told("a door to where nothing is drawn", func(h *ruletest.House) {
			bedroom := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			bedroom.Break(plan.BreakDoor, 2, 20, 30)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
		}, `
			note, open, IRC R314.3: bedroom; 0 of 1
			What is outside of bedroom is not drawn: a smoke alarm belongs there
			Each group of bedrooms needs one outside of them, near them.`, "what a file does not say is no fault"),
	})
	// Carbon-monoxide alarms: in the vicinity, without a figure (IRC R315.3).
	ruletest.Try(t, &alarm.CarbonAlarm, []ruletest.Trial{
		ruletest.Case("25 ft away", func(h *ruletest.House) {
			hall, _ := longHall(h, "smoke-co", 296)
			hall.Fixture(plan.FixtureWaterHeater, 1, 0, 22, burning)
		}, 0, "IRC R315.3: outside of each sleeping area; how far is left open"),
		ruletest.Case("past a further door", func(h *ruletest.House) {
			hall, _ := longHall(h, "smoke", 100)
			hall.Fixture(plan.FixtureWaterHeater, 1, 0, 22, burning)
			den := h.Square(plan.UseDen, 124, 124, 120, 100)
			hall.Break(plan.BreakDoor, 1, 40, 30)
			den.Opening("smoke-co", den.Ceiling(180, 170))
		}, 1, "IRC R315.3: outside, not behind another door"),
	})
	ruletest.Tells(t, &alarm.CarbonAlarm, []ruletest.Telling{
		ruletest.Told("a door to where nothing is drawn", func(h *ruletest.House) {
			bedroom := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			bedroom.Break(plan.BreakDoor, 2, 20, 30)
			h.Square(plan.UseUtility, 200, 0, 60, 60).Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
		}, `
			note, open, IRC R315.3: bedroom; 0 of 1
			What is outside of bedroom is not drawn: a carbon-monoxide alarm belongs there
			It is asked for since something in the house burns fuel: water heater.`, "what a file does not say is no fault"),
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
	const said = "IRC R314.3: outside each sleeping area in its vicinity; NFPA 72: before any door that parts it from other rooms"
	beyond := func(kind plan.BreakKind) func(*ruletest.House) {
		return outside(func(h *ruletest.House, _, hall, _ *ruletest.Room) {
			next := h.Square(plan.UseDen, 124, 124, 120, 100)
			hall.Break(kind, 1, 20, 30, func(b *plan.Break) {
				if kind == plan.BreakSlider {
					b.Panels = []plan.Panel{plan.PanelFixed, plan.PanelMoving}
				}
			})
			next.Opening("smoke", next.Ceiling(180, 170))
		})
	}
	ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
		ruletest.Case("past a cased opening", beyond(plan.BreakPassage), 0, said),
		ruletest.Case("past a further door", beyond(plan.BreakDoor), 1, said),
		ruletest.Case("past a slider", beyond(plan.BreakSlider), 1, said),
		ruletest.Case("past two open sides", outside(func(h *ruletest.House, _, hall, _ *ruletest.Room) {
			next, far := h.Square(plan.UseDen, 120, 124, 60, 100), h.Square(plan.UseLiving, 180, 124, 120, 100)
			hall.Sides[1].Kind, next.Sides[3].Kind = plan.SideOpen, plan.SideOpen
			next.Sides[1].Kind, far.Sides[3].Kind = plan.SideOpen, plan.SideOpen
			far.Opening("smoke", far.Ceiling(240, 170))
		}), 0, said),
		ruletest.Case("past an open side and a door", outside(func(h *ruletest.House, _, hall, _ *ruletest.Room) {
			next, far := h.Square(plan.UseDen, 120, 124, 60, 100), h.Square(plan.UseLiving, 184, 124, 120, 100)
			hall.Sides[1].Kind, next.Sides[3].Kind = plan.SideOpen, plan.SideOpen
			next.Break(plan.BreakDoor, 1, 20, 30)
			far.Opening("smoke", far.Ceiling(240, 170))
		}), 1, said),
		ruletest.Case("on the level, but behind no door of the bedroom", outside(func(h *ruletest.House, _, _, _ *ruletest.Room) {
			den := h.Square(plan.UseDen, 300, 0, 120, 100)
			den.Opening("smoke", den.Ceiling(360, 50))
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
