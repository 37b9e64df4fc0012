package price

import (
	"maps"
	"slices"
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
	marks  map[string]mark // of the prices that tell a day and a word of their own
	steps  []Step          // recipes of the user's own; nil: those of the catalogue
}

// mark is what the line of a price says beside it.
type mark struct {
	day      string // RFC 3339 full-date, or empty
	invented bool
}

// Entry is a price as a line of a book has it.
type Entry struct {
	Price
	Date     string // RFC 3339 full-date; empty where nobody says
	Invented bool
}

// Entry returns the line of a part. It reports false where the book has no price of it.
func (b *Book) Entry(part string) (Entry, bool) {
	p, ok := b.prices[part]
	if !ok {
		return Entry{}, false
	}
	m, told := b.marks[part]
	if !told {
		m = mark{b.Date, b.Invented}
	}
	return Entry{p, m.day, m.invented}, true
}

// With returns the book with another line of a part; one without a pack has no price. The
// book is as old as its latest price, and invented while any price in it is.
func (b *Book) With(part string, e Entry) *Book {
	next := b.changed()
	next.prices, next.marks = maps.Clone(b.prices), map[string]mark{}
	for id := range b.prices {
		old, _ := b.Entry(id)
		next.marks[id] = mark{old.Date, old.Invented}
	}
	delete(next.prices, part)
	delete(next.marks, part)
	if e.Per > 0 {
		e.Pack.Currency = b.Currency
		next.prices[part], next.marks[part] = e.Price, mark{e.Date, e.Invented}
	}
	next.Date, next.Invented = "", false
	for _, m := range next.marks {
		next.Date, next.Invented = max(next.Date, m.day), next.Invented || m.invented
	}
	return next
}

// changed is a copy of the book to be made another.
func (b *Book) changed() *Book {
	next := *b
	if !next.title.IsZero() {
		next.Name, next.title = "trial prices", words.Text{}
	}
	return &next
}

// Recipes returns what each box takes by this book: its own steps, else those of the catalogue.
func (b *Book) Recipes() []Step {
	if b.steps == nil {
		return standing()
	}
	return b.steps
}

// HasOwnRecipes reports whether the book brings recipes of its own.
func (b *Book) HasOwnRecipes() bool { return b.steps != nil }

// WithStep returns the book with other figures in a step of its recipes, counted from 0: how
// many of its part, and minutes. A part of which there are to be none stays with its count.
func (b *Book) WithStep(at, count, minutes int) *Book {
	next := b.changed()
	next.steps = slices.Clone(b.Recipes())
	s := &next.steps[at]
	s.Count, s.Minutes = count, minutes
	return next
}

// WithNewStep returns the book with one more line at the end of its recipes: one of a part, or
// none where that is only of minutes, for each box that is as said. It fails where a word of it
// is not known.
func (b *Book) WithNewStep(when string, per Per, part string) (*Book, error) {
	cells := map[string]string{"when": when, "per": string(per), "part": part}
	if part != "" {
		cells["count"] = "1"
	}
	s, _, err := stepOf(func(column string) string { return cells[column] })
	if err != nil {
		return nil, err
	}
	next := b.changed()
	next.steps = append(slices.Clone(b.Recipes()), s)
	return next, nil
}

// WithoutStep returns the book without a step of its recipes, counted from 0. The last one stays:
// a book without any goes by those of the catalogue.
func (b *Book) WithoutStep(at int) *Book {
	if len(b.Recipes()) < 2 {
		return b
	}
	next := b.changed()
	next.steps = slices.Delete(slices.Clone(b.Recipes()), at, at+1)
	return next
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
