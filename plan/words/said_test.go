package words

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan/unit"
)

// place is a placeholder as it is written: 0 to 99 without a leading zero.
var place = regexp.MustCompile(`\{(0|[1-9][0-9]?)\}`)

// A text parts around its first placeholder where a pattern finds it.
func TestCutPlaceFindsWhatAPatternDoes(t *testing.T) {
	check := func(t rapid.TB, source string) {
		wantBefore, wantPlace, wantAfter, want := source, 0, "", false
		if at := place.FindStringSubmatchIndex(source); at != nil {
			n, _ := strconv.Atoi(source[at[2]:at[3]])
			wantBefore, wantPlace, wantAfter, want = source[:at[0]], n, source[at[1]:], true
		}
		if before, n, after, found := cutPlace(source); before != wantBefore || n != wantPlace || after != wantAfter || found != want {
			t.Errorf("%q parts into %q, %d, %q, %t; want %q, %d, %q, %t", source, before, n, after, found, wantBefore, wantPlace, wantAfter, want)
		}
	}
	for _, source := range []string{"", "{", "}", "{}", "{0}", "{00}", "{9}", "{10}", "{99}", "{100}", "{-0}", "{-1}", "{+1}", "{1", "{ 1}", "{{1}}", "a{b{2}{3}", "{1_0}", "{0x1}", "{٣}"} {
		check(t, source)
	}
	rapid.Check(t, func(t *rapid.T) {
		check(t, rapid.StringOfN(rapid.SampledFrom([]rune("{}0195-+a")), 0, 12, -1).Draw(t, "source"))
	})
}

// What a voice makes of a quantity. The metric figures are by hand, from 1 in = 25.4 mm; of
// the spoken ones each side of a half stands beside the other.
func TestSayQuantities(t *testing.T) {
	const nanometre = unit.Length(1)
	units := Catalogue{"unit.in3": "pulg³", "unit.ft2": "pies²", "unit.in2": "pulg²", "unit.spoken-in": "{0} pulg", "unit.spoken-cm": "unos {0} cm"}
	english, metric, comma := Voice{}, Voice{System: unit.Metric}, Voice{Catalogue: units, System: unit.Metric, DecimalComma: true}
	spanish := Voice{Catalogue: units}
	for _, tt := range []struct {
		name  string
		voice Voice
		value any
		want  string
	}{
		{"spoken, under half an inch more", english, Spoken(12*unit.Inch + unit.Inch/2 - nanometre), "12 in"},
		{"spoken, half an inch more", english, Spoken(12*unit.Inch + unit.Inch/2), "13 in"},
		{"spoken, under half a centimetre more", metric, Spoken(125*unit.Centimetre - unit.Centimetre/2 - nanometre), "124 cm"},
		{"spoken, half a centimetre more", metric, Spoken(125*unit.Centimetre - unit.Centimetre/2), "125 cm"},
		{"spoken in Spanish", spanish, Spoken(3 * unit.Foot), "36 pulg"},
		{"spoken in Spanish and metric", comma, Spoken(2 * unit.Metre), "unos 200 cm"},
		{"printed", metric, Printed("0.6–2.0 m"), "0.6–2.0 m"},
		{"printed with commas", comma, Printed("0.6–2.0 m"), "0,6–2,0 m"},
		{"a volume", spanish, unit.Volume(202_500), "20.25 pulg³"},
		{"a volume with a comma", comma, unit.Volume(202_500), "20,25 pulg³ (332 cm³)"},
		{"an area", spanish, unit.SquareFoot.Mul(156), "156 pies²"},
		{"a metric area", comma, unit.Metre.Times(125 * unit.Centimetre).Mul(2), "2,5 m²"},
		{"a small area", spanish, SmallArea(unit.SquareInch.Mul(16)), "16 pulg²"},
		{"a small area in English", english, SmallArea(unit.SquareInch.Mul(16)), "16 in²"},
		{"a small metric area, 16 × 6.4516 cm²", comma, SmallArea(unit.SquareInch.Mul(16)), "103,2 cm²"},
		{"money with a comma", comma, unit.Money{Cents: 123_456, Currency: "USD"}, "$1234,56"},
		{"a length beside one that looks the same", metric, Beside{unit.Metre, unit.Metre + 2*unit.Millimetre}, "1 m"},
		{"a height beside another", english, HeightBeside{44 * unit.Inch, 48 * unit.Inch}, `44"`},
		{"a count", english, 12, "12"},
		{"less than nothing", english, -12, "−12"},
		{"an error", english, errors.New("no room"), "no room"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.voice.Say(New("x", "{0}", tt.value)); got != tt.want {
				t.Errorf("got %s, want %s", got, tt.want)
			}
		})
	}
}

// told is an error with words of its own.
type told struct{}

func (told) Error() string { return "told" }
func (told) Told() Text    { return New("told", "told so") }

func TestSayError(t *testing.T) {
	spanish := Voice{Catalogue: Catalogue{"told": "dicho", "gone": "falta {0}", "unit.inexact": "demasiado fino", "unit.range": "demasiado grande", "unit.unread": "«{0}», carácter {1}"}}
	gone := Fault("gone", "{0} is gone", "K1")
	unread := &unit.SyntaxError{Text: "6é x", At: len("6é "), Want: "a unit"}
	for _, tt := range []struct {
		name            string
		err             error
		english, spoken string
	}{
		{"a fault", gone, "K1 is gone", "falta K1"},
		{"one that tells", told{}, "told so", "dicho"},
		{"too fine", unit.ErrInexact, "finer than can be held exactly", "demasiado fino"},
		{"too large", unit.ErrRange, "too large to hold", "demasiado grande"},
		{"a cause behind a colon", fmt.Errorf("row 3: %w", gone), "row 3: K1 is gone", "row 3: falta K1"},
		{"a cause of a cause", fmt.Errorf("file: %w", fmt.Errorf("row 3: %w", told{})), "file: row 3: told so", "file: row 3: dicho"},
		{"a cause in the middle", fmt.Errorf("row 3 (%w)", gone), "row 3 (K1 is gone)", "row 3 (K1 is gone)"},
		{"another", errors.New("disk full"), "disk full", "disk full"},
		{"unread, the fourth character", unread, unread.Error(), "«6é x», carácter 4"},
		{"unread, ended too early", &unit.SyntaxError{Text: "6é", At: 9, Want: "a unit"}, `"6é" ends too early, want a unit`, "«6é», carácter 3"},
	} {
		if got := (Voice{}).SayError(tt.err); got != tt.english {
			t.Errorf("%s: in English %s, want %s", tt.name, got, tt.english)
		}
		if got := spanish.SayError(tt.err); got != tt.spoken {
			t.Errorf("%s: in Spanish %s, want %s", tt.name, got, tt.spoken)
		}
	}
}

// A sample can be read by those whose sample it is: each part is a length.
func TestSamplesAreLengths(t *testing.T) {
	for system, want := range map[unit.System][]unit.Length{
		unit.Imperial: {6*unit.Foot + 4*unit.Inch + unit.Inch/2, 76*unit.Inch + unit.Inch/2, 194 * unit.Centimetre},
		unit.Metric:   {194 * unit.Centimetre, 45 * unit.Centimetre, 6*unit.Foot + 4*unit.Inch},
	} {
		var got []unit.Length
		for _, part := range regexp.MustCompile(`, | or `).Split(LengthSample(system).String(), -1) {
			l, err := system.Parse(part)
			if err != nil {
				t.Errorf("%q: %v", part, err)
			}
			got = append(got, l)
		}
		if !slices.Equal(got, want) {
			t.Errorf("the samples are %v, want %v", got, want)
		}
	}
}

func TestIsZero(t *testing.T) {
	for _, tt := range []struct {
		text Text
		want bool
	}{
		{Text{}, true},
		{Text{Args: []any{1}}, true},
		{Text{ID: "a"}, false},
		{Text{English: "a"}, false},
		{New("a", "a"), false},
	} {
		if got := tt.text.IsZero(); got != tt.want {
			t.Errorf("%+v says nothing: %t, want %t", tt.text, got, tt.want)
		}
	}
}
