package unit

import (
	"math/big"
	"strconv"
	"strings"
)

// System is the family of units a person reads and types. The zero value is Imperial.
type System int

// The systems of units. A plan is exact in either; they differ only in text.
const (
	Imperial System = iota
	Metric
)

// tapeDen and metricStep are the finest marks lengths are shown to: the sixteenths
// and the millimetres of a tape. Common practice.
const (
	tapeDen    = 16
	metricStep = Millimetre
)

// Bare returns the unit of a number typed without one: Inch or Millimetre.
func (s System) Bare() Length {
	if s == Metric {
		return Millimetre
	}
	return Inch
}

// Parse reads a length as people of the system write places and sizes of rooms: like
// the function Parse, a bare number being inches or millimetres, but a bare metric one
// with decimals, such as 3.25 or 3,25, being metres.
func (s System) Parse(text string) (Length, error) {
	if s == Metric && isBareDecimal(text) {
		return Parse(text, Metre)
	}
	return Parse(text, s.Bare())
}

// mostMetres is the most that a bare metric number is metres of where it is the size of a
// room: no room is 100 mm wide, and hardly one of a house 100 m. Common practice.
const mostMetres = 100

// ParseRoom reads a length of a wall or a room as Parse does, but that a bare metric number
// under 100 is metres: 4 is no room of 4 mm.
func (s System) ParseRoom(text string) (Length, error) {
	l, err := s.Parse(text)
	if s == Metric && err == nil && isBare(text) && l.Abs() < mostMetres*Millimetre {
		return Parse(text, Metre)
	}
	return l, err
}

// mostFeet is the most that two bare imperial numbers are feet of where they are the sizes
// of a room: none is under 3 ft both ways. Common practice.
const mostFeet = 36

// ParseTwo reads the two sizes of a room, such as 3.25 and 4: where one is a bare metric
// decimal, so that it is metres, a bare number beside it is too; two bare imperial numbers
// under 36 are feet, since 8 by 5 is no room of inches; and else each is read as ParseRoom
// does.
func (s System) ParseTwo(first, second string) (a, b Length, err error) {
	read := s.ParseRoom
	switch {
	case s == Metric && (isBareDecimal(first) || isBareDecimal(second)):
		read = func(text string) (Length, error) { return Parse(text, Metre) }
	case s == Imperial && isFeet(first) && isFeet(second):
		read = func(text string) (Length, error) { return Parse(text, Foot) }
	}
	if a, err = read(first); err == nil {
		b, err = read(second)
	}
	return a, b, err
}

func isBare(text string) bool { return strings.Trim(text, "+-−0123456789., ") == "" }

// isFeet reports whether a number, which may have a fraction, is few enough for the feet of
// a room.
func isFeet(text string) bool {
	l, err := Parse(text, Inch)
	return err == nil && isBare(strings.ReplaceAll(text, "/", "")) && l.Abs() < mostFeet*Inch
}

func isBareDecimal(text string) bool { return strings.ContainsAny(text, ".,") && isBare(text) }

// Step returns the finest length shown: 1/16 in or 1 mm.
func (s System) Step() Length {
	if s == Metric {
		return metricStep
	}
	return Inch / tapeDen
}

// Grid returns the step people lay out to by hand: 1 in or 10 mm. Common practice.
func (s System) Grid() Length {
	if s == Metric {
		return Centimetre
	}
	return Inch
}

// Placing returns the step that what a click places lands on: 1/2 in or 10 mm, either of
// which every tape has. Common practice.
func (s System) Placing() Length {
	if s == Metric {
		return Centimetre
	}
	return Inch / 2
}

// Usual returns a usual size in inches as the system's people lay it out: the nearest
// centimetre for metric ones, else the size itself.
func (s System) Usual(l Length) Length {
	if s == Metric {
		return l.Rounded(Centimetre)
	}
	return l
}

// Format writes l for reading, to 1/16 in or 1 mm, with ≈ before a rounded value. Under
// 100 mm it also writes whole tenths, as thicknesses are sold: 12.7 mm.
// Parse reads it back to within half a step, and exactly where there is no ≈.
func (s System) Format(l Length) string {
	if s == Metric {
		return s.approx(l) + l.Metric(s.stepOf(l))
	}
	return s.approx(l) + l.FeetInches(tapeDen)
}

// Short writes l as heights are called out: in inches alone or in millimetres alone,
// with ≈ before a rounded value.
func (s System) Short(l Length) string {
	if s == Metric {
		text := appendDecimal(nil, int64(l.Rounded(s.stepOf(l))), 6)
		return s.approx(l) + withMinus(text) + " mm"
	}
	return s.approx(l) + l.Inches(tapeDen)
}

// stepOf returns the step that l is written to.
func (s System) stepOf(l Length) Length {
	const tenth = Millimetre / 10
	if s == Metric && magnitude(l) < uint64(100*Millimetre) && l.IsMultiple(tenth) {
		return tenth
	}
	return s.Step()
}

func (s System) approx(l Length) string {
	if l.IsMultiple(s.stepOf(l)) {
		return ""
	}
	return "≈ "
}

// FormatArea writes a for reading, rounded half away from zero to a tenth of a square
// foot or square metre: 156 ft² or 14.5 m².
func (s System) FormatArea(a Area) string {
	if s == Metric {
		return areaTenths(a, Metre.Times(Metre)) + " m²"
	}
	return areaTenths(a, SquareFoot) + " ft²"
}

// FormatSmallArea writes a as one reads the size of a box, to a hundredth of a square inch or
// a tenth of a square centimetre: 21.97 in² or 141.7 cm².
func (s System) FormatSmallArea(a Area) string {
	if s == Metric {
		return trimmed(a.parts(Centimetre.Times(Centimetre), 10), 10) + " cm²"
	}
	return trimmed(a.parts(SquareInch, 100), 100) + " in²"
}

// FormatFineArea writes a where it is compared with another: to a ten-thousandth of a square
// inch or a thousandth of a square centimetre, finer than any two areas of sides in sixteenths
// of an inch or in millimetres differ.
func (s System) FormatFineArea(a Area) string {
	if s == Metric {
		return trimmed(a.parts(Centimetre.Times(Centimetre), 1000), 1000) + " cm²"
	}
	return trimmed(a.parts(SquareInch, 10_000), 10_000) + " in²"
}

// trimmed writes n of so many parts as a decimal without closing zeros.
func trimmed(n, parts int64) string {
	text := new(big.Rat).SetFrac64(n, parts).FloatString(len(strconv.FormatInt(parts, 10)) - 1)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

// areaTenths divides by a tenth of the unit, which must be whole.
func areaTenths(a, unit Area) string {
	tenth := new(big.Int).Quo(unit.Big(), big.NewInt(10))
	twice := new(big.Int).Lsh(a.Big(), 1)
	half := new(big.Int).Set(tenth)
	if a.Sign() < 0 {
		half.Neg(half)
	}
	// round(a/t) = trunc((2a ± t) / 2t), half away from zero
	count := twice.Add(twice, half).Quo(twice, tenth.Lsh(tenth, 1))
	return withMinus(appendDecimal(nil, count.Int64(), 1))
}

// FormatVolume writes v for reading, exactly in cubic inches; metric adds whole cubic
// centimetres: 20.25 in³ (332 cm³). Box fill is decided in cubic inches in both.
func (s System) FormatVolume(v Volume) string {
	text := withMinus(v.AppendDecimal(nil)) + " in³"
	if s == Metric {
		return text + " (" + v.CubicCentimetres() + " cm³)"
	}
	return text
}
