package light_test

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/filltest"
	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// What came to be said of a light over an open side hangs on the light of the room behind.
func TestWhatShinesOverAnOpenSide(t *testing.T) {
	for _, tt := range []struct {
		name   string
		hall   func(r route) // what lights the hall
		behind light.CrossingState
		want   light.CrossingState
	}{
		{"a hall without a light", func(route) {}, light.CrossingUnlit, light.CrossingDark},
		{"a light that nobody says a switch for", func(r route) { r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60)) }, light.CrossingUnsaid, light.CrossingDark},
		{"a light on a switch that goes", func(r route) {
			s := r.hall.Opening("switch", r.hall.On(2, 82), ruletest.Removed)
			r.Control([]*plan.Opening{s}, []*plan.Opening{r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))})
		}, light.CrossingUnsaid, light.CrossingDark},
		{"a light on a switch that is nowhere", func(r route) {
			r.Control([]*plan.Opening{{ID: "ogone"}}, []*plan.Opening{r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))})
		}, light.CrossingUnsaid, light.CrossingDark},
		{"a light on a receptacle", func(r route) {
			s := r.hall.Opening("duplex", r.hall.On(2, 82))
			r.Control([]*plan.Opening{s}, []*plan.Opening{r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))})
		}, light.CrossingUnsaid, light.CrossingDark},
		{"a light by the door", func(r route) {
			s := r.hall.Opening("switch", r.hall.On(2, 82))
			r.Control([]*plan.Opening{s}, []*plan.Opening{r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))})
		}, light.CrossingLit, light.CrossingOpen},
		{"a light across the hall", func(r route) { // one puts it on before one goes on
			s := r.hall.Opening("switch", r.hall.On(0, 60))
			r.Control([]*plan.Opening{s}, []*plan.Opening{r.hall.Opening("ceiling-light", r.hall.Ceiling(60, 60))})
		}, light.CrossingDark, light.CrossingOpen},
	} {
		r := newRoute(ruletest.New(t))
		r.hall.Sides[1].Kind, r.bedroom.Sides[3].Kind = plan.SideOpen, plan.SideOpen
		r.door.Kind, r.door.At = plan.BreakWindow, r.hall.On(3, 40)
		r.puts(r.bedroom, 1, 60)
		tt.hall(r)
		into := crossingInto(t, r.House, r.bedroom)
		if into.Before.State != tt.behind || into.State != tt.want {
			t.Errorf("%s: %s, then %s, want %s, then %s", tt.name, into.Before.State, into.State, tt.behind, tt.want)
		}
		if (into.Before.Switch == nil) != (into.Before.Away < 0) {
			t.Errorf("%s: %s away without a switch", tt.name, into.Before.Away.Inches(16))
		}
	}
	r := newRoute(ruletest.New(t)) // a receptacle that a switch controls is no light of a kitchen
	r.bedroom.Use, r.lamp.Status = plan.UseKitchen, plan.StatusRemove
	r.Control([]*plan.Opening{r.bedroom.Opening("switch", r.bedroom.On(3, 41))}, []*plan.Opening{r.bedroom.Opening("switched", r.bedroom.On(1, 60))})
	if got := crossingInto(t, r.House, r.bedroom); got.State != light.CrossingUnlit || got.Switch != nil {
		t.Errorf("a kitchen with a switched receptacle: %s", got.State)
	}
}

// What a rule says is the same told of changes one by one as of the plan read anew.
func TestLightsAreSeenToChange(t *testing.T) {
	made := func(make func(h *ruletest.House)) plan.Plan {
		h := ruletest.New(t)
		make(h)
		return h.Made()
	}
	level := func(at int, change func(l *plan.Level)) func(plan.Plan) plan.Plan {
		return func(p plan.Plan) plan.Plan {
			l := *p.Levels[at]
			change(&l)
			return p.WithLevel(&l)
		}
	}
	without := func(kind string) func(plan.Plan) plan.Plan {
		return func(p plan.Plan) plan.Plan {
			for o := range p.Levels[0].Openings.All() {
				if o.Kind == kind {
					next, err := edit.SetStatus{ID: o.ID, Status: plan.StatusRemove}.Apply(p)
					if err != nil {
						t.Fatal(err)
					}
					return next
				}
			}
			t.Fatalf("no %s", kind)
			return p
		}
	}
	porch := made(func(h *ruletest.House) {
		inside := h.Square(plan.UseDen, 0, 0, 120, 120)
		h.Square(plan.UseOutdoors, 0, 127, 120, 80)
		inside.Break(plan.BreakDoor, 2, 40, 36)
		h.RoomOn(h.Level("Upper floor"), plan.UseDen, 0, 0, 120, 0, 120, 120, 0, 120)
	})
	garage := made(func(h *ruletest.House) {
		r := h.Square(plan.UseGarage, 0, 0, 240, 240)
		r.Opening("garage", r.On(0, 40))
	})
	far := made(func(h *ruletest.House) { r := newRoute(h); r.puts(r.bedroom, 1, 60) })
	for _, tt := range []struct {
		name   string
		of     *rule.Rule
		before plan.Plan
		change func(plan.Plan) plan.Plan
	}{
		{"a light goes", &light.LitRoom, made(lit("2023", plan.UseBedroom, "ceiling-light", true, true)), without("ceiling-light")},
		{"a switch goes", &light.LitRoom, made(lit("2023", plan.UseBedroom, "ceiling-light", true, true)), without("switch")},
		{"a receptacle on a switch goes", &light.LitRoom, made(lit("2023", plan.UseBedroom, "switched", true, true)), without("switched")},
		{"a garage's power goes", &light.LitPassage, garage, without("garage")},
		{"a level comes to be a basement", &light.LitPassage, porch, level(0, func(l *plan.Level) { l.Name = "Basement" })},
		{"a level comes to lie above another", &light.LitPassage, porch, level(0, func(l *plan.Level) { l.Elevation = ruletest.In(400) })},
		{"a switch of the way goes", &light.LitRoute, far, without("switch")},
	} {
		var c fill.Checker
		ix := index.New(tt.before)
		was := saidBy(t, &c, ix, tt.of)
		after := tt.change(tt.before)
		got, want := saidBy(t, &c, ix.Updated(after), tt.of), filltest.Said(filltest.FoundIn(t, after, tt.of.ID))
		if !slices.Equal(got, want) || slices.Equal(was, want) {
			t.Errorf("%s: %q, then %q, want %q, another", tt.name, was, got, want)
		}
	}
	// The route by which levels lie: one comes in on the lowest.
	two := made(func(h *ruletest.House) {
		for i, use := range []plan.Use{plan.UseHall, plan.UseDen} {
			if i > 0 {
				h.Level("Another")
			}
			r := h.RoomOn(i, use, 0, 0, 120, 0, 120, 120, 0, 120)
			r.Break(plan.BreakDoor, 2, 40, 36)
			lamp := r.Opening("ceiling-light", r.Ceiling(60, 60))
			h.Control([]*plan.Opening{r.Opening("switch", r.On(0, 10))}, []*plan.Opening{lamp})
		}
	})
	for name, change := range map[string]func(l *plan.Level){
		"raised": func(l *plan.Level) { l.Elevation = ruletest.In(400) },
		"named":  func(l *plan.Level) { l.Name = "Basement" },
	} {
		var c fill.Checker
		ix := index.New(two)
		was := saidBy(t, &c, ix, &light.LitRoute)
		after := level(0, change)(two)
		got, want := saidBy(t, &c, ix.Updated(after), &light.LitRoute), filltest.Said(filltest.FoundIn(t, after, light.LitRoute.ID))
		if len(was) != 1 || len(want) != 1 || was[0] == want[0] || !slices.Equal(got, want) {
			t.Errorf("%s: %q, then %q, want %q, another", name, was, got, want)
		}
	}
}

// saidBy is what a checker that is kept says of a plan by one rule.
func saidBy(t *testing.T, c *fill.Checker, ix *index.Index, of *rule.Rule) []string {
	t.Helper()
	result, err := c.Update(ix)
	if err != nil {
		t.Fatal(err)
	}
	var found []rule.Finding
	for f := range result.Each() {
		if f.Rule == of.ID {
			found = append(found, f)
		}
	}
	return filltest.Said(found)
}
