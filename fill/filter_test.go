package fill_test

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
)

// TestWhichFindingsAreListed by weight, room and rule, and all of these together.
func TestWhichFindingsAreListed(t *testing.T) {
	all := []rule.Finding{
		{Rule: "wall-reach", Room: "r2", Severity: rule.Stop},
		{Rule: "box-fill", Room: "r1", Severity: rule.Stop},
		{Rule: "box-fill", Room: "r2", Severity: rule.Warn},
		{Rule: "open-decision", Severity: rule.Note, IsOpen: true},
	}
	for _, tt := range []struct {
		by   fill.Filter
		want []int
	}{
		{fill.Filter{}, []int{0, 1, 2, 3}},
		{fill.Filter{Least: rule.Warn}, []int{0, 1, 2}},
		{fill.Filter{Least: rule.Stop}, []int{0, 1}},
		{fill.Filter{Room: "r2"}, []int{0, 2}},
		{fill.Filter{Rule: "box-fill"}, []int{1, 2}},
		{fill.Filter{Least: rule.Stop, Room: "r2", Rule: "box-fill"}, nil},
		{fill.Filter{Least: rule.Warn, Room: "r2", Rule: "box-fill"}, []int{2}},
	} {
		var got []int
		for _, f := range tt.by.Of(all) {
			got = append(got, slices.IndexFunc(all, func(g rule.Finding) bool {
				return g.Rule == f.Rule && g.Room == f.Room && g.Severity == f.Severity
			}))
		}
		if !slices.Equal(got, tt.want) || tt.by.IsZero() != (len(tt.want) == len(all)) {
			t.Errorf("%+v lists %v, want %v", tt.by, got, tt.want)
		}
	}
	if rooms := fill.RoomsOf(all); !slices.Equal(rooms, []plan.ID{"r1", "r2"}) {
		t.Errorf("rooms %v", rooms)
	}
	var rules []string
	for _, r := range fill.RulesOf(all) {
		rules = append(rules, r.ID)
	}
	if !slices.Equal(rules, []string{"box-fill", "wall-reach", "open-decision"}) {
		t.Errorf("rules %v", rules)
	}
}
