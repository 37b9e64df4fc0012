package edit

import (
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AddLevel adds an empty level after the others.
type AddLevel struct {
	ID        plan.ID
	Title     string
	Elevation unit.Length // of its subfloor above that of the lowest level
}

// Name returns "Add level".
func (AddLevel) Name() words.Text { return words.New("edit.level.add", "Add level") }

// Apply fails where the ID is taken or ill formed.
func (e AddLevel) Apply(p plan.Plan) (plan.Plan, error) {
	l := &plan.Level{ID: e.ID, Name: e.Title, Elevation: e.Elevation}
	if err := p.CheckNew(l.ID, plan.KindLevel); err != nil {
		return plan.Plan{}, err
	}
	if len(p.Levels) >= plan.MaxLevels {
		return plan.Plan{}, plan.Refuse(plan.ErrNoRoom, "levels-many", "the plan has more than {0} levels", plan.MaxLevels)
	}
	if err := l.Check(); err != nil {
		return plan.Plan{}, err
	}
	return p.WithLevel(l), nil
}

// ChangeLevel names a level anew and sets its elevation.
type ChangeLevel struct {
	ID        plan.ID
	Title     string
	Elevation unit.Length
}

// Name returns "Change level".
func (ChangeLevel) Name() words.Text { return words.New("edit.level.change", "Change level") }

// Apply fails with ErrGone where the level is not in the plan.
func (e ChangeLevel) Apply(p plan.Plan) (plan.Plan, error) {
	was := p.Level(e.ID)
	if was == nil {
		return plan.Plan{}, plan.Gone(plan.KindLevel)
	}
	l := *was
	l.Name, l.Elevation = e.Title, e.Elevation
	if err := l.Check(); err != nil {
		return plan.Plan{}, err
	}
	return p.WithLevel(&l), nil
}
