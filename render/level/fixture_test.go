package level

import (
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// Every kind of fixture, at its usual size, and some of them turned.
func TestFixturesLookAsKept(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("", plan.UseKitchen, 0, 0, 560, 250)
	sizes := map[plan.FixtureKind][2]float64{
		plan.FixtureBed: {60, 80}, plan.FixtureTub: {60, 32}, plan.FixtureStairs: {36, 90}, plan.FixtureSink: {33, 22},
		plan.FixtureBasin: {22, 18}, plan.FixtureToilet: {20, 28}, plan.FixtureMirror: {30, 1}, plan.FixtureRod: {48, 24},
		plan.FixturePanel: {16, 4}, plan.FixtureCounter: {60, 25}, plan.FixtureUpper: {36, 13}, plan.FixtureIsland: {60, 36},
		plan.FixturePeninsula: {48, 25}, plan.FixtureShower: {36, 36}, plan.FixtureDesk: {54, 26},
	}
	x, y := 40.0, 40.0
	for i, known := range part.All().Fixtures {
		kind := known.ID
		size, ok := sizes[kind]
		if !ok {
			size = [2]float64{30, 27}
		}
		turn := 0
		if i%5 == 4 {
			turn = 1
		}
		b.Stands(kind, r, x, y, size[0], size[1], turn)
		if x += 70; x > 530 {
			x, y = 40, y+72
		}
	}
	m := render.BoardMedium(2.0/25.4, 1, render.Light, words.Voice{}).Centred(rendertest.At(-10, -10), scene.Point{})
	rendertest.Golden(t, "fixtures.png", 96, rendertest.Page(m, 1170, 550, Draw(b.Index(), b.Level.ID, nil, m, rendertest.Everything)))
}

// TestEveryKindHasItsBody holds the bodies that the tables name to those that are drawn.
func TestEveryKindHasItsBody(t *testing.T) {
	used := map[string]bool{}
	for _, k := range part.All().Fixtures {
		if used[k.Body] = true; bodies[k.Body] == nil {
			t.Errorf("%s has a body %q that nothing draws", k.ID, k.Body)
		}
	}
	for body := range bodies {
		if !used[body] {
			t.Errorf("no kind of fixture has the body %q", body)
		}
	}
	for _, k := range part.All().Breaks {
		if breakBodies[k.Body] == nil {
			t.Errorf("%s has a body %q that nothing draws", k.ID, k.Body)
		}
	}
}

// Stairs that join two levels show on both: whole where they stand, dashed where they lead,
// and each says which way they go. A room's name keeps off both.
func TestStairsShowOnBothLevels(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Hall", plan.UseHall, 0, 0, 150, 200)
	up := b.Box("Landing", plan.UseHall, 0, 0, 150, 200)
	b.Level.Rooms = b.Level.Rooms.Without(up.ID)
	s := b.Stands(plan.FixtureStairs, r, 75, 100, 36, 120, 0)
	s.Leads = "vbbbbbbbb"
	above := &plan.Level{ID: s.Leads, Name: "Upper floor", Elevation: 108 * unit.Inch, Rooms: plan.Set[*plan.Room]{}.With(up)}
	b.Plan = b.Plan.WithLevel(above)
	for level, want := range map[plan.ID]string{b.Level.ID: "UP", above.ID: "DN"} {
		m := render.BoardMedium(2.0/25.4, 1, render.Light, words.Voice{}).Centred(rendertest.At(-10, -10), scene.Point{})
		pieces := Draw(b.Index(), level, nil, m, rendertest.Everything)
		var said []string
		var names, treads, way scene.Rect
		for _, p := range pieces {
			if p.ID == s.ID && len(p.Items) == 1 {
				for _, it := range p.Items {
					if run, ok := it.(scene.Run); ok {
						said, way = append(said, run.Text), p.Bounds
					}
				}
			}
			switch {
			case p.Layer == render.LayerRoomNames:
				names = p.Bounds
			case p.ID == s.ID && len(p.Items) > 1:
				treads = p.Bounds
			}
		}
		if len(said) != 1 || said[0] != want {
			t.Errorf("on %s the stairs say %q, want %s", level, said, want)
		}
		// The word stands where one steps on: common practice.
		if atFoot := way.Middle().Y > treads.Middle().Y; atFoot != (want == "UP") {
			t.Errorf("on %s %s stands at %v of the stairs at %v, whose foot is below", level, want, way, treads)
		}
		if names.Overlaps(treads) || treads.IsEmpty() {
			t.Errorf("on %s the name at %v lies over the stairs at %v", level, names, treads)
		}
	}
}
