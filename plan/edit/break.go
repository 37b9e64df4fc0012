package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// AddBreak adds a door, slider, window, passage or fireplace to a side.
type AddBreak struct{ Break plan.Break }

// Name returns "Add door" or what else the break is.
func (e AddBreak) Name() words.Text { return Add{Thing: &e.Break}.Name() }

// Apply fails with ErrTaken where the ID is in use, and with ErrNoRoom where the break
// does not fit its side, is higher than the ceiling or overlaps another break.
func (e AddBreak) Apply(p plan.Plan) (plan.Plan, error) { return Add{Thing: &e.Break}.Apply(p) }

// MoveBreak puts a break elsewhere.
type MoveBreak struct {
	ID plan.ID
	To plan.Anchor
}

// Name returns "Move door or window".
func (MoveBreak) Name() words.Text { return words.New("edit.break.move", "Move door or window") }

// Apply fails with ErrGone where the break is not in the plan, and with ErrNoRoom as
// AddBreak does.
func (e MoveBreak) Apply(p plan.Plan) (plan.Plan, error) {
	was, _ := p.Break(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindBreak)
	}
	if was.At == e.To {
		return p, nil
	}
	b := *was
	b.At = e.To
	return p.With(nil, &b)
}

// ChangeBreak sets all of a break.
type ChangeBreak struct{ Break plan.Break }

// Name returns "Change door" or what else the break is.
func (e ChangeBreak) Name() words.Text { return Change{Thing: &e.Break}.Name() }

// Apply fails with ErrGone where the break is not in the plan, and with ErrNoRoom as
// AddBreak does.
func (e ChangeBreak) Apply(p plan.Plan) (plan.Plan, error) { return Change{&e.Break}.Apply(p) }
