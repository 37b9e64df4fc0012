package plan

import "studbay/plan/words"

// AddCable adds a cable.
type AddCable struct{ Cable Cable }

// Name returns "Add cable".
func (AddCable) Name() words.Text { return words.New("edit.cable.add", "Add cable") }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone
// where an end or the circuit is not in the plan.
func (e AddCable) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Cable.ID, KindCable); err != nil {
		return Plan{}, err
	}
	return p.withCable(e.Cable)
}

// ChangeCable sets all of a cable.
type ChangeCable struct{ Cable Cable }

// Name returns "Change cable".
func (ChangeCable) Name() words.Text { return words.New("edit.cable.change", "Change cable") }

// Apply fails with ErrGone where the cable is not in the plan, and with ErrGone
// where an end or the circuit is not in the plan.
func (e ChangeCable) Apply(p Plan) (Plan, error) {
	if !p.is(e.Cable.ID, KindCable) {
		return Plan{}, gone(theCable)
	}
	return p.withCable(e.Cable)
}

func (p Plan) withCable(c Cable) (Plan, error) {
	if err := p.checkCable(&c); err != nil {
		return Plan{}, err
	}
	p.Cables = p.Cables.With(&c)
	return p, nil
}

// RemoveCable takes a cable out.
type RemoveCable struct{ ID ID }

// Name returns "Remove cable".
func (RemoveCable) Name() words.Text { return words.New("edit.cable.remove", "Remove cable") }

// Apply fails with ErrGone where the cable is not in the plan.
func (e RemoveCable) Apply(p Plan) (Plan, error) {
	if !p.is(e.ID, KindCable) {
		return Plan{}, gone(theCable)
	}
	return p.without(doomed{e.ID: true}), nil
}
