package ruletest

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/rule"
)

// Trial is a house of which a rule finds so much, and where that is said.
type Trial struct {
	Name   string
	Make   func(*House)
	Found  int
	Source string
}

// Case returns a trial.
func Case(name string, make func(*House), found int, source string) Trial {
	return Trial{Name: name, Make: make, Found: found, Source: source}
}

// Try holds a rule to trials, turned every way; where one thing is found its remedies are
// to clear it.
func Try(t *testing.T, of *rule.Rule, trials []Trial) {
	t.Helper()
	for _, tt := range trials {
		t.Run(tt.Name, func(t *testing.T) {
			h := New(t)
			tt.Make(h)
			found := h.Found(of)
			if len(found) != tt.Found {
				t.Errorf("found %q, want %d (%s)", filltest.Said(found), tt.Found, tt.Source)
			}
			for _, f := range found {
				for _, r := range f.Remedies {
					after, err := r.Edit.Apply(h.Made())
					if err != nil {
						t.Errorf("%s: %v", r.Label, err)
					} else if left := filltest.FoundIn(t, after, of.ID); len(left) >= len(found) {
						t.Errorf("%s leaves %q", r.Label, filltest.Said(left))
					}
				}
			}
			h.HoldsTurned(of)
		})
	}
}
