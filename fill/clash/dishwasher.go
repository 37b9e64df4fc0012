package clash

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Dishwasher looks for receptacles behind a dishwasher.
var Dishwasher = rule.Rule{
	ID:     "dishwasher-place",
	Title:  words.New("rule.dishwasher-place.title", "Receptacle of a dishwasher beside it"),
	Figure: "dishwasher-beside",
	Doc:    words.New("rule.dishwasher-place.doc", `From 2017 on the receptacle of a built-in dishwasher is in the space beside the machine, not behind it, so that its plug is reached without pulling the machine out. A receptacle is behind the machine where the middle of its box is between the machine's edges and lower than its top. Not checked: dishwashers without a wall behind them, machines that are wired without a plug, whether the place beside is a cabinet that one can reach into, how long the cord is, and what is there already.`),
	Side:   checkDishwasher,
}

func checkDishwasher(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	if !fig.Outlets.BesideDishwasher || len(v.Fixtures) == 0 {
		return nil
	}
	for _, b := range v.Wall().Boxes {
		k := part.All().Kind(b.Opening.Kind)
		if k != nil && k.Family == part.Receptacle && b.Opening.Status == plan.StatusNew && isBehindDishwasher(v, b) {
			found = append(found, behindDishwasher(v, b, fig))
		}
	}
	return found
}

// isBehindDishwasher reports whether the middle of a box is where a dishwasher stands.
func isBehindDishwasher(v rule.SideView, b frame.Placed) bool {
	return slices.ContainsFunc(v.Fixtures, func(f index.FixtureView) bool {
		body, up := outlineOf(f.Fixture), (b.Bottom+b.Top)/2
		return f.Fixture.Kind == plan.FixtureDishwasher && body.Left < b.Centre() && b.Centre() < body.Right && body.Bottom <= up && up < body.Top
	})
}

func behindDishwasher(v rule.SideView, b frame.Placed, fig *code.Figures) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Stop)
	f.Message = words.New("rule.dishwasher-place.behind", "{0} is behind the dishwasher", b.Opening.Tag)
	f.Why = words.New("rule.dishwasher-place.why", "The receptacle of a dishwasher is in the space beside it, where its plug can be reached.")
	f.Remedies = rule.MovesAlong(b, slices.DeleteFunc(v.Wall().ClearPlaces(b, fig.Units.Step(), beside(v, b)...), func(at unit.Length) bool {
		return isBehindDishwasher(v, b.MovedTo(at))
	}))
	return f
}

// beside returns the places for a box beside the dishwashers of a wall, the nearest first.
func beside(v rule.SideView, b frame.Placed) (places []unit.Length) {
	half := (b.Right - b.Left + 1) / 2
	for _, f := range v.Fixtures {
		if body := outlineOf(f.Fixture); f.Fixture.Kind == plan.FixtureDishwasher {
			places = append(places, body.Left-half, body.Right+half)
		}
	}
	slices.SortFunc(places, func(x, y unit.Length) int { return cmp.Compare((x - b.Centre()).Abs(), (y - b.Centre()).Abs()) })
	return places
}
