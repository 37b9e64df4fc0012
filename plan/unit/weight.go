package unit

import "math/big"

// Weight is a mass in whole ten-millionths of a gram, so that a hundredth of a pound
// (4.535 923 7 g) and a gram are both exact. The zero value is none.
type Weight int64

// The units that weights are written in.
const (
	Gram     Weight = 10_000_000
	Kilogram        = 1000 * Gram
	Pound    Weight = 4_535_923_700 // 453.592 37 g, exact by definition: NIST SP 811 (2008), app. B.8
)

// weightPlaces is how many decimals of a gram are whole.
const weightPlaces = 7

// MarshalJSON writes grams as a plain number.
func (w Weight) MarshalJSON() ([]byte, error) { return appendDecimal(nil, int64(w), weightPlaces), nil }

// UnmarshalJSON reads grams: at most seven decimals and no exponent, else it fails with a
// *SyntaxError. It fails with ErrRange where w cannot hold the value.
func (w *Weight) UnmarshalJSON(data []byte) error {
	n, err := decodeDecimal(data, weightPlaces)
	if err != nil {
		return err
	}
	*w = Weight(n)
	return nil
}

// weightUnits are the words behind a weight.
var weightUnits = map[string]Weight{
	"lb": Pound, "lbs": Pound, "pound": Pound, "pounds": Pound, "libra": Pound, "libras": Pound,
	"kg": Kilogram, "kilo": Kilogram, "kilos": Kilogram, "g": Gram,
}

// ParseWeight reads a weight of zero or more: 35, 35 lb, 16 kg or 850 g. A bare number is in
// the unit given.
//
// It fails with a *SyntaxError that says which character, with ErrInexact for what is finer
// than a ten-millionth of a gram and with ErrRange.
func ParseWeight(text string, bare Weight) (Weight, error) {
	if len(text) > maxText {
		return 0, &SyntaxError{Text: text, At: maxText, Want: "a shorter text"}
	}
	s := scanner{text: text}
	s.skipSpaces()
	s.skip("≈")
	s.skipSpaces()
	n, err := s.number()
	if err != nil {
		return 0, err
	}
	if n.comma >= 0 {
		return 0, s.fail(n.comma, "a point before decimals and nothing between thousands")
	}
	s.skipSpaces()
	at, per := s.at, bare
	if word := s.letters(); word != "" {
		if per = weightUnits[word]; per == 0 {
			return 0, s.fail(at, "lb or kg or the end")
		}
	}
	s.skip(".")
	if err := s.finish("the end"); err != nil {
		return 0, err
	}
	whole, err := wholeInt64(new(big.Rat).Mul(n.value, new(big.Rat).SetInt64(int64(per))))
	if err != nil {
		return 0, quantityError(text, err)
	}
	return Weight(whole), nil
}

// BareWeight returns the unit of a weight typed without one: Pound or Kilogram.
func (s System) BareWeight() Weight {
	if s == Metric {
		return Kilogram
	}
	return Pound
}

// WeightUnit returns how that unit is written.
func (s System) WeightUnit() string {
	if s == Metric {
		return "kg"
	}
	return "lb"
}

// DecimalWeight writes a weight of zero or more in pounds or kilograms, rounded to a
// hundredth, half away from zero.
func (s System) DecimalWeight(w Weight) string {
	return string(appendDecimal(nil, s.hundredths(w), 2))
}

// FormatWeight writes it for reading, with ≈ before a rounded value: 35 lb or 15.88 kg.
func (s System) FormatWeight(w Weight) string {
	text := s.DecimalWeight(w) + " " + s.WeightUnit()
	if Weight(s.hundredths(w))*(s.BareWeight()/100) != w {
		return "≈ " + text
	}
	return text
}

func (s System) hundredths(w Weight) int64 {
	step := s.BareWeight() / 100
	return int64((w + step/2) / step)
}
