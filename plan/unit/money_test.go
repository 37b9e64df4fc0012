package unit

import (
	"errors"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestMoneyText(t *testing.T) {
	for _, tt := range []struct {
		money  Money
		want   string
		source string
	}{
		{Money{60, "USD"}, "$0.60", "common practice"},
		{Money{123456, "USD"}, "$1234.56", "common practice"},
		{Money{-1200, "USD"}, "−$12.00", "own form: U+2212"},
		{Money{-5, "USD"}, "−$0.05", "arithmetic"},
		{Money{1250, "CHF"}, "12.50 CHF", "ISO 4217 code"},
		{Money{1250, "EUR"}, "€12.50", "common practice"},
		{Money{}, "0.00", "own form"},
		{Money{-1 << 63, "USD"}, "−$92233720368547758.08", "arithmetic: 2^63 / 100"},
	} {
		if got := tt.money.String(); got != tt.want {
			t.Errorf("%#v shows as %s, want %s (%s)", tt.money, got, tt.want, tt.source)
		}
	}
}

func TestMoneyOfTwoCurrenciesIsNotAdded(t *testing.T) {
	if got, err := (Money{1, "USD"}).Add(Money{1, "CAD"}); !errors.Is(err, ErrCurrency) {
		t.Errorf("got %v, %v, want ErrCurrency", got, err)
	}
}

func TestNoMoneyAddsToAny(t *testing.T) {
	five := Money{500, "CAD"}
	for _, pair := range [][2]Money{{five, {}}, {{}, five}} {
		if got, err := pair[0].Add(pair[1]); err != nil || got != five {
			t.Errorf("%v + %v = %v, %v", pair[0], pair[1], got, err)
		}
	}
}

func TestMoneyAgreesWithBigNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Int64().Draw(t, "a"), rapid.Int64().Draw(t, "b")
		check := func(what string, got Money, err error, want *big.Int) {
			if want.IsInt64() != (err == nil) || err == nil && got.Cents != want.Int64() {
				t.Fatalf("%s of %d and %d = %v, %v, want %v", what, a, b, got, err, want)
			}
			if err != nil && !errors.Is(err, ErrRange) {
				t.Fatalf("%s fails with %v", what, err)
			}
		}
		bigA, bigB := big.NewInt(a), big.NewInt(b)
		sum, err := Money{a, "USD"}.Add(Money{b, "USD"})
		check("sum", sum, err, new(big.Int).Add(bigA, bigB))
		product, err := Money{a, "USD"}.Times(b)
		check("product", product, err, new(big.Int).Mul(bigA, bigB))
	})
}
