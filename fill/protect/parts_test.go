package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// What else is in the room, or comes first in it, does not change what holds of one.
func TestOthersOfTheRoomDoNotMatter(t *testing.T) {
	ruletest.Try(t, &protect.ApplianceCircuits, []ruletest.Trial{
		ruletest.Case("a dining room's counter on one circuit", func(h *ruletest.House) {
			r := h.Square(plan.UseDining, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 240)
			tagged(r, h.Circuit(20), "counter", "A", "B")
		}, 0, "210.52(B)(3): of a kitchen"),
		ruletest.Case("a kitchen without a counter's receptacle", func(h *ruletest.House) {
			tagged(h.Square(plan.UseKitchen, 0, 0, 240, 120), h.Circuit(20), "duplex", "A")
		}, 0, "what is not drawn is no fault"),
		ruletest.Case("a laundry's light alone, on 15 A", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 240, 120)
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(h.Circuit(15)))
		}, 0, "210.11(C)(2): receptacles"),
		ruletest.Case("a bath's light on the circuit of a bedroom", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 120)
			c := h.Circuit(15)
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
			tagged(h.Square(plan.UseBedroom, 0, 300, 240, 120), c, "duplex", "B")
		}, 0, "210.11(C)(3): receptacles of the bath"),
		ruletest.Case("a bath, and a jack elsewhere", twoOf(plan.UseBath, "gfci", one("data", plan.UseBedroom)), 0, "a jack is no outlet of a branch circuit"),
		ruletest.Case("a bath with its light, and what goes elsewhere", twoOf(plan.UseBath, "gfci", func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit) {
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
			one("duplex", plan.UseBedroom, ruletest.Removed)(h, r, c)
		}), 0, "it will not be there"),
		ruletest.Case("a laundry, and what goes elsewhere", twoOf(plan.UseLaundry, "gfci", one("duplex", plan.UseBedroom, ruletest.Removed)), 0, "it will not be there"),
		ruletest.Case("a laundry, and a kind that nobody knows", twoOf(plan.UseLaundry, "gfci", one("gramophone", plan.UseBedroom, ruletest.Up(16))), 0, "nobody says that it is an outlet"),
	})
	ruletest.Try(t, &protect.ArcFault, []ruletest.Trial{
		ruletest.Case("one names no circuit", func(h *ruletest.House) {
			tagged(h.Square(plan.UseBedroom, 0, 0, 240, 120), nil, "duplex", "A")
		}, 1, "what is not said is a note"),
	})
	breaker := func(f plan.Flag) func(*plan.Circuit) { return func(c *plan.Circuit) { c.GFCI = f } }
	ruletest.Tells(t, &protect.GroundFault, []ruletest.Telling{
		ruletest.Told("two devices may be first, the breaker unsaid", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 120)
			c := h.Circuit(20, breaker(plan.FlagUnsaid))
			tagged(r, c, "duplex", "A")
			r.Opening("gramophone", r.On(1, 40), ruletest.Up(16), ruletest.On(c))
			r.Opening("gfci", r.On(2, 40), ruletest.Tagged("G"), ruletest.On(c))
			r.Opening("gfci", r.On(2, 80), ruletest.Tagged("H"), ruletest.On(c))
		}, `
			note, open, NEC 2023 210.8(A): A in bath
			A may be protected by G: no drawn cable says which comes first
			It is asked for in this room: bath.`, "what is not drawn is no fault"),
		ruletest.Told("a device that goes, before it by cable", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 240, 120)
			c := h.Circuit(20)
			g := r.Opening("gfci", r.On(2, 40), ruletest.On(c), ruletest.Removed)
			o := r.Opening("quad", r.On(0, 40), ruletest.Tagged("A"), ruletest.On(c))
			p := h.Square(plan.UseUtility, 0, 300, 120, 120).Fixture(plan.FixturePanel, 0, 40, 15)
			h.Cable(p.ID, g.ID, 12, 2, c)
			h.Cable(g.ID, o.ID, 12, 2, c)
		}, `
			stop, NEC 2023 210.8(A): A in bath
			A has no GFCI protection
			It is asked for in this room: bath.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "it will not be there"),
		ruletest.Told("a sink near, a basin farther", func(h *ruletest.House) {
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureSink, 0, 0, 30)
			r.Fixture(plan.FixtureBasin, 2, 200, 30)
			r.Opening("quad", r.On(0, 40), ruletest.Tagged("A"), ruletest.On(h.Circuit(20)))
		}, `
			stop, NEC 2023 210.8(A): A in utility
			A has no GFCI protection
			It is 10" by cord from the sink; within 6 ft it is asked for.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "210.8(A)(7)"),
	})
	ruletest.Try(t, &protect.GroundFault, []ruletest.Trial{
		ruletest.Case("a washer, and a dryer after it", func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 240, 120)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Fixture(plan.FixtureDryer, 0, 30, 30)
			tagged(r, h.Circuit(20), "quad", "A")
		}, 1, "210.8(A)(10)"),
		ruletest.Case("in one cabinet of two, 2017", func(h *ruletest.House) {
			h.Edition = "2017"
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureSink, 0, 0, 30)
			r.Fixture(plan.FixtureCabinet, 0, 40, 30)
			r.Fixture(plan.FixtureCabinet, 0, 80, 30)
			r.Opening("duplex", r.On(0, 50), ruletest.Up(24), ruletest.On(h.Circuit(20)))
		}, 0, "forums.mikeholt.com 149255: in 2017 the cord passes no door"),
		ruletest.Case("at one counter of two, 2020", func(h *ruletest.House) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 40, 30)
			r.Fixture(plan.FixtureCounter, 0, 150, 30)
			r.Opening("duplex", r.On(0, 50), ruletest.Up(42), ruletest.On(h.Circuit(20)))
		}, 1, "210.8(A)(6), 2020"),
	})
}

// The parts of a rated wall behind which either of two rooms lies.
func TestTwoRoomsBehindARatedWall(t *testing.T) {
	// The bedroom's lower side runs from the right: 60 along it is at 180 from the left, where
	// the office lies behind, 200 at 40, where the den does.
	behind := func(along float64, den, office bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			upper := h.Square(plan.UseBedroom, 0, 0, 240, 120)
			rooms := []*ruletest.Room{h.Square(plan.UseDen, 0, 124.5, 100, 120), h.Square(plan.UseOffice, 104.5, 124.5, 135.5, 120)}
			rooms[0].Sides[0].Rated, rooms[1].Sides[0].Rated = den, office
			for _, r := range append(rooms, upper) {
				for _, s := range r.Sides {
					s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(0.5)}}
				}
			}
			upper.Opening("duplex", upper.On(2, along), ruletest.Tagged("A"), built("SQ1"))
			r, at := rooms[0], 240-along
			if along < 135.5 {
				r, at = rooms[1], 240-104.5-along
			}
			r.Opening("duplex", r.On(0, at+10), ruletest.Tagged("B"), built("SQ1"))
			r.Opening("duplex", r.On(0, at), ruletest.Tagged("C"), built(""))
		}
	}
	told := func(face, from, to string) string {
		return `
			stop, IRC R302.4.2: A in bedroom; 6" of 24"
			A and B are 6" apart on opposite faces of a rated wall
			Along the wall, from edge to edge; 24" is asked, or listed putty pads on both.
			Move A to the right by 18":
			  no more A duplex on bedroom/2 face ` + from + `", centre 16" up, SQ1
			  now A duplex on bedroom/2 face ` + to + `", centre 16" up, SQ1
			Put listed pads on the boxes of this wall:
			  no more ` + face + `: rated true, pads false, studs at [] from 0" from the right false
			  now ` + face + `: rated true, pads true, studs at [] from 0" from the right false`
	}
	const source = "IRC R302.4.2; what is not built in is no box"
	ruletest.Tells(t, &protect.RatedWall, []ruletest.Telling{
		ruletest.Told("before the office, which alone is rated", behind(60, false, true), told("office/0", "60", "78"), source),
		ruletest.Told("before the office, both are rated", behind(60, true, true), told("office/0", "60", "78"), source),
		ruletest.Told("before the den, both are rated", behind(200, true, true), told("den/0", "200", "218"), source),
		ruletest.Told("before the den, which is not", behind(200, false, true), "", source),
		ruletest.Told("two gangs of plastic", func(h *ruletest.House) {
			r := aRated(h)
			r.Sides[0].Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(0.5)}}
			r.Opening("quad", r.On(0, 40), ruletest.Tagged("A"), built("PN4"))
		}, `
			stop, IRC R302.4.2: A in garage
			A: the plastic box has no known listing for a rated wall
			A box that is not of metal is listed for the wall it is set in; the catalog knows of no listing.`,
			"none of 32 in³ or more is within 16 in² of face"),
	})
	ruletest.Edges(t, &protect.RatedWall, []ruletest.Edge{
		ruletest.Limit("100 in² up to the last box", func(h *ruletest.House, over unit.Length) {
			r := aRated(h)
			for i := range 6 {
				r.Opening("duplex", r.On(0, 240-float64(12+16*i)), built("SQ1"))
			}
			r.Opening("duplex", r.On(0, 240-131), built("SQ1")).At.Along += over
		}, 0, 0, 1, "IRC R302.4.2: 100 in² in 120 in up to 10 in from the end"),
	})
	h := ruletest.New(t)
	upper, lower := aPartition(h, true, true, "")
	upper.Opening("duplex", upper.On(2, 140), built("SQ1"))
	lower.Opening("duplex", lower.On(0, 101), built("SQ1"))
	if found := h.Found(&protect.RatedWall); len(found) != 1 || found[0].Measured != rule.LengthOf(0) {
		t.Errorf("boxes one before the other: %+v, want 0 apart", found)
	}
}

// A wall of two depths: the least of them tells. 300.4(A)(1): 1-1/4 in from a hole of 3/4 in
// (common practice) in the middle.
func TestTheShallowestStudTells(t *testing.T) {
	// The upper room's lower side runs from the right. Between its boxes at 40 and 88 stand
	// the studs at 48 and 64, before the office, and at 80, before the den, and those that
	// end the office's wall at 68 and the den's at 74.
	wall := func(gaps [2]float64, from, to float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			upper := h.Square(plan.UseBedroom, 0, 0, 144, 120)
			h.Square(plan.UseDen, 0, 120+gaps[0], 70, 120)
			h.Square(plan.UseOffice, 76, 120+gaps[1], 68, 120)
			upper.Sides[2].Studs.Spacing = ruletest.In(16)
			a := upper.Opening("duplex", upper.On(2, from), ruletest.Tagged("A"))
			b := upper.Opening("duplex", upper.On(2, to), ruletest.Tagged("B"))
			h.Cable(a.ID, b.ID, 12, 2, nil)
		}
	}
	// (2-1/2 − 3/4) / 2 = 7/8.
	told := func(studs string) string {
		return `
			stop, NEC 2023 300.4(A)(1): A in bedroom; 7/8" of 1-1/4"
			A to B: holes for the cable lie 7/8" from the edges of the studs
			A hole of 3/4" in the middle of studs 2-1/2" deep, ` + studs + ` of them between the boxes. Without a steel plate at each, 1-1/4" is asked.
			Put steel plates on both edges of each stud that it bores:
			  now cable A to B: its holes are plated`
	}
	const source = "300.4(A)(1)"
	ruletest.Tells(t, &protect.CableEdge, []ruletest.Telling{
		ruletest.Told("deep, then shallow", wall([2]float64{2.5, 3.5}, 40, 88), told("5"), source),
		ruletest.Told("shallow, then deep", wall([2]float64{3.5, 2.5}, 40, 88), told("5"), source),
		ruletest.Told("shallow throughout", wall([2]float64{2.5, 2.5}, 40, 72), told("3"), source),
		ruletest.Told("drawn from the right", wall([2]float64{2.5, 2.5}, 72, 40), told("3"), source),
		ruletest.Told("one stud", wall([2]float64{2.5, 2.5}, 40, 56), told("1"), source),
		ruletest.Told("fished", func(h *ruletest.House) {
			wall([2]float64{2.5, 2.5}, 40, 88)(h)
			for _, s := range h.Rooms()[0].Sides {
				s.Condition = plan.ConditionClosed
			}
		}, "", "334.30(B)(1): it crosses no stud"),
		ruletest.Told("deep throughout", wall([2]float64{3.5, 3.5}, 40, 88), "", source),
	})
}
