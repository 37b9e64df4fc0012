package spacing

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/code"
	"studbay/fill/fewest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// hand is what a wall by chance is measured in: all in it begins and ends at whole ones.
const hand = 4 * unit.Inch

// chance is a run by chance with where receptacles can be set in it and those that are there.
type chance struct {
	run
	reach   int
	sites   sites
	there   []unit.Length
	middles []unit.Length // of beds and windows
}

// aChance makes one of legs that begin some way along their sides.
func aChance(n *rand.Rand, legs int) (c chance) {
	c.reach, c.isClosed = 2+n.IntN(4), n.IntN(2) == 0
	for i := range legs {
		from, long := hand*unit.Length(n.IntN(3)), hand*unit.Length(2+n.IntN(9))
		side := &index.SideView{Side: &plan.Side{ID: plan.ID(fmt.Sprintf("s%d", i))}, Length: from + long}
		at, start := hand*unit.Length(n.IntN(12)), c.length
		switch n.IntN(4) {
		case 0: // a bed of two hands, its middle one past its left
			f := &plan.Fixture{Kind: plan.FixtureBed, Width: 2 * hand, At: plan.OnFace(side.Side.ID, at-hand)}
			side.Fixtures = append(side.Fixtures, index.FixtureView{Fixture: f})
		case 1:
			side.Cuts = append(side.Cuts, index.Cut{Break: &plan.Break{Kind: plan.BreakWindow}, From: at - hand, To: at + hand})
		case 2: // neither
			f := &plan.Fixture{Kind: plan.FixtureDesk, Width: 2 * hand, At: plan.OnFace(side.Side.ID, at-hand)}
			side.Fixtures = append(side.Fixtures, index.FixtureView{Fixture: f})
			side.Cuts = append(side.Cuts, index.Cut{Break: &plan.Break{Kind: plan.BreakDoor}, From: at - hand, To: at + hand})
			at = 0
		default:
			at = 0
		}
		if from < at && at < from+long {
			c.middles = append(c.middles, start+at-from)
		}
		c.add(leg{side: side, from: from, to: from + long, canMount: true})
	}
	set := func(at unit.Length) plan.Opening { return plan.Opening{At: plan.Anchor{Along: at}} }
	for range 1 + n.IntN(5) {
		from := hand * unit.Length(n.IntN(int(c.length/hand)))
		to := min(from+hand*unit.Length(n.IntN(6)), c.length-hand) // the end of a closed run is its start
		c.sites.add(site{from, to, fewest.Worth{int64(n.IntN(3)), int64(n.IntN(3))}, set})
	}
	for range n.IntN(3) {
		c.there = append(c.there, hand*unit.Length(n.IntN(int(c.length/hand))))
	}
	slices.Sort(c.there)
	c.there = slices.Compact(c.there)
	return c
}

// worth of a place is that of the best site that holds it; nil: none does.
func (c chance) worth(at unit.Length) (best *fewest.Worth) {
	for _, s := range c.sites.all {
		if s.from <= at && at <= s.to && (best == nil || s.worth[0] < best[0] || s.worth[0] == best[0] && s.worth[1] < best[1]) {
			best = &s.worth
		}
	}
	return best
}

// sum is what speaks against places for a gap, as Serve says: where they are and how they are
// held; how unevenly two that follow one another stand about a middle between them, up to 4 ft,
// twice the distance in sixteenths of an inch; how far apart they are, squared.
func (c chance) sum(g gap, places []unit.Length) (w fewest.Worth) {
	reach := hand * unit.Length(c.reach)
	var line []unit.Length
	if g.from > 0 {
		line = append(line, g.from-reach)
	}
	for _, at := range places {
		own := c.worth(c.turned(at))
		w[0], w[1] = w[0]+own[0], w[1]+own[1]
		line = append(line, at)
	}
	if g.to < c.length || c.isClosed {
		line = append(line, g.to+reach)
	}
	for i := 1; i < len(line); i++ {
		left, right := line[i-1], line[i]
		for _, m := range c.middles {
			if left < m && m < right {
				w[2] += min(int64((right-m-(m-left)).Abs()/(unit.Inch/16)), 768)
			}
		}
		apart := int64((right - left) / (unit.Inch / 16))
		w[3] += apart * apart
	}
	return w
}

func (c chance) turned(at unit.Length) unit.Length {
	if c.isClosed {
		return at % c.length
	}
	return at
}

// best tries all places at whole hands, first one, then two and so on, and returns how many
// serve a gap and the least that speaks against so many.
func (c chance) best(g gap, from, to unit.Length) (count int, least fewest.Worth) {
	reach := hand * unit.Length(c.reach)
	var all []unit.Length
	for at := from; at <= to; at += hand {
		if at >= 0 && c.worth(c.turned(at)) != nil {
			all = append(all, at)
		}
	}
	var try func(chosen []unit.Length, next int)
	for n := 1; n <= 9 && count == 0; n++ {
		try = func(chosen []unit.Length, next int) {
			if len(chosen) == n {
				if w := c.sum(g, chosen); c.serves(g, chosen) && (count == 0 || w.Compare(least) < 0) {
					count, least = n, w
				}
				return
			}
			for i := next; i < len(all) && (len(chosen) == 0 || all[i]-chosen[len(chosen)-1] <= 2*reach); i++ {
				try(append(slices.Clone(chosen), all[i]), i+1)
			}
		}
		try(nil, 0)
	}
	return count, least
}

// serves looks at each half hand of a gap; round a closed run both ways.
func (c chance) serves(g gap, places []unit.Length) bool {
	for at := g.from; at <= g.to; at += hand / 2 {
		if !slices.ContainsFunc(places, func(p unit.Length) bool {
			off := (p - at).Abs()
			return off <= hand*unit.Length(c.reach) || c.isClosed && (c.length-off).Abs() <= hand*unit.Length(c.reach)
		}) {
			return false
		}
	}
	return true
}

// Of all choices of places that serve a gap, none takes fewer than the one picked, and of as
// many none has less against it; where no choice serves it, none is picked. On a coarse grid
// the fewest are found all the same.
func TestPicksAreTheFewestAndTheBest(t *testing.T) {
	picked, missed := 0, 0
	for seed := range uint64(1500) {
		n := rand.New(rand.NewPCG(seed, 5))
		c := aChance(n, 1+n.IntN(3))
		reach := hand * unit.Length(c.reach)
		isCoarse := n.IntN(2) == 0
		c.sites.grid = hand
		if isCoarse {
			c.sites.grid = 1000 * hand
		}
		s := &service{fig: code.Latest()}
		for _, g := range c.gaps(c.there, reach) {
			isRing := c.isClosed && len(c.there) == 0
			from, to := g.from-reach, g.to+reach
			if isRing {
				from, to = 0, c.length-hand
			}
			count, least := c.best(g, from, to)
			chosen, ok := s.pick(c.run, g, c.there, reach, c.sites)
			if ok != (count > 0) || ok && len(chosen) != count {
				t.Fatalf("seed %d: %+v, gap %v: picked %d, %v, want %d", seed, c, g, len(chosen), ok, count)
			}
			if !ok {
				missed++
				continue
			}
			picked++
			var places []unit.Length
			for _, o := range chosen {
				at := o.At.Along
				if !isRing && at < from {
					at += c.length // set on the next turn
				}
				places = append(places, at)
			}
			if !c.serves(g, places) {
				t.Fatalf("seed %d: %+v, gap %v is not served from %v", seed, c, g, places)
			}
			if got := c.sum(g, places); !isRing && !isCoarse && got != least {
				t.Fatalf("seed %d: %+v, gap %v: %v has %v against it, want %v", seed, c, g, places, got, least)
			}
		}
	}
	if picked < 500 || missed < 100 {
		t.Errorf("%d gaps were served and %d not: too tame", picked, missed)
	}
}
