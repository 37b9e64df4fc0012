package unit

import (
	"math/big"
	"math/rand/v2"
	"testing"
)

// TestAreasTimesNumbers: products of whole numbers of any size say what a × n is.
func TestAreasTimesNumbers(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	numbers := []int64{0, 1, -1, 2, -2, 7, -7, 1 << 20, -(1 << 20)}
	for range 200 {
		a := Length(r.Int64N(1<<40) - 1<<39).Times(Length(r.Int64N(1<<40) - 1<<39))
		for _, n := range numbers {
			if got, want := a.Mul(n).Big(), new(big.Int).Mul(a.Big(), big.NewInt(n)); got.Cmp(want) != 0 {
				t.Fatalf("%v × %d is %v, want %v", a.Big(), n, got, want)
			}
		}
	}
}

// TestRootsBesideSquares: of n², of one less and of one more, where a float's guess errs most.
func TestRootsBesideSquares(t *testing.T) {
	for shift := range 62 {
		for _, n := range []int64{1<<shift - 1, 1 << shift, 1<<shift + 1} {
			square := new(big.Int).Mul(big.NewInt(n), big.NewInt(n))
			for _, add := range []int64{-1, 0, 1} {
				of := new(big.Int).Add(square, big.NewInt(add))
				if of.Sign() <= 0 {
					continue
				}
				lo := new(big.Int).And(of, new(big.Int).SetUint64(1<<64-1)).Uint64()
				hi := new(big.Int).Rsh(of, 64).Uint64()
				if got, want := floorSqrt(hi, lo), new(big.Int).Sqrt(of).Uint64(); got != want {
					t.Errorf("√%v is %d, want %d", of, got, want)
				}
			}
		}
	}
}

// TestSizesAsTheyAreRead: 6 in² is 6 × 6.4516 = 38.7096 cm², and 20.25 in³ is 20.25 × 16.387064
// = 331.838 cm³ (NIST SP 811 (2008), app. B.8).
func TestSizesAsTheyAreRead(t *testing.T) {
	small := (2 * Inch).Times(3 * Inch)
	for want, got := range map[string]string{
		"6 in²": Imperial.FormatSmallArea(small), "38.7 cm²": Metric.FormatSmallArea(small),
		"20.25 in³": Imperial.FormatVolume(CubicInch * 81 / 4), "20.25 in³ (332 cm³)": Metric.FormatVolume(CubicInch * 81 / 4),
	} {
		if got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
	for _, text := range []string{"6' x", "6' -", "6-x", "6' 9.x", "6-", "6' 12", "6-12"} {
		if l, err := Parse(text, Inch); err == nil {
			t.Errorf("%q is read as %v", text, l)
		}
	}
	for text, want := range map[string]Length{"9": 9 * Inch, "6'9": 81 * Inch, "6-9": 81 * Inch, "6' .5": 72*Inch + Inch/2, "6'-9": 81 * Inch, "6' 11 15/16": 84*Inch - Inch/16} {
		if l, err := Parse(text, Inch); err != nil || l != want {
			t.Errorf("%q is read as %v, %v, want %v", text, l, err, want)
		}
	}
}
