package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// ChangeCircuit sets all of a circuit.
type ChangeCircuit struct{ Circuit plan.Circuit }

// Name returns "Change circuit".
func (e ChangeCircuit) Name() words.Text { return Change{Thing: &e.Circuit}.Name() }

// Apply fails with ErrGone where the circuit is not in the plan.
func (e ChangeCircuit) Apply(p plan.Plan) (plan.Plan, error) { return Change{&e.Circuit}.Apply(p) }
