package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/words"
)

// amendmentPage shows a local amendment: what it changes, to what, and why.
var amendmentPage = page[plan.Amendment]{
	head: func(s bind.Subject[plan.Amendment], x plan.Amendment) (string, string) {
		second := s.Say("amendment.figure", "Another figure than the edition's, printed with its reason.")
		if x.Rule != "" {
			second = s.Say("amendment.rule", "This rule is turned off, which is printed with its reason.")
		}
		return look.Capital(s.Voice.Say(fill.AmendmentName(x))), second
	},
	rows: []bind.Maker[plan.Amendment]{
		bind.When(func(x plan.Amendment) bool { return x.Figure != "" },
			amendedRow(words.New("amendment.value", "Value"), func(x *plan.Amendment) *string { return &x.Value })),
		amendedRow(words.New("waiver.reason", "Reason"), func(x *plan.Amendment) *string { return &x.Reason }),
	},
	below: []bind.Maker[plan.Amendment]{bind.ButtonOf[plan.Amendment](words.New("amendment.back", "Remove it"), "delete")},
}

// amendedRow is a field of a part of an amendment that the plan's edition must take.
func amendedRow(label words.Text, at func(*plan.Amendment) *string) bind.Maker[plan.Amendment] {
	return func(s bind.Subject[plan.Amendment]) bind.Row {
		taken := bind.Texts(s.Context).Checked(func(text string) error {
			x := s.Now()
			*at(&x) = text
			return look.Said(s.Voice, fill.CheckAmendment(s.Index.Plan().Header.Edition, x))
		})
		return bind.Field(s.Context, s.Voice.Say(label), bind.Part(s, at), taken)
	}
}
