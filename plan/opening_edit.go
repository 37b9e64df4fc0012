package plan

import (
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AddOpening adds an opening. Without a tag it gets the next of its room's prefix.
type AddOpening struct{ Opening Opening }

// Name returns "Add opening".
func (e AddOpening) Name() words.Text { return Add{Thing: &e.Opening}.Name() }

// Apply fails with ErrTaken where the ID or tag is in use, and with ErrNoRoom where the
// opening is on no wall, past its end or higher than the ceiling.
func (e AddOpening) Apply(p Plan) (Plan, error) { return Add{Thing: &e.Opening}.Apply(p) }

// MoveOpening puts an opening elsewhere. It keeps its tag, whatever the room.
type MoveOpening struct {
	ID ID
	To Anchor
}

// Name returns "Move opening".
func (MoveOpening) Name() words.Text { return words.New("edit.opening.move", "Move opening") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrNoRoom as
// AddOpening does.
func (e MoveOpening) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) { o.At = e.To })
}

// SetHeight sets at what height an opening is.
type SetHeight struct {
	ID     ID
	Height Height
}

// Name returns "Set height".
func (SetHeight) Name() words.Text { return words.New("edit.opening.height", "Set height") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrNoRoom
// where the height is above the ceiling or below the floor.
func (e SetHeight) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) { o.Height = e.Height })
}

// ChangeOpening sets all of an opening.
type ChangeOpening struct{ Opening Opening }

// Name returns "Change opening".
func (e ChangeOpening) Name() words.Text { return Change{Thing: &e.Opening}.Name() }

// Apply fails with ErrGone where the opening is not in the plan, else as AddOpening
// does.
func (e ChangeOpening) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.Opening.ID, func(o *Opening) { *o = e.Opening })
}

// SetAssembly sets the box of an opening and what is added to it.
type SetAssembly struct {
	ID       ID
	Assembly Assembly
}

// Name returns "Change box".
func (SetAssembly) Name() words.Text { return words.New("edit.opening.assembly", "Change box") }

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetAssembly) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) { o.Assembly = e.Assembly })
}

// SetContents sets what the user says is in a box; nil leaves it to the cables drawn or
// the kind of opening.
type SetContents struct {
	ID       ID
	Contents *Contents
}

// Name returns "Change box contents".
func (SetContents) Name() words.Text {
	return words.New("edit.opening.contents", "Change box contents")
}

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetContents) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) { o.Contents = e.Contents })
}

// SetStatus says whether an opening is new, there already, or to be removed.
type SetStatus struct {
	ID     ID
	Status Status
}

// Name returns "Mark opening existing" or what else the status is.
func (e SetStatus) Name() words.Text {
	return words.New("edit.opening.status", "Mark opening {0}", e.Status.Text())
}

// Apply fails with ErrGone where the opening is not in the plan.
func (e SetStatus) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) { o.Status = e.Status })
}

// Retag gives an opening another tag, which no other has. An empty Tag is the next of
// its room's prefix.
type Retag struct {
	ID  ID
	Tag string
}

// Name returns "Change tag".
func (Retag) Name() words.Text { return words.New("edit.opening.tag", "Change tag") }

// Apply fails with ErrGone where the opening is not in the plan, and with ErrTaken
// where the tag is in use.
func (e Retag) Apply(p Plan) (Plan, error) {
	return changedOpening(p, e.ID, func(o *Opening) {
		if o.Tag = e.Tag; o.Tag == "" {
			o.Tag = p.TagAt(o.At)
		}
	})
}

// CopyOpening adds copies of an opening in a row: each so far along its host from the
// one before, or by a vector in a ceiling or a floor. Copies have the next tags and no
// cables.
type CopyOpening struct {
	ID     ID
	Copies []ID        // of the copies, as many as there shall be
	Along  unit.Length // from one to the next; below zero to the left
	By     geom.Point  // in a ceiling or a floor
}

// Name returns "Copy opening".
func (CopyOpening) Name() words.Text { return words.New("edit.opening.copy", "Copy opening") }

// Apply fails with ErrGone where the opening is not in the plan, else as AddOpening
// does; all copies fit, or none is made.
func (e CopyOpening) Apply(p Plan) (Plan, error) {
	was, _ := p.Opening(e.ID)
	if was == nil {
		return Plan{}, Gone(KindOpening)
	}
	o := *was
	for _, id := range e.Copies {
		o.ID, o.Tag = id, ""
		switch o.At.Part {
		case PartCeiling, PartFloor:
			o.At.At = o.At.At.Add(e.By)
		default:
			o.At.Along += e.Along
		}
		next, err := AddOpening{o}.Apply(p)
		if err != nil {
			return Plan{}, err
		}
		p = next
	}
	return p, nil
}

// changedOpening returns the plan with a changed copy of an opening.
func changedOpening(p Plan, id ID, change func(*Opening)) (Plan, error) {
	was, _ := p.Opening(id)
	if was == nil {
		return Plan{}, Gone(KindOpening)
	}
	o := *was
	change(&o)
	return p.With(nil, &o)
}
