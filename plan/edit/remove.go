package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// Remove takes things out: nouns of any kind, levels, and sides, which become one with
// the side before them as RemoveCorner has it. Cables that end at what goes, controls
// left with nothing and waivers about it go too; other things only stop naming it.
type Remove struct {
	Things []plan.ID
	// Cascade takes along what stands on the things, stops naming them what they hold,
	// and slides what would fall off the end of a side back onto it.
	Cascade bool
}

// Removing returns the edit that takes things out, and all that goes with them.
func Removing(things ...plan.ID) Remove { return Remove{Things: things, Cascade: true} }

// Name returns "Remove opening" or what else it is, or how many things.
func (e Remove) Name() words.Text {
	if len(e.Things) != 1 {
		return words.New("edit.remove-several", "Delete {0} things", len(e.Things))
	}
	switch id := e.Things[0]; id.Kind() {
	case plan.KindSide:
		return RemoveCorner{}.Name()
	case plan.KindLevel:
		return words.New("edit.level.remove", "Delete level")
	default:
		return plan.RemoveName(id.Kind())
	}
}

// Apply fails with ErrGone where one of the things is not in the plan, with ErrInUse and
// a list where others hang on them, unless Cascade and they may go all the same, and for a side as RemoveCorner does.
func (e Remove) Apply(p plan.Plan) (plan.Plan, error) {
	for _, id := range e.Things {
		if !p.Has(id) {
			return plan.Plan{}, plan.Gone(id.Kind())
		}
	}
	p, nouns, err := e.withoutSides(p)
	if err != nil {
		return plan.Plan{}, err
	}
	if err := p.CheckUnused(nouns...); err != nil {
		return plan.Plan{}, err
	}
	if !e.Cascade {
		if err := p.CheckFree(nouns...); err != nil {
			return plan.Plan{}, err
		}
	}
	return p.Without(nouns...), nil
}

// withoutSides takes the sides out, but those whose room goes as a whole, and returns the
// other things.
func (e Remove) withoutSides(p plan.Plan) (_ plan.Plan, others []plan.ID, err error) {
	for _, id := range e.Things {
		if id.Kind() != plan.KindSide {
			others = append(others, id)
			continue
		}
		ref, l := p.Side(id)
		if ref == nil || slices.Contains(e.Things, ref.Room.ID) || slices.Contains(e.Things, l.ID) {
			continue
		}
		if p, err = (RemoveCorner{Side: id, Clamp: e.Cascade}).Apply(p); err != nil {
			return plan.Plan{}, nil, err
		}
	}
	return p, others, nil
}
