package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// BasinReach looks for basins without a receptacle near enough.
var BasinReach = rule.Rule{
	ID:     "basin-reach",
	Title:  words.New("rule.basin-reach.title", "Receptacle within reach of each basin"),
	Figure: "basin-reach",
	Doc:    words.New("rule.basin-reach.doc", `In a bathroom a receptacle stands within 3 ft of the outside edge of each basin, in a wall beside it or in the counter or cabinet, and not more than 12 in below the top of the basin or higher than 5-1/2 ft. One between two basins serves both where it is near enough to each. Measured in the plan, from the receptacle's center to the nearest edge of the basin; argued, and read so here: it may reach past another basin. Not checked: walls that part the room between the two.`),
	Leaves: rule.OnlyIn(plan.UseBath),
	Room:   checkBasinReach,
}

func checkBasinReach(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if v.Room.Use != plan.UseBath {
		return nil
	}
	all := atMost(outlets(&v), fig.Spacing.ReceptacleMaxHeight)
	v.EachFixture(func(f index.FixtureView) {
		if f.Fixture.Kind != plan.FixtureBasin {
			return
		}
		away, any := nearest(all, f, fig)
		if any && away <= fig.Outlets.BasinReach+rule.Grain {
			return
		}
		found = append(found, missedBasin(&v, f, away, any, fig))
	})
	return found
}

// nearest returns how far the nearest receptacle is from a basin that is not too low for
// it.
func nearest(all []outlet, f index.FixtureView, fig *code.Figures) (away unit.Length, any bool) {
	for _, o := range all {
		if o.up < f.Fixture.Top()-fig.Outlets.BasinBelow {
			continue
		}
		if d := f.Footprint.Distance(o.at); !any || d < away {
			away, any = d, true
		}
	}
	return away, any
}

func missedBasin(v *index.RoomView, f index.FixtureView, away unit.Length, any bool, fig *code.Figures) rule.Finding {
	reach := fig.Outlets.BasinReach
	found := rule.Finding{
		Severity: rule.Stop, About: f.Fixture.ID, Limit: rule.LengthOf(reach),
		Stretches: []rule.Stretch{rule.OnFixture(&f, plan.PartFront, 0, f.Fixture.Width)},
		Message:   words.New("rule.basin-reach.missed", "A basin in {0} has no receptacle within reach", v.Room.Name),
		Why:       words.New("rule.basin-reach.none", "There is none in the room that counts; one belongs within {0} of the basin's edge.", fig.Limit("basin-reach")),
	}
	if any {
		found.Measured = rule.LengthOf(away)
		found.Why = words.New("rule.basin-reach.far", "The nearest is {0} from its edge; the reach is {1}.", words.Beside{Length: away, Other: reach}, fig.Limit("basin-reach"))
	}
	label := words.New("rule.basin-reach.remedy", "Add a receptacle beside the basin")
	found.Remedies = addNear(v, "basin", fig, label, func(p place) (unit.Length, bool) {
		d := f.Footprint.Distance(p.side.Frame.Point(p.along, 0))
		return d, d <= reach
	})
	return found
}
