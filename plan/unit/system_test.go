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

func TestBareDecimalsAreMetres(t *testing.T) {
	for _, row := range []struct {
		system System
		text   string
		want   Length
	}{
		{Metric, "3.25", 3250 * Millimetre}, {Metric, "3,25", 3250 * Millimetre}, {Metric, "-0,5", -500 * Millimetre},
		{Metric, "1,943", 1943 * Millimetre}, {Metric, "3250", 3250 * Millimetre}, {Metric, "12.7 mm", Inch / 2},
		{Metric, "45 cm", 450 * Millimetre}, {Metric, `6' 4"`, 76 * Inch}, {Imperial, "3.25", 13 * Inch / 4},
	} {
		if got, err := row.system.Parse(row.text); err != nil || got != row.want {
			t.Errorf("%q is %s, %v; want %s", row.text, Metric.Format(got), err, Metric.Format(row.want))
		}
	}
}

func TestTwoSizesAreReadAlike(t *testing.T) {
	for _, row := range []struct{ first, second string }{{"3.25", "4"}, {"3250", "4000"}, {"3,25", "4,0"}, {"3250", "4 m"}, {"3.25", "400 cm"}} {
		w, h, err := Metric.ParseTwo(row.first, row.second)
		if err != nil || w != 3250*Millimetre || h != 4*Metre {
			t.Errorf("%s by %s is %s by %s, %v", row.first, row.second, Metric.Format(w), Metric.Format(h), err)
		}
	}
}
