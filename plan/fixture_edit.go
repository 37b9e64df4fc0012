package plan

import "studbay/plan/words"

// AddFixture adds a fixture to a side, a floor, a ceiling or on top of another fixture.
type AddFixture struct{ Fixture Fixture }

// Name returns "Add sink" or what else the fixture is.
func (e AddFixture) Name() words.Text { return Add{Thing: &e.Fixture}.Name() }

// Apply fails with ErrTaken where the ID is in use, and with ErrNoRoom where the
// fixture does not fit where it should stand.
func (e AddFixture) Apply(p Plan) (Plan, error) { return Add{Thing: &e.Fixture}.Apply(p) }

// MoveFixture puts a fixture elsewhere, with all that is on it.
type MoveFixture struct {
	ID ID
	To Anchor
}

// Name returns "Move fixture".
func (MoveFixture) Name() words.Text { return words.New("edit.fixture.move", "Move fixture") }

// Apply fails with ErrGone where the fixture is not in the plan, and with ErrNoRoom as
// AddFixture does.
func (e MoveFixture) Apply(p Plan) (Plan, error) {
	was, _ := p.Fixture(e.ID)
	if was == nil {
		return Plan{}, gone(theFixture)
	}
	if was.At == e.To {
		return p, nil
	}
	f := *was
	f.At = e.To
	return p.withFixture(&f)
}

// ChangeFixture sets all of a fixture.
type ChangeFixture struct{ Fixture Fixture }

// Name returns "Change sink" or what else the fixture is.
func (e ChangeFixture) Name() words.Text { return Change{Thing: &e.Fixture}.Name() }

// Apply fails with ErrGone where the fixture is not in the plan, with ErrNoRoom where
// it or something on it would not fit, and with ErrInUse where circuits or cables name
// it as their panel and it would be none.
func (e ChangeFixture) Apply(p Plan) (Plan, error) { return Change{&e.Fixture}.Apply(p) }

// withFixture returns the plan with the fixture where its anchor says, and with all
// that is on it on the same level.
func (p Plan) withFixture(f *Fixture) (Plan, error) {
	if f.At.Host == f.ID && f.ID != "" {
		return Plan{}, refuse(ErrNoRoom, "on-itself", "{0} cannot stand on itself", f.text()).at("/at/host")
	}
	l, err := p.home(f.At, f.text())
	if err != nil {
		return Plan{}, err
	}
	var on hanging
	if was, from := p.Fixture(f.ID); from != nil {
		if was.Kind == FixturePanel && f.Kind != FixturePanel {
			if held := p.named(f.ID); len(held) > 0 {
				return Plan{}, p.inUse([]ID{f.ID}, held)
			}
		}
		if on = hangingOn(from, map[ID]bool{f.ID: true}); from != l {
			p = p.on(from, func(l *Level) { on.leave(l); l.Fixtures = l.Fixtures.Without(f.ID) })
		}
	}
	p = p.on(l, func(l *Level) { l.Fixtures = l.Fixtures.With(f); on.join(l) })
	s := levelSides{level: p.Level(l.ID)}
	if err := s.checkFixture(f); err != nil {
		return Plan{}, err
	}
	if err := on.check(s); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// leave takes the things off a level.
func (h hanging) leave(l *Level) {
	for _, f := range h.fixtures {
		l.Fixtures = l.Fixtures.Without(f.ID)
	}
	for _, o := range h.openings {
		l.Openings = l.Openings.Without(o.ID)
	}
}

// join puts the things on a level where they are not on it already.
func (h hanging) join(l *Level) {
	for _, f := range h.fixtures {
		if _, ok := l.Fixtures.Get(f.ID); !ok {
			l.Fixtures = l.Fixtures.With(f)
		}
	}
	for _, o := range h.openings {
		if _, ok := l.Openings.Get(o.ID); !ok {
			l.Openings = l.Openings.With(o)
		}
	}
}
