package light_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/light"
	"studbay/fill/part"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// frontOf is the size of the box of a kind as it starts out.
func frontOf(kind string) (width, height unit.Length) {
	o := part.NewOpening(unit.Imperial, kind, plan.Anchor{Part: plan.PartFace})
	front := frame.FrontOf(&o)
	return front.Width, front.Height
}

// hung changes how a door hangs.
func hung(hand plan.Hand, swing plan.Swing, casing float64) func(*plan.Break) {
	return func(b *plan.Break) { b.Hand, b.Swing, b.Casing = hand, swing, ruletest.In(casing) }
}

func TestWhatIsToldOfSwitches(t *testing.T) {
	ruletest.Tells(t, &light.SwitchHeight, []ruletest.Telling{
		ruletest.Told("at 7 ft", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), ruletest.Tagged("A"), ruletest.Up(84))
		}, `
			stop, NEC 2023 404.8(A): A in bedroom; 84" of 79"
			A is 84" above the floor
			A switch is reached from the floor: the center of its grip is not higher than 6 ft 7 in.
			Set it at 46":
			  no more A switch on bedroom/0 face 40", centre 84" up, PN3
			  now A switch on bedroom/0 face 40", centre 46" up, PN3`, "404.8(A); 46 in is common practice"),
		ruletest.Told("its grip told", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), ruletest.Tagged("A"), ruletest.Up(79), func(o *plan.Opening) { o.Grip = unit.Inch })
		}, `
			stop, NEC 2023 404.8(A): A in bedroom; 80" of 79"
			The grip of A is 80" above the floor
			A switch is reached from the floor: the center of its grip is not higher than 6 ft 7 in.
			Set it at 46":
			  no more A switch on bedroom/0 face 40", centre 79" up, PN3
			  now A switch on bedroom/0 face 40", centre 46" up, PN3`, "404.8(A): to the center of the grip in its highest position"),
		ruletest.Told("at 7 ft, there already", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), ruletest.Tagged("A"), ruletest.Up(84), ruletest.Existing)
		}, `
			note, NEC 2023 404.8(A): A in bedroom; 84" of 79"
			A is 84" above the floor
			A switch is reached from the floor: the center of its grip is not higher than 6 ft 7 in.`, "404.8(A); what is there stays"),
	})
	// A room of 144 in, a door from 24 to 54 in of its top side.
	room := func(change func(*plan.Break), more func(*ruletest.House, *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			r.Break(plan.BreakDoor, 0, 24, 30, change)
			more(h, r)
		}
	}
	at := func(side int, along float64) func(*ruletest.House, *ruletest.Room) {
		return func(h *ruletest.House, r *ruletest.Room) {
			r.Opening("switch", r.On(side, along), ruletest.Tagged("A"))
		}
	}
	const told = `
			note, by practice: A in bedroom; 66" of 48"
			A is 5' 6" from the nearest door of the room
			No switch of the room is within 4' 0" of a door: who comes in looks for one there. Where the door was moved, its switch may be meant to follow.`
	moved := func(to string) string {
		return told + `
			Move A to the door:
			  no more A switch on bedroom/0 face 120", centre 46" up, PN3
			  now A switch on bedroom/0 face ` + to + `, centre 46" up, PN3`
	}
	const practice = "common practice: 4 ft; 4 in beside the casing, at the latch, else at its own hand"
	ruletest.Tells(t, &light.SwitchByDoor, []ruletest.Telling{
		ruletest.Told("the latch at the right", room(hung(plan.HandLeft, plan.SwingIn, 2.25), at(0, 120)), moved(`60-1/4"`), practice),
		ruletest.Told("the latch at the left", room(hung(plan.HandRight, plan.SwingIn, 2.25), at(0, 120)), moved(`17-3/4"`), practice),
		ruletest.Told("nobody says the hand", room(hung(plan.HandUnknown, plan.SwingIn, 2), at(0, 120)), moved(`60"`), practice),
		ruletest.Told("two leaves", room(hung(plan.HandDouble, plan.SwingIn, 2), at(0, 120)), moved(`60"`), practice),
		ruletest.Told("something is in the way at the latch", room(hung(plan.HandLeft, plan.SwingIn, 2), func(h *ruletest.House, r *ruletest.Room) {
			at(0, 120)(h, r)
			r.Opening("thermostat", r.On(0, 60), ruletest.Up(46))
		}), told, practice),
		ruletest.Told("the door is the next room's", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			next := h.Square(plan.UseHall, 0, -124.5, 144, 120)
			// Seen from the hall the door is from 90 to 120 in, its hinges at the left: to the
			// bedroom it is from 24 to 54, its hinges at the right.
			next.Break(plan.BreakDoor, 2, 90, 30, hung(plan.HandLeft, plan.SwingIn, 2))
			at(0, 120)(h, r)
		}, moved(`18"`), practice),
		ruletest.Told("in another wall", room(hung(plan.HandLeft, plan.SwingIn, 2), at(1, 100)), `
			note, by practice: A in bedroom; 134-9/16" of 48"
			A is ≈ 11' 2-9/16" from the nearest door of the room
			No switch of the room is within 4' 0" of a door: who comes in looks for one there. Where the door was moved, its switch may be meant to follow.`,
			"common practice: √(90² + 100²) is 134.54"),
	})
	// A door of 30 in from 60 to 90 in of a side of 200, hinged at its left, opening in.
	place := func(along float64, casing float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakDoor, 0, 60, 30, hung(plan.HandLeft, plan.SwingIn, casing))
			r.Opening("switch", r.On(0, along), ruletest.Tagged("A"))
		}
	}
	ruletest.Tells(t, &light.SwitchPlace, []ruletest.Telling{
		ruletest.Told("behind the leaf", place(50, 2.25), `
			warn, by practice: A in bedroom
			A is behind the open door
			It is on the side of the hinges, within the width of the leaf; a hand looks for it at the latch.`, "common practice"),
		ruletest.Told("on the casing", place(91, 2.25), `
			warn, by practice: A in bedroom
			A meets the casing of a door or window
			The casing is 2-1/4" wide; its plate has no room.`, "common practice"),
	})
	ruletest.Tells(t, &light.SwitchNeutral, []ruletest.Telling{
		ruletest.Told("a loop of two", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			o := r.Opening("switch", r.On(0, 40), ruletest.Tagged("A"))
			h.Cable(o.ID, r.Opening("ceiling-light", r.Ceiling(60, 60)).ID, 14, 2, nil)
		}, `
			stop, NEC 2023 404.2(C): A in bedroom; 2 of 3
			A has no neutral: its only cable has 2 conductors
			With the neutral that a dimmer or sensor needs it has 3; a cable with one more, or the feed through this box, brings it.`, "404.2(C)"),
		ruletest.Told("a three-way of three, there already", func(h *ruletest.House) {
			r := h.Square(plan.UseHall, 0, 0, 120, 120)
			o := r.Opening("three-way", r.On(0, 40), ruletest.Tagged("A"), ruletest.Existing)
			h.Cable(o.ID, r.Opening("ceiling-light", r.Ceiling(60, 60)).ID, 14, 3, nil)
		}, `
			note, NEC 2023 404.2(C): A in hall; 3 of 4
			A has no neutral: its only cable has 3 conductors
			With the neutral that a dimmer or sensor needs it has 4; a cable with one more, or the feed through this box, brings it.`, "404.2(C); what is there is told in a note"),
	})
}

func TestLimitsOfSwitches(t *testing.T) {
	wide, high := frontOf("switch")
	ruletest.Edges(t, &light.SwitchHeight, []ruletest.Edge{
		ruletest.Limit("6 ft 7 in", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40)).Height.Value = ruletest.In(79) + over
		}, 0, 0, 1, "404.8(A)"),
	})
	ruletest.Edges(t, &light.SwitchByDoor, []ruletest.Edge{
		ruletest.Limit("4 ft", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			r.Break(plan.BreakDoor, 0, 24, 30)
			r.Opening("switch", r.On(0, 102)).At.Along += over
			r.Opening("switch", r.On(2, 10))
		}, 0, 0, 1, "common practice; the farther of two does not matter"),
		ruletest.Limit("4 ft to the left", func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			r.Opening("switch", r.On(2, 10))
			r.Break(plan.BreakDoor, 0, 84, 30)
			r.Opening("switch", r.On(0, 36)).At.Along -= over
		}, 0, 0, 1, "common practice"),
	})
	// A door from 60 to 90 in, its casing 2-1/4, opening out; and a window from 32 to 80 in.
	door := func(change func(o *plan.Opening, over unit.Length)) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakDoor, 0, 60, 30, hung(plan.HandLeft, plan.SwingOut, 2.25))
			change(r.Opening("switch", r.On(0, 20)), over)
		}
	}
	window := func(along, up unit.Length) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakWindow, 0, 60, 30, func(b *plan.Break) { b.Sill, b.Casing = ruletest.In(32), ruletest.In(2.25) })
			o := r.Opening("switch", r.On(0, 20))
			o.At.Along, o.Height.Value = along, up
			if up > ruletest.In(60) {
				o.Height.Value -= over
			} else {
				o.Height.Value += over
			}
		}
	}
	const casing = "common practice: clear of the casing"
	leaf := func(hand plan.Hand, along float64, sign unit.Length) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			r.Break(plan.BreakDoor, 0, 80, 30, hung(hand, plan.SwingIn, 0))
			r.Opening("switch", r.On(0, along)).At.Along += sign * over
		}
	}
	const behind = "common practice: as far from the hinges as the door is wide"
	ruletest.Edges(t, &light.SwitchPlace, []ruletest.Edge{
		ruletest.Limit("from the left", door(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(57.75) - wide/2 + over }), 0, 0, 1, casing),
		ruletest.Limit("from the right", door(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(92.25) + wide/2 - over }), 0, 0, 1, casing),
		ruletest.Limit("out of the door to the left", door(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(60) + wide/2 - over }), 0, 0, 1, casing+"; within the door it is another rule's"),
		ruletest.Limit("out of the door to the right", door(func(o *plan.Opening, over unit.Length) { o.At.Along = ruletest.In(90) - wide/2 + over }), 0, 0, 1, casing),
		ruletest.Limit("above a window", window(ruletest.In(58), ruletest.In(80)+high/2), 0, 0, 1, casing),
		ruletest.Limit("below a window", window(ruletest.In(58), ruletest.In(32)-high/2), 0, 0, 1, casing),
		ruletest.Limit("a leaf's width from the hinges at the left", leaf(plan.HandLeft, 50, 1), 0, 0, 1, behind),
		ruletest.Limit("at the hinges at the left", leaf(plan.HandLeft, 80, -1), 0, 0, 1, behind),
		ruletest.Limit("a leaf's width from the hinges at the right", leaf(plan.HandRight, 140, -1), 0, 0, 1, behind),
		ruletest.Limit("at the hinges at the right", leaf(plan.HandRight, 110, 1), 0, 0, 1, behind),
	})
}

// Who is looked at, each part of the sentence met and not.
func TestWhichSwitches(t *testing.T) {
	on := func(part plan.Part, up float64) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			at := r.On(0, 40)
			switch part {
			case plan.PartCeiling:
				at = r.Ceiling(60, 60)
			case plan.PartFloor:
				at = plan.OnFloor(r.Room.ID, r.Ceiling(60, 60).At)
			case plan.PartTop, plan.PartFront:
				i := r.Island(60, 60, 60, 30)
				i.Height = ruletest.In(90)
				at = plan.Anchor{Host: i.ID, Part: part, Along: ruletest.In(30)}
			}
			r.Opening("switch", at, ruletest.Up(up))
		}
	}
	ruletest.Try(t, &light.SwitchHeight, []ruletest.Trial{
		ruletest.Case("in a wall", on(plan.PartFace, 84), 1, "404.8(A)"),
		ruletest.Case("in a front", on(plan.PartFront, 84), 1, "404.8(A)"),
		ruletest.Case("a receptacle", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.Up(84))
		}, 0, "404.8(A): switches"),
	})
	for _, part := range []plan.Part{plan.PartCeiling, plan.PartFloor, plan.PartTop} {
		h := ruletest.New(t)
		on(part, 84)(h) // a height is of no meaning there
		if found := h.Found(&light.SwitchHeight); len(found) > 0 {
			t.Errorf("a switch in the %s: %+v", part, found)
		}
	}
	byDoor := func(kind plan.BreakKind, more func(*ruletest.House, *ruletest.Room, *plan.Break)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			b := r.Break(kind, 0, 24, 30)
			r.Opening("switch", r.On(2, 20))
			if more != nil {
				more(h, r, b)
			}
		}
	}
	const practice = "common practice: by what one walks through"
	ruletest.Try(t, &light.SwitchByDoor, []ruletest.Trial{
		ruletest.Case("a door", byDoor(plan.BreakDoor, nil), 1, practice),
		ruletest.Case("a cased opening", byDoor(plan.BreakPassage, nil), 1, practice),
		ruletest.Case("a slider", byDoor(plan.BreakSlider, func(_ *ruletest.House, _ *ruletest.Room, b *plan.Break) {
			b.Panels = []plan.Panel{plan.PanelFixed, plan.PanelMoving}
		}), 1, practice),
		ruletest.Case("a window", byDoor(plan.BreakWindow, nil), 0, practice),
		ruletest.Case("a hatch", byDoor(plan.BreakPassage, func(_ *ruletest.House, _ *ruletest.Room, b *plan.Break) { b.Sill = 1 }), 0, practice),
		ruletest.Case("an open side", byDoor(plan.BreakDoor, func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) { r.Sides[3].Kind = plan.SideOpen }), 0, "rooms with an open side are not checked"),
		ruletest.Case("a railing", byDoor(plan.BreakDoor, func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) { r.Sides[3].Kind = plan.SideRailing }), 1, practice),
		ruletest.Case("an old one by the door", byDoor(plan.BreakDoor, func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) {
			r.Opening("switch", r.On(0, 60), ruletest.Existing)
		}), 1, "what is there already was by the old door"),
		ruletest.Case("a receptacle by the door", byDoor(plan.BreakDoor, func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) {
			r.Opening("duplex", r.On(0, 60))
		}), 1, practice),
		ruletest.Case("another door beside it", byDoor(plan.BreakDoor, func(_ *ruletest.House, r *ruletest.Room, _ *plan.Break) {
			r.Break(plan.BreakDoor, 2, 40, 30)
		}), 0, practice),
	})
	place := func(kind plan.BreakKind, change func(*plan.Break, *plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 200, 120)
			b := r.Break(kind, 0, 60, 30, hung(plan.HandLeft, plan.SwingIn, 0))
			change(b, r.Opening("switch", r.On(0, 50)))
		}
	}
	ruletest.Try(t, &light.SwitchPlace, []ruletest.Trial{
		ruletest.Case("behind a leaf", place(plan.BreakDoor, func(*plan.Break, *plan.Opening) {}), 1, "common practice"),
		ruletest.Case("one that is there", place(plan.BreakDoor, func(_ *plan.Break, o *plan.Opening) { o.Status = plan.StatusExisting }), 0, "it is where it is"),
		ruletest.Case("one that goes", place(plan.BreakDoor, func(_ *plan.Break, o *plan.Opening) { o.Status = plan.StatusRemove }), 0, "it will not be there"),
		ruletest.Case("a receptacle", place(plan.BreakDoor, func(_ *plan.Break, o *plan.Opening) { o.Kind = "duplex" }), 0, "common practice: switches"),
		ruletest.Case("beside a cased opening", place(plan.BreakPassage, func(b *plan.Break, o *plan.Opening) {}), 0, "it has no leaf"),
		ruletest.Case("two leaves", place(plan.BreakDoor, func(b *plan.Break, o *plan.Opening) { b.Hand = plan.HandDouble }), 0, "which side the hinges are nobody can tell"),
		ruletest.Case("between two doors, behind both", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 240, 120)
			r.Break(plan.BreakDoor, 0, 60, 30, hung(plan.HandRight, plan.SwingIn, 0))
			r.Break(plan.BreakDoor, 0, 110, 30, hung(plan.HandLeft, plan.SwingIn, 0))
			r.Opening("switch", r.On(0, 100))
		}, 1, "told once"),
		ruletest.Case("behind the leaf of the next room's door", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 144)
			next := h.Square(plan.UseHall, 0, -124.5, 144, 120)
			next.Break(plan.BreakDoor, 2, 60, 30, hung(plan.HandRight, plan.SwingOut, 0)) // here from 54 to 84, hinged at 54, opening in
			r.Opening("switch", r.On(0, 40))
		}, 1, "common practice"),
		ruletest.Case("in the hall that it opens from", func(h *ruletest.House) {
			h.Square(plan.UseBedroom, 0, 0, 144, 144)
			next := h.Square(plan.UseHall, 0, -124.5, 144, 120)
			next.Break(plan.BreakDoor, 2, 60, 30, hung(plan.HandRight, plan.SwingOut, 0))
			next.Opening("switch", next.On(2, 100))
		}, 0, "common practice: it opens the other way"),
	})
}

// Which boxes want a neutral, and of which it can be told that none is there.
func TestWhichBoxesWantANeutral(t *testing.T) {
	stated := func(kind string, items ...plan.Item) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening(kind, r.On(0, 40), func(o *plan.Opening) {
				o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: items}
			})
		}
	}
	cable := func(wires, times int) plan.Item {
		return plan.Item{What: plan.ItemCable, Size: 14, Wires: wires, Times: times}
	}
	device := plan.Item{What: plan.ItemDevice, Size: 14}
	of := func(what plan.ItemKind) plan.Item { return plan.Item{What: what, Size: 14, Times: 1} }
	const said = "404.2(C)"
	trials := []ruletest.Trial{
		ruletest.Case("one cable of two stated", stated("switch", device, cable(2, 1)), 1, said),
		ruletest.Case("one cable of two stated, nobody says how often", stated("switch", cable(2, 0)), 1, said),
		ruletest.Case("one of three", stated("switch", cable(3, 1)), 0, said),
		ruletest.Case("a dimmer's of two", stated("dimmer", cable(2, 1)), 1, said),
		ruletest.Case("a three-way's of three", stated("three-way", cable(3, 1)), 1, said),
		ruletest.Case("two alike", stated("switch", cable(2, 2)), 0, said+": the feed comes through"),
		ruletest.Case("two lines of one", stated("switch", cable(2, 1), cable(2, 1)), 0, said+": the feed comes through"),
		ruletest.Case("a device alone", stated("switch", device), 0, "nobody says what cable"),
		ruletest.Case("a raceway's conductor", stated("switch", cable(2, 1), of(plan.ItemConductor)), 0, said+" exception: raceways"),
		ruletest.Case("one through", stated("switch", cable(2, 1), of(plan.ItemThrough)), 0, said+" exception: raceways"),
		ruletest.Case("a loop", stated("switch", cable(2, 1), of(plan.ItemLoop)), 0, said+" exception: raceways"),
		ruletest.Case("not known", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), func(o *plan.Opening) {
				o.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: []plan.Item{cable(2, 1)}}
			})
		}, 0, "more may be there"),
		ruletest.Case("a receptacle", stated("duplex", cable(2, 1)), 0, said+": switches"),
	}
	uses := map[plan.Use]bool{}
	for _, u := range []plan.Use{
		plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor, plan.UseLibrary, plan.UseDen, plan.UseSunroom, plan.UseBedroom,
		plan.UseRecreation, plan.UseBreakfast, plan.UseOffice, plan.UseBath, plan.UseHall, plan.UseFoyer, plan.UseStairs,
	} {
		uses[u] = true
	}
	for _, u := range plan.Uses {
		want := 0
		if uses[u] {
			want = 1
		}
		trials = append(trials, ruletest.Case("a loop in a room for "+string(u), func(h *ruletest.House) {
			r := h.Square(u, 0, 0, 120, 120)
			r.Opening("switch", r.On(0, 40), func(o *plan.Opening) {
				o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{cable(2, 1)}}
			})
		}, want, said+": habitable rooms, bathrooms, halls and stairs"))
	}
	ruletest.Try(t, &light.SwitchNeutral, trials)
}
