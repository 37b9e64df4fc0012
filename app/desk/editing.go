package desk

import (
	"cmp"
	"errors"
	"slices"

	"studbay/app/dialog"
	"studbay/app/work"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func (d *Desk) canUndo() bool { return d.doc().History().CanUndo() }
func (d *Desk) canRedo() bool { return d.doc().History().CanRedo() }
func (d *Desk) undo()         { d.doc().Undo() }
func (d *Desk) redo()         { d.doc().Redo() }

// undoTitle names the step that undo takes back.
func (d *Desk) undoTitle() words.Text {
	return words.New("command.undo.named", "Undo {0}", quietName(d.doc().History().UndoName()))
}

func (d *Desk) redoTitle() words.Text {
	return words.New("command.redo.named", "Redo {0}", quietName(d.doc().History().RedoName()))
}

// quietName puts the name of a step in marks, or leaves none.
func quietName(name words.Text) words.Text {
	if name.IsZero() {
		return words.New("plain", "{0}", "")
	}
	return words.New("quoted", "“{0}”", name)
}

func (d *Desk) hasSelection() bool { return len(d.doc().Selection()) > 0 }

func (d *Desk) hasOneOpening() bool {
	chosen := d.doc().Selection()
	return len(chosen) == 1 && chosen[0].Kind() == plan.KindOpening
}

// removeSelected takes out what is chosen; where other things hang on it, it asks.
func (d *Desk) removeSelected() {
	err := d.remove(false)
	if !errors.Is(err, plan.ErrInUse) {
		return
	}
	d.said = words.Text{} // the question says it
	d.showHint()
	d.stage.Ask(dialog.Question{
		Title: d.say("remove.title", "Take out all that hangs on it too?"),
		Body:  d.stage.ErrorText(err),
		Answers: []dialog.Answer{
			{Label: d.say("answer.stay", "Go back")},
			{Label: d.say("answer.all", "Take out all of it"), Do: func() { _ = d.remove(true) }},
		},
	})
}

// remove takes out what is chosen as one step.
func (d *Desk) remove(cascade bool) error {
	chosen := slices.Clone(d.doc().Selection())
	if len(chosen) == 0 {
		return nil
	}
	return d.Do(plan.Remove{Things: chosen, Cascade: cascade})
}

func (d *Desk) hasOpenings() bool {
	l := d.doc().Plan().Level(d.doc().Level())
	return l != nil && l.Openings.Len() > 0
}

func (d *Desk) selectAll() {
	var ids []plan.ID
	if l := d.doc().Plan().Level(d.doc().Level()); l != nil {
		for o := range l.Openings.All() {
			ids = append(ids, o.ID)
		}
	}
	d.Select(ids...)
}

func (d *Desk) goToSelected() {
	chosen := d.doc().Selection()
	if box, ok := boxOf(d.doc().Index(), chosen...); ok {
		for _, id := range chosen[1:] {
			if more, ok := d.doc().Index().BoxOf(id); ok {
				box = box.Union(more)
			}
		}
		d.board.Reveal(box)
	}
}

func (d *Desk) setUnits(s unit.System) {
	d.prefs.setUnits(s)
	_ = d.Do(plan.SetUnits{Units: work.UnitsName(s)})
}

// levelBy returns the level so many above the one shown, or nothing.
func (d *Desk) levelBy(n int) plan.ID {
	levels := slices.Clone(d.doc().Plan().Levels)
	slices.SortStableFunc(levels, func(a, b *plan.Level) int { return cmp.Compare(a.Elevation, b.Elevation) })
	for i, l := range levels {
		if l.ID == d.doc().Level() && i+n >= 0 && i+n < len(levels) {
			return levels[i+n].ID
		}
	}
	return ""
}

// storey is the usual height from one floor to the next: common practice.
const storey = 9 * unit.Foot

func (d *Desk) addLevel() {
	var top unit.Length
	for _, l := range d.doc().Plan().Levels {
		top = max(top, l.Elevation)
	}
	id := work.NewID(plan.KindLevel)
	name := d.say("level.next", "Level {0}", len(d.doc().Plan().Levels)+1)
	if d.Do(plan.AddLevel{ID: id, Title: name, Elevation: top + storey}) == nil {
		d.doc().SetLevel(id)
	}
}

func (d *Desk) hasFindings() bool { return len(d.doc().Findings()) > 0 }

// stepFinding goes to the next finding after the one of what is chosen.
func (d *Desk) stepFinding(by int) {
	all := d.doc().Findings()
	at := -1
	if by < 0 {
		at = 0
	}
	for i, f := range all {
		if d.isOfSelected(f) {
			at = i
			break
		}
	}
	// Findings of one thing follow each other: step past all of them.
	for range all {
		at = (at + by + len(all)) % len(all)
		if !d.isOfSelected(all[at]) {
			break
		}
	}
	d.Go(all[at])
}

func (d *Desk) isOfSelected(f fill.Finding) bool {
	return slices.ContainsFunc(d.doc().Selection(), func(id plan.ID) bool { return id == f.Opening || id == f.About })
}

// findingInHand returns the worst finding that is not set aside of what is chosen, or of
// what is in a room that is chosen.
func (d *Desk) findingInHand() *fill.Finding {
	for _, f := range d.doc().Findings() {
		inRoom := f.Room != "" && f.Opening == "" && slices.Contains(d.doc().Selection(), f.Room)
		if f.Waived == nil && (inRoom || d.isOfSelected(f)) {
			return &f
		}
	}
	return nil
}
