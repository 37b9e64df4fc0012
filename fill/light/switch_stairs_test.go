package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// A switch by stairs is by a way into the room; one of several in a hall may be.
func TestSwitchByStairs(t *testing.T) {
	// A room of 300 in with a door at the left of its top side.
	room := func(use plan.Use, more func(r *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(use, 0, 0, 300, 300)
			r.Break(plan.BreakDoor, 0, 24, 30)
			more(r)
		}
	}
	stand := func(r *ruletest.Room, kind plan.FixtureKind, width, depth float64) {
		r.Stand(kind, plan.OnFloor(r.Room.ID, r.Ceiling(150, 150).At), width, depth)
	}
	for _, use := range plan.Uses {
		several := 1
		if use == plan.UseHall || use == plan.UseFoyer || use == plan.UseStairs {
			several = 0
		}
		for kind, want := range map[string]int{"switch": 1, "dimmer": 1, "three-way": several, "four-way": several} {
			ruletest.Try(t, &light.SwitchByDoor, []ruletest.Trial{
				ruletest.Case(string(use)+", a far "+kind, room(use, func(r *ruletest.Room) { r.Opening(kind, r.On(2, 150)) }), want, "common practice: halls, foyers and stairs whose switch is one of several"),
			})
		}
	}
	const practice = "common practice: 4 ft from either end of stairs"
	// Stairs of 36 by 100 in from y 100 to 200; of 100 by 36 from x 100 to 200.
	ruletest.Edges(t, &light.SwitchByDoor, []ruletest.Edge{
		ruletest.Limit("from the foot", func(h *ruletest.House, over unit.Length) {
			room(plan.UseDen, func(r *ruletest.Room) {
				f := r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(150, 202).At), 36, 100) // its foot at y 252
				f.At.At.Y -= over
				r.Opening("switch", r.On(2, 150))
			})(h)
		}, 0, 0, 1, practice),
		ruletest.Limit("from the head", func(h *ruletest.House, over unit.Length) {
			room(plan.UseDen, func(r *ruletest.Room) {
				f := r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(202, 150).At), 100, 36) // its head at x 252
				f.At.At.X -= over
				r.Opening("switch", r.On(1, 150))
			})(h)
		}, 0, 0, 1, practice),
		// The door is before the switch, across a room as deep as a hand finds one.
		ruletest.Limit("from a door across", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseDen, 0, 0, 200, 48)
			r.Break(plan.BreakDoor, 0, 24, 30)
			for _, s := range r.Sides[2:] {
				s.Start.Y += over
			}
			r.Opening("switch", r.On(2, 200-24))
		}, 0, 0, 1, "common practice: 4 ft from the edge of a door"),
	})
	ruletest.Try(t, &light.SwitchByDoor, []ruletest.Trial{
		ruletest.Case("by an island", room(plan.UseDen, func(r *ruletest.Room) {
			stand(r, plan.FixtureIsland, 36, 280)
			r.Opening("switch", r.On(2, 150))
		}), 1, "it is no stairs"),
		ruletest.Case("by an island and stairs", room(plan.UseDen, func(r *ruletest.Room) {
			stand(r, plan.FixtureIsland, 36, 20)
			stand(r, plan.FixtureStairs, 36, 280)
			r.Opening("switch", r.On(2, 150))
		}), 0, practice),
		ruletest.Case("a receptacle by stairs", room(plan.UseDen, func(r *ruletest.Room) {
			stand(r, plan.FixtureStairs, 36, 280)
			r.Opening("duplex", r.On(2, 150))
			r.Opening("switch", r.On(1, 150))
		}), 1, "it puts on no light"),
		ruletest.Case("an old switch by stairs", room(plan.UseDen, func(r *ruletest.Room) {
			stand(r, plan.FixtureStairs, 36, 280)
			r.Opening("switch", r.On(2, 150), ruletest.Existing)
			r.Opening("switch", r.On(1, 150))
		}), 1, "what is there already is where it was"),
		ruletest.Case("another switch by stairs", room(plan.UseDen, func(r *ruletest.Room) {
			stand(r, plan.FixtureStairs, 36, 280)
			r.Opening("switch", r.On(2, 150))
			r.Opening("switch", r.On(1, 150))
		}), 0, practice),
		ruletest.Case("no door and no stairs", func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 300, 300)
			r.Opening("switch", r.On(2, 150))
		}, 0, "there is no door to be by"),
	})
}

// What an open leaf hides from the face behind, and what a thin casing meets.
func TestBehindTheLeafOfTheNextRoom(t *testing.T) {
	// A door of the hall's above, here from 54 to 84 of the top side.
	behind := func(hand plan.Hand, swing plan.Swing, along float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			next := h.Square(plan.UseHall, 0, -124.5, 144, 120)
			next.Break(plan.BreakDoor, 2, 60, 30, hung(hand, swing, 0))
			r.Opening("switch", r.On(0, along))
		}
	}
	const practice = "common practice"
	ruletest.Try(t, &light.SwitchPlace, []ruletest.Trial{
		ruletest.Case("it opens here, hinged at 54", behind(plan.HandRight, plan.SwingOut, 40), 1, practice),
		ruletest.Case("it opens here, hinged at 84", behind(plan.HandLeft, plan.SwingOut, 100), 1, practice),
		ruletest.Case("it opens into the hall, hinged at 54", behind(plan.HandRight, plan.SwingIn, 40), 0, practice),
		ruletest.Case("it opens into the hall, hinged at 84", behind(plan.HandLeft, plan.SwingIn, 100), 0, practice),
		ruletest.Case("nobody says which way", behind(plan.HandRight, plan.SwingNone, 40), 0, "what is not said is no fault"),
		ruletest.Case("over the edge of a door without a casing", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakDoor, 0, 60, 30, hung(plan.HandLeft, plan.SwingOut, 0))
			r.Opening("switch", r.On(0, 90))
		}, 0, "it has no casing to meet"),
		ruletest.Case("over the edge of a door with the thinnest casing", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakDoor, 0, 60, 30, hung(plan.HandLeft, plan.SwingOut, 0)).Casing = unit.Nanometre
			r.Opening("switch", r.On(0, 90))
		}, 1, practice),
	})
}

// A pendant by the storage space is told once, as what may not hang there at all.
func TestAPendantByTheShelf(t *testing.T) {
	h := ruletest.New(t)
	r := aCloset(h, 96, 69)
	r.Opening("pendant", r.Ceiling(48, 20))
	if found := h.Found(&light.ClosetLight); len(found) != 1 || found[0].Limit.Unit != rule.NoQuantity {
		t.Errorf("%+v, want 410.16(B) alone", found)
	}
}

// A dark way in by the front door, whose side is the first of the room, and from nowhere.
func TestTheStretchOfADarkEntry(t *testing.T) {
	ruletest.Tells(t, &light.LitRoute, []ruletest.Telling{
		ruletest.Told("from where nothing is drawn", func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 120, 120)
			r.Break(plan.BreakDoor, 0, 40, 36)
			s := r.Opening("switch", r.On(2, 62), ruletest.Tagged("S"))
			h.Control([]*plan.Opening{s}, []*plan.Opening{r.Opening("ceiling-light", r.Ceiling(60, 60))})
		}, `
			warn, by practice: door in hall; 121-5/16" of 30"
			From the outdoors into hall: dark, no switch for a light there is at hand
			S, the nearest, is ≈ 10' 1-5/16" away; a hand reaches 2' 6". One walks 7' 6" in the dark. No walk in the dark is longer.
			on hall/0 face from 40" to 76"`, "common practice; the latch at 76, the switch at (58, 120): √(18² + 120²) = 121.34"),
	})
}

// What is not in the catalogue, as a file of a later version may have it, is neither light
// nor switch.
func TestWhatNobodyKnows(t *testing.T) {
	for _, of := range []*rule.Rule{&light.LitRoom, &light.LitPassage, &light.LitRoute, &light.SwitchByDoor, &light.SwitchHeight, &light.SwitchNeutral, &light.SwitchPlace, &light.ClosetLight, &light.WetZone} {
		for _, use := range []plan.Use{plan.UseBath, plan.UseCloset, plan.UseGarage, plan.UseBedroom} {
			without := ruletest.New(t)
			with := ruletest.New(t)
			for _, h := range []*ruletest.House{without, with} {
				r := h.Square(use, 0, 0, 120, 120)
				r.Break(plan.BreakDoor, 0, 24, 30)
				r.Fixture(plan.FixtureTub, 1, 0, 60)
				r.Fixture(plan.FixtureRod, 2, 0, 60)
				if use != plan.UseGarage {
					lamp := r.Opening("ceiling-light", r.Ceiling(60, 20))
					if h == with {
						a, b := r.Opening("switch", r.On(0, 20), ruletest.Up(90)), r.Opening("switch", r.Ceiling(60, 80))
						a.Kind, b.Kind = "unheard-of", "unheard-of"
						h.Control([]*plan.Opening{a, {ID: "ogone"}}, []*plan.Opening{lamp, b})
					}
				} else if h == with {
					r.Opening("switch", r.On(0, 20)).Kind = "unheard-of"
				}
			}
			if got, want := with.Tell(of), without.Tell(of); got != want {
				t.Errorf("%s, %s: with it\n%s\nwithout\n%s", of.ID, use, got, want)
			}
		}
	}
	if light.WantsNeutral(&plan.Opening{Kind: "switch"}, nil) {
		t.Error("a switch in no room wants a neutral")
	}
}
