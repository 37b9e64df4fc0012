package unit

import (
	"errors"
	"strconv"
	"strings"
)

// Current is an electric current in whole milliamperes, so that the tenths and hundredths of a
// name plate are exact. The zero value is none.
type Current int

// Ampere is one.
const Ampere Current = 1000

// ErrCurrent is of a text that is no current.
var ErrCurrent = errors.New("not a current in amperes")

// Text returns the current in amperes, without zeros at its end: 9.8.
func (c Current) Text() string {
	whole, part := c/Ampere, c%Ampere
	if part < 0 {
		part = -part
	}
	text := strconv.Itoa(int(whole))
	if c < 0 && whole == 0 {
		text = "-0"
	}
	if part == 0 {
		return text
	}
	digits := strconv.Itoa(int(Ampere + part))[1:]
	return text + "." + strings.TrimRight(digits, "0")
}

// ParseCurrent reads amperes with up to three decimals, after a point or a comma: 9.8, 12, 9,8 A.
// It fails with ErrCurrent for all else, and for what is below nothing.
func ParseCurrent(text string) (Current, error) {
	text = strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "A"))
	whole, part, _ := strings.Cut(strings.Replace(text, ",", ".", 1), ".")
	if whole == "" || len(whole) > 6 || len(part) > 3 || strings.Trim(whole+part, "0123456789") != "" {
		return 0, ErrCurrent
	}
	n, err := strconv.Atoi(whole + (part + "000")[:3])
	if err != nil {
		return 0, ErrCurrent
	}
	return Current(n), nil
}
