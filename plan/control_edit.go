package plan

import "studbay/plan/words"

// AddControl adds a control.
type AddControl struct{ Control Control }

// Name returns "Add control".
func (AddControl) Name() words.Text { return words.New("edit.control.add", "Add control") }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone
// where a switch or load is not in the plan.
func (e AddControl) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Control.ID, KindControl); err != nil {
		return Plan{}, err
	}
	return p.withControl(e.Control)
}

// ChangeControl sets all of a control.
type ChangeControl struct{ Control Control }

// Name returns "Change control".
func (ChangeControl) Name() words.Text { return words.New("edit.control.change", "Change control") }

// Apply fails with ErrGone where the control is not in the plan, and with ErrGone
// where a switch or load is not in the plan.
func (e ChangeControl) Apply(p Plan) (Plan, error) {
	if !p.is(e.Control.ID, KindControl) {
		return Plan{}, gone(theControl)
	}
	return p.withControl(e.Control)
}

func (p Plan) withControl(c Control) (Plan, error) {
	if err := p.checkControl(&c); err != nil {
		return Plan{}, err
	}
	p.Controls = p.Controls.With(&c)
	return p, nil
}

// RemoveControl takes a control out.
type RemoveControl struct{ ID ID }

// Name returns "Remove control".
func (RemoveControl) Name() words.Text { return words.New("edit.control.remove", "Remove control") }

// Apply fails with ErrGone where the control is not in the plan.
func (e RemoveControl) Apply(p Plan) (Plan, error) {
	if !p.is(e.ID, KindControl) {
		return Plan{}, gone(theControl)
	}
	return p.without(doomed{e.ID: true}), nil
}
