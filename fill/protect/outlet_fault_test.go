package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// feedBy has the feed of equipment in a wall of a dining room, before an appliance there.
func feedBy(edition string, kind plan.FixtureKind, fuel string) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseDining, 0, 0, 240, 120)
		r.Fixture(kind, 0, 60, 30).Fuel = fuel
		r.Opening("equipment", r.On(0, 70), ruletest.On(h.Circuit(40)))
	}
}

// dishwasher stands in a dining room, far from its receptacle.
func dishwasher(edition string, more ...func(*plan.Circuit)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseDining, 0, 0, 240, 120)
		r.Fixture(plan.FixtureDishwasher, 0, 100, 24)
		r.Opening("dishwasher", r.On(0, 40), ruletest.On(h.Circuit(20, more...)))
	}
}

// outdoors has an outlet outdoors on a circuit of so many amperes.
func outdoors(edition, kind string, amps int, more ...func(*plan.Circuit)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(plan.UseOutdoors, 0, 0, 240, 120)
		r.Opening(kind, r.On(0, 70), ruletest.On(h.Circuit(amps, more...)))
	}
}

// TestOutletsOfAppliances: of 2014 and 2017 dishwashers (electricallicenserenewal.com, section
// 19), of 2020 too unless they have it themselves (section 810), of 2023 electric ranges and
// dryers beside them (eaton.com, 210.8(D) of 2023), whether by a receptacle or without.
func TestOutletsOfAppliances(t *testing.T) {
	const dining = plan.UseDining
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a dishwasher, 2014", dishwasher("2014"), 1, "210.8(D), 2014"),
		ruletest.Case("a dishwasher, 2017", dishwasher("2017"), 1, "210.8(D), 2017"),
		ruletest.Case("a dishwasher, 2020", dishwasher("2020"), 1, "210.8(D), 2020"),
		ruletest.Case("a dishwasher, 2023", dishwasher("2023"), 1, "210.8(D)(7), 2023"),
		ruletest.Case("a dishwasher, its breaker", dishwasher("2023", ground), 0, "210.8(D)"),
		ruletest.Case("of a disposer alone, 2023", onCircuit("2023", dining, "dishwasher"), 0, "210.8(D) names none: no dishwasher is drawn"),
		ruletest.Case("a range, 2020", onCircuit("2020", dining, "range"), 0, "422.5(A), 2020 names none"),
		ruletest.Case("a range, 2023", onCircuit("2023", dining, "range"), 1, "210.8(D)(8), 2023"),
		ruletest.Case("a dryer, 2020", onCircuit("2020", plan.UseHall, "dryer"), 0, "422.5(A), 2020 names none"),
		ruletest.Case("a dryer, 2023", onCircuit("2023", plan.UseHall, "dryer"), 1, "210.8(D)(11), 2023"),
		ruletest.Case("a refrigerator, 2023", onCircuit("2023", dining, "refrigerator"), 0, "210.8(D) names none"),
		ruletest.Case("the feed of a range, 2023", feedBy("2023", plan.FixtureRange, ""), 1, "210.8(D)(8), 2023: hard-wired too"),
		ruletest.Case("the feed of a range, 2020", feedBy("2020", plan.FixtureRange, ""), 0, "422.5(A), 2020 names none"),
		ruletest.Case("the feed of a dishwasher, 2014", feedBy("2014", plan.FixtureDishwasher, ""), 1, "210.8(D), 2014: outlets"),
		ruletest.Case("a feed at a gas range, 2023", feedBy("2023", plan.FixtureRange, "gas"), 0, "210.8(D)(8): electric ranges"),
		ruletest.Case("a feed at a water heater, 2023", feedBy("2023", plan.FixtureWaterHeater, ""), 0, "210.8(D) names none"),
		ruletest.Case("a feed at nothing, 2023", onCircuit("2023", dining, "equipment"), 0, "nobody says what it feeds"),
	})
	ruletest.Edges(t, &protect.GroundFault, []ruletest.Edge{
		ruletest.Limit("1 in beside a range", func(h *ruletest.House, over unit.Length) {
			r := h.Square(dining, 0, 0, 240, 120)
			r.Fixture(plan.FixtureRange, 0, 60, 30)
			r.Opening("equipment", r.On(0, 91), ruletest.On(h.Circuit(40))).At.Along += over
		}, 0, 1, 0, "what stands before it"),
	})
}

// TestOutletsOutdoors: 210.8(F) from 2020 on, up to 50 A and never of lights (eaton.com,
// 210.8(F) of 2023; electricallicenserenewal.com, section 812).
func TestOutletsOutdoors(t *testing.T) {
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a feed, 2017", outdoors("2017", "equipment", 30), 0, "210.8(F) began with 2020"),
		ruletest.Case("a feed, 2020", outdoors("2020", "equipment", 30), 1, "210.8(F), 2020"),
		ruletest.Case("a feed of 50 A", outdoors("2023", "equipment", 50), 1, "210.8(F): 50 A or less"),
		ruletest.Case("a feed of 60 A", outdoors("2023", "equipment", 60), 0, "210.8(F): 50 A or less"),
		ruletest.Case("a feed, its breaker", outdoors("2023", "equipment", 30, ground), 0, "210.8(F)"),
		ruletest.Case("a fan", outdoors("2023", "fan-light", 15), 1, "210.8(F): argued, told as a question"),
		ruletest.Case("a light", outdoors("2023", "porch-light", 15), 0, "210.8(F), exception: lighting outlets"),
		ruletest.Case("a feed indoors", onCircuit("2023", plan.UseBedroom, "equipment"), 0, "210.8(F): outdoor outlets"),
	})
}

// TestHowOutletsAreTold: a fault where the section leaves no way out, a question where it
// does or where nobody says what the breaker is, each by its own section.
func TestHowOutletsAreTold(t *testing.T) {
	for _, tt := range []struct {
		name     string
		make     func(*ruletest.House)
		severity rule.Severity
		isOpen   bool
		section  string
	}{
		{"a dishwasher, 2017", dishwasher("2017"), rule.Stop, false, "NEC 2017 210.8(D)"},
		{"a dishwasher, 2020", dishwasher("2020"), rule.Note, true, "NEC 2020 210.8(D)"},
		{"a dishwasher, 2023", dishwasher("2023"), rule.Stop, false, "NEC 2023 210.8(D)"},
		{"a breaker that nobody knows", dishwasher("2023", unsaid), rule.Note, true, "NEC 2023 210.8(D)"},
		{"a feed outdoors", outdoors("2023", "equipment", 30), rule.Note, true, "NEC 2023 210.8(F)"},
		{"in a bath it is the room's", onCircuit("2023", plan.UseBath, "dryer"), rule.Stop, false, "NEC 2023 210.8(A)"},
	} {
		h := ruletest.New(t)
		tt.make(h)
		found := h.Found(&protect.GroundFault)
		if len(found) != 1 || found[0].Severity != tt.severity || found[0].IsOpen != tt.isOpen || found[0].Section != tt.section {
			t.Errorf("%s: %+v", tt.name, found)
		}
	}
}
