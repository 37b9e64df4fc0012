package support_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/support"
	"studbay/plan"
	"studbay/plan/unit"
)

// under is a living room whose joists run beside the upper wall, the first in inches from it and
// so far apart, with an opening so far out from that wall.
func under(kind, code string, out, spacing, first float64, more ...func(*plan.Opening)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Room.Joists = plan.Joists{Along: r.Sides[0].ID, Spacing: ruletest.In(spacing), First: ruletest.In(first)}
		r.Opening(kind, r.Ceiling(72, out), append(more, ruletest.Tagged("A"), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} })...)
	}
}

// Joists at 16, 32, 48 ... leave 32-3/4 to 47-1/4 in. A box 4 in wide touches the one at 32 with
// its middle at 34-3/4 in; a 32nd more or less is not told.
func TestBoxesAmongJoists(t *testing.T) {
	const sixteenth = 1.0 / 16
	const practice = "common practice: two things cannot be in one place"
	at := func(code string, out float64) func(*ruletest.House) { return under("ceiling-light", code, out, 16, 16) }
	ruletest.Try(t, &support.CeilingFraming, []ruletest.Trial{
		ruletest.Case("against a joist", at("RD1", 34.75), 0, "it is held by it"),
		ruletest.Case("a sixteenth in it", at("RD1", 34.75-sixteenth), 1, practice),
		ruletest.Case("a sixteenth off it", at("RD1", 34.75+sixteenth), 1, "it wants a block"),
		ruletest.Case("over it", at("RD1", 32), 1, practice),
		ruletest.Case("against the next", at("RD1", 45.25), 0, "it is held by it"),
		ruletest.Case("a sixteenth in the next", at("RD1", 45.25+sixteenth), 1, practice),
		ruletest.Case("a pan under it", at("FN1", 32), 0, "it is screwed to its underside"),
		ruletest.Case("an old-work box over it", at("OW4", 32), 1, practice),
		ruletest.Case("an old-work box beside it", at("OW4", 40), 0, "it grips the board"),
		ruletest.Case("on a bar of 14-1/2", at("RD4", 40), 0, "trade practice: 14 to 22"),
		ruletest.Case("on a bar of 14", under("ceiling-light", "RD4", 38.75, 15.5, 15.5), 0, "trade practice: 14 to 22"),
		ruletest.Case("on a bar of a sixteenth less", under("ceiling-light", "RD4", 38.5, 15.5-sixteenth, 15.5-sixteenth), 1, "trade practice: 14 to 22"),
		ruletest.Case("on a bar of 22", under("ceiling-light", "RD4", 35.25, 23.5, 23.5), 0, "trade practice: 14 to 22"),
		ruletest.Case("on a bar of a sixteenth more", under("ceiling-light", "RD4", 35.25, 23.5+sixteenth, 23.5), 1, "trade practice: 14 to 22"),
		ruletest.Case("a housing of 6-3/8 in over it", under("recessed", "", 35, 16, 16), 1, "35 − 3-3/16 is less than 32-3/4"),
		ruletest.Case("a housing beside it", under("recessed", "", 40, 16, 16), 0, practice),
		ruletest.Case("one that is there", under("ceiling-light", "RD1", 32, 16, 16, ruletest.Existing), 0, "where it stands is no question"),
		ruletest.Case("one that goes", under("ceiling-light", "RD1", 32, 16, 16, ruletest.Removed), 0, "it will not be there"),
		ruletest.Case("nobody tells the joists", under("ceiling-light", "RD1", 32, 0, 0), 0, "what is not known is no fault"),
		ruletest.Case("only a spacing", under("ceiling-light", "RD1", 32, 16, 0), 1, "they are assumed at it"),
	})
}

func TestWhatIsToldOfBoxesAmongJoists(t *testing.T) {
	ruletest.Tells(t, &support.CeilingFraming, []ruletest.Telling{
		ruletest.Told("a joist in its place", under("ceiling-light", "RD1", 33, 16, 16), `
			stop: A in living; 1-1/2"
			A: a joist stands in its place
			Its near face is 31-1/4" from the wall that the joists run beside; it takes 1-1/2" of the 4" that the box needs.
			Move A by 1-3/4", against a joist:
			  no more A ceiling-light on living ceiling 72", 33", RD1
			  now A ceiling-light on living ceiling 72", 34-3/4", RD1
			Move A by 3-3/4", against a joist:
			  no more A ceiling-light on living ceiling 72", 33", RD1
			  now A ceiling-light on living ceiling 72", 29-1/4", RD1`, "32 − 3/4; 32-3/4 + 2 and 31-1/4 − 2"),
		ruletest.Told("in the middle of a bay", under("ceiling-light", "RD1", 41, 16, 16), `
			note: A in living
			A touches no joist: it wants a block of 14-1/2"
			A 2×4 between the joists, which leave 14-1/2" clear; or move it against one.
			Move A by 4-1/4", against a joist:
			  no more A ceiling-light on living ceiling 72", 41", RD1
			  now A ceiling-light on living ceiling 72", 45-1/4", RD1
			Move A by 6-1/4", against a joist:
			  no more A ceiling-light on living ceiling 72", 41", RD1
			  now A ceiling-light on living ceiling 72", 34-3/4", RD1`, "16 − 1-1/2; 47-1/4 − 2 and 32-3/4 + 2"),
		ruletest.Told("a bar that is too short", under("ceiling-light", "RD4", 36, 24, 24), `
			warn: A in living; 22-1/2" of 22"
			A: its bar hanger does not fit between joists 22-1/2" apart
			A bar spans 14" to 22" between them; add blocking for it to be screwed to.`, "24 − 1-1/2"),
	})
}

// TestJoistsThatNobodyTellsAreNotLookedAt: what is not known was not checked, and is said so.
func TestJoistsThatNobodyTellsAreNotLookedAt(t *testing.T) {
	sides := []*plan.Side{{ID: "saaaaaaaa"}}
	for _, tt := range []struct {
		name   string
		joists plan.Joists
		looks  bool
	}{
		{"nothing", plan.Joists{}, false},
		{"the wall alone", plan.Joists{Along: "saaaaaaaa"}, false},
		{"a spacing from no wall", plan.Joists{Spacing: 16 * unit.Inch}, false},
		{"a spacing", plan.Joists{Along: "saaaaaaaa", Spacing: 16 * unit.Inch}, true},
		{"a wall that is gone", plan.Joists{Along: "szzzzzzzz", Spacing: 16 * unit.Inch}, false},
		{"one taped", plan.Joists{Along: "saaaaaaaa", Places: []plan.StudPlace{{At: unit.Foot}}}, true},
	} {
		left := support.CeilingFraming.Leaves(&plan.Room{Sides: sides, Joists: tt.joists}, nil)
		if left.IsZero() != tt.looks {
			t.Errorf("%s: left out %q, want looked at %v", tt.name, left, tt.looks)
		}
	}
}
