package spacing_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/fill/spacing"
	"studbay/plan"
)

// kitchen is one with a counter along its top side from 12 in on.
func kitchen(t *testing.T, counter float64, outlets ...float64) *ruletest.Room {
	h := ruletest.New(t)
	r := h.Square(plan.UseKitchen, 0, 0, 240, 144)
	r.Fixture(plan.FixtureCounter, 0, 12, counter)
	for _, at := range outlets {
		r.Opening("counter", r.On(0, at))
	}
	return r
}

// sixteenth is a part of an inch that people measure.
const sixteenth = 1.0 / 16

func TestCounterReach(t *testing.T) {
	for _, tt := range []struct {
		name    string
		edition string
		metric  bool
		make    func(t *testing.T) *ruletest.Room
		want    []string
		source  string
	}{
		{name: "13 in wide needs one", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 13) },
			want: []string{`0:12"-25"`}, source: "iecyear2pt2examprep.examzify.com: one required"},
		{name: "11 in needs none", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 11) },
			source: "forums.mikeholt.com 145470"},
		{name: "12 in needs one", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 12) },
			want: []string{`0:12"-24"`}, source: "210.52(C)(1): 12 in or wider"},
		{name: "a sixteenth less needs none", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 12-sixteenth) },
			source: "210.52(C)(1): 12 in or wider"},
		{name: "26 in beside a sink needs one", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 26, 20) },
			source: "forums.mikeholt.com 107267: ceil(26/48) = 1"},
		{name: "48 in is served from its middle", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 48, 36) },
			source: "210.52(C)(1): 24 in either way"},
		{name: "a sixteenth more is not", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 48+sixteenth, 36) },
			want: []string{`0:60"-60-1/16"`}, source: "210.52(C)(1)"},
		{name: "two are 48 in apart", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 96, 36, 84) },
			source: "210.52(C)(1)"},
		{name: "and a sixteenth more", make: func(t *testing.T) *ruletest.Room { return kitchen(t, 96, 36-sixteenth, 84) },
			want: []string{`0:59-15/16"-60"`}, source: "210.52(C)(1)"},
		{name: "a metric plan has 600 mm and no more than 24 in", metric: true,
			make: func(t *testing.T) *ruletest.Room { return kitchen(t, 48+sixteenth, 36) },
			want: []string{`0:60"-60-1/16"`}, source: "600 mm is less than 24 in, which serves too"},
		{name: "20 in above counts", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 48)
			r.Opening("counter", r.On(0, 36), ruletest.Up(56))
			return r
		}, source: "210.52(C)(3): not over 20 in above a counter at 36"},
		{name: "a sixteenth higher does not", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 48)
			r.Opening("counter", r.On(0, 36), ruletest.Up(56+sixteenth))
			return r
		}, want: []string{`0:12"-60"`}, source: "210.52(C)(3)"},
		{name: "one that goes does not count", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 48)
			r.Opening("counter", r.On(0, 36), ruletest.Removed)
			return r
		}, want: []string{`0:12"-60"`}, source: "it will not be there"},
		{name: "a range receptacle is none", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 48)
			r.Opening("range", r.On(0, 36), ruletest.Up(42))
			return r
		}, want: []string{`0:12"-60"`}, source: "210.52: 125 V, 15 A and 20 A"},
		{name: "a range parts a counter", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 36, 30)
			r.Fixture(plan.FixtureRange, 0, 48, 30)
			r.Fixture(plan.FixtureCounter, 0, 78, 24)
			return r
		}, want: []string{`0:78"-102"`}, source: "210.52(C)(1): spaces parted by a range are separate"},
		{name: "a sink 11-15/16 in from the wall parts it", make: func(t *testing.T) *ruletest.Room { return withSink(t, 12-sixteenth) },
			want: []string{`0:75"-108"`}, source: "210.52(C)(1) exception: less than 12 in behind"},
		{name: "a sink 12 in from the wall does not", make: func(t *testing.T) *ruletest.Room { return withSink(t, 12) },
			want: []string{`0:54"-108"`}, source: "210.52(C)(1) exception: the wall behind is counter"},
		{name: "the corner is one space", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 0.5)
			r.Fixture(plan.FixtureCounter, 0, 216, 24)
			r.Fixture(plan.FixtureCounter, 1, 24, 24)
			r.Opening("counter", r.On(1, 24))
			return r
		}, want: []string{`0:216"-240"`}, source: "measured along the wall: 24 in of the top side are left"},
		{name: "a window does not part it", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 96, 36, 84)
			r.Break(plan.BreakWindow, 0, 50, 20, func(b *plan.Break) { b.Sill = ruletest.In(44) })
			return r
		}, source: "210.52(C)(1): points along the wall line"},
		{name: "a bedroom has no counter", make: func(t *testing.T) *ruletest.Room {
			r := kitchen(t, 48)
			r.Use = plan.UseBedroom
			return r
		}, source: "210.52(C) names kitchens, pantries, breakfast and dining rooms"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := tt.make(t)
			r.Metric = tt.metric
			got := r.Stretches(r.Found(&spacing.CounterReach))
			if !slices.Equal(got, tt.want) {
				t.Errorf("missed %q, want %q (%s)", got, tt.want, tt.source)
			}
			r.HoldsTurned(&spacing.CounterReach)
		})
	}
}

// withSink has a sink in the middle of 96 in of counter, so far in front of the wall, and
// a receptacle at the left.
func withSink(t *testing.T, behind float64) *ruletest.Room {
	r := kitchen(t, 0.5)
	c := r.Fixture(plan.FixtureCounter, 0, 12, 96, func(f *plan.Fixture) { f.Depth = ruletest.In(48) })
	r.InTop(c, plan.FixtureSink, 46.5, behind+10, 33, 20)
	r.Opening("counter", r.On(0, 30))
	return r
}

// The counts are those of worked examples and of the editions' own arithmetic.
func TestIslands(t *testing.T) {
	for _, tt := range []struct {
		name         string
		edition      string
		width, depth float64
		below, above int
		sink         bool
		missing      int64
		severity     rule.Severity
		none         bool
		source       string
	}{
		{name: "30 square feet", edition: "2020", width: 90, depth: 48, missing: 3, severity: rule.Stop, source: "forums.mikeholt.com 2579635: 9, then 18, then 3 more"},
		{name: "one of three there", edition: "2020", width: 90, depth: 48, below: 1, missing: 2, severity: rule.Stop, source: "forums.mikeholt.com 2579635"},
		{name: "all there", edition: "2020", width: 90, depth: 48, below: 3, none: true, source: "forums.mikeholt.com 2579635"},
		{name: "27 square feet", edition: "2020", width: 81, depth: 48, missing: 2, severity: rule.Stop, source: "9 + 18 = 27: two"},
		{name: "a sixteenth wider", edition: "2020", width: 81 + sixteenth, depth: 48, missing: 3, severity: rule.Stop, source: "or fraction: three"},
		{name: "9 square feet", edition: "2020", width: 27, depth: 48, missing: 1, severity: rule.Stop, source: "the first 9"},
		{name: "30 square feet in 2017", edition: "2017", width: 90, depth: 48, missing: 1, severity: rule.Stop, source: "forums.mikeholt.com 2579635: 2017: 1"},
		{name: "24 by 12", edition: "2017", width: 24, depth: 12, missing: 1, severity: rule.Stop, source: "210.52(C)(2), 2017: 24 by 12 or larger"},
		{name: "a sixteenth less long", edition: "2017", width: 24 - sixteenth, depth: 12, none: true, source: "210.52(C)(2), 2017"},
		{name: "a sixteenth less deep", edition: "2014", width: 24, depth: 12 - sixteenth, none: true, source: "210.52(C)(2), 2014"},
		{name: "a sink parts it in two", edition: "2014", width: 90, depth: 36, sink: true, missing: 2, severity: rule.Stop, source: "210.52(C)(4), 2014: less than 12 in behind"},
		{name: "none in 2023 without provision", edition: "2023", width: 90, depth: 48, missing: 0, severity: rule.Note, source: "210.52(C)(2), 2023: one note"},
		{name: "one below in 2023 does not serve", edition: "2023", width: 90, depth: 48, below: 2, missing: 0, severity: rule.Note, source: "210.52(C)(3), 2023: one note, never more"},
		{name: "one in the top in 2023", edition: "2023", width: 90, depth: 48, above: 1, none: true, source: "210.52(C)(3), 2023"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := ruletest.New(t)
			h.Edition = tt.edition
			r := h.Square(plan.UseKitchen, 0, 0, 240, 144)
			f := r.Island(120, 72, tt.width, tt.depth)
			for i := range tt.below {
				r.Opening("island", plan.Anchor{Host: f.ID, Part: plan.PartFront, Along: ruletest.In(float64(12 + 12*i))})
			}
			for range tt.above {
				r.Opening("island", plan.Anchor{Host: f.ID, Part: plan.PartTop, Along: ruletest.In(12), Out: ruletest.In(12)})
			}
			if tt.sink {
				r.InTop(f, plan.FixtureSink, tt.width/2, tt.depth/2, 33, 20)
			}
			found := h.Found(&spacing.CounterReach)
			switch {
			case tt.none != (len(found) == 0) || len(found) > 1:
				t.Fatalf("found %q (%s)", filltest.Said(found), tt.source)
			case !tt.none && (found[0].Measured.Value != tt.missing || found[0].Severity != tt.severity || found[0].About != f.ID):
				t.Errorf("%v missing, %v; want %d, %v (%s)", found[0].Measured.Value, found[0].Severity, tt.missing, tt.severity, tt.source)
			}
			h.HoldsTurned(&spacing.CounterReach)
		})
	}
}

// A provision that is said settles an island of 2023.
func TestAProvisionThatIsSaidSettlesAnIsland(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseKitchen, 0, 0, 240, 144)
	f := r.Island(120, 72, 90, 48)
	found := h.Found(&spacing.CounterReach)
	if len(found) != 1 || len(found[0].Remedies) != 1 {
		t.Fatalf("found %q", filltest.Said(found))
	}
	after, err := found[0].Remedies[0].Edit.Apply(h.Made())
	if err != nil {
		t.Fatal(err)
	}
	if now, _ := after.Fixture(f.ID); !now.Provision {
		t.Error("the remedy says no provision")
	}
}

// The remedy serves the gap and stands clear of the studs.
func TestCounterRemedyServesTheGap(t *testing.T) {
	r := kitchen(t, 48)
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
	}
	found := r.Found(&spacing.CounterReach)
	if len(found) != 1 || len(found[0].Remedies) != 1 {
		t.Fatalf("found %q", filltest.Said(found))
	}
	p, err := found[0].Remedies[0].Edit.Apply(r.Made())
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range p.Openings() {
		// 48 in of counter from 12 to 60 are served from 36 alone; a stud stands at 32.
		if o.Kind != "counter" || o.At.Along != ruletest.In(36) {
			t.Errorf("a %s at %v", o.Kind, o.At.Along)
		}
	}
}
