package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// ChangeHeader sets what the plan says of itself. The tags given up and what is kept
// of newer files stay as they are in the plan, whatever Header says of them.
type ChangeHeader struct{ Header plan.Header }

// Name returns "Change plan details".
func (ChangeHeader) Name() words.Text { return words.New("edit.header", "Change plan details") }

// Apply fails where the header is not sound.
func (e ChangeHeader) Apply(p plan.Plan) (plan.Plan, error) {
	h := e.Header
	if p.Header != nil {
		h.NextTag, h.Extra = p.Header.NextTag, p.Header.Extra
	}
	if err := h.Check(); err != nil {
		return plan.Plan{}, err
	}
	p.Header = &h
	return p, nil
}

// SetUnits sets how the plan shows lengths: UnitsImperial or UnitsMetric.
type SetUnits struct{ Units string }

// Name returns "Change units".
func (SetUnits) Name() words.Text { return words.New("edit.units", "Change units") }

// Apply fails where the units are unknown.
func (e SetUnits) Apply(p plan.Plan) (plan.Plan, error) {
	h := plan.Header{Edition: "2023"}
	if p.Header != nil {
		h = *p.Header
	}
	h.Units = e.Units
	return ChangeHeader{h}.Apply(p)
}
