package tool

import (
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// control takes a click while switches are joined to what they serve: the first is a
// switch, the others its loads or further switches for the same; one that cannot serve with
// it begins anew.
func (c *cable) control(t Window, id plan.ID) {
	o, _ := t.Plan().Opening(id)
	isSwitch := o != nil && familyOf(o) == part.Switch
	switch {
	case o == nil:
		t.Refuse(words.New("tool.control.panel", "A control is between openings: click a switch or a light"))
	case c.lead == "" && !isSwitch:
		t.Refuse(words.New("tool.control.switch-first", "{0} is not a switch: click the switch first", o.Tag))
	case c.lead == "":
		c.lead, c.made = id, controlOf(t.Plan(), id)
		t.Select(id)
	case id != c.lead && isSwitch && !c.isIn(t, id) && !(part.IsOneOfSeveral(c.leading(t)) && part.IsOneOfSeveral(o)):
		c.lead, c.made = id, controlOf(t.Plan(), id)
		t.Select(id)
		t.Say(words.New("tool.control.another", "Now what {0} serves; one light on two switches takes two three-way switches", o.Tag))
	case id != c.lead:
		c.join(t, id, isSwitch)
	}
}

// leading returns the switch whose loads are clicked.
func (c *cable) leading(t Window) *plan.Opening {
	o, _ := t.Plan().Opening(c.lead)
	return o
}

// isIn reports whether a switch is in the control in hand.
func (c *cable) isIn(t Window, id plan.ID) bool {
	now, ok := t.Plan().Controls.Get(c.made)
	return ok && slices.Contains(now.Switches, id)
}

func familyOf(o *plan.Opening) part.Family {
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Family
	}
	return ""
}

// controlOf returns the control that a switch is in, or nothing; of several the one of
// the lowest ID.
func controlOf(p plan.Plan, id plan.ID) plan.ID {
	for c := range p.Controls.All() {
		if slices.Contains(c.Switches, id) {
			return c.ID
		}
	}
	return ""
}

// join puts an opening into the control in hand, or takes it out where it is in it.
func (c *cable) join(t Window, id plan.ID, isSwitch bool) {
	now, ok := t.Plan().Controls.Get(c.made)
	switch {
	case !ok:
		made := t.NewID(plan.KindControl)
		if t.Do(edit.BeginControl{ID: made, Switch: c.lead, Opening: id, IsSwitch: isSwitch}) == nil {
			c.made = made
		}
	case slices.Contains(now.Switches, id) || slices.Contains(now.Loads, id):
		t.Do(edit.LeaveControl{ID: c.made, Opening: id})
	default:
		t.Do(edit.JoinControl{ID: c.made, Opening: id, IsSwitch: isSwitch})
	}
}
