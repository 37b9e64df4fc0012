package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// EachOpening is one step of an edit for each opening among things.
func EachOpening(things []plan.ID, edit func(plan.ID) Edit) Steps {
	var all Steps
	for _, id := range things {
		if id.Kind() == plan.KindOpening {
			all.Edits = append(all.Edits, edit(id))
		}
	}
	return all
}

// SetListed gives an opening a listed box in place of its own; what parts its own stays.
type SetListed struct {
	ID   plan.ID
	Code string // of the assembly
}

// Name returns "Change box".
func (SetListed) Name() words.Text { return SetAssembly{}.Name() }

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetListed) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) {
		o.Assembly = plan.Assembly{Code: e.Code, Barriers: o.Assembly.Barriers}
	})
}

// SetCircuit puts an opening on a circuit, or takes it off its own.
type SetCircuit struct {
	ID      plan.ID
	Circuit plan.ID // empty: on none
}

// Name returns "Change circuit of opening".
func (SetCircuit) Name() words.Text {
	return words.New("edit.opening.circuit", "Change circuit of opening")
}

// Apply fails with ErrGone where the opening or the circuit is not in the plan.
func (e SetCircuit) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Circuit = e.Circuit })
}

// SetNote writes what there is to say of an opening.
type SetNote struct {
	ID   plan.ID
	Note string
}

// Name returns "Change note".
func (SetNote) Name() words.Text { return words.New("edit.opening.note", "Change note") }

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetNote) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Note = e.Note })
}
