package fill

import (
	"cmp"
	"iter"
	"slices"

	"studbay/plan"
)

// Each yields the findings scope by scope, in the order of IDs.
func (r Result) Each() iter.Seq[Finding] {
	return func(yield func(Finding) bool) {
		for s := range r.scopes.All() {
			for _, f := range s.findings {
				if !yield(f) {
					return
				}
			}
		}
	}
}

// All returns the findings, worst first; among equals faults before open questions,
// then room by room.
func (r Result) All() []Finding {
	all := slices.Collect(r.Each())
	slices.SortStableFunc(all, func(a, b Finding) int {
		return cmp.Or(
			cmp.Compare(b.weight(), a.weight()),
			cmp.Compare(a.Room, b.Room),
			cmp.Compare(a.About, b.About),
			cmp.Compare(a.Rule, b.Rule),
		)
	})
	return all
}

// weight orders findings: a waived one weighs least, an open one less than a fault.
func (f Finding) weight() int {
	w := 2*int(f.Severity) + 2
	if f.IsOpen {
		w--
	}
	if f.Waived != nil {
		w = 0
	}
	return w
}

// Of returns the findings of one opening or room.
func (r Result) Of(id plan.ID) []Finding {
	if s, ok := r.scopes.Get(id); ok {
		return s.findings
	}
	return nil
}

// Tally counts findings that are not waived.
type Tally struct{ Stop, Warn, Note, Open, Waived int }

// Tally counts the findings: an open one counts as open alone.
func (r Result) Tally() (t Tally) {
	for f := range r.Each() {
		switch {
		case f.Waived != nil:
			t.Waived++
		case f.IsOpen:
			t.Open++
		case f.Severity == Stop:
			t.Stop++
		case f.Severity == Warn:
			t.Warn++
		default:
			t.Note++
		}
	}
	return t
}
