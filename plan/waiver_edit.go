package plan

import "studbay/plan/words"

// AddWaiver adds a waiver.
type AddWaiver struct{ Waiver Waiver }

// Name returns "Add waiver".
func (AddWaiver) Name() words.Text { return words.New("edit.waiver.add", "Add waiver") }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone
// where what it is about is not in the plan.
func (e AddWaiver) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Waiver.ID, KindWaiver); err != nil {
		return Plan{}, err
	}
	return p.withWaiver(e.Waiver)
}

// ChangeWaiver sets all of a waiver.
type ChangeWaiver struct{ Waiver Waiver }

// Name returns "Change waiver".
func (ChangeWaiver) Name() words.Text { return words.New("edit.waiver.change", "Change waiver") }

// Apply fails with ErrGone where the waiver is not in the plan, and with ErrGone
// where what it is about is not in the plan.
func (e ChangeWaiver) Apply(p Plan) (Plan, error) {
	if !p.is(e.Waiver.ID, KindWaiver) {
		return Plan{}, gone(theWaiver)
	}
	return p.withWaiver(e.Waiver)
}

func (p Plan) withWaiver(w Waiver) (Plan, error) {
	if err := checkWaiver(&w, p.has); err != nil {
		return Plan{}, err
	}
	p.Waivers = p.Waivers.With(&w)
	return p, nil
}

// RemoveWaiver takes a waiver out.
type RemoveWaiver struct{ ID ID }

// Name returns "Remove waiver".
func (RemoveWaiver) Name() words.Text { return words.New("edit.waiver.remove", "Remove waiver") }

// Apply fails with ErrGone where the waiver is not in the plan.
func (e RemoveWaiver) Apply(p Plan) (Plan, error) {
	if !p.is(e.ID, KindWaiver) {
		return Plan{}, gone(theWaiver)
	}
	return p.without(doomed{e.ID: true}), nil
}
