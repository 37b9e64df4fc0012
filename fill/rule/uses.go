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

// Why a rule does not look at a room.
var (
	NoSuchRoom = words.New("rule.leaves.no-such", "the section names no such room")
	UseUnknown = words.New("rule.leaves.unknown", "its use is not known")
)

// OnlyIn is the Leaves of a rule that looks at rooms of some uses alone.
func OnlyIn(uses ...plan.Use) func(*plan.Room, *code.Figures) words.Text {
	return func(r *plan.Room, _ *code.Figures) words.Text {
		switch {
		case slices.Contains(uses, r.Use):
			return words.Text{}
		case !r.Use.IsKnown():
			return UseUnknown
		}
		return NoSuchRoom
	}
}

// IfKnown is the Leaves of a rule that asks all rooms what they are for.
func IfKnown(r *plan.Room, _ *code.Figures) words.Text {
	if r.Use.IsKnown() {
		return words.Text{}
	}
	return UseUnknown
}
