package spacing_test

import (
	"fmt"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestWallReach(t *testing.T) {
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *filltest.Room
		want   []string
		source string
	}{
		{"11 ft 10 in between breaks, one near the middle", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 142)
			r.Receptacle(0, 71)
			return r
		}, nil, "forums.mikeholt.com 32172"},
		{"its place may be 5 ft 10 in to 6 ft from the end: 5 ft 10", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 142)
			r.Receptacle(0, 70)
			return r
		}, nil, "the same page; arithmetic 142 - 72 = 70"},
		{"at 2 ft from an end the far point is 9 ft 10 in away", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 142)
			r.Receptacle(0, 24)
			return r
		}, []string{`0:96"-142"`}, "the same page: begins where the reach ends"},
		{"12 ft is served from its exact middle", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 144)
			r.Receptacle(0, 72)
			return r
		}, nil, "210.52(A)(1): 6 ft either way"},
		{"12 ft and an inch is not served by one", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 145)
			r.Receptacle(0, 72)
			return r
		}, []string{`0:144"-145"`}, "210.52(A)(1)"},
		{"25 ft with three", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 300)
			for _, x := range []float64{50, 150, 250} {
				r.Receptacle(0, x)
			}
			return r
		}, nil, "forums.mikeholt.com 32172: 25 ft needs 3"},
		{"25 ft with two leaves a foot", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 300)
			r.Receptacle(0, 72)
			r.Receptacle(0, 228)
			return r
		}, []string{`0:144"-156"`}, "ceil(25/12) = 3"},
		{"17 ft square with a 3 ft door and six", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 204)
			r.Door(0, 0, 36)
			r.Receptacle(0, 101)
			r.Receptacle(1, 27)
			r.Receptacle(1, 157)
			r.Receptacle(2, 83)
			r.Receptacle(3, 9)
			r.Receptacle(3, 139)
			return r
		}, nil, "one run of 65 ft, ceil(65/12) = 6; the published 7 breaks the run at corners: smartsolve.ai, kept as a trap"},
		{"the same with five", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 204)
			r.Door(0, 0, 36)
			r.Receptacle(0, 101)
			r.Receptacle(1, 27)
			r.Receptacle(1, 157)
			r.Receptacle(2, 83)
			r.Receptacle(3, 9)
			return r
		}, []string{`3:81"-204"`}, "ceil(65/12) = 6; the last begins 72 in past the fifth"},
		{"wall behind a door counts", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 60)
			r.Door(0, 0, 30)
			return r
		}, []string{`0:30"-60"`}, "ecmweb.com code Q&A 93: it counts however the door stands"},
		{"six panels of a slider, one fixed in the middle", func(t *testing.T) *filltest.Room { return slider(t) },
			[]string{`0:96"-144"`}, "forums.mikeholt.com 2570348: the fixed panel is wall space"},
		{"a floor receptacle 18 in from it serves", func(t *testing.T) *filltest.Room {
			r := slider(t)
			r.InFloor(120, 18)
			return r
		}, nil, "210.52(A)(3)"},
		{"one 18-1/8 in from it does not", func(t *testing.T) *filltest.Room {
			r := slider(t)
			r.InFloor(120, 18.125)
			return r
		}, []string{`0:96"-144"`}, "210.52(A)(3)"},
		{"24 in between two doors needs its own", func(t *testing.T) *filltest.Room { return betweenDoors(t, 24) },
			[]string{`0:36"-60"`}, "forums.mikeholt.com 2587744"},
		{"23-7/8 in does not", func(t *testing.T) *filltest.Room { return betweenDoors(t, 23.875) },
			nil, "electricalcodeconnection.com, wall space"},
		{"outlets beyond the doors do not help", func(t *testing.T) *filltest.Room {
			r := betweenDoors(t, 24)
			r.Receptacle(0, 18) // in the door itself: not on wall space
			return r
		}, []string{`0:36"-60"`}, "forums.mikeholt.com 2587744"},
		{"a run goes round a corner", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 60)
			r.Room.Sides[1].Kind = plan.SideWall // 120 in more
			r.Receptacle(1, 30)                  // 90 from one end, 90 from the other
			return r
		}, []string{`0:0"-18"`, `1:102"-120"`}, "210.52(A)(2): corners do not break, arithmetic"},
		{"it goes on over the first corner", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 100)
			r.Door(1, 0, 36)
			r.Receptacle(2, 8) // 72 in from the door, round one corner
			return r
		}, []string{`2:80"-100" 3:0"-100" 0:0"-100"`}, "210.52(A)(2), arithmetic"},
		{"a closed ring with one", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 72)
			r.Receptacle(0, 36)
			return r
		}, []string{`1:36"-72" 2:0"-72" 3:0"-36"`}, "ring of 24 ft: 6 ft each way of one, so half is left; arithmetic"},
		{"a closed ring with two, opposite", func(t *testing.T) *filltest.Room {
			r := filltest.Square(t, 72)
			r.Receptacle(0, 36)
			r.Receptacle(2, 36)
			return r
		}, nil, "ceil(24/12) = 2 on a ring"},
		{"66 in high counts", func(t *testing.T) *filltest.Room { return high(t, 66) }, nil, "210.52: not above 5-1/2 ft"},
		{"66-1/8 in high does not", func(t *testing.T) *filltest.Room { return high(t, 66.125) }, []string{`0:0"-100"`}, "210.52: above 5-1/2 ft"},
		{"wholly switched does not count", func(t *testing.T) *filltest.Room { return switched(t, plan.WhollySwitched) },
			[]string{`0:0"-100"`}, "210.52: it is the room's lighting outlet"},
		{"half switched counts", func(t *testing.T) *filltest.Room { return switched(t, plan.HalfSwitched) }, nil, "common reading, from memory"},
		{"one to be removed does not count", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Opening(plan.Opening{Kind: "duplex", At: plan.OnFace(r.Room.Sides[0].ID, in(50)), Height: plan.CentreAt(in(16)), Status: plan.StatusRemove})
			return r
		}, []string{`0:0"-100"`}, "it will not be there"},
		{"a railing is wall space", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Sides[0].Kind = plan.SideRailing
			return r
		}, []string{`0:0"-100"`}, "210.52(A)(2)(3)"},
		{"a fireplace ends a wall space", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Door(0, 23, 54).Kind = plan.BreakFireplace
			return r
		}, nil, "210.52(A)(2)(1): 23 in is left at either end"},
		{"a window does not", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			b := r.Door(0, 23, 54)
			b.Kind, b.Sill = plan.BreakWindow, in(30)
			return r
		}, []string{`0:0"-100"`}, "from memory: the floor line runs on below it"},
		{"a fixed cabinet ends it", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Fixture(plan.FixtureCabinet, 0, 23, 54)
			return r
		}, nil, "ecmweb.com, changes of 2011"},
		{"an upper cabinet does not", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Fixture(plan.FixtureUpper, 0, 23, 54).Bottom = in(54)
			return r
		}, []string{`0:0"-100"`}, "the floor line runs on below it"},
		{"a refrigerator ends it from 2023", func(t *testing.T) *filltest.Room { return withRefrigerator(t, "2023") }, nil, "serveacademy.it, changes of 2023"},
		{"before 2023 it does not", func(t *testing.T) *filltest.Room { return withRefrigerator(t, "2020") }, []string{`0:0"-100"`}, "2020 text"},
		{"a range in a row of counters is the counters' matter in any edition", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Edition = "2017"
			r.Room.Use = plan.UseKitchen
			r.Fixture(plan.FixtureCounter, 0, 0, 35)
			r.Fixture(plan.FixtureRange, 0, 35, 30)
			r.Fixture(plan.FixtureCounter, 0, 65, 35)
			return r
		}, nil, "210.52(C)(1): the space behind a range is the counter rule's"},
		{"a bath has no such rule", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Room.Use = plan.UseBath
			return r
		}, nil, "210.52(A) does not name it"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := missed(tt.make(t))
			if fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("not served: %q, want %q (%s)", got, tt.want, tt.source)
			}
		})
	}
}

func slider(t *testing.T) *filltest.Room {
	r := filltest.OneWall(t, 288)
	b := r.Door(0, 0, 288)
	b.Kind = plan.BreakSlider
	for i := range 6 {
		panel := plan.PanelMoving
		if i == 2 {
			panel = plan.PanelFixed
		}
		b.Panels = append(b.Panels, panel)
	}
	return r
}

func betweenDoors(t *testing.T, apart float64) *filltest.Room {
	r := filltest.OneWall(t, 72+apart)
	r.Door(0, 0, 36)
	r.Door(0, 36+apart, 36)
	return r
}

func high(t *testing.T, height float64) *filltest.Room {
	r := filltest.OneWall(t, 100)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50)))
	o.Height = plan.CentreAt(in(height))
	r.Opening(o)
	return r
}

func switched(t *testing.T, how plan.Switching) *filltest.Room {
	r := filltest.OneWall(t, 100)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50)))
	o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: how}}
	r.Opening(o)
	return r
}

func withRefrigerator(t *testing.T, edition string) *filltest.Room {
	r := filltest.OneWall(t, 100)
	r.Edition = edition
	r.Fixture(plan.FixtureRefrigerator, 0, 23, 54)
	return r
}

func TestCountersAreLeftToTheirOwnRule(t *testing.T) {
	r := filltest.OneWall(t, 100)
	r.Room.Use = plan.UseKitchen
	r.Fixture(plan.FixtureCounter, 0, 20, 60)
	found := r.Found(spacing.CounterReach.ID)
	if len(found) != 1 || len(reach(r)) != 0 || found[0].Severity != rule.Stop || found[0].Measured != rule.LengthOf(in(60)) {
		t.Errorf("a counter of 60 in between stubs of 20 in: %+v", found)
	}
}

// The end of a counter on the next wall takes the floor line of this one.
func TestACounterTakesTheCornerToo(t *testing.T) {
	r := filltest.OneWall(t, 100)
	r.Room.Sides[3].Kind = plan.SideWall // runs up the sheet to the north side's left end
	r.Room.Use = plan.UseKitchen
	r.Fixture(plan.FixtureCounter, 0, 0, 90)
	r.Room.Use = plan.UseKitchen
	r.Fixture(plan.FixtureCounter, 3, 0, 96)
	if got := missed(r); got != nil {
		t.Errorf("10 in beside one counter, nothing beside the other: not served %q", got)
	}
}

func TestRemedyStandsAtAWholeInch(t *testing.T) {
	r := filltest.OneWall(t, 142.125)
	q, err := reach(r)[0].Remedies[0].Edit.Apply(r.Plan())
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range q.Openings() {
		if o.At.Along != in(71) {
			t.Errorf("the middle of 142-1/8 in: %s along, want 71 in", o.At.Along.Inches(8))
		}
	}
}
