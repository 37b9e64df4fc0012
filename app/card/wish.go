package card

import (
	"studbay/app/card/bind"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/tell"
)

// wishPage shows what the client said in the walk-through, as it was given.
var wishPage = page[plan.Wish]{
	head: func(s bind.Subject[plan.Wish], x plan.Wish) (string, string) {
		return s.Say("wish.card", "The client: {0}", x.Kind.Text()), s.NameOf(x.About)
	},
	rows: []bind.Maker[plan.Wish]{
		bind.ChoiceOf(words.New("wish.kind", "Said"), func(x *plan.Wish) *plan.WishKind { return &x.Kind }, bind.Among(plan.WishKinds...)),
		bind.When(func(x plan.Wish) bool { return x.To != nil }, bind.SaidOf(func(s bind.Subject[plan.Wish]) string {
			x := s.Now()
			return s.Voice.Say(tell.WishedText(s.Index, &x))
		})),
		bind.Note(func(x *plan.Wish) *string { return &x.Note }),
		bind.FieldOf(words.New("wish.by", "By"), func(x *plan.Wish) *string { return &x.By }, bind.Texts),
		bind.FieldOf(words.New("plan.date", "Date"), func(x *plan.Wish) *string { return &x.Date }, bind.Texts),
	},
	below: []bind.Maker[plan.Wish]{bind.ButtonOf[plan.Wish](words.New("wish.delete", "Delete it"), "delete")},
}
