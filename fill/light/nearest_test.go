package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// spot is where a switch may be, and what is known of it at the door of a route that is 24
// in wide: latched at 64 in of the hall's right side and at 56 of the bedroom's left, the
// open leaf over 16 to 40 of the hall's.
type spot struct {
	name  string
	put   func(r route) *plan.Opening
	away  float64 // from the latch; -1 where the switch is in neither room
	state light.CrossingState
}

func spots() []spot {
	in := func(room func(route) *ruletest.Room, kind string, side int, along float64) func(route) *plan.Opening {
		return func(r route) *plan.Opening { at := room(r); return at.Opening(kind, at.On(side, along)) }
	}
	bedroom := func(r route) *ruletest.Room { return r.bedroom }
	hall := func(r route) *ruletest.Room { return r.hall }
	den := func(r route) *ruletest.Room { return r.Rooms()[2] }
	return []spot{
		{"at the latch within", in(bedroom, "switch", 3, 56), 0, light.CrossingLit},
		{"9 in past it", in(bedroom, "switch", 3, 47), 9, light.CrossingLit},
		{"a hand's reach past it", in(bedroom, "switch", 3, 26), 30, light.CrossingLit},
		{"46 in past it", in(bedroom, "switch", 3, 10), 46, light.CrossingDark},
		{"at the latch in the hall", in(hall, "switch", 1, 64), 0, light.CrossingLit},
		{"6 in past it in the hall", in(hall, "switch", 1, 70), 6, light.CrossingLit},
		{"behind the leaf, near", in(hall, "switch", 1, 38), 26, light.CrossingHidden},
		{"behind the leaf, less near", in(hall, "switch", 1, 34), 30, light.CrossingHidden},
		{"behind the leaf, out of reach", in(hall, "switch", 1, 30), 34, light.CrossingDark},
		{"in a third room", in(den, "switch", 0, 60), -1, light.CrossingDark},
		{"in its other wall", in(den, "switch", 1, 60), -1, light.CrossingDark},
		{"a sensor in the third room", in(den, "sensor", 0, 60), -1, light.CrossingDark},
		{"a sensor across the bedroom", in(bedroom, "sensor", 1, 60), 0, light.CrossingLit},
		{"on what is gone", func(r route) *plan.Opening {
			return r.bedroom.Opening("switch", plan.OnFace("gone", 0))
		}, -1, light.CrossingDark},
		{"on an island, outside of the room's walls", func(r route) *plan.Opening {
			i := r.bedroom.Island(250, 60, 60, 30)
			return r.bedroom.Opening("switch", plan.Anchor{Host: i.ID, Part: plan.PartFront, Along: ruletest.In(50)})
		}, -1, light.CrossingDark},
	}
}

// isBefore reports whether one serves better than another: the state first, then the way.
func (s spot) isBefore(other spot) bool {
	if s.state != other.state {
		return s.state < other.state
	}
	return s.away >= 0 && (other.away < 0 || s.away < other.away)
}

// Of two switches for one light that which serves better is told, of two alike the first.
func TestTheBetterOfTwoSwitches(t *testing.T) {
	all := spots()
	for _, a := range all {
		for _, b := range all {
			r := newRoute(ruletest.New(t))
			r.door.Width = ruletest.In(24)
			r.Square(plan.UseDen, 400, 0, 120, 120)
			first, second := a.put(r), b.put(r)
			r.Control([]*plan.Opening{first, second}, []*plan.Opening{r.lamp})
			want, id := a, first.ID
			if b.isBefore(a) {
				want, id = b, second.ID
			}
			away := unit.Length(-1)
			if want.away >= 0 {
				away = ruletest.In(want.away)
			}
			got := crossingInto(t, r.House, r.bedroom)
			if got.Switch == nil || got.Switch.ID != id || got.State != want.state || got.Away != away {
				t.Errorf("%s, then %s: %s by %+v, %s away; want %s, %s", a.name, b.name, got.State, got.Switch, got.Away.Inches(16), want.name, want.state)
			}
		}
	}
}

// crossingInto is the one by which one comes into a room, with a reach of 30 in.
func crossingInto(t *testing.T, h *ruletest.House, into *ruletest.Room) *light.Crossing {
	t.Helper()
	way := light.WalkOf(index.New(h.Made()), ruletest.In(30)).To(into.Room.ID)
	if len(way) == 0 {
		t.Fatalf("nobody comes into %s", into.Name)
	}
	return way[len(way)-1]
}

// At which stance a switch is felt for.
func TestWhereAHandLooks(t *testing.T) {
	const practice = "common practice"
	ruletest.Try(t, &light.LitRoute, []ruletest.Trial{
		ruletest.Case("a cased opening that was a door: at either jamb", func(h *ruletest.House) {
			r := newRoute(h)
			r.door.Kind = plan.BreakPassage // from 40 to 70; its latch was at 70
			r.puts(r.hall, 1, 12)
		}, 0, "it has no latch"),
		ruletest.Case("the same the other way round", func(h *ruletest.House) {
			r := newRoute(h)
			r.door.Kind, r.door.Hand = plan.BreakPassage, plan.HandRight
			r.puts(r.hall, 1, 98)
		}, 0, "it has no latch"),
		ruletest.Case("at the left jamb of one whose hand nobody says", func(h *ruletest.House) {
			r := newRoute(h)
			r.door.Hand = plan.HandUnknown
			r.puts(r.hall, 1, 40)
		}, 0, practice),
		ruletest.Case("by a door 10 in away through a wall that is drawn without thickness", func(h *ruletest.House) {
			hall, bedroom := h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseBedroom, 120, 0, 120, 120)
			hall.Break(plan.BreakDoor, 2, 40, 36)
			hall.Break(plan.BreakDoor, 1, 0, 30, func(b *plan.Break) { b.Hand = plan.HandUnknown })
			lamp := bedroom.Opening("ceiling-light", bedroom.Ceiling(180, 60))
			den := h.Square(plan.UseDen, 120, -120, 120, 120)
			h.Control([]*plan.Opening{den.Opening("switch", den.On(2, 110))}, []*plan.Opening{lamp})
		}, 1, "it is in a third room"),
	})
	// Latched at 102, 18 in from the corner, the leaf over 42 to 72 of the right side. Along
	// the next side 45 in from the corner, √(18² + 45²) = 48.5 in from the latch.
	r := newRoute(ruletest.New(t))
	r.door.At.Along = ruletest.In(72)
	r.puts(r.hall, 2, 45)
	way := light.WalkOf(index.New(r.Made()), ruletest.In(60)).To(r.bedroom.Room.ID)
	if got := way[len(way)-1]; got.State != light.CrossingLit || got.Away.Inches(16) != `48-7/16"` {
		t.Errorf("on the next wall as far along as the leaf: %s, %s away", got.State, got.Away.Inches(16))
	}
}

// How far one walks in the dark.
func TestHowFarInTheDark(t *testing.T) {
	hidden := newRoute(ruletest.New(t))
	hidden.door.Width, hidden.door.Swing = ruletest.In(24), plan.SwingOut // within, hinged at 80, the leaf up to 104
	hidden.puts(hidden.bedroom, 3, 82)
	if got := crossingInto(t, hidden.House, hidden.bedroom); got.State != light.CrossingHidden || got.Dark != 0 || got.Away != ruletest.In(26) {
		t.Errorf("behind the leaf within reach: %s, %s away, %s in the dark, want none", got.State, got.Away.Inches(16), got.Dark.Inches(16))
	}
	found := hidden.Found(&light.LitRoute)
	if len(found) != 1 || found[0].Why.String() != "A hand looks for "+hidden.tagOf(hidden.bedroom)+" on the side of the latch." {
		t.Errorf("no walk in the dark: %v", found)
	}
	// Without a wall between: the middle of the bedroom is 60 in from the door's, 5 in aside.
	h := ruletest.New(t)
	hall, bedroom := h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseBedroom, 120, 0, 120, 120)
	hall.Break(plan.BreakDoor, 2, 40, 36)
	hall.Break(plan.BreakDoor, 1, 40, 30)
	lamp := bedroom.Opening("ceiling-light", bedroom.Ceiling(180, 60))
	h.Control([]*plan.Opening{hall.Opening("switch", hall.On(1, 5))}, []*plan.Opening{lamp})
	if got := crossingInto(t, h, bedroom); got.State != light.CrossingDark || got.Dark.Inches(16) != `60-3/16"` {
		t.Errorf("a switch in the room behind: %s, %s in the dark, want all the way to the middle, √(60² + 5²)", got.State, got.Dark.Inches(16))
	}
	// Two rooms to come into in the dark: into the bath, a third as large, one walks less far.
	r := newRoute(ruletest.New(t))
	r.puts(r.bedroom, 1, 90)
	bath := r.Square(plan.UseBath, -64.5, 0, 60, 120)
	r.hall.Break(plan.BreakDoor, 3, 40, 30)
	far := bath.Opening("switch", bath.On(3, 10))
	r.Control([]*plan.Opening{far}, []*plan.Opening{bath.Opening("ceiling-light", bath.Ceiling(-30, 60))})
	walk := light.WalkOf(index.New(r.Made()), ruletest.In(30))
	if got := walk.Longest(); walk.Dark() != 2 || got == nil || got.Into.ID != r.bedroom.Room.ID {
		t.Errorf("of %d dark ways the longest is %+v, want that into the bedroom of two", walk.Dark(), got)
	}
	dark := func(far float64) *light.Crossing {
		return &light.Crossing{State: light.CrossingDark, Dark: ruletest.In(far)}
	}
	ways := light.Walk{Crossings: []*light.Crossing{dark(5), dark(9), dark(7), {State: light.CrossingLit, Dark: ruletest.In(99)}}}
	if got := ways.Longest(); got != ways.Crossings[1] {
		t.Errorf("of 5, 9 and 7 in the longest is %+v", got)
	}
	const longest = " No walk in the dark is longer."
	for _, f := range r.Found(&light.LitRoute) {
		why := f.Why.String()
		if isLongest := len(why) > len(longest) && why[len(why)-len(longest):] == longest; isLongest != (f.Room == r.bedroom.Room.ID) {
			t.Errorf("%s: %s", f.Message, why)
		}
	}
}

// tagOf is the tag of the first switch of a room.
func (r route) tagOf(room *ruletest.Room) string {
	for o := range r.Made().Levels[0].Openings.All() {
		if o.Kind == "switch" && room.SideAt(o.At.Host) >= 0 {
			return o.Tag
		}
	}
	return ""
}
