package edit

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ToSteps sets openings at whole steps of a tape, as was worked out for each beforehand.
type ToSteps struct{ Places []StepPlace }

// StepPlace is where one opening comes to, and what its height says then.
type StepPlace struct {
	ID     plan.ID
	At     plan.Anchor
	Height unit.Length
}

// Name returns "Round to the step".
func (ToSteps) Name() words.Text { return words.New("edit.to-steps", "Round to the step") }

// Apply fails with ErrGone where one of the openings is not in the plan, and with ErrNoRoom
// where one does not fit.
func (e ToSteps) Apply(p plan.Plan) (plan.Plan, error) {
	for _, place := range e.Places {
		next, err := ChangedOpening(p, place.ID, func(o *plan.Opening) { o.At, o.Height.Value = place.At, place.Height })
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}
