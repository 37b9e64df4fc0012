package card

import (
	"studbay/app/look"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// sidePage shows one face of a room: what it is made of and how long it is.
var sidePage = page[plan.Side]{
	get: func(ix *index.Index, id plan.ID) *plan.Side {
		if ref, ok := ix.Side(id); ok {
			return ref.Side()
		}
		return nil
	},
	put: func(x plan.Side) edit.Edit { return edit.ChangeSide{Side: x} },
	head: func(s subject[plan.Side], x plan.Side) (string, string) {
		return look.Capital(s.say("side.length", "{0} face", s.Facing(x.ID))), s.say("side.second", "{0} · {1}", s.roomName(s.roomWith(x.ID)), x.Kind.Text())
	},
	found: func(f rule.Finding, id plan.ID) bool {
		return f.About == id || len(f.Stretches) > 0 && f.Stretches[0].Host == id
	},
	rows: []rowOf[plan.Side]{
		func(s subject[plan.Side]) row { return s.faceLength(s.id) },
		choiceRow(words.New("side.kind", "Made of"), func(x *plan.Side) *plan.SideKind { return &x.Kind },
			told(plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen)),
		fieldRow(words.New("side.studs", "Studs on center"), func(x *plan.Side) *unit.Length { return &x.Studs.Spacing }, thicknesses),
		fieldRow(words.New("side.depth", "Depth of studs"), func(x *plan.Side) *unit.Length { return &x.Studs.Depth }, thicknesses),
	},
	more: []rowOf[plan.Side]{
		fieldRow(words.New("side.first", "First stud at"), func(x *plan.Side) *unit.Length { return &x.Studs.First }, thicknesses),
		choiceRow(words.New("side.steel", "Steel studs"), func(x *plan.Side) *bool { return &x.Studs.Steel }, yesNo),
		choiceRow(words.New("side.rated", "Fire-rated"), func(x *plan.Side) *bool { return &x.Rated }, yesNo),
	},
	below: []rowOf[plan.Side]{func(s subject[plan.Side]) row {
		finish := bound(s, func(x *plan.Side) *[]plan.Layer { return &x.Finish })
		return s.folded(s.say("side.finish", "Finish, from the studs outward"), look.Grid, true, s.layers(finish, true))
	}},
}

// roomWith returns the room that a side is of, or nil.
func (c *Context) roomWith(side plan.ID) *plan.Room {
	if ref, ok := c.Index.Side(side); ok {
		return ref.Room
	}
	return nil
}
