package fill

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan/words"
)

// skipped says why figures let nothing be judged by a rule, or nothing where they do: a
// local amendment turned it off, or the edition is not known to have its figures.
func skipped(fig *code.Figures, r *rule.Rule) (why words.Text) {
	if reason, off := fig.Off(r.ID); off {
		return words.New("looked.why-off", "switched off by a local amendment, {0}", reason)
	}
	if !r.IsConfirmed(fig) {
		return fig.NotConfirmed()
	}
	return why
}

// judged lists those of some rules that are not skipped.
func judged(rules []*rule.Rule, fig *code.Figures) (these []*rule.Rule) {
	for _, r := range rules {
		if skipped(fig, r).IsZero() {
			these = append(these, r)
		}
	}
	return these
}

// Unconfirmed lists the rules of which nothing was judged, since their figures in the
// edition are not confirmed.
func (r Result) Unconfirmed() (all []*rule.Rule) {
	for _, one := range Rules {
		if r.Figures != nil && !one.IsConfirmed(r.Figures) {
			all = append(all, one)
		}
	}
	return all
}

// UnconfirmedText says how many rules judged nothing since their figures in the edition are
// not confirmed; it is empty where there is none.
func (r Result) UnconfirmedText() (text words.Text) {
	if n := len(r.Unconfirmed()); n > 0 {
		text = words.New("list.unconfirmed", "NOT CHECKED by {0} rules: their figures in {1} are not confirmed.", n, r.Figures.Title)
	}
	return text
}
