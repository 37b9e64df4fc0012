package unit

import "testing"

func TestAreasInParts(t *testing.T) {
	for _, tt := range []struct {
		area   Area
		parts  int64
		want   int64
		source string
	}{
		{SquareInch, 1, 1, "one"},
		{(3 * Inch).Times(2 * Inch), 10_000, 60_000, "arithmetic: 3 × 2"},
		{(-3 * Inch).Times(2 * Inch), 10_000, -60_000, "arithmetic"},
		{(Inch / 2).Times(Inch), 1, 1, "a half away from zero"},
		{(-Inch / 2).Times(Inch), 1, -1, "a half away from zero"},
		{(Inch/2 - 1).Times(Inch), 1, 0, "just under a half"},
		{(1 - Inch/2).Times(Inch), 1, 0, "just under a half"},
		{Area{}, 100, 0, "nothing"},
	} {
		if got := tt.area.SquareInches(tt.parts); got != tt.want {
			t.Errorf("%v in² in parts of %d is %d, want %d (%s)", tt.area, tt.parts, got, tt.want, tt.source)
		}
	}
}

// An inch is 2.54 cm: NIST SP 811 (2008), app. B.8.
func TestSmallAreasRead(t *testing.T) {
	for _, tt := range []struct {
		system System
		area   Area
		want   string
	}{
		{Imperial, (15 * Inch / 2).Times(3 * Inch), "22.5 in²"},
		{Imperial, (2 * Inch).Times(3 * Inch), "6 in²"},
		{Imperial, (5 * Inch).Times(8 * Inch), "40 in²"},
		{Imperial, (Inch / 100).Times(Inch), "0.01 in²"},
		{Imperial, (Inch / 250).Times(Inch), "0 in²"},
		{Imperial, (13 * Inch).Times(169 * Inch / 100), "21.97 in²"},
		{Metric, Inch.Times(Inch), "6.5 cm²"}, // 6.4516
		{Metric, (3 * Inch).Times(2 * Inch), "38.7 cm²"},
		{Metric, (10 * Centimetre).Times(10 * Centimetre), "100 cm²"},
		{Metric, Millimetre.Times(4 * Millimetre), "0 cm²"},
		{Metric, Millimetre.Times(5 * Millimetre), "0.1 cm²"},
	} {
		if got := tt.system.FormatSmallArea(tt.area); got != tt.want {
			t.Errorf("reads %s, want %s", got, tt.want)
		}
	}
	for _, tt := range []struct {
		system System
		area   Area
		want   string
	}{
		{Imperial, (75 * Inch / 16).Times(75 * Inch / 16), "21.9727 in²"}, // 21.97265625
		{Imperial, (4 * Inch).Times(65 * Inch / 16), "16.25 in²"},
		{Imperial, (4 * Inch).Times(4 * Inch), "16 in²"},
		{Metric, (4 * Inch).Times(4 * Inch), "103.226 cm²"}, // 103.2256
		{Metric, (75 * Inch / 16).Times(75 * Inch / 16), "141.759 cm²"},
		{Metric, (11 * Millimetre).Times(13 * Millimetre), "1.43 cm²"},
	} {
		if got := tt.system.FormatFineArea(tt.area); got != tt.want {
			t.Errorf("reads finely %s, want %s", got, tt.want)
		}
	}
	if got := SquareFoot.Mul(2).String(); got != "2 ft²" {
		t.Errorf("two square feet are %s", got)
	}
}
