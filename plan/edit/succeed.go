package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// Succeed puts a new opening in the stead of one that is there: moved elsewhere, or
// replaced by another at its place. The new one takes over tag, circuit and what switches
// it or is switched by it; the old one keeps its place, its box and its cables, until it
// is said what becomes of them.
type Succeed struct {
	Old    plan.ID
	By     plan.Opening
	Status plan.Status // of the old one from now on: moved or replaced
}

// Name returns "Move existing opening" or "Replace existing opening".
func (e Succeed) Name() words.Text {
	if e.Status == plan.StatusMoved {
		return words.New("edit.succeed.moved", "Move existing opening")
	}
	return words.New("edit.succeed.replaced", "Replace existing opening")
}

// Apply fails with ErrGone where the old opening is not in the plan, with ErrNoRoom where
// the new one cannot be where it says, and where the old one is not an existing one.
func (e Succeed) Apply(p plan.Plan) (plan.Plan, error) {
	old, _ := p.Opening(e.Old)
	if old == nil {
		return plan.Plan{}, plan.Gone(plan.KindOpening)
	}
	if old.Status != plan.StatusExisting {
		return plan.Plan{}, plan.Refuse(nil, "not-existing", "opening {0} is not an existing one", old.Tag)
	}
	by := e.By
	by.Tag, by.Circuit, by.Was, by.Status = old.Tag, old.Circuit, old.ID, plan.StatusNew
	p, err := ChangedOpening(p, old.ID, func(o *plan.Opening) {
		o.Status, o.Fate, o.Tag = e.Status, plan.FateUnsaid, oldTag(p, old.Tag)
	})
	if err != nil {
		return plan.Plan{}, err
	}
	if p, err = (AddOpening{by}).Apply(p); err != nil {
		return plan.Plan{}, err
	}
	for c := range p.Controls.All() {
		now := *c
		now.Switches, now.Loads = inStead(c.Switches, old.ID, by.ID), inStead(c.Loads, old.ID, by.ID)
		if slices.Equal(now.Switches, c.Switches) && slices.Equal(now.Loads, c.Loads) {
			continue
		}
		if p, err = (Change{Thing: &now}).Apply(p); err != nil {
			return plan.Plan{}, err
		}
	}
	return p, nil
}

// oldTag returns the tag that an opening goes by once another has taken over its own.
func oldTag(p plan.Plan, tag string) string {
	const mark = "-old"
	for n := 1; ; n++ {
		next := tag + mark
		if n > 1 {
			next = p.NextTag(tag + mark)
		}
		if n > 1 || p.IsTagFree(next) {
			return next
		}
	}
}

func inStead(ids []plan.ID, old, by plan.ID) []plan.ID {
	now := slices.Clone(ids)
	for i := range now {
		if now[i] == old {
			now[i] = by
		}
	}
	return now
}

// SetFate says what becomes of the old box of an opening that was moved or replaced. Where
// its cables are pulled on, or it is kept for the new opening, they end there from now on.
// A kept box is the new opening's, with what is known of it and of what is in it.
type SetFate struct {
	ID   plan.ID
	Fate plan.Fate
}

// Name returns "Say what becomes of the old box".
func (SetFate) Name() words.Text {
	return words.New("edit.fate", "Say what becomes of the old box")
}

// Apply fails with ErrGone where the opening is not in the plan, and where an opening of
// its status has no such fate.
func (e SetFate) Apply(p plan.Plan) (plan.Plan, error) {
	p, err := ChangedOpening(p, e.ID, func(o *plan.Opening) { o.Fate = e.Fate })
	by := p.Successor(e.ID)
	if err == nil && by != nil {
		p, err = inKept(p, e, by)
	}
	if err != nil || by == nil || e.Fate != plan.FateEmptied && e.Fate != plan.FateReused {
		return p, err
	}
	for c := range p.Cables.All() {
		if c.From != e.ID && c.To != e.ID {
			continue
		}
		now := *c
		if now.From == e.ID {
			now.From, now.FromSpace = by.ID, 0
		}
		if now.To == e.ID {
			now.To, now.ToSpace = by.ID, 0
		}
		if now.From == now.To {
			if p, err = (Remove{Things: []plan.ID{c.ID}}).Apply(p); err != nil {
				return plan.Plan{}, err
			}
			continue
		}
		if p, err = (Change{Thing: &now}).Apply(p); err != nil {
			return plan.Plan{}, err
		}
	}
	return p, nil
}

// inKept sets a new opening on the old box where that is kept. One that is not kept after all
// leaves it without a box.
func inKept(p plan.Plan, e SetFate, by *plan.Opening) (plan.Plan, error) {
	old, _ := p.Opening(e.ID)
	isKept := e.Fate == plan.FateReused
	if isKept == by.Assembly.Kept {
		return p, nil
	}
	return ChangedOpening(p, by.ID, func(o *plan.Opening) {
		o.Assembly, o.Contents = plan.Assembly{}, nil
		if !isKept {
			return
		}
		o.Assembly, o.Contents = old.Assembly, old.Contents
		o.Assembly.Kept = true
	})
}
