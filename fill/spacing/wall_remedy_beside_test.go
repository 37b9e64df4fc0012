package spacing_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/plan"
)

// TestRemedyStandsBesideABed holds that a receptacle is offered where it can be reached
// as long as it still serves the wall (common practice).
func TestRemedyStandsBesideABed(t *testing.T) {
	for _, tt := range []struct {
		name         string
		kind         plan.FixtureKind
		along, width float64
		from, to     float64 // where it shall stand
	}{
		{"nothing in the way", plan.FixtureRod, 0, 0, 50, 50},
		{"the middle behind a bed", plan.FixtureBed, 40, 56, 28, 37},
		{"a bed wider than the reach leaves", plan.FixtureBed, 10, 80, 50, 50},
		{"a desk leaves the wall in reach", plan.FixtureDesk, 30, 40, 50, 50},
		{"a bed elsewhere", plan.FixtureBed, 0, 30, 50, 50},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, 100)
			if tt.width > 0 {
				r.Fixture(tt.kind, 0, tt.along, tt.width)
			}
			q, err := reach(r)[0].Remedies[0].Edit.Apply(r.Plan())
			if err != nil {
				t.Fatal(err)
			}
			for _, o := range q.Openings() {
				if o.At.Along < in(tt.from) || o.At.Along > in(tt.to) {
					t.Errorf("it stands %s along, want from %v to %v in", o.At.Along.Inches(8), tt.from, tt.to)
				}
			}
		})
	}
}
