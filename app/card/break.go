package card

import (
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// breakPage shows a door, window, slider, passage or fireplace.
var breakPage = page[plan.Break]{
	head: func(s subject[plan.Break], x plan.Break) (string, string) {
		return look.Capital(s.Voice.Say(x.Kind.Text())), s.standsAt(x.At)
	},
	// Its fields go by its kind and are named after the corners of its face.
	made: func(x plan.Break) any { return [2]string{string(x.At.Host), string(x.Kind)} },
	rows: []rowOf[plan.Break]{
		choiceRow(words.New("break.kind", "Kind"), func(x *plan.Break) *plan.BreakKind { return &x.Kind }, breakKinds),
		fieldRow(words.New("break.width", "Width"), func(x *plan.Break) *unit.Length { return &x.Width }, lengths),
		fromLeft(func(x *plan.Break) *plan.Anchor { return &x.At }),
		fromRight(func(x *plan.Break) *plan.Anchor { return &x.At }, func(x plan.Break) unit.Length { return x.Width }),
		apartRow(func(x *plan.Break) *plan.Anchor { return &x.At }, func(x *plan.Break) *plan.ID { return &x.From }),
		fieldRow(words.New("break.head", "Head height"), func(x *plan.Break) *unit.Length { return &x.Head }, lengths),
		when(hasSill,
			fieldRow(words.New("break.sill", "Sill height"), func(x *plan.Break) *unit.Length { return &x.Sill }, lengths)),
		when(isHung, choiceRow(words.New("break.hand", "Hand"), func(x *plan.Break) *plan.Hand { return &x.Hand }, hands)),
		when(isHung, choiceRow(words.New("break.swing", "Swings"), func(x *plan.Break) *plan.Swing { return &x.Swing }, swings)),
	},
	more: []rowOf[plan.Break]{
		fieldRow(words.New("break.casing", "Casing"), func(x *plan.Break) *unit.Length { return &x.Casing }, thicknesses),
		noteRow(func(x *plan.Break) *string { return &x.Note }),
	},
}

func hasSill(x plan.Break) bool { return part.All().Break(x.Kind).HasSill() }

func isHung(x plan.Break) bool { return part.All().Break(x.Kind).IsHung }

func breakKinds(c *Context) []option[plan.BreakKind] {
	return told(part.All().BreakIDs()...)(c)
}

func hands(*Context) []option[plan.Hand] {
	return []option[plan.Hand]{
		{value: plan.HandUnknown, text: words.New("hand.unknown", "not decided yet")},
		{value: plan.HandLeft, text: words.New("hand.left", "hinges at the left")},
		{value: plan.HandRight, text: words.New("hand.right", "hinges at the right")},
		{value: plan.HandDouble, text: words.New("hand.double", "double doors")},
	}
}

func swings(*Context) []option[plan.Swing] {
	return []option[plan.Swing]{
		{value: plan.SwingNone, text: words.New("swing.none", "no swing, or not decided")},
		{value: plan.SwingIn, text: words.New("swing.in", "into this room")},
		{value: plan.SwingOut, text: words.New("swing.out", "out of this room")},
	}
}
