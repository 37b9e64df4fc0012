package light

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// LitRoom looks for rooms without a light on a switch.
var LitRoom = rule.Rule{
	ID:     "lit-room",
	Title:  words.New("rule.lit-room.title", "A light on a switch in each room"),
	Figure: "lit-room",
	Doc:    words.New("rule.lit-room.doc", `Each habitable room, kitchen and bathroom has a light that a wall switch puts on, from 2023 on each laundry too. Outside kitchens, baths and laundries a receptacle that a switch controls may stand in for it. Utility rooms, attics and unfinished basements in which something stands have one as well. A room with a light and a switch in it or next to it of which nobody says that one is for the other is told in a note. Not checked: that the switch is near the entrance, which the route tells of, lights on sensors, crawl spaces, and garden houses.`),
	Leaves: leavesLitRoom,
	Level:  rule.OnLevel(seeLit, checkLitRoom),
}

// habitable are the rooms in which people live, by common reading.
var habitable = []plan.Use{
	plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor, plan.UseLibrary, plan.UseDen, plan.UseSunroom,
	plan.UseBedroom, plan.UseRecreation, plan.UseBreakfast, plan.UseOffice, plan.UseBath,
}

// stores are those that want a light where they hold something, 210.70(A)(3) and (C).
var stores = []plan.Use{plan.UseUtility, plan.UseAttic, plan.UseBasement}

func leavesLitRoom(r *plan.Room, fig *code.Figures) words.Text {
	uses := slices.Concat(habitable, stores)
	if fig.Lighting.LitLaundry {
		uses = append(uses, plan.UseLaundry)
	}
	return rule.OnlyIn(uses...)(r, fig)
}

func checkLitRoom(v *lit, fig *code.Figures) (found []rule.Finding) {
	v.prepare()
	for _, r := range v.Rooms {
		isStore := slices.Contains(stores, r.Use)
		if !leavesLitRoom(r, fig).IsZero() || isStore && !v.holds(r) {
			continue
		}
		f, ok := unlit(v.stateOf(r, standsIn(r.Use)), r)
		if !ok {
			continue
		}
		if isStore {
			f.Section = fig.Title + " " + fig.Section("lit-store")
		}
		found = append(found, f)
	}
	return found
}

// standsIn reports whether in rooms of a use a receptacle on a switch may stand in for a
// light, 210.70(A)(1) exception 1.
func standsIn(u plan.Use) bool {
	return u != plan.UseKitchen && u != plan.UseBath && u != plan.UseLaundry
}

// holds reports whether anything stands in a room.
func (v *lit) holds(r *plan.Room) bool {
	if len(v.ix.FixturesOn(r.ID)) > 0 {
		return true
	}
	return slices.ContainsFunc(r.Sides, func(s *plan.Side) bool { return len(v.ix.FixturesOn(s.ID)) > 0 })
}

// unlit is the finding of a room by what is known of its light.
func unlit(s state, r *plan.Room) (f rule.Finding, ok bool) {
	f = rule.Finding{Severity: rule.Stop, Room: r.ID, About: r.ID}
	switch s {
	case noLight:
		f.Message = words.New("rule.lit-room.none", "{0} has no light", r.Name)
		f.Why = words.New("rule.lit-room.none.why", "It needs at least one, on a wall switch.")
	case noSwitch:
		f.Message = words.New("rule.lit-room.switch", "{0} has a light and no switch for it", r.Name)
		f.Why = words.New("rule.lit-room.switch.why", "There is none in the room, nor in a room next to it.")
	case notSaid:
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.lit-room.unsaid", "Nobody says which switch puts on a light in {0}", r.Name)
		f.Why = words.New("rule.lit-room.unsaid.why", "Connect the light with its switch.")
	default:
		return f, false
	}
	return f, true
}
