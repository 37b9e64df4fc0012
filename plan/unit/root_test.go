package unit

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// reaches draws lengths of every size to the greatest there is, powers of two and their
// neighbors often: where the halves of 128 bits meet.
func reaches() *rapid.Generator[Length] {
	power := rapid.Custom(func(t *rapid.T) Length {
		l := Length(1) << rapid.IntRange(0, 62).Draw(t, "power")
		return l + Length(rapid.IntRange(-1, 1).Draw(t, "beside"))
	})
	return rapid.OneOf(power, rapid.Custom(func(t *rapid.T) Length {
		return Length(rapid.Int64Range(0, math.MaxInt64).Draw(t, "l"))
	}))
}

// The root of an area is nearest where twice it, less and more one, square to either side of
// four times the area.
func TestRootsOfAllSizes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := reaches().Draw(t, "l").Times(reaches().Draw(t, "m"))
		root := int64(a.Sqrt())
		four := new(big.Int).Lsh(a.Big(), 2)
		square := func(n *big.Int) *big.Int { return new(big.Int).Mul(n, n) }
		twice := new(big.Int).Lsh(big.NewInt(root), 1)
		low, high := new(big.Int).Sub(twice, big.NewInt(1)), new(big.Int).Add(twice, big.NewInt(1))
		if root > 0 && four.Cmp(square(low)) < 0 || four.Cmp(square(high)) >= 0 {
			t.Fatalf("the root of %v is %d", a.Big(), root)
		}
	})
}

// (l + ½)² is l·(l + 1) + ¼: of l·(l + 1) the root is l to the nearest, of one more l + 1.
func TestRootsAtTheHalf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := reaches().Draw(t, "l")
		if l == math.MaxInt64 {
			return
		}
		below := l.Times(l + 1)
		if got := below.Sqrt(); got != l {
			t.Fatalf("the root of %v is %d, want %d", below.Big(), got, l)
		}
		if got := below.Add(Nanometre.Times(Nanometre)).Sqrt(); got != l+1 {
			t.Fatalf("the root of one more than %v is %d, want %d", below.Big(), got, l+1)
		}
	})
	if got := (Area{}).Sqrt(); got != 0 {
		t.Errorf("the root of nothing is %d", got)
	}
	// 2⁶² squared: four times it is 2¹²⁶, the first that the fast way does not take
	if got := (Length(1) << 62).Times(1 << 62).Sqrt(); got != 1<<62 {
		t.Errorf("the root of 2¹²⁴ is %d", got)
	}
	defer func() {
		if recover() == nil {
			t.Error("an area below zero has a root")
		}
	}()
	Nanometre.Times(-1).Sqrt()
}

// Signs, comparisons and products of every size beside math/big.
func TestAreasOfAllSizes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sign := func(l Length) Length {
			if rapid.Bool().Draw(t, "below zero") {
				return -l
			}
			return l
		}
		l, m := sign(reaches().Draw(t, "l")), sign(reaches().Draw(t, "m"))
		a, want := l.Times(m), new(big.Int).Mul(big.NewInt(int64(l)), big.NewInt(int64(m)))
		if a.Big().Cmp(want) != 0 || a.Sign() != want.Sign() {
			t.Fatalf("%d × %d = %v (sign %d), want %v", l, m, a.Big(), a.Sign(), want)
		}
		if got := a.Neg().Big(); got.Cmp(new(big.Int).Neg(want)) != 0 {
			t.Fatalf("−%v = %v", want, got)
		}
	})
	if got := Length(math.MinInt64).Times(1).Big(); got.Cmp(big.NewInt(math.MinInt64)) != 0 {
		t.Errorf("−2⁶³ × 1 = %v", got)
	}
}
