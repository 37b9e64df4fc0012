package table

import (
	"math/big"
	"strings"

	"studbay/plan/unit"
)

// inchPlaces is how many decimals tell every nanometre apart: 10⁻⁸ in is 0.25 nm.
const inchPlaces = 8

// inches returns a length in decimal inches, exact where it ends within inchPlaces.
func inches(l unit.Length) string {
	text := big.NewRat(int64(l), int64(unit.Inch)).FloatString(inchPlaces)
	text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}
