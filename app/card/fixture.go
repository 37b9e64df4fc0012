package card

import (
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// fixturePage shows a fixture: what it is, how large and where.
var fixturePage = page[plan.Fixture]{
	head: func(s subject[plan.Fixture], x plan.Fixture) (string, string) {
		title := x.Name
		if title == "" {
			title = look.Capital(s.Voice.Say(x.Kind.Text()))
		}
		return title, s.standsAt(x.At)
	},
	made: func(x plan.Fixture) any { return x.At.Host }, // its fields are named after the corners there
	rows: []rowOf[plan.Fixture]{
		choiceRow(words.New("fixture.kind", "Kind"), func(x *plan.Fixture) *plan.FixtureKind { return &x.Kind }, fixtureKinds),
		fieldRow(words.New("fixture.width", "Width"), func(x *plan.Fixture) *unit.Length { return &x.Width }, lengths),
		fieldRow(words.New("fixture.depth", "Depth"), func(x *plan.Fixture) *unit.Length { return &x.Depth }, lengths),
		fieldRow(words.New("fixture.height", "Height"), func(x *plan.Fixture) *unit.Length { return &x.Height }, lengths),
		fieldRow(words.New("fixture.bottom", "Above the floor"), func(x *plan.Fixture) *unit.Length { return &x.Bottom }, lengths),
		when(fixtureOnFace, fromLeft(func(x *plan.Fixture) *plan.Anchor { return &x.At })),
		when(fixtureOnFace, fromRight(func(x *plan.Fixture) *plan.Anchor { return &x.At }, func(x plan.Fixture) unit.Length { return x.Width })),
		apartRow(func(x *plan.Fixture) *plan.Anchor { return &x.At }, func(x *plan.Fixture) *plan.ID { return &x.From }),
	},
	more: []rowOf[plan.Fixture]{
		fieldRow(words.New("fixture.name", "Name"), func(x *plan.Fixture) *string { return &x.Name }, texts),
		noteRow(func(x *plan.Fixture) *string { return &x.Note }),
	},
}

func fixtureOnFace(x plan.Fixture) bool { return x.At.Part == plan.PartFace }

func fixtureKinds(c *Context) []option[plan.FixtureKind] {
	return told(part.All().FixtureIDs()...)(c)
}
