package fill_test

import (
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// A metric plan is proposed metric sizes: rooms, openings and remedies alike; and a
// change of the units alone judges the plan anew.
func TestMetricPlansGetMetricSizes(t *testing.T) {
	const width = 4250 * unit.Millimetre
	made := fill.NewRoom(unit.Metric, "raaaaaaaa", "Den", geom.Polygon{{}, {X: width}, {X: width, Y: width}, {Y: width}},
		[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	if made.Ceiling != 2400*unit.Millimetre || made.Sides[0].Studs.Spacing != 400*unit.Millimetre {
		t.Errorf("a new room: ceiling %s, studs at %s", unit.Metric.Format(made.Ceiling), unit.Metric.Short(made.Sides[0].Studs.Spacing))
	}
	r := &filltest.Room{T: t, Room: &made, Edition: "2023"}
	p := r.Plan()
	var c fill.Checker
	for _, units := range []string{plan.UnitsImperial, plan.UnitsMetric} {
		p, err := edit.SetUnits{Units: units}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		result, err := c.Update(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		cured := p
		for _, f := range result.Of(made.ID) {
			if f.Rule == spacing.WallReach.ID {
				if cured, err = f.Remedies[0].Edit.Apply(cured); err != nil {
					t.Fatal(err)
				}
			}
		}
		tape, grid, n := p.Header.System().Step(), p.Header.System().Grid(), 0 // along it stands against a stud
		for _, o := range cured.Openings() {
			n++
			if !o.At.Along.IsMultiple(tape) || !o.Height.Value.IsMultiple(grid) {
				t.Errorf("%s: a remedy at %s, %s up", units, unit.Metric.Format(o.At.Along), unit.Metric.Format(o.Height.Value))
			}
		}
		if n == 0 {
			t.Errorf("%s: no remedy was taken", units)
		}
	}
}
