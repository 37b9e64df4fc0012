package rule

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Severity says how much a finding weighs. A larger one is worse.
type Severity int

// The severities: a note is for information or an open question, a warn wants a
// look, a stop is a figure of the code exceeded.
const (
	Note Severity = iota
	Warn
	Stop
)

// String returns the severity's name as files and the command line write it.
func (s Severity) String() string { return [...]string{"note", "warn", "stop"}[s] }

// Quantity is a measured value or a limit: one of Length, Volume, Area, Weight or a count.
// The zero value is none.
type Quantity struct {
	Unit  QuantityUnit
	Value int64 // nanometres, 1/10 000 in³ or in², ten-millionths of a gram, or a count, by Unit
}

// QuantityUnit says what a Quantity counts.
type QuantityUnit string

// The units of quantities.
const (
	NoQuantity QuantityUnit = ""
	OfLength   QuantityUnit = "mm"
	OfVolume   QuantityUnit = "in3"
	OfArea     QuantityUnit = "in2"
	OfCount    QuantityUnit = "count"
	OfWeight   QuantityUnit = "lb"
)

// LengthOf returns the length as a quantity.
func LengthOf(l unit.Length) Quantity { return Quantity{OfLength, int64(l)} }

// VolumeOf returns the volume as a quantity.
func VolumeOf(v unit.Volume) Quantity { return Quantity{OfVolume, int64(v)} }

// AreaOf returns the area as a quantity, to the nearest ten-thousandth of a square inch.
func AreaOf(a unit.Area) Quantity { return Quantity{OfArea, a.SquareInches(10_000)} }

// WeightOf returns the weight as a quantity.
func WeightOf(w unit.Weight) Quantity { return Quantity{OfWeight, int64(w)} }

// CountOf returns the count as a quantity.
func CountOf(n int) Quantity { return Quantity{OfCount, int64(n)} }

// Finding is what a check says of one opening, face or room. It says what was
// measured and what was found, never that anything complies.
type Finding struct {
	Rule     string
	Severity Severity
	Section  string // such as "NEC 2023 314.16(B)"; left empty it is that of the rule
	// ByPractice tells a finding that rests on common practice: it cites no section.
	ByPractice bool
	Level      plan.ID
	Room       plan.ID // or empty
	Opening    plan.ID // or empty
	About      plan.ID // the opening, side, room or fixture it is of: what a waiver names
	Measured   Quantity
	Limit      Quantity
	Message    words.Text // one sentence: what is wrong
	Why        words.Text // one line: the working
	Remedies   []Remedy
	// Stretches are the parts of faces that the finding is of.
	Stretches []Stretch
	Label     words.Text   // what a drawing writes beside them; may be empty
	IsOpen    bool         // an open decision or something not looked at, not a fault
	Waived    *plan.Waiver // set where the user has set it aside
}

// Remedy is an edit that would clear a finding: offered, never applied by itself.
type Remedy struct {
	Label words.Text
	Edit  edit.Edit
	Price *unit.Money // change of the parts' cost, nil where not known
}

// Weight orders findings, a heavier one first: a waived one weighs least, an open one less
// than a fault of the same severity.
func (f Finding) Weight() int {
	w := 2*int(f.Severity) + 2
	if f.IsOpen {
		w--
	}
	if f.Waived != nil {
		w = 0
	}
	return w
}
