package card

import (
	"cmp"
	"slices"
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ends are those that a layout begins from.
func ends(*bind.Context) []bind.Option[bool] {
	return []bind.Option[bool]{
		{Value: false, Text: words.New("side.from.left", "the left corner")},
		{Value: true, Text: words.New("side.from.right", "the right corner")},
	}
}

// taped is a field of the readings of a tape along a wall, one for each stud, with what they
// mean, and under it how well the studs are known. Emptied, it leaves them to their spacing.
func taped(s bind.Subject[plan.Side]) bind.Row {
	face := func() frame.Face {
		f, _ := frame.FaceOf(s.Index, s.ID())
		return f
	}
	tape := bind.One(func() plan.Tape {
		t := frame.TapeOn(s.Index, s.ID())
		if len(t.At) == 0 {
			t.At = told(face())
		}
		return t
	}, func(to plan.Tape) edit.Edit { return frame.ByTape(s.Index, s.ID(), to) })
	return bind.Column(look.Grid/2,
		bind.Field(s.Context, s.Say("side.taped", "Studs taped at"), tape, asTyped(s.Context, tape.Now), bind.TwoLines, bind.Hint(tapeHint(s.Context))),
		s.Said(func() string { return studsText(s.Context, face()) }),
		s.Folded(s.Say("tape.means", "What the readings mean"), look.Grid, false,
			bind.Choice(s.Context, s.Say("tape.from", "Taped from"), "", bind.Of(tape, func(t *plan.Tape) *bool { return &t.FromRight }), func() []bind.Option[bool] { return ends(s.Context) }),
			bind.Choice(s.Context, s.Say("tape.plane", "Held at"), "", bind.Of(tape, func(t *plan.Tape) *bool { return &t.Framing }), func() []bind.Option[bool] {
				return []bind.Option[bool]{
					{Value: false, Text: words.New("tape.finish", "the finished face")},
					{Value: true, Text: words.New("tape.framing", "the framing")},
				}
			}),
			bind.Choice(s.Context, s.Say("tape.edge", "Read at"), "", bind.Of(tape, func(t *plan.Tape) *plan.TapeEdge { return &t.Edge }), func() []bind.Option[plan.TapeEdge] {
				return bind.Options(plan.TapeEdges...)
			}),
			bind.Field(s.Context, s.Say("side.thick", "Studs, along the wall"), bind.One(func() unit.Length { return cmp.Or(s.Now().Studs.Thick, frame.StudThick) }, func(to unit.Length) edit.Edit {
				return frame.WithThick(s.Index, s.ID(), to)
			}), bind.Thicknesses(s.Context)),
		),
	).ShowIf(func() bool { return s.Now().Kind == plan.SideWall })
}

// told lists the studs of a wall that are told one by one; none where it is left to a
// spacing.
func told(f frame.Face) (at []unit.Length) {
	if f.LayoutState() == plan.StudAssumed || !f.IsPlaced() {
		return nil
	}
	for _, p := range f.StudPlaces() {
		at = append(at, p.At)
	}
	return at
}

// studsText says how well the studs of a wall are known.
func studsText(c *bind.Context, f frame.Face) string {
	count := map[plan.StudState]int{}
	for _, p := range f.StudPlaces() {
		count[p.State]++
	}
	var all []string
	for _, x := range []struct {
		state plan.StudState
		text  words.Text
	}{
		{plan.StudMeasured, words.New("side.studs.measured", "{0} measured", count[plan.StudMeasured])},
		{plan.StudStated, words.New("side.studs.stated", "{0} entered", count[plan.StudStated])},
		{plan.StudAssumed, words.New("side.studs.assumed", "{0} assumed, verify", count[plan.StudAssumed])},
	} {
		if count[x.state] > 0 {
			all = append(all, c.Voice.Say(x.text))
		}
	}
	if len(all) == 0 {
		return c.Say("side.studs.none", "No studs are told.")
	}
	return c.Say("side.studs.known", "Studs: {0}.", strings.Join(all, ", "))
}

// tapeReadings are lengths with commas or semicolons between them. A comma within a number
// has no space behind it.
func tapeReadings(c *bind.Context) bind.Spelling[[]unit.Length] {
	one := bind.Thicknesses(c)
	return bind.Spelling[[]unit.Length]{
		Show: func(all []unit.Length) string {
			var texts []string
			for _, l := range all {
				texts = append(texts, one.Show(l))
			}
			return strings.Join(texts, ", ")
		},
		Read: func(text string) (all []unit.Length, err error) {
			for _, part := range parted(text, c.Voice.System) {
				l, err := one.Read(part)
				if err != nil {
					return nil, err
				}
				all = append(all, l)
			}
			return all, nil
		},
	}
}

// asTyped are the readings of a tape, shown as they were typed. What they mean stays.
func asTyped(c *bind.Context, now func() plan.Tape) bind.Spelling[plan.Tape] {
	readings := tapeReadings(c)
	return bind.Spelling[plan.Tape]{
		Show: func(t plan.Tape) string {
			if t.Typed != "" {
				return t.Typed
			}
			return readings.Show(t.At)
		},
		Read: func(text string) (t plan.Tape, err error) {
			t = now()
			t.Typed = strings.TrimSpace(text)
			t.At, err = readings.Read(text)
			return t, err
		},
	}
}

// parted cuts a text into its readings.
func parted(text string, system unit.System) []string {
	text = strings.ReplaceAll(text, ";", ", ")
	if system == unit.Imperial { // where no comma stands within a number
		text = strings.ReplaceAll(text, ",", ", ")
	}
	parts := strings.Split(text, ", ")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	return slices.DeleteFunc(parts, func(p string) bool { return p == "" })
}

// tapeHint is how readings of a tape are written, by the marks of the tape at hand.
func tapeHint(c *bind.Context) string {
	if c.Voice.System == unit.Metric {
		return c.Say("side.taped.hint-metric", "such as 430, 830, 1240")
	}
	return c.Say("side.taped.hint", "such as 17, 32-3/4, 49")
}
