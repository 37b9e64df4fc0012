package plan

import "studbay/plan/words"

// AddFixture adds a fixture to a side, a floor, a ceiling or on top of another fixture.
type AddFixture struct{ Fixture Fixture }

// Name returns "Add sink" or what else the fixture is.
func (e AddFixture) Name() words.Text {
	return words.New("edit.fixture.add", "Add {0}", e.Fixture.Kind.Text())
}

// Apply fails with ErrTaken where the ID is in use, and with ErrNoRoom where the
// fixture does not fit where it should stand.
func (e AddFixture) Apply(p Plan) (Plan, error) {
	if err := p.fresh(e.Fixture.ID, KindFixture); err != nil {
		return Plan{}, err
	}
	return p.withFixture(e.Fixture)
}

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
	return p.withFixture(f)
}

// ChangeFixture sets all of a fixture.
type ChangeFixture struct{ Fixture Fixture }

// Name returns "Change sink" or what else the fixture is.
func (e ChangeFixture) Name() words.Text {
	return words.New("edit.fixture.change", "Change {0}", e.Fixture.Kind.Text())
}

// Apply fails with ErrGone where the fixture is not in the plan, with ErrNoRoom where
// it or something on it would not fit, and with ErrInUse where circuits or cables name
// it as their panel and it would be none.
func (e ChangeFixture) Apply(p Plan) (Plan, error) {
	was, _ := p.Fixture(e.Fixture.ID)
	if was == nil {
		return Plan{}, gone(theFixture)
	}
	if was.Kind == FixturePanel && e.Fixture.Kind != FixturePanel {
		if ids, names := p.fedFrom(was.ID); len(ids) > 0 {
			return Plan{}, inUse(was.called(), ids, names)
		}
	}
	return p.withFixture(e.Fixture)
}

// RemoveFixture takes a fixture out, with all that is on it where Cascade says so.
type RemoveFixture struct {
	ID      ID
	Cascade bool
}

// Name returns "Remove fixture".
func (RemoveFixture) Name() words.Text { return words.New("edit.fixture.remove", "Remove fixture") }

// Apply fails with ErrInUse and a list where things are on the fixture, or circuits and
// cables start from it, unless Cascade: then things and cables go and circuits stay.
func (e RemoveFixture) Apply(p Plan) (Plan, error) {
	f, l := p.Fixture(e.ID)
	if f == nil {
		return Plan{}, gone(theFixture)
	}
	ids, names := hungOn(l, map[ID]bool{e.ID: true}).list()
	d := doomed{e.ID: true}
	d.add(ids...)
	fed, fedNames := p.fedFrom(e.ID)
	if ids, names = append(ids, fed...), append(names, fedNames...); len(ids) > 0 && !e.Cascade {
		return Plan{}, inUse(f.called(), ids, names)
	}
	return p.without(d), nil
}

// fedFrom lists the circuits and cables that start from a panel.
func (p Plan) fedFrom(panel ID) (ids []ID, names []words.Text) {
	for c := range p.Circuits.All() {
		if c.Panel == panel {
			ids, names = append(ids, c.ID), append(names, c.called())
		}
	}
	for c := range p.Cables.All() {
		if c.From == panel {
			ids, names = append(ids, c.ID), append(names, theCable)
		}
	}
	return ids, names
}

// withFixture returns the plan with the fixture where its anchor says, and with all
// that is on it on the same level.
func (p Plan) withFixture(f Fixture) (Plan, error) {
	if f.At.Host == f.ID && f.ID != "" {
		return Plan{}, refuse(ErrNoRoom, "on-itself", "{0} cannot stand on itself", f.called()).at("/at/host")
	}
	l, err := p.home(f.At, f.called())
	if err != nil {
		return Plan{}, err
	}
	var on hung
	if _, from := p.Fixture(f.ID); from != nil {
		if on = hungOn(from, map[ID]bool{f.ID: true}); from != l {
			p = p.on(from, func(l *Level) { on.leave(l); l.Fixtures = l.Fixtures.Without(f.ID) })
		}
	}
	p = p.on(l, func(l *Level) { l.Fixtures = l.Fixtures.With(&f); on.join(l) })
	s := site{level: p.Level(l.ID)}
	if err := s.checkFixture(&f); err != nil {
		return Plan{}, err
	}
	if err := on.check(s); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// leave takes the things off a level.
func (h hung) leave(l *Level) {
	for _, f := range h.fixtures {
		l.Fixtures = l.Fixtures.Without(f.ID)
	}
	for _, o := range h.openings {
		l.Openings = l.Openings.Without(o.ID)
	}
}

// join puts the things on a level where they are not on it already.
func (h hung) join(l *Level) {
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
