package revision

import (
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/unit"
)

// Priced returns the list with what each change costs by a price book: what the opening
// takes now less what it took before, of what has a price. A plan that was not checked cannot
// be taken off, and the list stays as it is.
func (l List) Priced(book *price.Book) List {
	if l.Old.Result.Figures == nil || l.New.Result.Figures == nil {
		return l
	}
	before := takeoff.NewTaker(l.Old.Index, l.Old.Result.Figures, book)
	now := takeoff.NewTaker(l.New.Index, l.New.Result.Figures, book)
	changes := make([]Change, len(l.Changes))
	total := book.Zero()
	for i, c := range l.Changes {
		cost := book.Zero()
		cost.Cents = costOf(now, c.New).Cents - costOf(before, c.Old).Cents
		c.Cost = &cost
		changes[i] = c
		total.Cents += cost.Cents
	}
	l.Changes, l.Cost = changes, &total
	return l
}

func costOf(t *takeoff.Taker, o *plan.Opening) unit.Money {
	if o == nil {
		return unit.Money{}
	}
	return t.Of(o).Cost()
}
