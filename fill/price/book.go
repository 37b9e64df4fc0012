package price

import (
	"sync"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// currency is that of our own prices.
const currency = "USD"

// bookDate is the day of our own prices.
const bookDate = "2026-11-12"

// Book is what parts cost. It is never written after it was made.
type Book struct {
	Name     string // as a user knows it: a title, or the name of its file
	Date     string // RFC 3339 full-date; empty where nobody says
	Currency string
	// Invented says that the prices are made up, to be replaced by the user's own.
	Invented bool

	title  words.Text
	prices map[string]Price
}

// Trial returns the book that travels in the program. Its prices are invented.
var Trial = sync.OnceValue(func() *Book {
	b := &Book{
		Name: "trial prices, invented", Date: bookDate, Currency: currency, Invented: true,
		title: words.New("price.trial", "trial prices of {0}, invented", bookDate), prices: map[string]Price{},
	}
	for _, h := range parts().list {
		if h.price.Per > 0 {
			b.prices[h.ID] = h.price
		}
	}
	return b
})

// Of returns the price of a part. It reports false where the book has none.
func (b *Book) Of(part string) (Price, bool) {
	p, ok := b.prices[part]
	return p, ok
}

// Text returns the book's name with its date, and that its prices are invented where they
// are.
func (b *Book) Text() words.Text {
	switch {
	case !b.title.IsZero():
		return b.title
	case b.Date != "" && b.Invented:
		return words.New("price.invented", "{0} of {1}, with invented prices", b.Name, b.Date)
	case b.Invented:
		return words.New("price.invented-undated", "{0}, with invented prices", b.Name)
	case b.Date != "":
		return words.New("price.dated", "{0} of {1}", b.Name, b.Date)
	}
	return words.New("plain", "{0}", b.Name)
}

// Zero is no money in the book's currency.
func (b *Book) Zero() unit.Money { return unit.Money{Currency: b.Currency} }
