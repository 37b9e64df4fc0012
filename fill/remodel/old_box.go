package remodel

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// OldBox asks what becomes of the boxes that were moved from or replaced.
var OldBox = rule.Rule{
	ID:     "old-box",
	Title:  words.New("rule.old-box.title", "What becomes of an old box"),
	Figure: "accessible",
	Doc:    words.New("rule.old-box.doc", `Where an opening was moved, its old box stays under a blank cover, which keeps what is in it and has to stay accessible, or is emptied onto the new box, or is dead once its cables are disconnected at both ends. Where one was replaced its box is kept or taken out. Until that is said it is an open decision. Not checked: whether it is done.`),
	Opening: func(v index.OpeningView, _ *code.Figures) []rule.Finding {
		o := v.Opening
		fates := plan.FatesOf(o.Status)
		if len(fates) < 2 || o.Fate != plan.FateUnsaid {
			return nil
		}
		f := rule.OnBox(o, rule.Note)
		f.IsOpen = true
		f.Message = words.New("rule.old-box.unsaid", "{0}: say what becomes of its old box", o.Tag)
		f.Why = words.New("rule.old-box.why", "A box with wires in it stays accessible, whatever covers it.")
		for _, fate := range fates[1:] {
			f.Remedies = append(f.Remedies, rule.Remedy{Label: words.New("rule.old-box.remedy", "Say: {0}", fate.Text()), Edit: edit.SetFate{ID: o.ID, Fate: fate}})
		}
		return []rule.Finding{f}
	},
}

// CableEnd looks for cables that end where no box will be.
var CableEnd = rule.Rule{
	ID:     "cable-end",
	Title:  words.New("rule.cable-end.title", "Cables that end in no box"),
	Figure: "accessible",
	Doc:    words.New("rule.cable-end.doc", `A cable ends in a box that stays accessible. Told is one drawn to an opening that is to be removed, or was moved or replaced with its box. A box that is said to be dead may keep cables that are disconnected at both ends. Not checked: cables that nobody has drawn.`),
	Opening: func(v index.OpeningView, _ *code.Figures) []rule.Finding {
		o := v.Opening
		if !o.IsGone() || len(v.Cables) == 0 || o.Fate == plan.FateDead || len(plan.FatesOf(o.Status)) > 1 && o.Fate == plan.FateUnsaid {
			return nil // the last is asked by itself
		}
		f := rule.OnBox(o, rule.Warn)
		f.Measured = rule.CountOf(len(v.Cables))
		f.Message = words.New("rule.cable-end.gone", "{0} goes, and {1} cables end in it", o.Tag, len(v.Cables))
		if len(v.Cables) == 1 {
			f.Message = words.New("rule.cable-end.gone.one", "{0} goes, and a cable ends in it", o.Tag)
		}
		f.Why = words.New("rule.cable-end.why", "Pull the cable on to another box, take it out, or keep the box under a blank cover.")
		return []rule.Finding{f}
	},
}
