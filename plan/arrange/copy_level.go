package arrange

import (
	"slices"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

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
	p, err := edit.AddLevel{ID: e.ID, Title: e.Title, Elevation: e.Elevation}.Apply(p)
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
