package unit

import "testing"

// What is proposed by itself in a metric plan is round in it, and near what it stands for.
func TestUsualSizesAreRound(t *testing.T) {
	for _, l := range []Length{Inch, 9 * Inch / 4, 24 * Inch, 80 * Inch} {
		if got := Imperial.Usual(l); got != l {
			t.Errorf("imperial: %s of %s", Imperial.Format(got), Imperial.Format(l))
		}
		got := Metric.Usual(l)
		if !got.IsMultiple(Metric.Grid()) || (got-l).Abs() > Metric.Grid()/2 {
			t.Errorf("metric: %s of %s", Metric.Format(got), Metric.Format(l))
		}
	}
}
