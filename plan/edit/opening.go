package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// AddOpening adds an opening. Without a tag it gets the next of its room's prefix.
type AddOpening struct{ Opening plan.Opening }

// Name returns "Add opening".
func (e AddOpening) Name() words.Text { return Add{Thing: &e.Opening}.Name() }

// Apply fails with ErrTaken where the ID or tag is in use, and with ErrNoRoom where the
// opening is on no wall, past its end or higher than the ceiling.
func (e AddOpening) Apply(p plan.Plan) (plan.Plan, error) { return Add{Thing: &e.Opening}.Apply(p) }

// MoveOpening puts an opening elsewhere. It keeps its tag, whatever the room.
type MoveOpening struct {
	ID plan.ID
	To plan.Anchor
}

// Name returns "Move opening".
func (MoveOpening) Name() words.Text { return words.New("edit.opening.move", "Move opening") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrNoRoom as
// AddOpening does.
func (e MoveOpening) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.At = e.To })
}

// SetHeight sets at what height an opening is.
type SetHeight struct {
	ID     plan.ID
	Height plan.Height
}

// Name returns "Set height".
func (SetHeight) Name() words.Text { return words.New("edit.opening.height", "Set height") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrNoRoom
// where the height is above the ceiling or below the floor.
func (e SetHeight) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Height = e.Height })
}

// ChangeOpening sets all of an opening.
type ChangeOpening struct{ Opening plan.Opening }

// Name returns "Change opening".
func (e ChangeOpening) Name() words.Text { return Change{Thing: &e.Opening}.Name() }

// Apply fails with ErrGone where the opening is not in the plan, else as AddOpening
// does.
func (e ChangeOpening) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.Opening.ID, func(o *plan.Opening) { *o = e.Opening })
}

// SetAssembly sets the box of an opening and what is added to it.
type SetAssembly struct {
	ID       plan.ID
	Assembly plan.Assembly
}

// Name returns "Change box".
func (SetAssembly) Name() words.Text { return words.New("edit.opening.assembly", "Change box") }

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetAssembly) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Assembly = e.Assembly })
}

// SetContents sets what the user says is in a box; nil leaves it to the cables drawn or
// the kind of opening.
type SetContents struct {
	ID       plan.ID
	Contents *plan.Contents
}

// Name returns "Change box contents".
func (SetContents) Name() words.Text {
	return words.New("edit.opening.contents", "Change box contents")
}

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetContents) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Contents = e.Contents })
}

// SetStatus says whether an opening is new, there already, or to be removed. The box that was
// to be built for a new one is not what stands in the wall: nobody has read that yet.
type SetStatus struct {
	ID     plan.ID
	Status plan.Status
}

// Name returns "Mark opening existing" or what else the status is.
func (e SetStatus) Name() words.Text {
	return words.New("edit.opening.status", "Mark opening {0}", e.Status.Text())
}

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetStatus) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) {
		if e.Status.IsOld() && !o.Status.IsOld() {
			o.Assembly = plan.Assembly{}
		}
		o.Status = e.Status
	})
}

// Retag gives an opening another tag, which no other has. An empty Tag is the next of
// its room's prefix.
type Retag struct {
	ID  plan.ID
	Tag string
}

// Name returns "Change tag".
func (Retag) Name() words.Text { return words.New("edit.opening.tag", "Change tag") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrTaken
// where the tag is in use.
func (e Retag) Apply(p plan.Plan) (plan.Plan, error) {
	return ChangedOpening(p, e.ID, func(o *plan.Opening) {
		if o.Tag = e.Tag; o.Tag == "" {
			o.Tag = p.TagAt(o.At)
		}
	})
}

// changedOpening returns the plan with a changed copy of an opening.
func ChangedOpening(p plan.Plan, id plan.ID, change func(*plan.Opening)) (plan.Plan, error) {
	was, _ := p.Opening(id)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindOpening)
	}
	o := *was
	change(&o)
	return p.With(nil, &o)
}

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
	return ChangedOpening(p, e.ID, func(o *plan.Opening) {
		o.Kind, o.Gangs, o.Assembly, o.Devices = e.Kind, e.Gangs, e.Assembly, nil
	})
}
