package fill_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/index"
)

// TestRemediesClearAndStopNothing takes every remedy of plans that carry any fixture, side
// and break: each can be applied, clears the finding it is of and makes no new stop, or
// Makes says which.
func TestRemediesClearAndStopNothing(t *testing.T) {
	const plans = 150
	carried, taken, bad := map[string]bool{}, map[string]int{}, 0
	for seed := range plans {
		p := filltest.Furnished(rand.New(rand.NewPCG(uint64(seed), 1)).IntN)
		note(carried, p)
		for _, fault := range remedyFaults(p, taken) {
			if bad++; bad < 20 {
				t.Errorf("plan %d: %s", seed, fault)
			}
		}
	}
	for _, r := range []string{boxes.Fill.ID, wall.BoxPlace.ID, spacing.WallReach.ID} {
		if taken[r] < 20 {
			t.Errorf("only %d remedies of %s were taken", taken[r], r)
		}
	}
	everyKindIsCarried(t, carried)
}

// remedyFaults applies each remedy of a plan by itself and says what is wrong with what
// comes of it. It counts the remedies by rule.
func remedyFaults(p plan.Plan, taken map[string]int) (faults []string) {
	before, err := fill.Check(index.New(p))
	if err != nil {
		return []string{err.Error()}
	}
	for f := range before.Each() {
		for _, r := range f.Remedies {
			taken[f.Rule]++
			if fault := remedyFault(p, before, f, r); fault != "" {
				faults = append(faults, fmt.Sprintf("%s: “%s” of “%s”: %s", f.Rule, r.Label, f.Message, fault))
			}
		}
	}
	return faults
}

func remedyFault(p plan.Plan, before fill.Result, of rule.Finding, r rule.Remedy) string {
	next, err := r.Edit.Apply(p)
	if err != nil {
		return err.Error()
	}
	if err := plan.Check(next); err != nil {
		return "the plan after it is not sound: " + err.Error()
	}
	after, err := fill.Check(index.New(next))
	if err != nil {
		return err.Error()
	}
	said, err := before.Makes(index.New(p), r)
	if err != nil {
		return err.Error()
	}
	for f := range after.Each() {
		switch {
		case isSame(f, of):
			return "it is found again: " + f.Message.String()
		case f.Severity == rule.Stop && !wasThere(before, f) && (mustBeClean(of) || !isAmong(said, f)):
			return "new stop: " + f.Message.String()
		}
	}
	return ""
}

// mustBeClean reports whether the remedies of a finding make no stop at all: who adds
// receptacles, or moves one along its wall, sees all that is there.
func mustBeClean(f rule.Finding) bool { return f.Rule == spacing.WallReach.ID }

func isAmong(said []rule.Finding, f rule.Finding) bool {
	return slices.ContainsFunc(said, func(s rule.Finding) bool {
		return s.Rule == f.Rule && s.About == f.About && s.Message.String() == f.Message.String()
	})
}

// isSame reports whether a finding is of what another was: the same fault of the same
// opening, or wall of which some is the same.
func isSame(f, was rule.Finding) bool {
	if f.Rule != was.Rule || f.IsOpen != was.IsOpen {
		return false
	}
	if was.Opening != "" {
		return f.Opening == was.Opening && f.Message.ID == was.Message.ID
	}
	return shareWall(f, was)
}

func shareWall(a, b rule.Finding) bool {
	return slices.ContainsFunc(a.Stretches, func(s rule.Stretch) bool {
		return slices.ContainsFunc(b.Stretches, func(o rule.Stretch) bool {
			return s.Host == o.Host && max(s.From, o.From)+1 < min(s.To, o.To)
		})
	})
}

// wasThere reports whether a stop was found before: of the same opening, or of a wall that
// held it.
func wasThere(before fill.Result, f rule.Finding) bool {
	for was := range before.Each() {
		if was.Severity != rule.Stop || was.Rule != f.Rule {
			continue
		}
		if f.Opening != "" && was.Opening == f.Opening && was.Message.ID == f.Message.ID || f.Opening == "" && holds(was, f) {
			return true
		}
	}
	return false
}

// holds reports whether every stretch of a finding lies in one of another; findings
// without any are the same where they are about the same.
func holds(was, f rule.Finding) bool {
	if len(f.Stretches) == 0 {
		return was.About == f.About
	}
	return !slices.ContainsFunc(f.Stretches, func(s rule.Stretch) bool {
		return !slices.ContainsFunc(was.Stretches, func(o rule.Stretch) bool {
			return o.Host == s.Host && o.From <= s.From && s.To <= o.To
		})
	})
}

// note puts down what kinds of thing a plan carries.
func note(carried map[string]bool, p plan.Plan) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			for _, s := range r.Sides {
				carried["side "+string(s.Kind)] = true
			}
		}
		for b := range l.Breaks.All() {
			carried["break "+string(b.Kind)] = true
		}
		for f := range l.Fixtures.All() {
			carried["fixture "+string(f.Kind)] = true
		}
		for o := range l.Openings.All() {
			carried["opening "+o.Kind] = true
		}
	}
}

func everyKindIsCarried(t *testing.T, carried map[string]bool) {
	t.Helper()
	var want []string
	for _, k := range []plan.SideKind{plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen} {
		want = append(want, "side "+string(k))
	}
	for _, k := range plan.BreakKinds {
		want = append(want, "break "+string(k))
	}
	for _, k := range part.All().FixtureIDs() {
		want = append(want, "fixture "+string(k))
	}
	for _, k := range part.All().Kinds {
		want = append(want, "opening "+k.ID)
	}
	for _, w := range want {
		if !carried[w] {
			t.Errorf("no plan carries a %s", w)
		}
	}
}
