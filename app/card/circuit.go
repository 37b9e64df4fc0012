package card

import (
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/words"
)

// circuitPage shows a circuit: its breaker and what hangs on it.
var circuitPage = page[plan.Circuit]{
	head: func(s subject[plan.Circuit], x plan.Circuit) (string, string) {
		openings := 0
		for _, o := range s.Index.Plan().Openings() {
			if o.Circuit == x.ID {
				openings++
			}
		}
		return s.say("circuit.card", "Circuit {0}", x.Number), s.say("circuit.second", "{0} A, {1} V · {2}", x.Amps, x.Volts, work.OpeningsText(openings))
	},
	rows: []rowOf[plan.Circuit]{
		fieldRow(words.New("circuit.number", "Number at the panel"), func(x *plan.Circuit) *string { return &x.Number }, texts),
		fieldRow(words.New("circuit.name", "What it serves"), func(x *plan.Circuit) *string { return &x.Name }, texts),
		fieldRow(words.New("circuit.amps", "Amperes"), func(x *plan.Circuit) *int { return &x.Amps }, counts),
		fieldRow(words.New("circuit.volts", "Volts"), func(x *plan.Circuit) *int { return &x.Volts }, counts),
		fieldRow(words.New("circuit.poles", "Poles"), func(x *plan.Circuit) *int { return &x.Poles }, counts),
		choiceRow(words.New("circuit.gfci", "GFCI breaker"), func(x *plan.Circuit) *bool { return &x.GFCI }, yesNo),
		choiceRow(words.New("circuit.afci", "AFCI breaker"), func(x *plan.Circuit) *bool { return &x.AFCI }, yesNo),
	},
}
