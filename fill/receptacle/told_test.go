package receptacle_test

import (
	"testing"

	"studbay/fill/receptacle"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// What each rule says, word for word. Where a receptacle is offered is told by places that
// follow from the room: as near as a box stands clear.
func TestWhatIsTold(t *testing.T) {
	tell := func(of *rule.Rule, tellings ...ruletest.Telling) { ruletest.Tells(t, of, tellings) }
	tell(&receptacle.BasinReach,
		ruletest.Told("none", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 96, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			blockAll(r)
		}, `
			stop, NEC 2023 210.52(D): basin in bath of 36"
			A basin in bath has no receptacle within reach
			There is none in the room that counts; one belongs within 3 ft of the basin's edge.
			on basin front from 0" to 20"`, "210.52(D)"),
		ruletest.Told("one too far", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 96, 96)
			r.Fixture(plan.FixtureBasin, 0, 0, 20)
			r.Opening("basin", r.On(0, 60))
			r.Opening("basin", r.On(2, 20))
			blockAll(r)
		}, `
			stop, NEC 2023 210.52(D): basin in bath; 40" of 36"
			A basin in bath has no receptacle within reach
			The nearest is 3' 4" from its edge; the reach is 3 ft.
			on basin front from 0" to 20"`, "210.52(D)"))
	tell(&receptacle.Hall, ruletest.Told("10 ft 5 in", func(h *ruletest.House) {
		blockAll(h.Square(plan.UseHall, 0, 0, 125, 40))
	}, `
			stop, NEC 2023 210.52(H): hall; 125" of 120"
			hall is 10' 5" long and has no receptacle
			A hall of 10 ft or more along its center line needs one.`, "210.52(H)"))
	tell(&receptacle.Foyer, ruletest.Told("a wall beside a door", func(h *ruletest.House) {
		r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
		r.Break(plan.BreakDoor, 0, 10, 30)
		for side := 1; side < 4; side++ {
			r.Opening("duplex", r.On(side, 48))
		}
		blockAll(r)
	}, `
			stop, NEC 2023 210.52(I): foyer/0 in foyer; 80" of 36"
			A wall of 6' 8" in foyer has no receptacle
			In a foyer of more than 60 ft² each wall of 3 ft or more needs one.
			beside it: 6' 8" not served
			on foyer/0 face from 40" to 120"`, "210.52(I): from the door at 40 in to the corner"))
	tell(&receptacle.Laundry,
		ruletest.Told("no receptacle", func(h *ruletest.House) { blockAll(h.Square(plan.UseLaundry, 0, 0, 96, 96)) }, `
			stop, NEC 2023 210.52(F): laundry; 0 of 1
			laundry has no receptacle for laundry
			A laundry area needs at least one receptacle of 125 V.`, "210.52(F)"),
		ruletest.Told("a washer too far", func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 200, 96)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Opening("washer", r.On(0, 110))
			blockAll(r)
		}, `
			stop, NEC 2023 210.50(C): mudroom; 80" of 72"
			The washer in mudroom has no receptacle within reach
			A receptacle for an appliance stands within 6 ft of it.`, "210.50(C)"))
	tell(&receptacle.Garage,
		ruletest.Told("one bay", func(h *ruletest.House) {
			h.Square(plan.UseKitchen, 244.5, 0, 120, 120)
			blockAll(h.Square(plan.UseGarage, 0, 0, 240, 240))
		}, `
			stop, NEC 2023 210.52(G)(1): garage; 0 of 1
			garage has no receptacle that counts
			Each bay needs one, not higher than 5-1/2 ft; those for a single machine do not count.`, "210.52(G)(1)"),
		ruletest.Told("three bays, one receptacle", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Bays = 3
			r.Opening("garage", r.On(0, 40))
		}, `
			stop, NEC 2023 210.52(G)(1): garage; 1 of 3
			garage has a receptacle for 1 of its 3 vehicle bays
			Each bay needs one, not higher than 5-1/2 ft; those for a single machine do not count.`, "210.52(G)(1)"))
	tell(&receptacle.Basement, ruletest.Told("none", func(h *ruletest.House) { blockAll(h.Square(plan.UseBasement, 0, 0, 96, 96)) }, `
			stop, NEC 2023 210.52(G)(3): unfinished basement; 0 of 1
			unfinished basement has no receptacle that counts
			Each unfinished part of a basement needs one besides those for a single machine.`, "210.52(G)(3)"))
	tell(&receptacle.Outdoor,
		ruletest.Told("a porch", func(h *ruletest.House) {
			living := h.Square(plan.UseLiving, 0, 0, 200, 120)
			r := h.Square(plan.UseOutdoors, 0, 127, 200, 96)
			r.Room.Name = "Front Porch"
			living.Break(plan.BreakDoor, 2, 50, 36)
			blockAll(r)
		}, `
			stop, NEC 2023 210.52(E): Front Porch; 0 of 1
			Front Porch has no receptacle
			A balcony, deck or porch at the house needs one, not higher than 6-1/2 ft above its floor.`, "210.52(E)(3)"),
		ruletest.Told("the back", func(h *ruletest.House) {
			r := h.Square(plan.UseOutdoors, 0, 0, 200, 200)
			r.Faces = plan.FacesBack
			blockAll(r)
		}, `
			stop, NEC 2023 210.52(E): outdoors; 0 of 1
			outdoors has no receptacle
			A house needs one at the front and one at the back, not higher than 6-1/2 ft above grade.`, "210.52(E)(1)"))
}

// blockAll says that nothing can be set into any wall of a room.
func blockAll(r *ruletest.Room) {
	for i, s := range r.Sides {
		s.Probes = []plan.Probe{{To: r.Segment(i).Length()}}
	}
}

// Where a receptacle is offered: in the wall place that costs least and stands clear.
func TestWhereAReceptacleIsOffered(t *testing.T) {
	ruletest.Tells(t, &receptacle.BasinReach, []ruletest.Telling{
		ruletest.Told("beside the basin", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 96, 96)
			r.Fixture(plan.FixtureBasin, 0, 38, 20)
			for _, side := range []int{1, 2, 3} {
				r.Sides[side].Kind = plan.SideGlass
			}
		}, `
			stop, NEC 2023 210.52(D): basin in bath of 36"
			A basin in bath has no receptacle within reach
			There is none in the room that counts; one belongs within 3 ft of the basin's edge.
			on basin front from 0" to 20"
			Add a receptacle beside the basin:
			  now R1 basin on bath/0 face 38", centre 43" up, PN3`, "210.52(D): 43 in is above the basin's top at 36, where nothing hides it"),
	})
	ruletest.Tells(t, &receptacle.Foyer, []ruletest.Telling{
		ruletest.Told("the middle of the wall", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			for side := 1; side < 4; side++ {
				r.Opening("duplex", r.On(side, 48), ruletest.Tagged(string(rune('A'+side))))
			}
		}, `
			stop, NEC 2023 210.52(I): foyer/0 in foyer; 120" of 36"
			A wall of 10' 0" in foyer has no receptacle
			In a foyer of more than 60 ft² each wall of 3 ft or more needs one.
			beside it: 10' 0" not served
			on foyer/0 face from 0" to 120"
			Add a receptacle there:
			  now R1 duplex on foyer/0 face 60", centre 16" up, PN2`, "210.52(I); its middle"),
	})
	ruletest.Tells(t, &receptacle.Garage, []ruletest.Telling{
		ruletest.Told("two bays, one receptacle", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Bays = 2
			r.Opening("garage", r.On(1, 40), ruletest.Tagged("A"))
			for _, side := range []int{1, 2, 3} {
				r.Sides[side].Kind = plan.SideRailing
			}
			r.Sides[0].Probes = []plan.Probe{{To: ruletest.In(100)}, {From: ruletest.In(140), To: ruletest.In(240)}}
		}, `
			stop, NEC 2023 210.52(G)(1): garage; 1 of 2
			garage has a receptacle for 1 of its 2 vehicle bays
			Each bay needs one, not higher than 5-1/2 ft; those for a single machine do not count.
			Add a garage receptacle:
			  now R1 garage on garage/0 face 101-3/16", centre 48" up, PN3`, "common practice: clear of what is told to be blocked, half of 2-5/16 in from its end"),
	})
}

func TestLimitsOfReceptacles(t *testing.T) {
	ruletest.Edges(t, &receptacle.BasinReach, []ruletest.Edge{
		ruletest.Limit("3 ft", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBath, 0, 0, 240, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			r.Opening("basin", r.On(0, 76)).At.Along += over
		}, rule.Grain, 0, 1, "210.52(D)"),
		ruletest.Limit("12 in below", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBath, 0, 0, 240, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			r.Opening("basin", r.On(0, 50)).Height.Value = ruletest.In(24) - over
		}, 0, 0, 1, "210.52(D): not more than 12 in below; the top is at 36"),
		ruletest.Limit("5-1/2 ft up", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBath, 0, 0, 240, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			r.Opening("basin", r.On(0, 50)).Height.Value = ruletest.In(66) + over
		}, 0, 0, 1, "210.52: 5-1/2 ft"),
	})
	ruletest.Edges(t, &receptacle.Laundry, []ruletest.Edge{
		ruletest.Limit("6 ft from a washer", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseMudroom, 0, 0, 240, 96)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Opening("washer", r.On(0, 102)).At.Along += over
		}, rule.Grain, 0, 1, "210.50(C)"),
		ruletest.Limit("6 ft from the farther of two washers", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseMudroom, 0, 0, 240, 96)
			r.Fixture(plan.FixtureWasher, 0, 0, 30)
			r.Fixture(plan.FixtureWasher, 0, 150, 30)
			r.Opening("washer", r.On(0, 102)).At.Along += over
		}, rule.Grain, 0, 1, "210.50(C)"),
	})
	ruletest.Edges(t, &receptacle.Hall, []ruletest.Edge{
		ruletest.Limit("10 ft", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseHall, 0, 0, 120, 40)
			r.Sides[1].Start.X -= over
			r.Sides[2].Start.X -= over
		}, rule.Grain, 1, 0, "210.52(H): 10 ft or more"),
	})
	ruletest.Edges(t, &receptacle.Foyer, []ruletest.Edge{
		ruletest.Limit("3 ft beside a door", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseFoyer, 0, 0, 106, 96)
			r.Break(plan.BreakDoor, 0, 36, 36).At.Along -= over
			for side := 1; side < 4; side++ {
				r.Opening("duplex", r.On(side, 48))
			}
		}, rule.Grain, 1, 0, "210.52(I): 3 ft or more"),
		ruletest.Limit("a receptacle at the end of the wall", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			r.Break(plan.BreakDoor, 0, 60, 60)
			for side := 1; side < 4; side++ {
				r.Opening("duplex", r.On(side, 48))
			}
			r.Opening("duplex", r.On(0, 60)).At.Along += over
		}, rule.Grain, 0, 1, "210.52(I): in the wall, not in the door"),
	})
	ruletest.Edges(t, &receptacle.Garage, []ruletest.Edge{
		ruletest.Limit("5-1/2 ft up", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 96)
			r.Opening("garage", r.On(0, 50)).Height.Value = ruletest.In(66) + over
		}, 0, 0, 1, "210.52(G)(1)"),
	})
	ruletest.Edges(t, &receptacle.Outdoor, []ruletest.Edge{
		ruletest.Limit("6-1/2 ft up", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseOutdoors, 0, 0, 240, 96)
			r.Faces = plan.FacesFront
			r.Opening("outdoor", r.On(0, 50)).Height.Value = ruletest.In(78) + over
		}, 0, 0, 1, "210.52(E)"),
	})
}

// Which receptacles count, each part of the sentence met and not, held against halls, which
// ask for one alone.
func TestWhichReceptaclesCount(t *testing.T) {
	hall := func(kind string, at func(*ruletest.Room) plan.Anchor, more ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 200, 60)
			r.Opening(kind, at(r), more...)
		}
	}
	wall := func(r *ruletest.Room) plan.Anchor { return r.On(0, 60) }
	floor := func(r *ruletest.Room) plan.Anchor { return plan.OnFloor(r.Room.ID, r.Ceiling(60, 30).At) }
	const said = "210.52: 125 V, 15 A and 20 A, not controlled by a switch in place of a light"
	trials := []ruletest.Trial{
		ruletest.Case("in the floor", hall("floor", floor), 0, said),
		ruletest.Case("in a ceiling", func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 200, 60)
			r.Opening("duplex", r.Ceiling(60, 30), func(o *plan.Opening) { o.Height = plan.Height{} })
		}, 1, said+": more than 5-1/2 ft up"),
		ruletest.Case("one that goes", hall("duplex", wall, ruletest.Removed), 1, "it will not be there"),
		ruletest.Case("a kind that nobody knows", hall("gramophone", wall, ruletest.Up(16)), 1, "nobody says that it is a receptacle"),
	}
	for kind, want := range map[string]int{
		"duplex": 0, "quad": 0, "gfci": 0, "half-switched": 0, "switched": 1, "range": 1, "dryer": 1, "switch": 1, "data": 1, "junction": 1,
	} {
		trials = append(trials, ruletest.Case(kind, hall(kind, wall), want, said))
	}
	ruletest.Try(t, &receptacle.Hall, trials)
	// In the top of a counter it is as high as that.
	ruletest.Try(t, &receptacle.BasinReach, []ruletest.Trial{
		ruletest.Case("in the top of what stands beside", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			i := r.Stand(plan.FixtureIsland, plan.OnFloor(r.Room.ID, r.Ceiling(60, 40).At), 30, 20)
			r.Opening("basin", plan.Anchor{Host: i.ID, Part: plan.PartTop, Along: ruletest.In(10), Out: ruletest.In(10)}, func(o *plan.Opening) { o.Height = plan.Height{} })
		}, 0, "210.52(D): on the countertop"),
		ruletest.Case("in the top of a bench", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 96)
			r.Fixture(plan.FixtureBasin, 0, 20, 20)
			i := r.Stand(plan.FixtureIsland, plan.OnFloor(r.Room.ID, r.Ceiling(60, 40).At), 30, 20)
			i.Height = ruletest.In(20)
			r.Opening("basin", plan.Anchor{Host: i.ID, Part: plan.PartTop, Along: ruletest.In(10), Out: ruletest.In(10)}, func(o *plan.Opening) { o.Height = plan.Height{} })
		}, 1, "210.52(D): not more than 12 in below the top of the basin"),
	})
	machine := map[string]int{"refrigerator": 1, "dishwasher": 1, "microwave": 1, "washer": 1, "garage": 0, "duplex": 0}
	for kind, want := range machine {
		ruletest.Try(t, &receptacle.Basement, []ruletest.Trial{
			ruletest.Case("a basement's for a "+kind, func(h *ruletest.House) {
				r := h.Square(plan.UseBasement, 0, 0, 200, 60)
				r.Opening(kind, r.On(0, 60), ruletest.Up(30))
			}, want, "210.52(G): in addition to those for specific equipment"),
		})
		ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
			ruletest.Case("a garage's for a "+kind, func(h *ruletest.House) {
				r := h.Square(plan.UseGarage, 0, 0, 200, 60)
				r.Opening(kind, r.On(0, 60), ruletest.Up(30))
			}, want, "210.52(G): in addition to those for specific equipment"),
		})
	}
}

// Which garages and which places outdoors are looked at.
func TestWhichPlacesAreLookedAt(t *testing.T) {
	garage := func(beside plan.Use, more func(*ruletest.House, *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			if beside != "" {
				h.Square(beside, 244.5, 0, 120, 120)
			}
			if more != nil {
				more(h, r)
			}
		}
	}
	ruletest.Try(t, &receptacle.Garage, []ruletest.Trial{
		ruletest.Case("beside a bath", garage(plan.UseBath, nil), 1, "210.52(G)(1): attached garages"),
		ruletest.Case("beside the outdoors", garage(plan.UseOutdoors, nil), 0, "it is not attached"),
		ruletest.Case("beside another garage", garage(plan.UseGarage, nil), 0, "neither is attached"),
		ruletest.Case("with a doorbell", garage("", func(_ *ruletest.House, r *ruletest.Room) { r.Opening("doorbell", r.On(0, 40)) }), 0, "low voltage is no power"),
		ruletest.Case("with a light that goes", garage("", func(_ *ruletest.House, r *ruletest.Room) {
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Removed)
		}), 0, "it will not be there"),
		ruletest.Case("with a kind that nobody knows", garage("", func(_ *ruletest.House, r *ruletest.Room) { r.Opening("gramophone", r.On(0, 60), ruletest.Up(16)) }), 0, "nobody says that it has power"),
		ruletest.Case("a shed beside a bath", func(h *ruletest.House) {
			h.Square(plan.UseStorage, 0, 0, 240, 240)
			h.Square(plan.UseBath, 244.5, 0, 120, 120)
		}, 0, "it is no garage"),
	})
	porch := func(change func(h *ruletest.House, r *ruletest.Room, door *plan.Break)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			living := h.Square(plan.UseLiving, 0, 0, 200, 120)
			r := h.Square(plan.UseOutdoors, 0, 127, 200, 96)
			change(h, r, living.Break(plan.BreakDoor, 2, 50, 36))
		}
	}
	named := func(name string) func(*ruletest.House, *ruletest.Room, *plan.Break) {
		return func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) { r.Room.Name = name }
	}
	railing := func(r *ruletest.Room) { r.Sides[2].Kind = plan.SideRailing }
	const said = "210.52(E)(3): balconies, decks and porches at the house, accessible from inside"
	trials := []ruletest.Trial{
		ruletest.Case("a railing", porch(func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) { railing(r) }), 1, said),
		ruletest.Case("a yard", porch(func(*ruletest.House, *ruletest.Room, *plan.Break) {}), 0, said),
		ruletest.Case("a railing, behind a slider", porch(func(_ *ruletest.House, r *ruletest.Room, b *plan.Break) {
			railing(r)
			b.Kind, b.Hand, b.Swing, b.Panels = plan.BreakSlider, "", "", []plan.Panel{plan.PanelFixed, plan.PanelMoving}
		}), 1, said),
		ruletest.Case("a railing, behind a cased opening", porch(func(_ *ruletest.House, r *ruletest.Room, b *plan.Break) {
			railing(r)
			b.Kind, b.Hand, b.Swing = plan.BreakPassage, "", ""
		}), 1, said),
		ruletest.Case("a railing, behind a hatch", porch(func(_ *ruletest.House, r *ruletest.Room, b *plan.Break) {
			railing(r)
			b.Kind, b.Hand, b.Swing, b.Sill = plan.BreakPassage, "", "", 1
		}), 0, said),
		ruletest.Case("a railing, behind a window", porch(func(_ *ruletest.House, r *ruletest.Room, b *plan.Break) {
			railing(r)
			b.Kind, b.Hand, b.Swing = plan.BreakWindow, "", ""
		}), 0, said),
		ruletest.Case("a railing, with a receptacle that goes", porch(func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) {
			railing(r)
			r.Opening("outdoor", r.On(0, 20), ruletest.Removed)
		}), 1, "it will not be there"),
		ruletest.Case("a deck that stands alone, a door in its fence", func(h *ruletest.House) {
			r := h.Square(plan.UseOutdoors, 0, 0, 200, 96)
			railing(r)
			r.Break(plan.BreakDoor, 0, 20, 30)
		}, 0, said),
		ruletest.Case("the front of a living room", func(h *ruletest.House) { h.Square(plan.UseLiving, 0, 0, 200, 96).Faces = plan.FacesFront }, 0, "it is not outdoors"),
	}
	for _, name := range []string{"Porch", "Back deck", "Balcony", "Balcón", "Terrace", "Veranda", "Lanai", "Porche", "La terraza", "Galería"} {
		trials = append(trials, ruletest.Case(name, porch(named(name)), 1, said+"; by its name, common practice"))
	}
	ruletest.Try(t, &receptacle.Outdoor, trials)
	ruletest.Try(t, &receptacle.Foyer, []ruletest.Trial{
		ruletest.Case("a wall of glass", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			r.Sides[0].Kind = plan.SideGlass
		}, 3, "210.52(I): glass ends a wall space"),
		ruletest.Case("a window above the floor", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			r.Break(plan.BreakWindow, 0, 30, 60, func(b *plan.Break) { b.Sill = ruletest.In(30) })
		}, 4, "210.52(I): windows to the floor alone end a wall space"),
		ruletest.Case("a receptacle in the next wall", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			r.Opening("duplex", r.On(1, 48))
		}, 3, "210.52(I): in each wall"),
		ruletest.Case("walls at either hand of a door", func(h *ruletest.House) {
			r := h.Square(plan.UseFoyer, 0, 0, 120, 96)
			r.Break(plan.BreakDoor, 0, 40, 36)
			r.Opening("duplex", r.On(0, 20))
		}, 4, "210.52(I): each wall space of 3 ft"),
		ruletest.Case("a large hall", func(h *ruletest.House) { h.Square(plan.UseBedroom, 0, 0, 120, 96) }, 0, "210.52(I): foyers"),
	})
}
