package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Into a bedroom of 120 in square, its middle 60 in from each wall, one comes at (124.5, 55).
func TestWhatIsToldOfARoute(t *testing.T) {
	told := func(change func(r route)) func(*ruletest.House) {
		return func(h *ruletest.House) { change(newRoute(h)) }
	}
	const reach = "common practice: a switch at the latch, in reach of 30 in"
	ruletest.Tells(t, &light.LitRoute, []ruletest.Telling{
		// The latch is at (124.5, 70), the switch 90 in along the wall opposite: (244.5, 90).
		// From the latch √(120² + 20²) = 121.655, and from where one comes in, at (124.5, 55),
		// √(120² + 35²) = 125 less the 30 in that a hand reaches.
		ruletest.Told("on the far wall", told(func(r route) { r.puts(r.bedroom, 1, 90).Tag = "S" }), `
			warn, by practice: door in bedroom; 121-5/8" of 30"
			From hall into bedroom: dark, no switch for a light there is at hand
			S, the nearest, is ≈ 10' 1-5/8" away; a hand reaches 2' 6". One walks 7' 11" in the dark. No walk in the dark is longer.
			on hall/1 face from 40" to 70"`, reach),
		// In the hall, 44 in up from the latch: past the hinges; its middle is √(60² + 5²) =
		// 60-3/16 in from where one comes in.
		ruletest.Told("in the hall, out of reach", told(func(r route) { r.puts(r.hall, 1, 26).Tag = "S" }), `
			warn, by practice: door in bedroom; 44" of 30"
			From hall into bedroom: dark, no switch for a light there is at hand
			S, the nearest, is 3' 8" away; a hand reaches 2' 6". One walks ≈ 5' 0-3/16" in the dark. No walk in the dark is longer.
			on hall/1 face from 40" to 70"`, reach),
		ruletest.Told("behind the leaf, in reach", told(func(r route) {
			r.door.Width = ruletest.In(24) // from 40 to 64, the leaf over 16 to 40
			r.puts(r.hall, 1, 38).Tag = "S"
		}), `
			warn, by practice: door in bedroom
			From hall into bedroom: dark, S is behind the open door
			A hand looks for S on the side of the latch. One walks ≈ 5' 0-1/2" in the dark. No walk in the dark is longer.
			on hall/1 face from 40" to 64"`, "common practice; √(60² + 8²) = 60.53"),
		ruletest.Told("in a third room", told(func(r route) {
			third := r.Square(plan.UseDen, 400, 0, 120, 120)
			r.puts(third, 0, 60).Tag = "S"
		}), `
			warn, by practice: door in bedroom
			From hall into bedroom: dark, no switch for a light there is at hand
			S puts it on from another room. One walks ≈ 5' 0-3/16" in the dark. No walk in the dark is longer.
			on hall/1 face from 40" to 70"`, reach),
	})
}

func TestLimitsOfARoute(t *testing.T) {
	along := func(at func(r route) *ruletest.Room, side int, from float64, sign unit.Length, change func(*plan.Break)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := newRoute(h)
			if change != nil {
				change(r.door)
			}
			r.puts(at(r), side, from).At.Along += sign * over
		}
	}
	bedroom := func(r route) *ruletest.Room { return r.bedroom }
	hall := func(r route) *ruletest.Room { return r.hall }
	const reach = "common practice: 30 in from the latch"
	right := func(b *plan.Break) { b.Hand = plan.HandRight }
	ruletest.Edges(t, &light.LitRoute, []ruletest.Edge{
		ruletest.Limit("past the latch, within", along(bedroom, 3, 20, -1, nil), rule.Grain, 0, 1, reach),
		ruletest.Limit("past the latch, in the hall", along(hall, 1, 100, 1, nil), rule.Grain, 0, 1, reach),
		ruletest.Limit("past the latch at the other hand, in the hall", along(hall, 1, 10, -1, right), rule.Grain, 0, 1, reach),
		ruletest.Limit("past the latch at the other hand, within", along(bedroom, 3, 110, 1, right), rule.Grain, 0, 1, reach),
		ruletest.Limit("nobody says the hand, past the right jamb", along(bedroom, 3, 110, 1, func(b *plan.Break) { b.Hand = plan.HandUnknown }), rule.Grain, 0, 1, reach+", either jamb"),
		ruletest.Limit("nobody says the hand, past the left jamb", along(bedroom, 3, 20, -1, func(b *plan.Break) { b.Hand = plan.HandUnknown }), rule.Grain, 0, 1, reach+", either jamb"),
		ruletest.Limit("a cased opening", along(bedroom, 3, 20, -1, func(b *plan.Break) { b.Kind, b.Hand, b.Swing = plan.BreakPassage, "", "" }), rule.Grain, 0, 1, reach+", either jamb"),
		// The leaf, 30 in wide from 64, covers 34 to 64 of the hall's side; the latch is at 94.
		ruletest.Limit("at the end of the leaf", func(h *ruletest.House, over unit.Length) {
			r := newRoute(h)
			r.door.At.Along, r.door.Width = ruletest.In(24), ruletest.In(12) // from 24 to 36, hinged at 24
			r.puts(r.hall, 1, 12).At.Along += over
		}, 0, 0, 1, "common practice: not behind the open leaf, 12 in wide"),
		ruletest.Limit("at the hinges", func(h *ruletest.House, over unit.Length) {
			r := newRoute(h)
			r.door.At.Along, r.door.Width = ruletest.In(24), ruletest.In(12)
			r.puts(r.hall, 1, 24).At.Along -= over
		}, 0, 0, 1, "common practice: not behind the open leaf"),
	})
	// The latch is 18 in from the lower corner of the bedroom.
	next := func(from float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := newRoute(h)
			r.door.At.Along = ruletest.In(72)
			r.puts(r.bedroom, 2, 120-from)
		}
	}
	ruletest.Try(t, &light.LitRoute, []ruletest.Trial{
		ruletest.Case("on the next wall", next(24), 0, reach+", straight: √(18² + 24²)"),
		ruletest.Case("a sixteenth farther", next(24+sixteenth), 1, reach),
	})
}

// How one walks through a house, to the step.
func TestTheWayThroughAHouse(t *testing.T) {
	walk := func(h *ruletest.House) light.Walk { return light.WalkOf(index.New(h.Made()), ruletest.In(30)) }
	// A hall of 120 in; a bedroom to its right, a bath beyond that, a den below the hall that
	// nothing leads to.
	h := ruletest.New(t)
	r := newRoute(h)
	bath := h.Square(plan.UseBath, 249, 0, 120, 120)
	r.bedroom.Break(plan.BreakDoor, 1, 20, 30, func(b *plan.Break) { b.Hand = plan.HandRight })
	den := h.Square(plan.UseDen, 600, 0, 120, 120)
	h.Square(plan.UseOutdoors, 800, 0, 120, 120)
	r.puts(r.bedroom, 3, 41)
	w := walk(h)
	if len(w.Crossings) != 3 || len(w.Missed) != 1 || w.Missed[0].ID != den.Room.ID || w.Reach != ruletest.In(30) {
		t.Fatalf("%d crossings, %d missed", len(w.Crossings), len(w.Missed))
	}
	entry, second, third := w.Crossings[0], w.Crossings[1], w.Crossings[2]
	if entry.Into.ID != r.hall.Room.ID || entry.From != nil || entry.Before != nil || entry.Walked != 0 || entry.At != (geom.Point{X: ruletest.In(62), Y: ruletest.In(120)}) {
		t.Errorf("the entry is %+v, want into the hall at the middle of its door, (120 - 40 - 18, 120)", entry)
	}
	// From (62, 120) to (120, 55) are √(58² + 65²) = 87.11 in, and through the wall 4.5.
	if got := second.Walked.Inches(16); second.Before != entry || second.Into.ID != r.bedroom.Room.ID || got != `91-5/8"` {
		t.Errorf("into the bedroom after %s, want 87.11 + 4.5", got)
	}
	if third.Before != second || third.Into.ID != bath.Room.ID || third.From.ID != r.bedroom.Room.ID {
		t.Errorf("%+v, want from the bedroom into the bath", third)
	}
	if second.State != light.CrossingLit || third.State != light.CrossingUnlit || entry.State != light.CrossingUnlit {
		t.Errorf("states %s, %s, %s, want no light, lit, no light", entry.State, second.State, third.State)
	}
	if second.Away != ruletest.In(9) || second.Dark != 0 {
		t.Errorf("its switch is %s away, want the 9 in from the latch at 50 to 41", second.Away.Inches(16))
	}
	if w.To(den.Room.ID) != nil || len(w.To(bath.Room.ID)) != 3 || w.Dark() != 0 || w.Longest() != nil {
		t.Errorf("ways to the bath %d, dark %d", len(w.To(bath.Room.ID)), w.Dark())
	}
}

// By which door one comes in: at the front, else the likeliest.
func TestByWhichDoorOneComesIn(t *testing.T) {
	// Rooms of uses side by side, each with a door in its lower side; below the last may lie
	// a yard that faces the front.
	doors := func(front bool, change func([]*plan.Break), uses ...plan.Use) func(*ruletest.House) []plan.ID {
		return func(h *ruletest.House) (ids []plan.ID) {
			var breaks []*plan.Break
			for i, u := range uses {
				r := h.Square(u, float64(125*i), 0, 120, 120)
				breaks = append(breaks, r.Break(plan.BreakDoor, 2, 40, 36))
				ids = append(ids, r.Room.ID)
			}
			if front {
				h.Square(plan.UseOutdoors, float64(125*(len(uses)-1)), 127, 120, 120).Faces = plan.FacesFront
			}
			if change != nil {
				change(breaks)
			}
			return ids
		}
	}
	const practice = "common practice"
	for _, tt := range []struct {
		name   string
		make   func(*ruletest.House) []plan.ID
		into   []int
		source string
	}{
		{"a foyer before a hall", doors(false, nil, plan.UseHall, plan.UseFoyer), []int{1}, practice},
		{"a hall before a living room", doors(false, nil, plan.UseLiving, plan.UseHall), []int{1}, practice},
		{"a living before a family room", doors(false, nil, plan.UseFamily, plan.UseLiving), []int{1}, practice},
		{"a mudroom before a kitchen", doors(false, nil, plan.UseKitchen, plan.UseMudroom), []int{1}, practice},
		{"a kitchen before a bedroom", doors(false, nil, plan.UseBedroom, plan.UseKitchen), []int{1}, practice},
		{"a bedroom before a garage", doors(false, nil, plan.UseGarage, plan.UseBedroom), []int{1}, practice},
		{"the front before all", doors(true, nil, plan.UseFoyer, plan.UseBedroom), []int{1}, "it is said"},
		{"a door before a slider", doors(false, func(b []*plan.Break) {
			b[0].Kind, b[0].Hand, b[0].Swing, b[0].Panels = plan.BreakSlider, "", "", []plan.Panel{plan.PanelFixed, plan.PanelMoving}
		}, plan.UseFoyer, plan.UseBedroom), []int{1}, practice},
		{"not one for vehicles", doors(false, func(b []*plan.Break) { b[0].Vehicle = true }, plan.UseFoyer, plan.UseBedroom), []int{1}, practice},
		{"not one above grade", doors(false, func(b []*plan.Break) { b[0].Grade = plan.AboveGrade }, plan.UseFoyer, plan.UseBedroom), []int{1}, practice},
		{"two alike", doors(false, nil, plan.UseDen, plan.UseBedroom), []int{0, 1}, practice},
		{"one to a yard before one to where nothing is drawn", func(h *ruletest.House) []plan.ID {
			ids := doors(true, nil, plan.UseDen, plan.UseBedroom)(h)
			return ids
		}, []int{1}, practice},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := ruletest.New(t)
			ids := tt.make(h)
			w := light.WalkOf(index.New(h.Made()), ruletest.In(30))
			var into []int
			for _, c := range w.Crossings {
				for i, id := range ids {
					if c.Into.ID == id && c.Before == nil {
						into = append(into, i)
					}
				}
			}
			if len(into) != len(tt.into) || into[0] != tt.into[0] {
				t.Errorf("one comes into %v, want %v (%s)", into, tt.into, tt.source)
			}
		})
	}
}

// What is said of each step of a walk.
func TestTextsOfAWalk(t *testing.T) {
	hall, bedroom, tag := &plan.Room{Name: "Hall"}, &plan.Room{Name: "Bedroom"}, &plan.Opening{Tag: "S"}
	for want, c := range map[string]light.Crossing{
		"From Hall into Bedroom: open, the light behind shines in":                             {From: hall, Into: bedroom, State: light.CrossingOpen},
		"From Hall into Bedroom: nobody says what puts on its light":                           {From: hall, Into: bedroom, State: light.CrossingUnsaid},
		"From Hall into Bedroom: it has no light":                                              {From: hall, Into: bedroom, State: light.CrossingUnlit},
		"From Hall into Bedroom: dark, S is behind the open door":                              {From: hall, Into: bedroom, State: light.CrossingHidden, Switch: tag},
		"From the outdoors into Bedroom: dark, no switch for a light there is at hand":         {Into: bedroom, State: light.CrossingDark, Switch: tag},
		"Over the stairs from Hall into Bedroom: dark, no switch for a light there is at hand": {From: hall, Into: bedroom, State: light.CrossingDark, Switch: tag, Stairs: &plan.Fixture{}},
		"From Hall into Bedroom: lit by S":                                                     {From: hall, Into: bedroom, State: light.CrossingLit, Switch: tag},
	} {
		if got := c.Text().String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for state, want := range map[light.CrossingState]string{
		light.CrossingLit: "lit", light.CrossingOpen: "open", light.CrossingUnsaid: "unsaid", light.CrossingUnlit: "no light",
		light.CrossingHidden: "hidden", light.CrossingDark: "dark",
	} {
		if state.String() != want {
			t.Errorf("%q, want %q", state, want)
		}
		if c := (&light.Crossing{State: state}); c.IsDark() != (want == "hidden" || want == "dark") {
			t.Errorf("%s is dark: %v", want, c.IsDark())
		}
	}
}
