package arrange

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Apart returns the distance along their face between two things on one: from the centre
// of an opening, from the nearer edge of anything else. It is below zero where they
// overlap, and false where they are not on one face of a room or fixture.
func Apart(p plan.Plan, id, from plan.ID) (unit.Length, bool) {
	away, _, ok := apart(p, id, from)
	return away, ok
}

// apart is Apart, which also says whether the first thing is to the right of the other.
func apart(p plan.Plan, id, from plan.ID) (away unit.Length, isRight, ok bool) {
	a, _ := p.Find(id)
	b, _ := p.Find(from)
	if a == nil || b == nil || id == from {
		return 0, false, false
	}
	at, to := plan.AnchorOf(a), plan.AnchorOf(b)
	if at == nil || to == nil || at.Host != to.Host || at.Part != to.Part || isFlat(*at) {
		return 0, false, false
	}
	right := at.Along - to.Along - plan.WidthOf(b)
	left := to.Along - at.Along - plan.WidthOf(a)
	if right >= left {
		return right, true, true
	}
	return left, false, true
}

// SetApart moves a thing along its face until it is so far from another on it, as Apart
// measures, on the side of it where it is. The distance is told from that thing then.
type SetApart struct {
	ID, From plan.ID
	Away     unit.Length
}

// Name returns "Move opening" or what else it is.
func (e SetApart) Name() words.Text { return Move{Things: []plan.ID{e.ID}}.Name() }

// Apply fails with ErrGone where one of the two is not in the plan, and with ErrNoRoom where
// they are not on one face or it does not fit there.
func (e SetApart) Apply(p plan.Plan) (plan.Plan, error) {
	p, err := MeasureFrom{e.ID, e.From}.Apply(p)
	if err != nil {
		return plan.Plan{}, err
	}
	now, isRight, ok := apart(p, e.ID, e.From)
	if !ok {
		return plan.Plan{}, notOneFace()
	}
	t, _ := p.Find(e.ID)
	to := *plan.AnchorOf(t)
	if by := e.Away - now; isRight {
		to.Along += by
	} else {
		to.Along -= by
	}
	return placing{t.Key(), to, 0}.Apply(p)
}

// MeasureFrom keeps from which other thing on its face the distance of a thing is told.
type MeasureFrom struct {
	ID   plan.ID
	From plan.ID // empty: from the ends of the face alone
}

// Name returns "Measure from another thing".
func (MeasureFrom) Name() words.Text {
	return words.New("edit.measure-from", "Measure from another thing")
}

// Apply fails with ErrGone where one of the two is not in the plan.
func (e MeasureFrom) Apply(p plan.Plan) (plan.Plan, error) {
	t, l := p.Find(e.ID)
	if t == nil {
		return plan.Plan{}, plan.Gone(e.ID.Kind())
	}
	if e.From != "" && !p.Has(e.From) {
		return plan.Plan{}, plan.Gone(e.From.Kind())
	}
	from := plan.FromOf(t)
	if from == nil || *from == e.From {
		return p, nil
	}
	now := plan.CopyOf(t)
	*plan.FromOf(now) = e.From
	return p.With(l, now)
}
