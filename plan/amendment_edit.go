package plan

import "studbay/plan/words"

// AddAmendment adds an amendment.
type AddAmendment struct{ Amendment Amendment }

// Name returns "Add amendment".
func (AddAmendment) Name() words.Text { return words.New("edit.amendment.add", "Add amendment") }

// Apply fails with ErrTaken where the ID is in use, and where it
// gives no reason.
func (e AddAmendment) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Amendment.ID, KindAmendment); err != nil {
		return Plan{}, err
	}
	return p.withAmendment(e.Amendment)
}

// ChangeAmendment sets all of an amendment.
type ChangeAmendment struct{ Amendment Amendment }

// Name returns "Change amendment".
func (ChangeAmendment) Name() words.Text {
	return words.New("edit.amendment.change", "Change amendment")
}

// Apply fails with ErrGone where the amendment is not in the plan, and where it
// gives no reason.
func (e ChangeAmendment) Apply(p Plan) (Plan, error) {
	if !p.is(e.Amendment.ID, KindAmendment) {
		return Plan{}, gone(theAmendment)
	}
	return p.withAmendment(e.Amendment)
}

func (p Plan) withAmendment(a Amendment) (Plan, error) {
	if err := checkAmendment(&a); err != nil {
		return Plan{}, err
	}
	p.Amendments = p.Amendments.With(&a)
	return p, nil
}

// RemoveAmendment takes an amendment out.
type RemoveAmendment struct{ ID ID }

// Name returns "Remove amendment".
func (RemoveAmendment) Name() words.Text {
	return words.New("edit.amendment.remove", "Remove amendment")
}

// Apply fails with ErrGone where the amendment is not in the plan.
func (e RemoveAmendment) Apply(p Plan) (Plan, error) {
	if !p.is(e.ID, KindAmendment) {
		return Plan{}, gone(theAmendment)
	}
	return p.without(doomed{e.ID: true}), nil
}
