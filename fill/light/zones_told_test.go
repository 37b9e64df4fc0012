package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// aCloset is one of 96 by 72 in with a rod along its top side, so wide and with its top so
// high.
func aCloset(h *ruletest.House, wide, top float64) *ruletest.Room {
	r := h.Square(plan.UseCloset, 0, 0, 96, 72)
	r.Fixture(plan.FixtureRod, 0, 0, wide, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(top-3), ruletest.In(3) })
	return r
}

func TestWhatIsToldOfACloset(t *testing.T) {
	ruletest.Tells(t, &light.ClosetLight, []ruletest.Telling{
		ruletest.Told("a light 10 in from the shelf", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("ceiling-light", r.Ceiling(48, 12+10+half(t, "ceiling-light")), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 410.16(C): A in closet; 10" of 12"
			A is 10" from the storage space of the closet
			A light of this kind keeps 12 in from it.`, "410.16(C)(1)"),
		ruletest.Told("a recessed one over it, there already", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("recessed", r.Ceiling(48, 6), ruletest.Tagged("A"), ruletest.Existing)
		}, `
			note, NEC 2023 410.16(C): A in closet; 0" of 6"
			A is 0" from the storage space of the closet
			A light of this kind keeps 6 in from it.`, "410.16(C)(3); what is there is told in a note"),
		ruletest.Told("a pendant", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("pendant", r.Ceiling(48, 60), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 410.16(B): A in closet
			A hangs in a closet
			Pendants are not permitted in clothes closets, whatever their lamp.`, "410.16(B)"),
		ruletest.Told("a pendant, there already", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("pendant", r.Ceiling(48, 60), ruletest.Tagged("A"), ruletest.Existing)
		}, `
			note, NEC 2023 410.16(B): A in closet
			A hangs in a closet
			Pendants are not permitted in clothes closets, whatever their lamp.`, "410.16(B); what is there is told in a note"),
		ruletest.Told("between two rods", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Fixture(plan.FixtureRod, 2, 0, 96, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(66), ruletest.In(3) })
			// The shelf of the other is from y 60 on: 9 in from the box's edge, that of the
			// first 48 - 12 - ...
			r.Opening("ceiling-light", r.Ceiling(48, 60-9-half(t, "ceiling-light")), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 410.16(C): A in closet; 9" of 12"
			A is 9" from the storage space of the closet
			A light of this kind keeps 12 in from it.`, "410.16(C)(1), by the nearer"),
	})
}

func TestLimitsOfACloset(t *testing.T) {
	wall := half(t, "wall-light")
	// A light in the right wall, 20 in down from the top wall: before the lower part of the
	// storage space, 24 in deep, and past the upper, 12 in deep.
	inWall := func(rod, top float64, change func(*plan.Fixture, *plan.Opening, unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseCloset, 0, 0, 96, 72)
			f := r.Fixture(plan.FixtureRod, 0, 0, rod, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(top-3), ruletest.In(3) })
			change(f, r.Opening("wall-light", r.On(1, 20), ruletest.Up(60)), over)
		}
	}
	const lower = "410.2: 24 in out, up to 6 ft or the rod; above, 12 in"
	ruletest.Edges(t, &light.ClosetLight, []ruletest.Edge{
		ruletest.Limit("12 in from the shelf", func(h *ruletest.House, over unit.Length) {
			r := aCloset(h, 96, 69)
			r.Opening("ceiling-light", r.Ceiling(48, 24+half(t, "ceiling-light"))).At.At.Y -= over
		}, rule.Grain, 0, 1, "410.16(C)(1)"),
		ruletest.Limit("a fan with a light", func(h *ruletest.House, over unit.Length) {
			r := aCloset(h, 96, 69)
			r.Opening("fan-light", r.Ceiling(48, 24+half(t, "fan-light"))).At.At.Y -= over
		}, rule.Grain, 0, 1, "410.16(C)(1)"),
		ruletest.Limit("recessed, 6 in from the shelf", func(h *ruletest.House, over unit.Length) {
			r := aCloset(h, 96, 69)
			r.Opening("recessed", r.Ceiling(48, 18+half(t, "recessed"))).At.At.Y -= over
		}, rule.Grain, 0, 1, "410.16(C)(3)"),
		ruletest.Limit("in a wall, 12 in from what hangs", inWall(96-12-wall, 69, func(f *plan.Fixture, _ *plan.Opening, over unit.Length) { f.Width += over }), rule.Grain, 0, 1, lower),
		ruletest.Limit("in a wall, at 6 ft", inWall(96-11-wall, 69, func(_ *plan.Fixture, o *plan.Opening, over unit.Length) { o.Height.Value = ruletest.In(72) + over }), 0, 1, 0, lower),
		ruletest.Limit("in a wall, as high as a rod at 80 in", inWall(96-11-wall, 80, func(_ *plan.Fixture, o *plan.Opening, over unit.Length) { o.Height.Value = ruletest.In(80) + over }), 0, 1, 0, lower),
	})
	ruletest.Try(t, &light.ClosetLight, []ruletest.Trial{
		ruletest.Case("a smoke alarm", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("smoke", r.Ceiling(48, 20))
		}, 0, "410.16: luminaires"),
		ruletest.Case("one that goes", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Opening("ceiling-light", r.Ceiling(48, 20), ruletest.Removed)
		}, 0, "it will not be there"),
		ruletest.Case("a bedroom", func(h *ruletest.House) {
			r := aCloset(h, 96, 69)
			r.Use = plan.UseBedroom
			r.Opening("pendant", r.Ceiling(48, 20))
		}, 0, "410.16 is on closets"),
		ruletest.Case("a shelf of a counter", func(h *ruletest.House) {
			r := h.Square(plan.UseCloset, 0, 0, 96, 72)
			r.Fixture(plan.FixtureDesk, 0, 0, 96)
			r.Opening("ceiling-light", r.Ceiling(48, 20))
		}, 0, "410.2: along rods"),
	})
}

// aBath has a tub of 60 by 30 in along the top side, 20 in high.
func aBath(h *ruletest.House, edition string) *ruletest.Room {
	h.Edition = edition
	r := h.Square(plan.UseBath, 0, 0, 120, 120)
	r.Fixture(plan.FixtureTub, 0, 0, 60, func(f *plan.Fixture) { f.Depth, f.Height = ruletest.In(30), ruletest.In(20) })
	return r
}

func TestWhatIsToldOfAWetZone(t *testing.T) {
	ruletest.Tells(t, &light.WetZone, []ruletest.Telling{
		ruletest.Told("a pendant 20 in before a tub", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("pendant", r.Ceiling(30, 50), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 410.10(D): A in bath; 20" of 36"
			A is 1' 8" from the tub
			Nothing hangs within 3 ft of it, up to 8 ft above its rim.`, "410.10(D)"),
		ruletest.Told("a receptacle 20 in beside it", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("gfci", r.On(0, 80), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 406.9(C): A in bath; 20" of 36"
			A is 1' 8" from the tub
			No receptacle may be within 3 ft of it, up to 8 ft above its rim.
			Move A to the right by 17-3/16":
			  no more A gfci on bath/0 face 80", centre 16" up, PN3
			  now A gfci on bath/0 face 97-3/16", centre 16" up, PN3`, "406.9(C), 2023; the zone ends at 96 in, and the box is 2-5/16 in wide: the next sixteenth"),
		ruletest.Told("over it in 2017", func(h *ruletest.House) {
			r := aBath(h, "2017")
			r.Opening("gfci", r.On(0, 40), ruletest.Tagged("A"), ruletest.Up(40))
		}, `
			stop, NEC 2017 406.9(C): A in bath; 0" of 36"
			A is 0" from the tub
			No receptacle may be within it or over it.
			Move A to the right by 21-3/16":
			  no more A gfci on bath/0 face 40", centre 40" up, PN3
			  now A gfci on bath/0 face 61-3/16", centre 40" up, PN3`, "406.9(C), 2017; the tub ends at 60 in, and the box is 2-5/16 in wide: the next sixteenth"),
		ruletest.Told("a fan there already", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("fan-light", r.Ceiling(30, 50), ruletest.Tagged("A"), ruletest.Existing)
		}, `
			note, NEC 2023 410.10(D): A in bath; 20" of 36"
			A is 1' 8" from the tub
			Nothing hangs within 3 ft of it, up to 8 ft above its rim.`, "410.10(D); what is there is told in a note"),
		ruletest.Told("a bath without a place outside of the zone", func(h *ruletest.House) {
			h.Edition = "2023"
			r := h.Square(plan.UseBath, 0, 0, 60, 60)
			r.Fixture(plan.FixtureTub, 0, 0, 60, func(f *plan.Fixture) { f.Depth, f.Height = ruletest.In(30), ruletest.In(20) })
			r.Opening("gfci", r.On(2, 30), ruletest.Tagged("A"))
			r.Opening("pendant", r.Ceiling(30, 50), ruletest.Tagged("B"))
		}, `
			note, NEC 2023 406.9(C): A in bath; 30" of 36"
			A is 2' 6" from the tub
			No receptacle may be within 3 ft of it, up to 8 ft above its rim.

			stop, NEC 2023 410.10(D): B in bath; 20" of 36"
			B is 1' 8" from the tub
			Nothing hangs within 3 ft of it, up to 8 ft above its rim.`, "406.9(C) exception: small baths; 410.10(D) has none"),
		ruletest.Told("between a tub and a shower", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Fixture(plan.FixtureShower, 0, 96, 24)
			r.Opening("gfci", r.On(0, 80), ruletest.Tagged("A"))
		}, `
			stop, NEC 2023 406.9(C): A in bath; 16" of 36"
			A is 1' 4" from the shower
			No receptacle may be within 3 ft of it, up to 8 ft above its rim.`, "406.9(C), 2023: told once, of the nearer"),
	})
}

func TestLimitsOfAWetZone(t *testing.T) {
	ceiling := func(high float64) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := aBath(h, "2023")
			r.Room.Ceiling = ruletest.In(high) + over
			r.Opening("pendant", r.Ceiling(30, 50))
		}
	}
	ruletest.Edges(t, &light.WetZone, []ruletest.Edge{
		ruletest.Limit("a pendant 3 ft away", func(h *ruletest.House, over unit.Length) {
			r := aBath(h, "2023")
			r.Opening("pendant", r.Ceiling(30, 66)).At.At.Y -= over
		}, rule.Grain, 0, 1, "410.10(D)"),
		ruletest.Limit("a receptacle 3 ft away", func(h *ruletest.House, over unit.Length) {
			r := aBath(h, "2020")
			r.Opening("gfci", r.On(0, 96)).At.Along -= over
		}, rule.Grain, 0, 1, "406.9(C), 2020"),
		ruletest.Limit("beside the tub in 2017", func(h *ruletest.House, over unit.Length) {
			r := aBath(h, "2017")
			r.Opening("gfci", r.On(0, 60)).At.Along += 1 - over
		}, 0, 0, 1, "406.9(C), 2017: within or directly over"),
		ruletest.Limit("a ceiling 8 ft above a tub's rim", ceiling(20+96), 0, 1, 0, "410.10(D): 8 ft above the rim"),
		ruletest.Limit("a receptacle 8 ft above a shower's threshold", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Room.Ceiling = ruletest.In(120)
			r.Fixture(plan.FixtureShower, 0, 0, 36, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(4), ruletest.In(80) })
			r.Opening("gfci", r.On(0, 50)).Height.Value = ruletest.In(100) + over
		}, 0, 1, 0, "406.9(C): 8 ft above the threshold"),
	})
	ruletest.Try(t, &light.WetZone, []ruletest.Trial{
		ruletest.Case("one that goes", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("pendant", r.Ceiling(30, 50), ruletest.Removed)
		}, 0, "it will not be there"),
		ruletest.Case("a fan without a lamp", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("exhaust-fan", r.Ceiling(30, 50))
		}, 0, "410.10(D): ceiling-suspended fans"),
		ruletest.Case("a switch", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("switch", r.On(0, 70))
		}, 0, "406.9(C): receptacles"),
		ruletest.Case("a receptacle in the floor", func(h *ruletest.House) {
			r := aBath(h, "2023")
			r.Opening("floor", plan.OnFloor(r.Room.ID, r.Ceiling(30, 50).At))
		}, 1, "406.9(C)"),
		ruletest.Case("beside a toilet", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Fixture(plan.FixtureToilet, 0, 0, 20)
			r.Opening("gfci", r.On(0, 30))
		}, 0, "406.9(C): tubs and showers"),
	})
}
