package unit

import (
	"encoding/json"
	"math/big"
	"math/bits"
	"strconv"
	"strings"
)

// Volume is a signed volume in whole 1/10 000 of a cubic inch, so that a quarter of
// any conductor allowance (the smallest is 1.50 in³) is exact. Box fill is always
// decided in this unit.
type Volume int64

// CubicInch is one cubic inch.
const CubicInch Volume = 10_000

// cubicInchMicro is 1 in³ = 16.387064 cm³ in units of 10^-6 cm³: the cube of 2.54 cm,
// exact by definition of the inch (NIST SP 811 (2008), app. B.8).
const cubicInchMicro = 16_387_064

// AppendDecimal appends v in cubic inches as a plain decimal, such as 20.25.
func (v Volume) AppendDecimal(b []byte) []byte { return appendDecimal(b, int64(v), 4) }

// String returns v in cubic inches as a plain decimal, such as 20.25.
func (v Volume) String() string { return string(v.AppendDecimal(nil)) }

// Decimal returns v in cubic inches as a number for JSON.
func (v Volume) Decimal() json.Number { return json.Number(v.String()) }

// CubicCentimetres returns v rounded half away from zero to whole cubic centimetres,
// for display only.
func (v Volume) CubicCentimetres() string {
	const perCubicInch = int64(CubicInch) * 1_000_000
	sign, m := "", magnitude(Length(v))
	hi, lo := bits.Mul64(m, cubicInchMicro)
	quotient, rest := bits.Div64(hi, lo, uint64(perCubicInch))
	if rest >= uint64(perCubicInch)-rest {
		quotient++
	}
	if v < 0 && quotient > 0 {
		sign = minus
	}
	return sign + strconv.FormatUint(quotient, 10)
}

// MarshalJSON writes cubic inches as a plain number.
func (v Volume) MarshalJSON() ([]byte, error) { return v.AppendDecimal(nil), nil }

// UnmarshalJSON reads cubic inches: at most four decimals and no exponent, else it
// fails with a *SyntaxError. It fails with ErrRange where v cannot hold the value.
func (v *Volume) UnmarshalJSON(data []byte) error {
	n, err := decodeDecimal(data, 4)
	if err != nil {
		return err
	}
	*v = Volume(n)
	return nil
}

// volumeUnits are the words behind a volume, spaces and points left out.
var volumeUnits = map[string]bool{ // true for metric
	"": false, "pulg3": false, "pulg³": false, "in3": false, "in³": false, "in^3": false, "cuin": false,
	"cm3": true, "cm³": true, "cm^3": true, "cc": true, "cucm": true,
}

// ParseVolume reads a volume of zero or more: 18, 18.0 in³, 18in3, 295 cm³ or 295cm3. A
// bare number is in cubic inches. Cubic centimetres are converted once and rounded
// down to 1/10 000 in³, so that a box is never taken for larger than it is.
//
// It fails with a *SyntaxError that says which character, with ErrInexact for cubic
// inches finer than 1/10 000 and with ErrRange.
func ParseVolume(text string) (Volume, error) {
	if len(text) > maxText {
		return 0, &SyntaxError{Text: text, At: maxText, Want: "a shorter text"}
	}
	s := scanner{text: text}
	s.skipSpaces()
	n, err := s.number()
	if err != nil {
		return 0, err
	}
	if n.comma >= 0 {
		return 0, s.fail(n.comma, "a point before decimals and nothing between thousands")
	}
	s.skipSpaces()
	metric, ok := volumeUnits[volumeWord(text[s.at:])]
	if !ok {
		return 0, s.fail(s.at, "in³ or cm³ or the end")
	}
	whole, err := wholeInt64(tenThousandths(n.value, metric))
	if err != nil {
		return 0, quantityError(text, err)
	}
	return Volume(whole), nil
}

func volumeWord(text string) string {
	return strings.ToLower(strings.NewReplacer(" ", "", ".", "", "\u00a0", "").Replace(text))
}

// tenThousandths converts to the unit of Volume; only metric is rounded, down.
func tenThousandths(n *big.Rat, metric bool) *big.Rat {
	scaled := new(big.Rat).Mul(n, new(big.Rat).SetInt64(int64(CubicInch)))
	if !metric {
		return scaled
	}
	scaled.Mul(scaled, big.NewRat(1_000_000, cubicInchMicro))
	return new(big.Rat).SetInt(new(big.Int).Quo(scaled.Num(), scaled.Denom()))
}
