package unit

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// parseRows hold what people type. Sizes are by arithmetic from 1 in = 25.4 mm
// exactly: NIST SP 811 (2008), app. B.8.
var parseRows = []struct {
	name   string
	text   string
	bare   Length
	want   Length
	source string
}{
	{"an inch", `1"`, Millimetre, 25_400_000, "NIST SP 811 app. B.8: inch = 2.54 E-02 m"},
	{"a foot", `1'`, Millimetre, 304_800_000, "NIST SP 811 app. B.8: foot = 3.048 E-01 m"},
	{"feet, inches, fraction", `6' 4-1/2"`, Inch, 1_943_100_000, "arithmetic: 76.5 × 25.4"},
	{"a hyphen after the feet", `6'-4 1/2"`, Inch, 1_943_100_000, "arithmetic"},
	{"no marks, imperial", `6-4 1/2`, Inch, 1_943_100_000, "arithmetic"},
	{"no marks, bare feet", `6-4 1/2`, Foot, 1_943_100_000, "arithmetic"},
	{"two hyphens", `6-4-1/2`, Inch, 1_943_100_000, "arithmetic"},
	{"an inch mark makes it imperial", `6-4 1/2"`, Millimetre, 1_943_100_000, "arithmetic"},
	{"whole inches without marks", `6-4`, Inch, 1_930_400_000, "arithmetic: 76 × 25.4"},
	{"inches without their mark", `6'4`, Millimetre, 1_930_400_000, "arithmetic"},
	{"words", `6 ft 4 1/2 in`, Millimetre, 1_943_100_000, "arithmetic"},
	{"abbreviations with points", `6 ft. 4 1/2 in.`, Inch, 1_943_100_000, "arithmetic"},
	{"long words, capitals", `6 Feet 4.5 INCHES`, Inch, 1_943_100_000, "arithmetic"},
	{"no spaces", `6ft4in`, Inch, 1_930_400_000, "arithmetic"},
	{"bare inches", `76.5`, Inch, 1_943_100_000, "arithmetic"},
	{"bare millimetres", `76.5`, Millimetre, 76_500_000, "arithmetic"},
	{"bare metres", `1.94`, Metre, 1_940_000_000, "arithmetic"},
	{"bare feet", `6.5`, Foot, 1_981_200_000, "arithmetic: 78 × 25.4"},
	{"mixed inches", `76 1/2in`, Millimetre, 1_943_100_000, "arithmetic"},
	{"hyphened fraction", `4-1/2"`, Inch, 114_300_000, "arithmetic: 4.5 × 25.4"},
	{"hyphened fraction, bare", `4-1/2`, Inch, 114_300_000, "arithmetic"},
	{"a fraction alone", `1/2"`, Inch, 12_700_000, "arithmetic"},
	{"the finest mark of a tape", `1/64"`, Inch, 396_875, "arithmetic: 25.4 / 64"},
	{"an improper fraction alone", `3/2"`, Inch, 38_100_000, "arithmetic"},
	{"a fraction of a foot", `6 1/2 ft`, Inch, 1_981_200_000, "arithmetic"},
	{"half a millimetre", `1/2`, Millimetre, 500_000, "arithmetic"},
	{"metres", `1.94 m`, Inch, 1_940_000_000, "arithmetic"},
	{"a decimal comma", `1,94 m`, Inch, 1_940_000_000, "arithmetic"},
	{"three decimals behind a comma, metres", `1,943 m`, Inch, 1_943_000_000, "arithmetic"},
	{"a comma in millimetres", `12,5 mm`, Inch, 12_500_000, "arithmetic"},
	{"centimetres", `194cm`, Inch, 1_940_000_000, "arithmetic"},
	{"millimetres", `1943 mm`, Inch, 1_943_000_000, "arithmetic"},
	{"a nanometre", `0.000001 mm`, Inch, 1, "arithmetic"},
	{"primes", `6′ 4½″`, Inch, 1_943_100_000, "arithmetic"},
	{"curly quotes", `6’4½”`, Inch, 1_943_100_000, "arithmetic"},
	{"a quarter", `¼"`, Inch, 6_350_000, "arithmetic"},
	{"three eighths behind a hyphen", `2-⅜"`, Inch, 60_325_000, "arithmetic: 2.375 × 25.4"},
	{"seven eighths behind a space", `1 ⅞`, Inch, 47_625_000, "arithmetic: 1.875 × 25.4"},
	{"a third of a foot is four inches", `⅓'`, Inch, 101_600_000, "arithmetic"},
	{"a fraction slash", `1⁄2"`, Inch, 12_700_000, "arithmetic"},
	{"two single marks", `4''`, Inch, 101_600_000, "arithmetic"},
	{"a leading point", `.5`, Inch, 12_700_000, "arithmetic"},
	{"minus", `−6' 4-1/2"`, Inch, -1_943_100_000, "arithmetic"},
	{"hyphen as minus", `-12 mm`, Inch, -12_000_000, "arithmetic"},
	{"plus", `+12 mm`, Inch, 12_000_000, "arithmetic"},
	{"spaces around and no-break spaces within", "  1.94\u00a0m ", Inch, 1_940_000_000, "arithmetic"},
	{"a rounded value left standing", `≈ 4"`, Inch, 101_600_000, "arithmetic"},
	{"the most inches after feet", `6' 11-15/16"`, Inch, 2_132_012_500, "arithmetic: 83.9375 × 25.4"},
	{"nothing", `0`, Inch, 0, "arithmetic"},
	{"minus nothing", `-0`, Inch, 0, "arithmetic"},
	{"the longest", `9223372036854.775807`, Millimetre, 1<<63 - 1, "arithmetic: 2^63 - 1"},
	{"the least", `-9223372036854.775808`, Millimetre, -1 << 63, "arithmetic: -2^63"},
}

func TestParse(t *testing.T) {
	for _, tt := range parseRows {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Parse(tt.text, tt.bare)
			if err != nil || got != tt.want {
				t.Errorf("Parse(%q, %v) = %v, %v, want %v (%s)", tt.text, tt.bare, got, err, tt.want, tt.source)
			}
		})
	}
}

var parseErrorRows = []struct {
	name string
	text string
	bare Length
	at   int
	want string // part of the message
}{
	{"nothing", ``, Inch, 0, "nothing written, want a digit"},
	{"only spaces", `  `, Inch, 2, "ends too early"},
	{"letters", `abc`, Inch, 0, `'a' at character 1, want a digit`},
	{"a wrong unit", `6x`, Inch, 1, `'x' at character 2, want a unit`},
	{"an unknown word", `6 furlongs`, Inch, 2, `'f' at character 3, want a unit`},
	{"counted in characters, not bytes", `½ y`, Inch, 3, `'y' at character 3`},
	{"a hyphen and no more", `6'-`, Inch, 3, "ends too early, want a digit"},
	{"no denominator", `6 1/`, Inch, 4, "ends too early, want a digit"},
	{"a zero denominator", `1/0"`, Inch, 2, `'0' at character 3, want a number above 0`},
	{"a slipped fraction", `4 11/2"`, Inch, 2, `'1' at character 3, want a fraction below 1`},
	{"a slipped fraction of one", `4 2/2"`, Inch, 2, `'2' at character 3, want a fraction below 1`},
	{"feet with decimals before a hyphen", `6.5-4"`, Inch, 3, `'-' at character 4, want a unit`},
	{"two points", `1.2.3`, Inch, 3, `'.' at character 4, want a unit`},
	{"a point and no more", `6.`, Inch, 2, "ends too early, want a digit"},
	{"thousands and decimals", `1,943.5 mm`, Inch, 5, `'.' at character 6`},
	{"a comma of two meanings", `1,943 mm`, Inch, 1, `',' at character 2, want a point before decimals`},
	{"a comma of two meanings in inches", `1,250"`, Inch, 1, `',' at character 2`},
	{"inches beyond a foot", `12' 14"`, Inch, 4, `'1' at character 5, want fewer than twelve inches after feet`},
	{"a foot in inches after feet", `6-12`, Inch, 2, `'1' at character 3, want fewer than twelve inches`},
	{"feet twice", `6' 4'`, Inch, 4, "\"'\" at character 5, want an inch mark"},
	{"feet and millimetres", `6' 40 mm`, Inch, 6, `'m' at character 7, want an inch mark`},
	{"a hyphen between millimetres", `6-4`, Millimetre, 1, `'-' at character 2, want a unit`},
	{"inches twice", `4" 5"`, Inch, 3, `'5' at character 4, want the end`},
	{"two numbers", `6 4`, Inch, 2, `'4' at character 3, want a unit`},
	{"an exponent", `1e3`, Millimetre, 1, `'e' at character 2`},
	{"a broken byte", "6\xff", Inch, 1, "at character 2"},
	{"a zero byte", "6\x00", Inch, 1, "at character 2"},
	{"the sign behind 9", `1:2`, Inch, 1, `':' at character 2, want a unit`},
	{"inches after feet over zero", `6' 1/0"`, Inch, 5, `'0' at character 6, want a number above 0`},
	{"inches after a hyphen over zero", `6-1/0"`, Inch, 4, `'0' at character 5, want a number above 0`},
	{"two signs", `--6`, Inch, 1, `'-' at character 2, want a digit`},
	{"far too long", strings.Repeat("1", 10_000), Inch, 100, strings.Repeat("1", 100) + `"...: '1' at character 101, want a shorter text`},
}

func TestParseNamesTheCharacter(t *testing.T) {
	for _, tt := range parseErrorRows {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Parse(tt.text, tt.bare)
			var syntax *SyntaxError
			if !errors.As(err, &syntax) {
				t.Fatalf("Parse(%q) fails with %v, want a *SyntaxError", tt.text, err)
			}
			if syntax.At != tt.at || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("Parse(%q) fails at byte %d: %v; want byte %d, %s", tt.text, syntax.At, err, tt.at, tt.want)
			}
		})
	}
}

func TestParseRefusesWhatItCannotHold(t *testing.T) {
	for _, tt := range []struct {
		name, text string
		want       error
		source     string
	}{
		{"a third of an inch", `1/3"`, ErrInexact, "arithmetic: 25 400 000 / 3 is not whole"},
		{"a third of an inch as a character", `6' ⅓"`, ErrInexact, "arithmetic"},
		{"a tenth of a nanometre", `0.0000001 mm`, ErrInexact, "arithmetic"},
		{"1/128 in", `1/128"`, ErrInexact, "arithmetic: 25 400 000 / 128 = 198 437.5"},
		{"one past the longest", `9223372036854.775808 mm`, ErrRange, "arithmetic: 2^63"},
		{"one past the least", `-9223372036854.775809 mm`, ErrRange, "arithmetic: -2^63 - 1"},
		{"many digits", strings.Repeat("9", 90) + " m", ErrRange, "arithmetic"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got, err := Parse(tt.text, Inch); !errors.Is(err, tt.want) {
				t.Errorf("Parse(%q) = %v, %v, want %v (%s)", tt.text, got, err, tt.want, tt.source)
			}
		})
	}
}

func FuzzParse(f *testing.F) {
	for _, row := range parseRows {
		f.Add(row.text, int64(row.bare))
	}
	for _, row := range parseErrorRows {
		f.Add(row.text, int64(row.bare))
	}
	f.Fuzz(func(t *testing.T, text string, unit int64) {
		bare := []Length{Inch, Foot, Millimetre, Centimetre, Metre}[uint64(unit)%5]
		got, err := Parse(text, bare)
		if err != nil {
			checkParseError(t, text, err)
			return
		}
		if again, err := Parse(got.Exact(), Millimetre); err != nil || again != got {
			t.Errorf("Parse(%q) is %v, but its exact text reads as %v, %v", text, got, again, err)
		}
	})
}

// checkParseError holds that an error is one of the three kinds, with its place
// within the text.
func checkParseError(t *testing.T, text string, err error) {
	t.Helper()
	var syntax *SyntaxError
	switch {
	case errors.Is(err, ErrInexact), errors.Is(err, ErrRange):
	case !errors.As(err, &syntax):
		t.Errorf("%q fails with %v, of no documented kind", text, err)
	case syntax.Text != text || syntax.At < 0 || syntax.At > len(text) || syntax.Want == "":
		t.Errorf("%q fails with %#v, whose place is not in it", text, syntax)
	case syntax.Error() == "":
		t.Errorf("%q fails without a message", text)
	}
}

// lengths draws any Length, small and whole ones often.
func lengths() *rapid.Generator[Length] {
	step := rapid.SampledFrom([]Length{1, Millimetre, Inch / 64, Inch / 16, Inch, Foot, Metre})
	return rapid.OneOf(
		rapid.Map(rapid.Int64(), func(n int64) Length { return Length(n) }),
		rapid.Custom(func(t *rapid.T) Length {
			return step.Draw(t, "step") * Length(rapid.Int64Range(-10_000, 10_000).Draw(t, "count"))
		}),
	)
}

func TestExactTextReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lengths().Draw(t, "l")
		for _, text := range []string{l.Exact(), l.String()} {
			if got, err := Parse(text, Millimetre); err != nil || got != l {
				t.Fatalf("Parse(%q) = %v, %v, want %v", text, got, err, l)
			}
		}
	})
}

func TestUnitsScaleAlike(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		feet := rapid.Int64Range(0, 1000).Draw(t, "feet")
		inches := rapid.Int64Range(0, 11).Draw(t, "inches")
		sixteenths := rapid.Int64Range(0, 15).Draw(t, "sixteenths")
		l := FeetInches(feet, inches, sixteenths)
		for _, text := range []string{l.FeetInches(16), l.FeetInches(64), l.Inches(16), l.Exact() + "mm"} {
			if got, err := Parse(text, Metre); err != nil || got != l {
				t.Fatalf("Parse(%q) = %v, %v, want %v", text, got, err, l)
			}
		}
	})
}
