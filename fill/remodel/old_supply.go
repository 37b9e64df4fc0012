package remodel

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// OldSupply looks for new lights on cables of unknown rating.
var OldSupply = rule.Rule{
	ID:     "old-supply",
	Title:  words.New("rule.old-supply.title", "New lights on old cable"),
	Figure: "luminaire-supply",
	Doc:    words.New("rule.old-supply.doc", `From memory. Many lights are marked for supply wires rated 90 °C, which the insulation of old cable is not. Told in a note is each new light in whose box an existing cable ends. Not checked: the marks of the light and of the cable.`),
	Opening: func(v index.OpeningView, _ *code.Figures) []rule.Finding {
		o, k := v.Opening, part.All().Kind(v.Opening.Kind)
		if k == nil || k.Family != part.Light || o.Status.IsOld() || !slices.ContainsFunc(v.Cables, func(c *plan.Cable) bool { return c.Existing }) {
			return nil
		}
		f := rule.OnBox(o, rule.Note)
		f.Message = words.New("rule.old-supply.light", "{0}: read what supply wires the light is marked for", o.Tag)
		f.Why = words.New("rule.old-supply.why", "An existing cable feeds it, and many lights want wires rated 90 °C (from memory).")
		return []rule.Finding{f}
	},
}
