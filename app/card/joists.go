package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/table"
)

// joists is where those of a room's ceiling are: the wall that they run beside, and from it
// by spacing or one by one as a tape found them.
func joists(s bind.Subject[plan.Room]) bind.Row {
	length := func(at func(*plan.Joists) *unit.Length) bind.Value[unit.Length] {
		return bind.Part(s, func(x *plan.Room) *unit.Length { return at(&x.Joists) })
	}
	beside := bind.Part(s, func(x *plan.Room) *plan.ID { return &x.Joists.Along })
	readings := bind.Told(s, func(x plan.Room) (at []unit.Length) {
		for _, p := range x.Joists.Places {
			at = append(at, p.At)
		}
		return at
	}, func(x plan.Room, at []unit.Length) edit.Edit { return frame.JoistsTaped(x, at) })
	return s.Folded(s.Say("room.joists", "Joists of the ceiling"), look.Grid, false,
		bind.Choice(s.Context, s.Say("room.joists.beside", "They run beside"), "", beside, func() []bind.Option[plan.ID] { return wallsOf(s) }),
		bind.Field(s.Context, s.Say("room.joists.spacing", "Joists on center"), length(func(j *plan.Joists) *unit.Length { return &j.Spacing }), bind.Thicknesses(s.Context)),
		bind.Field(s.Context, s.Say("room.joists.first", "First joist at"), length(func(j *plan.Joists) *unit.Length { return &j.First }), bind.Thicknesses(s.Context)),
		bind.Field(s.Context, s.Say("room.joists.depth", "Depth of joists"), length(func(j *plan.Joists) *unit.Length { return &j.Depth }), bind.Thicknesses(s.Context)),
		bind.Field(s.Context, s.Say("room.joists.taped", "Joists taped at"), readings, tapeReadings(s.Context), bind.TwoLines, bind.Hint(tapeHint(s.Context))),
		s.Said(func() string { return joistsText(s) }),
	)
}

// wallsOf lists the sides of a room to choose among, and that none is said.
func wallsOf(s bind.Subject[plan.Room]) []bind.Option[plan.ID] {
	all := []bind.Option[plan.ID]{{Text: words.New("room.joists.unsaid", "not known")}}
	for _, side := range s.Now().Sides {
		all = append(all, bind.Option[plan.ID]{Value: side.ID, Text: words.New("side.length", "{0} face", s.Facing(side.ID))})
	}
	return all
}

// joistsText says how well the joists of a ceiling are known, or what is missing.
func joistsText(s bind.Subject[plan.Room]) string {
	x := s.Now()
	switch {
	case x.SideAt(x.Joists.Along) < 0:
		return s.Say("room.joists.wall", "Not known: choose the wall that the joists run beside. Places are told from it, to the middle of each joist.")
	case len(x.Joists.Places) > 0:
		return s.Say("room.joists.measured", "{0} joists, measured from the wall that they run beside.", len(x.Joists.Places))
	case x.Joists.Spacing == 0:
		return s.Say("room.joists.none", "Not known: enter their spacing, or tape them.")
	case x.Joists.First == 0:
		return s.Say("room.joists.assumed", "Assumed: the first is one spacing from that wall. Verify it with a tape.")
	}
	return s.Say("room.joists.stated", "Entered: the first where you said, then by the spacing.")
}

// inCeiling is how a box in a ceiling is held, and between which joists it is.
func inCeiling(s opening) bind.Row {
	lines := look.Column(look.Grid / 2)
	return bind.Row{Object: lines, Update: func() {
		lines.Objects = nil
		defer lines.Refresh()
		now := s.Now()
		room := s.Index.RoomOf(now.At.Host)
		if now.At.Part != plan.PartCeiling || room == nil || now.IsGone() {
			return
		}
		h := frame.HoldIn(&now, room)
		held := table.Held(h.By)
		if held.IsZero() {
			return
		}
		lines.Add(look.HairLine())
		lines.Add(look.NewText(s.Say("in-ceiling.title", "In the ceiling"), look.Title))
		for _, line := range overhead(s, room, h) {
			lines.Add(look.NewParagraph(line, look.Second, s.Width))
		}
	}}
}

// overhead says how a box in a ceiling is held, a line each.
func overhead(s opening, room *plan.Room, h frame.Hold) (all []string) {
	if !h.HasBay {
		return []string{
			s.Say("in-ceiling.held", "Held: {0}.", table.Held(h.By)),
			s.Say("in-ceiling.unknown", "Nobody tells where the joists are: enter them on the card of the room."),
		}
	}
	all = append(all, s.Say("in-ceiling.held-joists", "Held: {0}. The joists are {1}.", table.Held(h.By), table.StudState(h.State)))
	wall := table.Wall(s.Index, room, room.Joists.Along)
	switch {
	case h.Bay.Left != nil && h.Bay.Right != nil:
		all = append(all, s.Say("in-ceiling.bay", "It is between joists at {0} and {1} from the {2}.", words.Height(h.Bay.From), words.Height(h.Bay.To), wall))
	case h.Bay.Left != nil:
		all = append(all, s.Say("in-ceiling.past", "It is past the last joist that was told, at {0} from the {1}.", words.Height(h.Bay.From), wall))
	default:
		all = append(all, s.Say("in-ceiling.before", "It is before the first joist that was told, at {0} from the {1}.", words.Height(h.Bay.To), wall))
	}
	if b := h.Block; b != nil {
		all = append(all, s.Say("in-ceiling.block", "The block between them is cut {0} long.", words.Height(b.Length)))
	}
	return all
}
