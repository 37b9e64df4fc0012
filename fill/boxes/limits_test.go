package boxes

import (
	"testing"

	"studbay/fill/box"
	"studbay/plan"
)

// What a plan may state of a box is what box fill reads: neither refuses what the other takes.
func TestAPlanStatesWhatBoxFillReads(t *testing.T) {
	for _, tt := range []struct {
		what          string
		ofPlan, ofBox int
	}{
		{"times", plan.MaxTimes, box.MostTimes},
		{"wires", plan.MaxWires, box.MostWires},
		{"gangs", plan.MaxGangs, box.MostGangs},
	} {
		if tt.ofPlan != tt.ofBox {
			t.Errorf("%s: a plan keeps %d, box fill reads %d", tt.what, tt.ofPlan, tt.ofBox)
		}
	}
}
