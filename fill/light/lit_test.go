package light_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// lit makes a room of a use with a light of a kind, a switch and what connects the two.
func lit(edition string, use plan.Use, kind string, withSwitch, connected bool) func(*ruletest.House) {
	return func(h *ruletest.House) {
		h.Edition = edition
		r := h.Square(use, 0, 0, 120, 120)
		r.Fixture(plan.FixtureWaterHeater, 1, 0, 22)
		var lamp, button *plan.Opening
		switch kind {
		case "":
		case "switched":
			lamp = r.Opening(kind, r.On(0, 60))
		default:
			lamp = r.Opening(kind, r.Ceiling(60, 60))
		}
		if withSwitch {
			button = r.Opening("switch", r.On(2, 40))
		}
		if connected {
			h.Control([]*plan.Opening{button}, []*plan.Opening{lamp})
		}
	}
}

func TestLitRoom(t *testing.T) {
	ruletest.Try(t, &light.LitRoom, []ruletest.Trial{
		ruletest.Case("a light on a switch", lit("2023", plan.UseBedroom, "ceiling-light", true, true), 0, "210.70(A)(1)"),
		ruletest.Case("no light", lit("2023", plan.UseBedroom, "", true, false), 1, "210.70(A)(1)"),
		ruletest.Case("no switch", lit("2023", plan.UseBath, "ceiling-light", false, false), 1, "210.70(A)(1)"),
		ruletest.Case("a receptacle on a switch in a bedroom", lit("2023", plan.UseBedroom, "switched", true, true), 0, "210.70(A)(1) exception 1"),
		ruletest.Case("a receptacle on a switch in a kitchen", lit("2023", plan.UseKitchen, "switched", true, true), 1, "210.70(A)(1) exception 1: other than kitchens and bathrooms"),
		ruletest.Case("a laundry in 2020", lit("2020", plan.UseLaundry, "", false, false), 0, "210.70(A)(1), 2020"),
		ruletest.Case("a laundry in 2023", lit("2023", plan.UseLaundry, "", false, false), 1, "210.70(A)(1), 2023"),
		ruletest.Case("a utility room with a water heater", lit("2023", plan.UseUtility, "", false, false), 1, "210.70(C): equipment that needs service"),
		ruletest.Case("a closet", lit("2023", plan.UseCloset, "", false, false), 0, "210.70(A) names no closets"),
	})
	h := ruletest.New(t)
	lit("2023", plan.UseBedroom, "ceiling-light", true, false)(h)
	if found := h.Found(&light.LitRoom); len(found) != 1 || found[0].Severity != rule.Note || !found[0].IsOpen {
		t.Errorf("nobody says which switch: %q", filltest.Said(found))
	}
}

func TestLitPassage(t *testing.T) {
	// A living room with a door to a porch below it.
	door := func(light bool, more func(*plan.Break)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			living := h.Square(plan.UseLiving, 0, 0, 120, 120)
			porch := h.Square(plan.UseOutdoors, 0, 127, 120, 80)
			b := living.Break(plan.BreakDoor, 2, 40, 36)
			if more != nil {
				more(b)
			}
			if light {
				lamp := porch.Opening("porch-light", porch.On(0, 20))
				h.Control([]*plan.Opening{living.Opening("switch", living.On(2, 20))}, []*plan.Opening{lamp})
			}
		}
	}
	stairs := func(risers, switches int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 200, 200)
			r.Island(100, 100, 36, 100)
			f := r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(50, 100).At), 36, 100)
			f.Risers = risers
			lamp := r.Opening("ceiling-light", r.Ceiling(60, 60))
			var all []*plan.Opening
			for i := range switches {
				all = append(all, r.Opening("three-way", r.On(0, float64(20+40*i))))
			}
			h.Control(all, []*plan.Opening{lamp})
		}
	}
	landing := func(landings, switches int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			stairs(12, switches)(h)
			for f := range h.Plan.Levels[0].Fixtures.All() {
				if f.Kind == plan.FixtureStairs {
					f.Landings = landings
				}
			}
		}
	}
	ruletest.Try(t, &light.LitPassage, []ruletest.Trial{
		ruletest.Case("a hall", lit("2023", plan.UseHall, "ceiling-light", true, true), 0, "210.70(A)(2)(1)"),
		ruletest.Case("a hall without a light", lit("2023", plan.UseHall, "", true, false), 1, "210.70(A)(2)(1)"),
		ruletest.Case("a detached garage with a receptacle and no light", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Opening("duplex", r.On(0, 40))
		}, 1, "210.70(A)(2)(1): with electric power"),
		ruletest.Case("a detached garage without power", lit("2023", plan.UseGarage, "", false, false), 0, "210.70(A)(2)(1): with electric power"),
		ruletest.Case("a door to a porch", door(true, nil), 0, "210.70(A)(2)(2)"),
		ruletest.Case("no light before it", door(false, nil), 1, "210.70(A)(2)(2)"),
		ruletest.Case("it is above grade", door(false, func(b *plan.Break) { b.Grade = plan.AboveGrade }), 0, "210.70(A)(2)(2): grade-level access"),
		ruletest.Case("it is for vehicles", door(false, func(b *plan.Break) { b.Vehicle = true }), 0, "210.70(A)(2)(2): not a vehicle door"),
		ruletest.Case("five risers, one switch", stairs(5, 1), 0, "210.70(A)(2)(3): six risers or more"),
		ruletest.Case("six risers, one switch", stairs(6, 1), 1, "210.70(A)(2)(3)"),
		ruletest.Case("six risers, two switches", stairs(6, 2), 0, "210.70(A)(2)(3)"),
		ruletest.Case("a landing with a door, two switches", landing(1, 2), 1, "210.70(A)(2)(3): each landing level with an entryway"),
		ruletest.Case("a landing with a door, three switches", landing(1, 3), 0, "210.70(A)(2)(3): each landing level with an entryway"),
		ruletest.Case("two landings, three switches", landing(2, 3), 1, "210.70(A)(2)(3): each landing level with an entryway"),
		ruletest.Case("no light at stairs with a landing", landing(1, 0), 1, "the hall's light has no switch, and that is told"),
		ruletest.Case("a detached garage with a receptacle that is said to have no power", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 240)
			r.Power = plan.AnswerNo
			r.Opening("duplex", r.On(0, 40))
		}, 0, "what is said wins"),
		ruletest.Case("a detached garage that is said to have power", func(h *ruletest.House) {
			h.Square(plan.UseGarage, 0, 0, 240, 240).Power = plan.AnswerYes
		}, 1, "210.70(A)(2)(1): with electric power"),
		ruletest.Case("nobody says how many risers", stairs(0, 1), 0, "what a file does not say is no fault"),
	})
}

func TestSwitchPlace(t *testing.T) {
	// A door of 30 in from 60 to 90 in of a side of 200, hinged at its left, opening in.
	at := func(along float64, more func(*plan.Break)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			b := r.Break(plan.BreakDoor, 0, 60, 30, func(b *plan.Break) { b.Casing = ruletest.In(2.25) })
			if more != nil {
				more(b)
			}
			r.Opening("switch", r.On(0, along))
		}
	}
	ruletest.Try(t, &light.SwitchPlace, []ruletest.Trial{
		ruletest.Case("at the latch", at(96, nil), 0, "common practice"),
		ruletest.Case("behind the leaf", at(50, nil), 1, "common practice"),
		ruletest.Case("30 in from the hinges", at(30, nil), 0, "common practice: as far as the door is wide"),
		ruletest.Case("a sixteenth nearer", at(30+sixteenth, nil), 1, "common practice"),
		ruletest.Case("it opens out", at(50, func(b *plan.Break) { b.Swing = plan.SwingOut }), 0, "common practice"),
		ruletest.Case("nobody says its hand", at(50, func(b *plan.Break) { b.Hand = plan.HandUnknown }), 0, "what a file does not say is no fault"),
		ruletest.Case("on the casing", at(91, nil), 1, "common practice"),
	})
}
