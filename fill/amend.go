package fill

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// AmendmentName says what an amendment is of.
func AmendmentName(a plan.Amendment) words.Text {
	for _, f := range code.Amendables {
		if f.Name == a.Figure {
			return f.Text
		}
	}
	return RuleName(a.Figure + a.Rule)
}

// CheckAmendment reports why an edition cannot take an amendment.
func CheckAmendment(edition string, a plan.Amendment) error {
	figures, err := code.Edition(edition)
	if err != nil {
		return err
	}
	_, err = figures.WithAmendments([]code.Amendment{{Figure: a.Figure, Value: a.Value, Rule: a.Rule, Reason: a.Reason}})
	return err
}

// IsRule reports whether there is a rule of an ID.
func IsRule(id string) bool {
	return slices.ContainsFunc(Rules, func(r *rule.Rule) bool { return r.ID == id })
}

// RuleName is the title of a rule, or its ID where it is not known.
func RuleName(id string) words.Text {
	for _, r := range Rules {
		if r.ID == id {
			return r.Title
		}
	}
	return words.New("plain", "{0}", id)
}
