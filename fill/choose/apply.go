package choose

import (
	"slices"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Change is an opening that a policy gives another assembly.
type Change struct {
	Opening *plan.Opening
	To      plan.Assembly
}

// Changes lists the openings of the finder's plan to which a policy gives other things than
// they are built of, in the order of IDs. A box that is there already stays unless a rule
// speaks against it.
func (f *Finder) Changes(p Policy) []Change {
	return f.changes(p, func(*plan.Opening) bool { return true })
}

// Among is the one step that takes a policy for the openings among things alone. It is nothing
// to do where none would change.
func (f *Finder) Among(p Policy, things []plan.ID) (edit.Steps, bool) {
	changes := f.changes(p, func(o *plan.Opening) bool { return slices.Contains(things, o.ID) })
	return Column{Policy: p, Changes: changes}.Edit()
}

func (f *Finder) changes(p Policy, of func(*plan.Opening) bool) (all []Change) {
	if p.choose == nil {
		return nil
	}
	for _, o := range f.ix.Plan().Openings() {
		if !of(o) || o.HasOldBox() && !f.isWrong(o) {
			continue
		}
		best := p.choose(f.view(o), f.For(o.ID))
		if best == nil || takeoff.SameParts(best.Assembly, o.Assembly) {
			continue
		}
		all = append(all, Change{o, best.Assembly})
	}
	return all
}

// view returns the view of an opening in which its face says of the rating what either face
// of the wall says there.
func (f *Finder) view(o *plan.Opening) index.OpeningView {
	v, _ := f.ix.OpeningView(o.ID)
	if v.Room == nil || v.Side == nil {
		return v
	}
	room, _ := f.ix.RoomView(v.Room.ID)
	for i := range room.Sides {
		if s := &room.Sides[i]; s.Side.ID == v.Side.ID {
			side := *v.Side
			_, side.Rated = frame.RatedAt(s, o.At.Along)
			v.Side = &side
		}
	}
	return v
}

// isWrong reports whether a rule on boxes stops what an opening has.
func (f *Finder) isWrong(o *plan.Opening) bool {
	for _, found := range f.trials.Of(o) {
		if found.Severity == rule.Stop && !found.IsOpen {
			return true
		}
	}
	return false
}

// Everywhere is the one step that gives an assembly to each opening that it passes at and that
// is built of other things; what is there already stays. It is nothing to do where there is
// none.
func (f *Finder) Everywhere(a plan.Assembly) (edit.Steps, bool) {
	var changes []Change
	for _, o := range f.ix.Plan().Openings() {
		v, ok := f.ix.OpeningView(o.ID)
		if !ok || o.HasOldBox() || !o.IsInUse() || reference(o) == nil || takeoff.SameParts(a, o.Assembly) {
			continue
		}
		to := a
		to.Barriers = o.Assembly.Barriers
		if c := f.try(v, to); c.Passes() {
			changes = append(changes, Change{o, to})
		}
	}
	return edit.Steps{Label: words.New("choose.everywhere", "Use one box wherever it fits"), Edits: editsOf(changes)}, len(changes) > 0
}

// Edit is the one step that takes a policy: it gives every opening its assembly. It is
// nothing to do where none would change.
func (c Column) Edit() (edit.Steps, bool) {
	return edit.Steps{Label: words.New("policy.take", "Take “{0}”", c.Policy.Name), Edits: editsOf(c.Changes)}, len(c.Changes) > 0
}

func editsOf(changes []Change) (all []edit.Edit) {
	for _, c := range changes {
		all = append(all, edit.SetAssembly{ID: c.Opening.ID, Assembly: c.To})
	}
	return all
}
