package support_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/support"
	"studbay/plan"
	"studbay/plan/unit"
)

const hundredth = unit.Pound / 100

// hung is a living room with a light or a fan of a weight; its place is in the ceiling, or on
// the upper wall.
func hung(kind, code string, weight, marked unit.Weight, isOnWall bool, more ...func(*plan.Opening)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		at := r.Ceiling(72, 48)
		if isOnWall {
			at = r.On(0, 72)
		}
		r.Opening(kind, at, append(more, ruletest.Tagged("A"), func(o *plan.Opening) {
			o.Assembly.Code, o.Assembly.Carries, o.Weight = code, marked, weight
		})...)
	}
}

// NEC 314.27(A)(1) and (2): 50 lb unless marked, 6 lb on any box by the exception of (A)(1);
// (C): a fan to 35 lb, to 70 where the box says so, none heavier.
func TestWeightsThatBoxesCarry(t *testing.T) {
	const lb = unit.Pound
	const a, c = "NEC 2023 314.27(A)", "NEC 2023 314.27(C)"
	for metric := range 2 {
		limits := []ruletest.Trial{
			ruletest.Case("50 lb from a ceiling", hung("pendant", "RD1", 50*lb, 0, false), 0, a),
			ruletest.Case("a hundredth more", hung("pendant", "RD1", 50*lb+hundredth, 0, false), 1, a),
			ruletest.Case("60 lb from one marked for 60", hung("pendant", "RD2", 60*lb, 60*lb, false), 0, a),
			ruletest.Case("a hundredth more than marked", hung("pendant", "RD2", 60*lb+hundredth, 60*lb, false), 1, a),
			ruletest.Case("20 lb from one marked for 15", hung("pendant", "OW4", 20*lb, 15*lb, false), 1, a),
			ruletest.Case("50 lb on a wall", hung("wall-light", "RD1", 50*lb, 0, true), 0, a),
			ruletest.Case("a hundredth more on a wall", hung("wall-light", "RD1", 50*lb+hundredth, 0, true), 1, a),
			ruletest.Case("6 lb on a box for devices", hung("wall-light", "PN1", 6*lb, 0, true), 0, "the exception of 314.27(A)(1)"),
			ruletest.Case("a hundredth more on it", hung("wall-light", "PN1", 6*lb+hundredth, 0, true), 1, "the exception of 314.27(A)(1)"),
			ruletest.Case("6 lb on a ring", hung("wall-light", "SQ1", 6*lb, 0, true), 0, "the exception of 314.27(A)(1)"),
			ruletest.Case("a hundredth more on a ring", hung("wall-light", "SQ1", 6*lb+hundredth, 0, true), 1, "the exception of 314.27(A)(1)"),
			ruletest.Case("10 lb on one marked for 10", hung("wall-light", "PN1", 10*lb, 10*lb, true), 0, a),
			ruletest.Case("nobody tells the weight", hung("pendant", "RD1", 0, 0, false), 0, "what is not known is no fault"),
			ruletest.Case("it goes", hung("pendant", "RD1", 80*lb, 0, false, ruletest.Removed), 0, "it will not be there"),
			ruletest.Case("an old box, nothing read", hung("pendant", "", 80*lb, 0, false, ruletest.Existing), 0, "what it carries is not known"),
			ruletest.Case("an old box, its mark read", hung("pendant", "", 60*lb+hundredth, 60*lb, false, ruletest.Existing), 1, a),
			ruletest.Case("an old box on a wall, its mark read", hung("wall-light", "", 10*lb, 10*lb, true, ruletest.Existing), 0, a),
			ruletest.Case("an old box marked for a fan", hung("fan-light", "", 35*lb+hundredth, 0, false, ruletest.Existing, func(o *plan.Opening) { o.Assembly.ForFan = plan.AnswerYes }), 1, c),
			ruletest.Case("one that hangs already", hung("pendant", "RD1", 80*lb, 0, false, ruletest.Existing), 1, a),
			ruletest.Case("a housing of its own", hung("recessed", "", 80*lb, 0, false), 0, "it hangs from no box"),
			ruletest.Case("a receptacle", hung("duplex", "PN1", 80*lb, 0, true), 0, "it hangs from nothing"),
			ruletest.Case("a fan of 35 lb", hung("fan-light", "FN2", 35*lb, 0, false), 0, c),
			ruletest.Case("a hundredth more, mark not read", hung("fan-light", "FN2", 35*lb+hundredth, 0, false), 1, c),
			ruletest.Case("50 lb, marked for 50", hung("fan-light", "FN2", 50*lb, 50*lb, false), 0, c),
			ruletest.Case("a hundredth more, marked for 50", hung("fan-light", "FN2", 50*lb+hundredth, 50*lb, false), 1, c),
			ruletest.Case("70 lb, marked for 70", hung("fan-light", "FN2", 70*lb, 70*lb, false), 0, c),
			ruletest.Case("a hundredth more than any box carries", hung("fan-light", "FN2", 70*lb+hundredth, 75*lb, false), 1, c),
		}
		for i := range limits {
			change := limits[i].Make
			limits[i].Make = func(h *ruletest.House) { h.Metric = metric == 1; change(h) }
		}
		ruletest.Try(t, &support.BoxWeight, limits)
	}
}

func TestWhatIsToldOfWeights(t *testing.T) {
	ruletest.Tells(t, &support.BoxWeight, []ruletest.Telling{
		ruletest.Told("a chandelier of 60 lb", hung("pendant", "RD1", 60*unit.Pound, 0, false), `
			stop, NEC 2023 314.27(A): A in living; 60 lb of 50 lb
			A: the light weighs 60 lb, its box carries 50 lb
			Hang it from the framing, not from the box, or take a box that is marked for it and enter what that says.`, "314.27(A)(2)"),
		ruletest.Told("a fan of 40 lb, mark not read", hung("fan-light", "FN2", 40*unit.Pound, 0, false), `
			note, open, NEC 2023 314.27(C): A in living; 40 lb of 35 lb
			A: read whether its box is marked for a fan of 40 lb
			Over 35 lb a box says the most that it carries; enter what it says.`, "314.27(C)"),
		ruletest.Told("a fan of 80 lb", hung("fan-light", "FN2", 80*unit.Pound, 80*unit.Pound, false), `
			stop, NEC 2023 314.27(C): A in living; 80 lb of 70 lb
			A: the fan weighs 80 lb, no box carries one of more than 70 lb
			A heavier fan hangs from the framing, not from the box.`, "314.27(C)"),
	})
}
