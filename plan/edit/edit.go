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
