package unit

import (
	"encoding/json"
	"errors"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// volumeRows hold what people type. 1 in³ = 16.387064 cm³, the cube of 2.54 cm.
var volumeRows = []struct {
	name   string
	text   string
	want   Volume
	source string
}{
	{"bare", "18", 180_000, "arithmetic"},
	{"a decimal", "22.5", 225_000, "arithmetic"},
	{"cubic inches", "18in3", 180_000, "arithmetic"},
	{"a trailing zero, true superscript", "18.0 in³", 180_000, "arithmetic"},
	{"a caret", "18 in^3", 180_000, "arithmetic"},
	{"words", "30.3 cu. in.", 303_000, "arithmetic"},
	{"capitals", "18 IN3", 180_000, "arithmetic"},
	{"a decimal comma", "30,3 in3", 303_000, "arithmetic"},
	{"a fraction", "20 1/4", 202_500, "arithmetic"},
	{"the finest", "0.0001", 1, "arithmetic"},
	{"nothing", "0", 0, "arithmetic"},
	{"cubic centimetres", "295cm3", 180_020, "arithmetic: 295 / 16.387064 = 18.0020046..., down"},
	{"cubic centimetres, true superscript", "295 cm³", 180_020, "arithmetic"},
	{"an inch cubed", "16.387064 cm³", 10_000, "NIST SP 811 app. B.8: 2.54³"},
	{"just under an inch cubed", "16.387063 cm³", 9_999, "arithmetic, down"},
	{"a thousand", "1000 cc", 610_237, "arithmetic: 61.02374..., down"},
}

func TestParseVolume(t *testing.T) {
	for _, tt := range volumeRows {
		t.Run(tt.name, func(t *testing.T) {
			if got, err := ParseVolume(tt.text); err != nil || got != tt.want {
				t.Errorf("ParseVolume(%q) = %v, %v, want %v (%s)", tt.text, got, err, tt.want, tt.source)
			}
		})
	}
}

var volumeErrorRows = []struct {
	name string
	text string
	at   int
	want string
}{
	{"nothing", "", 0, "nothing written, want a digit"},
	{"letters", "abc", 0, `'a' at character 1, want a digit`},
	{"a wrong unit", "18 mm", 3, `'m' at character 4, want in³ or cm³`},
	{"below zero", "-18", 0, `'-' at character 1, want a digit`},
	{"a comma of two meanings", "1,250 cm3", 1, `',' at character 2`},
	{"a comma before thousands alone", ",250 in3", 0, `',' at character 1`},
	{"the sign behind 9", "1:2", 1, `':' at character 2`},
	{"two numbers", "18 18", 3, `'1' at character 4`},
	{"no denominator", "20 1/", 5, "ends too early"},
	{"far too long", strings.Repeat("1", 101), 100, "want a shorter text"},
}

func TestParseVolumeNamesTheCharacter(t *testing.T) {
	for _, tt := range volumeErrorRows {
		t.Run(tt.name, func(t *testing.T) {
			_, err := ParseVolume(tt.text)
			var syntax *SyntaxError
			if !errors.As(err, &syntax) || syntax.At != tt.at || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("ParseVolume(%q) fails with %v, want byte %d, %s", tt.text, err, tt.at, tt.want)
			}
		})
	}
}

func TestParseVolumeRefusesWhatItCannotHold(t *testing.T) {
	for _, tt := range []struct {
		text string
		want error
	}{
		{"18.00001", ErrInexact},
		{"1/3 in3", ErrInexact},
		{"999999999999999999999", ErrRange},
		{"99999999999999999999999 cm3", ErrRange},
	} {
		if got, err := ParseVolume(tt.text); !errors.Is(err, tt.want) {
			t.Errorf("ParseVolume(%q) = %v, %v, want %v", tt.text, got, err, tt.want)
		}
	}
}

func FuzzParseVolume(f *testing.F) {
	for _, row := range volumeRows {
		f.Add(row.text)
	}
	for _, row := range volumeErrorRows {
		f.Add(row.text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := ParseVolume(text)
		if err != nil {
			checkParseError(t, text, err)
			return
		}
		if again, err := ParseVolume(got.String()); err != nil || again != got || got < 0 {
			t.Errorf("ParseVolume(%q) is %v, which reads as %v, %v", text, got, again, err)
		}
	})
}

func TestVolumeText(t *testing.T) {
	for _, tt := range []struct {
		name   string
		got    string
		want   string
		source string
	}{
		{"plain", Volume(202_500).String(), "20.25", "arithmetic"},
		{"whole", (18 * CubicInch).String(), "18", "arithmetic"},
		{"below zero", Volume(-15_000).String(), "-1.5", "arithmetic"},
		{"for JSON", Volume(202_500).Decimal().String(), "20.25", "arithmetic"},
		{"imperial", Imperial.FormatVolume(202_500), "20.25 in³", "own form"},
		{"metric", Metric.FormatVolume(202_500), "20.25 in³ (332 cm³)", "arithmetic: 331.838"},
		{"below zero, for reading", Metric.FormatVolume(-15_000), "−1.5 in³ (−25 cm³)", "arithmetic: 24.58"},
		{"half a cubic centimetre away from zero", (62_500 * CubicInch).CubicCentimetres(), "1024192", "arithmetic: 1 024 191.5"},
		{"nothing", Metric.FormatVolume(0), "0 in³ (0 cm³)", "arithmetic"},
		// Where the code's own cubic centimetres are the converted inches; for 21.5, 14.0,
		// 29.5, 42.0 and 24.0 it prints one more.
		{"18.0", (18 * CubicInch).CubicCentimetres(), "295", "NEC 2023 Table 314.16(A)"},
		{"21.0", (21 * CubicInch).CubicCentimetres(), "344", "NEC 2023 Table 314.16(A)"},
		{"30.3", Volume(303_000).CubicCentimetres(), "497", "NEC 2023 Table 314.16(A)"},
		{"25.5", Volume(255_000).CubicCentimetres(), "418", "NEC 2023 Table 314.16(A)"},
		{"7.5", Volume(75_000).CubicCentimetres(), "123", "NEC 2023 Table 314.16(A)"},
		{"10.3", Volume(103_000).CubicCentimetres(), "169", "NEC 2023 Table 314.16(A)"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if tt.got != tt.want {
				t.Errorf("got %s, want %s (%s)", tt.got, tt.want, tt.source)
			}
		})
	}
}

func TestVolumeReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := Volume(rapid.Int64().Draw(t, "v"))
		data, err := json.Marshal(want)
		var got Volume
		if err == nil {
			err = json.Unmarshal(data, &got)
		}
		if err != nil || got != want {
			t.Fatalf("%v is written as %s and read as %v, %v", want, data, got, err)
		}
		if typed, err := ParseVolume(want.String()); want >= 0 && (err != nil || typed != want) {
			t.Fatalf("%v is typed as %v, %v", want, typed, err)
		}
	})
}

func TestVolumeJSONRefusesFinerOnes(t *testing.T) {
	for _, text := range []string{"1.00001", "1e1", "null", `"1"`, ""} {
		var v Volume
		if err := v.UnmarshalJSON([]byte(text)); err == nil {
			t.Errorf("%q reads as %v", text, v)
		}
	}
}

// TestCubicCentimetresRoundDown holds the definition beside math/big: the result's
// volume is at most what was typed, and one more unit would be over.
func TestCubicCentimetresRoundDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		typed := rapid.Int64Range(0, 1_000_000).Draw(t, "thousandths of a cm³")
		got, err := ParseVolume(string(appendDecimal(nil, typed, 3)) + " cm3")
		if err != nil {
			t.Fatal(err)
		}
		cubic := func(v Volume) *big.Rat { return big.NewRat(int64(v)*cubicInchMicro, 10_000*1_000_000) }
		want := big.NewRat(typed, 1000)
		if cubic(got).Cmp(want) > 0 || cubic(got+1).Cmp(want) <= 0 {
			t.Fatalf("%d thousandths of a cm³ are %v in³", typed, got)
		}
	})
}
