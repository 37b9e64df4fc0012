package plan

import "studbay/plan/words"

// AddBreak adds a door, slider, window, passage or fireplace to a side.
type AddBreak struct{ Break Break }

// Name returns "Add door" or what else the break is.
func (e AddBreak) Name() words.Text { return Add{Thing: &e.Break}.Name() }

// Apply fails with ErrTaken where the ID is in use, and with ErrNoRoom where the break
// does not fit its side, is higher than the ceiling or overlaps another break.
func (e AddBreak) Apply(p Plan) (Plan, error) { return Add{Thing: &e.Break}.Apply(p) }

// MoveBreak puts a break elsewhere.
type MoveBreak struct {
	ID ID
	To Anchor
}

// Name returns "Move door or window".
func (MoveBreak) Name() words.Text { return words.New("edit.break.move", "Move door or window") }

// Apply fails with ErrGone where the break is not in the plan, and with ErrNoRoom as
// AddBreak does.
func (e MoveBreak) Apply(p Plan) (Plan, error) {
	was, _ := p.Break(e.ID)
	if was == nil {
		return Plan{}, gone(theBreak)
	}
	if was.At == e.To {
		return p, nil
	}
	b := *was
	b.At = e.To
	return p.withBreak(&b)
}

// ChangeBreak sets all of a break.
type ChangeBreak struct{ Break Break }

// Name returns "Change door" or what else the break is.
func (e ChangeBreak) Name() words.Text { return Change{Thing: &e.Break}.Name() }

// Apply fails with ErrGone where the break is not in the plan, and with ErrNoRoom as
// AddBreak does.
func (e ChangeBreak) Apply(p Plan) (Plan, error) { return Change{&e.Break}.Apply(p) }

// withBreak returns the plan with the break where its anchor says.
func (p Plan) withBreak(b *Break) (Plan, error) {
	l, err := p.home(b.At, b.text())
	if err != nil {
		return Plan{}, err
	}
	if _, from := p.Break(b.ID); from != nil && from != l {
		p = p.on(from, func(l *Level) { l.Breaks = l.Breaks.Without(b.ID) })
	}
	p = p.on(l, func(l *Level) { l.Breaks = l.Breaks.With(b) })
	now := p.Level(l.ID)
	if err := (levelSides{level: now}).checkBreak(b); err != nil {
		return Plan{}, err
	}
	if err := checkApart(breaksOn(now, b.At.Host)); err != nil {
		return Plan{}, err
	}
	return p, nil
}

// home returns the level a thing comes to stand on.
func (p Plan) home(a Anchor, name words.Text) (*Level, error) {
	if l := p.levelOf(a); l != nil {
		return l, nil
	}
	if a.Host == "" {
		return nil, refuse(ErrNoRoom, "no-host", "{0} needs a wall, ceiling, floor or fixture to stand on", name).at("/at/host")
	}
	return nil, refuse(ErrGone, "host-gone", "what {0} stands on is not on this level of the plan", name).at("/at/host")
}
