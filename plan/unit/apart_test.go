package unit

import "testing"

func TestTwoLengthsThatDifferNeverLookTheSame(t *testing.T) {
	for _, tt := range []struct {
		system   System
		l, other Length
		want     string
	}{ // an inch is 25.4 mm: NIST SP 811 (2008), app. B.8
		{Imperial, 6 * Foot, 6 * Foot, `6' 0"`},
		{Imperial, 6*Foot + Inch/16, 6 * Foot, `6' 0-1/16"`},
		{Imperial, 6*Foot + Inch/50, 6 * Foot, `72.02"`},
		{Imperial, 6*Foot + Inch/1000, 6 * Foot, `72.001"`},
		{Imperial, 6*Foot + 254, 6 * Foot, `72.00001"`},
		{Imperial, 6*Foot + 1, 6 * Foot, `1828.800001 mm`},
		{Imperial, Inch / 100, 0, `0.01"`},
		{Imperial, 6*Foot + Inch/1000 + 1, 6 * Foot, `≈ 72.001"`},
		{Metric, 1800*Millimetre + 2*Millimetre/5, 1800 * Millimetre, `1800.4 mm`},
		{Metric, 1800*Millimetre + 1, 1800 * Millimetre, `1800.000001 mm`},
		{Metric, 1829 * Millimetre, 1800 * Millimetre, `1.829 m`},
	} {
		if got := tt.system.FormatApart(tt.l, tt.other); got != tt.want {
			t.Errorf("%s beside %s reads %q, want %q", tt.l, tt.other, got, tt.want)
		}
	}
}
