package wire

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// exact is up to how many stops every order of a chain is tried.
const exact = 7

// Order returns stops in the order of the shortest cable from a start, which may be empty: of
// up to seven stops every order is tried; of more it is begun with the nearest each time and
// then changed until no two stops swapped, and no part turned round, shorten it.
func Order(ix *index.Index, start plan.ID, stops []plan.ID) []plan.ID {
	return chainOf(ix, start, stops).sorted(stops)
}

// chain is places to be joined one after the other; with from 1 the first is the start.
type chain struct {
	ends []end
	from int
	// over says of each end whether its box is over full with one cable of the chain, and
	// whether it is with two; nil: nobody asks.
	over [][2]bool
	far  [][]unit.Length // from each end to each
}

func chainOf(ix *index.Index, start plan.ID, stops []plan.ID) (c chain) {
	if e, ok := endOf(ix, start); ok {
		c.ends, c.from = append(c.ends, e), 1
	}
	for _, id := range stops {
		e, _ := endOf(ix, id)
		c.ends = append(c.ends, e)
	}
	return c.measured()
}

// measured returns the chain with how far its places are from one another.
func (c chain) measured() chain {
	c.far = make([][]unit.Length, len(c.ends))
	for i, a := range c.ends {
		for _, b := range c.ends {
			c.far[i] = append(c.far[i], between(a, b).Total)
		}
	}
	return c
}

// sorted returns the stops of the chain in the best order.
func (c chain) sorted(stops []plan.ID) []plan.ID {
	if len(stops) < 2 {
		return stops
	}
	order := c.nearest()
	if len(stops) <= exact {
		order = c.everyOrder(order)
	} else {
		c.improve(order)
	}
	sorted := make([]plan.ID, len(stops))
	for i, at := range order {
		sorted[i] = stops[at-c.from]
	}
	return sorted
}

// cost is what an order is measured by: boxes over full before cable.
type cost struct {
	over   int
	length unit.Length
}

func (a cost) compare(b cost) int {
	return cmp.Or(cmp.Compare(a.over, b.over), cmp.Compare(a.length, b.length))
}

// cost is that of an order, or of the beginning of one, which costs no more than any order
// that begins so.
func (c chain) cost(order []int) (sum cost) {
	at := -1
	if c.from == 1 {
		at = 0
	}
	for i, next := range order {
		if at >= 0 {
			sum.length += c.far[at][next]
		}
		if c.isOver(next, c.cables(i, len(order))) {
			sum.over++
		}
		at = next
	}
	return sum
}

// cables is how many cables of the chain the stop at a place of an order takes; the last one
// of a beginning takes at least as many as the last of all.
func (c chain) cables(place, of int) int {
	n := 2
	if place == of-1 {
		n--
	}
	if place == 0 && c.from == 0 {
		n--
	}
	return n
}

func (c chain) isOver(stop, cables int) bool {
	return c.over != nil && cables > 0 && c.over[stop][cables-1]
}

// nearest goes on to the nearest stop each time.
func (c chain) nearest() (order []int) {
	left := make([]int, 0, len(c.ends))
	for i := c.from; i < len(c.ends); i++ {
		left = append(left, i)
	}
	at := 0
	if c.from == 0 {
		order, left = append(order, left[0]), left[1:]
	}
	for len(left) > 0 {
		best := 0
		for i := range left {
			if c.far[at][left[i]] < c.far[at][left[best]] {
				best = i
			}
		}
		at = left[best]
		order, left = append(order, at), slices.Delete(left, best, best+1)
	}
	return order
}

// everyOrder returns the best of all orders, the one given where none is better.
func (c chain) everyOrder(order []int) []int {
	best, least := slices.Clone(order), c.cost(order)
	var try func(done int)
	tried := slices.Clone(order)
	try = func(done int) {
		sum := c.cost(tried[:done])
		if sum.compare(least) >= 0 {
			return
		}
		if done == len(tried) {
			best, least = slices.Clone(tried), sum
		}
		for i := done; i < len(tried); i++ {
			tried[done], tried[i] = tried[i], tried[done]
			try(done + 1)
			tried[done], tried[i] = tried[i], tried[done]
		}
	}
	try(0)
	return best
}

// improve swaps two stops, or turns the part between them round, as long as that mends a box
// or shortens the chain.
func (c chain) improve(order []int) {
	least := c.cost(order)
	for better := true; better; {
		better = false
		for i := range order {
			for k := i + 1; k < len(order); k++ {
				order[i], order[k] = order[k], order[i]
				if l := c.cost(order); l.compare(least) < 0 {
					least, better = l, true
					continue
				}
				order[i], order[k] = order[k], order[i]
				slices.Reverse(order[i : k+1])
				if l := c.cost(order); l.compare(least) < 0 {
					least, better = l, true
					continue
				}
				slices.Reverse(order[i : k+1])
			}
		}
	}
}
