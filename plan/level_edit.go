package plan

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// AddLevel adds an empty level after the others.
type AddLevel struct {
	ID        ID
	Title     string
	Elevation unit.Length // of its subfloor above that of the lowest level
}

// Name returns "Add level".
func (AddLevel) Name() words.Text { return words.New("edit.level.add", "Add level") }

// Apply fails where the ID is taken or ill formed.
func (e AddLevel) Apply(p Plan) (Plan, error) {
	l := &Level{ID: e.ID, Name: e.Title, Elevation: e.Elevation}
	if err := p.CheckNew(l.ID, KindLevel); err != nil {
		return Plan{}, err
	}
	if len(p.Levels) >= MaxLevels {
		return Plan{}, Refuse(ErrNoRoom, "levels-many", "the plan has more than {0} levels", MaxLevels)
	}
	if err := l.Check(); err != nil {
		return Plan{}, err
	}
	return p.WithLevel(l), nil
}

// ChangeLevel names a level anew and sets its elevation.
type ChangeLevel struct {
	ID        ID
	Title     string
	Elevation unit.Length
}

// Name returns "Change level".
func (ChangeLevel) Name() words.Text { return words.New("edit.level.change", "Change level") }

// Apply fails with ErrGone where the level is not in the plan.
func (e ChangeLevel) Apply(p Plan) (Plan, error) {
	was := p.Level(e.ID)
	if was == nil {
		return Plan{}, Gone(KindLevel)
	}
	l := *was
	l.Name, l.Elevation = e.Title, e.Elevation
	if err := l.Check(); err != nil {
		return Plan{}, err
	}
	return p.WithLevel(&l), nil
}
