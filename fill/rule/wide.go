package rule

import (
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/index"
)

// View is what a rule on a level or on the whole plan reads. The rule declares it: it
// holds just what the rule looks at, so that an edit elsewhere costs nothing.
type View interface {
	// Parts returns what the view shows, as values that can be compared: nouns, sets of
	// them, or small structs of what was derived. Two views of one scope with the same
	// parts are the same in all they show.
	Parts() []any
}

// Wide is how a rule on a level or on the whole plan sees and judges. It is built after
// each edit, so seeing must be cheap: sets of nouns are compared whole, by their header.
type Wide struct {
	see func(ix *index.Index, level *plan.Level) (View, func(*code.Figures) []Finding)
}

// See returns what the rule reads of a level, nil for the whole plan, and what judges it.
func (w *Wide) See(ix *index.Index, level *plan.Level) (View, func(*code.Figures) []Finding) {
	return w.see(ix, level)
}

// OnLevel makes a rule look at each level by a view of its own. What it finds is said to
// be of that level.
func OnLevel[V View](see func(*index.Index, *plan.Level) V, judge func(V, *code.Figures) []Finding) *Wide {
	return &Wide{func(ix *index.Index, level *plan.Level) (View, func(*code.Figures) []Finding) {
		v := see(ix, level)
		return v, func(fig *code.Figures) []Finding { return judge(v, fig) }
	}}
}

// OnPlan makes a rule look at the plan as a whole by a view of its own.
func OnPlan[V View](see func(*index.Index) V, judge func(V, *code.Figures) []Finding) *Wide {
	return OnLevel(func(ix *index.Index, _ *plan.Level) V { return see(ix) }, judge)
}
