package card

import (
	"studbay/plan"
	"studbay/plan/unit"
)

// newFixtureCard shows a fixture: what it is, how large and where.
func newFixtureCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() plan.Fixture {
		if x, _ := f.Index.Plan().Fixture(id); x != nil {
			return *x
		}
		return plan.Fixture{ID: id}
	}
	if x, _ := f.Index.Plan().Fixture(id); x == nil {
		return nil
	}
	was := now() // its fields are named after the corners of its face
	change := func(do func(*plan.Fixture)) error {
		x := now()
		do(&x)
		return f.Window.Do(plan.ChangeFixture{Fixture: x})
	}
	f.heading = func() (string, string, bool) {
		x, _ := f.Index.Plan().Fixture(id)
		if x == nil || x.At.Host != was.At.Host {
			return "", "", false
		}
		title := capital(f.Voice.Say(x.Kind.Text()))
		if x.Name != "" {
			title = x.Name
		}
		return title, f.standsAt(x.At), true
	}
	length := func(label string, read func(plan.Fixture) unit.Length, write func(*plan.Fixture, unit.Length)) line {
		return f.lengthField(label, func() unit.Length { return read(now()) }, func(l unit.Length) error {
			return change(func(x *plan.Fixture) { write(x, l) })
		}, f.long)
	}
	kind := NewChoice(f.say("fixture.kind", "Kind"), string(now().Kind), func() (options []Option) {
		for _, k := range plan.FixtureKinds {
			options = append(options, Option{Label: capital(f.Voice.Say(k.Text())), Now: now().Kind == k, Do: func() {
				f.shown(change(func(x *plan.Fixture) { x.Kind = k }))
			}})
		}
		return options
	})
	lines := []line{
		kind,
		length(f.say("fixture.width", "Width"), func(x plan.Fixture) unit.Length { return x.Width }, func(x *plan.Fixture, l unit.Length) { x.Width = l }),
		length(f.say("fixture.depth", "Depth"), func(x plan.Fixture) unit.Length { return x.Depth }, func(x *plan.Fixture, l unit.Length) { x.Depth = l }),
		length(f.say("fixture.height", "Height"), func(x plan.Fixture) unit.Length { return x.Height }, func(x *plan.Fixture, l unit.Length) { x.Height = l }),
		length(f.say("fixture.bottom", "Above the floor"), func(x plan.Fixture) unit.Length { return x.Bottom }, func(x *plan.Fixture, l unit.Length) { x.Bottom = l }),
	}
	if now().At.Part == plan.PartFace {
		lines = append(lines,
			length(f.cornerLabel(now().At.Host, false), func(x plan.Fixture) unit.Length { return x.At.Along }, func(x *plan.Fixture, l unit.Length) { x.At.Along = l }),
			length(f.cornerLabel(now().At.Host, true), func(x plan.Fixture) unit.Length { return f.lengthOf(x.At.Host) - x.At.Along - x.Width }, func(x *plan.Fixture, l unit.Length) { x.At.Along = f.lengthOf(x.At.Host) - x.Width - l }))
	}
	name := f.textField(f.say("fixture.name", "Name"), func() string { return now().Name }, func(text string) error {
		return change(func(x *plan.Fixture) { x.Name = text })
	})
	note := f.noteField(func() string { return now().Note }, func(text string) error {
		return change(func(x *plan.Fixture) { x.Note = text })
	})
	f.lay(lines, []line{name, note})
	return f.ready()
}
