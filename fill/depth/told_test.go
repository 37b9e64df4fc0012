package depth_test

import (
	"testing"

	"studbay/fill/depth"
	"studbay/fill/ruletest"
	"studbay/plan"
)

func square(box, ring string) func(*plan.Opening) {
	return func(o *plan.Opening) {
		o.Assembly = plan.Assembly{Box: box, Parts: []plan.AssemblyPart{{Part: ring}}}
	}
}

func coded(code string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
}

// faced makes a room whose upper wall is so deep and has layers so thick.
func faced(h *ruletest.House, deep float64, layers ...plan.Layer) *ruletest.Room {
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	r.Sides[0].Studs.Depth, r.Sides[0].Finish = ruletest.In(deep), layers
	return r
}

func layer(thick float64, more ...func(*plan.Layer)) plan.Layer {
	l := plan.Layer{Name: "layer", Thickness: ruletest.In(thick)}
	for _, m := range more {
		m(&l)
	}
	return l
}

func burns(l *plan.Layer)     { l.Combustible = true }
func undecided(l *plan.Layer) { l.Undecided = true }

func duplex(r *ruletest.Room, tag string, along float64, more ...func(*plan.Opening)) {
	r.Opening("duplex", r.On(0, along), append(more, ruletest.Tagged(tag))...)
}

func TestWhatIsToldOfDeepBoxes(t *testing.T) {
	ruletest.Tells(t, &depth.BoxDepth, []ruletest.Telling{
		ruletest.Told("1/16 deeper than the framing", func(h *ruletest.House) {
			r := faced(h, 1.4375)
			duplex(r, "A", 20, square("sq4-1.5", "ring4-1g-0.5"))
			duplex(r, "B", 40, square("sq4-1.5", "ring4-1g-0.5"), ruletest.Existing)
			duplex(r, "C", 60, func(o *plan.Opening) { o.Assembly = plan.Assembly{} })
		}, `
			stop: A in living; 1-1/2" of 1-7/16"
			A: the box is 1/16" deeper than the framing
			It reaches 1-1/2" behind the face of the studs; the framing is 1-7/16" deep.`, "two things cannot be in one place"),
		ruletest.Told("exactly as deep, and nobody tells", func(h *ruletest.House) {
			duplex(faced(h, 1.5), "A", 20, square("sq4-1.5", "ring4-1g-0.5"))
			duplex(h.Square(plan.UseHall, 300, 0, 144, 120), "B", 20, square("sq4-1.5", "ring4-1g-0.5"))
		}, ``, "one exactly as deep fits"),
	})
}

func TestWhatIsToldBackToBack(t *testing.T) {
	both := func(h *ruletest.House, more ...func(*plan.Opening)) {
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		next := h.Square(plan.UseBath, 0, -123.5, 144, 120)
		duplex(r, "A", 28, square("sq4-2.125", "ring4-1g-0.5"))
		next.Opening("duplex", next.On(2, 116), append(more, square("sq4-2.125", "ring4-1g-0.5"), ruletest.Tagged("B"))...)
	}
	const told = `
			stop: A in living; 4-1/4" of 3-1/2"
			A and B, back to back, are 3/4" too deep
			They reach 2-1/8" and 2-1/8" into framing 3-1/2" deep.
			Move A to the left by 4":
			  no more A duplex on living/0 face 28", centre 16" up
			  now A duplex on living/0 face 24", centre 16" up
			Move A to the right by 4":
			  no more A duplex on living/0 face 28", centre 16" up
			  now A duplex on living/0 face 32", centre 16" up` // 4 in is their width; nobody tells the studs
	ruletest.Tells(t, &depth.BackToBack, []ruletest.Telling{
		ruletest.Told("two of 2-1/8 in a 2×4", func(h *ruletest.House) { both(h) }, told, "trade table: 3/4 too deep"),
		ruletest.Told("one is there", func(h *ruletest.House) { both(h, ruletest.Existing) }, told, "told of the new one"),
		ruletest.Told("one goes", func(h *ruletest.House) { both(h, ruletest.Removed) }, ``, "it has no box any more"),
	})
}

// What the clamps of an old-work box grip is from memory: 1/4 to 1 in.
func TestWhatIsToldOfClamps(t *testing.T) {
	ruletest.Tells(t, &depth.OldWorkRange, []ruletest.Telling{
		ruletest.Told("too thick", func(h *ruletest.House) {
			r := faced(h, 3.5, layer(1.0625))
			duplex(r, "A", 20, coded("OW1"))
			duplex(r, "B", 40, coded("OW1"), ruletest.Existing)
			duplex(r, "C", 60, coded("PN1"))
		}, `
			stop: A in living; 1-1/16" of 1"
			A: the finish is 1/16" too thick for its clamps
			The finish is 1-1/16" thick; the clamps grip 1/4" to 1" (from memory, read it off the box).`, "1-1/16 − 1"),
		ruletest.Told("too thin", func(h *ruletest.House) { duplex(faced(h, 3.5, layer(0.1875)), "A", 20, coded("OW1")) }, `
			stop: A in living; 3/16" of 1/4"
			A: the finish is 1/16" too thin for its clamps
			The finish is 3/16" thick; the clamps grip 1/4" to 1" (from memory, read it off the box).`, "1/4 − 3/16"),
		ruletest.Told("within, both ends", func(h *ruletest.House) {
			duplex(faced(h, 3.5, layer(1)), "A", 20, coded("OW1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Finish = []plan.Layer{layer(0.25)}
			duplex(s, "B", 20, coded("OW1"))
		}, ``, "both included"),
		ruletest.Told("no finish told, and one undecided", func(h *ruletest.House) {
			duplex(faced(h, 3.5), "A", 20, coded("OW1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Finish = []plan.Layer{layer(0.5, undecided)}
			duplex(s, "B", 20, coded("OW1"))
		}, `
			note, open: A in living
			A: it is not known how thick the finish is that its clamps grip
			Its clamps grip 1/4" to 1" (from memory, read it off the box).

			note, open: B in hall
			B: it is not known how thick the finish is that its clamps grip
			Its clamps grip 1/4" to 1" (from memory, read it off the box).`, "no verdict"),
	})
}

// 314.20: no farther back than 1/4 in, and not at all behind what burns.
func TestWhatIsToldOfRings(t *testing.T) {
	ringed := coded("SQ1") // raised 1/2
	const now = `
			  no more A duplex on living/0 face 20", centre 16" up, SQ1
			  now A duplex on living/0 face 20", centre 16" up`
	ruletest.Tells(t, &depth.RingSetBack, []ruletest.Telling{
		ruletest.Told("too far back", func(h *ruletest.House) { duplex(faced(h, 3.5, layer(0.5), layer(0.375)), "A", 20, ringed) }, `
			stop, NEC 2023 314.20: A in living; 3/8" of 1/4"
			A: the ring ends 3/8" behind the finish
			The layers are 7/8" thick and the ring is raised 1/2"; it may end 1/4" back at most.
			Use a ring raised 3/4":`+now+`
			Use a ring raised 5/8":`+now, "1/2 + 3/8 − 1/2; rings of 5/8 to 7/8 would do"),
		ruletest.Told("as far back as it may, and even", func(h *ruletest.House) {
			duplex(faced(h, 3.5, layer(0.75)), "A", 20, ringed)
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Finish = []plan.Layer{layer(0.5, burns)}
			duplex(s, "B", 20, ringed)
		}, ``, "1/4 back; even behind wood"),
		ruletest.Told("behind wood", func(h *ruletest.House) { duplex(faced(h, 3.5, layer(0.5), layer(0.25, burns)), "A", 20, ringed) }, `
			stop, NEC 2023 314.20: A in living; 1/4" of 0"
			A: the ring ends 1/4" behind the finish
			The layers are 3/4" thick and the ring is raised 1/2"; behind a surface that burns it may not end back at all.
			Use a ring raised 3/4":`+now, "it may not end back at all"),
		ruletest.Told("out of the finish", func(h *ruletest.House) { duplex(faced(h, 3.5, layer(0.25)), "A", 20, ringed) }, `
			warn, by practice: A in living; 1/2" of 1/4"
			A: the ring stands 1/4" out of the finish
			The layers are 1/4" thick and the ring is raised 1/2": the plate would not lie on the wall (common practice).
			Use a ring raised 1/4":`+now, "1/2 − 1/4"),
		ruletest.Told("a box whose ears end before", func(h *ruletest.House) {
			r := faced(h, 3.5, layer(1.0625))
			duplex(r, "A", 20, coded("PN1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Finish = []plan.Layer{layer(1)}
			duplex(s, "B", 20, coded("PN1"))
		}, `
			warn, by practice: A in living; 1-1/16" of 1"
			A: the box would stand 1-1/16" out from the stud
			It has no ring and comes through the finish itself; its nails or ears let it stand 1" out (from memory, look at the box).`, "its ticks go to 1 in, from memory"),
		ruletest.Told("undecided", func(h *ruletest.House) {
			r := faced(h, 3.5, layer(0.5, undecided))
			duplex(r, "A", 20, ringed)
			duplex(r, "B", 40, coded("PN1"))
			duplex(h.Square(plan.UseHall, 300, 0, 144, 120), "C", 20, ringed) // no layer is told
		}, `
			note, open, NEC 2023 314.20: A in living
			A: its ring waits for the finish
			A layer of this wall is undecided; 1/2" is a guess. A box whose depth can be set later would serve any finish.
			Use “Plastic adjustable, one gang, 20.0”:
			  no more A duplex on living/0 face 20", centre 16" up, SQ1
			  now A duplex on living/0 face 20", centre 16" up, AJ1

			note, open, NEC 2023 314.20: B in living
			B: how far its box stands out waits for the finish
			A layer of this wall is undecided; 1/2" is a guess. A box whose depth can be set later would serve any finish.
			Use “Plastic adjustable, one gang, 20.0”:
			  no more B duplex on living/0 face 40", centre 16" up, PN1
			  now B duplex on living/0 face 40", centre 16" up, AJ1`, "no verdict; an adjustable box is proposed"),
		ruletest.Told("undecided, with boxes that are there or adjust", func(h *ruletest.House) {
			r := faced(h, 3.5, layer(0.5, undecided))
			duplex(r, "A", 20, ringed, ruletest.Existing)
			duplex(r, "B", 40, coded("PN1"), ruletest.Existing)
			duplex(r, "C", 60, coded("AJ1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Finish = []plan.Layer{layer(1.5, undecided)}
			duplex(s, "D", 20, coded("AJ1"))
			s.Sides[1].Finish = []plan.Layer{layer(1.5625)}
			s.Opening("duplex", s.On(1, 20), coded("AJ1"), ruletest.Tagged("E"))
		}, `
			note, open, NEC 2023 314.20: A in living
			A: its ring waits for the finish
			A layer of this wall is undecided; 1/2" is a guess. A box whose depth can be set later would serve any finish.

			warn, by practice: E in hall; 1-9/16" of 1-1/2"
			E: the box would stand 1-9/16" out from the stud
			It has no ring and comes through the finish itself; its nails or ears let it stand 1-1/2" out (from memory, look at the box).`, "what is there is not changed; it adjusts up to 1-1/2 in, from memory"),
	})
}
