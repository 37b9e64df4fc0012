// Package paper holds the standard sizes of paper and the standard scales of drawings on it.
package paper

import (
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Paper is a size of sheet, laid with its long edge level unless it stands upright.
type Paper struct {
	Name          string // as a user types it
	Width, Height unit.Length
	System        unit.System // of those who use it, for the size in words
}

// All lists the sizes, each family from the smallest. Letter and tabloid are sizes A
// and B of ASME Y14.1; ARCH C and D are the architectural sizes that plan printers hold
// (common practice); A4 to A1 are of ISO 216:2007, whole millimetres as the standard
// rounds them.
var All = []Paper{
	{"letter", 11 * unit.Inch, 17 * unit.Inch / 2, unit.Imperial},
	{"tabloid", 17 * unit.Inch, 11 * unit.Inch, unit.Imperial},
	{"archc", 24 * unit.Inch, 18 * unit.Inch, unit.Imperial},
	{"archd", 36 * unit.Inch, 24 * unit.Inch, unit.Imperial},
	{"a4", 297 * unit.Millimetre, 210 * unit.Millimetre, unit.Metric},
	{"a3", 420 * unit.Millimetre, 297 * unit.Millimetre, unit.Metric},
	{"a2", 594 * unit.Millimetre, 420 * unit.Millimetre, unit.Metric},
	{"a1", 841 * unit.Millimetre, 594 * unit.Millimetre, unit.Metric},
}

// Named returns the paper of a name, in capitals or not. The error lists them all.
func Named(name string) (Paper, error) {
	for _, p := range All {
		if strings.EqualFold(p.Name, name) {
			return p, nil
		}
	}
	return Paper{}, words.Fault("sheet.no-paper", "no paper \"{0}\"; there are {1}", name, strings.Join(Names(), ", "))
}

// Names lists what a user types.
func Names() (names []string) {
	for _, p := range All {
		names = append(names, p.Name)
	}
	return names
}

// Usual is what a plan is drawn on where nobody says: the second size, which an
// office printer and a copy shop both hold (common practice).
func Usual(s unit.System) Paper {
	name := "tabloid"
	if s == unit.Metric {
		name = "a3"
	}
	p, err := Named(name)
	if err != nil {
		panic("paper: " + err.Error())
	}
	return p
}

// Upright returns the paper with its long edge upright. It fails for what is larger than an office
// printer holds: that hangs with its long edge level.
func (p Paper) Upright() (Paper, error) {
	if !p.MayStand() {
		return p, words.Fault("paper.no-upright", "{0} does not stand upright; {1} do", p.Name, strings.Join([]string{"letter", "a4"}, ", "))
	}
	p.Width, p.Height = min(p.Width, p.Height), max(p.Width, p.Height)
	return p, nil
}

// MayStand reports whether the paper may stand upright.
func (p Paper) MayStand() bool { return p.Name == "letter" || p.Name == "a4" }

// IsUpright reports whether it does.
func (p Paper) IsUpright() bool { return p.Height > p.Width }

// Size says width and height as the paper's users do: 17 × 11 in, 420 × 297 mm.
func (p Paper) Size(v words.Voice) string {
	if p.System == unit.Metric {
		return p.Width.Exact() + " × " + p.Height.Exact() + " mm"
	}
	inches := func(l unit.Length) string { return strings.TrimSuffix(l.Inches(16), `"`) }
	return v.Say(words.New("paper.inches", "{0} × {1} in", inches(p.Width), inches(p.Height)))
}

// On paper this high and higher, which hangs on a wall and is read from a step away, all type
// and symbols stand so many times as large: the smallest type of a sheet, of 6.5 points, then
// has capitals of 3/32 in, the least that architects letter by (common practice).
const (
	hung     = 16 * unit.Inch
	enlarged = 1.45
)

// Enlarged returns how many times as large as on a desk all that is laid on the paper stands.
func (p Paper) Enlarged() float64 {
	if p.Height >= hung {
		return enlarged
	}
	return 1
}

// Laid returns width and height in millimeters as they are laid out, before all is enlarged.
func (p Paper) Laid() (wide, tall float64) {
	return p.Width.Millimetres() / p.Enlarged(), p.Height.Millimetres() / p.Enlarged()
}

// MM returns how long a length of paper is laid out, in millimeters, so that it is true once
// all is enlarged.
func (p Paper) MM(l unit.Length) float64 { return l.Millimetres() / p.Enlarged() }

// Times returns how long a millimeter of building is laid out at a scale, so that the scale
// is true once all is enlarged.
func (p Paper) Times(s Scale) float64 { return s.Times() / p.Enlarged() }
