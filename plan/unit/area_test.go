package unit

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestAreaText(t *testing.T) {
	for _, tt := range []struct {
		name   string
		area   Area
		system System
		want   string
		source string
	}{
		{"12 by 13 feet", (12 * Foot).Times(13 * Foot), Imperial, "156 ft²", "arithmetic"},
		{"a square foot", SquareFoot, Imperial, "1 ft²", "NIST SP 811 app. B.8"},
		{"144 square inches", SquareInch.Mul(144), Imperial, "1 ft²", "arithmetic: 12 × 12"},
		{"a square metre", Metre.Times(Metre), Imperial, "10.8 ft²", "NIST SP 811 app. B.8: 1 ft² = 9.290 304 E-02 m²"},
		{"156 square feet", SquareFoot.Mul(156), Metric, "14.5 m²", "arithmetic: 14.4929 m²"},
		{"half a tenth away from zero", Metre.Times(5 * Centimetre), Metric, "0.1 m²", "arithmetic: 0.05 m²"},
		{"half a tenth away from zero, below", Metre.Times(-5 * Centimetre), Metric, "−0.1 m²", "arithmetic"},
		{"just under half a tenth", Metre.Times(5*Centimetre - 1), Metric, "0 m²", "arithmetic"},
		{"nothing", Area{}, Imperial, "0 ft²", "arithmetic"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.system.FormatArea(tt.area); got != tt.want {
				t.Errorf("got %s, want %s (%s)", got, tt.want, tt.source)
			}
		})
	}
}

func TestAreaComparesExactly(t *testing.T) {
	for _, tt := range []struct {
		name   string
		a, b   Area
		want   int
		source string
	}{
		{"equal", SquareFoot.Mul(9), (3 * Foot).Times(3 * Foot), 0, "arithmetic"},
		{"a square nanometre less", SquareFoot.Mul(9).Sub(Nanometre.Times(1)), SquareFoot.Mul(9), -1, "arithmetic"},
		{"a square nanometre more", SquareFoot.Mul(9).Add(Nanometre.Times(1)), SquareFoot.Mul(9), 1, "arithmetic"},
		{"below and above zero", SquareFoot.Neg(), SquareInch, -1, "arithmetic"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.a.Cmp(tt.b); got != tt.want {
				t.Errorf("got %d, want %d (%s)", got, tt.want, tt.source)
			}
		})
	}
}

// TestAreaAgreesWithBigNumbers runs every operation beside math/big.
func TestAreaAgreesWithBigNumbers(t *testing.T) {
	side := rapid.Int64Range(-1<<60, 1<<60)
	rapid.Check(t, func(t *rapid.T) {
		l, m, k := side.Draw(t, "l"), side.Draw(t, "m"), side.Draw(t, "k")
		n := rapid.Int64Range(-30, 30).Draw(t, "n")
		a, b := Length(l).Times(Length(m)), Length(k).Times(Length(l))
		bigA := new(big.Int).Mul(big.NewInt(l), big.NewInt(m))
		bigB := new(big.Int).Mul(big.NewInt(k), big.NewInt(l))
		same := func(what string, got Area, want *big.Int) {
			if got.Big().Cmp(want) != 0 {
				t.Fatalf("%s = %v, want %v", what, got.Big(), want)
			}
		}
		same("a", a, bigA)
		same("a + b", a.Add(b), new(big.Int).Add(bigA, bigB))
		same("a - b", a.Sub(b), new(big.Int).Sub(bigA, bigB))
		same("-a", a.Neg(), new(big.Int).Neg(bigA))
		same("a × n", a.Mul(n), new(big.Int).Mul(bigA, big.NewInt(n)))
		same("a / 2", a.Half(), new(big.Int).Quo(bigA, big.NewInt(2)))
		if a.Cmp(b) != bigA.Cmp(bigB) || a.Sign() != bigA.Sign() {
			t.Fatalf("comparing %v and %v", bigA, bigB)
		}
		exact, _ := new(big.Float).SetInt(bigA).Float64()
		if got := a.SquareMetresFloat(); math.Abs(got-exact/1e18) > 1e-12*math.Abs(got) {
			t.Fatalf("%v nm² = %g m²", bigA, got)
		}
	})
}

func TestOverRoundsHalfAwayFromZero(t *testing.T) {
	for _, tt := range []struct{ l, d, want Length }{
		{3, 2, 2}, {-3, 2, -2}, {3, -2, -2}, {-3, -2, 2}, {1, 3, 0}, {2, 3, 1}, {0, 5, 0},
	} {
		if got := tt.l.Times(1).Over(tt.d); got != tt.want {
			t.Errorf("%d nm² / %d nm = %d nm, want %d (arithmetic)", tt.l, tt.d, got, tt.want)
		}
	}
}

// TestRootIsNearest holds that no neighbour's square, taken at the half, is nearer:
// (2r-1)² ≤ 4a < (2r+1)².
func TestRootIsNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(0, 1<<60).Draw(t, "l"))
		a := l.Times(Length(rapid.Int64Range(0, 1<<60).Draw(t, "m")))
		root := big.NewInt(int64(a.Sqrt()))
		four := new(big.Int).Lsh(a.Big(), 2)
		twice := new(big.Int).Lsh(root, 1)
		low := new(big.Int).Sub(twice, big.NewInt(1))
		high := new(big.Int).Add(twice, big.NewInt(1))
		if root.Sign() > 0 && four.Cmp(low.Mul(low, low)) < 0 || four.Cmp(high.Mul(high, high)) >= 0 {
			t.Fatalf("root of %v is %v", a.Big(), root)
		}
		if got := l.Times(l).Sqrt(); got != l {
			t.Fatalf("root of the square of %v is %v", l, got)
		}
	})
}

// TestOverIsNearest holds that the rest is at most half the divisor.
func TestOverIsNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.Int64Range(-1<<50, 1<<50).Draw(t, "l")
		m := rapid.Int64Range(-1<<50, 1<<50).Draw(t, "m")
		d := rapid.Int64Range(1<<45, 1<<60).Draw(t, "d")
		if rapid.Bool().Draw(t, "below zero") {
			d = -d
		}
		a := Length(l).Times(Length(m))
		got := a.Over(Length(d))
		rest := a.Sub(got.Times(Length(d))).Big()
		if rest.Abs(rest).Lsh(rest, 1).Cmp(new(big.Int).Abs(big.NewInt(d))) > 0 {
			t.Fatalf("%v / %d = %d", a.Big(), d, got)
		}
		if back := Length(l).Times(Length(d)).Over(Length(d)); back != Length(l) {
			t.Fatalf("%d × %d / %d = %d", l, d, d, back)
		}
	})
}
