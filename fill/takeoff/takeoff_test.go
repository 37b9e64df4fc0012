package takeoff_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/choose"
	"studbay/fill/filltest"
	"studbay/fill/price"
	"studbay/fill/ruletest"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func taker(t *testing.T, p plan.Plan) *takeoff.Taker {
	t.Helper()
	fig, err := fill.FiguresOf(p)
	if err != nil {
		t.Fatal(err)
	}
	return takeoff.NewTaker(index.New(p), fig, price.Trial())
}

// lines writes the parts of an opening: how many of what at what cost.
func lines(o takeoff.Opening) string {
	var all []string
	for _, l := range o.Lines {
		cost := "?"
		if l.HasPrice() {
			cost = fmt.Sprint(l.Cost.Cents)
		}
		all = append(all, fmt.Sprintf("%s %s %s", l.Quantity, l.Part.ID, cost))
	}
	return strings.Join(all, "; ")
}

// TestRecipesByHand derives the parts of single openings on paper, by the table of recipes
// and the trial prices.
func TestRecipesByHand(t *testing.T) {
	contents := func(cables int) *plan.Contents {
		return &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: plan.ItemCable, Size: 12, Wires: 2, Times: cables}, {What: plan.ItemDevice, Size: 12}}}
	}
	built := func(code string, cables int) func(*plan.Opening) {
		return func(o *plan.Opening) { o.Assembly, o.Contents = plan.Assembly{Code: code}, contents(cables) }
	}
	status := func(s plan.Status) func(*plan.Opening) { return func(o *plan.Opening) { o.Status = s } }
	fate := func(f plan.Fate) func(*plan.Opening) { return func(o *plan.Opening) { o.Fate = f } }
	for _, tt := range []struct {
		name    string
		kind    string
		along   float64
		more    []func(*plan.Opening)
		want    string
		minutes int
		source  string
	}{
		{"plastic on a stud", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2)},
			"1 pn1-20 70; 2 staple 8; 3 wire-connector 27; 1 plate-1g 60; 1 duplex receptacle 185", 9,
			"a staple a cable; hot, neutral and ground joined; 0.15 h"},
		{"steel with a ring", "duplex", 18.75, []func(*plan.Opening){built("SQ3", 3)},
			"1 sq4-2.125 260; 1 ring4-1g-0.5 150; 2 box-screw 12; 3 cable-connector 135; 1 ground-screw 38; 3 staple 12; 3 wire-connector 27; 1 plate-1g 60; 1 duplex receptacle 185", 17,
			"3 × .45, .38, and .06 a screw; 12 min, 1 a connector, 2 a bond"},
		{"plastic in the middle of a bay", "duplex", 24, []func(*plan.Opening){built("PN2", 1)},
			"1 pn1-20 70; 4 block-screw 24; 2 box-screw 12; 14.5 block-2x4 69; 1 staple 4; 1 plate-1g 60; 1 duplex receptacle 185", 15,
			"16 − 1-1/2 = 14-1/2 of lumber at 4.75 cents, two screws at each end and two through the box; 9 and 6 min"},
		{"there already", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusExisting)}, "", 0, "what is there costs nothing"},
		{"taken out", "duplex", 17.875, []func(*plan.Opening){built("PN2", 1), status(plan.StatusRemove)}, "1 patch 350", 0, "no wire goes on through it"},
		{"taken out of a run", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusRemove)}, "1 blank-1g 55", 0, "NEC 314.29: the splice stays accessible"},
		{"moved, its box emptied", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusMoved), fate(plan.FateEmptied)}, "1 patch 350", 0, "nothing is left in it"},
		{"moved, its box stays", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusMoved), fate(plan.FateStays)}, "1 blank-1g 55", 0, "NEC 314.29, 314.25: under a blank cover"},
		{"moved, its box dead", "duplex", 17.875, []func(*plan.Opening){built("PN2", 1), status(plan.StatusMoved), fate(plan.FateDead)}, "1 blank-1g 55", 0, "the cables' ends stay in it"},
		{"replaced on its box", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusReplaced), fate(plan.FateReused)}, "", 0, "the new thing covers it"},
		{"replaced, its box out", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), status(plan.StatusReplaced), fate(plan.FateOut)}, "1 patch 350", 0, "no box is left"},
		{"set on an old box", "duplex", 17.875, []func(*plan.Opening){built("PN2", 2), func(o *plan.Opening) { o.Assembly.Kept = true }}, "1 duplex receptacle 185", 0, "the box is there"},
		{"old work", "duplex", 24, []func(*plan.Opening){built("OW2", 1)},
			"1 ow1-20 240; 1 plate-1g 60; 1 duplex receptacle 185", 30, "it grips the board: no block, no staple"},
		{"a housing of its own", "thermostat", 24, nil, "1 thermostat ?", 0, "no box; the book has no price of a thermostat"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := ruletest.New(t)
			r := h.Square(plan.UseBedroom, 0, 0, 160, 120)
			for _, s := range r.Sides {
				s.Studs = plan.Studs{Spacing: 16 * unit.Inch, Depth: 7 * unit.Inch / 2}
				s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: unit.Inch / 2}}
			}
			o := r.Opening(tt.kind, r.On(0, tt.along), tt.more...)
			p := h.Made()
			got := taker(t, p).Of(o)
			if said := lines(got); said != tt.want || got.Minutes != tt.minutes {
				t.Errorf("%d min: %s\nwant %d min: %s\n(%s)", got.Minutes, said, tt.minutes, tt.want, tt.source)
			}
		})
	}
}

// TestSumOverOpeningsIsTheTotal sums random plans opening by opening, however they are put
// together and by whichever policy, from quantities and prices alone.
func TestSumOverOpeningsIsTheTotal(t *testing.T) {
	for seed := range 25 {
		p := filltest.Furnished(rand.New(rand.NewPCG(uint64(seed), 7)).IntN)
		fig, err := fill.FiguresOf(p)
		if err != nil {
			t.Fatal(err)
		}
		finder := choose.NewFinder(index.New(p), fig, price.Trial())
		for _, policy := range choose.Standing {
			c, err := finder.Column(policy)
			if err != nil {
				t.Fatal(err)
			}
			var sum, boxes int64
			minutes, seen := 0, map[plan.ID]bool{}
			for _, o := range c.Takeoff.Openings {
				if seen[o.View.Opening.ID] {
					t.Fatalf("plan %d: an opening comes twice", seed)
				}
				seen[o.View.Opening.ID] = true
				minutes += o.Minutes
				for _, l := range o.Lines {
					if cost, ok := price.Trial().Of(l.Part.ID); ok {
						sum += cost.Cost(l.Quantity).Cents
						if l.Part.Group == price.Boxes {
							boxes += cost.Cost(l.Quantity).Cents
						}
					}
				}
			}
			if c.PartsCost().Cents != sum || c.BoxesCost().Cents != boxes || c.Takeoff.Minutes() != minutes {
				t.Errorf("plan %d, %s: %v and %v, %d min; by opening %d and %d, %d min", seed, policy.ID, c.PartsCost(), c.BoxesCost(), c.Takeoff.Minutes(), sum, boxes, minutes)
			}
			if len(seen) != countOf(p) {
				t.Errorf("plan %d, %s: %d openings of %d", seed, policy.ID, len(seen), countOf(p))
			}
			for _, by := range []takeoff.By{takeoff.ByPlan, takeoff.ByLevel, takeoff.ByRoom, takeoff.ByCircuit, takeoff.ByAssembly} {
				var grouped, parts int64
				for _, g := range c.Takeoff.Groups(by) {
					grouped += g.Cost().Cents
					for _, s := range takeoff.Parts(g.Openings) {
						parts += s.Cost.Cents
					}
				}
				if grouped != sum || parts != sum {
					t.Errorf("plan %d, %s by %q: %d, and by parts %d; by opening %d", seed, policy.ID, by, grouped, parts, sum)
				}
			}
		}
	}
}

func countOf(p plan.Plan) (n int) {
	for range p.Openings() {
		n++
	}
	return n
}

// TestCablesInTheWallAreNotBought: of two cables to a box the existing one costs nothing.
func TestCablesInTheWallAreNotBought(t *testing.T) {
	for existing, want := range map[bool]int{false: 1, true: 0} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 160, 120)
		a, b := r.Opening("duplex", r.On(0, 20)), r.Opening("duplex", r.On(0, 80))
		c := h.Circuit(15)
		h.Cable(a.ID, b.ID, 14, 2, c)
		p := h.Made()
		for cable := range p.Cables.All() {
			now := *cable
			now.Existing = existing
			p.Cables = p.Cables.With(&now)
		}
		if got := len(takeoff.Cables(index.New(p))); got != want {
			t.Errorf("existing %t: %d cables are pulled, want %d", existing, got, want)
		}
		bought := 0
		for _, l := range taker(t, p).Of(b).Lines {
			if strings.HasPrefix(l.Part.ID, "cable-") && !strings.Contains(l.Part.ID, "connector") {
				bought++
			}
		}
		if bought != want {
			t.Errorf("existing %t: %d cables are bought, want %d", existing, bought, want)
		}
	}
}
