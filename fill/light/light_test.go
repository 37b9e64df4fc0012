package light_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/frame"
	"studbay/fill/light"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
)

const sixteenth = 1.0 / 16

func TestSwitchHeight(t *testing.T) {
	at := func(up float64, more ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), append(more, ruletest.Up(up))...)
		}
	}
	ruletest.Try(t, &light.SwitchHeight, []ruletest.Trial{
		ruletest.Case("6 ft 7 in", at(79), 0, "404.8(A)"),
		ruletest.Case("a sixteenth higher", at(79+sixteenth), 1, "404.8(A)"),
		ruletest.Case("one that goes", at(84, ruletest.Removed), 0, "it will not be there"),
	})
	h := ruletest.New(t)
	at(84, func(o *plan.Opening) { o.Status = plan.StatusExisting })(h)
	if found := h.Found(&light.SwitchHeight); len(found) != 1 || found[0].Severity != rule.Note {
		t.Errorf("one that is there: %q", filltest.Said(found))
	}
}

func TestSwitchNeutral(t *testing.T) {
	loop := func(kind string, use plan.Use, wires, cables int) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(use, 0, 0, 120, 120)
			o := r.Opening(kind, r.On(0, 40))
			for range cables {
				lamp := r.Opening("ceiling-light", r.Ceiling(60, 60))
				h.Cable(o.ID, lamp.ID, 14, wires, nil)
			}
		}
	}
	ruletest.Try(t, &light.SwitchNeutral, []ruletest.Trial{
		ruletest.Case("a loop of two", loop("switch", plan.UseBedroom, 2, 1), 1, "404.2(C)"),
		ruletest.Case("a loop of three", loop("switch", plan.UseBedroom, 3, 1), 0, "404.2(C): the third is the neutral"),
		ruletest.Case("a three-way at the end of three", loop("three-way", plan.UseHall, 3, 1), 1, "404.2(C): feed and two travelers"),
		ruletest.Case("a three-way at the end of four", loop("three-way", plan.UseHall, 4, 1), 0, "404.2(C)"),
		ruletest.Case("the feed comes through", loop("switch", plan.UseBedroom, 2, 2), 0, "404.2(C): the feed has a neutral"),
		ruletest.Case("a garage", loop("switch", plan.UseGarage, 2, 1), 0, "404.2(C) names habitable rooms, bathrooms, halls and stairs"),
		ruletest.Case("nothing is drawn or stated", loop("switch", plan.UseBedroom, 2, 0), 0, "what a file does not say is no fault"),
	})
}

func TestClosetLight(t *testing.T) {
	// A closet of 96 by 72 in with a rod along its top side.
	closet := func(kind string, y float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseCloset, 0, 0, 96, 72)
			r.Fixture(plan.FixtureRod, 0, 0, 96, func(f *plan.Fixture) { f.Bottom, f.Height = ruletest.In(66), ruletest.In(3) })
			o := r.Opening(kind, r.Ceiling(48, y))
			_ = o
		}
	}
	// An octagon or round box of 4 in reaches 2 in from its center; a housing 3-3/16 in.
	ruletest.Try(t, &light.ClosetLight, []ruletest.Trial{
		ruletest.Case("12 in from the shelf", closet("ceiling-light", 12+12+half(t, "ceiling-light")), 0, "410.16(C)(1)"),
		ruletest.Case("a sixteenth less", closet("ceiling-light", 12+12+half(t, "ceiling-light")-sixteenth), 1, "410.16(C)(1)"),
		ruletest.Case("recessed, 6 in", closet("recessed", 12+6+half(t, "recessed")), 0, "410.16(C)(3)"),
		ruletest.Case("recessed, a sixteenth less", closet("recessed", 12+6+half(t, "recessed")-sixteenth), 1, "410.16(C)(3)"),
		ruletest.Case("a pendant", closet("pendant", 60), 1, "410.16(B)"),
		ruletest.Case("one that is there, too near", func(h *ruletest.House) {
			r := h.Square(plan.UseCloset, 0, 0, 96, 72)
			r.Opening("pendant", r.Ceiling(48, 60), func(o *plan.Opening) { o.Status = plan.StatusExisting })
		}, 1, "410.16(B); what is there already is told in a note"),
		ruletest.Case("no rod drawn", func(h *ruletest.House) {
			r := h.Square(plan.UseCloset, 0, 0, 96, 72)
			r.Opening("ceiling-light", r.Ceiling(48, 4))
		}, 0, "what a file does not say is no fault"),
	})
}

func TestWetZone(t *testing.T) {
	// A tub of 60 by 30 in along the top side, 20 in high.
	bath := func(edition, kind string, x, y, up float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			h.Edition = edition
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			r.Fixture(plan.FixtureTub, 0, 0, 60, func(f *plan.Fixture) { f.Depth, f.Height = ruletest.In(30), ruletest.In(20) })
			if up > 0 {
				r.Opening(kind, r.On(0, x), ruletest.Up(up))
				return
			}
			r.Opening(kind, r.Ceiling(x, y))
		}
	}
	ruletest.Try(t, &light.WetZone, []ruletest.Trial{
		ruletest.Case("a pendant 3 ft away", bath("2023", "pendant", 30, 66, 0), 0, "410.10(D)"),
		ruletest.Case("a sixteenth nearer", bath("2023", "pendant", 30, 66-sixteenth, 0), 1, "410.10(D)"),
		ruletest.Case("a fan over it", bath("2023", "fan-light", 30, 15, 0), 1, "410.10(D)"),
		ruletest.Case("a light on the ceiling", bath("2023", "ceiling-light", 30, 15, 0), 0, "410.10(D) names what hangs, and fans"),
		ruletest.Case("a receptacle 3 ft away", bath("2020", "gfci", 96, 0, 40), 0, "406.9(C), 2020"),
		ruletest.Case("a sixteenth nearer", bath("2020", "gfci", 96-sixteenth, 0, 40), 1, "406.9(C), 2020"),
		ruletest.Case("in 2017 beside the tub", bath("2017", "gfci", 62, 0, 40), 0, "406.9(C), 2017: within or directly over"),
		ruletest.Case("in 2017 over the tub", bath("2017", "gfci", 40, 0, 40), 1, "406.9(C), 2017"),
	})
}

// half is how far a kind's box or housing reaches from its center, in inches.
func half(t *testing.T, kind string) float64 {
	t.Helper()
	o := part.NewOpening(0, kind, plan.OnCeiling("", geom.Point{}))
	return float64(frame.FrontOf(&o).Width/2) / float64(ruletest.In(1))
}

// A room of 144 in with a door at the left of its top side, 24 to 54 in; 4 ft from its edge
// the note begins. Common practice throughout.
func TestSwitchByDoor(t *testing.T) {
	room := func(more func(*ruletest.House, *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			r.Break(plan.BreakDoor, 0, 24, 30)
			more(h, r)
		}
	}
	at := func(side int, along float64, more ...func(*plan.Opening)) func(*ruletest.House) {
		return room(func(h *ruletest.House, r *ruletest.Room) { r.Opening("switch", r.On(side, along), more...) })
	}
	ruletest.Try(t, &light.SwitchByDoor, []ruletest.Trial{
		ruletest.Case("4 ft from the latch", at(0, 54+48), 0, "common practice"),
		ruletest.Case("a sixteenth farther", at(0, 54+48+sixteenth), 1, "common practice"),
		ruletest.Case("on the wall beside the door", at(3, 144-12), 0, "common practice: 26-13/16 in, straight"),
		ruletest.Case("across the room", at(2, 72), 1, "common practice"),
		ruletest.Case("one that is there", at(2, 72, func(o *plan.Opening) { o.Status = plan.StatusExisting }), 0, "it is where it is"),
		ruletest.Case("no switch", room(func(*ruletest.House, *ruletest.Room) {}), 0, "another rule's"),
		ruletest.Case("one of two is by the door", room(func(h *ruletest.House, r *ruletest.Room) {
			r.Opening("switch", r.On(0, 60))
			r.Opening("switch", r.On(2, 72))
		}), 0, "common practice"),
		ruletest.Case("at the foot of stairs in the room", room(func(h *ruletest.House, r *ruletest.Room) {
			r.Stand(plan.FixtureStairs, plan.Anchor{Host: r.Room.ID, Part: plan.PartFloor, At: geom.Point{X: ruletest.In(120), Y: ruletest.In(80)}}, 36, 120)
			r.Opening("switch", r.On(2, 30))
		}), 0, "common practice: stairs are a way into a room"),
		ruletest.Case("a three-way in a bedroom", room(func(h *ruletest.House, r *ruletest.Room) { r.Opening("three-way", r.On(2, 72)) }), 1, "common practice"),
		ruletest.Case("a three-way in a hall", func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 144, 144)
			r.Break(plan.BreakDoor, 0, 24, 30)
			r.Opening("three-way", r.On(2, 72))
		}, 0, "common practice: it may be at the head of stairs"),
	})
	h := ruletest.New(t)
	at(0, 120)(h)
	found := h.Found(&light.SwitchByDoor)
	if len(found) != 1 || found[0].Severity != rule.Note || len(found[0].Remedies) != 1 {
		t.Fatalf("found %q with %d remedies", filltest.Said(found), len(found[0].Remedies))
	}
	next, err := found[0].Remedies[0].Edit.Apply(h.Made())
	if err != nil {
		t.Fatal(err)
	}
	// The hinges are at the left: the latch is at 54 in, without a casing.
	if o, _ := next.Opening(found[0].Opening); o.At.Along != ruletest.In(58) {
		t.Errorf("the remedy sets it at %v, want 4 in beside the latch at 54 in", o.At.Along)
	}
}
