package clash_test

import (
	"testing"

	"studbay/fill/clash"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// A plate of one gang is 2-3/4 by 4.49 in and its box 2-5/16 by 3-3/4; one of two gangs is
// 4-1/2 wide. No house here tells its studs, so that a box which wants one is offered no other
// place, and one with no box chosen the places beside itself, 2-5/16 off.
func noBox(o *plan.Opening) { o.Assembly = plan.Assembly{} }

func aRoom(h *ruletest.House) *ruletest.Room { return h.Square(plan.UseLiving, 0, 0, 144, 120) }

func put(tag, kind string, side int, along, up float64, more ...func(*plan.Opening)) func(*ruletest.Room) *plan.Opening {
	return func(r *ruletest.Room) *plan.Opening {
		return r.Opening(kind, r.On(side, along), append([]func(*plan.Opening){ruletest.Tagged(tag), ruletest.Up(up)}, more...)...)
	}
}

func TestWhatIsToldOfCasings(t *testing.T) {
	door := func(r *ruletest.Room) {
		r.Break(plan.BreakDoor, 0, 40, 30, func(b *plan.Break) { b.Casing = ruletest.In(3) })
	}
	ruletest.Tells(t, &clash.Casing, []ruletest.Telling{
		ruletest.Told("a plate over the trim", func(h *ruletest.House) {
			r := aRoom(h)
			door(r)
			put("A", "duplex", 0, 74, 16, noBox)(r)
			put("B", "duplex", 0, 74.6875, 30)(r)                     // its plate begins where the trim ends
			put("C", "duplex", 0, 74, 50, ruletest.Existing)(r)       // it is there
			put("D", "duplex", 0, 69, 70)(r)                          // in the door itself: told for that
			put("E", "duplex", 0, 36, 50, ruletest.Removed, noBox)(r) // it goes
		}, `
			stop: A in living; 11/16"
			A: its plate lies 11/16" over the casing of a door
			The casing runs from 3' 0-11/16" to 6' 1-5/16" along this wall; the plate from 6' 0-5/8" to 6' 3-3/8".
			Move A to the right by 2-5/16":
			  no more A duplex on living/0 face 74", centre 16" up
			  now A duplex on living/0 face 76-5/16", centre 16" up`,
			"70 + 5/16 + 3 = 73-5/16 in; the plate begins 1-3/8 before 74"),
	})
}

func TestWhatIsToldOfPlates(t *testing.T) {
	ruletest.Tells(t, &clash.PlateClash, []ruletest.Telling{
		ruletest.Told("in either corner", func(h *ruletest.House) {
			r := aRoom(h)
			put("A", "duplex", 0, 1.25, 16)(r)
			put("B", "duplex", 0, 142.75, 16)(r)
			put("C", "duplex", 1, 1.25, 16, ruletest.Existing)(r)
			put("D", "duplex", 2, 1, 16)(r) // its box is past the corner, which is told for itself
		}, `
			stop: A in living; 1/8"
			A: its plate runs past the corner by 1/8"
			It is 2-3/4" wide and its middle 1-1/4" from there.

			stop: B in living; 1/8"
			B: its plate runs past the corner by 1/8"
			It is 2-3/4" wide and its middle 1-1/4" from there.`, "half of 2-3/4 is 1-3/8"),
		ruletest.Told("where the wall goes straight on", func(h *ruletest.House) {
			r := h.Room(plan.UseLiving, 0, 0, 72, 0, 144, 0, 144, 120, 0, 120)
			put("A", "duplex", 0, 70.75, 16)(r)
			put("B", "duplex", 1, 1.25, 40)(r)
		}, ``, "no corner is there"),
		ruletest.Told("two", func(h *ruletest.House) {
			r := aRoom(h)
			put("B", "duplex", 0, 40, 16)(r)
			put("A", "quad", 0, 43.5, 16)(r)
			put("D", "duplex", 0, 80, 16, ruletest.Existing)(r)
			put("E", "duplex", 0, 82.5, 16)(r)
			put("F", "duplex", 0, 120, 16, ruletest.Existing)(r)
			put("G", "duplex", 0, 122.5, 16, ruletest.Existing)(r)
			put("H", "duplex", 1, 40, 16)(r)
			put("I", "duplex", 1, 42, 16)(r) // their boxes lap, which is told for itself
		}, `
			stop: A in living; 1/8"
			The plates of A and B overlap by 1/8"
			They are 4-1/2" and 2-3/4" wide, their middles 3-1/2" apart along the wall.

			stop: E in living; 1/4"
			The plates of E and D overlap by 1/4"
			They are 2-3/4" and 2-3/4" wide, their middles 2-1/2" apart along the wall.`,
			"1-3/8 + 2-1/4 − 3-1/2; told of the new one, of two new ones by tag"),
	})
}

// The distance of 12 in from the wall is common practice.
func TestWhatIsToldBehindDoors(t *testing.T) {
	door := func(r *ruletest.Room, along, wide float64, hand plan.Hand, swing plan.Swing) {
		r.Break(plan.BreakDoor, 0, along, wide, func(b *plan.Break) { b.Hand, b.Swing = hand, swing })
	}
	behind := func(tag string, by string) string {
		return "warn: " + tag + " in living; " + by + " of 12\"\n" + tag + " is behind an open door\nThe leaf, 30\" wide, stands " + by + " off this wall when it is open."
	}
	ruletest.Tells(t, &clash.DoorSwing, []ruletest.Telling{
		ruletest.Told("hinged at its left", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 10, 30, plan.HandLeft, plan.SwingIn)
			put("A", "duplex", 3, 91, 16, noBox)(r)
			put("B", "duplex", 3, 100, 16, ruletest.Existing)(r)
			put("C", "duplex", 1, 20, 16)(r)
			put("D", "duplex", 0, 60, 16)(r)
		}, behind("A", `10"`)+`
			Move A to the left by 2-5/16":
			  no more A duplex on living/3 face 91", centre 16" up
			  now A duplex on living/3 face 88-11/16", centre 16" up`, "it reaches from 90 to 120 along the left wall"),
		ruletest.Told("its ends and its head", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 12, 30, plan.HandLeft, plan.SwingIn)
			put("A", "duplex", 3, 88.8125, 16)(r)  // its box ends under 90
			put("B", "duplex", 3, 88.875, 30)(r)   // it begins at the leaf's end and laps it
			put("C", "duplex", 3, 100, 81.875)(r)  // its box begins at 80, as high as the door
			put("D", "duplex", 3, 100, 81.8125)(r) // 1/16 lower
		}, behind("B", `12"`)+"\n\n"+behind("D", `12"`), "12 in is near; the head is at 80"),
		ruletest.Told("farther than 12 in", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 12.0625, 30, plan.HandLeft, plan.SwingIn)
			put("A", "duplex", 3, 100, 16)(r)
		}, ``, "12-1/16"),
		ruletest.Told("hinged at its right", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 104, 30, plan.HandRight, plan.SwingIn)
			put("A", "duplex", 1, 15, 16)(r)
			put("B", "duplex", 1, 31.25, 16)(r)
			put("C", "duplex", 3, 100, 16)(r)
		}, behind("A", `10"`), "134 of 144 in; it reaches 30 along"),
		ruletest.Told("a double one", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 10, 60, plan.HandDouble, plan.SwingIn)
			put("A", "duplex", 3, 92, 16)(r)
			put("B", "duplex", 3, 88, 16)(r)
		}, behind("A", `10"`), "each leaf is half of 60"),
		ruletest.Told("both leaves", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 74, 60, plan.HandDouble, plan.SwingIn)
			put("A", "duplex", 1, 29, 16)(r)
			put("B", "duplex", 1, 32, 16)(r)
		}, behind("A", `10"`), "the right one hangs at 134"),
		ruletest.Told("nobody says how it hangs or swings", func(h *ruletest.House) {
			r := aRoom(h)
			door(r, 10, 30, plan.HandUnknown, plan.SwingIn)
			put("A", "duplex", 3, 100, 16)(r)
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Break(plan.BreakDoor, 0, 10, 30, func(b *plan.Break) { b.Swing = plan.SwingNone })
			put("B", "duplex", 3, 100, 16)(s)
			u := h.Square(plan.UseHall, 600, 0, 144, 120)
			u.Break(plan.BreakPassage, 0, 10, 30)
			put("C", "duplex", 3, 100, 16)(u)
		}, ``, "not checked"),
		ruletest.Told("out into the next room", func(h *ruletest.House) {
			next := h.Square(plan.UseLiving, 0, -124.5, 144, 120)
			r := h.Square(plan.UseHall, 0, 0, 144, 120)
			door(r, 10, 30, plan.HandLeft, plan.SwingOut)
			put("A", "duplex", 3, 15, 16)(next) // the leaf hangs at 10 in from the left wall of both
			put("B", "duplex", 1, 100, 16)(next)
			put("C", "duplex", 3, 100, 16)(r)
		}, behind("A", `10"`), "the hand is told from where the door is"),
	})
}

// 314.29 asks that boxes stay accessible; edges, splashes and what is pulled out are common
// practice. Half of a plate is 2.245 high.
func TestWhatIsToldOfCover(t *testing.T) {
	counter := func(h *ruletest.House, splash float64) *ruletest.Room {
		r := aRoom(h)
		r.Fixture(plan.FixtureCounter, 0, 60, 30, func(f *plan.Fixture) { f.Splash = ruletest.In(splash) })
		return r
	}
	ruletest.Tells(t, &clash.Covered, []ruletest.Telling{
		ruletest.Told("behind a counter", func(h *ruletest.House) {
			r := counter(h, 0)
			put("A", "duplex", 0, 75, 26.25)(r)
			put("B", "duplex", 0, 80, 26.1875)(r)
			put("C", "duplex", 0, 85, 16, ruletest.Removed)(r)
			put("D", "duplex", 0, 100, 16)(r)
		}, `
			stop, NEC 2023 314.29: A in living
			A is covered by the counter
			Boxes stay accessible without taking down what is fixed.
			Raise A by 12":
			  no more A duplex on living/0 face 75", centre 26-1/4" up, PN2
			  now A duplex on living/0 face 75", centre 38-1/4" up, PN2

			stop, NEC 2023 314.29: B in living
			B is covered by the counter
			Boxes stay accessible without taking down what is fixed.`,
			"36 + 2.245 is 38-1/4 on a tape; no farther than a foot"),
		ruletest.Told("over the edge", func(h *ruletest.House) {
			put("A", "duplex", 0, 75, 38)(counter(h, 0))
		}, `
			warn, by practice: A in living; 35-3/4" of 36"
			A: its plate does not clear the top of the counter
			The plate begins ≈ 35-3/4" above the floor, the counter ends at 36".
			Raise A by 1/4":
			  no more A duplex on living/0 face 75", centre 38" up, PN2
			  now A duplex on living/0 face 75", centre 38-1/4" up, PN2`, "38 − 2.245 = 35.755"),
		ruletest.Told("over the splash", func(h *ruletest.House) {
			put("A", "duplex", 0, 75, 42)(counter(h, 4))
		}, `
			warn, by practice: A in living; 39-3/4" of 40"
			A: its plate lies over the edge of the splash
			The plate begins ≈ 39-3/4" above the floor, the splash ends at 40".
			Raise A by 1/4":
			  no more A duplex on living/0 face 75", centre 42" up, PN2
			  now A duplex on living/0 face 75", centre 42-1/4" up, PN2`, "36 + 4; 42 − 2.245 = 39.755"),
		ruletest.Told("all on the splash", func(h *ruletest.House) {
			put("A", "duplex", 0, 75, 42)(counter(h, 18))
		}, ``, "it lies on it as a whole"),
		ruletest.Told("behind what is pulled out", func(h *ruletest.House) {
			r := aRoom(h)
			r.Fixture(plan.FixtureRefrigerator, 0, 60, 30, func(f *plan.Fixture) { f.Height = ruletest.In(70) })
			put("A", "duplex", 0, 60.5, 16, noBox)(r)
			put("B", "refrigerator", 0, 75, 48)(r)
		}, `
			warn, by practice: A in living
			A is behind the refrigerator
			It would have to be pulled out to reach it (common practice).
			Move A to the left by 2-5/16":
			  no more A duplex on living/0 face 60-1/2", centre 16" up
			  now A duplex on living/0 face 58-3/16", centre 16" up`, "58-3/16 + 1-3/8 is before 60; to the right it is still behind"),
	})
}

// Three of one height are a habit, and 1/4 in off it is none (common practice).
func TestWhatIsToldOfHeights(t *testing.T) {
	ruletest.Tells(t, &clash.HeightOutlier, []ruletest.Telling{
		ruletest.Told("one of four", func(h *ruletest.House) {
			r := aRoom(h)
			for i, tag := range []string{"A", "B", "C"} {
				put(tag, "duplex", 0, 20+20*float64(i), 16)(r)
			}
			put("D", "duplex", 1, 40, 18)(r)
			put("E", "duplex", 1, 80, 18, ruletest.Existing)(r)
			put("F", "duplex", 2, 40, 20, ruletest.Removed)(r)
			put("G", "no such", 2, 80, 20)(r)
			put("H", "switch", 3, 40, 46)(r)
		}, `
			note: D in living; 18" of 16"
			D is at 18", most of its kind here at 16"
			Heights that differ by more than 1/4" are seen on a wall (common practice).
			Set its center at 16":
			  no more D duplex on living/1 face 40", centre 18" up, PN2
			  now D duplex on living/1 face 40", centre 16" up, PN2`, "what is there or goes is not told"),
	})
}

// A sixteenth off or out of level is none (common practice). The mirror is from 60 to 90, its
// middle at 75.
func TestWhatIsToldOfPairs(t *testing.T) {
	const left, right = 55, 97
	mirror := func(h *ruletest.House) *ruletest.Room {
		r := aRoom(h)
		r.Fixture(plan.FixtureMirror, 0, 60, 30, func(f *plan.Fixture) { f.Bottom = ruletest.In(42) })
		return r
	}
	const even, level = "A and B are not even about the mirror\nThey are 20\" and 22\" from its middle.", "A and B beside the mirror are not level\nTheir middles are 63\" and 66\" above the floor."
	ruletest.Tells(t, &clash.Pair, []ruletest.Telling{
		ruletest.Told("uneven and not level", func(h *ruletest.House) {
			r := mirror(h)
			put("A", "wall-light", 0, left, 63)(r)
			put("B", "wall-light", 0, right, 66)(r)
			put("C", "duplex", 0, 100, 16)(r)
		}, `
			warn: B in living; 2" of 1/16"
			`+even+`
			Move B to the left by 2":
			  no more B wall-light on living/0 face 97", centre 66" up, RD1
			  now B wall-light on living/0 face 95", centre 66" up, RD1
			Move A to the left by 2":
			  no more A wall-light on living/0 face 55", centre 63" up, RD1
			  now A wall-light on living/0 face 53", centre 63" up, RD1

			warn: B in living; 3" of 1/16"
			`+level+`
			Set the center of B at 63":
			  no more B wall-light on living/0 face 97", centre 66" up, RD1
			  now B wall-light on living/0 face 97", centre 63" up, RD1`, "75 − 20 and 75 + 22"),
		ruletest.Told("one of them is there", func(h *ruletest.House) {
			r := mirror(h)
			put("A", "wall-light", 0, left, 63)(r)
			put("B", "wall-light", 0, right, 66, ruletest.Existing)(r)
		}, `
			warn: B in living; 2" of 1/16"
			`+even+`
			Move A to the left by 2":
			  no more A wall-light on living/0 face 55", centre 63" up, RD1
			  now A wall-light on living/0 face 53", centre 63" up, RD1

			warn: B in living; 3" of 1/16"
			`+level+`
			Set the center of A at 66":
			  no more A wall-light on living/0 face 55", centre 63" up, RD1
			  now A wall-light on living/0 face 55", centre 66" up, RD1`, "what is there stays"),
		ruletest.Told("both are there", func(h *ruletest.House) {
			r := mirror(h)
			put("A", "wall-light", 0, left, 63, ruletest.Existing)(r)
			put("B", "wall-light", 0, right, 66, ruletest.Existing)(r)
		}, "warn: B in living; 2\" of 1/16\"\n"+even+"\n\nwarn: B in living; 3\" of 1/16\"\n"+level, "nothing is offered"),
		ruletest.Told("three, or too far, or no light", func(h *ruletest.House) {
			r := mirror(h)
			put("A", "wall-light", 0, left, 63)(r)
			put("B", "wall-light", 0, right, 66)(r)
			put("C", "wall-light", 0, 110, 66)(r)
			s := h.Square(plan.UseLiving, 300, 0, 144, 120)
			s.Fixture(plan.FixtureBed, 0, 60, 30)
			put("D", "wall-light", 0, 23.9375, 63)(s)
			put("E", "wall-light", 0, 100, 66)(s)
			put("F", "duplex", 0, 50, 66)(s)
			u := h.Square(plan.UseLiving, 600, 0, 144, 120)
			u.Fixture(plan.FixtureDesk, 0, 60, 30)
			put("G", "wall-light", 0, left, 63)(u)
			put("H", "wall-light", 0, right, 66)(u)
		}, ``, "one at either hand, within 3 ft: 60 − 36 = 24"),
	})
}

// ADA 2010 308.2 and 308.3. A rocker is 2-5/8 high.
func TestWhatIsToldOfReach(t *testing.T) {
	asked := func(h *ruletest.House) *ruletest.Room {
		r := aRoom(h)
		r.Room.Reach = true
		return r
	}
	ruletest.Tells(t, &clash.Reach, []ruletest.Telling{
		ruletest.Told("too high and too low", func(h *ruletest.House) {
			r := asked(h)
			put("A", "switch", 0, 40, 47)(r)
			put("B", "duplex", 0, 80, 16)(r)
			put("C", "duplex", 0, 100, 60, ruletest.Removed)(r)
			put("D", "thermostat", 0, 120, 60)(r)
		}, `
			warn, ADA 2010 308: A in living; 48-5/16" of 48"
			A is 5/16" too high to reach
			The part that is worked by hand ends at 48-5/16"; 48" is in reach here.
			Set its center at 46-11/16":
			  no more A switch on living/0 face 40", centre 47" up, PN3
			  now A switch on living/0 face 40", centre 46-11/16" up, PN3

			warn, ADA 2010 308: B in living; 14-11/16" of 15"
			B is 5/16" too low to reach
			The part that is worked by hand ends at 14-11/16"; 15" is in reach here.
			Set its center at 16-5/16":
			  no more B duplex on living/0 face 80", centre 16" up, PN2
			  now B duplex on living/0 face 80", centre 16-5/16" up, PN2`, "47 + 1-5/16 and 16 − 1-5/16"),
		ruletest.Told("over a counter too deep", func(h *ruletest.House) {
			r := asked(h)
			r.Stand(plan.FixtureCounter, r.On(0, 20), 60, 25.0625)
			put("A", "switch", 0, 20, 42)(r)
			put("B", "switch", 0, 80, 42)(r)
			put("C", "switch", 0, 19.9375, 42)(r)
			put("D", "switch", 0, 80.0625, 42)(r)
			put("E", "switch", 0, 50, 35.9375)(r) // not over it but behind it
			s := h.Square(plan.UseHall, 300, 0, 144, 120)
			s.Room.Reach = true
			s.Stand(plan.FixtureUpper, s.On(0, 20), 60, 26, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(10), ruletest.In(20) })
			put("F", "switch", 0, 50, 42)(s) // what hangs leaves the floor
		}, `
			warn, ADA 2010 308: A in living
			A: what stands before it is too deep to reach over
			Over 25" nothing is in reach.

			warn, ADA 2010 308: B in living
			B: what stands before it is too deep to reach over
			Over 25" nothing is in reach.`, "ADA 2010 308.2.2"),
		ruletest.Told("over 34 in high and over 24 in deep", func(h *ruletest.House) {
			for i, deep := range []float64{20, 20.0625, 24, 24.0625} {
				r := h.Square(plan.UseHall, 300*float64(i), 0, 144, 120)
				r.Room.Reach = true
				r.Stand(plan.FixtureCounter, r.On(0, 20), 60, deep, func(f *plan.Fixture) { f.Height = ruletest.In(34) })
				put(string(rune('A'+i)), "switch", 0, 50, 46.6875)(r)
			}
		}, `
			warn, ADA 2010 308: B in hall; 48" of 46"
			B is 2" too high to reach
			The part that is worked by hand ends at 48"; 46" is in reach here.
			Set its center at 44-11/16":
			  no more B switch on hall/0 face 50", centre 46-11/16" up, PN3
			  now B switch on hall/0 face 50", centre 44-11/16" up, PN3

			warn, ADA 2010 308: C in hall; 48" of 46"
			C is 2" too high to reach
			The part that is worked by hand ends at 48"; 46" is in reach here.
			Set its center at 44-11/16":
			  no more C switch on hall/0 face 50", centre 46-11/16" up, PN3
			  now C switch on hall/0 face 50", centre 44-11/16" up, PN3

			warn, ADA 2010 308: D in hall; 48" of 44"
			D is 4" too high to reach
			The part that is worked by hand ends at 48"; 44" is in reach here.
			Set its center at 42-11/16":
			  no more D switch on hall/0 face 50", centre 46-11/16" up, PN3
			  now D switch on hall/0 face 50", centre 42-11/16" up, PN3`, "ADA 2010 308.2.2 and 308.3.2"),
	})
}
