// Package fewest chooses the least number of places along a line, each of which serves as
// far as a reach to either side, so that a part of the line is served: of all choices of
// that number the best by what each place and each two neighbors are worth.
package fewest

import (
	"slices"

	"studbay/plan/unit"
)

// Worth is what speaks against a place or against two neighbors, what matters most first.
// Less is better.
type Worth [4]int64

func (w Worth) plus(v Worth) Worth {
	for i := range w {
		w[i] += v[i]
	}
	return w
}

// Compare compares what matters most first.
func (w Worth) Compare(v Worth) int { return slices.Compare(w[:], v[:]) }

// Place is where along the line one may stand.
type Place struct {
	At    unit.Length
	Worth Worth
}

// Line is a part of a line that is to be served, and where one may stand to serve it.
// Places may lie before and past the part.
type Line struct {
	From, To unit.Length
	Reach    unit.Length // a point exactly so far away is served
	Places   []Place     // in order
	// Beside is what speaks against two neighbors; nil: nothing does. It is asked with
	// Before and After for those at the ends.
	Beside        func(left, right unit.Length) Worth
	Before, After *unit.Length // what stands there already; nil: nothing
}

// Choice is the places chosen, as indices in order.
type Choice struct {
	Chosen []int
	Worth  Worth
}

// Pick returns the best of the choices with the fewest places that serve all of the part.
// It reports false where all places together do not serve it.
func (l Line) Pick() (Choice, bool) {
	n := l.Least()
	if n < 0 {
		return Choice{}, false
	}
	if n == 0 {
		return Choice{}, true
	}
	return l.best(n), true
}

// Least returns the least number of places that serve the part, none where it has no
// length, or -1 where all together do not serve it: the leftmost point that is not served
// yet is served from as far to its right as can be.
func (l Line) Least() (n int) {
	for served := l.From; served < l.To; n++ {
		at := l.last(served + l.Reach)
		if at < 0 || l.Places[at].At+l.Reach <= served {
			return -1
		}
		served = l.Places[at].At + l.Reach
	}
	return n
}

// last returns the last place not past a point, or -1.
func (l Line) last(point unit.Length) int {
	at, _ := slices.BinarySearchFunc(l.Places, point, func(p Place, point unit.Length) int {
		if p.At <= point {
			return -1
		}
		return 1
	})
	return at - 1
}

// step is the best choice of a count of places that ends at one, serving all up to it.
type step struct {
	worth Worth
	from  int // the place before
	ok    bool
}

// best returns the best of the choices of n places.
func (l Line) best(n int) Choice {
	steps := make([][]step, n)
	for k := range steps {
		steps[k] = make([]step, len(l.Places))
		for i, p := range l.Places {
			steps[k][i] = l.step(steps, k, i, p)
		}
	}
	end, worth := -1, Worth{}
	for i, p := range l.Places {
		s := steps[n-1][i]
		if !s.ok || p.At+l.Reach < l.To {
			continue
		}
		if l.After != nil {
			s.worth = s.worth.plus(l.beside(p.At, *l.After))
		}
		if end < 0 || s.worth.Compare(worth) < 0 {
			end, worth = i, s.worth
		}
	}
	c := Choice{Worth: worth}
	for k := n - 1; k >= 0; k-- {
		c.Chosen = append(c.Chosen, end)
		end = steps[k][end].from
	}
	slices.Reverse(c.Chosen)
	return c
}

// step finds the best of the choices whose k-th place, counted from none, is one.
func (l Line) step(steps [][]step, k, i int, p Place) (best step) {
	if k == 0 { // one that serves nothing yet is in no choice of the fewest: the next would do without it
		if p.At-l.Reach > l.From {
			return best
		}
		best = step{p.Worth, -1, true}
		if l.Before != nil {
			best.worth = best.worth.plus(l.beside(*l.Before, p.At))
		}
		return best
	}
	for j := i - 1; j >= 0; j-- {
		if p.At-l.Places[j].At > 2*l.Reach {
			break
		}
		before := steps[k-1][j]
		if !before.ok {
			continue
		}
		worth := before.worth.plus(p.Worth).plus(l.beside(l.Places[j].At, p.At))
		if !best.ok || worth.Compare(best.worth) < 0 {
			best = step{worth, j, true}
		}
	}
	return best
}

func (l Line) beside(left, right unit.Length) (w Worth) {
	if l.Beside != nil {
		w = l.Beside(left, right)
	}
	return w
}
