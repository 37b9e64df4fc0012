package edit

import (
	"studbay/plan"
	"studbay/plan/unit"
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
	return changedOpening(p, e.ID, func(o *plan.Opening) {
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
	return changedOpening(p, e.ID, func(o *plan.Opening) { o.Circuit = e.Circuit })
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
	return changedOpening(p, e.ID, func(o *plan.Opening) { o.Note = e.Note })
}

// ChangeSides changes several sides at once, each as a field or two of it say.
type ChangeSides struct {
	Sides  []plan.ID
	Change SideChange
}

// SideChange is what becomes another of a side; what is nil stays as it is.
type SideChange struct {
	Kind    *plan.SideKind
	Finish  *[]plan.Layer
	Spacing *unit.Length // of the studs
	Depth   *unit.Length // of the studs
	Steel   *bool
	Rated   *bool
}

// Name returns "Change walls".
func (ChangeSides) Name() words.Text { return words.New("edit.sides.change", "Change walls") }

// Apply fails with ErrGone where one of the sides is not in the plan, and with ErrNoRoom
// where something would lose its wall.
func (e ChangeSides) Apply(p plan.Plan) (plan.Plan, error) {
	for _, id := range e.Sides {
		ref, _ := p.Side(id)
		if ref == nil {
			return plan.Plan{}, plan.Gone(plan.KindSide)
		}
		s := *ref.Side()
		e.Change.to(&s)
		next, err := ChangeSide{s}.Apply(p)
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}

func (c SideChange) to(s *plan.Side) {
	set(&s.Kind, c.Kind)
	set(&s.Finish, c.Finish)
	set(&s.Studs.Spacing, c.Spacing)
	set(&s.Studs.Depth, c.Depth)
	set(&s.Studs.Steel, c.Steel)
	set(&s.Rated, c.Rated)
}

// set puts a value in place of one where there is any.
func set[V any](at, to *V) {
	if to != nil {
		*at = *to
	}
}
