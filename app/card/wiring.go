package card

import (
	"slices"

	"studbay/app/card/bind"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// cablePage shows a cable: what it is and where it runs.
var cablePage = page[plan.Cable]{
	head: func(s bind.Subject[plan.Cable], x plan.Cable) (string, string) {
		return s.Say("cable.title", "Cable {0}/{1}", x.Size, x.Wires), s.Say("cable.second", "{0} to {1}", s.TagOf(x.From), s.TagOf(x.To))
	},
	made: func(x plan.Cable) any { return x.Existing },
	rows: slices.Concat(cableRows, []bind.Maker[plan.Cable]{
		spaceRow(func(x plan.Cable) plan.ID { return x.From }, func(x *plan.Cable) *int { return &x.FromSpace }),
		spaceRow(func(x plan.Cable) plan.ID { return x.To }, func(x *plan.Cable) *int { return &x.ToSpace }),
		bind.FieldOf(words.New("cable.length", "Length, measured"), func(x *plan.Cable) *unit.Length { return &x.Length }, measured),
	}),
	several: cableRows,
}

var cableRows = []bind.Maker[plan.Cable]{
	bind.FieldOf(words.New("cable.size", "Wire size, AWG"), func(x *plan.Cable) *unit.AWG { return &x.Size }, bind.WireSizes),
	bind.FieldOf(words.New("cable.wires", "Insulated conductors"), func(x *plan.Cable) *int { return &x.Wires }, bind.Counts),
	cableGround,
	cableIs,
	cableWay,
	bind.ChoiceOf(words.New("cable.plated", "Steel plates at its holes"), func(x *plan.Cable) *bool { return &x.Plated }, bind.YesNo),
}

// spaceRow is the choice of the space that a cable enters at an end whose box barriers part.
func spaceRow(end func(plan.Cable) plan.ID, at func(*plan.Cable) *int) bind.Maker[plan.Cable] {
	return func(s bind.Subject[plan.Cable]) bind.Row {
		o, _ := s.Index.Plan().Opening(end(s.Now()))
		if o == nil || len(o.Assembly.Barriers) == 0 {
			return bind.Row{}
		}
		return bind.Choice(s.Context, s.Say("cable.space", "In {0} it enters", o.Tag), "", bind.Part(s, at), func() []bind.Option[int] {
			options := []bind.Option[int]{{Text: words.New("cable.space.untold", "not told")}}
			for n := range len(o.Assembly.Barriers) + 1 {
				options = append(options, bind.Option[int]{Value: n + 1, Text: words.New("cable.space.of", "space {0} of {1}", n+1, len(o.Assembly.Barriers)+1)})
			}
			return options
		})
	}
}

// measured are lengths of which none is an empty line.
func measured(c *bind.Context) bind.Spelling[unit.Length] {
	return bind.Clearable(bind.OrNothing(bind.Lengths(c)))
}

// throughs are how the receptacles of a circuit are joined.
func throughs(*bind.Context) []bind.Option[bool] {
	return []bind.Option[bool]{
		{Value: false, Text: words.New("circuit.through.no", "on tails from each splice")},
		{Value: true, Text: words.New("circuit.through.yes", "the current goes through them")},
	}
}

// flags are what may be said of a breaker, or left unsaid.
var flags = bind.Among(plan.FlagUnsaid, plan.FlagYes, plan.FlagNo)

// circuitPage shows a circuit: its breaker and what hangs on it.
var circuitPage = page[plan.Circuit]{
	head: func(s bind.Subject[plan.Circuit], x plan.Circuit) (string, string) {
		openings := 0
		for _, o := range s.Index.Plan().Openings() {
			if o.Circuit == x.ID {
				openings++
			}
		}
		return s.Say("circuit.card", "Circuit {0}", x.Number), s.Say("circuit.second", "{0} A, {1} V · {2}", x.Amps, x.Volts, work.OpeningsText(openings))
	},
	rows: []bind.Maker[plan.Circuit]{
		bind.FieldOf(words.New("circuit.number", "Number at the panel"), func(x *plan.Circuit) *string { return &x.Number }, bind.Texts),
		bind.FieldOf(words.New("circuit.name", "What it serves"), func(x *plan.Circuit) *string { return &x.Name }, bind.Texts),
		bind.ChoiceOf(words.New("circuit.role", "It is there for"), func(x *plan.Circuit) *plan.CircuitRole { return &x.Role }, bind.Among(plan.CircuitRoles...)),
		bind.FieldOf(words.New("circuit.amps", "Amperes"), func(x *plan.Circuit) *int { return &x.Amps }, bind.Counts),
		bind.FieldOf(words.New("circuit.volts", "Volts"), func(x *plan.Circuit) *int { return &x.Volts }, bind.Counts),
		bind.FieldOf(words.New("circuit.poles", "Poles"), func(x *plan.Circuit) *int { return &x.Poles }, bind.Counts),
		bind.ChoiceOf(words.New("circuit.gfci", "GFCI breaker"), func(x *plan.Circuit) *plan.Flag { return &x.GFCI }, flags),
		bind.ChoiceOf(words.New("circuit.afci", "AFCI breaker"), func(x *plan.Circuit) *plan.Flag { return &x.AFCI }, flags),
		bind.ChoiceOf(words.New("circuit.through", "Its receptacles"), func(x *plan.Circuit) *bool { return &x.Through }, throughs),
	},
}
