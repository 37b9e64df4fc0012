package raster

import (
	"image"
	"image/color"
	"image/draw"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

var black = scene.Color{A: 0xff}

func blank(w, h int) *image.RGBA {
	im := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(im, im.Rect, image.White, image.Point{}, draw.Src)
	return im
}

func box(x0, y0, x1, y1 float64) scene.Rect {
	return scene.Rect{Min: scene.Point{X: x0, Y: y0}, Max: scene.Point{X: x1, Y: y1}}
}

func TestPieceByPieceIsTheSameAsWhole(t *testing.T) {
	middle := scene.Point{X: 30.3, Y: 20.2}
	clip := box(10.2, 11, 40, 30)
	pen := scene.Pen{Width: 4, Color: scene.Color{A: 0x80}}
	dashes := pen
	dashes.Dash, dashes.Cap = []float64{7.7, 3}, scene.RoundCap
	bevel, wide := dashes, pen
	bevel.Join, wide.Width = scene.BevelJoin, 70
	zigzag := scene.Polyline(scene.Point{X: 5.1, Y: 9.9}, scene.Point{X: 50, Y: 12}, scene.Point{X: 20.3, Y: 55.5})
	items := map[string]scene.Item{
		"disc":      scene.Fill{Path: scene.Circle(middle, 11.7), Color: black},
		"ring":      scene.Stroke{Path: scene.Circle(middle, 11.7), Pen: pen},
		"dashes":    scene.Stroke{Path: scene.Circle(middle, 11.7), Pen: dashes},
		"bevels":    scene.Stroke{Path: zigzag, Pen: bevel},
		"wide pen":  scene.Stroke{Path: zigzag, Pen: wide},
		"square":    scene.Stroke{Path: box(9.1, 8.2, 33.3, 40.4).Path(), Pen: pen},
		"text":      scene.Run{At: scene.Point{X: 10, Y: 25}, Text: "S1⅓½5", Size: 14, Color: black},
		"text up":   scene.Run{At: scene.Point{X: 10, Y: 25}, Text: "S1⅓½5", Size: 14, Color: black, Angle: 30},
		"in a clip": scene.Group{Layer: scene.Layer{Clip: &clip}, Items: []scene.Item{scene.Fill{Path: scene.Circle(middle, 11.7), Color: black}}},
	}
	for name, item := range items {
		t.Run(name, func(t *testing.T) {
			d := New(1, scene.Point{})
			scene.Paint(d, item)
			whole := blank(64, 64)
			d.Draw(whole, image.Point{}, nil)
			rapid.Check(t, func(t *rapid.T) { samePiece(t, d, whole) })
		})
	}
}

// TestWidePensPieceByPiece has joins whose curves reach far out of a piece.
func TestWidePensPieceByPiece(t *testing.T) {
	place := rapid.Custom(func(t *rapid.T) scene.Point {
		return scene.Point{X: rapid.Float64Range(-60, 260).Draw(t, "x"), Y: rapid.Float64Range(-60, 260).Draw(t, "y")}
	})
	rapid.Check(t, func(t *rapid.T) {
		pen := scene.Pen{Width: rapid.Float64Range(60, 240).Draw(t, "width"), Color: black}
		d := New(1, scene.Point{})
		scene.Paint(d, scene.Stroke{Path: scene.Polyline(rapid.SliceOfN(place, 3, 5).Draw(t, "points")...), Pen: pen})
		whole := blank(200, 200)
		d.Draw(whole, image.Point{}, nil)
		for range 4 {
			samePiece(t, d, whole)
		}
	})
}

// samePiece draws any piece of a drawing and compares it with that of the whole.
func samePiece(t *rapid.T, d *Drawing, whole *image.RGBA) {
	w, h := whole.Rect.Dx(), whole.Rect.Dy()
	part := image.Rect(
		rapid.IntRange(0, w-1).Draw(t, "x0"), rapid.IntRange(0, h-1).Draw(t, "y0"),
		rapid.IntRange(0, w).Draw(t, "x1"), rapid.IntRange(0, h).Draw(t, "y1"))
	if part.Empty() {
		return
	}
	got := blank(part.Dx(), part.Dy())
	d.Draw(got, part.Min, nil)
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			if g, w := got.RGBAAt(x-part.Min.X, y-part.Min.Y), whole.RGBAAt(x, y); g != w {
				t.Fatalf("pixel %d, %d of part %v is %v, of the whole %v", x, y, part, g, w)
			}
		}
	}
}

// TestInkByArithmetic compares pixels with coverage worked out by hand.
func TestInkByArithmetic(t *testing.T) {
	clip := box(0, 0, 5, 10)
	white := color.RGBA{R: 0xff, G: 0xff, B: 0xff, A: 0xff}
	grey := func(v uint8) color.RGBA { return color.RGBA{R: v, G: v, B: v, A: 0xff} }
	line := func(p scene.Pen) scene.Item {
		p.Width, p.Color = 2, black
		return scene.Stroke{Path: scene.LinePath(scene.Point{X: 2, Y: 5}, scene.Point{X: 8, Y: 5}), Pen: p}
	}
	for _, tt := range []struct {
		name  string
		scale float64
		item  scene.Item
		at    image.Point
		want  color.RGBA
	}{
		{"inside a box", 1, scene.Fill{Path: box(2, 2, 8, 8).Path(), Color: black}, image.Pt(2, 2), grey(0)},
		{"outside it", 1, scene.Fill{Path: box(2, 2, 8, 8).Path(), Color: black}, image.Pt(8, 8), white},
		{"half a pixel of it", 1, scene.Fill{Path: box(2, 2, 7.5, 8).Path(), Color: black}, image.Pt(7, 4), grey(127)},
		{"twice as large", 2, scene.Fill{Path: box(0, 0, 4, 4).Path(), Color: black}, image.Pt(7, 7), grey(0)},
		{"within a line's width", 1, line(scene.Pen{}), image.Pt(4, 4), grey(0)},
		{"beyond a blunt end", 1, line(scene.Pen{}), image.Pt(8, 5), white},
		{"at a square end", 1, line(scene.Pen{Cap: scene.SquareCap}), image.Pt(8, 5), grey(0)},
		{"in a gap", 1, line(scene.Pen{Dash: []float64{2, 2}}), image.Pt(4, 5), white},
		{"in the dash after it", 1, line(scene.Pen{Dash: []float64{2, 2}}), image.Pt(6, 5), grey(0)},
		{"a closed line's first corner", 1, scene.Stroke{Path: box(2, 2, 8, 8).Path(), Pen: scene.Pen{Width: 2, Color: black, Join: scene.RoundJoin}}, image.Pt(2, 2), grey(0)},
		{"cut by a clip", 1, scene.Group{Layer: scene.Layer{Clip: &clip}, Items: []scene.Item{line(scene.Pen{})}}, image.Pt(5, 4), white},
		{"left by a clip", 1, scene.Group{Layer: scene.Layer{Clip: &clip}, Items: []scene.Item{line(scene.Pen{})}}, image.Pt(4, 4), grey(0)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			im := blank(10, 10)
			Items(im, tt.scale, scene.Point{}, tt.item)
			got := im.RGBAAt(tt.at.X, tt.at.Y)
			if d := int(got.R) - int(tt.want.R); d < -1 || d > 1 || got.R != got.G {
				t.Errorf("pixel %v is %v, want %v", tt.at, got, tt.want)
			}
		})
	}
}

func TestClosedLineHasNoNotch(t *testing.T) {
	square := scene.Stroke{Path: box(5, 5, 25, 25).Path(), Pen: scene.Pen{Width: 6, Color: black}}
	im := blank(30, 30)
	Items(im, 1, scene.Point{}, square)
	for _, corner := range []image.Point{{3, 3}, {26, 3}, {3, 26}, {26, 26}} {
		if got, want := im.RGBAAt(corner.X, corner.Y), im.RGBAAt(26, 26); got.R > want.R+2 {
			t.Errorf("corner %v is %v, the others %v", corner, got, want)
		}
	}
}
