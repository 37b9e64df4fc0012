// Package rule holds what a check is and what it says: the rule with all that is
// told of it, the views that rules read, and findings with their remedies.
//
// A rule reads its view and the figures, nothing else. Two views with the same parts
// show the same, so that a rule is judged again only where a part of its view is
// another. A finding says what was measured and found, never that anything complies.
package rule

import (
	"strings"

	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Rule is one check and all that is said of it anywhere. Exactly one of the judging
// functions is set: it names the scope.
type Rule struct {
	ID     string // stable: waivers and amendments name it
	Title  words.Text
	Figure string     // the figure in assets/code whose section the rule cites, or empty
	Parts  []string   // figures of parts of it that stand where that is not confirmed
	Doc    words.Text // what it looks at, and what it does not

	// Leaves says why the rule does not look at a room, or nothing where it does. Nil: it
	// looks at every room.
	Leaves func(*plan.Room, *code.Figures) words.Text

	Opening func(index.OpeningView, *code.Figures) []Finding
	Side    func(SideView, *code.Figures) []Finding
	Room    func(index.RoomView, *code.Figures) []Finding
	Level   *Wide // made by OnLevel
	Plan    *Wide // made by OnPlan
}

// Section returns what the rule cites in an edition, such as "NEC 2023
// 210.52(A)(1)" or "IRC R314.3", or empty. Where but a part of it is confirmed, that is
// cited; where nothing is, nothing.
func (r *Rule) Section(fig *code.Figures) string {
	figure := r.confirmed(fig)
	if figure == "" {
		return ""
	}
	section := fig.Section(figure)
	if strings.HasPrefix(section, code.Residential) {
		return section
	}
	return fig.Title + " " + section
}

// confirmed returns the first figure of the rule that the edition is known to have.
func (r *Rule) confirmed(fig *code.Figures) string {
	for _, figure := range append([]string{r.Figure}, r.Parts...) {
		if figure != "" && fig.IsConfirmed(figure) {
			return figure
		}
	}
	return ""
}

// IsConfirmed reports whether the rule, or a part of it, can be judged by an edition: one
// that rests on no section always can.
func (r *Rule) IsConfirmed(fig *code.Figures) bool { return r.Figure == "" || r.confirmed(fig) != "" }

// Cited is the title with what the rule cites in an edition.
func (r *Rule) Cited(fig *code.Figures) words.Text {
	if !r.IsConfirmed(fig) {
		return words.New("check.rule-unconfirmed", "{0} [{1}: NOT CHECKED]", r.Title, fig.Title)
	}
	if section := r.Section(fig); section != "" {
		return words.New("check.rule", "{0} [{1}]", r.Title, section)
	}
	return r.Title
}
