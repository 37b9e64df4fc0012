package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// route is a hall with a door out of the house, and a bedroom at its right behind a door
// from 40 to 70 in from the top: hung at its upper end, latched at 70, opening into the
// hall. Along the bedroom's left side, which runs up, the latch is at 50.
type route struct {
	*ruletest.House
	hall, bedroom *ruletest.Room
	door          *plan.Break
	lamp          *plan.Opening
}

func newRoute(h *ruletest.House) route {
	r := route{House: h}
	r.hall = h.Square(plan.UseHall, 0, 0, 120, 120)
	r.bedroom = h.Square(plan.UseBedroom, 124.5, 0, 120, 120)
	r.hall.Break(plan.BreakDoor, 2, 40, 36)
	r.door = r.hall.Break(plan.BreakDoor, 1, 40, 30)
	r.lamp = r.bedroom.Opening("ceiling-light", r.bedroom.Ceiling(180, 60))
	return r
}

func (r route) puts(at *ruletest.Room, side int, along float64) *plan.Opening {
	s := at.Opening("switch", at.On(side, along))
	r.Control([]*plan.Opening{s}, []*plan.Opening{r.lamp})
	return s
}

func TestLitRoute(t *testing.T) {
	const practice = "common practice: a switch on the latch side, in reach of 30 in"
	in := func(side int, along float64) func(*ruletest.House) {
		return func(h *ruletest.House) { r := newRoute(h); r.puts(r.bedroom, side, along) }
	}
	inHall := func(along float64, more func(*plan.Break)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := newRoute(h)
			r.door.Width = ruletest.In(24) // its latch at 64
			if more != nil {
				more(r.door)
			}
			r.puts(r.hall, 1, along)
		}
	}
	ruletest.Try(t, &light.LitRoute, []ruletest.Trial{
		ruletest.Case("9 in past the latch", in(3, 41), 0, practice),
		ruletest.Case("30 in past the latch", in(3, 20), 0, practice),
		ruletest.Case("a sixteenth farther", in(3, 20-sixteenth), 1, practice),
		ruletest.Case("beyond the hinges", in(3, 90), 1, practice),
		ruletest.Case("on the far wall", in(1, 60), 1, practice),
		ruletest.Case("before the door, past the latch", inHall(70, nil), 0, practice),
		ruletest.Case("before the door, behind its open leaf", inHall(38, nil), 1, "common practice: not behind the swing"),
		ruletest.Case("there, the leaf opens away", inHall(38, func(b *plan.Break) { b.Swing = plan.SwingOut }), 0, practice+", 26 in from the latch"),
		ruletest.Case("there, nobody says the hand", inHall(38, func(b *plan.Break) { b.Hand = plan.HandUnknown }), 0, "what a file does not say is no fault"),
		ruletest.Case("a light that nobody says a switch for", func(h *ruletest.House) { newRoute(h) }, 0, "what a file does not say is no fault"),
		ruletest.Case("no light ahead", func(h *ruletest.House) {
			r := newRoute(h)
			r.lamp.Status = plan.StatusRemove
			r.puts(r.bedroom, 1, 60)
		}, 0, "told by the rule on lights in rooms"),
		ruletest.Case("a sensor in the room", func(h *ruletest.House) {
			r := newRoute(h)
			s := r.bedroom.Opening("sensor", r.bedroom.On(1, 60))
			h.Control([]*plan.Opening{s}, []*plan.Opening{r.lamp})
		}, 0, "common practice: it sees who comes in"),
		ruletest.Case("another switch in reach", func(h *ruletest.House) {
			r := newRoute(h)
			r.puts(r.bedroom, 1, 60)
			r.puts(r.hall, 1, 76)
		}, 0, practice),
		ruletest.Case("over an open side", func(h *ruletest.House) {
			r := newRoute(h)
			r.hall.Sides[1].Kind, r.bedroom.Sides[3].Kind = plan.SideOpen, plan.SideOpen
			r.door.Kind, r.door.At = plan.BreakWindow, r.hall.On(3, 40)
			r.puts(r.bedroom, 1, 60)
			lamp, by := r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60)), r.hall.Opening("switch", r.hall.On(2, 82))
			r.Control([]*plan.Opening{by}, []*plan.Opening{lamp})
		}, 0, "the light of the room behind shines in"),
		ruletest.Case("over an open side from a room without a light", func(h *ruletest.House) {
			r := newRoute(h)
			r.hall.Sides[1].Kind, r.bedroom.Sides[3].Kind = plan.SideOpen, plan.SideOpen
			r.door.Kind, r.door.At = plan.BreakWindow, r.hall.On(3, 40)
			r.puts(r.bedroom, 1, 60)
		}, 1, "no light shines in from there"),
		ruletest.Case("no way leads to it", func(h *ruletest.House) {
			r := newRoute(h)
			r.door.Kind = plan.BreakWindow
			r.puts(r.bedroom, 1, 60)
		}, 0, "rooms that no door leads to are not checked"),
	})
}

// Up twelve risers into a hall whose only switch is far from the head of the stairs, as
// far as the picture of a lit route has it.
func TestLitRouteOverStairs(t *testing.T) {
	upper := func(h *ruletest.House, side int, along float64) *ruletest.House {
		lower := h.Square(plan.UseHall, 0, 0, 300, 300)
		lower.Break(plan.BreakDoor, 2, 40, 36)
		// 36 in wide and 120 deep: its foot at y 250, its head at 130.
		lower.Stand(plan.FixtureStairs, plan.OnFloor(lower.Room.ID, lower.Ceiling(150, 190).At), 36, 120)
		level := h.Level("Upper floor")
		r := h.RoomOn(level, plan.UseHall, 0, 0, 300, 0, 300, 300, 0, 300)
		lamp := r.Opening("ceiling-light", r.Ceiling(60, 60))
		h.Control([]*plan.Opening{r.Opening("switch", r.On(side, along))}, []*plan.Opening{lamp})
		return h
	}
	h := upper(ruletest.New(t), 0, 150)
	found := h.Found(&light.LitRoute)
	if len(found) != 1 || found[0].Measured.Value != int64(130*unit.Inch) {
		t.Fatalf("%+v, want one, the switch 130 in from the head", found)
	}
	walk := light.WalkOf(index.New(h.Made()), 30*unit.Inch)
	if got := walk.Longest(); walk.Dark() != 1 || got == nil || got.Dark != 100*unit.Inch {
		t.Errorf("the longest walk in the dark is %+v, want 130 - 30 in", got)
	}
	if way := walk.To(walk.Crossings[1].Into.ID); len(way) != 2 || way[0] != walk.Crossings[0] {
		t.Errorf("%d crossings to the upper hall, want the door and the stairs", len(way))
	}
	if found := upper(ruletest.New(t), 3, 1).Found(&light.LitRoute); len(found) != 1 {
		t.Errorf("in a corner: %+v, want one", found)
	}
}
