package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// breakPage shows a door, window, slider, passage or fireplace.
var breakPage = page[plan.Break]{
	head: func(s bind.Subject[plan.Break], x plan.Break) (string, string) {
		return look.Capital(s.Voice.Say(x.Kind.Text())), s.StandsAt(x.At)
	},
	// Its fields go by its kind and are named after the corners of its face.
	made: func(x plan.Break) any { return [2]string{string(x.At.Host), string(x.Kind)} },
	rows: []bind.Maker[plan.Break]{
		breakKind,
		breakWidth,
		breakPlace.row,
		breakHead,
		breakSill,
		breakHand,
		breakSwing,
	},
	more: []bind.Maker[plan.Break]{
		breakPlace.others,
		bind.FieldOf(words.New("break.casing", "Casing"), func(x *plan.Break) *unit.Length { return &x.Casing }, bind.Thicknesses),
		bind.When(func(x plan.Break) bool { return x.Casing > 0 }, bind.ChoiceOf(words.New("break.casing-is", "Casing was"), func(x *plan.Break) *bool { return &x.CasingMeasured }, sizeTold)),
		bind.When(isHung, bind.ChoiceOf(words.New("break.grade", "Beyond it"), func(x *plan.Break) *plan.Grade { return &x.Grade }, grades)),
		bind.When(isHung, bind.ChoiceOf(words.New("break.vehicle", "For vehicles"), func(x *plan.Break) *bool { return &x.Vehicle }, bind.YesNo)),
		bind.When(isFireplace, bind.FieldOf(words.New("fixture.fuel", "Burns, such as gas"), func(x *plan.Break) *string { return &x.Fuel }, bind.Texts)),
		bind.Note(func(x *plan.Break) *string { return &x.Note }),
	},
	several: []bind.Maker[plan.Break]{breakKind, breakWidth, breakHead, breakSill, breakHand, breakSwing},
}

// What doors and windows have in common is changed of several at once too.
var (
	breakKind = bind.ChoiceOn(words.New("break.kind", "Kind"), func(s bind.Subject[plan.Break]) bind.Value[plan.BreakKind] {
		return bind.Told(s, func(x plan.Break) plan.BreakKind { return x.Kind }, part.ToBreakKind)
	}, breakKinds)
	breakWidth = bind.FieldOf(words.New("break.width", "Width"), func(x *plan.Break) *unit.Length { return &x.Width }, bind.Lengths)
	breakHead  = bind.FieldOf(words.New("break.head", "Head height"), func(x *plan.Break) *unit.Length { return &x.Head }, bind.Lengths)
	breakSill  = bind.When(hasSill, bind.FieldOf(words.New("break.sill", "Sill height"), func(x *plan.Break) *unit.Length { return &x.Sill }, bind.Lengths))
	breakHand  = bind.When(isHung, bind.ChoiceOf(words.New("break.hand", "Hand"), func(x *plan.Break) *plan.Hand { return &x.Hand }, hands))
	breakSwing = bind.When(isHung, bind.ChoiceOf(words.New("break.swing", "Swings"), func(x *plan.Break) *plan.Swing { return &x.Swing }, swings))
)

var breakPlace = distance[plan.Break]{
	at:    func(x *plan.Break) *plan.Anchor { return &x.At },
	from:  func(x *plan.Break) *plan.ID { return &x.From },
	width: func(x plan.Break) unit.Length { return x.Width },
}

// sizeTold is how well the size of trim that stands already is known.
func sizeTold(*bind.Context) []bind.Option[bool] {
	return []bind.Option[bool]{{Value: false, Text: words.New("trim.assumed", "assumed")}, {Value: true, Text: words.New("trim.taped", "measured")}}
}

func hasSill(x plan.Break) bool { return part.All().Break(x.Kind).HasSill() }

func isHung(x plan.Break) bool { return part.All().Break(x.Kind).IsHung }

func isFireplace(x plan.Break) bool { return x.Kind == plan.BreakFireplace }

func breakKinds(*bind.Context) []bind.Option[plan.BreakKind] {
	return bind.Options(part.All().BreakIDs()...)
}

// grades say where the ground is beyond a door to the outdoors.
func grades(*bind.Context) []bind.Option[plan.Grade] {
	return []bind.Option[plan.Grade]{
		{Value: plan.GradeUnsaid, Text: words.New("grade.unsaid", "not said")},
		{Value: plan.AtGrade, Text: words.New("grade.at", "the ground, at grade")},
		{Value: plan.AboveGrade, Text: words.New("grade.above", "no ground, above grade")},
	}
}

func hands(*bind.Context) []bind.Option[plan.Hand] {
	return []bind.Option[plan.Hand]{
		{Value: plan.HandUnknown, Text: words.New("hand.unknown", "not decided yet")},
		{Value: plan.HandLeft, Text: words.New("hand.left", "hinges at the left")},
		{Value: plan.HandRight, Text: words.New("hand.right", "hinges at the right")},
		{Value: plan.HandDouble, Text: words.New("hand.double", "double doors")},
	}
}

// Swings are to where a door can swing.
var Swings = []bind.Option[plan.Swing]{
	{Value: plan.SwingNone, Text: words.New("swing.none", "no swing, or not decided")},
	{Value: plan.SwingIn, Text: words.New("swing.in", "into this room")},
	{Value: plan.SwingOut, Text: words.New("swing.out", "out of this room")},
}

func swings(*bind.Context) []bind.Option[plan.Swing] { return Swings }
