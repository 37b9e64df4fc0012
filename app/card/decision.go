package card

import (
	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// decisionPage shows a question that is open: what hangs on it, and a field that settles
// it.
var decisionPage = page[plan.Decision]{
	head: func(s subject[plan.Decision], _ plan.Decision) (string, string) {
		return s.say("decision.card", "An open decision"), s.say("decision.card.second", "Listed with the findings, and printed, until it is settled.")
	},
	rows: []rowOf[plan.Decision]{
		fieldRow(words.New("decision.question", "What is open"), func(x *plan.Decision) *string { return &x.Question }, texts, twoLines),
		answerRow,
		noteRow(func(x *plan.Decision) *string { return &x.Note }),
		saidRow(func(s subject[plan.Decision]) string {
			if len(s.now().About) == 0 {
				return s.say("decision.alone", "Nothing depends on it, so its answer is kept nowhere: write it where it belongs.")
			}
			return s.say("decision.hangs", "The answer is kept in the note of what depends on it:")
		}),
	},
	below: []rowOf[plan.Decision]{
		func(s subject[plan.Decision]) row {
			return s.links(look.Grid, func() []plan.ID { return s.now().About }, s.nameOfThing)
		},
		buttonRow[plan.Decision](words.New("decision.drop", "Delete it without an answer"), "delete"),
	},
}

// answerRow is the field whose text settles the decision.
func answerRow(s subject[plan.Decision]) row {
	answer := binding[string]{
		read: func() string { return "" },
		edit: func(text string) edit.Edit { return s.settled(s.now(), text) },
	}
	f := field(s.Context, s.say("decision.answer", "Settled: it is"), answer, texts(s.Context), hint(s.say("decision.answer.hint", "such as 3/8 in porcelain")))
	return row{f, f.Update}
}

// settled is the edit that settles a decision with an answer.
func (c *Context) settled(x plan.Decision, answer string) edit.Edit {
	return edit.SettleDecision{ID: x.ID, Said: c.say("decision.settled", "{0} {1}", x.Question, answer)}
}
