package card

import (
	"slices"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// fixturePage shows a fixture: what it is, how large and where.
var fixturePage = page[plan.Fixture]{
	head: func(s bind.Subject[plan.Fixture], x plan.Fixture) (string, string) {
		title := x.Name
		if title == "" {
			title = look.Capital(s.Voice.Say(x.Kind.Text()))
		}
		return title, s.StandsAt(x.At)
	},
	made: func(x plan.Fixture) any { return x.At.Host }, // its fields are named after the corners there
	rows: slices.Concat(fixtureSizes, []bind.Maker[plan.Fixture]{
		bind.When(fixtureOnFace, fromLeft(fixtureAt)),
		bind.When(fixtureOnFace, fromRight(fixtureAt, func(x plan.Fixture) unit.Length { return x.Width })),
		apartRow(fixtureAt, func(x *plan.Fixture) *plan.ID { return &x.From }),
	}),
	more: []bind.Maker[plan.Fixture]{
		bind.FieldOf(words.New("fixture.name", "Name"), func(x *plan.Fixture) *string { return &x.Name }, bind.Texts),
		bind.Note(func(x *plan.Fixture) *string { return &x.Note }),
	},
	several: fixtureSizes,
}

// fixtureSizes are what is changed of several at once too.
var fixtureSizes = []bind.Maker[plan.Fixture]{
	bind.ChoiceOf(words.New("fixture.kind", "Kind"), func(x *plan.Fixture) *plan.FixtureKind { return &x.Kind }, fixtureKinds),
	bind.FieldOf(words.New("fixture.width", "Width"), func(x *plan.Fixture) *unit.Length { return &x.Width }, bind.Lengths),
	bind.FieldOf(words.New("fixture.depth", "Depth"), func(x *plan.Fixture) *unit.Length { return &x.Depth }, bind.Lengths),
	bind.FieldOf(words.New("fixture.height", "Height"), func(x *plan.Fixture) *unit.Length { return &x.Height }, bind.Lengths),
	bind.FieldOf(words.New("fixture.bottom", "Above the floor"), func(x *plan.Fixture) *unit.Length { return &x.Bottom }, bind.Lengths),
}

func fixtureAt(x *plan.Fixture) *plan.Anchor { return &x.At }

func fixtureOnFace(x plan.Fixture) bool { return x.At.Part == plan.PartFace }

func fixtureKinds(*bind.Context) []bind.Option[plan.FixtureKind] {
	return bind.Options(part.All().FixtureIDs()...)
}
