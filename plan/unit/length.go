// Package unit holds lengths, areas, volumes, money and conductor sizes as
// exact integers.
//
// Nothing here rounds unless its name or comment says so. Floats enter and leave
// only through functions named for it, so a value compared with a code limit has
// never been one.
package unit

// Length is a signed distance in whole nanometres: 1/64 in and 1 mm are both
// exact. The zero value is no distance. The range is about 9 million km either way.
type Length int64

// The lengths people build with.
const (
	Nanometre  Length = 1
	Millimetre Length = 1_000_000
	Centimetre        = 10 * Millimetre
	Metre             = 1000 * Millimetre
	Inch       Length = 25_400_000 // exact by definition: NIST SP 811 (2008), app. B.8
	Foot              = 12 * Inch
)

// FeetInches returns feet plus inches plus sixteenths of an inch.
func FeetInches(feet, inches, sixteenths int64) Length {
	return Length(feet)*Foot + Length(inches)*Inch + Length(sixteenths)*(Inch/16)
}

// Abs returns the distance without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// Millimetres returns l in millimetres as a float, for drawing and geometry that
// needs roots, never for comparing with a limit.
func (l Length) Millimetres() float64 { return float64(l) / float64(Millimetre) }

// FromMillimetres rounds a float of millimetres to the nearest nanometre, once,
// at the end of geometry that needed floats.
func FromMillimetres(mm float64) Length {
	n := mm * float64(Millimetre)
	if n < 0 {
		return Length(n - 0.5)
	}
	return Length(n + 0.5)
}
