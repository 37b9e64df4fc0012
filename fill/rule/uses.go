package rule

import (
	"slices"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Grain is the most that rounding adds to a place or a length that runs aslant: thousands
// of times less than what people measure.
const Grain = 100 * unit.Nanometre

// OnlyIn is the Leaves of a rule that looks at rooms of some uses alone.
func OnlyIn(uses ...plan.Use) func(*plan.Room, *code.Figures) words.Text {
	return func(r *plan.Room, _ *code.Figures) words.Text {
		switch {
		case slices.Contains(uses, r.Use):
			return words.Text{}
		case !r.Use.IsKnown():
			return words.New("rule.wall-reach.leaves.unknown", "its use is not known")
		}
		return words.New("rule.wall-reach.leaves", "the section names no {0}", r.Use.Text())
	}
}
