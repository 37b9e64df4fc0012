// Package paper holds the standard sizes of paper and the standard scales of drawings on it.
package paper

import (
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Paper is a size of sheet, always laid with its long edge level.
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

// Size says width and height as the paper's users do: 17 × 11 in, 420 × 297 mm.
func (p Paper) Size() string {
	if p.System == unit.Metric {
		return p.Width.Exact() + " × " + p.Height.Exact() + " mm"
	}
	inches := func(l unit.Length) string { return strings.TrimSuffix(l.Inches(16), `"`) }
	return inches(p.Width) + " × " + inches(p.Height) + " in"
}
