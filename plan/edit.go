package plan

import (
	"errors"

	"studbay/plan/words"
)

// Edit is one change a user can name. Apply returns the plan after it and leaves the
// plan it was given alone; on error there is nothing to take back. Apply is
// deterministic: IDs of new nouns come in the edit.
type Edit interface {
	// Name says what the edit does, as undo and redo name it: "Move opening".
	Name() words.Text
	Apply(Plan) (Plan, error)
}

// What callers branch on. Errors of Apply wrap one of these where it fits.
var (
	// ErrGone is returned where what an edit is about is no longer in the plan.
	ErrGone = errors.New("it is no longer in the plan")
	// ErrTaken is returned where an ID or tag is in use already.
	ErrTaken = errors.New("it is in use already")
	// ErrNoRoom is returned where a thing does not fit where it should go.
	ErrNoRoom = errors.New("it does not fit there")
	// ErrInUse is returned where things hang on what should be removed.
	ErrInUse = errors.New("other things hang on it")
)
