package remodel

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan/words"
)

// FindStud looks for new boxes where nobody knows the studs yet.
var FindStud = rule.Rule{
	ID:    "find-stud",
	Title: words.New("rule.find-stud.title", "Studs not found yet"),
	Doc:   words.New("rule.find-stud.doc", `Where the studs of a standing wall were taped one by one, nothing is said of the wall past the last of them: no spacing carries them on. A new box there is told in a note, since the stud wants finding first (common practice); one against a stud that was taped is held by that. Walls that are built anew, walls whose studs are laid out by a spacing, and boxes that are there already, are not checked.`),
	Side:  checkFindStud,
}

func checkFindStud(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	first, last, ok := w.Taped()
	if !ok {
		return nil
	}
	for _, b := range w.Boxes {
		if b.IsThere() || !b.IsBuiltIn() || w.HoldOn(b.Opening, w.Room).HasBay {
			continue
		}
		f := rule.OnBox(b.Opening, rule.Note)
		f.IsOpen, f.ByPractice = true, true
		f.Message = words.New("rule.find-stud.unknown", "{0}: find the stud first", b.Opening.Tag)
		f.Why = words.New("rule.find-stud.why", "The studs of this wall are known from {0} to {1}; the box goes from {2} to {3}.", first, last, b.Left, b.Right)
		found = append(found, f)
	}
	return found
}
