package ruletest

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan/unit"
)

// Edge is a house with one measure of it at a limit but for so much over, which may be less
// than nothing: up to the limit, rounding let pass, a rule finds so many faults in it, and
// over that others.
type Edge struct {
	Name           string
	Make           func(h *House, over unit.Length)
	Rounding       unit.Length // that the rule lets pass: rule.Grain, or none
	Within, Beyond int
	Source         string
}

// Limit returns an edge.
func Limit(name string, make func(h *House, over unit.Length), rounding unit.Length, within, beyond int, source string) Edge {
	return Edge{Name: name, Make: make, Rounding: rounding, Within: within, Beyond: beyond, Source: source}
}

// Edges holds a rule to its limits, to the nanometre.
func Edges(t *testing.T, of *rule.Rule, edges []Edge) {
	t.Helper()
	for _, e := range edges {
		t.Run(e.Name, func(t *testing.T) {
			for _, try := range []struct {
				over unit.Length
				want int
			}{
				{-unit.Inch / 16, e.Within}, {0, e.Within}, {e.Rounding, e.Within}, {e.Rounding + 1, e.Beyond}, {unit.Inch / 16, e.Beyond},
			} {
				h := New(t)
				e.Make(h, try.over)
				if found := h.Found(of); len(found) != try.want {
					t.Errorf("%s over the limit: found %q, want %d (%s)", try.over, filltest.Said(found), try.want, e.Source)
				}
			}
		})
	}
}
