package edit

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ToStuds moves openings along their faces to the studs that will hold their boxes, as was
// worked out for each beforehand.
type ToStuds struct{ Moves []StudMove }

// StudMove is the way of one opening along its face: to its centre, from the left end.
type StudMove struct {
	ID       plan.ID
	Tag      string
	From, To unit.Length
}

// Name returns "To the studs".
func (ToStuds) Name() words.Text { return words.New("edit.to-studs", "To the studs") }

// Apply fails with ErrGone where one of the openings is not in the plan, and with ErrNoRoom
// where it is on no face.
func (e ToStuds) Apply(p plan.Plan) (plan.Plan, error) {
	for _, m := range e.Moves {
		next, err := ChangedOpening(p, m.ID, func(o *plan.Opening) { o.At.Along = m.To })
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}

// NoneToStuds says that there is nothing to move.
var NoneToStuds = words.New("to-studs.none", "No box that wants a stud has a clear place within that distance.")

// Told lists each move in words.
func (e ToStuds) Told() (all []words.Text) {
	for _, m := range e.Moves {
		way, by := words.New("edit.to-studs.right", "{0} to the right by {1}", m.Tag, words.Height(m.To-m.From)), m.To-m.From
		if by < 0 {
			way = words.New("edit.to-studs.left", "{0} to the left by {1}", m.Tag, words.Height(-by))
		}
		all = append(all, way)
	}
	return all
}
