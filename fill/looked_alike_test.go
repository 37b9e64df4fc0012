package fill_test

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestEveryRuleSaysOnceWhereItLooked: each rule is in one group, and each room of the plan
// is either one that its group looked at, or left with the reason, or none that the rule's
// section names.
func TestEveryRuleSaysOnceWhereItLooked(t *testing.T) {
	h := ruletest.New(t)
	h.Square(plan.UseKitchen, 0, 0, 120, 120)
	h.Square(plan.UseHall, 200, 0, 120, 60)
	h.Square(plan.UseUnknown, 400, 0, 120, 120)
	p := h.Made()
	r, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	all := r.LookedAlike(p.Levels...)
	seen := map[string]string{}
	for _, g := range all {
		for _, one := range g.Rules {
			if was, twice := seen[one.ID]; twice {
				t.Errorf("%s stands in %q and in %q", one.ID, was, g.Where)
			}
			seen[one.ID] = g.Where.String()
			for _, not := range g.Not {
				seen[one.ID] += "; " + not.String()
			}
		}
	}
	if len(seen) != len(fill.Rules) {
		t.Errorf("%d of %d rules are told", len(seen), len(fill.Rules))
	}
	if len(all) > len(fill.Rules)/3 {
		t.Errorf("%d groups for %d rules are no shorter list", len(all), len(fill.Rules))
	}
	names := map[plan.Use]string{}
	for room := range p.Levels[0].Rooms.All() {
		names[room.Use] = room.Name
	}
	for id, want := range map[string][]string{ // by the rooms that each section names
		"box-fill":         {"In every room"},
		"wall-reach":       {"In " + names[plan.UseKitchen] + ", since", "Not in " + names[plan.UseUnknown] + ": its use is not known"},
		"hall-receptacle":  {"In " + names[plan.UseHall] + ", since", "Not in " + names[plan.UseUnknown] + ": its use is not known"},
		"foyer-receptacle": {"In no room, since", "Not in " + names[plan.UseUnknown] + ": its use is not known"},
		"ground-fault":     {"Not in " + names[plan.UseUnknown] + ": its use is not known"},
		"rooms-apart":      {"In "},
		"open-decision":    {"In the plan as a whole"},
	} {
		for _, part := range want {
			if !strings.Contains(seen[id], part) {
				t.Errorf("%s: %q, want %q in it", id, seen[id], part)
			}
		}
	}
	if groups := (fill.Result{}).LookedAlike(p.Levels...); slices.ContainsFunc(groups, func(fill.LookedAlike) bool { return true }) {
		t.Errorf("what was not checked claims %v", groups)
	}
}
