package wire

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"studbay/fill/box"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestRunsInParts measures runs by the figures that the package names, common practice all:
// low boxes by a line 24 in up, others over the ceiling, a foot at each end, and up to the
// half foot. The room is 96 in high, and the level above 9 ft higher.
func TestRunsInParts(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	up := h.RoomOn(h.Level("Upper"), plan.UseLiving, 0, 0, 144, 0, 144, 120, 0, 120)
	at := func(high float64) plan.ID { return r.Opening("duplex", r.On(0, 0), ruletest.Up(high)).ID }
	island := r.Island(60, 40, 48, 30)
	panel := r.Stand(plan.FixturePanel, r.On(0, 0), 14, 4, func(f *plan.Fixture) { f.Bottom = ruletest.In(40) })
	top := r.Opening("duplex", plan.Anchor{Host: island.ID, Part: plan.PartTop, Along: ruletest.In(24), Out: ruletest.In(15)})
	floor := r.Opening("floor", plan.OnFloor(r.Room.ID, geom.Point{})).ID
	light, far := r.Opening("ceiling-light", r.Ceiling(0, 0)).ID, r.Opening("ceiling-light", r.Ceiling(100, 50)).ID
	above := up.Opening("duplex", up.On(0, 30), ruletest.Up(16)).ID
	ix := index.New(h.Made())
	for _, tt := range []struct {
		name       string
		from, to   plan.ID
		rise, much float64
		source     string
	}{
		{"both at the line", at(24), at(24), 0, 0, "24 − 24"},
		{"low to low", at(16), at(36), 20, 0, "8 + 12: 36 in is still low"},
		{"one over it", at(16), at(36.0625), 139.9375, 0, "80 + 59-15/16, over the ceiling"},
		{"the other way", at(36.0625), at(16), 139.9375, 0, "the same"},
		{"both over it", at(48), at(46), 98, 0, "48 + 50"},
		{"above the ceiling", at(100), at(90), 6, 0, "nothing and 6"},
		{"in the floor", floor, at(16), 32, 0, "24 + 8"},
		{"two lights", light, far, 0, 150, "100 + 50 along, no rise"},
		{"a light and a low box", light, at(16), 80, 0, "96 − 16"},
		{"the panel", panel.ID, at(16), 100, 0, "its top at 76: 20 up; 80 up; its place is that of its left edge"},
		{"another level", above, at(40), 84, 30, "108 + 16 − 40, and 30 along"},
	} {
		ix := index.New(h.Made())
		run, ok := Between(ix, tt.from, tt.to)
		sum := run.Level + run.Rise + 2*unit.Foot
		if !ok || run.Rise != ruletest.In(tt.rise) || run.Level != ruletest.In(tt.much) || run.Tails != 2*unit.Foot || run.Measured {
			t.Errorf("%s: %+v, %v, want %v up and %v along (%s)", tt.name, run, ok, tt.rise, tt.much, tt.source)
		}
		if run.Total%(6*unit.Inch) != 0 || run.Total < sum || run.Total-sum >= 6*unit.Inch {
			t.Errorf("%s: %v in all for %v, want the next half foot", tt.name, run.Total, sum)
		}
		if back, ok := Between(ix, tt.to, tt.from); !ok || back != run {
			t.Errorf("%s: %+v the other way", tt.name, back)
		}
	}
	if _, ok := Between(ix, "o99999999", light); ok {
		t.Error("a cable from nowhere has a length")
	}
	e, ok := endOf(ix, top.ID)
	if !ok || e.height != ruletest.In(36) || e.isOverhead || e.ceiling != ruletest.In(96) {
		t.Errorf("on the island's top: %+v, %v, want 36 up", e, ok)
	}
	if run, ok := RunOf(ix, &plan.Cable{From: light, To: far}); !ok || run.Measured || run.Total != unit.FeetInches(14, 6, 0) {
		t.Errorf("nobody measured it: %+v", run) // 150 + 24 = 174 in = 14-1/2 ft, not rounded
	}
}

// TestAChainOfManyStopsCannotBeTurnedShorter: no part of it turned round, with a start and
// without one; of few stops without a start every order is tried.
func TestAChainOfManyStopsCannotBeTurnedShorter(t *testing.T) {
	random := rand.New(rand.NewPCG(13, 14))
	for n := 2; n <= 13; n++ {
		for _, isStarted := range []bool{false, true} {
			h := ruletest.New(t)
			r := h.Square(plan.UseLiving, 0, 0, 300, 240)
			var stops []plan.ID
			for range n {
				stops = append(stops, r.Opening("duplex", r.On(random.IntN(4), float64(6+random.IntN(220)))).ID)
			}
			start := plan.ID("")
			if isStarted {
				start = r.Opening("switch", r.On(1, 120)).ID
			}
			ix := index.New(h.Made())
			got := Order(ix, start, slices.Clone(stops))
			length := func(order []plan.ID) unit.Length {
				if isStarted {
					return lengthOf(ix, start, order)
				}
				return lengthOf(ix, order[0], order[1:])
			}
			least := length(got)
			if n <= 6 {
				eachOrder(slices.Clone(stops), 0, func(order []plan.ID) {
					if length(order) < least {
						t.Fatalf("%d stops: %v is shorter", n, order)
					}
				})
			}
			for i := range got {
				for k := i + 1; k < n; k++ {
					turned := slices.Clone(got)
					slices.Reverse(turned[i : k+1])
					if l := length(turned); l < least {
						t.Errorf("%d stops, started %v: %d to %d turned is %v, not %v", n, isStarted, i, k, l, least)
					}
				}
			}
		}
	}
	if got := Order(index.New(ruletest.New(t).Made()), "", []plan.ID{"o1"}); !slices.Equal(got, []plan.ID{"o1"}) {
		t.Errorf("one stop: %v", got)
	}
}

// TestTheNearestComesNext: from 0 along one line to 10, 3, 7 and 4 it goes 3, 4, 7, 10; with no
// start it begins with the first that is told.
func TestTheNearestComesNext(t *testing.T) {
	var ends []end
	for _, x := range []float64{0, 10, 3, 7, 4} {
		ends = append(ends, end{at: geom.Point{X: ruletest.In(12 * x)}, ceiling: ruletest.In(96)})
	}
	if got := (chain{ends: ends, from: 1}).measured().nearest(); !slices.Equal(got, []int{2, 4, 3, 1}) {
		t.Errorf("from the start: %v", got)
	}
	if got := (chain{ends: ends[1:]}).measured().nearest(); !slices.Equal(got, []int{0, 2, 3, 1}) {
		t.Errorf("without one: %v, want 10, 7, 4, 3", got)
	}
	// Each run has 24 up at both ends and 24 of tails: 72, and 120 along is 192 in.
	if got := (chain{ends: ends, from: 1}).measured().cost([]int{1}).length; got != 16*unit.Foot {
		t.Errorf("to 10 ft: %v", got)
	}
	if got := (chain{ends: ends[1:]}).measured().cost([]int{0}).length; got != 0 {
		t.Errorf("one alone: %v", got)
	}
	given := []int{0, 1}
	if got := (chain{ends: ends[:2]}).measured().everyOrder(given); !slices.Equal(got, given) {
		t.Errorf("of two as short the one given stays, got %v", got)
	}
}

// TestCopperOfABreaker: 14 AWG to 15 A, 12 to 20, 10 to 30 (NEC 240.4(D)), 8 to 40 and 6 to 60 by
// common practice; two poles bring a neutral too.
func TestCopperOfABreaker(t *testing.T) {
	for _, tt := range []struct {
		amps int
		want unit.AWG
	}{{0, 12}, {1, 14}, {15, 14}, {16, 12}, {20, 12}, {21, 10}, {30, 10}, {31, 8}, {40, 8}, {41, 6}, {60, 6}} {
		if got := sizeFor(tt.amps); got != tt.want {
			t.Errorf("%d A: %s AWG, want %s", tt.amps, got, tt.want)
		}
	}
	for poles, wires := range map[int]int{1: 2, 2: 3} {
		h := ruletest.New(t)
		r := h.Square(plan.UseLiving, 0, 0, 240, 120)
		panel := r.Stand(plan.FixturePanel, r.On(3, 10), 14, 4)
		c := h.Circuit(30, func(c *plan.Circuit) { c.Poles, c.Panel = poles, panel.ID })
		r.Opening("range", r.On(0, 20), ruletest.On(c), func(o *plan.Opening) { o.Note = "range" })
		r.Opening("range", r.On(0, 60), ruletest.On(c), ruletest.Removed)
		p := h.Made()
		steps, err := Draft(index.New(p), nil, c.ID, ids())
		if want := []string{fmt.Sprintf("panel-range 10/%d", wires)}; err != nil || !slices.Equal(told(p, steps), want) {
			t.Errorf("%d poles: %q, %v, want %q", poles, told(p, steps), err, want)
		}
		if steps.Label.String() != "Wire circuit 1" {
			t.Errorf("the step is called %q", steps.Label)
		}
	}
}

// draftOf wires a circuit on which h put openings whose notes are their names.
func draftOf(h *ruletest.House, c *plan.Circuit) string {
	p := h.Made()
	steps, err := Draft(index.New(p), nil, c.ID, ids())
	if err != nil {
		return err.Error()
	}
	return strings.Join(told(p, steps), ", ")
}

// TestDraftsAndRefusals wires controls whose answer is plain on paper, or says why there is
// none: two switches of one light are three-ways, and each more a four-way between them (from
// memory; any trade handbook).
func TestDraftsAndRefusals(t *testing.T) {
	for _, tt := range []struct {
		name string
		make func(h *ruletest.House, r *ruletest.Room, c *plan.Circuit, put func(kind, name string, side int, along float64) *plan.Opening)
		want string
	}{
		{"nothing", func(*ruletest.House, *ruletest.Room, *plan.Circuit, func(string, string, int, float64) *plan.Opening) {
		}, "nothing is on circuit 1"},
		{"too large", func(_ *ruletest.House, _ *ruletest.Room, c *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			c.Amps = 61
			put("duplex", "a", 0, 20)
		}, "circuit 1 has 61 A: choose its cable yourself"},
		{"drawn already", func(h *ruletest.House, _ *ruletest.Room, c *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Cable(put("duplex", "a", 0, 20).ID, put("duplex", "b", 0, 60).ID, 14, 2, c)
		}, "circuit 1 has cables already: remove them first"},
		{"another circuit's cables", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Cable(put("duplex", "a", 0, 20).ID, put("duplex", "b", 0, 60).ID, 14, 2, h.Circuit(15))
		}, "a-b 14/2"},
		{"a three-way alone", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("three-way", "s", 0, 20)}, []*plan.Opening{put("wall-light", "light", 0, 60)})
		}, "s-light 14/2"},
		{"three of three ways", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("three-way", "s", 0, 20), put("three-way", "t", 0, 30), put("three-way", "u", 0, 40)}, []*plan.Opening{put("wall-light", "light", 0, 60)})
		}, "s serves with 2 others: that takes two three-way switches, and a four-way for each more"},
		{"a three-way and a single pole", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("three-way", "s", 0, 20), put("switch", "t", 0, 30)}, []*plan.Opening{put("wall-light", "light", 0, 60)})
		}, "s serves with 1 others: that takes two three-way switches, and a four-way for each more"},
		{"two and a single pole", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("three-way", "s", 0, 20), put("switch", "t", 0, 30), put("three-way", "u", 0, 40)}, []*plan.Opening{put("wall-light", "light", 0, 60)})
		}, "s serves with 2 others: that takes two three-way switches, and a four-way for each more"},
		{"two four-ways, told in another order", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("four-way", "f2", 0, 120), put("three-way", "s", 0, 20), put("four-way", "f1", 0, 80), put("three-way", "u", 0, 180)}, []*plan.Opening{put("wall-light", "light", 0, 220)})
		}, "f1-f2 14/3, f2-u 14/3, s-f1 14/3, u-light 14/2"},
		{"a switch of another circuit", func(h *ruletest.House, r *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			s := r.Opening("switch", r.On(0, 20))
			h.Control([]*plan.Opening{s}, []*plan.Opening{put("wall-light", "light", 0, 60), put("wall-light", "next", 0, 100)})
		}, "light-next 14/2"},
		{"two controls of one light", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			light := put("wall-light", "light", 0, 60)
			h.Control([]*plan.Opening{put("switch", "s", 0, 20)}, []*plan.Opening{light})
			h.Control([]*plan.Opening{put("switch", "t", 0, 30)}, []*plan.Opening{light})
		}, "s-light 14/2, s-t 14/2"},
		{"a light past the half that is always on", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			h.Control([]*plan.Opening{put("switch", "s", 0, 20)}, []*plan.Opening{put("half-switched", "half", 0, 60), put("wall-light", "light", 0, 120)})
		}, "half-light 14/2, s-half 14/3"},
		{"a half past two switches", func(h *ruletest.House, _ *ruletest.Room, _ *plan.Circuit, put func(string, string, int, float64) *plan.Opening) {
			half := put("half-switched", "half", 0, 60)
			half.Tag = "H1"
			h.Control([]*plan.Opening{put("three-way", "s", 0, 20), put("three-way", "t", 0, 30)}, []*plan.Opening{half})
		}, "H1 has a half that is always on, which no cable past several switches brings: feed it yourself"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := ruletest.New(t)
			r := h.Square(plan.UseLiving, 0, 0, 240, 120)
			c := h.Circuit(15)
			tt.make(h, r, c, func(kind, name string, side int, along float64) *plan.Opening {
				return r.Opening(kind, r.On(side, along), ruletest.On(c), func(o *plan.Opening) { o.Note, o.Tag = name, name })
			})
			if got := draftOf(h, c); got != tt.want {
				t.Errorf("%s, want %s", got, tt.want)
			}
		})
	}
}

// TestSplicesAndCables of what is said not to be there, of single conductors and of many.
func TestSplicesAndCables(t *testing.T) {
	for _, tt := range []struct {
		contents        string
		metal           bool
		splices, cables int
		source          string
	}{
		{"conductor 12 x2; conductor 12 x3", false, 2, 0, "two find a partner; no ground"},
		{"conductor 12 x2; ground 12 x2; conductor 12", false, 2, 0, "one finds a partner; two grounds meet"},
		{"cable 12/2 x3", false, 3, 3, "hot, neutral, ground"},
		{"cable 12/2; no device; ground 12", false, 1, 1, "two grounds"},
		{"ground 12", true, 1, 0, "a ground and the screw's pigtail"},
		{"ground 12", false, 0, 0, "one has no other to meet"},
		{"no cable; fixture-wire 18", true, 1, 0, "the luminaire's ground and the screw's pigtail"},
		{"device 12; clamps", true, 0, 0, "no conductor"},
	} {
		c, err := box.ParseContents(tt.contents)
		if err != nil {
			t.Fatal(err)
		}
		if got, n := Splices(c, tt.metal), Cables(c); got != tt.splices || n != tt.cables {
			t.Errorf("%s, metal %v: %d splices and %d cables, want %d and %d (%s)", tt.contents, tt.metal, got, n, tt.splices, tt.cables, tt.source)
		}
	}
}
