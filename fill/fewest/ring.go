package fewest

import (
	"slices"

	"studbay/plan/unit"
)

// Ring is a line that closes on itself, all of which is to be served.
type Ring struct {
	Length, Reach unit.Length
	Places        []Place // in order, from 0 to below the length
	Beside        func(left, right unit.Length) Worth
}

// Pick returns the best of the choices with the fewest places that serve all of the ring.
// It reports false where all places together do not.
func (r Ring) Pick() (best Choice, ok bool) {
	// The point at the reach is served from a place no farther than twice the reach: one of
	// those is in every choice, and cuts the ring open.
	for i, p := range r.Places {
		if p.At > 2*r.Reach {
			break
		}
		c, fits := r.from(i)
		if !fits {
			continue
		}
		if n := len(c.Chosen) - len(best.Chosen); !ok || n < 0 || n == 0 && c.Worth.Compare(best.Worth) < 0 {
			best, ok = c, true
		}
	}
	return best, ok
}

// from returns the best choice that has a place.
func (r Ring) from(i int) (Choice, bool) {
	first := r.Places[i].At
	again := first + r.Length
	open := Line{From: first + r.Reach, To: again - r.Reach, Reach: r.Reach, Beside: r.Beside, Before: &first, After: &again}
	if open.From >= open.To {
		return Choice{Chosen: []int{i}, Worth: r.Places[i].Worth}, true
	}
	for k := 1; k < len(r.Places); k++ {
		p := r.Places[(i+k)%len(r.Places)]
		if p.At < first {
			p.At += r.Length
		}
		open.Places = append(open.Places, p)
	}
	c, ok := open.Pick()
	if !ok {
		return Choice{}, false
	}
	for k, at := range c.Chosen {
		c.Chosen[k] = (i + 1 + at) % len(r.Places)
	}
	c.Chosen = append(c.Chosen, i)
	slices.Sort(c.Chosen)
	c.Worth = c.Worth.plus(r.Places[i].Worth)
	return c, true
}
