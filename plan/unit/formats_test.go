package unit

import "testing"

// What each system takes a bare number for, shows and lays out by. A tape is marked to
// 1/16 in or 1 mm; common practice.
func TestWhatASystemGoesBy(t *testing.T) {
	for _, tt := range []struct {
		system                     System
		bare, step, grid, placing_ Length
	}{
		{Imperial, Inch, Inch / 16, Inch, Inch / 2},
		{Metric, Millimetre, Millimetre, 10 * Millimetre, 10 * Millimetre},
	} {
		s := tt.system
		if s.Bare() != tt.bare || s.Step() != tt.step || s.Grid() != tt.grid || s.Placing() != tt.placing_ {
			t.Errorf("%d: %v, %v, %v, %v", int(s), s.Bare(), s.Step(), s.Grid(), s.Placing())
		}
	}
}

// Under 100 mm whole tenths are shown, as thicknesses are sold; from there on, and of what
// is no whole tenth, whole millimeters.
func TestTenthsOfAMillimeter(t *testing.T) {
	const mm = Millimetre
	for l, want := range map[Length][2]string{
		127 * mm / 10: {"12.7 mm", "12.7 mm"}, -127 * mm / 10: {"−12.7 mm", "−12.7 mm"}, 999 * mm / 10: {"99.9 mm", "99.9 mm"}, -999 * mm / 10: {"−99.9 mm", "−99.9 mm"},
		1001 * mm / 10: {"≈ 100 mm", "≈ 100 mm"}, 100 * mm: {"100 mm", "100 mm"}, 1274 * mm / 100: {"≈ 13 mm", "≈ 13 mm"}, 1500 * mm: {"1.5 m", "1500 mm"}, 0: {"0 mm", "0 mm"},
		15004 * mm / 10: {"≈ 1.5 m", "≈ 1500 mm"},
	} {
		if got := [2]string{Metric.Format(l), Metric.Short(l)}; got != want {
			t.Errorf("%v reads %q, want %q", l, got, want)
		}
	}
	for l, want := range map[Length][2]string{
		Inch / 16: {`1/16"`, `1/16"`}, Inch / 32: {`≈ 1/16"`, `≈ 1/16"`}, 18 * Inch: {`1' 6"`, `18"`}, -18 * Inch: {`−1' 6"`, `−18"`}, 127 * mm / 10: {`1/2"`, `1/2"`}, mm: {`≈ 1/16"`, `≈ 1/16"`},
	} {
		if got := [2]string{Imperial.Format(l), Imperial.Short(l)}; got != want {
			t.Errorf("%v reads %q, want %q", l, got, want)
		}
	}
}

// The size of a room: a bare metric number under 100 is meters, from 100 on millimeters; a
// number with its unit is what it says, whatever the size.
func TestSizesOfRooms(t *testing.T) {
	for _, tt := range []struct {
		system System
		text   string
		want   Length
	}{
		{Metric, "4", 4 * Metre}, {Metric, "99", 99 * Metre}, {Metric, "100", 100 * Millimetre}, {Metric, "3250", 3250 * Millimetre}, {Metric, "-4", -4 * Metre}, {Metric, "-100", -100 * Millimetre}, {Metric, "−99", -99 * Metre},
		{Metric, "4 mm", 4 * Millimetre}, {Metric, "40 cm", 400 * Millimetre}, {Metric, "4.5", 4500 * Millimetre}, {Metric, "4,5", 4500 * Millimetre}, {Metric, `4'`, 4 * Foot}, {Metric, `4"`, 4 * Inch}, {Metric, "+4", 4 * Metre},
		{Imperial, "4", 4 * Inch}, {Imperial, "100", 100 * Inch}, {Imperial, "4.5", 9 * Inch / 2}, {Imperial, "4 m", 4 * Metre},
	} {
		if got, err := tt.system.ParseRoom(tt.text); got != tt.want || err != nil {
			t.Errorf("%q is %v, %v, want %v", tt.text, got, err, tt.want)
		}
	}
	for _, text := range []string{"", "x", "4 x", "1/3\""} {
		if got, err := Metric.ParseRoom(text); err == nil || got != 0 {
			t.Errorf("%q is %v, %v", text, got, err)
		}
	}
}

// Two sizes: beside a bare decimal of meters a bare number is meters too, even 250; two bare
// imperial numbers under 36 are feet (common practice); each else is read by itself.
func TestTwoSizesOfRooms(t *testing.T) {
	for _, tt := range []struct {
		system        System
		first, second string
		a, b          Length
	}{
		{Metric, "3.25", "250", 3250 * Millimetre, 250 * Metre}, {Metric, "250", "3.25", 250 * Metre, 3250 * Millimetre}, {Metric, "250", "3250", 250 * Millimetre, 3250 * Millimetre},
		{Metric, "3", "3250", 3 * Metre, 3250 * Millimetre}, {Imperial, "3.25", "4", 39 * Inch, 4 * Foot}, {Imperial, "8", "5", 8 * Foot, 5 * Foot}, {Imperial, "8 1/2", "35", 102 * Inch, 35 * Foot}, {Imperial, "36", "35", 36 * Inch, 35 * Inch}, {Imperial, "35", "36", 35 * Inch, 36 * Inch},
		{Imperial, "96", "60", 96 * Inch, 60 * Inch}, {Imperial, "8", "5'", 8 * Inch, 5 * Foot}, {Imperial, `8"`, "5", 8 * Inch, 5 * Inch}, {Imperial, "30", "24 in", 30 * Inch, 24 * Inch}, {Metric, "3.25", "4 cm", 3250 * Millimetre, 4 * Centimetre},
	} {
		if a, b, err := tt.system.ParseTwo(tt.first, tt.second); a != tt.a || b != tt.b || err != nil {
			t.Errorf("%q by %q is %v by %v, %v, want %v by %v", tt.first, tt.second, a, b, err, tt.a, tt.b)
		}
	}
	for _, bad := range [][2]string{{"x", "4"}, {"4", "x"}, {"", ""}} {
		if _, _, err := Metric.ParseTwo(bad[0], bad[1]); err == nil {
			t.Errorf("%q is read", bad)
		}
	}
}

// Volumes read in cubic inches, and in cubic centimeters beside them: 1 in³ = 16.387064 cm³.
func TestVolumesRead(t *testing.T) {
	for v, want := range map[Volume][2]string{
		20*CubicInch + CubicInch/4: {"20.25 in³", "20.25 in³ (332 cm³)"}, 0: {"0 in³", "0 in³ (0 cm³)"}, -CubicInch: {"−1 in³", "−1 in³ (−16 cm³)"},
		CubicInch / 40: {"0.025 in³", "0.025 in³ (0 cm³)"}, -CubicInch / 40: {"−0.025 in³", "−0.025 in³ (0 cm³)"}, 306: {"0.0306 in³", "0.0306 in³ (1 cm³)"}, 305: {"0.0305 in³", "0.0305 in³ (0 cm³)"},
	} {
		if got := [2]string{Imperial.FormatVolume(v), Metric.FormatVolume(v)}; got != want {
			t.Errorf("reads %q, want %q", got, want)
		}
	}
	for _, word := range []string{"", " in3", " IN³", " in^3", " cu in", " cu. in.", " pulg3", " pulg³", "\u00a0in³"} {
		if got, err := ParseVolume("18" + word); got != 18*CubicInch || err != nil {
			t.Errorf("18%s is %v, %v", word, got, err)
		}
	}
	for _, word := range []string{"cm3", "cm³", "cm^3", "cc", "cu cm", "cu. cm."} { // 163.87064 cm³ are 10 in³
		if got, err := ParseVolume("163.87064 " + word); got != 10*CubicInch || err != nil {
			t.Errorf("in %s it is %v, %v", word, got, err)
		}
	}
}
