package raster

import (
	"image"
	"math"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

// centre returns the ink of a picture and where its middle is.
func centre(im *image.RGBA) (mass, x, y float64) {
	for py := range im.Rect.Dy() {
		for px := range im.Rect.Dx() {
			m := 1 - float64(im.RGBAAt(px, py).R)/0xff
			mass, x, y = mass+m, x+m*float64(px), y+m*float64(py)
		}
	}
	return mass, x / mass, y / mass
}

// TestLetterIsItsOutline holds a letter against its outline filled as any shape is.
func TestLetterIsItsOutline(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := scene.Run{
			At:    scene.Point{X: rapid.Float64Range(80, 120).Draw(t, "x"), Y: rapid.Float64Range(80, 120).Draw(t, "y")},
			Text:  rapid.SampledFrom([]string{"S", "g", "½", "⅓", "W", "Ç"}).Draw(t, "letter"),
			Size:  rapid.Float64Range(12, mostStamped+10).Draw(t, "size"),
			Angle: rapid.SampledFrom([]float64{0, 90, 270, 33}).Draw(t, "angle"),
			Color: black,
		}
		got, want := blank(200, 200), blank(200, 200)
		Items(got, 1, scene.Point{}, r)
		Items(want, 1, scene.Point{}, scene.Fill{Path: r.Outline(), Color: black})
		mass, x, y := centre(got)
		wantMass, wantX, wantY := centre(want)
		if math.Abs(mass-wantMass) > 0.03*wantMass {
			t.Errorf("the ink is %.2f pixels, want %.2f", mass, wantMass)
		}
		const off = 0.5/phases + 0.05 // and as much for the grid, the flattening and the ink's shades
		if math.Abs(x-wantX) > off || math.Abs(y-wantY) > off {
			t.Errorf("the middle is at %.3f, %.3f, want %.3f, %.3f", x, y, wantX, wantY)
		}
	})
}
