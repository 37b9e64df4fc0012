package fill

import (
	"cmp"
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
)

// Filter is which findings are listed. The zero value lists all.
type Filter struct {
	Least rule.Severity // and what is worse; open questions are notes
	Room  plan.ID       // empty: any
	Rule  string        // empty: any
}

// IsZero reports whether all are listed.
func (f Filter) IsZero() bool { return f == Filter{} }

// Of returns those that are listed, in their order.
func (f Filter) Of(all []rule.Finding) (listed []rule.Finding) {
	for _, one := range all {
		if one.Severity >= f.Least && (f.Room == "" || one.Room == f.Room) && (f.Rule == "" || one.Rule == f.Rule) {
			listed = append(listed, one)
		}
	}
	return listed
}

// RulesOf lists the rules that some findings are of, in the order of Rules.
func RulesOf(all []rule.Finding) (rules []*rule.Rule) {
	for _, r := range Rules {
		if slices.ContainsFunc(all, func(f rule.Finding) bool { return f.Rule == r.ID }) {
			rules = append(rules, r)
		}
	}
	return rules
}

// RoomsOf lists the rooms that some findings are in, by their IDs; what is in none is left
// out.
func RoomsOf(all []rule.Finding) (rooms []plan.ID) {
	for _, f := range all {
		if f.Room != "" {
			rooms = append(rooms, f.Room)
		}
	}
	slices.SortFunc(rooms, cmp.Compare[plan.ID])
	return slices.Compact(rooms)
}
