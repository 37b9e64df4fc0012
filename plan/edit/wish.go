package edit

import (
	"time"

	"studbay/plan"
	"studbay/plan/words"
)

// TakeWishes puts in what a client said, each in the place of what the same person said of
// the same thing before; what was said on an earlier day than that is left out. It changes nothing else: a wish is not an edit.
type TakeWishes struct{ Wishes []*plan.Wish }

// Name returns "Take in answers".
func (TakeWishes) Name() words.Text { return words.New("edit.wish.take", "Take in answers") }

// Apply fails with ErrTaken where an ID is in use, and with ErrGone where what a wish is
// about is not in the plan.
func (e TakeWishes) Apply(p plan.Plan) (plan.Plan, error) {
	for _, w := range e.Wishes {
		var old []plan.ID
		isLater := false // than the one to be put in
		for was := range p.Wishes.All() {
			if w.Replaces(was) {
				old = append(old, was.ID)
				isLater = isLater || isBefore(w.Date, was.Date)
			}
		}
		if isLater {
			continue
		}
		var err error
		if len(old) > 0 {
			if p, err = (Remove{Things: old}).Apply(p); err != nil {
				return plan.Plan{}, err
			}
		}
		if p, err = (Add{Thing: w}).Apply(p); err != nil {
			return plan.Plan{}, err
		}
	}
	return p, nil
}

// KeepWalk keeps that the plan was walked through, as plan/file packs it.
type KeepWalk struct{ Walked *plan.Walked }

// Name returns "Keep the walk-through".
func (KeepWalk) Name() words.Text { return words.New("edit.walk.keep", "Keep the walk-through") }

// Apply fails where a text of it is not sound.
func (e KeepWalk) Apply(p plan.Plan) (plan.Plan, error) {
	h := headerOf(p)
	h.Walked = e.Walked
	if err := h.Check(); err != nil {
		return plan.Plan{}, err
	}
	p.Header = &h
	return p, nil
}

// isBefore reports whether one date is before another; of what is no date nobody can tell.
func isBefore(a, b string) bool {
	day, err := time.Parse(time.DateOnly, a)
	other, errOther := time.Parse(time.DateOnly, b)
	return err == nil && errOther == nil && day.Before(other)
}
