package fill

import (
	"fmt"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/unit"
)

// FiguresOf returns the figures a plan is checked against: its edition with its local
// amendments on top, in its units. The error says which part of the plan is at fault.
func FiguresOf(p plan.Plan) (*code.Figures, error) {
	edition := code.Latest().Edition
	if p.Header != nil && p.Header.Edition != "" {
		edition = p.Header.Edition
	}
	fig, err := code.Edition(edition)
	if err != nil {
		return nil, err
	}
	var changes []code.Amendment
	for a := range p.Amendments.All() {
		changes = append(changes, code.Amendment{Figure: a.Figure, Value: a.Value, Rule: a.Rule, Reason: a.Reason})
	}
	amended, err := fig.WithAmendments(changes)
	if err != nil {
		return nil, fmt.Errorf("the plan's local amendments: %w", err)
	}
	return amended.InUnits(p.Header.System()), nil
}

// amendedFrom is what figures were made from.
type amendedFrom struct {
	edition    string
	units      unit.System
	amendments plan.Set[*plan.Amendment]
}

// figures returns the plan's figures, the same pointer as long as what they are made
// from is the same.
func (c *Checker) figures(p plan.Plan) (*code.Figures, amendedFrom, error) {
	from := amendedFrom{amendments: p.Amendments}
	if p.Header != nil {
		from.edition, from.units = p.Header.Edition, p.Header.System()
	}
	if c.fig != nil && from == c.from {
		return c.fig, from, nil
	}
	fig, err := FiguresOf(p)
	return fig, from, err
}
