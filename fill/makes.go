package fill

import (
	"slices"

	"studbay/fill/rule"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Told says what a remedy does, and what stops it makes. The index is of the plan that the
// result is of.
func (r Result) Told(ix *index.Index, remedy rule.Remedy) words.Text {
	made, err := r.Makes(ix, remedy)
	switch {
	case err != nil || len(made) == 0:
		return remedy.Label
	case len(made) == 1:
		return words.New("remedy.makes", "{0}; but then: {1}", remedy.Label, made[0].Message)
	}
	return words.New("remedy.makes-more", "{0}; but then: {1}, and {2} more", remedy.Label, made[0].Message, len(made)-1)
}

// Makes returns the stops that taking a remedy makes where there were none, or more than
// there was: a box that is moved may leave wall unserved, a larger one run past a corner.
// The index is of the plan that the result is of. It fails where the remedy cannot be
// taken.
func (r Result) Makes(ix *index.Index, remedy rule.Remedy) (made []rule.Finding, err error) {
	if r.Figures == nil {
		return nil, nil
	}
	p, err := remedy.Edit.Apply(ix.Plan())
	if err != nil {
		return nil, err
	}
	c := Checker{index: ix.Updated(p), fig: r.Figures, rules: newRulesOn()}
	c.waived = c.waived.of(p.Waivers)
	rooms, openings := index.Touched(ix, c.index)
	for _, id := range slices.Concat(rooms, openings) {
		for _, s := range scopesAt(c.index, id) {
			was := r.Of(s.id)
			for _, f := range c.findings(s, c.rules.of(s.id)).findings {
				if f.Severity == rule.Stop && f.Waived == nil && !slices.ContainsFunc(was, func(was rule.Finding) bool { return isNoMoreThan(f, was) }) {
					made = append(made, f)
				}
			}
		}
	}
	return made, nil
}

// isNoMoreThan reports whether a finding is one that was there, or less of it.
func isNoMoreThan(f, was rule.Finding) bool {
	return f.Rule == was.Rule && f.Severity <= was.Severity && f.Opening == was.Opening && f.IsWithin(was.Seen())
}
