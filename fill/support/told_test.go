package support_test

import (
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/support"
	"studbay/plan"
)

// studded makes a room whose upper wall has studs at 16 in, 3-1/2 deep, and 1/2 of board: they
// stand from 47-1/4 to 48-3/4 and from 63-1/4 to 64-3/4.
func studded(h *ruletest.House) *ruletest.Room {
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	r.Sides[0].Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	r.Sides[0].Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(0.5)}}
	return r
}

func box(r *ruletest.Room, tag, code string, along float64, more ...func(*plan.Opening)) {
	r.Opening("duplex", r.On(0, along), append([]func(*plan.Opening){ruletest.Tagged(tag), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }}, more...)...)
}

func TestWhatIsToldOfSupport(t *testing.T) {
	ruletest.Tells(t, &support.NeedsSupport, []ruletest.Telling{
		ruletest.Told("in the middle of a bay", func(h *ruletest.House) {
			r := studded(h)
			box(r, "A", "SQ1", 57)
			box(r, "B", "SQ1", 73, ruletest.Existing)
			box(r, "C", "SQ1", 93.25) // against the stud at 96
			box(r, "D", "SQ1", 111)   // the one at 112 stands in it
			box(r, "E", "OW1", 120)   // it grips the board
			r.Break(plan.BreakPassage, 0, 16, 16)
			box(r, "F", "SQ1", 24) // in the opening
		}, `
			note: A in living
			A touches no stud: it wants a block of 14-1/2", set back 1-1/2"
			A 2×4 laid flat between the studs, from 14-1/4" to 17-3/4" above the finished floor.
			Move A to the right by 4-1/4":
			  no more A duplex on living/0 face 57", centre 16" up, SQ1
			  now A duplex on living/0 face 61-1/4", centre 16" up, SQ1
			Move A to the left by 6-1/4":
			  no more A duplex on living/0 face 57", centre 16" up, SQ1
			  now A duplex on living/0 face 50-3/4", centre 16" up, SQ1`,
			"16 − 1-1/2; a square stands even with the studs, 1-1/2 deep, 2 in to either hand of its middle"),
		ruletest.Told("no block fits", func(h *ruletest.House) { box(studded(h), "A", "PN1", 57) }, `
			note: A in living; 3-3/4" of 3-1/2"
			A touches no stud, and no block fits behind it
			Set back 2-1/4", a flat block of 1-1/2" would need 3-3/4"; the framing is 3-1/2" deep. An upright piece at a stud would hold the box, or a place at one.
			Move A to the right by 5-1/16":
			  no more A duplex on living/0 face 57", centre 16" up, PN1
			  now A duplex on living/0 face 62-1/16", centre 16" up, PN1
			Move A to the left by 7-1/8":
			  no more A duplex on living/0 face 57", centre 16" up, PN1
			  now A duplex on living/0 face 49-7/8", centre 16" up, PN1`,
			"2-3/4 − 1/2 of board and 1-1/2; the stud's flank is 1-5/32 from the middle, which a tape has as 62-1/16 and 49-7/8"),
		ruletest.Told("the far side of three gangs", func(h *ruletest.House) {
			box(studded(h), "A", "PN6", 51.6875, func(o *plan.Opening) { o.Gangs = 3 })
		}, `
			note: A in living
			A: its far side wants a block of 8-9/16"
			It has 3 gangs and one stud; a wide box is held at both sides (common practice).`, "14-1/2 less 5-15/16 of box"),
	})
}

func TestWhatIsToldOfStudsInTheWay(t *testing.T) {
	ruletest.Tells(t, &support.StudInWay, []ruletest.Telling{
		ruletest.Told("a square 1/2 in over a stud", func(h *ruletest.House) {
			r := studded(h)
			box(r, "A", "SQ1", 45.75)
			box(r, "B", "SQ1", 77.75, ruletest.Existing)
			r.Break(plan.BreakPassage, 0, 104, 16)
			box(r, "C", "SQ1", 112) // in the opening, which is told for itself
		}, `
			stop: A in living; 1/2"
			A: a stud stands in its place, 47-1/4" from the left end of the wall
			It takes 1/2" of the 4" that the box needs. Its place is assumed from the spacing: verify it with a tape.
			Move A to the left by 1/2":
			  no more A duplex on living/0 face 45-3/4", centre 16" up, SQ1
			  now A duplex on living/0 face 45-1/4", centre 16" up, SQ1
			Move A to the right by 5":
			  no more A duplex on living/0 face 45-3/4", centre 16" up, SQ1
			  now A duplex on living/0 face 50-3/4", centre 16" up, SQ1`, "45-3/4 + 2 − 47-1/4"),
		ruletest.Told("a stud that was taped", func(h *ruletest.House) {
			r := studded(h)
			r.Sides[0].Places = []plan.StudPlace{{At: ruletest.In(48), State: plan.StudMeasured}}
			r.Opening("duplex", r.On(0, 45.75), ruletest.Tagged("A"), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: "SQ1"} })
		}, `
			stop: A in living; 1/2"
			A: a stud stands in its place, 47-1/4" from the left end of the wall
			It takes 1/2" of the 4" that the box needs.
			Move A to the left by 1/2":
			  no more A duplex on living/0 face 45-3/4", centre 16" up, SQ1
			  now A duplex on living/0 face 45-1/4", centre 16" up, SQ1
			Move A to the right by 5":
			  no more A duplex on living/0 face 45-3/4", centre 16" up, SQ1
			  now A duplex on living/0 face 50-3/4", centre 16" up, SQ1`, "it is known"),
	})
}

// 314.27(C). Joists run beside the upper wall at 16, 32, 48 ...
func TestWhatIsToldOfFans(t *testing.T) {
	fan := func(h *ruletest.House, code string, y float64, spacing float64, more ...func(*plan.Opening)) {
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		if spacing > 0 {
			r.Room.Joists = plan.Joists{Along: r.Sides[0].ID, Spacing: ruletest.In(spacing), First: ruletest.In(16)}
		}
		r.Opening("fan-light", r.Ceiling(72, y), append(more, ruletest.Tagged("A"), func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} })...)
	}
	use := func(name, code, was string) string {
		return "\nUse “" + name + "”:\n  no more A fan-light on living ceiling 72\", 56\", " + was + "\n  now A fan-light on living ceiling 72\", 56\", " + code
	}
	ruletest.Tells(t, &support.FanSupport, []ruletest.Telling{
		ruletest.Told("no joist above it", func(h *ruletest.House) { fan(h, "FN2", 56, 16) }, `
			stop, NEC 2023 314.27(C): A in living; 8" of 2"
			A: no joist is above its box, the nearest 8" away
			The box is screwed to a joist; one on a brace hangs between two.`+use("Fan-rated round on a brace, 22.3", "FN3", "FN2"), "56 is between 48 and 64"),
		ruletest.Told("nobody tells the joists", func(h *ruletest.House) { fan(h, "FN2", 56, 0) }, `
			note, open, by practice: A in living
			A: it is not known whether a joist is above its box
			The box is screwed to a joist; enter where those of this ceiling are, or take one on a brace.`, "nothing tells"),
		ruletest.Told("it goes", func(h *ruletest.House) { fan(h, "RD1", 56, 16, ruletest.Removed) }, ``, "not there any more"),
	})
}
