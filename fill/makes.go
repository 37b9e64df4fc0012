package fill

import (
	"errors"
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Told says what a remedy does, and what stops it makes. The index is of the plan that the
// result is of.
func (r Result) Told(ix *index.Index, remedy rule.Remedy) words.Text {
	made, err := r.Makes(ix, remedy)
	switch {
	case errors.Is(err, errCrowded):
		return words.New("remedy.crowded", "{0}; what else it changes was not worked out: {1} boxes and more are on one face", remedy.Label, mostOnAFace)
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
// taken, and where too many boxes are on one face.
func (r Result) Makes(ix *index.Index, remedy rule.Remedy) (made []rule.Finding, err error) {
	if r.Figures == nil {
		return nil, nil
	}
	p, err := remedy.Edit.Apply(ix.Plan())
	if err != nil {
		return nil, err
	}
	c := Checker{index: ix.Updated(p), fig: r.Figures, rules: newRulesOn(r.Figures)}
	c.waived = c.waived.of(p.Waivers)
	rooms, openings := index.Touched(ix, c.index)
	if slices.ContainsFunc(rooms, c.isCrowded) {
		return nil, errCrowded
	}
	for _, id := range slices.Concat(rooms, openings) {
		for _, s := range scopesAt(c.index, id) {
			was := byOpening(r.Of(s.id))
			for _, f := range c.findings(s, c.rules.of(s.id)).findings {
				if f.Severity == rule.Stop && f.Waived == nil && !slices.ContainsFunc(was[whatOf(f)], func(was rule.Finding) bool { return isNoMoreThan(f, was) }) {
					made = append(made, f)
				}
			}
		}
	}
	return made, nil
}

// mostOnAFace bounds the boxes of one face up to which it is worked out what a remedy there
// makes: all of them are compared with each other for each remedy, and no house has a face
// with nearly as many.
const mostOnAFace = 200

var errCrowded = errors.New("a face with too many boxes")

func (c *Checker) isCrowded(room plan.ID) bool {
	v, ok := c.index.RoomView(room)
	return ok && slices.ContainsFunc(v.Sides, func(s index.SideView) bool { return len(s.Openings) >= mostOnAFace })
}

// what is which rule says something of which opening.
type what struct {
	rule    string
	opening plan.ID
}

func whatOf(f rule.Finding) what { return what{f.Rule, f.Opening} }

// byOpening sorts findings so that one need not be compared with all others.
func byOpening(all []rule.Finding) map[what][]rule.Finding {
	sorted := map[what][]rule.Finding{}
	for _, f := range all {
		sorted[whatOf(f)] = append(sorted[whatOf(f)], f)
	}
	return sorted
}

// isNoMoreThan reports whether a finding is one that was there, or less of it.
func isNoMoreThan(f, was rule.Finding) bool {
	return f.Rule == was.Rule && f.Severity <= was.Severity && f.Opening == was.Opening && f.IsWithin(was.Seen())
}
