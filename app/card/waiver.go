package card

import (
	"studbay/app/card/bind"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/words"
)

// waiverPage shows a finding that was set aside: by whom and why.
var waiverPage = page[plan.Waiver]{
	head: func(s bind.Subject[plan.Waiver], x plan.Waiver) (string, string) {
		return s.Say("waiver.card", "Set aside: {0}", fill.RuleName(x.Rule)), s.NameOf(x.About)
	},
	rows: []bind.Maker[plan.Waiver]{
		bind.FieldOf(words.New("waiver.reason", "Reason"), func(x *plan.Waiver) *string { return &x.Reason }, bind.Texts),
		bind.FieldOf(words.New("waiver.by", "Who decided"), func(x *plan.Waiver) *string { return &x.By }, bind.Texts),
		bind.FieldOf(words.New("plan.date", "Date"), func(x *plan.Waiver) *string { return &x.Date }, bind.Texts),
		bind.SaidOf(func(s bind.Subject[plan.Waiver]) string {
			return s.Say("waiver.still", "It stays in the list and on the sheets, with its reason, until it is restored.")
		}),
	},
	below: []bind.Maker[plan.Waiver]{bind.ButtonOf[plan.Waiver](words.New("waiver.back", "Restore it"), "delete")},
}
