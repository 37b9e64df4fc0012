package unit

import (
	"math/bits"
	"strconv"
)

// minus is the sign of what people read; Parse takes it and the hyphen alike.
const minus = "−"

// Exact returns l in decimal millimetres without trailing zeros, such as 1943.1.
// Parse(l.Exact(), Millimetre) is l, always.
func (l Length) Exact() string { return string(l.AppendExact(nil)) }

// AppendExact appends the text of Exact to b.
func (l Length) AppendExact(b []byte) []byte { return appendDecimal(b, int64(l), 6) }

// String is Exact with its unit, for error messages and test output.
func (l Length) String() string { return l.Exact() + " mm" }

// MarshalJSON writes decimal millimetres as a plain number.
func (l Length) MarshalJSON() ([]byte, error) { return l.AppendExact(nil), nil }

// UnmarshalJSON reads decimal millimetres: at most six decimals and no exponent,
// else it fails with a *SyntaxError. It fails with ErrRange beyond ±2^63 nm.
func (l *Length) UnmarshalJSON(data []byte) error {
	n, err := decodeDecimal(data, 6)
	if err != nil {
		return err
	}
	*l = Length(n)
	return nil
}

// IsMultiple reports whether l is a whole number of steps. Step must be above zero.
func (l Length) IsMultiple(step Length) bool { return l%step == 0 }

// steps returns the sign of l and its nearest count of steps, half away from zero.
// Both are read as zero where the count is zero.
func (l Length) steps(step Length) (sign string, count uint64) {
	if step <= 0 {
		panic("unit: step not above zero")
	}
	m := magnitude(l)
	count = m / uint64(step)
	rest := m % uint64(step)
	if rest >= uint64(step)-rest {
		count++
	}
	if l < 0 && count > 0 {
		return minus, count
	}
	return "", count
}

// tapeStep is the mark of a tape for a denominator: a power of two up to 64.
func tapeStep(den int64) Length {
	if den < 1 || den > 64 || bits.OnesCount64(uint64(den)) != 1 {
		panic("unit: denominator is not a power of two up to 64")
	}
	return Inch / Length(den)
}

// FeetInches formats l as a tape reads it, such as 6' 4-1/2", rounded half away from
// zero to the nearest 1/den in. Under a foot the feet are left out. Den is a power of
// two up to 64. Parse reads the text back.
func (l Length) FeetInches(den int64) string {
	sign, count := l.steps(tapeStep(den))
	perFoot := 12 * uint64(den)
	if count < perFoot {
		return sign + inchText(count, uint64(den))
	}
	feet, rest := strconv.FormatUint(count/perFoot, 10)+"' ", count%perFoot
	if 0 < rest && rest < uint64(den) {
		feet += "0-" // 6' 0-1/16": a fraction behind feet alone is misread
	}
	return sign + feet + inchText(rest, uint64(den))
}

// Inches formats l in inches alone, such as 76-1/2", rounded as FeetInches does.
func (l Length) Inches(den int64) string {
	sign, count := l.steps(tapeStep(den))
	return sign + inchText(count, uint64(den))
}

// inchText writes count/den inches in lowest terms.
func inchText(count, den uint64) string {
	whole, part := count/den, count%den
	for part > 0 && part%2 == 0 {
		part, den = part/2, den/2
	}
	switch {
	case part == 0:
		return strconv.FormatUint(whole, 10) + `"`
	case whole == 0:
		return strconv.FormatUint(part, 10) + "/" + strconv.FormatUint(den, 10) + `"`
	}
	return strconv.FormatUint(whole, 10) + "-" +
		strconv.FormatUint(part, 10) + "/" + strconv.FormatUint(den, 10) + `"`
}

// Metric formats l rounded half away from zero to the nearest step: in millimetres
// under a metre (405 mm), in metres from there (1.94 m), without trailing zeros. Parse
// reads the text back.
func (l Length) Metric(step Length) string {
	rounded := l.Rounded(step)
	if magnitude(rounded) < uint64(Metre) {
		return withMinus(appendDecimal(nil, int64(rounded), 6)) + " mm"
	}
	return withMinus(appendDecimal(nil, int64(rounded), 9)) + " m"
}

// Rounded returns the multiple of step nearest to l, half away from zero; the next
// one towards zero where the nearest is out of range. Step must be above zero.
func (l Length) Rounded(step Length) Length {
	_, count := l.steps(step)
	m := count * uint64(step) // half a step past 2⁶³ at most
	if m > 1<<63-1 {
		m -= uint64(step)
	}
	if l < 0 {
		return -Length(m)
	}
	return Length(m)
}

// withMinus puts the reader's minus for the hyphen of a decimal.
func withMinus(decimal []byte) string {
	if decimal[0] == '-' {
		return minus + string(decimal[1:])
	}
	return string(decimal)
}
