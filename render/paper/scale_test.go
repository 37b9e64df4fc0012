package paper

import (
	"testing"

	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestParseScale(t *testing.T) {
	for _, tt := range []struct{ text, want, why string }{
		{"fit", "fit", ""},
		{"1/4in=1ft", "1/4in=1ft", ""},
		{"1/4\"=1'", "1/4in=1ft", "as it stands on drawings"},
		{"1/4 in = 1 ft", "1/4in=1ft", ""},
		{"1:48", "1/4in=1ft", "12 / (1/4)"},
		{"1=1ft", "1in=1ft", "a bare number of an imperial scale is inches"},
		{"3/16in=1ft", "3/16in=1ft", ""},
		{"1:50", "1:50", ""},
		{"2cm=1m", "1:50", ""},
		{"1:51", "", "no standard scale"},
		{"1:0", "", "nothing is drawn"},
		{"-1:50", "", ""},
		{"50", "", ""},
		{"1:abc", "", ""},
		{"", "", ""},
	} {
		got, err := ParseScale(tt.text)
		if (err == nil) != (tt.want != "") || err == nil && got.String() != tt.want {
			t.Errorf("ParseScale(%q) = %s, %v, want %q %s", tt.text, got, err, tt.want, tt.why)
		}
	}
}

// TestScalesReadBack: what help lists can be typed.
func TestScalesReadBack(t *testing.T) {
	for _, s := range Scales {
		if got, err := ParseScale(s.String()); err != nil || got != s {
			t.Errorf("ParseScale(%s) = %v, %v", s, got, err)
		}
	}
}

// TestAll holds the sizes to the published ones, in millimetres.
func TestAll(t *testing.T) {
	for _, tt := range []struct {
		name          string
		width, height string
		source        string
	}{
		{"letter", "279.4", "215.9", "ASME Y14.1: A is 8.5 × 11 in"},
		{"tabloid", "431.8", "279.4", "ASME Y14.1: B is 11 × 17 in"},
		{"archc", "609.6", "457.2", "18 × 24 in"},
		{"archd", "914.4", "609.6", "24 × 36 in"},
		{"a4", "297", "210", "ISO 216"},
		{"a3", "420", "297", "ISO 216"},
		{"A2", "594", "420", "ISO 216"},
		{"a1", "841", "594", "ISO 216"},
	} {
		p, err := Named(tt.name)
		if err != nil || p.Width.Exact() != tt.width || p.Height.Exact() != tt.height {
			t.Errorf("%s is %s × %s, %v; want %s × %s: %s", tt.name, p.Width, p.Height, err, tt.width, tt.height, tt.source)
		}
	}
	if _, err := Named("b5"); err == nil {
		t.Error("b5 is found")
	}
	if got := Usual(unit.Metric).Size(words.Voice{}); got != "420 × 297 mm" {
		t.Errorf("the usual metric paper is %s", got)
	}
}

// Scales and sizes are told in the units of the language, as the trade writes them there.
func TestScalesAreToldInTheLanguage(t *testing.T) {
	spanish := words.Voice{Catalogue: words.Catalogue{"scale.feet": "{0} pulg = 1 pie", "paper.inches": "{0} × {1} pulg"}}
	quarter := Imperial(4)
	for _, tt := range []struct{ got, want string }{
		{quarter.Words(words.Voice{}), "1/4 in = 1 ft"},
		{quarter.Words(spanish), "1/4 pulg = 1 pie"},
		{Metric(50).Words(spanish), "1:50"},
		{Usual(unit.Imperial).Size(words.Voice{}), "17 × 11 in"},
		{Usual(unit.Imperial).Size(spanish), "17 × 11 pulg"},
		{Usual(unit.Metric).Size(spanish), "420 × 297 mm"},
	} {
		if tt.got != tt.want {
			t.Errorf("%q, want %q", tt.got, tt.want)
		}
	}
}
