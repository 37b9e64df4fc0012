package fill

import (
	"cmp"
	"errors"
	"iter"
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// Result is the findings of one plan, by scope. It is immutable. The zero value is of a
// plan that was not checked yet.
type Result struct {
	Figures *code.Figures // nil where nothing was checked
	refused error         // why nothing can be checked
	scopes  plan.Set[*scoped]
}

// IsRefused reports whether the plan cannot be checked: NotChecked says why.
func (r Result) IsRefused() bool { return r.refused != nil }

// NotChecked says that nothing was checked and why, or nothing where it was. Whatever
// shows findings shows it in their place.
func (r Result) NotChecked() words.Text {
	if r.Figures != nil {
		return words.Text{}
	}
	if r.refused == nil {
		return words.New("not-checked", "NOT CHECKED")
	}
	why := words.New("plain", "{0}", r.refused.Error())
	if said := new(words.Error); errors.As(r.refused, &said) {
		why = said.Text
	}
	return words.New("not-checked.why", "NOT CHECKED: {0}", why)
}

// scoped is the findings of one opening, side or room, or those of one rule on a level or
// the plan; at least one.
type scoped struct {
	id       plan.ID
	findings []rule.Finding
}

// Key returns the ID of the scope.
func (s *scoped) Key() plan.ID { return s.id }

// Each yields the findings scope by scope, in the order of IDs.
func (r Result) Each() iter.Seq[rule.Finding] {
	return func(yield func(rule.Finding) bool) {
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
func (r Result) All() []rule.Finding {
	all := slices.Collect(r.Each())
	slices.SortStableFunc(all, func(a, b rule.Finding) int {
		return cmp.Or(
			cmp.Compare(b.Weight(), a.Weight()),
			cmp.Compare(a.Room, b.Room),
			cmp.Compare(a.About, b.About),
			cmp.Compare(a.Rule, b.Rule),
		)
	})
	return all
}

// Of returns the findings of one opening, side, room or level by rules of that scope, of
// "plan" those of the plan as a whole.
func (r Result) Of(id plan.ID) (found []rule.Finding) {
	if s, ok := r.scopes.Get(id); ok {
		return s.findings
	}
	for _, one := range Rules {
		if s, ok := r.scopes.Get(partOf(id, one)); ok {
			found = append(found, s.findings...)
		}
	}
	return found
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
		case f.Severity == rule.Stop:
			t.Stop++
		case f.Severity == rule.Warn:
			t.Warn++
		default:
			t.Note++
		}
	}
	return t
}
