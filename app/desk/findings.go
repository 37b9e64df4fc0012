package desk

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// findings are the commands that go through what the check found.
type findings struct {
	*editor
	view *view
}

func (d *findings) any() bool { return len(d.doc().Findings()) > 0 }

// step goes to the next finding after the one of what is chosen.
func (d *findings) step(by int) {
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

func (d *findings) isOfSelected(f rule.Finding) bool {
	return slices.ContainsFunc(d.doc().Selection(), func(id plan.ID) bool { return id == f.Opening || id == f.About })
}

// inHand returns the worst finding that is not set aside of what is chosen, or of
// what is in a room that is chosen.
func (d *findings) inHand() *rule.Finding {
	return d.worst(func(rule.Finding) bool { return true })
}

// curable returns the worst of those in hand that has a remedy.
func (d *findings) curable() *rule.Finding {
	return d.worst(func(f rule.Finding) bool { return len(f.Remedies) > 0 })
}

func (d *findings) worst(counts func(rule.Finding) bool) *rule.Finding {
	for _, f := range d.doc().Findings() {
		inRoom := f.Room != "" && f.Opening == "" && slices.Contains(d.doc().Selection(), f.Room)
		if f.Waived == nil && (inRoom || d.isOfSelected(f)) && counts(f) {
			return &f
		}
	}
	return nil
}

// Go shows the place of a finding and chooses what it is of.
func (d *findings) Go(f rule.Finding) {
	if f.Level != "" {
		d.doc().SetLevel(f.Level)
	}
	ix := d.doc().Index()
	first := f.Opening
	if f.About.Kind() == plan.KindDecision {
		first = f.About // its card is where it is settled
	}
	about := f.About
	if sidesOf(f) > 1 {
		about = f.Room // no one face is meant
	}
	for _, id := range []plan.ID{first, about, f.Room} {
		if id != "" && d.doc().Has(id) {
			d.doc().Select(id)
			break
		}
	}
	box, ok := boxOf(ix, f.Opening, f.About, f.Room)
	if len(f.Stretches) > 0 {
		box, ok = f.Stretches[0].Line.Box(), true
		for _, s := range f.Stretches[1:] {
			box = box.Union(s.Line.Box())
		}
	}
	if ok {
		d.view.board.Reveal(box)
	}
}

// sidesOf counts the faces that the stretches of a finding lie on.
func sidesOf(f rule.Finding) int {
	sides := map[plan.ID]bool{}
	for _, s := range f.Stretches {
		sides[s.Host] = true
	}
	return len(sides)
}

// hasRemedy reports whether a finding in hand has a remedy.
func (d *findings) hasRemedy() bool {
	return d.curable() != nil
}

// remedyTitle names what the first remedy does.
func (d *findings) remedyTitle() words.Text {
	if f := d.curable(); f != nil {
		return words.New("command.remedy.named", "Remedy: {0}", f.Remedies[0].Label)
	}
	return title("remedy", "Apply the first remedy")
}

// takeRemedy makes the edit of the first remedy of the worst finding in hand that has one.
func (d *findings) takeRemedy() {
	if f := d.curable(); f != nil {
		_ = d.Do(f.Remedies[0].Edit)
	}
}
