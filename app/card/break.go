package card

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// newBreakCard shows a door, window, slider, passage or fireplace.
func newBreakCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() plan.Break {
		if b, _ := f.Index.Plan().Break(id); b != nil {
			return *b
		}
		return plan.Break{ID: id}
	}
	if b, _ := f.Index.Plan().Break(id); b == nil {
		return nil
	}
	was := now() // its fields go by its kind and are named after the corners of its face
	change := func(do func(*plan.Break)) error {
		b := now()
		do(&b)
		return f.Window.Do(plan.ChangeBreak{Break: b})
	}
	f.heading = func() (string, string, bool) {
		b, _ := f.Index.Plan().Break(id)
		if b == nil || b.At.Host != was.At.Host || b.Kind != was.Kind {
			return "", "", false
		}
		return capital(f.Voice.Say(b.Kind.Text())), f.standsAt(b.At), true
	}
	length := func(label string, read func(plan.Break) unit.Length, write func(*plan.Break, unit.Length)) line {
		return f.lengthField(label, func() unit.Length { return read(now()) }, func(l unit.Length) error {
			return change(func(b *plan.Break) { write(b, l) })
		}, f.long)
	}
	side := func() unit.Length { return f.lengthOf(now().At.Host) }
	kind := NewChoice(f.say("break.kind", "Kind"), "", func() (options []Option) {
		for _, k := range plan.BreakKinds {
			options = append(options, Option{Label: capital(f.Voice.Say(k.Text())), Now: now().Kind == k, Do: func() {
				f.shown(change(func(b *plan.Break) { b.Kind = k }))
			}})
		}
		return options
	})
	lines := []line{
		kind,
		length(f.say("break.width", "Width"), func(b plan.Break) unit.Length { return b.Width }, func(b *plan.Break, l unit.Length) { b.Width = l }),
		length(f.cornerLabel(now().At.Host, false), func(b plan.Break) unit.Length { return b.At.Along }, func(b *plan.Break, l unit.Length) { b.At.Along = l }),
		length(f.cornerLabel(now().At.Host, true), func(b plan.Break) unit.Length { return side() - b.At.Along - b.Width }, func(b *plan.Break, l unit.Length) { b.At.Along = side() - b.Width - l }),
		length(f.say("break.head", "Head height"), func(b plan.Break) unit.Length { return b.Head }, func(b *plan.Break, l unit.Length) { b.Head = l }),
	}
	if now().Kind == plan.BreakWindow {
		lines = append(lines, length(f.say("break.sill", "Sill height"), func(b plan.Break) unit.Length { return b.Sill }, func(b *plan.Break, l unit.Length) { b.Sill = l }))
	}
	if now().Kind == plan.BreakDoor {
		lines = append(lines, f.hand(now, change), f.swing(now, change))
	}
	casing := f.thinField(f.say("break.casing", "Casing"), func() unit.Length { return now().Casing }, func(l unit.Length) error {
		return change(func(b *plan.Break) { b.Casing = l })
	})
	note := f.noteField(func() string { return now().Note }, func(text string) error {
		return change(func(b *plan.Break) { b.Note = text })
	})
	f.lay(lines, []line{casing, note})
	return f.ready()
}

var hands = []struct {
	hand plan.Hand
	name words.Text
}{
	{plan.HandUnknown, words.New("hand.unknown", "not decided yet")},
	{plan.HandLeft, words.New("hand.left", "hinges at the left")},
	{plan.HandRight, words.New("hand.right", "hinges at the right")},
	{plan.HandDouble, words.New("hand.double", "two leaves")},
}

func (f *form) hand(now func() plan.Break, change func(func(*plan.Break)) error) line {
	return NewChoice(f.say("break.hand", "Hand"), "", func() (options []Option) {
		for _, h := range hands {
			options = append(options, Option{Label: capital(f.Voice.Say(h.name)), Now: now().Hand == h.hand, Do: func() {
				f.shown(change(func(b *plan.Break) { b.Hand = h.hand }))
			}})
		}
		return options
	})
}

var swings = []struct {
	swing plan.Swing
	name  words.Text
}{
	{plan.SwingNone, words.New("swing.none", "no swing, or not decided")},
	{plan.SwingIn, words.New("swing.in", "into this room")},
	{plan.SwingOut, words.New("swing.out", "out of this room")},
}

func (f *form) swing(now func() plan.Break, change func(func(*plan.Break)) error) line {
	return NewChoice(f.say("break.swing", "Swings"), "", func() (options []Option) {
		for _, s := range swings {
			options = append(options, Option{Label: capital(f.Voice.Say(s.name)), Now: now().Swing == s.swing, Do: func() {
				f.shown(change(func(b *plan.Break) { b.Swing = s.swing }))
			}})
		}
		return options
	})
}

// lengthOf returns how long a face is, 0 where it is none.
func (c Context) lengthOf(side plan.ID) unit.Length {
	if ref, ok := c.Index.Side(side); ok {
		return ref.Line().Length()
	}
	return 0
}

// standsAt says the room and face of an anchor.
func (c Context) standsAt(at plan.Anchor) string {
	place, ok := c.Index.Place(at)
	if !ok || place.Room == nil {
		return ""
	}
	if at.Part != plan.PartFace {
		return c.roomName(place.Room)
	}
	return c.say("where.room-face", "{0}, {1} face", c.roomName(place.Room), c.Facing(at.Host))
}
