// Package price holds what parts cost: the parts there are beside boxes, rings and covers,
// and the price book, ours or the user's own.
//
// Quantities are integers of ten-thousandths, money is integers of cents, and what is
// rounded is rounded once, at the cost of a line. It knows no plan.
package price

import (
	"encoding/json"
	"strconv"
	"strings"

	"studbay/plan/unit"
)

// Quantity is how much of a part there is, in whole ten-thousandths of its unit, so that
// 1/16 in of lumber is exact. The zero value is none.
type Quantity int64

// One is one piece, or one foot or inch of what goes by length.
const One Quantity = 10_000

// Of returns a whole number of pieces.
func Of(n int) Quantity { return Quantity(n) * One }

// OfLength returns a length in units of another, such as inches, rounded up to a
// ten-thousandth: nobody buys a hair less than is needed.
func OfLength(l, in unit.Length) Quantity {
	per := int64(in) / int64(One)
	return Quantity((int64(l) + per - 1) / per)
}

// Length returns the length that so much of a part sold by another length is, such as inches.
func (q Quantity) Length(in unit.Length) unit.Length { return unit.Length(q) * (in / unit.Length(One)) }

// Times returns q × n.
func (q Quantity) Times(n Quantity) Quantity { return q * n / One }

// String writes the quantity as a plain decimal, such as 22.5.
func (q Quantity) String() string {
	sign := ""
	if q < 0 {
		sign, q = "-", -q
	}
	whole, rest := q/One, q%One
	text := sign + strconv.FormatInt(int64(whole), 10)
	if rest == 0 {
		return text
	}
	decimals := strconv.FormatInt(int64(rest+One), 10)[1:]
	return text + "." + strings.TrimRight(decimals, "0")
}

// Decimal returns the quantity as a number for JSON.
func (q Quantity) Decimal() json.Number { return json.Number(q.String()) }

// RoundedUp returns the least whole number of pieces that is no less.
func (q Quantity) RoundedUp() int64 { return int64((q + One - 1) / One) }
