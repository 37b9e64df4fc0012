package unit

import "math/bits"

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
