package remodel_test

import (
	"testing"

	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// A room of 12 by 9 ft has diagonals of 15 (3, 4, 5 thrice). A quarter of an inch is let pass
// (common practice).
func TestReadingsThatMissOneAnother(t *testing.T) {
	taped := func(over unit.Length) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 108)
			r.Taped = geom.Taped{First: 12 * unit.Foot, Second: 9 * unit.Foot, Third: 12 * unit.Foot, Fourth: 9 * unit.Foot, Diagonal: 15 * unit.Foot}
			if over != -15*unit.Foot {
				r.Taped.Other = 15*unit.Foot + over
			}
		}
	}
	const sixteenth = unit.Inch / 16
	ruletest.Try(t, &remodel.TapedRoom, []ruletest.Trial{
		ruletest.Case("as long", taped(0), 0, "a rectangle"),
		ruletest.Case("3/16 more", taped(3*sixteenth), 0, "practice"),
		ruletest.Case("5/16 more", taped(5*sixteenth), 1, "practice"),
		ruletest.Case("5/16 less", taped(-5*sixteenth), 1, "practice"),
		ruletest.Case("3/16 less", taped(-3*sixteenth), 0, "practice"),
		ruletest.Case("no other diagonal", taped(-15*unit.Foot), 0, "nothing to compare"),
	})
	ruletest.Tells(t, &remodel.TapedRoom, []ruletest.Telling{
		ruletest.Told("half an inch", taped(8*sixteenth), `
			note, open, by practice: living; 1/2" of 1/4"
			living: the readings of the tape miss one another by 1/2"
			By four lengths and one diagonal the other would be 15' 0"; 15' 0-1/2" was read. Tape them again.`, "15 ft and 1/2"),
	})
}
