package render_test

import (
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/rendertest"
)

func TestDimensionChain(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 120, 96)
	b.Door(r, 0, 20, 30, plan.HandLeft, plan.SwingIn)
	o := b.On("A1", "duplex", r, 0, 80, 16)
	light := b.Ceiling("A2", "ceiling-light", r, 40, 30)
	ix := b.Index()
	want := []unit.Length{rendertest.In(30), rendertest.In(40), rendertest.In(80)} // casing edge, right corner, left corner
	got := render.DimensionChain(ix, o.At, o.ID)
	if len(got) != len(want) {
		t.Fatalf("chain of %d, want %d: %v", len(got), len(want), got)
	}
	for i, d := range got {
		if d.Length != want[i] || d.From != (geom.Point{X: rendertest.In(80)}) {
			t.Errorf("dimension %d is %v from %v, want %v", i, d.Length, d.From, want[i])
		}
	}
	flat := render.DimensionChain(ix, light.At, light.ID)
	for i, w := range []unit.Length{rendertest.In(40), rendertest.In(80), rendertest.In(30), rendertest.In(66)} {
		if flat[i].Length != w {
			t.Errorf("ceiling dimension %d is %v, want %v", i, flat[i].Length, w)
		}
	}
}
