package light

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
)

// SwitchPlace looks for switches that a door hides or whose box meets its casing.
var SwitchPlace = rule.Rule{
	ID:    "switch-place",
	Title: words.New("rule.switch-place.title", "Switches clear of doors"),
	Doc:   words.New("rule.switch-place.doc", `Common practice: a switch stands on the side of a door's latch, clear of its casing, and not on the side of its hinges where the open leaf hides it, as far from them as the door is wide. The face that the door is in is checked. A door whose hand or swing is not said hides nothing. Not checked: leaves that open against the next wall, what stands before a switch, and whether it is in reach of the door, which the route tells of.`),
	Side:  checkSwitchPlace,
}

func checkSwitchPlace(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	for _, o := range v.Openings {
		if !isSwitch(o) || o.Status != plan.StatusNew {
			continue
		}
		for _, c := range v.Cuts {
			if f, ok := misplaced(v, o, c); ok {
				found = append(found, f)
				break
			}
		}
	}
	return found
}

func misplaced(v rule.SideView, o *plan.Opening, c index.Cut) (f rule.Finding, ok bool) {
	at, b := frame.RectOf(o, v.Room), c.Break
	f = rule.Finding{Severity: rule.Warn, Opening: o.ID, About: o.ID, ByPractice: true}
	isBeside := at.Right > c.From-b.Casing && at.Left < c.From || at.Left < c.To+b.Casing && at.Right > c.To
	if b.Casing > 0 && isBeside && at.Bottom < b.Head && at.Top > b.Sill {
		f.Message = words.New("rule.switch-place.casing", "{0} meets the casing of a door or window", o.Tag)
		f.Why = words.New("rule.switch-place.casing.why", "The casing is {0} wide; its plate has no room.", b.Casing)
		return f, true
	}
	if hides := leaf(c); hides.From < o.At.Along && o.At.Along < hides.To {
		f.Message = words.New("rule.switch-place.behind", "{0} is behind the open door", o.Tag)
		f.Why = words.New("rule.switch-place.behind.why", "It is on the side of the hinges, within the width of the leaf; a hand looks for it at the latch.")
		return f, true
	}
	return f, false
}

// leaf returns what of a side the leaf of a door hides where it stands open against it;
// nothing where the two ends are equal.
func leaf(c index.Cut) (hides geom.Interval) {
	b := c.Break
	swing, hand := b.Swing, b.Hand
	if !c.IsOwn {
		swing, hand = seenFromBehind(swing, hand)
	}
	if b.Kind != plan.BreakDoor || swing != plan.SwingIn {
		return hides
	}
	switch hand {
	case plan.HandLeft:
		return geom.Interval{From: c.From - b.Width, To: c.From}
	case plan.HandRight:
		return geom.Interval{From: c.To, To: c.To + b.Width}
	}
	return hides
}

// seenFromBehind returns a door's swing and hand as its other face has them.
func seenFromBehind(s plan.Swing, h plan.Hand) (plan.Swing, plan.Hand) {
	switch s {
	case plan.SwingIn:
		s = plan.SwingOut
	case plan.SwingOut:
		s = plan.SwingIn
	}
	switch h {
	case plan.HandLeft:
		h = plan.HandRight
	case plan.HandRight:
		h = plan.HandLeft
	}
	return s, h
}
