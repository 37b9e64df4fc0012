package alarm_test

import (
	"testing"

	"studbay/fill/alarm"
	"studbay/fill/ruletest"
	"studbay/plan"
)

const sixteenth = 1.0 / 16

// bedroomAndHall lie one below the other with a door between; the bath lies beyond the
// hall.
func bedroomAndHall(h *ruletest.House) (bedroom, hall, bath *ruletest.Room) {
	bedroom = h.Square(plan.UseBedroom, 0, 0, 120, 120)
	hall = h.Square(plan.UseHall, 0, 124, 120, 100)
	bath = h.Square(plan.UseBath, 0, 228, 120, 96)
	bedroom.Break(plan.BreakDoor, 2, 20, 30)
	hall.Break(plan.BreakDoor, 2, 50, 30)
	bath.Fixture(plan.FixtureTub, 2, 0, 60)
	return bedroom, hall, bath
}

func TestSmokeAlarm(t *testing.T) {
	with := func(inBedroom, inHall bool, hallY float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			if inBedroom {
				bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			}
			if inHall {
				hall.Opening("smoke-co", hall.Ceiling(55, hallY))
			}
		}
	}
	ruletest.Try(t, &alarm.SmokeAlarm, []ruletest.Trial{
		ruletest.Case("in the bedroom and outside", with(true, true, 150), 0, "IRC R314.3"),
		ruletest.Case("none outside", with(true, false, 0), 1, "IRC R314.3: outside each sleeping area"),
		ruletest.Case("none in the bedroom", with(false, true, 150), 1, "IRC R314.3: in each sleeping room"),
		ruletest.Case("none at all: room, outside and level", with(false, false, 0), 3, "IRC R314.3: each storey too"),
		ruletest.Case("3 ft from the door of a bath", with(true, true, 224-36), 0, "IRC R314.3: at least 3 ft"),
		ruletest.Case("a sixteenth nearer", with(true, true, 224-36+sixteenth), 1, "IRC R314.3"),
		ruletest.Case("6 ft from a range", func(h *ruletest.House) { kitchen(h, 72) }, 0, "IRC R314.3.1: photoelectric 6 ft"),
		ruletest.Case("a sixteenth nearer to a range", func(h *ruletest.House) { kitchen(h, 72-sixteenth) }, 1, "IRC R314.3.1"),
	})
}

// kitchen has an alarm so far before the front of a range.
func kitchen(h *ruletest.House, away float64) {
	r := h.Square(plan.UseKitchen, 0, 0, 160, 160)
	r.Fixture(plan.FixtureRange, 0, 60, 30)
	r.Opening("smoke", r.Ceiling(75, 24+away))
}

func TestCarbonAlarm(t *testing.T) {
	house := func(fuel, door bool, kind string) func(*ruletest.House) {
		return func(h *ruletest.House) {
			bedroom, hall, _ := bedroomAndHall(h)
			bedroom.Opening("smoke", bedroom.Ceiling(60, 60))
			hall.Opening(kind, hall.Ceiling(55, 150))
			garage := h.Square(plan.UseGarage, 124, 124, 240, 240)
			if door {
				garage.Break(plan.BreakDoor, 3, 160, 36)
			}
			if fuel {
				garage.Fixture(plan.FixtureWaterHeater, 1, 0, 22, func(f *plan.Fixture) { f.Fuel = "gas" })
			}
		}
	}
	ruletest.Try(t, &alarm.CarbonAlarm, []ruletest.Trial{
		ruletest.Case("nothing burns, no door to the garage", house(false, false, "smoke"), 0, "IRC R315.2"),
		ruletest.Case("something burns", house(true, false, "smoke"), 1, "IRC R315.3: outside each sleeping area"),
		ruletest.Case("something burns, alarm outside", house(true, false, "smoke-co"), 0, "IRC R315.3"),
		ruletest.Case("a door from the garage", house(false, true, "smoke"), 1, "IRC R315.2.1: an attached garage with an opening into the house"),
		ruletest.Case("a door from the garage, alarm outside", house(false, true, "smoke-co"), 0, "IRC R315.3"),
	})
}
