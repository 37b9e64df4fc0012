package plan

import "studbay/plan/words"

// AddDecision adds a decision.
type AddDecision struct{ Decision Decision }

// Name returns "Add decision".
func (AddDecision) Name() words.Text { return words.New("edit.decision.add", "Add decision") }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone
// where something it is about is not in the plan.
func (e AddDecision) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Decision.ID, KindDecision); err != nil {
		return Plan{}, err
	}
	return p.withDecision(e.Decision)
}

// ChangeDecision sets all of a decision.
type ChangeDecision struct{ Decision Decision }

// Name returns "Change decision".
func (ChangeDecision) Name() words.Text { return words.New("edit.decision.change", "Change decision") }

// Apply fails with ErrGone where the decision is not in the plan, and with ErrGone
// where something it is about is not in the plan.
func (e ChangeDecision) Apply(p Plan) (Plan, error) {
	if !p.is(e.Decision.ID, KindDecision) {
		return Plan{}, gone(theDecision)
	}
	return p.withDecision(e.Decision)
}

func (p Plan) withDecision(d Decision) (Plan, error) {
	if err := checkDecision(&d, p.has); err != nil {
		return Plan{}, err
	}
	p.Decisions = p.Decisions.With(&d)
	return p, nil
}

// RemoveDecision takes a decision out.
type RemoveDecision struct{ ID ID }

// Name returns "Remove decision".
func (RemoveDecision) Name() words.Text { return words.New("edit.decision.remove", "Remove decision") }

// Apply fails with ErrGone where the decision is not in the plan.
func (e RemoveDecision) Apply(p Plan) (Plan, error) {
	if !p.is(e.ID, KindDecision) {
		return Plan{}, gone(theDecision)
	}
	return p.without(doomed{e.ID: true}), nil
}
