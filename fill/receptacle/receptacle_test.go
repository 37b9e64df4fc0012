package receptacle_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/receptacle"
	"studbay/fill/ruletest"
	"studbay/plan"
)

const sixteenth = 1.0 / 16

// basins is a bath with two basins, their edges so far apart, and a receptacle so far
// from the right edge of the left one.
func basins(apart, at, up float64) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(plan.UseBath, 0, 0, 240, 96)
		r.Fixture(plan.FixtureBasin, 0, 20, 20)
		r.Fixture(plan.FixtureBasin, 0, 40+apart, 20)
		r.Opening("basin", r.On(0, 40+at), ruletest.Up(up))
	}
}

func TestBasinReach(t *testing.T) {
	ruletest.Try(t, &receptacle.BasinReach, []ruletest.Trial{
		ruletest.Case("one between two, 30 in apart", basins(30, 15, 42), 0, "ecmweb.com code Q&A 81: 15 in from each"),
		ruletest.Case("one between two, 80 in apart", basins(80, 40, 42), 2, "ecmweb.com code Q&A 81: 40 in from each"),
		ruletest.Case("36 in from each", basins(72, 36, 42), 0, "210.52(D): within 3 ft"),
		ruletest.Case("a sixteenth more from one", basins(72+sixteenth, 36, 42), 1, "210.52(D)"),
		ruletest.Case("12 in below the top", basins(30, 15, 24), 0, "210.52(D): not more than 12 in below; the top is at 36"),
		ruletest.Case("a sixteenth lower", basins(30, 15, 24-sixteenth), 2, "210.52(D)"),
		ruletest.Case("one that goes", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 96, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			r.Opening("basin", r.On(0, 50), ruletest.Removed)
		}, 1, "it will not be there"),
		ruletest.Case("a basin in a bedroom", func(h *ruletest.House) {
			h.Square(plan.UseBedroom, 0, 0, 96, 96).Fixture(plan.FixtureBasin, 0, 20, 20)
		}, 0, "210.52(D) names bathrooms"),
	})
}

// hall is one of a length, 40 in wide.
func hall(length float64, receptacles ...float64) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(plan.UseHall, 0, 0, length, 40)
		for _, up := range receptacles {
			r.Opening("duplex", r.On(0, 30), ruletest.Up(up))
		}
	}
}

func TestHall(t *testing.T) {
	bent := func(more float64) func(*ruletest.House) {
		return func(h *ruletest.House) { // 40 in wide: arms of 60 and 60 along the center line
			h.Room(plan.UseHall, 0, 0, 80+more, 0, 80+more, 40, 40, 40, 40, 80, 0, 80)
		}
	}
	ruletest.Try(t, &receptacle.Hall, []ruletest.Trial{
		ruletest.Case("9 ft 11 in", hall(119), 0, "ecmag.com, required receptacle outlets, part X: none"),
		ruletest.Case("10 ft", hall(120), 1, "ecmag.com: one"),
		ruletest.Case("a sixteenth less", hall(120-sixteenth), 0, "210.52(H): 10 ft or more"),
		ruletest.Case("30 ft with one", hall(360, 18), 0, "210.52(H): at least one, whatever the length"),
		ruletest.Case("one at 5-1/2 ft", hall(120, 66), 0, "210.52: 5-1/2 ft"),
		ruletest.Case("one a sixteenth higher", hall(120, 66+sixteenth), 1, "210.52: more than 5-1/2 ft does not count"),
		ruletest.Case("10 ft round a bend", bent(0), 1, "210.52(H): the center line is 60 + 60 in"),
		ruletest.Case("a sixteenth less round a bend", bent(-sixteenth), 0, "210.52(H)"),
		ruletest.Case("a bedroom", func(h *ruletest.House) { h.Square(plan.UseBedroom, 0, 0, 200, 100) }, 0, "210.52(H) names halls"),
	})
}

// TestForkedHalls: the way along the center lines that is the longest, 10 ft or a sixteenth
// less; not the sum of all arms.
func TestForkedHalls(t *testing.T) {
	const said = "210.52(H): the length along the center line"
	shape := func(corners ...float64) func(*ruletest.House) {
		return func(h *ruletest.House) { h.Room(plan.UseHall, corners...) }
	}
	tee := func(bar, stem float64) func(*ruletest.House) { // 40 in wide, the stem in the middle
		m := bar / 2
		return shape(0, 0, bar, 0, bar, 40, m+20, 40, m+20, 40+stem, m-20, 40+stem, m-20, 40, 0, 40)
	}
	cross := func(arm, more float64) func(*ruletest.House) { // 40 in wide, each arm so long past the crossing
		a, b := arm, arm+40
		return shape(a, 0, b, 0, b, a, b+arm, a, b+arm, b, b, b, b, b+arm+more, a, b+arm+more, a, b, 0, b, 0, a, a, a)
	}
	zed := func(more float64) func(*ruletest.House) { // 40 in wide: 50 to the bend, 30 on to the other, 40 to the end
		return shape(0, 0, 70, 0, 70, 30, 90+more, 30, 90+more, 70, 30, 70, 30, 40, 0, 40)
	}
	ruletest.Try(t, &receptacle.Hall, []ruletest.Trial{
		ruletest.Case("a T of 110 with a stem of 25", tee(110, 25), 0, said+": 110 along its bar, 55 + 20 + 25 into its stem, 175 in all arms"),
		ruletest.Case("a T with a bar of 10 ft", tee(120, 25), 1, said+": 120 along its bar"),
		ruletest.Case("a sixteenth less", tee(120-sixteenth, 25), 0, said),
		ruletest.Case("a T with a long stem", tee(110, 45), 1, said+": 55 + 20 + 45"),
		ruletest.Case("a sixteenth less stem", tee(110, 45-sixteenth), 0, said),
		ruletest.Case("a crossing of arms of 35", cross(35, 0), 0, said+": 35 + 40 + 35, both ways"),
		ruletest.Case("a crossing, 10 ft one way", cross(35, 10), 1, said+": 35 + 40 + 45"),
		ruletest.Case("a crossing, a sixteenth less", cross(35, 10-sixteenth), 0, said),
		ruletest.Case("twice round a bend", zed(0), 1, said+": 50 + 30 + 40"),
		ruletest.Case("a sixteenth less twice round a bend", zed(-sixteenth), 0, said),
		ruletest.Case("119 with a nook less deep than half its width", shape(0, 0, 119, 0, 119, 40, 90, 40, 90, 50-sixteenth, 70, 50-sixteenth, 70, 40, 0, 40), 0, "our reading: a nook is no arm"),
		ruletest.Case("119, at one place wider", shape(0, 0, 119, 0, 119, 40, 90, 40, 90, 49, 30, 49, 30, 40, 0, 40), 0, said),
		ruletest.Case("119 and narrower from the middle on", shape(0, 0, 119, 0, 119, 36, 60, 36, 60, 40, 0, 40), 0, said),
	})
}

// A metric plan may rest on 3.0 m or on 10 ft, of which 10 ft asks less.
func TestHallInAMetricPlan(t *testing.T) {
	h := ruletest.New(t)
	h.Metric = true
	hall(119)(h) // 3022.6 mm: longer than 3.0 m, shorter than 10 ft
	if found := h.Found(&receptacle.Hall); len(found) != 0 {
		t.Errorf("%q", filltest.Said(found))
	}
}

// roundCorner is a foyer of 64 ft² with 18 in of wall before its second corner and so much
// after it, between two passages; the walls besides have receptacles.
func roundCorner(after float64, more ...func(*ruletest.Room)) func(*ruletest.House) {
	return func(h *ruletest.House) {
		r := h.Square(plan.UseFoyer, 0, 0, 96, 96)
		r.Break(plan.BreakPassage, 0, 38, 40)
		r.Break(plan.BreakPassage, 1, after, 40)
		for side, along := range []float64{19, 90, 48, 48} {
			r.Opening("duplex", r.On(side, along))
		}
		for _, do := range more {
			do(r)
		}
	}
}

func TestFoyer(t *testing.T) {
	foyer := func(width, depth float64) func(*ruletest.House) {
		return func(h *ruletest.House) { h.Square(plan.UseFoyer, 0, 0, width, depth) }
	}
	ruletest.Try(t, &receptacle.Foyer, []ruletest.Trial{
		ruletest.Case("60 square feet", foyer(120, 72), 0, "210.52(I): greater than 60 ft²"),
		ruletest.Case("a sixteenth wider", foyer(120+sixteenth, 72), 4, "210.52(I): each wall of 3 ft or more"),
		ruletest.Case("two walls under 3 ft", foyer(300, 36-sixteenth), 2, "210.52(I): 3 ft or more"),
		ruletest.Case("walls of 3 ft", foyer(300, 36), 4, "210.52(I)"),
		ruletest.Case("a door leaves less than 3 ft on either side", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 106, 96)
			r.Break(plan.BreakDoor, 0, 35, 36)
			for side := 1; side < 4; side++ {
				r.Opening("duplex", r.On(side, 48))
			}
		}, 0, "210.52(I): doorways are no wall space"),
		ruletest.Case("3 ft round a corner between two doors", roundCorner(18), 1, "210.52(I) with (A)(2): measured around corners"),
		ruletest.Case("a sixteenth less", roundCorner(18-sixteenth), 0, "210.52(I): 3 ft or more"),
		ruletest.Case("one in it", roundCorner(18, func(r *ruletest.Room) { r.Opening("duplex", r.On(1, 10)) }), 0, "210.52(I)"),
		ruletest.Case("round the corner where the outline begins", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 96, 96)
			r.Break(plan.BreakPassage, 3, 0, 96-20)
			r.Break(plan.BreakPassage, 0, 20, 40)
			for side, along := range []float64{90, 48, 48} {
				r.Opening("duplex", r.On(side, along))
			}
		}, 1, "210.52(I) with (A)(2): 20 in and 20 in"),
	})
}

func TestLaundry(t *testing.T) {
	washer := func(at float64, more ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 200, 96)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Opening("washer", r.On(0, 30+at), more...)
		}
	}
	ruletest.Try(t, &receptacle.Laundry, []ruletest.Trial{
		ruletest.Case("none", func(h *ruletest.House) { h.Square(plan.UseLaundry, 0, 0, 100, 96) }, 1, "210.52(F)"),
		ruletest.Case("a dryer receptacle alone", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 100, 96)
			r.Opening("dryer", r.On(0, 50))
		}, 1, "210.52: 125 V, 15 A and 20 A"),
		ruletest.Case("one", func(h *ruletest.House) {
			r := h.Square(plan.UseLaundry, 0, 0, 100, 96)
			r.Opening("washer", r.On(0, 50))
		}, 0, "210.52(F)"),
		ruletest.Case("6 ft from the washer", washer(72), 0, "210.50(C): within 6 ft"),
		ruletest.Case("a sixteenth more", washer(72+sixteenth), 1, "210.50(C)"),
		ruletest.Case("at 5-1/2 ft", washer(12, ruletest.Up(66)), 0, "210.52(4): up to 5-1/2 ft counts"),
		ruletest.Case("a sixteenth higher", washer(12, ruletest.Up(66+sixteenth)), 1, "210.52(4)"),
		ruletest.Case("one that goes", washer(12, ruletest.Removed), 1, "it will not be there"),
		ruletest.Case("a bedroom", func(h *ruletest.House) { h.Square(plan.UseBedroom, 0, 0, 100, 96) }, 0, "210.52(F) names laundry areas"),
	})
	for _, tt := range []struct {
		name    string
		make    func(*ruletest.House)
		section string
	}{
		{"none in the area", func(h *ruletest.House) {
			h.Square(plan.UseLaundry, 0, 0, 100, 96).Fixture(plan.FixtureWasher, 0, 0, 30)
		}, "NEC 2023 210.52(F)"},
		{"one out of reach", washer(72 + sixteenth), "NEC 2023 210.50(C)"},
	} {
		h := ruletest.New(t)
		tt.make(h)
		if found := h.Found(&receptacle.Laundry); len(found) != 1 || found[0].Section != tt.section {
			t.Errorf("%s: %q cites %q, want %s", tt.name, filltest.Said(found), found[0].Section, tt.section)
		}
	}
}

func TestGarage(t *testing.T) {
	garage := func(attached bool, bays int, receptacles ...float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Bays = bays
			if attached {
				h.Square(plan.UseKitchen, 244.5, 0, 120, 120)
			}
			for i, up := range receptacles {
				r.Opening("garage", r.On(0, float64(40+40*i)), ruletest.Up(up))
			}
		}
	}
	ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
		ruletest.Case("attached, none", garage(true, 0), 1, "210.52(G)(1)"),
		ruletest.Case("attached, one bay unless more are said", garage(true, 0, 48), 0, "210.52(G)(1): one for each bay"),
		ruletest.Case("two bays, one receptacle", garage(true, 2, 48), 1, "210.52(G)(1)"),
		ruletest.Case("two bays, two", garage(true, 2, 48, 48), 0, "210.52(G)(1)"),
		ruletest.Case("at 5-1/2 ft", garage(true, 0, 66), 0, "210.52(G)(1): not more than 5-1/2 ft"),
		ruletest.Case("a sixteenth higher", garage(true, 0, 66+sixteenth), 1, "210.52(G)(1)"),
		ruletest.Case("detached without power", garage(false, 0), 0, "210.52(G)(1): with electric power"),
		ruletest.Case("detached with a light", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Opening("ceiling-light", r.Ceiling(120, 120))
		}, 1, "210.52(G)(1): with electric power"),
	})
}

func TestBasement(t *testing.T) {
	ruletest.Try(t, &receptacle.Basement, []ruletest.Trial{
		ruletest.Case("two parts, one served", func(h *ruletest.House) {
			h.Square(plan.UseBasement, 0, 0, 200, 200)
			r := h.Square(plan.UseBasement, 400, 0, 200, 200)
			r.Opening("gfci", r.On(0, 50))
		}, 1, "210.52(G)(3): each unfinished part"),
		ruletest.Case("one at 5-1/2 ft", func(h *ruletest.House) {
			r := h.Square(plan.UseBasement, 0, 0, 200, 200)
			r.Opening("gfci", r.On(0, 50), ruletest.Up(66))
		}, 0, "210.52(4): up to 5-1/2 ft counts"),
		ruletest.Case("a sixteenth higher", func(h *ruletest.House) {
			r := h.Square(plan.UseBasement, 0, 0, 200, 200)
			r.Opening("gfci", r.On(0, 50), ruletest.Up(66+sixteenth))
		}, 1, "210.52(4)"),
		ruletest.Case("a washer's alone", func(h *ruletest.House) {
			r := h.Square(plan.UseBasement, 0, 0, 200, 200)
			r.Opening("washer", r.On(0, 50))
		}, 1, "210.52(G): in addition to those for specific equipment"),
		ruletest.Case("a recreation room", func(h *ruletest.House) { h.Square(plan.UseRecreation, 0, 0, 200, 200) }, 0, "it is finished"),
	})
}

func TestOutdoor(t *testing.T) {
	// porch lies before a living room, with a door from there.
	porch := func(door bool, more func(*ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			living := h.Square(plan.UseLiving, 0, 0, 200, 120)
			r := h.Square(plan.UseOutdoors, 0, 127, 200, 96)
			r.Sides[2].Kind = plan.SideRailing
			if door {
				living.Break(plan.BreakDoor, 2, 50, 36)
			}
			if more != nil {
				more(r)
			}
		}
	}
	at := func(up float64) func(*ruletest.Room) {
		return func(r *ruletest.Room) { r.Opening("outdoor", r.On(0, 30), ruletest.Up(up)) }
	}
	ruletest.Try(t, &receptacle.Outdoor, []ruletest.Trial{
		ruletest.Case("a porch without one", porch(true, nil), 1, "210.52(E)(3)"),
		ruletest.Case("with one", porch(true, at(26)), 0, "210.52(E)(3)"),
		ruletest.Case("at 6-1/2 ft", porch(true, at(78)), 0, "210.52(E)(3): not more than 6-1/2 ft"),
		ruletest.Case("a sixteenth higher", porch(true, at(78+sixteenth)), 1, "210.52(E)(3)"),
		ruletest.Case("no door leads onto it", porch(false, nil), 0, "210.52(E)(3): accessible from inside"),
		ruletest.Case("a yard that nobody says is front or back", func(h *ruletest.House) {
			h.Square(plan.UseOutdoors, 0, 0, 200, 200)
		}, 0, "what a file does not say is no fault"),
		ruletest.Case("the back", func(h *ruletest.House) {
			h.Square(plan.UseOutdoors, 0, 0, 200, 200).Faces = plan.FacesBack
		}, 1, "210.52(E)(1): one at the back"),
	})
}
