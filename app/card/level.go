package card

import (
	"studbay/app/work"
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
	head: func(s subject[plan.Level], x plan.Level) (string, string) {
		return x.Name, s.say("level.second", "{0} · {1}", work.RoomsText(x.Rooms.Len()), work.OpeningsText(x.Openings.Len()))
	},
	rows: []rowOf[plan.Level]{
		fieldRow(words.New("level-form.name", "Name"), func(x *plan.Level) *string { return &x.Name }, texts),
		fieldRow(words.New("level.elevation", "Subfloor at"), func(x *plan.Level) *unit.Length { return &x.Elevation }, lengths),
		saidRow(func(s subject[plan.Level]) string {
			return s.say("level.above", "Measured from the subfloor of the lowest level.")
		}),
	},
	below: []rowOf[plan.Level]{buttonRow[plan.Level](words.New("level.out", "Delete the level"), "delete")},
}
