package card

import (
	"slices"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/fill/rule"
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
	found: func(f rule.Finding, id plan.ID) bool { return f.About == id },
	// Its fields go by its kind and are named after the corners of its face.
	made: func(x plan.Fixture) any { return [2]string{string(x.At.Host), string(x.Kind)} },
	rows: slices.Concat(fixtureSizes, []bind.Maker[plan.Fixture]{
		bind.When(fixtureOnFace, fixturePlace.row),
		bind.When(isStairs, leadsRow),
		bind.When(isStairs, bind.FieldOf(words.New("fixture.risers", "Risers"), func(x *plan.Fixture) *int { return &x.Risers }, risers)),
		bind.When(isStairs, bind.FieldOf(words.New("fixture.landings", "Landings with a door"), func(x *plan.Fixture) *int { return &x.Landings }, landings)),
	}),
	more: []bind.Maker[plan.Fixture]{
		bind.When(fixtureOnFace, fixturePlace.others),
		bind.When(mayBePrepared, bind.ChoiceOf(words.New("fixture.provision", "Prepared for a receptacle"), func(x *plan.Fixture) *bool { return &x.Provision }, bind.YesNo)),
		bind.When(isSink, bind.ChoiceOf(words.New("fixture.bar", "Drinks or food prepared here"), func(x *plan.Fixture) *plan.Answer { return &x.Bar }, answers)),
		bind.When(mayBurn, bind.FieldOf(words.New("fixture.fuel", "Burns, such as gas"), func(x *plan.Fixture) *string { return &x.Fuel }, bind.Texts)),
		bind.FieldOf(words.New("fixture.name", "Name"), func(x *plan.Fixture) *string { return &x.Name }, bind.Texts),
		bind.Note(func(x *plan.Fixture) *string { return &x.Note }),
	},
	several: fixtureSizes,
}

// fixtureSizes are what is changed of several at once too.
var fixtureSizes = []bind.Maker[plan.Fixture]{
	bind.ChoiceOn(words.New("fixture.kind", "Kind"), func(s bind.Subject[plan.Fixture]) bind.Value[plan.FixtureKind] {
		return bind.Told(s, func(x plan.Fixture) plan.FixtureKind { return x.Kind }, part.ToFixtureKind)
	}, fixtureKinds),
	bind.FieldOf(words.New("fixture.width", "Width"), func(x *plan.Fixture) *unit.Length { return &x.Width }, bind.Lengths),
	bind.FieldOf(words.New("fixture.depth", "Depth"), func(x *plan.Fixture) *unit.Length { return &x.Depth }, bind.Lengths),
	bind.FieldOf(words.New("fixture.height", "Height"), func(x *plan.Fixture) *unit.Length { return &x.Height }, bind.Lengths),
	bind.FieldOf(words.New("fixture.bottom", "Above the floor"), func(x *plan.Fixture) *unit.Length { return &x.Bottom }, bind.Lengths),
}

var fixturePlace = distance[plan.Fixture]{
	at:    func(x *plan.Fixture) *plan.Anchor { return &x.At },
	from:  func(x *plan.Fixture) *plan.ID { return &x.From },
	width: func(x plan.Fixture) unit.Length { return x.Width },
}

func fixtureOnFace(x plan.Fixture) bool { return x.At.Part == plan.PartFace }

func isStairs(x plan.Fixture) bool { return x.Kind == plan.FixtureStairs }

func isSink(x plan.Fixture) bool { return x.Kind == plan.FixtureSink }

// mayBePrepared are those of which an edition asks at most for a provision.
func mayBePrepared(x plan.Fixture) bool {
	return x.Kind == plan.FixtureIsland || x.Kind == plan.FixturePeninsula
}

// mayBurn are the appliances that come for fuel too.
func mayBurn(x plan.Fixture) bool {
	return slices.Contains([]plan.FixtureKind{plan.FixtureRange, plan.FixtureDryer, plan.FixtureWaterHeater}, x.Kind)
}

// risers are counted; 0 is what nobody said.
func risers(c *bind.Context) bind.Spelling[int] {
	return bind.Whole(c, 0, plan.MaxRisers, words.New("risers.wanted", "write how many risers the stairs have, such as 14, or 0 where that is not known"))
}

// landings are counted; 0 is none, or what nobody said.
func landings(c *bind.Context) bind.Spelling[int] {
	return bind.Whole(c, 0, plan.MaxLandings, words.New("landings.wanted", "write on how many landings of the stairs a door or a passage opens, such as 1, or 0"))
}

// leadsRow is the choice of the other level that stairs join, or of none.
func leadsRow(s bind.Subject[plan.Fixture]) bind.Row {
	none := words.New("fixture.leads.none", "to no other level yet")
	return bind.Choice(s.Context, s.Say("fixture.leads", "Stairs lead"), s.Voice.Say(none),
		bind.Part(s, func(x *plan.Fixture) *plan.ID { return &x.Leads }),
		func() []bind.Option[plan.ID] {
			options := []bind.Option[plan.ID]{{Text: none}}
			_, own := s.Index.Plan().Fixture(s.ID())
			for _, l := range s.Index.Plan().Levels {
				if own != nil && l.ID != own.ID {
					options = append(options, bind.Option[plan.ID]{Value: l.ID, Text: words.New("fixture.leads.to", "to {0}", l.Name)})
				}
			}
			return options
		})
}

func fixtureKinds(*bind.Context) []bind.Option[plan.FixtureKind] {
	return bind.Options(part.All().FixtureIDs()...)
}
