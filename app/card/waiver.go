package card

import (
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/words"
)

// waiverPage shows a finding that was set aside: by whom and why.
var waiverPage = page[plan.Waiver]{
	head: func(s subject[plan.Waiver], x plan.Waiver) (string, string) {
		return s.say("waiver.card", "Set aside: {0}", ruleName(x.Rule)), s.nameOfThing(x.About)
	},
	rows: []rowOf[plan.Waiver]{
		fieldRow(words.New("waiver.reason", "Reason"), func(x *plan.Waiver) *string { return &x.Reason }, texts),
		fieldRow(words.New("waiver.by", "Who decided"), func(x *plan.Waiver) *string { return &x.By }, texts),
		fieldRow(words.New("plan.date", "Date"), func(x *plan.Waiver) *string { return &x.Date }, texts),
		saidRow(func(s subject[plan.Waiver]) string {
			return s.say("waiver.still", "It stays in the list and on the sheets, with its reason, until it is restored.")
		}),
	},
	below: []rowOf[plan.Waiver]{buttonRow[plan.Waiver](words.New("waiver.back", "Restore it"), "delete")},
}

// ruleName is the title of a rule, or its ID where it is not known.
func ruleName(id string) words.Text {
	for _, r := range fill.Rules {
		if r.ID == id {
			return r.Title
		}
	}
	return words.New("plain", "{0}", id)
}
