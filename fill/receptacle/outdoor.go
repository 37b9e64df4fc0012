package receptacle

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Outdoor looks for porches, decks and balconies, and for a front and a back, without a
// receptacle.
var Outdoor = rule.Rule{
	ID:     "outdoor-receptacle",
	Title:  words.New("rule.outdoor-receptacle.title", "Receptacles outdoors"),
	Figure: "outdoor-receptacle",
	Doc:    words.New("rule.outdoor-receptacle.doc", `A balcony, deck or porch at the house that one steps onto from inside has a receptacle, not higher than 6-1/2 ft above its floor. An outdoor area is one where it has a railing or its name says so; it is at the house where a side of it stands back to back with a room. An area that is said to be the front or the back of the house has one too, reached from grade. Where nobody says which is which, front and back are not checked; nor is whether the ground is within reach.`),
	Leaves: rule.OnlyIn(plan.UseOutdoors),
	Room:   checkOutdoor,
}

func checkOutdoor(v index.RoomView, fig *code.Figures) []rule.Finding {
	isDeck := isDeck(v.Room) && isAttached(&v) && hasDoor(&v)
	if v.Room.Use != plan.UseOutdoors || !isDeck && v.Room.Faces == plan.FacesUnsaid {
		return nil
	}
	if len(atMost(outlets(&v), fig.Outlets.OutdoorHeight)) > 0 {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Stop, Measured: rule.CountOf(0), Limit: rule.CountOf(1),
		Message: words.New("rule.outdoor-receptacle.missed", "{0} has no receptacle", v.Room.Name),
		Why:     words.New("rule.outdoor-receptacle.deck", "A balcony, deck or porch at the house needs one, not higher than {0} above its floor.", fig.Limit("outdoor-max-height")),
	}
	if !isDeck {
		f.Why = words.New("rule.outdoor-receptacle.grade", "A house needs one at the front and one at the back, not higher than {0} above grade.", fig.Limit("outdoor-max-height"))
	}
	f.Remedies = addNear(&v, "outdoor", fig, words.New("rule.outdoor-receptacle.remedy", "Add a weatherproof receptacle"), anywhere)
	return []rule.Finding{f}
}

// deckWords are those of English and Spanish by which a name tells of a balcony, a deck or
// a porch (common practice in naming).
var deckWords = []string{"porch", "deck", "balcony", "balcon", "terrace", "veranda", "lanai", "porche", "terraza", "galeria"}

// isDeck reports whether an outdoor area is a balcony, a deck or a porch.
func isDeck(r *plan.Room) bool {
	for _, s := range r.Sides {
		if s.Kind == plan.SideRailing {
			return true
		}
	}
	return slices.ContainsFunc(words.Plain(r.Name), func(w string) bool { return slices.Contains(deckWords, w) })
}

// hasDoor reports whether one can step onto an area from a room.
func hasDoor(v *index.RoomView) bool {
	for _, s := range v.Sides {
		for _, c := range s.Cuts {
			if c.Break.Sill == 0 && c.Break.Kind.IsDoorway() {
				return true
			}
		}
	}
	return false
}
