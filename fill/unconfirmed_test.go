package fill_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestAnEditionThatIsHardlyKnown: of 2026 the sections on islands alone are told
// (210.52(C)(2) and (4), by courses on its changes). A rule without figures of it finds
// nothing and says NOT CHECKED; what is practice, or of the residential code, is judged as
// ever.
func TestAnEditionThatIsHardlyKnown(t *testing.T) {
	house := func(edition string) *ruletest.House {
		h := ruletest.New(t)
		h.Edition = edition
		r := h.Square(plan.UseKitchen, 0, 0, 240, 160)
		r.Fixture(plan.FixtureCounter, 0, 20, 120)
		i := r.Island(120, 80, 60, 30)
		r.Opening("island", plan.Anchor{Host: i.ID, Part: plan.PartFront, Along: ruletest.In(30)}, ruletest.Up(30))
		r.Opening("duplex", r.On(3, 60))                  // in a kitchen, 210.8(A)(6)
		r.Opening("switch", r.On(2, 60), ruletest.Up(90)) // past 6 ft 7 in, 404.8(A)
		h.Square(plan.UseBedroom, 300, 0, 120, 120)       // without a smoke alarm, IRC R314.3
		return h
	}
	found := func(h *ruletest.House) (rules []string) {
		for _, f := range filltest.Check(t, h.Made()).All() {
			rules = append(rules, f.Rule)
		}
		return rules
	}
	known, hardly := found(house("2023")), found(house("2026"))
	for _, rule := range []string{"wall-reach", "counter-reach", "switch-height", "lit-room", "ground-fault", "smoke-alarm"} {
		if !slices.Contains(known, rule) {
			t.Errorf("2023: nothing by %s", rule)
		}
		if isJudged := rule == "counter-reach" || rule == "smoke-alarm"; slices.Contains(hardly, rule) != isJudged {
			t.Errorf("2026: found by %s: %v", rule, !isJudged)
		}
	}

	h := house("2026")
	p := h.Made()
	result := filltest.Check(t, p)
	for _, l := range result.Looked(p.Levels...) {
		at := "NOT CHECKED: its figures in NEC 2026 are not confirmed"
		switch l.Rule.ID {
		case "wall-reach", "switch-height", "box-fill", "ground-fault":
			if len(l.At) != 0 || len(l.Not) != 2 || l.Not[0].Why.String() != at {
				t.Errorf("%s looked at %d rooms, and left %v", l.Rule.ID, len(l.At), l.Not)
			}
		case "counter-reach":
			at = "only islands and peninsulas are checked; wall counters are NOT CHECKED, since their figures in NEC 2026 are not confirmed"
			if len(l.Not) != 2 || l.Not[0].Why.String() != at {
				t.Errorf("%s left %v", l.Rule.ID, l.Not)
			}
		case "smoke-alarm", "height-outlier":
			if len(l.At) == 0 {
				t.Errorf("%s looked at nothing", l.Rule.ID)
			}
		}
	}
	alike := result.LookedAlike(p.Levels...)
	last := alike[len(alike)-1]
	if len(last.Rules) != len(result.Unconfirmed()) || last.Where.String() != "NOT CHECKED, since their figures in NEC 2026 are not confirmed" {
		t.Errorf("of %d rules: %s", len(last.Rules), last.Where)
	}
	if got, want := result.UnconfirmedText().String(), fmt.Sprintf("NOT CHECKED by %d rules: their figures in NEC 2026 are not confirmed.", len(result.Unconfirmed())); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	for _, r := range result.Unconfirmed() {
		if r.Section(result.Figures) != "" || r.Cited(result.Figures).String() != r.Title.String()+" [NEC 2026: NOT CHECKED]" {
			t.Errorf("%s cites %q", r.ID, r.Section(result.Figures))
		}
	}
	if of2023, err := fill.Check(index.New(house("2023").Made())); err != nil || len(of2023.Unconfirmed()) != 0 || !of2023.UnconfirmedText().IsZero() {
		t.Errorf("2023 leaves %d rules unconfirmed", len(of2023.Unconfirmed()))
	}
}
