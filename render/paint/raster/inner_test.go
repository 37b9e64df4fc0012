package raster

import (
	"image"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

// anyShape returns a path of up to three parts that may cross themselves and each other,
// of upright edges or of any.
func anyShape(t *rapid.T) (path scene.Path) {
	upright := rapid.Bool().Draw(t, "upright")
	place := rapid.Custom(func(t *rapid.T) float64 {
		if rapid.Bool().Draw(t, "whole") {
			return float64(rapid.IntRange(-10, 90).Draw(t, "at"))
		}
		return rapid.Float64Range(-10, 90).Draw(t, "at")
	})
	for range rapid.IntRange(1, 3).Draw(t, "parts") {
		at := scene.Point{X: place.Draw(t, "x"), Y: place.Draw(t, "y")}
		path.MoveTo(at)
		for i := range rapid.IntRange(2, 8).Draw(t, "corners") {
			next := scene.Point{X: place.Draw(t, "x"), Y: place.Draw(t, "y")}
			if upright && i%2 == 0 {
				next.Y = at.Y
			} else if upright {
				next.X = at.X
			}
			path.LineTo(next)
			at = next
		}
		path.Close()
	}
	return path
}

// TestShapeIsAsFilledByGGAlone holds the short cut through the inside against doing
// without, pixel by pixel.
func TestShapeIsAsFilledByGGAlone(t *testing.T) {
	boxes := 0
	rapid.Check(t, func(t *rapid.T) {
		d := New(1, scene.Point{})
		scene.Paint(d, scene.Fill{Path: anyShape(t), Color: scene.Color{R: 0x12, G: 0x99, B: 0xfe, A: 0xff}})
		got, want := blank(80, 80), blank(80, 80)
		d.Draw(got, image.Point{}, nil)
		for i := range d.ops {
			boxes += len(d.ops[i].insides)
			d.ops[i].insides = nil
		}
		d.Draw(want, image.Point{}, nil)
		for y := range 80 {
			for x := range 80 {
				if g, w := got.RGBAAt(x, y), want.RGBAAt(x, y); g != w {
					t.Fatalf("pixel %v is %v, want %v", image.Pt(x, y), g, w)
				}
			}
		}
	})
	if boxes < 5 {
		t.Errorf("only %d boxes were taken at once: nothing was tried", boxes)
	}
}

func TestInsides(t *testing.T) {
	whole, hole := box(1.5, 2, 98.25, 61), box(20, 20.5, 60, 50)
	withHole := whole.Path()
	withHole.MoveTo(hole.Min)
	withHole.LineTo(scene.Point{X: hole.Min.X, Y: hole.Max.Y})
	withHole.LineTo(hole.Max)
	withHole.LineTo(scene.Point{X: hole.Max.X, Y: hole.Min.Y})
	withHole.Close()
	see := scene.Color{A: 0x80}
	for _, tt := range []struct {
		name string
		fill scene.Fill
		want []image.Rectangle
	}{
		{"a rectangle", scene.Fill{Path: whole.Path(), Color: black}, []image.Rectangle{image.Rect(2, 2, 98, 61)}},
		{"with a hole", scene.Fill{Path: withHole, Color: black}, []image.Rectangle{
			image.Rect(2, 2, 98, 20), image.Rect(2, 21, 20, 50), image.Rect(60, 21, 98, 50), image.Rect(2, 50, 98, 61),
		}},
		{"slanted to the right", scene.Fill{Path: scene.Polygon(
			scene.Point{}, scene.Point{X: 30}, scene.Point{X: 40, Y: 20}, scene.Point{X: 10, Y: 20}), Color: black,
		}, []image.Rectangle{image.Rect(11, 0, 29, 20)}},
		{"half transparent", scene.Fill{Path: whole.Path(), Color: see}, nil},
		{"small", scene.Fill{Path: box(1, 1, 8, 8).Path(), Color: black}, nil},
	} {
		d := New(1, scene.Point{})
		scene.Paint(d, tt.fill)
		var got []image.Rectangle
		for _, b := range d.ops[0].insides {
			got = append(got, b.Rectangle)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: insides %v, want %v", tt.name, got, tt.want)
		}
	}
}
