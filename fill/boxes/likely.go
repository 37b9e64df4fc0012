package boxes

import (
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// likelySizes names the listed sizes that a box may be of which a tape was held into and that
// nobody has read. It settles none of them: what was measured is never taken for a volume.
func likelySizes(o *plan.Opening, fig *code.Figures) []rule.Finding {
	in := o.Assembly.Inside
	if o.IsGone() || !o.IsUnread() || !in.IsWhole() {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Note, IsOpen: true,
		Message: words.New("rule.box-fill.inside", "{0}: its box is {1} wide, {2} high and {3} deep inside; which it is was not read", o.Tag, words.Height(in.Width), words.Height(in.Height), words.Height(in.Depth)),
		Why:     words.New("rule.box-fill.inside.none", "No listed size is near that. Read the mark in it; no volume is taken from what was measured."),
	}
	if likely := Likely(o); !likely.IsZero() {
		f.Why = words.New("rule.box-fill.inside.why", "Listed sizes near that: {0}. Read the mark in it, or select the one it is; no volume is taken from what was measured.", likely)
	}
	return []rule.Finding{citing(f, fig, "box-volume")}
}

// Likely lists the sizes of the table that a box may be of by what was measured inside, each
// with its volume by the table; the zero text where there is none, or not all was measured.
func Likely(o *plan.Opening) (all words.Text) {
	for _, b := range part.All().LikelyBoxes(o.Assembly.Inside) {
		one := words.New("box.likely", "{0} ({1})", b.Text(), b.Volume)
		if all.IsZero() {
			all = one
			continue
		}
		all = words.New("list.and-more", "{0}; {1}", all, one)
	}
	return all
}
