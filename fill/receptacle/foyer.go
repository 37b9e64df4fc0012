package receptacle

import (
	"slices"

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
	Doc:    words.New("rule.foyer-receptacle.doc", `A foyer of more than 60 square feet has a receptacle in each wall space of 3 ft or more. Doors, cased openings, windows to the floor and glass end a wall space. Argued, and read so here: each straight wall of 3 ft or more has one of its own, though wall spaces are measured round corners (210.52(A)(2)); where no straight wall of a space is that long, what it measures round its corners counts. Not checked: whether the foyer is part of a hall, which is said by the room's use.`),
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
	for _, space := range roundCorners(&v, fig.Outlets.FoyerWall) {
		if !slices.ContainsFunc(space, func(p wallPiece) bool { return hasOutlet(all, p.side, p.wallSpace) }) {
			found = append(found, missedRoundCorners(&v, space, fig))
		}
	}
	return found
}

// wallPiece is a wall space of one side.
type wallPiece struct {
	side *index.SideView
	wallSpace
}

// roundCorners returns the wall spaces that go round corners and are so long only there:
// each of their straight parts is shorter.
func roundCorners(v *index.RoomView, least unit.Length) (all [][]wallPiece) {
	var spaces [][]wallPiece
	goesOn := false // from the last piece round the corner
	for i := range v.Sides {
		s := &v.Sides[i]
		pieces := wallsBetween(s)
		for _, w := range pieces {
			if n := len(spaces); n > 0 && goesOn && w.from == 0 {
				spaces[n-1] = append(spaces[n-1], wallPiece{s, w})
			} else {
				spaces = append(spaces, []wallPiece{{s, w}})
			}
			goesOn = w.to == s.Length
		}
		goesOn = goesOn && len(pieces) > 0
	}
	if n := len(spaces); n > 1 && goesOn && spaces[0][0].from == 0 && spaces[0][0].side == &v.Sides[0] {
		spaces[0] = append(spaces[n-1], spaces[0]...)
		spaces = spaces[:n-1]
	}
	for _, space := range spaces {
		long, isShort := unit.Length(0), true
		for _, p := range space {
			long += p.to - p.from
			isShort = isShort && p.to-p.from+rule.Grain < least
		}
		if isShort && long+rule.Grain >= least {
			all = append(all, space)
		}
	}
	return all
}

func missedRoundCorners(v *index.RoomView, space []wallPiece, fig *code.Figures) rule.Finding {
	f := missedFoyer(v, space[0].side, space[0].wallSpace, fig)
	long := unit.Length(0)
	f.Stretches = nil
	for _, p := range space {
		long += p.to - p.from
		f.Stretches = append(f.Stretches, rule.OnSide(p.side, p.from, p.to))
	}
	f.Measured, f.Label = rule.LengthOf(long), words.New("stretch.missed", "{0} not served", words.Beside{Length: long})
	f.Message = words.New("rule.foyer-receptacle.missed.round", "A wall space of {0} round a corner in {1} has no receptacle", long, v.Room.Name)
	f.Remedies = addNear(v, "duplex", fig, words.New("rule.foyer-receptacle.remedy", "Add a receptacle there"), func(at place) (unit.Length, bool) {
		return 0, slices.ContainsFunc(space, func(p wallPiece) bool { return p.side == at.side && p.from <= at.along && at.along <= p.to })
	})
	return f
}

func missedFoyer(v *index.RoomView, s *index.SideView, w wallSpace, fig *code.Figures) rule.Finding {
	length := w.to - w.from
	return rule.Finding{
		Severity: rule.Stop, About: s.Side.ID, Measured: rule.LengthOf(length), Limit: rule.LengthOf(fig.Outlets.FoyerWall),
		Stretches: []rule.Stretch{rule.OnSide(s, w.from, w.to)},
		Label:     words.New("stretch.missed", "{0} not served", words.Beside{Length: length}),
		Message:   words.New("rule.foyer-receptacle.missed", "A wall of {0} in {1} has no receptacle", length, v.Room.Name),
		Why:       words.New("rule.foyer-receptacle.why", "In a foyer of more than {0} each wall of {1} or more needs one.", fig.Outlets.FoyerArea, fig.Limit("foyer-wall")),
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
