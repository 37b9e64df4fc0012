package code

import (
	"fmt"
	"maps"
	"slices"

	"studbay/plan/words"
)

// Amendment is one local change of an edition: a figure with another value, or a rule
// switched off. It has either a Figure and a Value or a Rule, and always a Reason.
type Amendment struct {
	Figure string // name in assets/code, such as "wall-reach"
	Value  string // as a table would hold it: in the figure's own unit unless it names one
	Rule   string // ID of the rule that is switched off
	Reason string // printed wherever the figure or rule is
}

// WithAmendments returns the figures with local changes on top, later ones last. With
// none it returns f itself; else a new pointer each time, which the caller keeps.
func (f *Figures) WithAmendments(changes []Amendment) (*Figures, error) {
	if len(changes) == 0 {
		return f, nil
	}
	out := *f
	out.cites = maps.Clone(f.cites)
	out.Amendments = slices.Concat(f.Amendments, changes)
	for i, change := range changes {
		if err := out.amend(change); err != nil {
			return nil, fmt.Errorf("amendment %d: %w", i+1, err)
		}
	}
	return &out, nil
}

func (f *Figures) amend(change Amendment) error {
	switch {
	case change.Reason == "":
		return words.Fault("amend.no-reason", "enter a reason: it is printed on the sheets")
	case (change.Figure == "") == (change.Rule == ""):
		return words.Fault("amend.one", "it changes one figure or turns off one rule")
	case change.Rule != "":
		return nil
	}
	bound, ok := bindingOf(change.Figure)
	cite, known := f.cites[change.Figure]
	if !ok || !known {
		return words.Fault("amend.no-figure", "edition {0} has no figure “{1}”", f.Edition, change.Figure)
	}
	if bound.unit == "cite" {
		return fmt.Errorf("%s: %w", change.Figure, errOnlyCite)
	}
	if err := bound.set(f, change.Value); err != nil {
		return fmt.Errorf("%s: %w", change.Figure, err)
	}
	cite.Reason = change.Reason
	f.cites[change.Figure] = cite
	return nil
}
