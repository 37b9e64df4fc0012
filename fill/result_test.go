package fill

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// checked returns the result of the room's plan with decisions and waivers in it.
func (r *room) checked(decisions []plan.Decision, waivers []plan.Waiver) Result {
	r.t.Helper()
	p := r.plan()
	for _, d := range decisions {
		d.ID = r.ids.next(plan.KindDecision)
		p.Decisions = p.Decisions.With(&d)
	}
	for _, w := range waivers {
		w.ID = r.ids.next(plan.KindWaiver)
		p.Waivers = p.Waivers.With(&w)
	}
	result, err := Check(index.New(p))
	if err != nil {
		r.t.Fatal(err)
	}
	return result
}

func TestOpenDecisions(t *testing.T) {
	r := oneWall(t, 60)
	r.room.Use = plan.UseHall
	plug, door, tub := r.receptacle(0, 40), r.door(0, 0, 30), r.fixture(plan.FixtureTub, 2, 0, 60)
	place := func(f rule.Finding) string { return fmt.Sprintf("%s|%s|%s", f.Level, f.Room, f.Opening) }
	level := "v22222222"
	for _, tt := range []struct {
		name  string
		about []plan.ID
		why   string
		place string
	}{
		{"nothing", nil, "", "||"},
		{"a room", []plan.ID{r.room.ID}, "One thing in the plan depends on it.", level + "|" + string(r.room.ID) + "|"},
		{"a side", []plan.ID{r.room.Sides[1].ID}, "One thing in the plan depends on it.", level + "|" + string(r.room.ID) + "|"},
		{"a door", []plan.ID{door.ID}, "One thing in the plan depends on it.", level + "||"},
		{"a tub", []plan.ID{tub.ID}, "One thing in the plan depends on it.", level + "||"},
		{"an opening", []plan.ID{plug.ID}, "One thing in the plan depends on it.", level + "||" + string(plug.ID)},
		{"two things", []plan.ID{r.room.ID, plug.ID}, "2 things in the plan depend on it.", level + "|" + string(r.room.ID) + "|" + string(plug.ID)},
		{"what is gone", []plan.ID{"ozzzzzzzz"}, "One thing in the plan depends on it.", "||"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			found := r.checked([]plan.Decision{{Question: "How high?", About: tt.about}}, nil).Of(planScope)
			if len(found) != 1 {
				t.Fatalf("%+v", found)
			}
			f := found[0]
			if f.Severity != rule.Note || !f.IsOpen || f.Message.String() != "Open: How high?" || f.Why.String() != tt.why || place(f) != tt.place {
				t.Errorf("%s, %q, %q at %s, want %q at %s", f.Severity, f.Message, f.Why, place(f), tt.why, tt.place)
			}
		})
	}
	if found := r.checked(nil, nil).Of(planScope); found != nil {
		t.Errorf("no decision, yet %+v", found)
	}
}

// crowded has findings of every weight: a stop and a counter in the room, a warn and a
// note at openings, and an open decision.
func crowded(t *testing.T) *room {
	r := oneWall(t, 200)
	r.room.Use = plan.UseKitchen
	r.fixture(plan.FixtureCounter, 0, 100, 40)
	for _, x := range []float64{150, 151} {
		o := part.NewOpening(unit.Imperial, "data", plan.OnFace(r.room.Sides[0].ID, in(x)))
		r.opening(o)
	}
	r.opening(plan.Opening{Kind: "switch", At: plan.OnFace(r.room.Sides[0].ID, in(190)), Height: plan.CentreAt(in(46))})
	next := r.neighbour([2]float64{0, -100}, [2]float64{200, -100}, [2]float64{200, -10}, [2]float64{0, -10})
	next.Sides[2].Studs.Depth = in(3.5)
	return r
}

func TestFindingsComeWorstFirst(t *testing.T) {
	r := crowded(t)
	decisions := []plan.Decision{{Question: "Which tile?"}}
	var all []string
	for _, f := range r.checked(decisions, nil).All() {
		all = append(all, fmt.Sprintf("%s %v %s", f.Severity, f.IsOpen, f.Rule))
	}
	want := []string{
		"stop false wall-reach", "stop false wall-reach", "warn false box-place", "note false partition-depth",
		"note true open-decision", "note true box-fill", "note true wall-reach",
	}
	if !slices.Equal(all, want) {
		t.Errorf("%q, want %q", all, want)
	}
	first := r.checked(decisions, nil).All()
	about := first[slices.IndexFunc(first, func(f rule.Finding) bool { return f.Rule == wall.BoxPlace.ID })].About
	waived := r.checked(decisions, []plan.Waiver{{Rule: wall.BoxPlace.ID, About: about, Reason: "one of them goes"}})
	last := waived.All()[len(want)-1]
	if last.Rule != wall.BoxPlace.ID || last.Waived == nil || last.Waived.Reason != "one of them goes" {
		t.Errorf("the last is %+v", last)
	}
	if got, want := r.checked(decisions, nil).Tally(), (Tally{Stop: 2, Warn: 1, Note: 1, Open: 3}); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got, want := waived.Tally(), (Tally{Stop: 2, Note: 1, Open: 3, Waived: 1}); got != want {
		t.Errorf("waived: %+v, want %+v", got, want)
	}
}

// The order does not depend on how the plan came about.
func TestTheOrderOfFindingsIsAlwaysTheSame(t *testing.T) {
	line := func(f rule.Finding) string { return f.Rule + string(f.About) + f.Message.String() }
	var want []string
	for range 5 {
		var got []string
		for _, f := range crowded(t).checked(nil, nil).All() {
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
		waiver func(r *room) plan.Waiver
		waived int
	}{
		{"of a wall", func(r *room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.room.Sides[0].ID, Reason: "x"}
		}, 2},
		{"of another wall", func(r *room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.room.Sides[1].ID, Reason: "x"}
		}, 0},
		{"of another rule", func(r *room) plan.Waiver {
			return plan.Waiver{Rule: boxes.Fill.ID, About: r.room.Sides[0].ID, Reason: "x"}
		}, 0},
		{"of the room", func(r *room) plan.Waiver {
			return plan.Waiver{Rule: spacing.WallReach.ID, About: r.room.ID, Reason: "x"}
		}, 1},
		{"of nothing", func(*room) plan.Waiver { return plan.Waiver{Rule: spacing.WallReach.ID, Reason: "x"} }, 0},
	} {
		r := crowded(t)
		result := r.checked(nil, []plan.Waiver{tt.waiver(r)})
		if got := result.Tally().Waived; got != tt.waived {
			t.Errorf("%s: %d set aside, want %d", tt.name, got, tt.waived)
		}
	}
	// Of two for one finding the first by ID is told.
	r := crowded(t)
	about := r.room.Sides[0].ID
	result := r.checked(nil, []plan.Waiver{{Rule: spacing.WallReach.ID, About: about, Reason: "first"}, {Rule: spacing.WallReach.ID, About: about, Reason: "second"}})
	for _, f := range result.Of(r.room.ID) {
		if f.About == about && f.Rule == spacing.WallReach.ID && (f.Waived == nil || f.Waived.Reason != "first") {
			t.Errorf("%s is set aside by %+v", f.Message, f.Waived)
		}
	}
}
