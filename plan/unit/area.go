package unit

import (
	"math"
	"math/big"
	"math/bits"
)

// Area is a signed product of two lengths in square nanometres, held in 128 bits:
// 100 ft² alone overflows 64. The zero value is no area.
type Area struct {
	hi int64
	lo uint64
}

// Times returns l × m exactly.
func (l Length) Times(m Length) Area {
	neg := (l < 0) != (m < 0)
	hi, lo := bits.Mul64(magnitude(l), magnitude(m))
	a := Area{int64(hi), lo}
	if neg {
		return a.Neg()
	}
	return a
}

func magnitude(l Length) uint64 {
	if l < 0 {
		return uint64(-(l + 1)) + 1
	}
	return uint64(l)
}

// Add returns a + b.
func (a Area) Add(b Area) Area {
	lo, carry := bits.Add64(a.lo, b.lo, 0)
	hi, _ := bits.Add64(uint64(a.hi), uint64(b.hi), carry)
	return Area{int64(hi), lo}
}

// Neg returns −a.
func (a Area) Neg() Area {
	lo, borrow := bits.Sub64(0, a.lo, 0)
	hi, _ := bits.Sub64(0, uint64(a.hi), borrow)
	return Area{int64(hi), lo}
}

// Sub returns a − b.
func (a Area) Sub(b Area) Area { return a.Add(b.Neg()) }

// Sign returns −1, 0 or 1.
func (a Area) Sign() int {
	switch {
	case a.hi < 0:
		return -1
	case a.hi == 0 && a.lo == 0:
		return 0
	}
	return 1
}

// Cmp returns −1 where a < b, 0 where they are equal, 1 where a > b.
func (a Area) Cmp(b Area) int { return a.Sub(b).Sign() }

// The areas limits are written in: multiply them, such as SquareFoot.Mul(9).
var (
	SquareInch = Inch.Times(Inch)
	SquareFoot = Foot.Times(Foot)
)

// SquareInches returns the area in parts of a square inch, such as its ten-thousandths,
// rounded half away from zero. It is for showing; limits are compared as areas.
func (a Area) SquareInches(parts int64) int64 { return a.parts(SquareInch, parts) }

// parts returns the area in parts of a unit, rounded half away from zero.
func (a Area) parts(unit Area, parts int64) int64 {
	n := new(big.Int).Mul(a.Big(), big.NewInt(parts))
	half := new(big.Int).Rsh(unit.Big(), 1)
	if n.Sign() < 0 {
		half.Neg(half)
	}
	return n.Add(n, half).Quo(n, unit.Big()).Int64()
}

// Mul returns a × n exactly. The product must stay within 128 bits, as any area on
// Earth does.
func (a Area) Mul(n int64) Area {
	m := magnitude(Length(n))
	hi, lo := bits.Mul64(a.lo, m)
	product := Area{int64(hi + uint64(a.hi)*m), lo}
	if n < 0 {
		return product.Neg()
	}
	return product
}

// Half returns a / 2, a half square nanometre dropped towards zero.
func (a Area) Half() Area {
	if a.hi < 0 {
		return a.Neg().Half().Neg()
	}
	return Area{a.hi >> 1, a.lo>>1 | uint64(a.hi)<<63}
}

// Sqrt returns the side of the square of area a, rounded to the nearest nanometre.
// A must not be below zero.
func (a Area) Sqrt() Length {
	if a.hi < 0 {
		panic("unit: square root of an area below zero")
	}
	if a.hi >= 1<<60 { // four times it would not fit
		// round(√a) = (⌊√4a⌋ + 1) / 2
		four := new(big.Int).Lsh(a.Big(), 2)
		root := four.Sqrt(four)
		return Length(root.Add(root, big.NewInt(1)).Rsh(root, 1).Int64())
	}
	return Length((floorSqrt(uint64(a.hi)<<2|a.lo>>62, a.lo<<2) + 1) / 2)
}

// floorSqrt returns ⌊√(hi·2⁶⁴ + lo)⌋ of a number below 2¹²⁶. A float's guess is off by some
// 2⁻⁵¹ of it at most; one step of Newton's method in whole numbers never falls below the root,
// and from so near less than one above it.
func floorSqrt(hi, lo uint64) uint64 {
	root := uint64(math.Sqrt(float64(hi)*(1<<64) + float64(lo)))
	if root > hi { // else the number is 0
		q, _ := bits.Div64(hi, lo, root)
		root = (root + q) / 2
	}
	h, l := bits.Mul64(root, root)
	_, borrow := bits.Sub64(lo, l, 0)
	if _, isOver := bits.Sub64(hi, h, borrow); isOver != 0 {
		root--
	}
	return root
}

// Over returns a / l, rounded half away from zero to the nearest nanometre. L must
// not be zero and the quotient must fit a Length.
func (a Area) Over(l Length) Length {
	negative := (a.hi < 0) != (l < 0)
	if a.hi < 0 {
		a = a.Neg()
	}
	d := magnitude(l)
	quotient, rest := bits.Div64(uint64(a.hi), a.lo, d)
	if rest >= d-rest {
		quotient++
	}
	if negative {
		return -Length(quotient)
	}
	return Length(quotient)
}

// SquareMetresFloat returns a as a float for drawing and statistics, never for
// comparing with a limit.
func (a Area) SquareMetresFloat() float64 {
	f, _ := new(big.Float).SetInt(a.Big()).Float64()
	return f / 1e18
}

// Big returns a in square nanometres, for exact work beyond 128 bits.
func (a Area) Big() *big.Int {
	n := new(big.Int).Lsh(big.NewInt(a.hi), 64)
	return n.Add(n, new(big.Int).SetUint64(a.lo))
}

// String writes a in square feet to a tenth.
func (a Area) String() string { return Imperial.FormatArea(a) }
