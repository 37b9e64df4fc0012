package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
)

// walked walks through a house with a reach of 30 in.
func walked(h *ruletest.House) light.Walk { return light.WalkOf(index.New(h.Made()), ruletest.In(30)) }

// at is a point in inches.
func at(x, y float64) geom.Point { return geom.Point{X: ruletest.In(x), Y: ruletest.In(y)} }

// Where one comes into a room: at the middle of the way on its own side.
func TestWhereOneComesIn(t *testing.T) {
	// A nook round two sides of the hall, 4 in away, both open; one comes in past the nearer.
	for _, tt := range []struct {
		name   string
		door   func(hall *ruletest.Room)
		want   geom.Point
		leaves geom.Segment
	}{
		{"past the right side", func(hall *ruletest.Room) { hall.Break(plan.BreakDoor, 0, 88, 30) }, at(124, 60), geom.Segment{A: at(120, 0), B: at(120, 120)}},
		{"past the lower side", func(hall *ruletest.Room) { hall.Break(plan.BreakDoor, 3, 2, 30) }, at(60, 124), geom.Segment{A: at(120, 120), B: at(0, 120)}},
	} {
		h := ruletest.New(t)
		hall := h.Square(plan.UseHall, 0, 0, 120, 120)
		nook := h.Room(plan.UseDen, 124, 0, 244, 0, 244, 244, 0, 244, 0, 124, 124, 124)
		for _, s := range []*plan.Side{hall.Sides[1], hall.Sides[2], nook.Sides[4], nook.Sides[5]} {
			s.Kind = plan.SideOpen
		}
		tt.door(hall)
		if got := crossingInto(t, h, nook); got.At != tt.want || got.Line != tt.leaves {
			t.Errorf("%s: over %v at %v, want over %v at %v", tt.name, got.Line, got.At, tt.leaves, tt.want)
		}
	}
	// Open sides as far apart as the faces of one wall may be, 16 in.
	h := ruletest.New(t)
	hall, den := h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseDen, 136, 0, 120, 120)
	hall.Sides[1].Kind, den.Sides[3].Kind = plan.SideOpen, plan.SideOpen
	hall.Break(plan.BreakDoor, 2, 40, 36)
	if got := crossingInto(t, h, den); got.At != at(136, 60) {
		t.Errorf("16 in apart: at %v, want on the side of the room one comes into", got.At)
	}
	// One open side of a den along the open sides of two halls, above one another.
	for i, want := range []geom.Point{at(124, 30), at(124, 94)} {
		h := ruletest.New(t)
		upper, lower := h.Square(plan.UseHall, 0, 0, 120, 60), h.Square(plan.UseHall, 0, 64, 120, 60)
		den := h.Square(plan.UseDen, 124, 0, 120, 124)
		upper.Sides[1].Kind, lower.Sides[1].Kind, den.Sides[3].Kind = plan.SideOpen, plan.SideOpen, plan.SideOpen
		[]*ruletest.Room{upper, lower}[i].Break(plan.BreakDoor, 3, 10, 30)
		if got := crossingInto(t, h, den); got.At != want {
			t.Errorf("from hall %d: at %v, want %v", i, got.At, want)
		}
	}
	// Two doors from the hall into one room: by the nearer to the front door.
	for _, nearer := range []float64{10, 80} {
		h := ruletest.New(t)
		hall, den := h.Square(plan.UseHall, 0, 0, 120, 120), h.Square(plan.UseDen, 124.5, 0, 120, 120)
		hall.Break(plan.BreakDoor, 3, 120-nearer-30, 30)
		hall.Break(plan.BreakDoor, 1, 10, 30)
		hall.Break(plan.BreakDoor, 1, 80, 30)
		if got := crossingInto(t, h, den); got.At != at(124.5, nearer+15) {
			t.Errorf("at %v, want by the door from %v on", got.At, nearer)
		}
	}
	// From a porch that is drawn one comes in at the face within.
	h = ruletest.New(t)
	hall = h.Square(plan.UseHall, 0, 0, 120, 120)
	h.Square(plan.UseOutdoors, 0, 127, 120, 80)
	hall.Break(plan.BreakDoor, 2, 40, 36)
	if got := crossingInto(t, h, hall); got.At != at(62, 120) || got.From == nil || got.From.Use != plan.UseOutdoors || got.Before != nil {
		t.Errorf("from the porch at %v, want (120 - 40 - 18, 120)", got.At)
	}
}

// The length of ways: round corners, straight where there is none, each room once.
func TestHowFarOneWalks(t *testing.T) {
	h := ruletest.New(t)
	hall := h.Room(plan.UseHall, 0, 0, 240, 0, 240, 60, 60, 60, 60, 240, 0, 240)
	hall.Break(plan.BreakDoor, 4, 10, 40)
	hall.Break(plan.BreakDoor, 1, 10, 40)
	den := h.Square(plan.UseDen, 244.5, 0, 120, 120)
	// From (30, 240) round (60, 60) to (240, 30): twice √(30² + 180²) = 182.483, and 4.5
	// through the wall.
	if got := crossingInto(t, h, den); got.Walked.Inches(16) != `369-7/16"` {
		t.Errorf("round the corner %s, want 369.466", got.Walked.Inches(16))
	}

	// A ring of three rooms: each is come into once, the nearest first.
	h = ruletest.New(t)
	hall = h.Square(plan.UseHall, 0, 0, 120, 120)
	bedroom := h.Square(plan.UseBedroom, 124.5, 0, 120, 120)
	den = h.Square(plan.UseDen, 0, 124.5, 244.5, 120)
	hall.Break(plan.BreakDoor, 3, 40, 36)
	hall.Break(plan.BreakDoor, 1, 10, 30)
	hall.Break(plan.BreakDoor, 2, 10, 30)
	bedroom.Break(plan.BreakDoor, 2, 10, 30)
	w := walked(h)
	if len(w.Crossings) != 3 || len(w.Missed) != 0 {
		t.Fatalf("%d ways into three rooms, %d missed", len(w.Crossings), len(w.Missed))
	}
	for i, c := range w.Crossings[1:] {
		if c.Walked < w.Crossings[i].Walked || c.Before != w.Crossings[0] {
			t.Errorf("into %s after %s, by %+v", c.Into.Name, c.Walked.Inches(16), c.Before)
		}
	}
	if len(w.To(den.Room.ID)) != 2 || len(w.To(bedroom.Room.ID)) != 2 {
		t.Error("both lie one door from the hall")
	}

	// Of two doors into one room that which is lit.
	h = ruletest.New(t)
	den = h.Square(plan.UseDen, 0, 0, 240, 120)
	den.Break(plan.BreakDoor, 0, 100, 36)
	den.Break(plan.BreakDoor, 2, 40, 36) // latched at 76
	lamp := den.Opening("ceiling-light", den.Ceiling(60, 60))
	h.Control([]*plan.Opening{den.Opening("switch", den.On(2, 80))}, []*plan.Opening{lamp})
	if w := walked(h); len(w.Crossings) != 1 || w.Crossings[0].State != light.CrossingLit {
		t.Errorf("%+v, want one comes in by the door with the switch", w.Crossings)
	}

	// No way leads over a yard from a shed or into it.
	h = ruletest.New(t)
	foyer, shed := h.Square(plan.UseFoyer, 0, 0, 120, 120), h.Square(plan.UseDen, 0, 324, 120, 120)
	h.Square(plan.UseOutdoors, 0, 127, 120, 190)
	foyer.Break(plan.BreakDoor, 2, 40, 36)
	shed.Break(plan.BreakDoor, 0, 40, 36)
	if w := walked(h); len(w.Crossings) != 1 || len(w.Missed) != 1 || w.Missed[0].ID != shed.Room.ID {
		t.Errorf("over a yard: %d ways, %d missed, want into the foyer alone", len(w.Crossings), len(w.Missed))
	}
}

// Over stairs: down as well as up, from where they end, and no farther than a deck.
func TestTheWayOverStairs(t *testing.T) {
	flight := func(r *ruletest.Room) {
		// 36 in wide and 120 deep: its foot at y 250, its head at 130.
		r.Stand(plan.FixtureStairs, plan.OnFloor(r.Room.ID, r.Ceiling(150, 190).At), 36, 120)
	}
	// From the ground floor down into a basement.
	h := ruletest.New(t)
	h.Plan.Levels[0].Name = "Basement"
	below := h.Square(plan.UseDen, 0, 0, 300, 300)
	flight(below)
	hall := h.RoomOn(h.Level("Ground floor"), plan.UseHall, 0, 0, 300, 0, 300, 300, 0, 300)
	hall.Break(plan.BreakDoor, 2, 40, 36)
	lamp := below.Opening("ceiling-light", below.Ceiling(60, 60))
	// Straight over the head, 130 in from the upper wall, is out of reach.
	h.Control([]*plan.Opening{hall.Opening("switch", hall.On(0, 150))}, []*plan.Opening{lamp})
	got := crossingInto(t, h, below)
	if got.From.ID != hall.Room.ID || got.Stairs == nil || got.Level != h.Plan.Levels[0].ID || got.At != at(150, 250) || got.State != light.CrossingDark || got.Away != ruletest.In(130) {
		t.Errorf("down: %+v, want over the stairs to their foot, dark, 130 in from the head", got)
	}
	// It stays dark where the hall is lit: what shines over an open side does not shine down.
	lit := hall.Opening("ceiling-light", hall.Ceiling(60, 60))
	h.Control([]*plan.Opening{hall.Opening("switch", hall.On(2, 82))}, []*plan.Opening{lit})
	if up, down := crossingInto(t, h, hall), crossingInto(t, h, below); up.State != light.CrossingLit || down.State != light.CrossingDark {
		t.Errorf("from a hall that is %s the stairs down are %s", up.State, down.State)
	}

	// A room that begins 6 in past the head: from there one goes on straight, from (150, 130)
	// to the middle (115, 0) of the next door, √(35² + 130²) = 134.629, and 4.5 through the wall.
	h = ruletest.New(t)
	lower := h.Square(plan.UseHall, 0, 0, 300, 300)
	lower.Break(plan.BreakDoor, 2, 40, 36)
	flight(lower)
	level := h.Level("Upper floor")
	landing := h.RoomOn(level, plan.UseHall, 0, 0, 300, 0, 300, 124, 0, 124)
	landing.Break(plan.BreakDoor, 0, 100, 30)
	bedroom := h.RoomOn(level, plan.UseBedroom, 0, -124.5, 300, -124.5, 300, -4.5, 0, -4.5)
	onto, into := crossingInto(t, h, landing), crossingInto(t, h, bedroom)
	if far := (into.Walked - onto.Walked).Inches(16); into.Before.Into.ID != landing.Room.ID || far != `139-1/8"` {
		t.Errorf("from the head on %s, want 134.629 + 4.5", far)
	}

	// A deck is outdoors: nobody goes on from it.
	h = ruletest.New(t)
	lower = h.Square(plan.UseHall, 0, 0, 300, 300)
	lower.Break(plan.BreakDoor, 2, 40, 36)
	flight(lower)
	level = h.Level("Roof")
	deck := h.RoomOn(level, plan.UseOutdoors, 0, 0, 300, 0, 300, 300, 0, 300)
	deck.Break(plan.BreakDoor, 1, 100, 30)
	den := h.RoomOn(level, plan.UseDen, 304.5, 0, 500, 0, 500, 300, 304.5, 300)
	if w := walked(h); len(w.Missed) != 1 || w.Missed[0].ID != den.Room.ID {
		t.Errorf("past a deck %d rooms are missed, want the den", len(w.Missed))
	}
}
