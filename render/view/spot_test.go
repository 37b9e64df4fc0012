package view

import (
	"math"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// A spot shows where a camera, a pinhole, throws it, and is read back from there: a wall to
// 1/100 in of a length and a height, a ceiling of its point.
func TestSpotsAreReadBackFromThePicture(t *testing.T) {
	b := rendertest.NewBuilder(t)
	room := b.Box("Den", plan.UseDen, 0, 0, 144, 120)
	o := b.On("D1", "duplex", room, 0, 36, 16)
	light := b.Ceiling("D2", "ceiling-light", room, 72, 30)
	m, _ := New(b.Index(), room.ID, Style{Theme: render.Light, Pixel: 1})
	c := m.Toward(m.Start(1000, 700), o.ID)
	off := func(a, b unit.Length) float64 { return math.Abs((a - b).Millimetres()) / 25.4 }
	for _, want := range []Spot{
		{o.At, rendertest.In(16)}, {plan.OnFace(o.At.Host, rendertest.In(50)), rendertest.In(42)}, {plan.OnFace(o.At.Host, rendertest.In(20)), rendertest.In(66)},
	} {
		at, ok := m.Project(c, want)
		if !ok {
			t.Fatalf("%+v does not show", want)
		}
		got, ok := m.Spot(c, at, plan.PartFace)
		if !ok || got.At.Host != want.At.Host || off(got.At.Along, want.At.Along) > 0.01 || off(got.Height, want.Height) > 0.01 {
			t.Errorf("%+v is read back as %+v (%v)", want, got, ok)
		}
	}
	if at, _ := m.Project(c, Spot{o.At, rendertest.In(16)}); math.Hypot(at.X-markOf(t, m.Draw(c), o.ID).At.X, at.Y-markOf(t, m.Draw(c), o.ID).At.Y) > 5 {
		t.Errorf("the opening's own place shows at %v, its plate at %v", at, markOf(t, m.Draw(c), o.ID).At)
	}
	c = m.Toward(c, light.ID)
	at, ok := m.Project(c, Spot{At: light.At})
	if !ok {
		t.Skip("the light is behind the eye")
	}
	got, ok := m.Spot(c, at, plan.PartCeiling)
	if !ok || got.At.Host != room.ID || off(got.At.At.X, light.At.At.X) > 0.01 || off(got.At.At.Y, light.At.At.Y) > 0.01 || got.Height != 0 {
		t.Errorf("the light is read back as %+v (%v)", got, ok)
	}
	for name, at := range map[string]scene.Point{"the floor": {X: 500, Y: 699}, "a wall": {X: 500, Y: 300}} {
		if got, ok := m.Spot(c, at, plan.PartCeiling); ok && name == "the floor" {
			t.Errorf("%s is read as the ceiling at %+v", name, got)
		}
	}
	if got, ok := m.Spot(c, scene.Point{X: 500, Y: 699}, plan.PartFace); ok {
		t.Errorf("the floor at one's feet is read as a wall at %+v", got)
	}
	if _, ok := m.Project(c, Spot{At: plan.OnFace("s99999999", 0)}); ok {
		t.Error("a face of no room shows")
	}
}
