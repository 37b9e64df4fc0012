package unit

import (
	"errors"
	"strings"
	"testing"
)

// Beside an error stands no value: who forgets to look at it has nothing and not something.
func TestNoValueBesideAnError(t *testing.T) {
	for _, row := range parseErrorRows {
		if got, err := Parse(row.text, row.bare); err == nil || got != 0 {
			t.Errorf("Parse(%.20q) = %d, %v", row.text, int64(got), err)
		}
	}
	for _, text := range []string{`4" x`, `1/3"`, "9223372036854.775808 mm"} {
		if got, err := Parse(text, Inch); err == nil || got != 0 {
			t.Errorf("Parse(%q) = %d, %v", text, int64(got), err)
		}
	}
	for _, row := range volumeErrorRows {
		if got, err := ParseVolume(row.text); err == nil || got != 0 {
			t.Errorf("ParseVolume(%.20q) = %d, %v", row.text, int64(got), err)
		}
	}
	for _, text := range []string{strings.Repeat("1", 101), "99999999999999999999", "0.00001"} {
		if got, err := ParseVolume(text); err == nil || got != 0 {
			t.Errorf("ParseVolume(%.20q) = %d, %v", text, int64(got), err)
		}
	}
	for _, text := range awgErrorTexts {
		if got, err := ParseAWG(text); err == nil || got != 0 {
			t.Errorf("ParseAWG(%q) = %d, %v", text, int(got), err)
		}
	}
	for _, row := range lengthJSONRows {
		if got, err := decodeDecimal([]byte(row.text), 6); err != nil && got != 0 {
			t.Errorf("decodeDecimal(%q) = %d, %v", row.text, got, err)
		}
	}
}

// What is refused in a file's number, at which byte, and what would stand there.
func TestDecimalsNameTheCharacter(t *testing.T) {
	const plain, digit = "a plain decimal number such as 405 or 1943.1", "a digit"
	for _, tt := range []struct {
		text string
		at   int
		want string
	}{
		{"", 0, digit}, {"-", 1, digit}, {"x", 0, digit}, {"1.", 2, digit}, {".5", 0, digit}, {"1.x", 2, digit}, {":1", 0, digit}, {"/", 0, digit},
		{"01", 0, "a number without leading zeros"}, {"-00", 1, "a number without leading zeros"},
		{"1e3", 1, plain}, {"1:", 1, plain}, {"1/2", 1, plain}, {"1.5 ", 3, plain}, {"0x1", 1, plain}, {"--1", 1, digit},
		{"0.1234567", 8, "at most 6 decimals"},
	} {
		_, err := decodeDecimal([]byte(tt.text), 6)
		var s *SyntaxError
		if !errors.As(err, &s) || s.At != tt.at || s.Want != tt.want || s.Text != tt.text {
			t.Errorf("%q: %v at %+v, want %q at byte %d", tt.text, err, s, tt.want, tt.at)
		}
	}
	// 2⁶⁴ nm and a little more: the last digit carries out of 64 bits, or the shift does
	for _, text := range []string{"18446744073709.551616", "18446744073709.551619", "-18446744073709.551616", "18446744073710", "92233720368547758.08", "184467440737095516160"} {
		if got, err := decodeDecimal([]byte(text), 6); !errors.Is(err, ErrRange) {
			t.Errorf("%s nm are read as %d, %v", text, got, err)
		}
	}
	for text, want := range map[string]int64{"0": 0, "0.5": 500_000, "-0.000001": -1, "10": 10_000_000, "9.999999": 9_999_999} {
		if got, err := decodeDecimal([]byte(text), 6); got != want || err != nil {
			t.Errorf("%s is read as %d, %v", text, got, err)
		}
	}
}

// A text is quoted whole up to its hundredth character, and one with an inch mark as it was
// typed where it can be.
func TestTextsAreQuoted(t *testing.T) {
	hundred := strings.Repeat("x", 100)
	for text, want := range map[string]string{
		hundred: `"` + hundred + `": 'x' at character 1`, hundred + "y": `"` + hundred + `"...: 'x' at character 1`,
		`x 6"`: "`x 6\"`: 'x' at character 1", "x 6\"`": `"x 6\"` + "`" + `": 'x' at character 1`, "x\t": `"x\t": 'x' at character 1`, `'6"`: "`'6\"`: \"'\" at character 1",
	} {
		if got := (&SyntaxError{Text: text, Want: "w"}).Error(); got != want+", want w" {
			t.Errorf("reads %s, want %s", got, want)
		}
	}
	if got := (&SyntaxError{Text: "ab", At: 1, Want: "w"}).Error(); got != `"ab": 'b' at character 2, want w` {
		t.Errorf("reads %s", got)
	}
}

// Mistakes of the program itself are not answered.
func TestWhatNoUserCanAsk(t *testing.T) {
	for name, ask := range map[string]func(){
		"a bare unit of nothing":     func() { Parse("1", 0) },
		"a bare unit below nothing":  func() { Parse("1", -Inch) },
		"steps of nothing":           func() { Inch.Rounded(0) },
		"steps below nothing":        func() { Inch.Rounded(-1) },
		"a tape of no marks":         func() { Inch.Inches(0) },
		"a tape of −2 marks":         func() { Inch.Inches(-2) },
		"a tape of 3 marks":          func() { Inch.FeetInches(3) },
		"a tape of 128 marks":        func() { Inch.FeetInches(128) },
		"a tape of the least number": func() { Inch.Inches(-1 << 63) },
	} {
		func() {
			defer func() {
				if why, ok := recover().(string); !ok || !strings.HasPrefix(why, "unit: ") {
					t.Errorf("%s is answered, or not refused in words: %v", name, why)
				}
			}()
			ask()
		}()
	}
	for _, den := range []int64{1, 2, 4, 8, 16, 32, 64} {
		if got := (3 * Inch).Inches(den); got != `3"` {
			t.Errorf("on a tape of %d marks 3 in read %s", den, got)
		}
	}
}

// A hundred bytes are read, and a bare unit as small as there is.
func TestTheLongestText(t *testing.T) {
	if got, err := Parse(strings.Repeat("0", 99)+"1", Inch); got != Inch || err != nil {
		t.Errorf("a hundred figures are %v, %v", got, err)
	}
	if got, err := Parse("3", Nanometre); got != 3 || err != nil {
		t.Errorf("3 nm are %v, %v", got, err)
	}
	if got, err := ParseVolume(strings.Repeat("0", 99) + "1"); got != CubicInch || err != nil {
		t.Errorf("a hundred figures are %v, %v", got, err)
	}
}
