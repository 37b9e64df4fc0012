package edit

import (
	"studbay/plan"
	"studbay/plan/words"
)

// AddFixture adds a fixture to a side, a floor, a ceiling or on top of another fixture.
type AddFixture struct{ Fixture plan.Fixture }

// Name returns "Add sink" or what else the fixture is.
func (e AddFixture) Name() words.Text { return Add{Thing: &e.Fixture}.Name() }

// Apply fails with ErrTaken where the ID is in use, and with ErrNoRoom where the
// fixture does not fit where it should stand.
func (e AddFixture) Apply(p plan.Plan) (plan.Plan, error) { return Add{Thing: &e.Fixture}.Apply(p) }

// MoveFixture puts a fixture elsewhere, with all that is on it.
type MoveFixture struct {
	ID plan.ID
	To plan.Anchor
}

// Name returns "Move fixture".
func (MoveFixture) Name() words.Text {
	return words.New("edit.fixture.move", "Move cabinet or furniture")
}

// Apply fails with ErrGone where the fixture is not in the plan, and with ErrNoRoom as
// AddFixture does.
func (e MoveFixture) Apply(p plan.Plan) (plan.Plan, error) {
	was, _ := p.Fixture(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindFixture)
	}
	if was.At == e.To {
		return p, nil
	}
	f := *was
	f.At = e.To
	return p.With(nil, &f)
}

// ChangeFixture sets all of a fixture.
type ChangeFixture struct{ Fixture plan.Fixture }

// Name returns "Change sink" or what else the fixture is.
func (e ChangeFixture) Name() words.Text { return Change{Thing: &e.Fixture}.Name() }

// Apply fails with ErrGone where the fixture is not in the plan, with ErrNoRoom where
// it or something on it would not fit, and with ErrInUse where circuits or cables name
// it as their panel and it would be none.
func (e ChangeFixture) Apply(p plan.Plan) (plan.Plan, error) { return Change{&e.Fixture}.Apply(p) }
