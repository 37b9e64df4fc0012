package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
)

func TestWhatIsToldOfLightInRooms(t *testing.T) {
	ruletest.Tells(t, &light.LitRoom, []ruletest.Telling{
		ruletest.Told("no light", lit("2023", plan.UseDen, "", true, false), `
			stop, NEC 2023 210.70(A)(1): den
			den has no light
			It needs at least one, on a wall switch.`, "210.70(A)(1)"),
		ruletest.Told("no switch", lit("2023", plan.UseDen, "ceiling-light", false, false), `
			stop, NEC 2023 210.70(A)(1): den
			den has a light and no switch for it
			There is none in the room, nor in a room next to it.`, "210.70(A)(1)"),
		ruletest.Told("nobody says which switch", lit("2023", plan.UseDen, "ceiling-light", true, false), `
			note, open, NEC 2023 210.70(A)(1): den
			Nobody says which switch puts on a light in den
			Connect the light with its switch.`, "what is not said is no fault"),
		ruletest.Told("an attic in which something stands", lit("2020", plan.UseAttic, "", false, false), `
			stop, NEC 2020 210.70(C): attic
			attic has no light
			It needs at least one, on a wall switch.`, "thomasdomitrovich.com, 210.70: under (C) from 2017 on"),
		ruletest.Told("a basement in which something stands, 2023", lit("2023", plan.UseBasement, "", false, false), `
			stop, NEC 2023 210.70(C): unfinished basement
			unfinished basement has no light
			It needs at least one, on a wall switch.`, "210.70(C), 2023, number from memory"),
	})
	porch := func(light, control bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			living := h.Square(plan.UseLiving, 0, 0, 120, 120)
			porch := h.Square(plan.UseOutdoors, 0, 127, 120, 80)
			living.Break(plan.BreakDoor, 2, 40, 36)
			if !light {
				return
			}
			lamp, button := porch.Opening("porch-light", porch.On(0, 20)), living.Opening("switch", living.On(2, 20))
			if control {
				h.Control([]*plan.Opening{button}, []*plan.Opening{lamp})
			}
		}
	}
	ruletest.Tells(t, &light.LitPassage, []ruletest.Telling{
		ruletest.Told("a hall without a light", lit("2023", plan.UseHall, "", true, false), `
			stop, NEC 2023 210.70(A)(2): hall
			hall has no light
			It needs at least one, on a wall switch.`, "210.70(A)(2)(1)"),
		ruletest.Told("a door to a porch without a light", porch(false, false), `
			stop, NEC 2023 210.70(A)(2): door in living
			No light on a switch is outside the door from living to outdoors
			A door at grade has a light outside that a wall switch puts on.`, "210.70(A)(2)(2)"),
		ruletest.Told("nobody says what puts on the porch's light", porch(true, false), `
			note, open, NEC 2023 210.70(A)(2): door in living
			Nobody says which switch puts on a light in outdoors
			Connect the light with its switch.`, "what is not said is no fault"),
		ruletest.Told("a landing with a door, two switches", func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 200, 200)
			f := r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(50, 100).At), 36, 100)
			f.Risers, f.Landings = 12, 1
			h.Control([]*plan.Opening{r.Opening("three-way", r.On(0, 40)), r.Opening("three-way", r.On(0, 80))}, []*plan.Opening{r.Opening("ceiling-light", r.Ceiling(100, 100))})
		}, `
			stop, NEC 2023 210.70(A)(2): stairs in hall; 2 of 3
			The light of the stairs in hall has 2 switches of 3
			Stairs of 6 risers or more need one at each end and at each landing with a door.`, "210.70(A)(2)(3)"),
		ruletest.Told("six risers, one switch", func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 200, 200)
			r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(50, 100).At), 36, 100).Risers = 6
			lamp := r.Opening("ceiling-light", r.Ceiling(60, 60))
			h.Control([]*plan.Opening{r.Opening("three-way", r.On(0, 20))}, []*plan.Opening{lamp})
		}, `
			stop, NEC 2023 210.70(A)(2): stairs in den; 1 of 2
			The light of the stairs in den has one switch
			Stairs of 6 risers or more need one at each end.`, "210.70(A)(2)(3)"),
	})
}

// Which rooms want a light, and whether a receptacle on a switch stands in for one.
func TestWhichRoomsWantALight(t *testing.T) {
	habitable := []plan.Use{
		plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor, plan.UseLibrary, plan.UseDen, plan.UseSunroom,
		plan.UseBedroom, plan.UseRecreation, plan.UseBreakfast, plan.UseOffice, plan.UseBath,
	}
	stores := []plan.Use{plan.UseUtility, plan.UseAttic, plan.UseBasement}
	is := func(u plan.Use, lists ...[]plan.Use) int {
		for _, list := range lists {
			for _, l := range list {
				if l == u {
					return 1
				}
			}
		}
		return 0
	}
	own := []plan.Use{plan.UseKitchen, plan.UseBath, plan.UseLaundry}
	bare := func(u plan.Use) func(*ruletest.House) {
		return func(h *ruletest.House) { h.Square(u, 0, 0, 120, 120) }
	}
	standing := func(u plan.Use) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(u, 0, 0, 120, 120)
			r.Island(60, 60, 20, 20)
		}
	}
	const said = "210.70(A)(1), (C): habitable rooms, kitchens, bathrooms, laundries; stores where something stands"
	for _, u := range plan.Uses {
		laundry := []plan.Use{plan.UseLaundry}
		ruletest.Try(t, &light.LitRoom, []ruletest.Trial{
			ruletest.Case(string(u)+", nothing in it", bare(u), is(u, habitable, laundry), said),
			ruletest.Case(string(u)+", something at a wall", lit("2023", u, "", false, false), is(u, habitable, laundry, stores), said),
			ruletest.Case(string(u)+", something in the middle", standing(u), is(u, habitable, laundry, stores), said),
			ruletest.Case(string(u)+", a receptacle on a switch", lit("2023", u, "switched", true, true), is(u, own), "210.70(A)(1) exception 1: other than kitchens, bathrooms and laundries"),
			ruletest.Case(string(u)+", a half of one on a switch", lit("2023", u, "half-switched", true, true), is(u, own), "210.70(A)(1) exception 1"),
		})
		passage := []plan.Use{plan.UseHall, plan.UseFoyer, plan.UseStairs}
		ruletest.Try(t, &light.LitPassage, []ruletest.Trial{
			ruletest.Case(string(u)+", no light", bare(u), is(u, passage), "210.70(A)(2)(1): hallways, stairways; a garage with power"),
			ruletest.Case(string(u)+", a receptacle on a switch", lit("2023", u, "switched", true, true), 0, "210.70(A)(1) exception 1"),
		})
	}
}

// What counts as a light and as a switch for it.
func TestWhatCountsAsLit(t *testing.T) {
	// A den with a lamp, and whatever else; a hall lies below it behind a door.
	den := func(lamp string, more func(h *ruletest.House, den, hall *ruletest.Room, lamp *plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			den, hall := h.Square(plan.UseDen, 0, 0, 120, 120), h.Square(plan.UseMudroom, 0, 124.5, 120, 120)
			at := den.Ceiling(60, 60)
			if lamp == "wall-light" || lamp == "duplex" {
				at = den.On(0, 60)
			}
			more(h, den, hall, den.Opening(lamp, at))
		}
	}
	control := func(h *ruletest.House, button, lamp *plan.Opening) {
		h.Control([]*plan.Opening{button}, []*plan.Opening{lamp})
	}
	const said = "210.70(A)(1): a lighting outlet controlled by a wall-mounted device"
	for _, lamp := range []string{"ceiling-light", "pendant", "recessed", "wall-light", "fan-light"} {
		ruletest.Try(t, &light.LitRoom, []ruletest.Trial{
			ruletest.Case(lamp+" on a switch", den(lamp, func(h *ruletest.House, den, _ *ruletest.Room, lamp *plan.Opening) {
				control(h, den.Opening("switch", den.On(0, 20)), lamp)
			}), 0, said),
		})
	}
	none := func(*ruletest.House, *ruletest.Room, *ruletest.Room, *plan.Opening) {}
	for _, kind := range []string{"exhaust-fan", "smoke", "duplex"} {
		ruletest.Tells(t, &light.LitRoom, []ruletest.Telling{
			ruletest.Told(kind+" is no light", den(kind, none), `
				stop, NEC 2023 210.70(A)(1): den
				den has no light
				It needs at least one, on a wall switch.`, said),
		})
	}
	const unsaid = `
				note, open, NEC 2023 210.70(A)(1): den
				Nobody says which switch puts on a light in den
				Connect the light with its switch.`
	const without = `
				stop, NEC 2023 210.70(A)(1): den
				den has a light and no switch for it
				There is none in the room, nor in a room next to it.`
	ruletest.Tells(t, &light.LitRoom, []ruletest.Telling{
		ruletest.Told("the switch in the next room", den("ceiling-light", func(h *ruletest.House, den, hall *ruletest.Room, _ *plan.Opening) {
			den.Break(plan.BreakDoor, 2, 40, 30)
			hall.Opening("switch", hall.On(0, 20))
		}), unsaid, said),
		ruletest.Told("the switch past a wall", den("ceiling-light", func(h *ruletest.House, _, hall *ruletest.Room, _ *plan.Opening) {
			hall.Opening("switch", hall.On(0, 20))
		}), without, said),
		ruletest.Told("the switch goes", den("ceiling-light", func(h *ruletest.House, den, _ *ruletest.Room, lamp *plan.Opening) {
			control(h, den.Opening("switch", den.On(0, 20), ruletest.Removed), lamp)
		}), without, said),
		ruletest.Told("a door to where nothing is drawn", den("ceiling-light", func(h *ruletest.House, den, _ *ruletest.Room, _ *plan.Opening) {
			den.Break(plan.BreakDoor, 0, 40, 30)
		}), without, said),
		ruletest.Told("the light goes", den("ceiling-light", func(h *ruletest.House, den, _ *ruletest.Room, lamp *plan.Opening) {
			lamp.Status = plan.StatusRemove
			control(h, den.Opening("switch", den.On(0, 20)), lamp)
		}), `
				stop, NEC 2023 210.70(A)(1): den
				den has no light
				It needs at least one, on a wall switch.`, said),
		ruletest.Told("of two lights one on a switch", den("ceiling-light", func(h *ruletest.House, den, _ *ruletest.Room, _ *plan.Opening) {
			control(h, den.Opening("switch", den.On(0, 20)), den.Opening("recessed", den.Ceiling(30, 30)))
		}), "", said),
	})
}

// Where a door to the outdoors is at grade, and when a garage is looked at.
func TestWhichDoorsAreLit(t *testing.T) {
	door := func(use plan.Use, change func(h *ruletest.House, b *plan.Break, inside, outside *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			inside := h.Square(use, 0, 0, 120, 120)
			outside := h.Square(plan.UseOutdoors, 0, 127, 120, 80)
			change(h, inside.Break(plan.BreakDoor, 2, 40, 36), inside, outside)
		}
	}
	grade := func(g plan.Grade, name string, more ...string) func(*ruletest.House) {
		return door(plan.UseDen, func(h *ruletest.House, b *plan.Break, _, _ *ruletest.Room) {
			b.Grade = g
			h.Plan.Levels[0].Name = name
			for _, m := range more {
				n := h.Level(m)
				h.RoomOn(n, plan.UseDen, 0, 0, 120, 0, 120, 120, 0, 120)
			}
		})
	}
	const said = "210.70(A)(2)(2): exterior doors with grade-level access"
	ruletest.Try(t, &light.LitPassage, []ruletest.Trial{
		ruletest.Case("nobody says, ground floor", grade(plan.GradeUnsaid, "Ground floor", "Upper floor"), 1, said),
		ruletest.Case("nobody says, basement", grade(plan.GradeUnsaid, "Basement", "Ground floor"), 0, said),
		ruletest.Case("nobody says, sótano", grade(plan.GradeUnsaid, "El sótano", "Planta baja"), 0, said),
		ruletest.Case("nobody says, cellar", grade(plan.GradeUnsaid, "Old cellar"), 0, said),
		ruletest.Case("said of a basement's", grade(plan.AtGrade, "Basement", "Ground floor"), 1, said),
		ruletest.Case("above grade", grade(plan.AboveGrade, "Ground floor"), 0, said),
		ruletest.Case("a window", door(plan.UseDen, func(_ *ruletest.House, b *plan.Break, _, _ *ruletest.Room) {
			b.Kind, b.Sill = plan.BreakWindow, ruletest.In(30)
		}), 0, said),
		ruletest.Case("an open side", door(plan.UseDen, func(_ *ruletest.House, b *plan.Break, inside, outside *ruletest.Room) {
			b.Kind, b.Sill = plan.BreakWindow, ruletest.In(30)
			b.At = inside.On(1, 40)
			inside.Sides[2].Kind, outside.Sides[0].Kind = plan.SideOpen, plan.SideOpen
		}), 0, said),
		ruletest.Case("from the outdoors to the outdoors", door(plan.UseOutdoors, func(*ruletest.House, *plan.Break, *ruletest.Room, *ruletest.Room) {}), 0, said),
		ruletest.Case("from a garage without power that stands alone", door(plan.UseGarage, func(*ruletest.House, *plan.Break, *ruletest.Room, *ruletest.Room) {}), 0, said+" of dwellings and garages with power"),
		ruletest.Case("from a garage with power", door(plan.UseGarage, func(_ *ruletest.House, _ *plan.Break, inside, _ *ruletest.Room) {
			inside.Opening("garage", inside.On(0, 20))
		}), 2, said+"; the garage itself too"),
		ruletest.Case("from a garage with a door bell", door(plan.UseGarage, func(_ *ruletest.House, _ *plan.Break, inside, _ *ruletest.Room) {
			inside.Opening("doorbell", inside.On(0, 20))
		}), 0, "low voltage is no power"),
		ruletest.Case("from a garage with a light in its ceiling", door(plan.UseGarage, func(_ *ruletest.House, _ *plan.Break, inside, _ *ruletest.Room) {
			inside.Opening("ceiling-light", inside.Ceiling(60, 60))
		}), 2, said),
		ruletest.Case("from a garage from which all goes", door(plan.UseGarage, func(_ *ruletest.House, _ *plan.Break, inside, _ *ruletest.Room) {
			inside.Opening("garage", inside.On(0, 20), ruletest.Removed)
		}), 0, "it will not be there"),
		ruletest.Case("from a garage beside a pantry", door(plan.UseGarage, func(h *ruletest.House, _ *plan.Break, _, _ *ruletest.Room) {
			h.Square(plan.UsePantry, 124.5, 0, 100, 100)
		}), 2, "210.70(A)(2)(1): attached garages"),
		ruletest.Case("from a garage beside another", door(plan.UseGarage, func(h *ruletest.House, _ *plan.Break, _, _ *ruletest.Room) {
			h.Square(plan.UseGarage, 124.5, 0, 100, 100)
		}), 0, "neither is attached"),
	})
	// The most switches of any light of the stairs count; that of another room does not.
	stairs := func(risers int, lamps ...int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 200, 200)
			r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(50, 100).At), 36, 100).Risers = risers
			for i, switches := range lamps {
				lamp := r.Opening("ceiling-light", r.Ceiling(float64(60+20*i), 60))
				var all []*plan.Opening
				for k := range switches {
					all = append(all, r.Opening("three-way", r.On(i, float64(20+40*k))))
				}
				if len(all) > 0 {
					h.Control(all, []*plan.Opening{lamp})
				}
			}
		}
	}
	const ends = "210.70(A)(2)(3): six risers or more, a switch at each level"
	ruletest.Try(t, &light.LitPassage, []ruletest.Trial{
		ruletest.Case("14 risers, lights of one switch and of two", stairs(14, 1, 2), 0, ends),
		ruletest.Case("14 risers, lights of two switches and of one", stairs(14, 2, 1), 0, ends),
		ruletest.Case("14 risers, two lights of one each", stairs(14, 1, 1), 1, ends),
		ruletest.Case("14 risers, a light of which nobody says a switch", stairs(14, 0), 0, "what is not said is no fault"),
		ruletest.Case("14 risers, no light", stairs(14), 0, "that is told of the room"),
		ruletest.Case("an island", func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 200, 200)
			r.Island(100, 100, 36, 100).Risers = 14
			h.Control([]*plan.Opening{r.Opening("switch", r.On(0, 20))}, []*plan.Opening{r.Opening("ceiling-light", r.Ceiling(60, 60))})
		}, 0, "it is no stairs"),
	})
}
