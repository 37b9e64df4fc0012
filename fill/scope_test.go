package fill_test

import (
	"fmt"
	"slices"
	"sync"
	"testing"

	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
)

// withRules checks by other rules until the test is over.
func withRules(t *testing.T, rules ...*rule.Rule) {
	was := fill.Rules
	fill.Rules = rules
	t.Cleanup(func() { fill.Rules = was })
}

// breaksSeen is a view of the breaks of a level alone.
type breaksSeen struct{ breaks plan.Set[*plan.Break] }

func (v breaksSeen) Parts() []any { return []any{v.breaks} }

// fixturesSeen is a view of the fixtures of the first level alone.
type fixturesSeen struct{ fixtures plan.Set[*plan.Fixture] }

func (v fixturesSeen) Parts() []any { return []any{v.fixtures} }

// ranRules counts how often each rule judged. Rules judge on all cores at once.
type ranRules struct {
	mu    sync.Mutex
	times map[string]int
}

// add counts one more time of a rule.
func (r *ranRules) add(name string) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.times[name]++
}

// noted is a finding that tells a count.
func noted(n int) []rule.Finding {
	return []rule.Finding{{Severity: rule.Note, Measured: rule.CountOf(n)}}
}

// What a rule on sides, levels or the plan does not read does not make it judge again,
// and what it reads does: the waivers of a rule on levels or the plan too. Of two rules on
// the plan each is judged by what it reads alone.
func TestScopesAreJudgedByWhatTheirRulesRead(t *testing.T) {
	ran := ranRules{times: map[string]int{}}
	count := func(name string, n int) []rule.Finding { ran.add(name); return noted(n) }
	see := func(p plan.Plan) (v breaksSeen) {
		if len(p.Levels) > 0 {
			v.breaks = p.Levels[0].Breaks
		}
		return v
	}
	withRules(t,
		&rule.Rule{ID: "side", Side: func(v rule.SideView, _ *code.Figures) []rule.Finding {
			return count("side", len(v.Openings))
		}},
		&rule.Rule{ID: "level", Level: rule.OnLevel(
			func(_ *index.Index, l *plan.Level) breaksSeen { return breaksSeen{l.Breaks} },
			func(v breaksSeen, _ *code.Figures) []rule.Finding { return count("level", v.breaks.Len()) })},
		&rule.Rule{ID: "plan", Plan: rule.OnPlan(
			func(ix *index.Index) breaksSeen { return see(ix.Plan()) },
			func(v breaksSeen, _ *code.Figures) []rule.Finding { return count("plan", v.breaks.Len()) })},
		&rule.Rule{ID: "fixtures", Plan: rule.OnPlan(
			func(ix *index.Index) fixturesSeen { return fixturesSeen{ix.Plan().Levels[0].Fixtures} },
			func(v fixturesSeen, _ *code.Figures) (found []rule.Finding) {
				for f := range v.fixtures.All() {
					found = append(found, rule.Finding{Severity: rule.Note, Measured: rule.LengthOf(f.Width)})
				}
				ran.add("fixtures")
				return found
			})},
	)
	r := filltest.OneWall(t, 120)
	o, d := r.Receptacle(0, 60), r.Door(0, 10, 30)
	f := r.Standing(plan.FixtureDesk, 40, 40, 30, 20)
	p := r.Plan()
	var c fill.Checker
	for _, step := range []struct {
		name string
		edit edit.Edit
		want string
	}{
		{"at first", nil, "map[fixtures:1 level:1 plan:1 side:4]"},
		{"a receptacle moves", edit.MoveOpening{ID: o.ID, To: plan.OnFace(o.At.Host, in(70))}, "map[side:1]"},
		{"a door moves", edit.MoveBreak{ID: d.ID, To: plan.OnFace(d.At.Host, in(20))}, "map[level:1 plan:1 side:1]"},
		{"a desk moves", edit.MoveFixture{ID: f.ID, To: plan.OnFloor(r.Room.ID, geom.Point{X: in(60), Y: in(60)})}, "map[fixtures:1]"},
		{"the rule on fixtures is set aside on the level", edit.Add{Thing: &plan.Waiver{ID: "w22222222", Rule: "fixtures", About: "v22222222", Reason: "x"}}, "map[fixtures:1]"},
		{"a level is added", edit.AddLevel{ID: "v33333333", Title: "Upper"}, "map[level:1]"},
		{"and goes", edit.Removing("v33333333"), "map[]"},
	} {
		if step.edit != nil {
			var err error
			if p, err = step.edit.Apply(p); err != nil {
				t.Fatal(step.name, err)
			}
		}
		clear(ran.times)
		got, err := c.Update(index.New(p))
		if err != nil || fmt.Sprint(ran.times) != step.want {
			t.Errorf("%s: %v judged, want %s; %v", step.name, ran.times, step.want, err)
		}
		cold, err := fill.Check(index.New(p))
		if err != nil || !slices.EqualFunc(got.All(), cold.All(), func(a, b rule.Finding) bool {
			return a.Rule == b.Rule && a.Level == b.Level && a.About == b.About && a.Measured == b.Measured
		}) {
			t.Errorf("%s: %v, want %v, %v", step.name, got.All(), cold.All(), err)
		}
	}
}

// A waiver of what a rule on sides finds of an opening marks it, and marks it no longer
// when it is taken back.
func TestAWaiverOfAnOpeningReachesItsSide(t *testing.T) {
	r := filltest.OneWall(t, 120)
	r.Room.Use = plan.UseHall
	r.Door(0, 30, 60)
	o := r.Receptacle(0, 50)
	o.Assembly = plan.Assembly{Code: "PN1"}
	p := r.Plan()
	var c fill.Checker
	for _, want := range []bool{false, true, false} {
		with := p
		if want {
			with.Waivers = with.Waivers.With(&plan.Waiver{ID: "w22222222", Rule: wall.BoxPlace.ID, About: o.ID, Reason: "it moves"})
		}
		result, err := c.Update(index.New(with))
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		for f := range result.Each() {
			if f.Rule == wall.BoxPlace.ID {
				n++
				if (f.Waived != nil) != want {
					t.Errorf("waived: %v, want %v", f.Waived, want)
				}
			}
		}
		if n != 1 {
			t.Errorf("%d findings, want the box in the door alone", n)
		}
	}
}
