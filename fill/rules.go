// Package fill holds the checks: what a plan's openings and rooms are measured
// against, one file a rule or family, and the checker that keeps findings current
// while the plan is edited.
//
// A check says what it looked at and what it found. It never says that an
// installation complies: the adopted local code and those who enforce it decide.
package fill

import (
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/words"
)

// Rule is one check and all that is said of it anywhere. Exactly one of the judging
// functions is set: it names the scope. A judging function may read its view and
// the figures, nothing else; one on the plan as a whole only what planWideMayDiffer
// looks at, so that an edit elsewhere costs nothing.
type Rule struct {
	ID     string // stable: waivers and amendments name it
	Title  words.Text
	Figure string     // the figure in assets/code whose section the rule cites, or empty
	Doc    words.Text // what it looks at, and what it does not

	Opening func(plan.OpeningView, *code.Figures) []Finding
	Room    func(plan.RoomView, *code.Figures) []Finding
	Plan    func(plan.Plan, *code.Figures) []Finding
}

// Rules are run in this order, which is also that of the rule book.
var Rules = []*Rule{&boxFill, &wallReach, &boxPlace, &partitionDepth, &openDecision}

// Section returns what the rule cites in an edition, such as "NEC 2023
// 210.52(A)(1)", or empty.
func (r *Rule) Section(fig *code.Figures) string {
	if r.Figure == "" {
		return ""
	}
	return fig.Title + " " + fig.Section(r.Figure)
}
