package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// SetStuds tells the studs of a side one by one, from left to right; none leaves them to
// the spacing.
type SetStuds struct {
	Side   plan.ID
	Places []plan.StudPlace
}

// Name returns "Set studs".
func (SetStuds) Name() words.Text { return words.New("edit.studs", "Set studs") }

// Apply fails with ErrGone where the side is not in the plan, and where the studs do not
// come from left to right.
func (e SetStuds) Apply(p plan.Plan) (plan.Plan, error) {
	ref, _ := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	s := *ref.Side()
	if slices.Equal(s.Places, e.Places) {
		return p, nil
	}
	s.Places = slices.Clone(e.Places)
	return ChangeSide{s}.Apply(p)
}
