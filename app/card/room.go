package card

import (
	"cmp"
	"slices"

	"studbay/app/look"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// roomPage shows a room: its name and use, its ceiling, its faces.
var roomPage = page[plan.Room]{
	get: (*index.Index).RoomOf,
	put: func(x plan.Room) edit.Edit { return edit.ChangeRoom{Room: x} },
	head: func(s subject[plan.Room], x plan.Room) (string, string) {
		return s.roomName(&x), s.say("room.second", "{0} · {1} · ceiling {2}", x.Use.Text(), x.Outline().Area(), x.Ceiling)
	},
	found: func(f rule.Finding, id plan.ID) bool { return f.Room == id && f.Opening == "" },
	rows: []rowOf[plan.Room]{
		boundRow(words.New("room.name", "Name"), nameOfRoom, texts),
		choiceRow(words.New("room.use", "Use"), func(x *plan.Room) *plan.Use { return &x.Use }, uses),
		saidRow(guessText),
		fieldRow(words.New("room.ceiling", "Ceiling height"), func(x *plan.Room) *unit.Length { return &x.Ceiling }, lengths),
		facesRow,
	},
	more: []rowOf[plan.Room]{
		fieldRow(words.New("room.prefix", "Tags begin with"), func(x *plan.Room) *string { return &x.Prefix }, texts),
		noteRow(func(x *plan.Room) *string { return &x.Note }),
	},
	below: []rowOf[plan.Room]{func(s subject[plan.Room]) row {
		floor := bound(s, func(x *plan.Room) *[]plan.Layer { return &x.Floor })
		return s.folded(s.say("room.floor", "Floor, from the subfloor up"), look.Grid, false, s.layers(floor, false))
	}},
}

// nameOfRoom binds a room's name: with it the plan may change what the room is used for.
func nameOfRoom(s subject[plan.Room]) binding[string] {
	return binding[string]{
		read: func() string { return s.now().Name },
		edit: func(name string) edit.Edit { return edit.RenameRoom{ID: s.id, Title: name} },
	}
}

// guessText tells where the use comes from as long as it is what the name tells.
func guessText(s subject[plan.Room]) string {
	use, tells := plan.UseOf(s.now().Name)
	switch {
	case use != s.now().Use || use == plan.UseUnknown:
		return s.say("room.use.stated", "Some checks depend on the use.")
	case tells:
		return s.say("room.use.guessed", "The use is guessed from the name; change it where it is another. Some checks depend on it.")
	}
	return s.say("room.use.usual", "The name tells no use; this one is taken until you choose. Some checks depend on it.")
}

// mostFaces bounds the faces whose lengths a room's card shows; each has its own card.
const mostFaces = 8

func facesRow(s subject[plan.Room]) row {
	ids := func() (ids []plan.ID) {
		for _, side := range s.now().Sides {
			ids = append(ids, side.ID)
		}
		return ids[:min(len(ids), mostFaces)]
	}
	return rowList(look.Grid, func() string { return joined(ids()) }, func() (rows []row) {
		for _, id := range ids() {
			rows = append(rows, s.faceLength(id))
		}
		return rows
	})
}

// faceLength is the length of one face, which moves the corner at its right.
func (c *Context) faceLength(id plan.ID) row {
	f := field(c, look.Capital(c.say("side.length", "{0} face", c.Facing(id))), binding[unit.Length]{
		read: func() unit.Length { return c.lengthOf(id) },
		edit: func(l unit.Length) edit.Edit { return edit.SetSideLength{Side: id, Length: l} },
	}, lengths(c))
	return row{f, f.Update}
}

// commonUses are those of most rooms of most houses: common practice.
var commonUses = []plan.Use{
	plan.UseBedroom, plan.UseBath, plan.UseKitchen, plan.UseLiving, plan.UseDining, plan.UseHall, plan.UseCloset, plan.UseLaundry,
}

// uses lists the uses of rooms: the common ones, then the others by their names.
func uses(c *Context) []option[plan.Use] {
	others := slices.DeleteFunc(slices.Clone(plan.Uses), func(u plan.Use) bool { return slices.Contains(commonUses, u) })
	slices.SortStableFunc(others, func(a, b plan.Use) int { return cmp.Compare(c.Voice.Say(a.Text()), c.Voice.Say(b.Text())) })
	all := told(slices.Concat(commonUses, others)...)(c)
	all[len(commonUses)].line = true
	return all
}
