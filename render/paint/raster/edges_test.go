package raster

import (
	"image"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

// anyItem is a line, a shape or a text about a picture of 2100 × 90 pixels.
func anyItem(t *rapid.T) scene.Item {
	place := rapid.Custom(func(t *rapid.T) scene.Point {
		return scene.Point{X: rapid.Float64Range(-20, 2200).Draw(t, "x"), Y: rapid.Float64Range(-20, 120).Draw(t, "y")}
	})
	path := scene.Polyline(rapid.SliceOfN(place, 2, 5).Draw(t, "points")...)
	if rapid.Bool().Draw(t, "closed") {
		path.Close()
	}
	switch rapid.IntRange(0, 3).Draw(t, "kind") {
	case 0:
		return scene.Fill{Path: path, Color: black}
	case 1:
		return scene.Run{
			At: place.Draw(t, "at"), Text: "S1 ⅓½ gÇ", Color: black,
			Size:  rapid.Float64Range(5, mostStamped+20).Draw(t, "size"),
			Angle: rapid.Float64Range(0, 360).Draw(t, "angle"),
		}
	}
	pen := scene.Pen{
		Width: rapid.Float64Range(0.2, 20).Draw(t, "width"),
		Color: black,
		Cap:   rapid.SampledFrom([]scene.Cap{scene.ButtCap, scene.SquareCap, scene.RoundCap}).Draw(t, "cap"),
		Join:  rapid.SampledFrom([]scene.Join{scene.RoundJoin, scene.BevelJoin}).Draw(t, "join"),
	}
	if rapid.Bool().Draw(t, "dashed") {
		pen.Dash = []float64{7.7, 3}
	}
	return scene.Stroke{Path: path, Pen: pen}
}

func TestRowsDifferOnlyAtEdges(t *testing.T) {
	size := image.Pt(2100, 90)
	var e Edges
	differing, marked, all := 0, 0, 0
	rapid.Check(t, func(t *rapid.T) {
		d := New(1, scene.Point{})
		group := scene.Group{Items: rapid.SliceOfN(rapid.Custom(anyItem), 1, 3).Draw(t, "items")}
		if rapid.Bool().Draw(t, "clipped") {
			clip := box(300.2, 10.7, 1500, 70)
			group.Layer.Clip = &clip
		}
		scene.Paint(d, group)
		from := image.Pt(rapid.IntRange(-30, 60).Draw(t, "left"), rapid.IntRange(-30, 60).Draw(t, "top"))
		im := blank(size.X, size.Y)
		d.Draw(im, from, nil)
		d.Edges(&e, from, size)
		for y := 1; y < size.Y; y++ {
			row, above := e.Row(y), e.Row(y-1)
			for x := range size.X {
				all++
				tile := x / TileWidth
				may := (row[tile/64]|above[tile/64])>>(tile%64)&1 == 1
				if may {
					marked++
				}
				if im.RGBAAt(x, y) == im.RGBAAt(x, y-1) {
					continue
				}
				if differing++; !may {
					t.Fatalf("pixel %d, %d differs from the one above, no edge is said to be there", x, y)
				}
			}
		}
	})
	if differing == 0 || marked > all/4 {
		t.Errorf("of %d pixels %d differ from those above, %d are said to", all, differing, marked)
	}
}

func TestBits(t *testing.T) {
	for _, tt := range []struct {
		first, last int
		want        uint64
	}{
		{0, 63, ^uint64(0)},
		{-5, 70, ^uint64(0)},
		{3, 3, 1 << 3},
		{-64, 0, 1},
		{63, 127, 1 << 63},
	} {
		if got := run(tt.first, tt.last); got != tt.want {
			t.Errorf("bits %d to %d are %x, want %x", tt.first, tt.last, got, tt.want)
		}
	}
}
