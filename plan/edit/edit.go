// Package edit holds what a user can do to a plan: an edit a change, each with a name and
// what goes with it, and the history of a document made of them.
//
// An edit is a small value that takes one plan and gives the next, or refuses and changes
// nothing. Every plan that comes of one is sound as plan.Check has it. Where a noun may
// stand, and what goes along when one is taken out, is for package plan to say.
package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// Edit is one change a user can name. Apply returns the plan after it and leaves the
// plan it was given alone; on error there is nothing to take back. Apply is
// deterministic: IDs of new nouns come in the edit.
type Edit interface {
	// Name says what the edit does, as undo and redo name it: "Move opening".
	Name() words.Text
	Apply(plan.Plan) (plan.Plan, error)
}

// Steps is several edits as one step, all of them or none.
type Steps struct {
	Label words.Text
	Edits []Edit
}

// Name returns the label; without one, the name of the first edit.
func (e Steps) Name() words.Text {
	if e.Label.IsZero() && len(e.Edits) > 0 {
		return e.Edits[0].Name()
	}
	return e.Label
}

// Apply fails where one of the edits does, each seeing the plan the one before left.
func (e Steps) Apply(p plan.Plan) (plan.Plan, error) {
	for _, edit := range e.Edits {
		next, err := edit.Apply(p)
		if err != nil {
			return plan.Plan{}, err
		}
		p = next
	}
	return p, nil
}
