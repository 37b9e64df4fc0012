package unit

import (
	"errors"
	"fmt"
)

// ErrCurrency says that two sums of different currencies cannot be added.
var ErrCurrency = errors.New("different currencies")

// Money is a signed sum in hundredths of a currency. The zero value is nothing at
// all and adds to any currency.
type Money struct {
	Cents    int64  `json:"cents"`
	Currency string `json:"currency"` // ISO 4217: USD, CAD, MXN, EUR ...
}

// Add returns m + n. It fails with ErrCurrency where their currencies differ and with
// ErrRange where the sum is too large.
func (m Money) Add(n Money) (Money, error) {
	switch {
	case n == Money{}:
		return m, nil
	case m == Money{}:
		return n, nil
	case m.Currency != n.Currency:
		return Money{}, fmt.Errorf("adding %s to %s: %w", n, m, ErrCurrency)
	}
	sum := m.Cents + n.Cents
	if (sum > m.Cents) != (n.Cents > 0) {
		return Money{}, fmt.Errorf("adding %s to %s: %w", n, m, ErrRange)
	}
	return Money{sum, m.Currency}, nil
}

// Times returns m × n, for n pieces of one price. It fails with ErrRange.
func (m Money) Times(n int64) (Money, error) {
	product := m.Cents * n
	if n != 0 && (product/n != m.Cents || n == -1 && m.Cents == product && m.Cents != 0) {
		return Money{}, fmt.Errorf("%s × %d: %w", m, n, ErrRange)
	}
	return Money{product, m.Currency}, nil
}

// currencySigns stand before the amount; other currencies show their code behind it.
var currencySigns = map[string]string{
	"USD": "$", "CAD": "CA$", "MXN": "MX$", "AUD": "A$", "EUR": "€", "GBP": "£", "": "",
}

// String writes m with two decimals: $0.60, −$12.00 or 12.50 CHF.
func (m Money) String() string {
	sign := ""
	if m.Cents < 0 {
		sign = minus
	}
	cents := magnitude(Length(m.Cents))
	amount := fmt.Sprintf("%d.%02d", cents/100, cents%100)
	if mark, ok := currencySigns[m.Currency]; ok {
		return sign + mark + amount
	}
	return sign + amount + " " + m.Currency
}
