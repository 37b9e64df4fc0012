package card

import (
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

// taped is a field of the readings of a tape along a wall, to the middle of each stud, and
// under it how well the studs are known. Emptied, it leaves them to their spacing.
func taped(s bind.Subject[plan.Side]) bind.Row {
	face := func() frame.Face {
		f, _ := frame.FaceOf(s.Index, s.ID())
		return f
	}
	readings := bind.One(func() []unit.Length { return told(face()) }, func(at []unit.Length) edit.Edit { return face().Taped(at) })
	return bind.Column(look.Grid/2,
		bind.Field(s.Context, s.Say("side.taped", "Studs taped at"), readings, tapeReadings(s.Context), bind.TwoLines, bind.Hint(s.Say("side.taped.hint", "such as 17, 32-3/4, 49"))),
		s.Said(func() string { return studsText(s.Context, face()) }),
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
		{plan.StudStated, words.New("side.studs.stated", "{0} stated", count[plan.StudStated])},
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
