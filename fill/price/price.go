package price

import (
	"encoding/json"
	"math/big"
	"strings"

	"studbay/plan/unit"
)

// Price is what a pack costs and how much is in it. A part sold singly comes in packs of
// one.
type Price struct {
	Pack unit.Money
	Per  Quantity // in a pack; above zero
}

// Cost returns what a quantity costs at the price of a pack shared out, rounded half up to
// the cent. Packs are not rounded up: that is for the shopping list.
func (p Price) Cost(q Quantity) unit.Money {
	product := new(big.Int).Mul(big.NewInt(int64(q)), big.NewInt(p.Pack.Cents))
	product.Mul(product, big.NewInt(2)).Add(product, big.NewInt(int64(p.Per)))
	product.Div(product, big.NewInt(2*int64(p.Per)))
	return unit.Money{Cents: product.Int64(), Currency: p.Pack.Currency}
}

// Packs returns how many packs hold a quantity.
func (p Price) Packs(q Quantity) int64 { return int64((q + p.Per - 1) / p.Per) }

// Each returns the price of one unit in whole currency as a plain decimal, to at most six
// places and no fewer than two: 0.45, 0.0475.
func (p Price) Each() json.Number {
	each := new(big.Rat).SetFrac64(p.Pack.Cents*int64(One), 100*int64(p.Per))
	whole, decimals, _ := strings.Cut(each.FloatString(6), ".")
	for len(decimals) > 2 && decimals[len(decimals)-1] == '0' {
		decimals = decimals[:len(decimals)-1]
	}
	return json.Number(whole + "." + decimals)
}

// Amount returns a sum in whole currency as a number for JSON, with two decimals.
func Amount(m unit.Money) json.Number {
	return json.Number(big.NewRat(m.Cents, 100).FloatString(2))
}
