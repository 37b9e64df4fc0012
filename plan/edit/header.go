package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// ChangeHeader sets what the plan says of itself. The tags given up, the last walk and what is
// kept of newer files stay as they are in the plan, whatever Header says of them.
type ChangeHeader struct{ Header plan.Header }

// Name returns "Change plan details".
func (ChangeHeader) Name() words.Text { return words.New("edit.header", "Change plan details") }

// Apply fails where the header is not sound.
func (e ChangeHeader) Apply(p plan.Plan) (plan.Plan, error) {
	h := e.Header
	if p.Header != nil {
		h.NextTag, h.Walked, h.Extra = p.Header.NextTag, p.Header.Walked, p.Header.Extra
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
	h := headerOf(p)
	h.Units = e.Units
	return ChangeHeader{h}.Apply(p)
}

func headerOf(p plan.Plan) plan.Header {
	if p.Header == nil {
		return plan.Header{Edition: "2023", Units: plan.UnitsImperial}
	}
	return *p.Header
}

// SetPrices sets which price book the plan names; empty: the prices of the program.
type SetPrices struct{ Book string }

// Name returns "Change the price book".
func (SetPrices) Name() words.Text { return words.New("edit.prices", "Change the price book") }

// Apply fails where the name leads to another machine.
func (e SetPrices) Apply(p plan.Plan) (plan.Plan, error) {
	h := headerOf(p)
	h.Prices = e.Book
	return ChangeHeader{h}.Apply(p)
}
