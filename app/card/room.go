package card

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// newRoomCard shows a room: its name and use, its ceiling, its faces.
func newRoomCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() plan.Room {
		if r := f.Index.RoomOf(id); r != nil {
			return *r
		}
		return plan.Room{ID: id}
	}
	if f.Index.RoomOf(id) == nil {
		return nil
	}
	change := func(do func(*plan.Room)) error {
		r := now()
		do(&r)
		return f.Window.Do(plan.ChangeRoom{Room: r})
	}
	f.heading = func() (string, string, bool) {
		r := f.Index.RoomOf(id)
		if r == nil {
			return "", "", false
		}
		return f.roomName(r), f.say("room.second", "{0} · {1} · ceiling {2}", r.Use.Text(), r.Outline().Area(), r.Ceiling), true
	}
	f.found = func(found fill.Finding) bool { return found.Room == id && found.Opening == "" }
	name := f.textField(f.say("room.name", "Name"), func() string { return now().Name }, func(text string) error {
		return f.Window.Do(plan.RenameRoom{ID: id, Title: text})
	})
	use := NewChoice(f.say("room.use", "Use"), string(now().Use), func() (options []Option) {
		for i, u := range f.uses() {
			options = append(options, Option{Label: capital(f.Voice.Say(u.Text())), Now: now().Use == u, Line: i == len(commonUses), Do: func() {
				f.shown(change(func(r *plan.Room) { r.Use = u }))
			}})
		}
		return options
	})
	ceiling := f.lengthField(f.say("room.ceiling", "Ceiling height"), func() unit.Length { return now().Ceiling }, func(l unit.Length) error {
		return change(func(r *plan.Room) { r.Ceiling = l })
	}, f.long)
	lines := []line{name, use, ceiling}
	for i := range now().Sides {
		if i < mostSides {
			lines = append(lines, f.sideLength(now().Sides[i].ID))
		}
	}
	prefix := f.textField(f.say("room.prefix", "Tags begin with"), func() string { return now().Prefix }, func(text string) error {
		return change(func(r *plan.Room) { r.Prefix = text })
	})
	floor := f.layers(func() []plan.Layer { return now().Floor }, func(l []plan.Layer) error {
		return change(func(r *plan.Room) { r.Floor = l })
	}, false)
	f.fields = append(f.fields, floor)
	note := f.noteField(func() string { return now().Note }, func(text string) error {
		return change(func(r *plan.Room) { r.Note = text })
	})
	f.lay(lines, []line{prefix, note}, NewFold(f.Context, f.say("room.floor", "Floor, from the subfloor up"), floor.Container))
	return f.ready()
}

// commonUses are those of most rooms of most houses: common practice.
var commonUses = []plan.Use{
	plan.UseBedroom, plan.UseBath, plan.UseKitchen, plan.UseLiving, plan.UseDining, plan.UseHall, plan.UseCloset, plan.UseLaundry,
}

// uses lists the uses of rooms: the common ones, then the others by their names.
func (c Context) uses() []plan.Use {
	others := slices.DeleteFunc(slices.Clone(plan.Uses), func(u plan.Use) bool { return slices.Contains(commonUses, u) })
	slices.SortStableFunc(others, func(a, b plan.Use) int { return cmp.Compare(c.Voice.Say(a.Text()), c.Voice.Say(b.Text())) })
	return append(slices.Clone(commonUses), others...)
}

// mostSides bounds the faces whose lengths a room's card shows; each has its own card.
const mostSides = 8

// shown drops an error that the window has shown already.
func (c Context) shown(error) {}

// sideLength is the length of one face, which moves the corner at its right.
func (c *form) sideLength(id plan.ID) *Field {
	label := capital(c.say("side.length", "{0} face", c.Facing(id)))
	return c.lengthField(label, func() unit.Length {
		if ref, ok := c.Index.Side(id); ok {
			return ref.Line().Length()
		}
		return 0
	}, func(l unit.Length) error { return c.Window.Do(plan.SetSideLength{Side: id, Length: l}) }, c.long)
}

func (c Context) noteField(read func() string, write func(string) error) *Field {
	return NewField(c, Spec{
		Label: c.say("card.note", "Note"), Read: read, Lines: 2,
		Write: func(text string) error { return c.fault(write(strings.TrimSpace(text))) },
	})
}

// newSideCard shows one face of a room: what it is made of and how long it is.
func newSideCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	if _, ok := f.Index.Side(id); !ok {
		return nil
	}
	now := func() plan.Side {
		if ref, ok := f.Index.Side(id); ok {
			return *ref.Side()
		}
		return plan.Side{ID: id}
	}
	change := func(do func(*plan.Side)) error {
		s := now()
		do(&s)
		return f.Window.Do(plan.ChangeSide{Side: s})
	}
	f.heading = func() (string, string, bool) {
		ref, ok := f.Index.Side(id)
		if !ok {
			return "", "", false
		}
		title := capital(f.say("side.length", "{0} face", f.Facing(id)))
		return title, f.say("side.second", "{0} · {1}", f.roomName(ref.Room), ref.Side().Kind.Text()), true
	}
	f.found = func(found fill.Finding) bool {
		return found.About == id || len(found.Stretches) > 0 && found.Stretches[0].Side == id
	}
	kind := NewChoice(f.say("side.kind", "Made of"), "", func() (options []Option) {
		for _, k := range []plan.SideKind{plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen} {
			options = append(options, Option{Label: capital(f.Voice.Say(k.Text())), Now: now().Kind == k, Do: func() {
				f.shown(change(func(s *plan.Side) { s.Kind = k }))
			}})
		}
		return options
	})
	spacing := f.thinField(f.say("side.studs", "Studs on centre"), func() unit.Length { return now().Studs.Spacing }, func(l unit.Length) error {
		return change(func(s *plan.Side) { s.Studs.Spacing = l })
	})
	depth := f.thinField(f.say("side.depth", "Depth of studs"), func() unit.Length { return now().Studs.Depth }, func(l unit.Length) error {
		return change(func(s *plan.Side) { s.Studs.Depth = l })
	})
	first := f.thinField(f.say("side.first", "First stud at"), func() unit.Length { return now().Studs.First }, func(l unit.Length) error {
		return change(func(s *plan.Side) { s.Studs.First = l })
	})
	steel := NewChoice(f.say("side.steel", "Steel studs"), "", f.yesNo(func() bool { return now().Studs.Steel }, func(on bool) {
		f.shown(change(func(s *plan.Side) { s.Studs.Steel = on }))
	}))
	rated := NewChoice(f.say("side.rated", "Fire-rated"), "", f.yesNo(func() bool { return now().Rated }, func(on bool) {
		f.shown(change(func(s *plan.Side) { s.Rated = on }))
	}))
	finish := f.layers(func() []plan.Layer { return now().Finish }, func(l []plan.Layer) error {
		return change(func(s *plan.Side) { s.Finish = l })
	}, true)
	f.fields = append(f.fields, finish)
	layers := NewFold(f.Context, f.say("side.finish", "Finish, from the studs outward"), finish.Container)
	layers.SetOpen(true)
	f.lay([]line{f.sideLength(id), kind, spacing, depth}, []line{first, steel, rated}, layers)
	return f.ready()
}

// areaOf sums the areas of rooms.
func areaOf(rooms []*plan.Room) (sum unit.Area) {
	for _, r := range rooms {
		sum = sum.Add(geom.Polygon(r.Outline()).Area())
	}
	return sum
}

// newSeveralCard says how many things are chosen together.
func newSeveralCard(c Context, chosen []plan.ID) Card {
	f := &form{Context: c}
	f.heading = func() (string, string, bool) {
		return f.say("several.title", "{0} chosen", len(chosen)),
			f.say("several.second", "Drag to move them together, Delete takes them out."), true
	}
	height := f.lengthField(f.say("several.height", "Height of all"), func() unit.Length { return f.sameHeight(chosen) }, func(l unit.Length) error {
		return f.Window.Do(plan.Steps{Label: words.New("edit.heights", "Set heights"), Edits: f.heights(chosen, l)})
	}, func(l unit.Length) string {
		if l == 0 {
			return ""
		}
		return f.short(l)
	})
	f.lay([]line{height}, nil)
	return f.ready()
}

func (c Context) sameHeight(chosen []plan.ID) (same unit.Length) {
	for _, id := range chosen {
		o, _ := c.Index.Plan().Opening(id)
		switch {
		case o == nil || o.At.Part != plan.PartFace:
		case same == 0:
			same = o.Height.Value
		case o.Height.Value != same:
			return 0
		}
	}
	return same
}

func (c Context) heights(chosen []plan.ID, l unit.Length) (edits []plan.Edit) {
	for _, id := range chosen {
		if o, _ := c.Index.Plan().Opening(id); o != nil && o.At.Part == plan.PartFace {
			h := o.Height
			h.Value = l
			edits = append(edits, plan.SetHeight{ID: id, Height: h})
		}
	}
	return edits
}
