package card

import (
	"cmp"
	"slices"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/naming"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// roomPage shows a room: its name and use, its ceiling, its faces.
var roomPage = page[plan.Room]{
	get: (*index.Index).RoomOf,
	put: func(x plan.Room) edit.Edit { return edit.ChangeRoom{Room: x} },
	head: func(s bind.Subject[plan.Room], x plan.Room) (string, string) {
		return s.RoomName(&x), s.Say("room.second", "{0} · {1} · ceiling {2}", x.Use.Text(), x.Outline().Area(), x.Ceiling)
	},
	found: func(f rule.Finding, id plan.ID) bool { return f.Room == id && f.Opening == "" },
	rows: []bind.Maker[plan.Room]{
		bind.FieldOn(words.New("room.name", "Name"), nameOfRoom, bind.Texts),
		roomUse,
		bind.SaidOf(guessText),
		roomCeiling,
		bind.When(isGarage, bind.FieldOf(words.New("room.bays", "Vehicle bays"), func(x *plan.Room) *int { return &x.Bays }, bays)),
		bind.When(isGarage, bind.ChoiceOf(words.New("room.power", "Electric power"), func(x *plan.Room) *plan.Answer { return &x.Power }, answers)),
		finishedRow,
		bind.When(isOutdoors, bind.ChoiceOf(words.New("room.faces", "At the house's"), func(x *plan.Room) *plan.Facing { return &x.Faces }, facings)),
		facesRow,
	},
	more: []bind.Maker[plan.Room]{
		roomCondition,
		roomOverhead,
		bind.When(hasCeiling, bind.ChoiceOf(words.New("room.damp", "Damp"), func(x *plan.Room) *plan.Dampness { return &x.Damp }, bind.Among(plan.Dampnesses...))),
		bind.When(hasFourSides, tapedRoom),
		bind.FieldOf(words.New("room.prefix", "Tags begin with"), func(x *plan.Room) *string { return &x.Prefix }, bind.Texts),
		bind.Note(func(x *plan.Room) *string { return &x.Note }),
	},
	below: []bind.Maker[plan.Room]{
		bind.When(hasCeiling, joists),
		layers(words.New("room.floor", "Floor, from the subfloor up"), false, func(x *plan.Room) *[]plan.Layer { return &x.Floor }),
	},
	several: []bind.Maker[plan.Room]{roomUse, roomCeiling, roomCondition},
}

var (
	roomUse     = bind.ChoiceOf(words.New("room.use", "Use"), func(x *plan.Room) *plan.Use { return &x.Use }, uses)
	roomCeiling = bind.FieldOf(words.New("room.ceiling", "Ceiling height"), func(x *plan.Room) *unit.Length { return &x.Ceiling }, bind.Lengths)
)

// nameOfRoom is a room's name: with it the plan may change what the room is used for.
func nameOfRoom(s bind.Subject[plan.Room]) bind.Value[string] {
	return bind.Told(s, func(x plan.Room) string { return x.Name }, func(x plan.Room, name string) edit.Edit {
		return fill.RenameRoom(&x, name)
	})
}

// guessText tells where the use comes from as long as it is what the name tells, and what
// comes of none.
func guessText(s bind.Subject[plan.Room]) string {
	switch told := naming.UseOf(s.Now().Name); {
	case s.Now().Use == plan.UseUnknown:
		return s.Say("room.use.unknown", "Nobody said what this room is for, so most checks leave it out: choose its use.")
	case told == s.Now().Use:
		return s.Say("room.use.guessed", "The use is guessed from the name; change it where it is another. Some checks depend on it.")
	}
	return s.Say("room.use.stated", "Some checks depend on the use.")
}

func isGarage(x plan.Room) bool { return x.Use == plan.UseGarage }

// finishedRow asks of a room of a basement whether it is finished.
func finishedRow(s bind.Subject[plan.Room]) bind.Row {
	of := s.Now()
	if _, l := s.Index.Plan().Find(of.ID); !index.IsInBasement(l, &of) {
		return bind.Row{}
	}
	return bind.ChoiceOf(words.New("room.finished", "Finished"), func(x *plan.Room) *plan.Answer { return &x.Finished }, answers)(s)
}

// hasCeiling reports whether a room has framing overhead that boxes hang from.
func hasCeiling(x plan.Room) bool { return !isOutdoors(x) }

func isOutdoors(x plan.Room) bool { return x.Use == plan.UseOutdoors }

// bays are counted; 0 is what nobody said, and taken as one.
func bays(c *bind.Context) bind.Spelling[int] {
	return bind.Whole(c, 0, plan.MaxBays, words.New("bays.wanted", "write how many vehicles the garage has room for, such as 2, or 0 where that is not known"))
}

// facings say at which end of the house an outdoor area is.
func facings(*bind.Context) []bind.Option[plan.Facing] {
	return []bind.Option[plan.Facing]{
		{Value: plan.FacesUnsaid, Text: words.New("facing.unsaid", "not said")},
		{Value: plan.FacesFront, Text: words.New("facing.front", "front")},
		{Value: plan.FacesBack, Text: words.New("facing.back", "back")},
	}
}

func hasFourSides(x plan.Room) bool { return len(x.Sides) == 4 }

// tapedRoom is what a tape read in a room of four sides: along each, and across from corner to
// corner. Once all but the second diagonal is there the room is laid out by it.
func tapedRoom(s bind.Subject[plan.Room]) bind.Row {
	c := s.Context
	all := bind.Told(s, func(x plan.Room) geom.Taped { return x.Taped }, func(x plan.Room, t geom.Taped) edit.Edit {
		return edit.TapeRoom{Room: x.ID, Taped: t}
	})
	side := func(i int) words.Text { return s.Facing(s.Now().Sides[i%4].ID) }
	reading := func(label func() string, at func(*geom.Taped) *unit.Length) bind.Row {
		return bind.Named(c, label, bind.Of(all, at), bind.Clearable(bind.OrNothing(bind.Lengths(c))), bind.Hint(c.Say("tape.unread", "not taped")))
	}
	along := func(i int, at func(*geom.Taped) *unit.Length) bind.Row {
		return reading(func() string { return look.Capital(c.Say("tape.along", "{0} face, taped", side(i))) }, at)
	}
	across := func(i int, at func(*geom.Taped) *unit.Length) bind.Row {
		return reading(func() string {
			return c.Say("tape.across", "Corner {0}/{1} to corner {2}/{3}", side(i+3), side(i), side(i+1), side(i+2))
		}, at)
	}
	return s.Folded(c.Say("room.taped", "As taped: four lengths and a diagonal"), look.Grid, false,
		along(0, func(t *geom.Taped) *unit.Length { return &t.First }),
		along(1, func(t *geom.Taped) *unit.Length { return &t.Second }),
		along(2, func(t *geom.Taped) *unit.Length { return &t.Third }),
		along(3, func(t *geom.Taped) *unit.Length { return &t.Fourth }),
		across(0, func(t *geom.Taped) *unit.Length { return &t.Diagonal }),
		across(1, func(t *geom.Taped) *unit.Length { return &t.Other }),
		s.Said(func() string { return misclosureText(s) }),
	)
}

// misclosureText tells how well the readings go together.
func misclosureText(s bind.Subject[plan.Room]) string {
	by, ok := s.Now().Taped.Misclosure()
	switch {
	case !s.Now().Taped.IsWhole():
		return s.Say("room.taped.wanted", "With four lengths and the first diagonal the room is laid out as taped.")
	case !ok:
		return s.Say("room.taped.check", "Laid out as taped. The second diagonal would be a check.")
	case by < 0:
		return s.Say("room.taped.short", "Laid out as taped. The second diagonal reads {0} less than the rest makes it.", words.Height(-by))
	}
	return s.Say("room.taped.long", "Laid out as taped. The second diagonal reads {0} more than the rest makes it.", words.Height(by))
}

// mostFaces bounds the faces whose lengths a room's card shows; each has its own card.
const mostFaces = 8

func facesRow(s bind.Subject[plan.Room]) bind.Row {
	ids := func() (ids []plan.ID) {
		for _, side := range s.Now().Sides {
			ids = append(ids, side.ID)
		}
		return ids[:min(len(ids), mostFaces)]
	}
	return bind.ByID(look.Grid, ids, func(id plan.ID) bind.Row { return faceLength(s.Context, id) })
}

// faceLength is the length of one face, which moves the corner at its right.
func faceLength(c *bind.Context, id plan.ID) bind.Row {
	return bind.Field(c, look.Capital(c.Say("side.length", "{0} face", c.Facing(id))), bind.One(
		func() unit.Length { return lengthOf(c, id) },
		func(l unit.Length) edit.Edit { return edit.SetSideLength{Side: id, Length: l} },
	), bind.Lengths(c))
}

// commonUses are those of most rooms of most houses: common practice.
var commonUses = []plan.Use{
	plan.UseBedroom, plan.UseBath, plan.UseKitchen, plan.UseLiving, plan.UseDining, plan.UseHall, plan.UseCloset, plan.UseLaundry,
}

func uses(c *bind.Context) []bind.Option[plan.Use] { return UseOptions(c.Voice) }

// UseOptions lists the uses of rooms as options.
func UseOptions(voice words.Voice) []bind.Option[plan.Use] {
	all := bind.Options(Uses(voice)...)
	all[len(commonUses)].Line = true
	return all
}

// Uses lists the uses of rooms: the common ones, then the others by their names.
func Uses(voice words.Voice) []plan.Use {
	others := slices.DeleteFunc(slices.Clone(plan.Uses), func(u plan.Use) bool { return slices.Contains(commonUses, u) })
	slices.SortStableFunc(others, func(a, b plan.Use) int { return cmp.Compare(voice.Say(a.Text()), voice.Say(b.Text())) })
	return slices.Concat(commonUses, others)
}
