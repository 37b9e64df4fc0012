package takeoff

import (
	"cmp"
	"slices"

	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/unit"
)

// Takeoff is what a whole plan takes, opening by opening.
type Takeoff struct {
	Plan     plan.Plan // that it is of
	Book     *price.Book
	Openings []Opening // level by level, room by room, by tag
	moved    []Opening // what moving each box later takes
}

// Whole takes every opening of a plan off that is the taker's own or differs from it in
// assemblies alone: what was there in its own plan costs nothing unless it changed.
func (t *Taker) Whole(p plan.Plan) *Takeoff {
	whole := &Takeoff{Plan: p, Book: t.book}
	for _, o := range p.Openings() {
		one := t.Of(o)
		one.Fill = one.Fill.Sums()
		whole.Openings = append(whole.Openings, one)
	}
	for _, o := range whole.Openings {
		if m, ok := t.Moved(o); ok {
			whole.moved = append(whole.moved, m)
		}
	}
	level := map[plan.ID]int{}
	for i, l := range p.Levels {
		level[l.ID] = i
	}
	slices.SortStableFunc(whole.Openings, func(a, b Opening) int {
		return cmp.Or(
			cmp.Compare(level[a.View.Level], level[b.View.Level]), cmp.Compare(a.RoomName(), b.RoomName()),
			cmp.Compare(a.roomID(), b.roomID()), plan.CompareTags(a.View.Opening.Tag, b.View.Opening.Tag),
		)
	})
	return whole
}

// RoomName names the room of an opening, empty where its host is gone.
func (o Opening) RoomName() string {
	if o.View.Room == nil {
		return ""
	}
	return o.View.Room.Name
}

func (o Opening) roomID() plan.ID {
	if o.View.Room == nil {
		return ""
	}
	return o.View.Room.ID
}

// Cost sums all lines of some groups, or all of them.
func (w *Takeoff) Cost(groups ...price.Group) unit.Money {
	sum := w.Book.Zero()
	for _, o := range w.Openings {
		sum.Cents += o.Cost(groups...).Cents
	}
	return sum
}

// Minutes sums those of all openings.
func (w *Takeoff) Minutes() (sum int) {
	for _, o := range w.Openings {
		sum += o.Minutes
	}
	return sum
}

// Blocks counts the blocks of all openings.
func (w *Takeoff) Blocks() (n int) {
	for _, o := range w.Openings {
		n += len(o.Blocks)
	}
	return n
}

// Cuts counts the holes in the finish by kind.
func (w *Takeoff) Cuts() map[Cut]int {
	n := map[Cut]int{}
	for _, o := range w.Openings {
		if o.Cut != NoCut {
			n[o.Cut]++
		}
	}
	return n
}

// Sum is how much of one part is wanted in all.
type Sum struct {
	Line
	Openings []string // tags, each once
}

// Parts sums the parts of some openings, in the order of the price book.
func Parts(openings []Opening) (sums []Sum) {
	at := map[string]int{}
	for _, o := range openings {
		for _, l := range o.Lines {
			i, seen := at[l.Part.ID]
			if !seen {
				i = len(sums)
				at[l.Part.ID], sums = i, append(sums, Sum{Line: Line{Part: l.Part, Price: l.Price}})
			}
			s := &sums[i]
			s.Quantity += l.Quantity
			s.Cost.Cents += l.Cost.Cents
			s.Cost.Currency = cmp.Or(s.Cost.Currency, l.Cost.Currency)
			s.Openings = append(s.Openings, o.View.Opening.Tag)
		}
	}
	order := map[string]int{}
	for i, p := range price.All() {
		order[p.ID] = i + 1
	}
	slices.SortStableFunc(sums, func(a, b Sum) int {
		return cmp.Or(cmp.Compare(slices.Index(price.Groups, a.Part.Group), slices.Index(price.Groups, b.Part.Group)),
			cmp.Compare(known(order[a.Part.ID]), known(order[b.Part.ID])), cmp.Compare(a.Part.ID, b.Part.ID))
	})
	return sums
}

// known puts what has no place last.
func known(place int) int {
	if place == 0 {
		return 1 << 30
	}
	return place
}

// Unpriced lists the parts that the price book has no price of.
func (w *Takeoff) Unpriced() (all []Sum) {
	for _, s := range Parts(w.Openings) {
		if !s.HasPrice() {
			all = append(all, s)
		}
	}
	return all
}
