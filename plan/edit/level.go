package edit

import (
	"slices"

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

// CopyLevel adds a level like another: what was taken up of it, at the same places of the
// sheet. Copies have the next tags, no cables, and no controls.
type CopyLevel struct {
	Clip      Clip      // LevelClip or OutlinesClip of the level
	As        []plan.ID // the IDs of the copy, one for each of Clip.IDs, in their order
	ID        plan.ID
	Title     string
	Elevation unit.Length // of its subfloor above that of the lowest level
}

// Name returns "Copy level".
func (CopyLevel) Name() words.Text { return words.New("edit.level.copy", "Copy level") }

// Apply fails as AddLevel and Paste do.
func (e CopyLevel) Apply(p plan.Plan) (plan.Plan, error) {
	p, err := AddLevel{e.ID, e.Title, e.Elevation}.Apply(p)
	if err != nil {
		return plan.Plan{}, err
	}
	return Paste{Clip: e.Clip, As: e.As, Level: e.ID}.Apply(p)
}

// LevelClip takes up all that is on a level.
func LevelClip(p plan.Plan, level plan.ID) Clip {
	var rooms []plan.ID
	if l := p.Level(level); l != nil {
		for r := range l.Rooms.All() {
			rooms = append(rooms, r.ID)
		}
	}
	return ClipOf(p, rooms)
}

// OutlinesClip takes up the rooms of a level and nothing that is in them or in their faces.
func OutlinesClip(p plan.Plan, level plan.ID) Clip {
	all := LevelClip(p, level)
	all.things = slices.DeleteFunc(all.things, func(t plan.Thing) bool { return t.Key().Kind() != plan.KindRoom })
	return all
}
