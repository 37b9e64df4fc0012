package wire

import (
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ends draws places of low boxes in a room of 300 by 240 in.
func randomEnds(random *rand.Rand, n int) (all []end) {
	for range n {
		all = append(all, end{at: geom.Point{X: ruletest.In(float64(random.IntN(300))), Y: ruletest.In(float64(random.IntN(240)))}, height: ruletest.In(16), ceiling: ruletest.In(96)})
	}
	return all
}

// TestOfFewStopsEveryOrderIsTried, up to seven; of more no two swapped and no part turned
// round shorten the chain.
func TestOfFewStopsEveryOrderIsTried(t *testing.T) {
	random := rand.New(rand.NewPCG(23, 24))
	for range 60 {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 300, 240)
		var stops []plan.ID
		for range exact {
			stops = append(stops, r.Opening("duplex", r.On(random.IntN(4), float64(6+random.IntN(228)))).ID)
		}
		ix := index.New(h.Made())
		at := make([]int, len(stops))
		c := chain{}
		for i, id := range stops {
			e, _ := endOf(ix, id)
			c.ends, at[i] = append(c.ends, e), i
		}
		c = c.measured()
		var got []int
		for _, id := range Order(ix, "", stops) {
			got = append(got, slices.Index(stops, id))
		}
		least := c.cost(got).length
		every(at, 0, func(order []int) {
			if l := c.cost(order).length; l < least {
				t.Fatalf("%v is %v long, %v %v", got, least, order, l)
			}
		})
	}
	for n := 8; n < 24; n++ {
		for from := range 2 {
			c := chain{ends: randomEnds(random, n), from: from}.measured()
			order := c.nearest()
			c.improve(order)
			least := c.cost(order).length
			for i := range order {
				for k := i + 1; k < len(order); k++ {
					swapped, turned := slices.Clone(order), slices.Clone(order)
					swapped[i], swapped[k] = swapped[k], swapped[i]
					slices.Reverse(turned[i : k+1])
					if min(c.cost(swapped).length, c.cost(turned).length) < least {
						t.Fatalf("%d stops: %d and %d swapped or what is between turned is shorter", n, i, k)
					}
				}
			}
		}
	}
	if got := Order(index.New(ruletest.New(t).Made()), "", nil); len(got) != 0 {
		t.Errorf("no stop: %v", got)
	}
}

// TestBoxesBeforeCable: of few stops no order has fewer boxes over full, nor as few with less
// cable; of more no two swapped and no part turned round mend a box or shorten the chain.
func TestBoxesBeforeCable(t *testing.T) {
	random := rand.New(rand.NewPCG(31, 32))
	for n := 2; n < 18; n++ {
		for from := range 2 {
			c := chain{ends: randomEnds(random, n), from: from}.measured()
			for range c.ends {
				last := random.IntN(5) == 0
				c.over = append(c.over, [2]bool{last, last || random.IntN(3) == 0})
			}
			stops := make([]plan.ID, len(c.ends)-from)
			for i := range stops {
				stops[i] = plan.ID(rune('a' + i))
			}
			var order []int
			for _, id := range c.sorted(stops) {
				order = append(order, slices.Index(stops, id)+from)
			}
			best := c.cost(order)
			beaten := func(by []int) {
				if got := c.cost(by); got.compare(best) < 0 {
					t.Fatalf("%d stops from %d: %v costs %v, %v costs %v", n, from, order, best, by, got)
				}
			}
			if len(order) <= exact {
				every(slices.Clone(order), 0, beaten)
				continue
			}
			for i := range order {
				for k := i + 1; k < len(order); k++ {
					swapped, turned := slices.Clone(order), slices.Clone(order)
					swapped[i], swapped[k] = swapped[k], swapped[i]
					slices.Reverse(turned[i : k+1])
					beaten(swapped)
					beaten(turned)
				}
			}
		}
	}
}

func every(all []int, done int, do func([]int)) {
	if done == len(all) {
		do(all)
		return
	}
	for i := done; i < len(all); i++ {
		all[done], all[i] = all[i], all[done]
		every(all, done+1, do)
		all[done], all[i] = all[i], all[done]
	}
}

// TestLimitsOfRuns: along either axis, up to the half foot by a nanometer, and under a
// ceiling so low that all is low: what sits in it is reached from there.
func TestLimitsOfRuns(t *testing.T) {
	low := func(x, y unit.Length) end {
		return end{at: geom.Point{X: x, Y: y}, height: 24 * unit.Inch, ceiling: 96 * unit.Inch}
	}
	for _, tt := range []struct {
		name string
		a, b end
		want unit.Length
	}{
		{"both ways along", low(ruletest.In(100), ruletest.In(90)), low(ruletest.In(40), ruletest.In(54)), ruletest.In(60 + 36 + 24)},
		{"to the half foot", low(0, 0), low(ruletest.In(60), 0), ruletest.In(84)},
		{"a nanometer over it", low(0, 0), low(ruletest.In(60)+1, 0), ruletest.In(90)},
		{"a nanometer under it", low(0, 0), low(ruletest.In(60)-1, 0), ruletest.In(84)},
	} {
		if got := between(tt.a, tt.b).Total; got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
	crawl := end{height: 16 * unit.Inch, ceiling: 20 * unit.Inch}
	overhead := end{height: 20 * unit.Inch, ceiling: 20 * unit.Inch, isOverhead: true}
	if a, b := between(crawl, overhead), between(overhead, crawl); a.Rise != 4*unit.Inch || b != a {
		t.Errorf("from 16 in to a ceiling of 20: %v and %v up, want 4 in", a.Rise, b.Rise)
	}
	if got := between(overhead, overhead).Rise; got != 0 {
		t.Errorf("from ceiling to ceiling: %v", got)
	}
	if run, ok := RunOf(nil, &plan.Cable{Length: 1}); !ok || !run.Measured || run.Total != 1 {
		t.Errorf("a nanometer is measured: %+v", run)
	}
}

// TestNoPlaceNoRun: of what hangs on nothing that is there no cable has a length.
func TestNoPlaceNoRun(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	here, lost := r.Opening("duplex", r.On(0, 24)), r.Opening("duplex", plan.OnFace("sgone", 0))
	panel := r.Stand(plan.FixturePanel, plan.OnFace("sgone", 0), 14, 4)
	ix := index.New(h.Made())
	for _, id := range []plan.ID{lost.ID, panel.ID, "onowhere"} {
		if run, ok := Between(ix, here.ID, id); ok || run != (Run{}) {
			t.Errorf("to %s: %+v", id, run)
		}
		if _, ok := Between(ix, id, here.ID); ok {
			t.Errorf("from %s there is a run", id)
		}
	}
	// Switches that cannot work together, with nothing of the circuit to switch, are no fault of
	// it; and a load that nobody knows is one all the same.
	c := h.Circuit(15)
	put := func(kind, name string, along float64) *plan.Opening {
		return r.Opening(kind, r.On(0, along), ruletest.On(c), func(o *plan.Opening) { o.Note, o.Tag = name, name })
	}
	h.Control([]*plan.Opening{put("switch", "s", 30), put("switch", "t", 40)}, []*plan.Opening{here})
	h.Control([]*plan.Opening{put("switch", "u", 60)}, []*plan.Opening{put("duplex", "load", 100)})
	p := h.Made()
	for o := range p.Levels[0].Openings.All() {
		if o.Note == "load" {
			o.Kind = "unheard-of"
		}
	}
	if got, want := draftOf(h, c), "s-t 14/2, t-u 14/2, u-load 14/2"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// The way out that is nearest to 60 in, from edge to edge; a window is none, nor what has a sill.
func TestWhichDoorIsNearest(t *testing.T) {
	for _, tt := range []struct {
		name    string
		cuts    []index.Cut
		want    int // 1 for the first
		isRight bool
	}{
		{"none", nil, 0, false},
		{"the left one of two as near", []index.Cut{{From: 20, To: 50}, {From: 70, To: 100}}, 1, false},
		{"the right one, nearer by a hair", []index.Cut{{From: 20, To: 49}, {From: 70, To: 100}}, 2, true},
		{"the first at the right", []index.Cut{{From: 70, To: 100}, {From: 110, To: 140}}, 1, true},
		{"the last at the left", []index.Cut{{From: 0, To: 10}, {From: 20, To: 50}}, 2, false},
		{"from where it stands on", []index.Cut{{From: 60, To: 90}}, 1, true},
		{"across it", []index.Cut{{From: 40, To: 90}, {From: 0, To: 59}}, 1, false},
		{"a window before it", []index.Cut{{From: 40, To: 59, Break: &plan.Break{Kind: plan.BreakWindow}}, {From: 90, To: 120}}, 2, true},
		{"a hatch before it", []index.Cut{{From: 40, To: 59, Break: &plan.Break{Kind: plan.BreakDoor, Sill: 1}}, {From: 90, To: 120}}, 2, true},
	} {
		for i := range tt.cuts {
			if tt.cuts[i].Break == nil {
				tt.cuts[i].Break = &plan.Break{Kind: plan.BreakDoor}
			}
		}
		door, isRight := nearestDoor(tt.cuts, 60)
		got := 1 + slices.IndexFunc(tt.cuts, func(c index.Cut) bool { return c.Break == door })
		if got != tt.want || isRight != tt.isRight {
			t.Errorf("%s: %d, right %v; want %d, %v", tt.name, got, isRight, tt.want, tt.isRight)
		}
	}
}
