package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// Add adds a noun of any kind. The noun is the plan's from then on: nobody writes to it.
type Add struct {
	Thing plan.Thing
	Level plan.ID // where the noun does not stand on something: a room
}

// Name returns "Add cable" or what else the noun is.
func (e Add) Name() words.Text { return plan.AddName(e.Thing) }

// Apply fails with ErrTaken where the ID or tag is in use, with ErrGone where the level or
// something the noun names is not in the plan, with ErrNoRoom where it does not fit where
// it should stand, and where it is not sound.
func (e Add) Apply(p plan.Plan) (plan.Plan, error) {
	kind, err := plan.KindOf(e.Thing)
	if err != nil {
		return plan.Plan{}, err
	}
	l := p.Level(e.Level)
	if e.Level != "" && l == nil {
		return plan.Plan{}, plan.Gone(plan.KindLevel)
	}
	if err := p.CheckNew(e.Thing.Key(), kind); err != nil {
		return plan.Plan{}, err
	}
	return p.With(l, e.Thing)
}

// Change sets all of the noun of any kind that has the ID. The noun is the plan's from
// then on: nobody writes to it.
type Change struct{ Thing plan.Thing }

// Name returns "Change cable" or what else the noun is.
func (e Change) Name() words.Text { return plan.ChangeName(e.Thing) }

// Apply fails with ErrGone where the noun is not in the plan, else as Add does.
func (e Change) Apply(p plan.Plan) (plan.Plan, error) {
	kind, err := plan.KindOf(e.Thing)
	if err != nil {
		return plan.Plan{}, err
	}
	was, l := p.Find(e.Thing.Key())
	if was == nil || was.Key().Kind() != kind {
		return plan.Plan{}, plan.Gone(kind)
	}
	return p.With(l, e.Thing)
}
