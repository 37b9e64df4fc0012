package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// ChangeKind makes an opening one of another kind. What goes by the kind begins anew: its
// box has the gangs and the assembly given, and its devices are as the kind says. Where
// the opening is and what the user says of it stay.
type ChangeKind struct {
	ID       plan.ID
	Kind     string
	Gangs    int
	Assembly plan.Assembly
}

// Name returns "Change kind".
func (ChangeKind) Name() words.Text { return words.New("edit.opening.kind", "Change kind") }

// Apply fails with ErrGone where the opening is not in the plan.
func (e ChangeKind) Apply(p plan.Plan) (plan.Plan, error) {
	return changedOpening(p, e.ID, func(o *plan.Opening) {
		o.Kind, o.Gangs, o.Assembly, o.Devices = e.Kind, e.Gangs, e.Assembly, nil
	})
}
