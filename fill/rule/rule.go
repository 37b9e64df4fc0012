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

// residential begins sections of the residential code, which is none of the editions.
const residential = "IRC "

// Section returns what the rule cites in an edition, such as "NEC 2023
// 210.52(A)(1)" or "IRC R314.3", or empty.
func (r *Rule) Section(fig *code.Figures) string {
	if r.Figure == "" {
		return ""
	}
	section := fig.Section(r.Figure)
	if strings.HasPrefix(section, residential) {
		return section
	}
	return fig.Title + " " + section
}

// Cited is the title with what the rule cites in an edition.
func (r *Rule) Cited(fig *code.Figures) words.Text {
	if section := r.Section(fig); section != "" {
		return words.New("check.rule", "{0} [{1}]", r.Title, section)
	}
	return r.Title
}
