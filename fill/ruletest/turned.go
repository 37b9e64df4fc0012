package ruletest

import (
	"slices"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
)

// HoldsTurned reports it as an error where a rule says something else of the house once
// it is mirrored or turned by quarters.
func (h *House) HoldsTurned(of *rule.Rule) {
	h.T.Helper()
	p := h.Made()
	want := filltest.Said(filltest.FoundIn(h.T, p, of.ID))
	if one := len(p.Levels) == 1; !one {
		return // levels are turned each about its own middle
	}
	var rooms []plan.ID
	for r := range p.Levels[0].Rooms.All() {
		rooms = append(rooms, r.ID)
	}
	try := func(name string, e edit.Edit, p plan.Plan) plan.Plan {
		next, err := e.Apply(p)
		if err != nil {
			h.T.Errorf("%s: %v", name, err)
			return p
		}
		if got := filltest.Said(filltest.FoundIn(h.T, next, of.ID)); !slices.Equal(got, want) {
			h.T.Errorf("%s: %s says %q, want %q", name, of.ID, got, want)
		}
		return next
	}
	try("mirrored", arrange.Mirror{Things: rooms}, p)
	for _, turn := range []string{"turned once", "turned twice", "turned thrice"} {
		p = try(turn, arrange.Turn{Things: rooms}, p)
	}
}
