package receptacle

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Foyer looks for walls of a large foyer without a receptacle.
var Foyer = rule.Rule{
	ID:     "foyer-receptacle",
	Title:  words.New("rule.foyer-receptacle.title", "Receptacle in each wall of a large foyer"),
	Figure: "foyer-area",
	Doc:    words.New("rule.foyer-receptacle.doc", `A foyer of more than 60 square feet has a receptacle in each wall space of 3 ft or more. Doors, cased openings, windows to the floor and glass end a wall space, and so does a corner. Not checked: whether the foyer is part of a hall, which is said by the room's use.`),
	Leaves: rule.OnlyIn(plan.UseFoyer),
	Room:   checkFoyer,
}

func checkFoyer(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	area := v.Room.Outline().Area()
	if v.Room.Use != plan.UseFoyer || area.Cmp(fig.Outlets.FoyerArea) <= 0 {
		return nil
	}
	all := atMost(outlets(&v), fig.Spacing.ReceptacleMaxHeight)
	for i := range v.Sides {
		s := &v.Sides[i]
		for _, w := range wallsBetween(s) {
			if w.to-w.from+rule.Grain < fig.Outlets.FoyerWall || hasOutlet(all, s, w) {
				continue
			}
			found = append(found, missedFoyer(&v, s, w, fig))
		}
	}
	return found
}

func missedFoyer(v *index.RoomView, s *index.SideView, w wallSpace, fig *code.Figures) rule.Finding {
	length := w.to - w.from
	return rule.Finding{
		Severity: rule.Stop, About: s.Side.ID, Measured: rule.LengthOf(length), Limit: rule.LengthOf(fig.Outlets.FoyerWall),
		Stretches: []rule.Stretch{rule.OnSide(s, w.from, w.to)},
		Label:     words.New("stretch.missed", "{0} not served", words.Beside{Length: length}),
		Message:   words.New("rule.foyer-receptacle.missed", "A wall of {0} in {1} has no receptacle", length, v.Room.Name),
		Why:       words.New("rule.foyer-receptacle.why", "In a foyer of more than {0} each wall of {1} or more has one.", fig.Outlets.FoyerArea, fig.Limit("foyer-wall")),
		Remedies: addNear(v, "duplex", fig, words.New("rule.foyer-receptacle.remedy", "Add a receptacle there"), func(p place) (unit.Length, bool) {
			return (2*p.along - w.from - w.to).Abs(), p.side == s && w.from <= p.along && p.along <= w.to
		}),
	}
}

// wallSpace is a part of a side between what ends it.
type wallSpace struct{ from, to unit.Length }

// wallsBetween returns the wall spaces of a side.
func wallsBetween(s *index.SideView) (all []wallSpace) {
	if s.Side.Kind != plan.SideWall {
		return nil
	}
	at := unit.Length(0)
	for _, c := range s.Cuts {
		if c.Break.Sill > 0 {
			continue // wall goes on below
		}
		if at < c.From {
			all = append(all, wallSpace{at, c.From})
		}
		at = max(at, c.To)
	}
	if at < s.Length {
		all = append(all, wallSpace{at, s.Length})
	}
	return all
}

func hasOutlet(all []outlet, s *index.SideView, w wallSpace) bool {
	for _, o := range all {
		if o.At.Host == s.Side.ID && w.from-rule.Grain <= o.At.Along && o.At.Along <= w.to+rule.Grain {
			return true
		}
	}
	return false
}
