package level

import (
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
)

// Symbols of two faces that meet in an inner corner stand clear of each other and of
// what stands next to them, at their true feet.
func TestSymbolsPartAcrossACorner(t *testing.T) {
	for _, tt := range []struct {
		name string
		at   [2][]float64 // inches from the corner, along the top and the left face
	}{
		{"one on each", [2][]float64{{9}, {9}}},
		{"in the very corner", [2][]float64{{4}, {4}}},
		{"nearer on one", [2][]float64{{12}, {7}}},
		{"with neighbours", [2][]float64{{9, 30, 48}, {9, 28}}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b := rendertest.NewBuilder(t)
			r := b.Box("Den", plan.UseLiving, 0, 0, 144, 120)
			for face, all := range tt.at {
				side := r.Sides[[]int{0, 3}[face]]
				for _, away := range all {
					along := rendertest.In(away)
					if face == 1 {
						along = rendertest.In(120 - away) // the left face runs up to the corner
					}
					b.Opening("", "duplex", plan.OnFace(side.ID, along), 16)
				}
			}
			ix := b.Index()
			m := render.BoardMedium(0.0787, 1, render.Light, words.Voice{})
			d := newDrawing(ix, b.Level.ID, m)
			d.gather(rendertest.Everything)
			d.TakeFindings(nil, nil)
			for _, room := range d.rooms {
				d.openings(room)
				if len(room.groups) != len(tt.at[0])+len(tt.at[1]) {
					t.Fatalf("%d symbols", len(room.groups))
				}
				for i, g := range room.groups {
					if want := m.ToScene(g.places[0].Foot); g.ref.Place.Foot != want {
						t.Errorf("a foot stands at %v, want %v", g.ref.Place.Foot, want)
					}
					for _, h := range room.groups[:i] {
						if g.drawn.Bodies[0].Overlaps(h.drawn.Bodies[0]) || g.meets(h, 0) {
							t.Errorf("symbols at %v and %v meet", g.places[0].Foot, h.places[0].Foot)
						}
					}
				}
			}
		})
	}
}

// A symbol on a wall leans clear of one in the ceiling over it; both feet stay true.
func TestWallSymbolsLeanClearOfTheCeilings(t *testing.T) {
	for _, away := range []float64{4, 7, 10, 13} { // inches of the light from the wall
		b := rendertest.NewBuilder(t)
		r := b.Box("Den", plan.UseLiving, 0, 0, 144, 120)
		b.Opening("", "duplex", plan.OnFace(r.Sides[0].ID, rendertest.In(60)), 16)
		b.Opening("", "ceiling-light", plan.OnCeiling(r.ID, geom.Point{X: rendertest.In(60), Y: rendertest.In(away)}), 0)
		m := render.BoardMedium(0.0787, 1, render.Light, words.Voice{})
		d := newDrawing(b.Index(), b.Level.ID, m)
		d.gather(rendertest.Everything)
		d.openings(d.rooms[0])
		groups := d.rooms[0].groups
		if len(groups) != 2 {
			t.Fatalf("%d symbols", len(groups))
		}
		if groups[0].covers(groups[1], 0) {
			t.Errorf("%v in from the wall: they lie over each other", away)
		}
		for _, g := range groups {
			if want := m.ToScene(g.places[0].Foot); g.ref.Place.Foot != want {
				t.Errorf("%v in from the wall: a foot stands at %v, want %v", away, g.ref.Place.Foot, want)
			}
		}
	}
}

// Where nothing meets, nothing leans.
func TestNothingLeansWithoutNeed(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Den", plan.UseLiving, 0, 0, 144, 120)
	b.Opening("", "duplex", plan.OnFace(r.Sides[0].ID, rendertest.In(40)), 16)
	b.Opening("", "duplex", plan.OnFace(r.Sides[3].ID, rendertest.In(60)), 16)
	d := newDrawing(b.Index(), b.Level.ID, render.BoardMedium(0.0787, 1, render.Light, words.Voice{}))
	d.gather(rendertest.Everything)
	d.openings(d.rooms[0])
	for _, g := range d.rooms[0].groups {
		if g.ref.Place.Lean != 0 {
			t.Errorf("the symbol at %v leans by %v", g.places[0].Foot, g.ref.Place.Lean)
		}
	}

}

// In a room too small for all, tags stand beside their bodies and the room's text gives
// way.
func TestRoomTextGivesWayToTags(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Bath", plan.UseBath, 0, 0, 60, 48)
	for i := range 3 {
		b.On("B10 GF", "duplex", r, i, 30, 44)
	}
	m := render.BoardMedium(0.0787, 1, render.Light, words.Voice{})
	tags := 0
	for _, p := range Draw(b.Index(), b.Level.ID, nil, m, rendertest.Everything) {
		if p.Layer == render.LayerLabels && p.ID.Kind() == plan.KindOpening {
			tags++
			if len(p.Items) != 1 {
				t.Errorf("the tag of %s stands off with a leader line", p.ID)
			}
		}
	}
	if tags != 3 {
		t.Errorf("%d of 3 tags are written", tags)
	}
}
