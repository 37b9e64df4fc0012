package plan

import "studbay/plan/words"

// AddCircuit adds a circuit.
type AddCircuit struct{ Circuit Circuit }

// Name returns "Add circuit".
func (AddCircuit) Name() words.Text { return words.New("edit.circuit.add", "Add circuit") }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone
// where it names a panel that is not in the plan.
func (e AddCircuit) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Circuit.ID, KindCircuit); err != nil {
		return Plan{}, err
	}
	return p.withCircuit(e.Circuit)
}

// ChangeCircuit sets all of a circuit.
type ChangeCircuit struct{ Circuit Circuit }

// Name returns "Change circuit".
func (ChangeCircuit) Name() words.Text { return words.New("edit.circuit.change", "Change circuit") }

// Apply fails with ErrGone where the circuit is not in the plan, and with ErrGone
// where it names a panel that is not in the plan.
func (e ChangeCircuit) Apply(p Plan) (Plan, error) {
	if !p.is(e.Circuit.ID, KindCircuit) {
		return Plan{}, gone(theCircuit)
	}
	return p.withCircuit(e.Circuit)
}

func (p Plan) withCircuit(c Circuit) (Plan, error) {
	if err := p.checkCircuit(&c); err != nil {
		return Plan{}, err
	}
	p.Circuits = p.Circuits.With(&c)
	return p, nil
}

// RemoveCircuit takes a circuit out; openings and cables stop naming it where Cascade
// says so.
type RemoveCircuit struct {
	ID      ID
	Cascade bool
}

// Name returns "Remove circuit".
func (RemoveCircuit) Name() words.Text { return words.New("edit.circuit.remove", "Remove circuit") }

// Apply fails with ErrGone where the circuit is not in the plan, and with ErrInUse and
// a list where openings or cables name it, unless Cascade.
func (e RemoveCircuit) Apply(p Plan) (Plan, error) {
	c, ok := p.Circuits.Get(e.ID)
	if !ok {
		return Plan{}, gone(theCircuit)
	}
	if ids, names := p.onCircuit(e.ID); len(ids) > 0 && !e.Cascade {
		return Plan{}, inUse(c.called(), ids, names)
	}
	return p.without(doomed{e.ID: true}), nil
}

// onCircuit lists the openings and cables that name a circuit.
func (p Plan) onCircuit(circuit ID) (ids []ID, names []words.Text) {
	for _, o := range p.Openings() {
		if o.Circuit == circuit {
			ids, names = append(ids, o.ID), append(names, o.called())
		}
	}
	for c := range p.Cables.All() {
		if c.Circuit == circuit {
			ids, names = append(ids, c.ID), append(names, theCable)
		}
	}
	return ids, names
}
