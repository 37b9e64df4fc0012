package raster

import (
	"image"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

// A rectangle comes out as one with a further point on an edge, which is drawn as any
// other shape is.
func TestRectangleIsAsAnyOtherShape(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		place := rapid.Float64Range(-3, 13)
		r := box(place.Draw(t, "left"), place.Draw(t, "top"), place.Draw(t, "right"), place.Draw(t, "bottom"))
		ink := scene.Color{R: 0x12, G: 0x99, B: 0xfe, A: 0xff}
		q := []scene.Point{r.Min, {X: r.Max.X, Y: r.Min.Y}, r.Max, {X: r.Min.X, Y: r.Max.Y}}
		if rapid.Bool().Draw(t, "turned") {
			q[1], q[3] = q[3], q[1]
		}
		middle := q[0].Add(q[1]).Mul(0.5)
		at := scene.Point{X: rapid.Float64Range(-1, 1).Draw(t, "moved")}
		got, want := blank(10, 11), blank(10, 11)
		Items(got, 1, at, scene.Fill{Path: scene.Polygon(q...), Color: ink})
		Items(want, 1, at, scene.Fill{Path: scene.Polygon(q[0], middle, q[1], q[2], q[3]), Color: ink})
		for y := range 11 {
			for x := range 10 {
				if g, w := got.RGBAAt(x, y), want.RGBAAt(x, y); g != w {
					t.Fatalf("pixel %v is %v, want %v", image.Pt(x, y), g, w)
				}
			}
		}
	})
}

func TestWhichShapesAreRectangles(t *testing.T) {
	a := box(1, 2, 8, 9)
	see := scene.Color{A: 0x80}
	for _, tt := range []struct {
		name string
		fill scene.Fill
		want bool
	}{
		{"upright", scene.Fill{Path: a.Path(), Color: black}, true},
		{"left open", scene.Fill{Path: scene.Polyline(a.Min, scene.Point{X: 8, Y: 2}, a.Max, scene.Point{X: 1, Y: 9}), Color: black}, true},
		{"half transparent", scene.Fill{Path: a.Path(), Color: see}, false},
		{"slanted", scene.Fill{Path: scene.Polygon(a.Min, scene.Point{X: 8, Y: 3}, a.Max, scene.Point{X: 1, Y: 9}), Color: black}, false},
		{"crossed", scene.Fill{Path: scene.Polygon(a.Min, scene.Point{X: 8, Y: 2}, scene.Point{X: 1, Y: 9}, a.Max), Color: black}, false},
		{"three corners", scene.Fill{Path: scene.Polygon(a.Min, scene.Point{X: 8, Y: 2}, a.Max), Color: black}, false},
		{"round", scene.Fill{Path: scene.Circle(a.Min, 5), Color: black}, false},
	} {
		d := New(1, scene.Point{X: 0.3})
		scene.Paint(d, tt.fill)
		if _, got := d.ops[0].rectangle(); got != tt.want {
			t.Errorf("%s: a rectangle: %v, want %v", tt.name, got, tt.want)
		}
	}
}
