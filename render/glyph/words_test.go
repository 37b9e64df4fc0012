package glyph

import (
	"slices"
	"testing"
)

func TestNumbersKeepTheirUnits(t *testing.T) {
	for text, want := range map[string][]string{
		"Range receptacle, 50 A":          {"Range", "receptacle,", "50 A"},
		"is ≈ 5.99 m of wall":             {"is", "≈ 5.99 m", "of", "wall"},
		"needs 20.25 in³; the box":        {"needs", "20.25 in³;", "the", "box"},
		"A box\tof 2 gangs, plan B in it": {"A", "box", "of", "2", "gangs,", "plan", "B", "in", "it"},
		"  ":                              {},
	} {
		if got := Words(text); !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
