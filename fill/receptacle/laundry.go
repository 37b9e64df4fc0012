package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Laundry looks for laundry areas without a receptacle near the washer.
var Laundry = rule.Rule{
	ID:     "laundry-receptacle",
	Title:  words.New("rule.laundry-receptacle.title", "Receptacle in each laundry area"),
	Figure: "laundry-receptacle",
	Doc:    words.New("rule.laundry-receptacle.doc", `A room for laundry, and any room with a washer, has a receptacle of 125 V; where a washer is drawn, within 6 ft of it (210.50(C)), measured in the plan from the receptacle's center to the machine's edge; one that is said to be for another machine does not count. Not checked: the exceptions for multifamily buildings, and dryers, whose receptacles are of another kind.`),
	Leaves: rule.IfKnown, // any room may hold a washer
	Room:   checkLaundry,
}

func checkLaundry(v index.RoomView, fig *code.Figures) []rule.Finding {
	washers := ofKind(&v, plan.FixtureWasher)
	if v.Room.Use != plan.UseLaundry && len(washers) == 0 {
		return nil
	}
	all := atMost(notForOther(outlets(&v), plan.ApplianceWasher), fig.Spacing.ReceptacleMaxHeight)
	f := rule.Finding{
		Severity: rule.Stop, Limit: rule.CountOf(1), Measured: rule.CountOf(len(all)),
		Message: words.New("rule.laundry-receptacle.missed", "{0} has no receptacle for laundry", v.Room.Name),
		Why:     words.New("rule.laundry-receptacle.why", "A laundry area needs at least one receptacle of 125 V."),
	}
	cost := func(place) (unit.Length, bool) { return 0, true }
	if len(washers) > 0 {
		washer, away, any := farthest(washers, all)
		if any && away <= fig.Outlets.ApplianceReach+rule.Grain {
			return nil
		}
		if any { // the area has one: what is missed is its reach
			f.Section = fig.Title + " " + fig.Section("appliance-reach")
			f.Limit, f.Measured = rule.LengthOf(fig.Outlets.ApplianceReach), rule.LengthOf(away)
			f.Message = words.New("rule.laundry-receptacle.far", "The washer in {0} has no receptacle within reach", v.Room.Name)
			f.Why = words.New("rule.laundry-receptacle.far.why", "A receptacle for an appliance stands within {0} of it.", fig.Limit("appliance-reach"))
		}
		cost = func(p place) (unit.Length, bool) {
			d := washer.Footprint.Distance(p.side.Frame.Point(p.along, 0))
			return d, d <= fig.Outlets.ApplianceReach
		}
	} else if len(all) > 0 {
		return nil
	}
	f.Remedies = addNear(&v, "washer", fig, words.New("rule.laundry-receptacle.remedy", "Add a receptacle for the washer"), cost)
	return []rule.Finding{f}
}

// farthest returns which of the machines the receptacles leave the farthest from the one
// nearest to it, and how far that is; it reports false where there is none.
func farthest(machines []index.FixtureView, all []outlet) (worst index.FixtureView, away unit.Length, any bool) {
	for i, m := range machines {
		near, has := unit.Length(0), false
		for _, o := range all {
			if d := m.Footprint.Distance(o.at); !has || d < near {
				near, has = d, true
			}
		}
		if i == 0 || near > away {
			worst, away, any = m, near, has
		}
	}
	return worst, away, any
}

// ofKind returns the fixtures of a kind in a room.
func ofKind(v *index.RoomView, kind plan.FixtureKind) (all []index.FixtureView) {
	v.EachFixture(func(f index.FixtureView) {
		if f.Fixture.Kind == kind {
			all = append(all, f)
		}
	})
	return all
}
