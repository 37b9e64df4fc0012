package card

import (
	"slices"

	"studbay/app/card/bind"
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
	head: func(s bind.Subject[plan.Side], x plan.Side) (string, string) {
		return look.Capital(s.Say("side.length", "{0} face", s.Facing(x.ID))), s.Say("side.second", "{0} · {1}", roomNameOf(s.Context, x.ID), x.Kind.Text())
	},
	found: func(f rule.Finding, id plan.ID) bool {
		return f.About == id || len(f.Stretches) > 0 && f.Stretches[0].Host == id
	},
	rows: slices.Concat([]bind.Maker[plan.Side]{func(s bind.Subject[plan.Side]) bind.Row { return faceLength(s.Context, s.ID()) }}, framing, []bind.Maker[plan.Side]{taped}),
	more: slices.Concat([]bind.Maker[plan.Side]{
		bind.FieldOf(words.New("side.first", "First stud at"), func(x *plan.Side) *unit.Length { return &x.Studs.First }, bind.Thicknesses),
		bind.ChoiceOf(words.New("side.from", "Studs laid out from"), func(x *plan.Side) *bool { return &x.Studs.FromRight }, ends),
	}, buildUp, []bind.Maker[plan.Side]{conditionRow, zones, probes, trims}),
	below:   []bind.Maker[plan.Side]{finish},
	several: slices.Concat(framing, buildUp, []bind.Maker[plan.Side]{conditionRow, finish}),
}

// SideKinds are what a side can be made of.
var SideKinds = bind.Options(plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen)

var (
	framing = []bind.Maker[plan.Side]{
		bind.ChoiceOf(words.New("side.kind", "Made of"), func(x *plan.Side) *plan.SideKind { return &x.Kind },
			func(*bind.Context) []bind.Option[plan.SideKind] { return SideKinds }),
		bind.FieldOf(words.New("side.studs", "Studs on center"), func(x *plan.Side) *unit.Length { return &x.Studs.Spacing }, bind.Thicknesses),
		bind.FieldOf(words.New("side.depth", "Depth of studs"), func(x *plan.Side) *unit.Length { return &x.Studs.Depth }, bind.Thicknesses),
	}
	buildUp = []bind.Maker[plan.Side]{
		bind.ChoiceOf(words.New("side.steel", "Steel studs"), func(x *plan.Side) *bool { return &x.Studs.Steel }, bind.YesNo),
		bind.ChoiceOf(words.New("side.rated", "Fire-rated"), func(x *plan.Side) *bool { return &x.Rated }, bind.YesNo),
	}
	finish = layers(words.New("side.finish", "Finish, from the studs outward"), true, func(x *plan.Side) *[]plan.Layer { return &x.Finish })
)

// roomNameOf returns the name of the room that a side is of.
func roomNameOf(c *bind.Context, side plan.ID) string {
	if ref, ok := c.Index.Side(side); ok {
		return c.RoomName(ref.Room)
	}
	return ""
}
