package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// Steps is several edits as one step, all of them or none.
type Steps struct {
	Label words.Text
	Edits []Edit
}

// Name returns the label; without one, the name of the first edit.
func (e Steps) Name() words.Text {
	if e.Label.IsZero() && len(e.Edits) > 0 {
		return e.Edits[0].Name()
	}
	return e.Label
}

// Apply fails where one of the edits does, each seeing the plan the one before left.
func (e Steps) Apply(p plan.Plan) (plan.Plan, error) {
	for _, edit := range e.Edits {
		next, err := edit.Apply(p)
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}
