package unroll_test

import (
	"slices"
	"testing"

	"studbay/fill/light"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/unroll"
)

// drawn is a hall, stairs up and a hall above whose switch is on its far wall, unrolled.
func drawn(t *testing.T, width, height float64) (light.Way, []scene.Item) {
	h := ruletest.New(t)
	lower := h.Square(plan.UseHall, 0, 0, 300, 300)
	lower.Room.Name = "Hall"
	lower.Break(plan.BreakDoor, 2, 40, 36)
	lower.Stand(plan.FixtureStairs, plan.OnFloor(lower.Room.ID, lower.Ceiling(150, 190).At), 36, 120).Risers = 14
	lamp := lower.Opening("ceiling-light", lower.Ceiling(60, 60))
	h.Control([]*plan.Opening{lower.Opening("switch", lower.On(2, 84), ruletest.Tagged("H1"))}, []*plan.Opening{lamp})
	level := h.Level("Upper floor")
	r := h.RoomOn(level, plan.UseHall, 0, 0, 300, 0, 300, 300, 0, 300)
	r.Room.Name = "Landing"
	lamp = r.Opening("ceiling-light", r.Ceiling(60, 60))
	h.Control([]*plan.Opening{r.Opening("switch", r.On(0, 150), ruletest.Tagged("U1"))}, []*plan.Opening{lamp})
	p := h.Made()
	above := *p.Levels[level]
	above.Elevation = ruletest.In(105)
	p = p.WithLevel(&above)
	way, ok := light.WayBetween(index.New(p), ruletest.In(30), "", r.Room.ID)
	if !ok {
		t.Fatal("no way")
	}
	say := words.Voice{}.Say
	return way, unroll.Strip{Way: way, Plan: p, Theme: &render.Light, Say: say}.Draw(width, height)
}

// A walk unrolled keeps to its picture, names its rooms and numbers its crossings, shows the
// switches, and steps up by as many steps as there are risers.
func TestAWalkUnrolled(t *testing.T) {
	way, items := drawn(t, 900, 220)
	all := scene.Bounds(items...)
	if all.Min.X < 0 || all.Min.Y < 0 || all.Max.X > 900 || all.Max.Y > 220 {
		t.Errorf("it reaches over its picture: %+v", all)
	}
	upper := 0.0 // where the room at the right ends
	for _, item := range items {
		if x, is := item.(scene.Fill); is {
			upper = max(upper, x.Bounds().Max.X)
		}
	}
	var texts []string
	steps := 0
	for _, item := range items {
		switch x := item.(type) {
		case scene.Run:
			texts = append(texts, x.Text)
			if x.Text == "U1" && x.Bounds().Max.X > upper {
				t.Errorf("the tag of a switch stands outside its room: %v past %v", x.Bounds().Max.X, upper)
			}
		case scene.Stroke:
			n := 0
			x.Path.Each(func(scene.Op, []scene.Point) { n++ })
			steps = max(steps, n)
		}
	}
	for _, want := range []string{"Hall", "H1", "U1", "1", "2"} {
		if !slices.Contains(texts, want) {
			t.Errorf("%q is not on it: %q", want, texts)
		}
	}
	if steps != 1+2*14 {
		t.Errorf("the longest line has %d points, want the steps of 14 risers", steps)
	}
	if got := unroll.SignOf(way.Crossings[1]); got == unroll.SignOf(way.Crossings[0]) {
		t.Errorf("lit and dark have one sign: %v", got)
	}
	if got := (unroll.Strip{Theme: &render.Light}).Draw(900, 220); got != nil {
		t.Errorf("of no way it draws %d items", len(got))
	}
}
