package unit

import (
	"encoding/json"
	"errors"
	"testing"

	"pgregory.net/rapid"
)

func TestLengthText(t *testing.T) {
	for _, tt := range []struct {
		name   string
		got    string
		want   string
		source string
	}{
		{"exact, whole", (1943 * Millimetre).Exact(), "1943", "arithmetic"},
		{"exact, a decimal", FeetInches(6, 4, 8).Exact(), "1943.1", "arithmetic: 76.5 × 25.4"},
		{"exact, 1/64 in", (Inch / 64).Exact(), "0.396875", "arithmetic: 25.4 / 64"},
		{"exact, below zero", (-Inch / 2).Exact(), "-12.7", "arithmetic"},
		{"exact, nothing", Length(0).Exact(), "0", "arithmetic"},
		{"exact, the least", Length(-1 << 63).Exact(), "-9223372036854.775808", "arithmetic: -2^63"},
		{"with its unit", (405 * Millimetre).String(), "405 mm", "own form"},

		{"tape", FeetInches(6, 4, 8).FeetInches(16), `6' 4-1/2"`, "common practice"},
		{"tape, nothing", Length(0).FeetInches(16), `0"`, "common practice"},
		{"tape, under a foot", FeetInches(0, 4, 8).FeetInches(16), `4-1/2"`, "common practice"},
		{"tape, under an inch", FeetInches(0, 0, 6).FeetInches(16), `3/8"`, "arithmetic: 6/16 in lowest terms"},
		{"tape, whole feet", (6 * Foot).FeetInches(16), `6' 0"`, "common practice"},
		{"tape, no whole inch", FeetInches(6, 0, 1).FeetInches(16), `6' 0-1/16"`, "common practice"},
		{"tape, below zero", (-FeetInches(6, 4, 8)).FeetInches(16), `−6' 4-1/2"`, "own form: U+2212"},
		{"tape, half a step away from zero", (Inch / 32).FeetInches(16), `1/16"`, "arithmetic"},
		{"tape, half a step away from zero, below", (-Inch / 32).FeetInches(16), `−1/16"`, "arithmetic"},
		{"tape, just under half a step", (Inch/32 - 1).FeetInches(16), `0"`, "arithmetic"},
		{"tape, nothing has no sign", (1 - Inch/32).FeetInches(16), `0"`, "arithmetic"},
		{"tape, rounded up into a foot", (Foot - 1).FeetInches(16), `1' 0"`, "arithmetic"},
		{"tape, whole inches only", FeetInches(6, 4, 8).FeetInches(1), `6' 5"`, "arithmetic"},
		{"tape, a metre", Metre.FeetInches(16), `3' 3-3/8"`, "arithmetic: 39.370 in, 629.9 sixteenths"},
		{"inches", FeetInches(6, 4, 8).Inches(16), `76-1/2"`, "common practice"},
		{"inches, 64ths", (Inch / 64).Inches(64), `1/64"`, "arithmetic"},

		{"metric, millimetres", (405 * Millimetre).Metric(Millimetre), "405 mm", "common practice"},
		{"metric, metres", (1940 * Millimetre).Metric(Millimetre), "1.94 m", "common practice"},
		{"metric, a metre", Metre.Metric(Millimetre), "1 m", "common practice"},
		{"metric, rounded up into a metre", (Metre - 1).Metric(Millimetre), "1 m", "arithmetic"},
		{"metric, rounded to 5 mm", (1943 * Millimetre).Metric(5 * Millimetre), "1.945 m", "arithmetic"},
		{"metric, below zero", (-405 * Millimetre).Metric(Millimetre), "−405 mm", "own form: U+2212"},
		{"metric, nothing", Length(0).Metric(Millimetre), "0 mm", "arithmetic"},
		{"metric, a finer step", (Inch / 2).Metric(Millimetre / 10), "12.7 mm", "arithmetic"},
		{"metric, nothing has no sign", Length(-1).Metric(Millimetre), "0 mm", "arithmetic"},

		{"imperial", Imperial.Format(FeetInches(6, 4, 8)), `6' 4-1/2"`, "own form"},
		{"imperial, rounded", Imperial.Format(405 * Millimetre), `≈ 1' 3-15/16"`, "arithmetic: 15.945 in, 255.1 sixteenths"},
		{"imperial, a height", Imperial.Short(FeetInches(2, 2, 8)), `26-1/2"`, "own form"},
		{"imperial, a whole height", Imperial.Short(16 * Inch), `16"`, "own form"},
		{"imperial, a rounded height", Imperial.Short(405 * Millimetre), `≈ 15-15/16"`, "arithmetic"},
		{"metric", Metric.Format(1940 * Millimetre), "1.94 m", "own form"},
		{"metric, rounded", Metric.Format(16 * Inch), "≈ 406 mm", "arithmetic: 406.4"},
		{"metric, a thickness in whole tenths", Metric.Format(Inch / 2), "12.7 mm", "how such board is sold"},
		{"metric, a thickness of no whole tenths", Metric.Short(5 * Inch / 8), "≈ 16 mm", "arithmetic: 15.875"},
		{"metric, a length with tenths from 100 mm on", Metric.Format(4 * Inch), "≈ 102 mm", "arithmetic: 101.6"},
		{"metric, a height", Metric.Short(1200 * Millimetre), "1200 mm", "own form"},
		{"metric, a rounded height", Metric.Short(48 * Inch), "≈ 1219 mm", "arithmetic: 1219.2"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if tt.got != tt.want {
				t.Errorf("got %s, want %s (%s)", tt.got, tt.want, tt.source)
			}
		})
	}
}

// TestRoundedTextIsNear holds for every rounded form that it reads back to within half
// a step, and to the very same length where that is a multiple of the step.
func TestRoundedTextIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		den := rapid.SampledFrom([]int64{1, 2, 4, 8, 16, 32, 64}).Draw(t, "den")
		step := rapid.SampledFrom([]Length{1, 100_000, Millimetre, 5 * Millimetre, Centimetre}).Draw(t, "step")
		l := lengths().Draw(t, "l")
		l = min(max(l, -1<<62), 1<<62) // at the rim the nearest step may be out of range
		for _, form := range []struct {
			text string
			step Length
		}{
			{l.FeetInches(den), Inch / Length(den)},
			{l.Inches(den), Inch / Length(den)},
			{l.Metric(step), step},
			{Imperial.Format(l), Inch / 16},
			{Imperial.Short(l), Inch / 16},
			{Metric.Format(l), Metric.stepOf(l)},
			{Metric.Short(l), Metric.stepOf(l)},
		} {
			got, err := Parse(form.text, Metre)
			if err != nil || 2*(got-l).Abs() > form.step || l.IsMultiple(form.step) && got != l {
				t.Fatalf("%v shows as %s, which reads as %v, %v", l, form.text, got, err)
			}
			if got != l.Rounded(form.step) {
				t.Fatalf("%v shows as %s but rounds to %v", l, form.text, l.Rounded(form.step))
			}
		}
	})
}

func TestRoundedStaysInRange(t *testing.T) {
	for _, l := range []Length{1<<63 - 1, -1 << 63} {
		got := l.Rounded(Metre)
		if !got.IsMultiple(Metre) || (got < 0) != (l < 0) || l.Millimetres()/got.Millimetres() < 1 {
			t.Errorf("%v rounds to %v, want the next metre towards zero", l, got)
		}
	}
}

var lengthJSONRows = []struct {
	name   string
	text   string
	want   Length
	ok     bool
	source string
}{
	{"whole", "1943", 1_943_000_000, true, "RFC 8259 section 6"},
	{"a decimal", "1943.1", 1_943_100_000, true, "RFC 8259 section 6"},
	{"six decimals", "0.396875", 396_875, true, "arithmetic: 25.4 / 64"},
	{"trailing zeros", "1.500", 1_500_000, true, "RFC 8259 section 6"},
	{"below zero", "-12.7", -12_700_000, true, "RFC 8259 section 6"},
	{"minus nothing", "-0", 0, true, "RFC 8259 section 6"},
	{"the longest", "9223372036854.775807", 1<<63 - 1, true, "arithmetic: 2^63 - 1"},
	{"the least", "-9223372036854.775808", -1 << 63, true, "arithmetic: -2^63"},
	{"one past the longest", "9223372036854.775808", 0, false, "arithmetic: 2^63"},
	{"many digits", "99999999999999999999999999999999", 0, false, "arithmetic"},
	{"seven decimals", "0.3968750", 0, false, "own form"},
	{"an exponent", "1e3", 0, false, "own form"},
	{"null", "null", 0, false, "own form"},
	{"a string", `"1943"`, 0, false, "own form"},
	{"leading zeros", "01", 0, false, "RFC 8259 section 6"},
	{"a plus", "+1", 0, false, "RFC 8259 section 6"},
	{"a point and no more", "1.", 0, false, "RFC 8259 section 6"},
	{"a leading point", ".5", 0, false, "RFC 8259 section 6"},
	{"nothing", "", 0, false, "RFC 8259 section 6"},
	{"a minus and no more", "-", 0, false, "RFC 8259 section 6"},
}

func TestLengthJSON(t *testing.T) {
	for _, tt := range lengthJSONRows {
		t.Run(tt.name, func(t *testing.T) {
			var got Length
			err := got.UnmarshalJSON([]byte(tt.text))
			if (err == nil) != tt.ok || got != tt.want {
				t.Errorf("%s reads as %v, %v, want %v, ok %t (%s)", tt.text, got, err, tt.want, tt.ok, tt.source)
			}
		})
	}
}

func TestLengthJSONNamesTheCharacter(t *testing.T) {
	var l Length
	err := json.Unmarshal([]byte(`0.1234567`), &l)
	var syntax *SyntaxError
	if !errors.As(err, &syntax) || syntax.At != 8 || syntax.Want != "at most 6 decimals" {
		t.Errorf("got %v, want a *SyntaxError at byte 8", err)
	}
}

func FuzzLengthJSON(f *testing.F) {
	for _, row := range lengthJSONRows {
		f.Add([]byte(row.text))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var got Length
		if err := got.UnmarshalJSON(data); err != nil {
			checkParseError(t, string(data), err)
			return
		}
		if !json.Valid(data) {
			t.Fatalf("%q is read but is not JSON", data)
		}
		if typed, err := Parse(string(data), Millimetre); len(data) <= maxText && (err != nil || typed != got) {
			t.Fatalf("%q reads as %v in JSON and as %v, %v when typed", data, got, typed, err)
		}
	})
}

func TestLengthJSONReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := lengths().Draw(t, "l")
		data, err := json.Marshal(want)
		var got Length
		if err == nil {
			err = json.Unmarshal(data, &got)
		}
		if err != nil || got != want {
			t.Fatalf("%v is written as %s and read as %v, %v", want, data, got, err)
		}
	})
}

func BenchmarkAppendExact(b *testing.B) {
	buffer := make([]byte, 0, 32)
	for b.Loop() {
		buffer = Length(1_943_100_000).AppendExact(buffer[:0])
	}
}
