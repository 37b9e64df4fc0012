package edit

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// BeginControl adds a control of a switch and of one opening more, a further switch for the
// same or what it serves. Its letter is the first of a, b … z, aa, ab … that no control has.
type BeginControl struct {
	ID       plan.ID
	Switch   plan.ID
	Opening  plan.ID
	IsSwitch bool
}

// Name returns "Add control".
func (BeginControl) Name() words.Text { return Add{Thing: &plan.Control{}}.Name() }

// Apply fails with ErrTaken where the ID is in use, and with ErrGone where one of the
// openings is not in the plan.
func (e BeginControl) Apply(p plan.Plan) (plan.Plan, error) {
	c := plan.Control{ID: e.ID, Letter: freeLetter(p), Switches: []plan.ID{e.Switch}}
	if e.IsSwitch {
		c.Switches = append(c.Switches, e.Opening)
	} else {
		c.Loads = []plan.ID{e.Opening}
	}
	return Add{Thing: &c}.Apply(p)
}

// freeLetter returns the first of a, b … z, aa, ab … that no control has.
func freeLetter(p plan.Plan) string {
	taken := map[string]bool{}
	for c := range p.Controls.All() {
		taken[c.Letter] = true
	}
	for n := 0; ; n++ {
		if l := letterOf(n); !taken[l] {
			return l
		}
	}
}

func letterOf(n int) string {
	last := string(rune('a' + n%26))
	if n < 26 {
		return last
	}
	return letterOf(n/26-1) + last
}

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
