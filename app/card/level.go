package card

import (
	"studbay/app/card/bind"
	"studbay/app/work"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// levelPage shows a storey: its name and how high it is.
var levelPage = page[plan.Level]{
	get: func(ix *index.Index, id plan.ID) *plan.Level { return ix.Plan().Level(id) },
	put: func(x plan.Level) edit.Edit {
		return edit.ChangeLevel{ID: x.ID, Title: x.Name, Elevation: x.Elevation}
	},
	head: func(s bind.Subject[plan.Level], x plan.Level) (string, string) {
		return x.Name, s.Say("level.second", "{0} · {1}", work.RoomsText(x.Rooms.Len()), work.OpeningsText(x.Openings.Len()))
	},
	rows: []bind.Maker[plan.Level]{
		bind.FieldOf(words.New("level-form.name", "Name"), func(x *plan.Level) *string { return &x.Name }, bind.Texts),
		bind.FieldOf(words.New("level.elevation", "Subfloor at"), func(x *plan.Level) *unit.Length { return &x.Elevation }, bind.Lengths),
		bind.SaidOf(func(s bind.Subject[plan.Level]) string {
			return s.Say("level.above", "Measured from the subfloor of the lowest level.")
		}),
	},
	found: func(f rule.Finding, id plan.ID) bool { return f.About == id },
	below: []bind.Maker[plan.Level]{bind.ButtonOf[plan.Level](words.New("level.out", "Delete the level"), "delete")},
}
