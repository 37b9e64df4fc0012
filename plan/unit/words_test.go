package unit

import (
	"math"
	"testing"
)

// Every word for a unit, of one and of several, in either spelling, any case and with the
// point that inches and feet may have. NIST SP 811 (2008), app. B.8: in = 25.4 mm, ft = 12 in.
func TestWordsForUnits(t *testing.T) {
	for word, want := range map[string]Length{
		"mm": 1_000_000, "millimetre": 1_000_000, "millimetres": 1_000_000, "millimeter": 1_000_000, "millimeters": 1_000_000,
		"cm": 10_000_000, "centimetre": 10_000_000, "centimetres": 10_000_000, "centimeter": 10_000_000, "centimeters": 10_000_000,
		"m": 1_000_000_000, "metre": 1_000_000_000, "metres": 1_000_000_000, "meter": 1_000_000_000, "meters": 1_000_000_000,
		"in": 25_400_000, "inch": 25_400_000, "inches": 25_400_000, "in.": 25_400_000, "inches.": 25_400_000, `"`: 25_400_000, "″": 25_400_000, "”": 25_400_000, "“": 25_400_000, "ʺ": 25_400_000, "''": 25_400_000, "′′": 25_400_000, "’’": 25_400_000,
		"ft": 304_800_000, "foot": 304_800_000, "feet": 304_800_000, "ft.": 304_800_000, "'": 304_800_000, "′": 304_800_000, "’": 304_800_000, "‘": 304_800_000, "ʹ": 304_800_000,
	} {
		for _, text := range []string{"3" + word, "3 " + word, " 3  " + word + " ", "3\u00a0" + word, "+3" + word} {
			if got, err := Parse(text, Millimetre); got != 3*want || err != nil {
				t.Errorf("Parse(%q) = %v, %v, want %v", text, got, err, 3*want)
			}
		}
	}
	for _, text := range []string{"3 mm.", "3 m.", "3 ft..", "3 yd", "3 inc", "3'''", `3""`} {
		if got, err := Parse(text, Millimetre); err == nil {
			t.Errorf("Parse(%q) = %v, want it refused", text, got)
		}
	}
}

// Feet with inches behind them, with every mark, hyphen and space between that people type:
// 5 ft 3 in are 63 in, and 1,600.2 mm.
func TestFeetAndInches(t *testing.T) {
	const want = 63 * Inch
	for _, text := range []string{
		`5'3"`, `5' 3"`, `5'-3"`, `5' - 3"`, `5' -3"`, `5'- 3"`, `5 ' 3 "`, `5 ft 3 in`, `5ft3in`, `5 ft-3 in`, `5 ft - 3 in.`, `5 ft. 3`, `5'3`,
		`5' 3`, `5'-3`, `5-3"`, `5 - 3"`, `5 -3 "`, `5- 3 in`, `5–3"`, `5−3"`, `5‑3"`, `5‐3"`, `4.5' 9"`, `5 feet 3 inches`, `+5' 3"`, ` 5' 3" `, `≈ 5' 3"`, `≈5'3"`,
		`4 1/2' 9"`, `5' 3.0"`, `5' 3,0"`,
	} {
		got, err := Parse(text, Millimetre)
		if got != want || err != nil {
			t.Errorf("Parse(%q) = %v, %v, want %v", text, got, err, want)
		}
	}
	for text, want := range map[string]Length{`5-3`: 63, `5 - 3`: 63, `-5-3`: -63, `0-3`: 3, `5-0`: 60, `5-11`: 71} {
		got, err := Parse(text, Foot)
		if got != want*Inch || err != nil {
			t.Errorf("Parse(%q) of feet = %v, %v, want %v in", text, got, err, int64(want))
		}
	}
}

// A nanometre either way of a half goes to the nearer whole one; the half itself away from
// zero.
func TestFromMillimetresRounds(t *testing.T) {
	for mm, want := range map[float64]Length{
		0: 0, 1: Millimetre, -1: -Millimetre, 25.4: Inch, -25.4: -Inch, 0.000_000_4: 0, -0.000_000_4: 0, 0.000_000_6: 1, -0.000_000_6: -1, 0.000_001_4: 1, -0.000_001_4: -1,
		0.000_000_5: 1, -0.000_000_5: -1,
	} {
		if got := FromMillimetres(mm); got != want {
			t.Errorf("%g mm are %d nm, want %d", mm, int64(got), int64(want))
		}
	}
	if got := (-Inch).Millimetres(); got != -25.4 {
		t.Errorf("−1 in is %g mm", got)
	}
}

func TestTheSizeOfALength(t *testing.T) {
	for l, want := range map[Length]Length{0: 0, 1: 1, -1: 1, -Inch: Inch, Inch: Inch} {
		if got := l.Abs(); got != want {
			t.Errorf("of %d the size is %d", int64(l), int64(got))
		}
	}
}

// The nearest multiple, but where that is out of range the next one toward zero: of the
// greatest length, 2⁶³ − 1, in steps of 2³² it would be 2⁶³.
func TestRoundedAtTheEnds(t *testing.T) {
	const most, least, step = Length(math.MaxInt64), Length(math.MinInt64), Length(1) << 32
	for _, tt := range []struct{ l, step, want Length }{
		{most, step, most - step + 1}, {least + 1, step, -(most - step + 1)}, {most, most, most}, {most - 1, most, most}, {most / 2, most, 0}, {most/2 + 1, most, most},
		{most, 1, most}, {least + 1, 1, least + 1}, {-7, 10, -10}, {-4, 10, 0}, {-5, 10, -10}, {5, 10, 10}, {0, 10, 0},
		{most, most - 1, most - 1}, {most, Length(3) << 60, Length(6) << 60}, // 2⅔ steps: three are out of range
	} {
		if got := tt.l.Rounded(tt.step); got != tt.want {
			t.Errorf("%d to the nearest %d is %d, want %d", int64(tt.l), int64(tt.step), int64(got), int64(tt.want))
		}
	}
}

// Under a metre millimetres are shown, from there on metres.
func TestMetricChangesAtAMetre(t *testing.T) {
	for l, want := range map[Length]string{999 * Millimetre: "999 mm", Metre: "1 m", 1001 * Millimetre: "1.001 m", 500 * Millimetre: "500 mm", -Metre: "−1 m", -999 * Millimetre: "−999 mm", 750 * Millimetre: "750 mm"} {
		if got := l.Metric(Millimetre); got != want {
			t.Errorf("%d nm read %s, want %s", int64(l), got, want)
		}
	}
}

// What is no size is no size in a file, and none is thicker than itself.
func TestNoSizeOfWire(t *testing.T) {
	size := AWG(99)
	if err := size.UnmarshalJSON([]byte("0")); err != nil || size != 0 {
		t.Errorf("0 is read as %d, %v", int(size), err)
	}
	if data, err := AWG(0).MarshalJSON(); string(data) != "0" || err != nil || AWG(0).String() != "0" {
		t.Errorf("no size is written as %s and %s, %v", data, AWG(0), err)
	}
	for _, row := range awgRows {
		if row.size.Larger(row.size) {
			t.Errorf("%s is thicker than itself", row.size)
		}
	}
}

// Sums and products at the ends of what 64 bits hold.
func TestMoneyAtTheEnds(t *testing.T) {
	const most, least = math.MaxInt64, math.MinInt64
	for _, tt := range []struct {
		cents, n int64
		ok       bool
	}{{least, -1, false}, {least, 1, true}, {most, -1, true}, {0, -1, true}, {5, -1, true}, {-5, -1, true}, {most, 2, false}, {least, 2, false}, {most, 0, true}, {least, 0, true}, {1, least, true}, {-1, least, false}, {2, least, false}} {
		got, err := Money{tt.cents, "USD"}.Times(tt.n)
		if (err == nil) != tt.ok || err == nil && got != (Money{tt.cents * tt.n, "USD"}) || err != nil && got != (Money{}) {
			t.Errorf("%d × %d = %v, %v", tt.cents, tt.n, got, err)
		}
	}
	for _, tt := range []struct {
		a, b int64
		ok   bool
	}{{most, 1, false}, {most, -1, true}, {least, -1, false}, {least, 1, true}, {most, 0, true}, {least, 0, true}, {most, most, false}, {least, least, false}} {
		got, err := Money{tt.a, "USD"}.Add(Money{tt.b, "USD"})
		if (err == nil) != tt.ok || err == nil && got != (Money{tt.a + tt.b, "USD"}) || err != nil && got != (Money{}) {
			t.Errorf("%d + %d = %v, %v", tt.a, tt.b, got, err)
		}
	}
}
