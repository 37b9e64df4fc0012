package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// decisionPage shows a question that is open: what hangs on it, and a field that settles
// it.
var decisionPage = page[plan.Decision]{
	head: func(s bind.Subject[plan.Decision], _ plan.Decision) (string, string) {
		return s.Say("decision.card", "An open decision"), s.Say("decision.card.second", "Listed with the findings, and printed, until it is settled.")
	},
	rows: []bind.Maker[plan.Decision]{
		bind.FieldOf(words.New("decision.question", "What is open"), func(x *plan.Decision) *string { return &x.Question }, bind.Texts, bind.TwoLines),
		answerRow,
		bind.Note(func(x *plan.Decision) *string { return &x.Note }),
		bind.SaidOf(func(s bind.Subject[plan.Decision]) string {
			if len(s.Now().About) == 0 {
				return s.Say("decision.alone", "Nothing depends on it, so its answer is kept nowhere: write it where it belongs.")
			}
			return s.Say("decision.hangs", "The answer is kept in the note of what depends on it:")
		}),
	},
	below: []bind.Maker[plan.Decision]{
		func(s bind.Subject[plan.Decision]) bind.Row {
			return s.Links(look.Grid, func() []plan.ID { return s.Now().About }, s.NameOf)
		},
		bind.ButtonOf[plan.Decision](words.New("decision.drop", "Delete it without an answer"), "delete"),
	},
}

// answerRow is the field whose text settles the decision.
func answerRow(s bind.Subject[plan.Decision]) bind.Row {
	answer := bind.One(func() string { return "" }, func(text string) edit.Edit {
		return edit.SettleDecision{ID: s.ID(), Said: s.Say("decision.settled", "{0} {1}", s.Now().Question, text)}
	})
	return bind.Field(s.Context, s.Say("decision.answer", "Settled: it is"), answer, bind.Texts(s.Context), bind.Hint(s.Say("decision.answer.hint", "such as 3/8 in porcelain")))
}
