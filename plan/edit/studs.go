package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// SetStuds tells the studs of a side one by one, from left to right; none leaves them to
// the spacing. What a tape read before is forgotten.
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
	s.Places, s.Tape = slices.Clone(e.Places), plan.Tape{}
	return ChangeSide{s}.Apply(p)
}

// SetTape keeps what a tape read along a side, as it was typed. Where the studs are that it
// found SetStuds tells.
type SetTape struct {
	Side plan.ID
	Tape plan.Tape
}

// Name returns "Set studs".
func (SetTape) Name() words.Text { return SetStuds{}.Name() }

// Apply fails with ErrGone where the side is not in the plan.
func (e SetTape) Apply(p plan.Plan) (plan.Plan, error) {
	ref, _ := p.Side(e.Side)
	if ref == nil {
		return plan.Plan{}, plan.Gone(plan.KindSide)
	}
	s := *ref.Side()
	s.Tape = e.Tape
	return ChangeSide{s}.Apply(p)
}
