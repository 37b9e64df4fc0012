package fill_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/unit"
)

// crowded has findings of every weight: stops along walls and a counter of the room, a warn and a
// note at openings, two rooms and a level without light and alarm, and an open decision.
func crowded(t *testing.T) *filltest.Room {
	r := filltest.OneWall(t, 200)
	r.Room.Use = plan.UseKitchen
	r.Fixture(plan.FixtureCounter, 0, 100, 40)
	for _, x := range []float64{150, 151} {
		o := part.NewOpening(unit.Imperial, "data", plan.OnFace(r.Room.Sides[0].ID, in(x)))
		r.Opening(o)
	}
	r.Opening(plan.Opening{Kind: "switch", At: plan.OnFace(r.Room.Sides[0].ID, in(190)), Height: plan.CentreAt(in(46))})
	r.Opening(plan.Opening{Kind: "switch", At: plan.OnFace(r.Room.Sides[0].ID, in(20)), Height: plan.CentreAt(in(46)), Assembly: plan.Assembly{Box: "tin"}})
	next := r.Neighbour([2]float64{0, -100}, [2]float64{200, -100}, [2]float64{200, -10}, [2]float64{0, -10})
	next.Sides[2].Studs.Depth = in(3.5)
	return r
}

func TestFindingsComeWorstFirst(t *testing.T) {
	r := crowded(t)
	decisions := []plan.Decision{{Question: "Which tile?"}}
	var all []string
	for _, f := range r.Checked(decisions, nil).All() {
		all = append(all, fmt.Sprintf("%s %v %s", f.Severity, f.IsOpen, f.Rule))
	}
	want := []string{
		"stop false smoke-alarm", "stop false box-place", "stop false lit-room", "stop false counter-reach", "stop false wall-reach",
		"stop false wall-reach", "stop false lit-room", "warn false box-fill",
		"note false partition-depth", "note true open-decision", "note true box-fill",
	}
	if !slices.Equal(all, want) {
		t.Errorf("%q, want %q", all, want)
	}
	first := r.Checked(decisions, nil).All()
	about := first[slices.IndexFunc(first, func(f rule.Finding) bool { return f.Rule == wall.BoxPlace.ID })].About
	waived := r.Checked(decisions, []plan.Waiver{{Rule: wall.BoxPlace.ID, About: about, Reason: "one of them goes"}})
	last := waived.All()[len(want)-1]
	if last.Rule != wall.BoxPlace.ID || last.Waived == nil || last.Waived.Reason != "one of them goes" {
		t.Errorf("the last is %+v", last)
	}
	if got, want := r.Checked(decisions, nil).Tally(), (fill.Tally{Stop: 7, Warn: 1, Note: 1, Open: 2}); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got, want := waived.Tally(), (fill.Tally{Stop: 6, Warn: 1, Note: 1, Open: 2, Waived: 1}); got != want {
		t.Errorf("waived: %+v, want %+v", got, want)
	}
}

// The order does not depend on how the plan came about.
func TestTheOrderOfFindingsIsAlwaysTheSame(t *testing.T) {
	line := func(f rule.Finding) string { return f.Rule + string(f.About) + f.Message.String() }
	var want []string
	for range 5 {
		var got []string
		for _, f := range crowded(t).Checked(nil, nil).All() {
			got = append(got, line(f))
		}
		if want == nil {
			want = got
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%q, then %q", want, got)
		}
	}
}

func TestWaivers(t *testing.T) {
	for _, tt := range []struct {
		name   string
		waiver func(r *filltest.Room) plan.Waiver
		waived int
	}{
		{"of a wall", func(r *filltest.Room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.Room.Sides[0].ID, Reason: "x"}
		}, 2},
		{"of another wall", func(r *filltest.Room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.Room.Sides[1].ID, Reason: "x"}
		}, 0},
		{"of another rule", func(r *filltest.Room) plan.Waiver {
			return plan.Waiver{Rule: boxes.Fill.ID, About: r.Room.Sides[0].ID, Reason: "x"}
		}, 0},
		{"of the room", func(r *filltest.Room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.Room.ID, Reason: "x"}
		}, 0},
		{"of nothing", func(*filltest.Room) plan.Waiver { return plan.Waiver{Rule: spacing.WallReach.ID, Reason: "x"} }, 0},
	} {
		r := crowded(t)
		result := r.Checked(nil, []plan.Waiver{tt.waiver(r)})
		if got := result.Tally().Waived; got != tt.waived {
			t.Errorf("%s: %d set aside, want %d", tt.name, got, tt.waived)
		}
	}
	// Of two for one finding the first by ID is told.
	r := crowded(t)
	about := r.Room.Sides[0].ID
	result := r.Checked(nil, []plan.Waiver{{Rule: spacing.WallReach.ID, About: about, Reason: "first"}, {Rule: spacing.WallReach.ID, About: about, Reason: "second"}})
	for _, f := range result.Of(r.Room.ID) {
		if f.About == about && f.Rule == spacing.WallReach.ID && (f.Waived == nil || f.Waived.Reason != "first") {
			t.Errorf("%s is set aside by %+v", f.Message, f.Waived)
		}
	}
}
