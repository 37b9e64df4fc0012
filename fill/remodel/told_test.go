package remodel_test

import (
	"testing"

	"studbay/fill/remodel"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// closed makes a room whose upper wall stays closed.
func closed(h *ruletest.House) *ruletest.Room {
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	r.Sides[0].Condition = plan.ConditionClosed
	return r
}

func coded(code string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
}

func put(r *ruletest.Room, tag, kind string, along float64, more ...func(*plan.Opening)) *plan.Opening {
	return r.Opening(kind, r.On(0, along), append(more, ruletest.Tagged(tag))...)
}

// Common practice: the screws and nails of other boxes are driven from the open side.
func TestWhatIsToldOfClosedWalls(t *testing.T) {
	ruletest.Tells(t, &remodel.ClosedWall, []ruletest.Telling{
		ruletest.Told("a nail-on box", func(h *ruletest.House) {
			r := closed(h)
			put(r, "A", "duplex", 40, coded("PN1"))
			put(r, "B", "duplex", 60, coded("PN1"), ruletest.Existing)
			put(r, "C", "duplex", 80, coded("OW1"))
			put(r, "D", "duplex", 100, coded(""))
			r.Opening("duplex", r.On(1, 40), ruletest.Tagged("E"))
		}, `
			stop, by practice: A in living
			A: its box cannot be fixed in a wall that stays closed
			“Plastic nail-on, one gang, 18.0” is fixed to the framing from the open side; an old-work box holds on to the finish.
			Use “Old-work plastic, one gang, 17.0”:
			  no more A duplex on living/0 face 40", centre 16" up, PN1
			  now A duplex on living/0 face 40", centre 16" up, OW1
			Use “Old-work plastic, one gang, 20.0”:
			  no more A duplex on living/0 face 40", centre 16" up, PN1
			  now A duplex on living/0 face 40", centre 16" up, OW2`, "it holds on to the finish"),
		ruletest.Told("a ceiling", func(h *ruletest.House) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 120)
			r.Room.Overhead = plan.ConditionClosed
			r.Opening("ceiling-light", r.Ceiling(72, 60), ruletest.Tagged("A"), coded("RD1"))
			r.Opening("fan-light", r.Ceiling(20, 60), ruletest.Tagged("B"), coded("FN1"))
		}, `
			stop, by practice: A in living
			A: its box cannot be fixed in a ceiling that stays closed
			“Plastic round, ceiling, 20.0, deep” is fixed to the framing from the open side; an old-work box holds on to the finish.
			Use “Old-work plastic round, 14.0”:
			  no more A ceiling-light on living ceiling 72", 60", RD1
			  now A ceiling-light on living ceiling 72", 60", OW4
			Use “Old-work plastic round, 20.0”:
			  no more A ceiling-light on living ceiling 72", 60", RD1
			  now A ceiling-light on living ceiling 72", 60", OW5

			stop, by practice: B in living
			B: its box cannot be fixed in a ceiling that stays closed
			“Fan-rated round, 4 × 1-1/2” is fixed to the framing from the open side; an old-work box holds on to the finish.`, "no old-work box carries a fan, 314.27(C)"),
	})
}

func TestWhatIsToldOfBays(t *testing.T) {
	blocked := func(what string) func(h *ruletest.House) {
		return func(h *ruletest.House) {
			r := closed(h)
			r.Sides[0].Probes = []plan.Probe{{From: ruletest.In(30), To: ruletest.In(42), What: what}}
			put(r, "A", "duplex", 40, coded("OW1"))
			put(r, "B", "duplex", 36, ruletest.Up(50), coded("OW1"), ruletest.Existing)
			put(r, "C", "duplex", 34, ruletest.Up(60), coded("WP1"))
		}
	}
	ruletest.Tells(t, &remodel.BlockedBay, []ruletest.Telling{
		ruletest.Told("blocked by a thing", blocked("a duct"), `
			stop: A in living
			A: the bay behind it is blocked
			From 2' 6" to 3' 6" along this wall there is something in the way: a duct.`, "as was found"),
		ruletest.Told("blocked by nobody knows what", blocked(""), `
			stop: A in living
			A: the bay behind it is blocked
			From 2' 6" to 3' 6" along this wall there is something in the way.`, "as was found"),
		ruletest.Told("nobody looked", func(h *ruletest.House) {
			r := closed(h)
			// It takes 38-27/32 to 41-5/32, and 14-1/8 to 17-7/8: each of these falls short by 1/32.
			r.Sides[0].Probes = []plan.Probe{
				{From: ruletest.In(38.875), To: ruletest.In(50), Clear: true}, {From: ruletest.In(30), To: ruletest.In(41.125), Clear: true},
				{From: ruletest.In(30), To: ruletest.In(50), Bottom: ruletest.In(14.1875), Clear: true},
				{From: ruletest.In(30), To: ruletest.In(50), Top: ruletest.In(17.8125), Clear: true},
			}
			put(r, "A", "duplex", 40, coded("OW1"))
			put(r, "B", "duplex", 40, ruletest.Up(60), coded("PN1")) // told for being no old-work box
		}, `
			note, open, by practice: A in living
			A: nobody has looked whether the bay behind it is clear
			Drill a small hole where the box hides it and feel with a bent wire before you cut (common practice).
			Say: it was found clear:`, "all of it has to be proven"),
		ruletest.Told("found clear, and an open wall", func(h *ruletest.House) {
			r := closed(h)
			r.Sides[0].Probes = []plan.Probe{{From: ruletest.In(38.8125), To: ruletest.In(41.1875), Bottom: ruletest.In(14.125), Top: ruletest.In(17.875), Clear: true}}
			put(r, "A", "duplex", 40, coded("OW1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			put(s, "B", "duplex", 40, coded("OW1"))
		}, ``, "clear to its edges"),
	})
}

// The plate of a box at 16 goes from 13.755 to 18.245 in.
func TestWhatIsToldOfTrim(t *testing.T) {
	trimmed := func(h *ruletest.House, trim ...plan.Trim) *ruletest.Room {
		r := h.Square(plan.UseLiving, 0, 0, 144, 120)
		r.Sides[0].Trim = trim
		return r
	}
	ruletest.Tells(t, &remodel.TrimClash, []ruletest.Telling{
		ruletest.Told("a baseboard", func(h *ruletest.House) {
			r := trimmed(h, plan.Trim{Name: "baseboard", Height: ruletest.In(14), Measured: true})
			put(r, "A", "duplex", 40)
			put(r, "B", "duplex", 80, ruletest.Existing)
		}, `
			warn, by practice: A in living; 1/4"
			A: its plate lies ≈ 1/4" over the baseboard
			The plate goes from ≈ 13-3/4" to ≈ 18-1/4" above the floor, the baseboard from 0" to 14".
			Raise A by 1/4":
			  no more A duplex on living/0 face 40", centre 16" up, PN2
			  now A duplex on living/0 face 40", centre 16-1/4" up, PN2`, "14 − 13.755; below it there is the floor"),
		ruletest.Told("a rail nobody measured", func(h *ruletest.House) {
			put(trimmed(h, plan.Trim{Name: "chair rail", Bottom: ruletest.In(17), Height: ruletest.In(3)}), "A", "duplex", 40)
		}, `
			warn, by practice: A in living; 1-1/4"
			A: its plate lies ≈ 1-1/4" over the chair rail
			The plate goes from ≈ 13-3/4" to ≈ 18-1/4" above the floor, the chair rail from 17" to 20", which is assumed: measure it.
			Lower A by 1-1/4":
			  no more A duplex on living/0 face 40", centre 16" up, PN2
			  now A duplex on living/0 face 40", centre 14-3/4" up, PN2
			Raise A by 6-1/4":
			  no more A duplex on living/0 face 40", centre 16" up, PN2
			  now A duplex on living/0 face 40", centre 22-1/4" up, PN2`, "18.245 − 17 down, 20 − 13.755 up: the nearer first"),
		ruletest.Told("between a baseboard and a rail", func(h *ruletest.House) {
			put(trimmed(h, plan.Trim{Name: "baseboard", Height: ruletest.In(13)}, plan.Trim{Name: "chair rail", Bottom: ruletest.In(17), Height: ruletest.In(3)}), "A", "duplex", 40)
		}, `
			warn, by practice: A in living; 1-1/4"
			A: its plate lies ≈ 1-1/4" over the chair rail
			The plate goes from ≈ 13-3/4" to ≈ 18-1/4" above the floor, the chair rail from 17" to 20", which is assumed: measure it.
			Raise A by 6-1/4":
			  no more A duplex on living/0 face 40", centre 16" up, PN2
			  now A duplex on living/0 face 40", centre 22-1/4" up, PN2`, "12-1/2 would lie on the baseboard"),
	})
}

// Studs were taped at 16, 32 and 48.
func TestWhatIsToldPastTheLastStud(t *testing.T) {
	ruletest.Tells(t, &remodel.FindStud, []ruletest.Telling{
		ruletest.Told("past it", func(h *ruletest.House) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 120)
			for _, at := range []float64{16, 32, 48} {
				r.Sides[0].Places = append(r.Sides[0].Places, plan.StudPlace{At: ruletest.In(at), State: plan.StudMeasured})
			}
			put(r, "A", "duplex", 60, coded("SQ1"))
			put(r, "B", "duplex", 40, coded("SQ1"))
			put(r, "C", "duplex", 100, coded("SQ1"), ruletest.Existing)
			put(r, "D", "duplex", 120, coded("WP1"))
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Sides[0].Studs.Spacing = ruletest.In(16)
			put(s, "E", "duplex", 140, coded("SQ1"))
		}, `
			note, open, by practice: A in living
			A: find the stud first
			The studs of this wall are known from 1' 4" to 4' 0"; the box goes from 4' 10" to 5' 2".`, "60 − 2 and 60 + 2"),
	})
}

func TestWhatIsToldOfOldBoxes(t *testing.T) {
	gone := func(status plan.Status, fate plan.Fate, cables int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseLiving, 0, 0, 144, 120)
			old := put(r, "A", "duplex", 40, func(o *plan.Opening) { o.Status, o.Fate = status, fate })
			for i := range cables {
				h.Cable(put(r, string(rune('B'+i)), "duplex", 80+10*float64(i)).ID, old.ID, 14, 2, nil)
			}
		}
	}
	ruletest.Tells(t, &remodel.OldBox, []ruletest.Telling{
		ruletest.Told("replaced", gone(plan.StatusReplaced, plan.FateUnsaid, 0), `
			note, open, NEC 2023 314.29: A in living
			A: say what becomes of its old box
			A box with wires in it stays accessible, whatever covers it.
			Say: old box kept for the new one:
			Say: old box taken out:`, "it is kept or taken out"),
		ruletest.Told("said", gone(plan.StatusReplaced, plan.FateOut, 0), ``, "no question"),
	})
	ruletest.Tells(t, &remodel.CableEnd, []ruletest.Telling{
		ruletest.Told("one cable", gone(plan.StatusRemove, plan.FateUnsaid, 1), `
			warn, NEC 2023 314.29: A in living; 1
			A goes, and a cable ends in it
			Pull the cable on to another box, take it out, or keep the box under a blank cover.`, "a cable ends in a box"),
		ruletest.Told("two", gone(plan.StatusReplaced, plan.FateOut, 2), `
			warn, NEC 2023 314.29: A in living; 2
			A goes, and 2 cables end in it
			Pull the cable on to another box, take it out, or keep the box under a blank cover.`, "a cable ends in a box"),
		ruletest.Told("dead, and not said", func(h *ruletest.House) {
			gone(plan.StatusMoved, plan.FateDead, 1)(h)
		}, ``, "they are disconnected at both ends"),
		ruletest.Told("asked by itself", gone(plan.StatusReplaced, plan.FateUnsaid, 1), ``, "not said yet"),
	})
}

// From memory: 406.4(D), 250.130(C) and 410.21.
func TestWhatIsToldOfOldCables(t *testing.T) {
	fed := func(h *ruletest.House, tag, kind string, more func(*plan.Cable), was ...func(*plan.Opening)) (feed, o *plan.Opening) {
		r := h.Square(plan.UseLiving, 0, 300*float64(len(tag)+h.Plan.Cables.Len()), 144, 120)
		feed = put(r, "J"+tag, "junction", 20, ruletest.Existing)
		o = put(r, tag, kind, 60, was...)
		c := h.Cable(feed.ID, o.ID, 14, 2, nil)
		now := *c
		now.Existing, now.Ground = true, false
		if more != nil {
			more(&now)
		}
		h.Plan.Cables = h.Plan.Cables.With(&now)
		return feed, o
	}
	ruletest.Tells(t, &remodel.OldGround, []ruletest.Telling{
		ruletest.Told("no ground", func(h *ruletest.House) {
			fed(h, "A", "duplex", nil)
			fed(h, "B", "gfci", nil, func(o *plan.Opening) { o.Was = "o99999999" })
			fed(h, "C", "duplex", nil, ruletest.Existing)
			fed(h, "D", "duplex", func(c *plan.Cable) { c.Ground = true })
			fed(h, "E", "wall-light", nil)
			fed(h, "F", "duplex", func(c *plan.Cable) { c.Existing = false })
		}, `
			stop, NEC 2023 250.130(C): A in living
			A: no grounding conductor reaches it
			The existing cable that feeds it carries none. Run a grounding conductor to it, or protect it by GFCI and mark it “No Equipment Ground” where it replaces an old one.`, "a new receptacle with a slot is grounded"),
		ruletest.Told("nobody looked", func(h *ruletest.House) {
			fed(h, "A", "duplex", func(c *plan.Cable) { c.GroundUnseen = true })
		}, `
			note, open, NEC 2023 250.130(C): A in living
			A: nobody has checked whether a grounding conductor reaches it
			Open the box that the existing cable ends in, with the power off and proven off, and look.`, "not known"),
		ruletest.Told("one known to have none beside one nobody looked at", func(h *ruletest.House) {
			_, o := fed(h, "A", "duplex", func(c *plan.Cable) { c.GroundUnseen = true })
			r := h.Square(plan.UseHall, 300, 0, 144, 120)
			c := *h.Cable(put(r, "K", "junction", 20, ruletest.Existing).ID, o.ID, 14, 2, nil)
			c.Existing, c.Ground = true, false
			h.Plan.Cables = h.Plan.Cables.With(&c)
		}, `
			stop, NEC 2023 250.130(C): A in living
			A: no grounding conductor reaches it
			The existing cable that feeds it carries none. Run a grounding conductor to it, or protect it by GFCI and mark it “No Equipment Ground” where it replaces an old one.`, "what is known goes before what is not"),
		ruletest.Told("a panel by grounding conductors", func(h *ruletest.House) {
			_, o := fed(h, "A", "duplex", nil)
			r := h.Square(plan.UseHall, 300, 0, 144, 120)
			panel := r.Stand(plan.FixturePanel, r.On(0, 20), 14, 4)
			next := put(r, "B", "duplex", 60)
			h.Cable(panel.ID, next.ID, 14, 2, nil)
			h.Cable(o.ID, next.ID, 14, 2, nil)
		}, ``, "they lead to a panel"),
	})
	ruletest.Tells(t, &remodel.OldSupply, []ruletest.Telling{
		ruletest.Told("a new light", func(h *ruletest.House) {
			fed(h, "A", "wall-light", nil)
			fed(h, "B", "wall-light", nil, ruletest.Existing)
			fed(h, "C", "duplex", nil)
			fed(h, "D", "wall-light", func(c *plan.Cable) { c.Existing = false })
		}, `
			note, NEC 2023 410.21: A in living
			A: read what supply wires the light is marked for
			An existing cable feeds it, and many lights want wires rated 90 °C (from memory).`, "insulation of old cable"),
	})
}

func TestWhatIsToldOfWings(t *testing.T) {
	ruletest.Tells(t, &remodel.WingRoom, []ruletest.Telling{
		ruletest.Told("beside a stud", func(h *ruletest.House) {
			r := closed(h)
			r.Sides[0].Places = []plan.StudPlace{{At: ruletest.In(42), State: plan.StudMeasured}}
			put(r, "A", "duplex", 40, coded("OW1"))
		}, `
			warn, by practice: A in living; 1/8" of 1/4"
			A: a stud leaves ≈ 1/8" beside the box for its wings
			They want 1/4" clear (from memory, read it off the box).
			Move A to the left by 3/16":
			  no more A duplex on living/0 face 40", centre 16" up, OW1
			  now A duplex on living/0 face 39-13/16", centre 16" up, OW1
			Move A to the right by 4-3/16":
			  no more A duplex on living/0 face 40", centre 16" up, OW1
			  now A duplex on living/0 face 44-3/16", centre 16" up, OW1`, "41-1/4 − 41-5/32 = 3/32, to the nearest 1/16 half away from zero; 2-5/32 off 42 to either hand, in whole 16ths"),
	})
}
