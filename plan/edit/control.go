package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// JoinControl puts an opening into a control: among its switches, or else among what it
// serves.
type JoinControl struct {
	ID       plan.ID
	Opening  plan.ID
	IsSwitch bool
}

// Name returns "Change control".
func (JoinControl) Name() words.Text { return Change{&plan.Control{}}.Name() }

// Apply fails with ErrGone where the control or the opening is not in the plan. An
// opening that is in the control already stays where it is.
func (e JoinControl) Apply(p plan.Plan) (plan.Plan, error) {
	was, ok := p.Controls.Get(e.ID)
	if !ok {
		return plan.Plan{}, plan.Gone(plan.KindControl)
	}
	c := *was
	list := &c.Loads
	if e.IsSwitch {
		list = &c.Switches
	}
	if slices.Contains(*list, e.Opening) {
		return p, nil
	}
	*list = append(slices.Clone(*list), e.Opening)
	return Change{&c}.Apply(p)
}

// LeaveControl takes an opening out of a control. With the last that is in it the control
// itself goes.
type LeaveControl struct {
	ID      plan.ID
	Opening plan.ID
}

// Name returns "Change control".
func (LeaveControl) Name() words.Text { return Change{&plan.Control{}}.Name() }

// Apply fails with ErrGone where the control is not in the plan. An opening that is not
// in the control changes nothing.
func (e LeaveControl) Apply(p plan.Plan) (plan.Plan, error) {
	was, ok := p.Controls.Get(e.ID)
	if !ok {
		return plan.Plan{}, plan.Gone(plan.KindControl)
	}
	is := func(id plan.ID) bool { return id == e.Opening }
	if !slices.ContainsFunc(was.Switches, is) && !slices.ContainsFunc(was.Loads, is) {
		return p, nil
	}
	c := *was
	c.Switches = slices.DeleteFunc(slices.Clone(c.Switches), is)
	c.Loads = slices.DeleteFunc(slices.Clone(c.Loads), is)
	if len(c.Switches)+len(c.Loads) == 0 {
		return Remove{Things: []plan.ID{e.ID}}.Apply(p)
	}
	return Change{&c}.Apply(p)
}
