package rendertest

import (
	"bytes"
	"context"
	"flag"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	painter "studbay/render/paint/png"
	"studbay/render/scene"
)

var update = flag.Bool("update", false, "write the golden pictures anew")

// Everything is a clip around any plan.
var Everything = geom.Box{
	Min: geom.Point{X: -1000 * unit.Foot, Y: -1000 * unit.Foot}, Max: geom.Point{X: 1000 * unit.Foot, Y: 1000 * unit.Foot},
}

// BoardOf returns the board that the cottage is shown on.
func BoardOf(theme render.Theme) render.Medium {
	return render.BoardMedium(2.0/25.4, 1, theme, words.Voice{}).Centred(At(-90, -20), scene.Point{})
}

// SheetOf returns the sheet that the cottage is shown on.
func SheetOf() render.Medium {
	return render.SheetMedium(unit.Inch/4, unit.Foot, render.Print, words.Voice{}).Centred(At(-90, -20), scene.Point{})
}

// Page is a scene of pieces, shown on a board of pixels or on paper.
func Page(m render.Medium, width, height float64, pieces []render.Piece) *scene.Scene {
	perUnit := 1.0
	if m.Kind == render.Board {
		perUnit = 25.4 / 96 // a pixel at 96 dpi
	}
	s := &scene.Scene{
		Width: unit.FromMillimetres(width * perUnit), Height: unit.FromMillimetres(height * perUnit), Paper: m.Theme.Paper,
	}
	for _, it := range render.Items(pieces) {
		s.Add(scaled(it, perUnit))
	}
	return s
}

// scaled takes an item of a board into the millimetres that painters of pages want.
func scaled(it scene.Item, k float64) scene.Item {
	t := scene.Scaling(k, scene.Point{})
	pen := func(p scene.Pen) scene.Pen {
		p.Width *= k
		dash := make([]float64, len(p.Dash))
		for i, d := range p.Dash {
			dash[i] = d * k
		}
		p.Dash = dash
		return p
	}
	switch it := it.(type) {
	case scene.Stroke:
		return scene.Stroke{Path: it.Path.Placed(t), Pen: pen(it.Pen)}
	case scene.Fill:
		return scene.Fill{Path: it.Path.Placed(t), Color: it.Color}
	case scene.Run:
		it.At, it.Size = it.At.Mul(k), it.Size*k
		return it
	}
	return it
}

// Golden compares a picture with the one kept; with -update it keeps it.
func Golden(t testing.TB, name string, dpi int, s *scene.Scene) {
	t.Helper()
	var got bytes.Buffer
	if err := painter.Encode(context.Background(), &got, s, painter.Options{DPI: dpi}); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(file, got.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	kept, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if share := differing(decode(t, kept), decode(t, got.Bytes())); share > 0.0005 {
		failed := filepath.Join(t.TempDir(), name)
		_ = os.WriteFile(failed, got.Bytes(), 0o644)
		t.Errorf("%s: %.2f %% of the pixels differ from the kept picture", name, 100*share)
	}
}

func decode(t testing.TB, data []byte) image.Image {
	t.Helper()
	picture, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return picture
}

// differing returns the share of pixels that differ plainly: another machine's floats
// may move the edge of a line by a shade.
func differing(a, b image.Image) float64 {
	if a.Bounds() != b.Bounds() {
		return 1
	}
	count := 0
	for y := a.Bounds().Min.Y; y < a.Bounds().Max.Y; y++ {
		for x := a.Bounds().Min.X; x < a.Bounds().Max.X; x++ {
			if unlike(a.At(x, y), b.At(x, y)) {
				count++
			}
		}
	}
	return float64(count) / float64(a.Bounds().Dx()*a.Bounds().Dy())
}

func unlike(a, b interface{ RGBA() (r, g, b, a uint32) }) bool {
	ar, ag, ab, _ := a.RGBA()
	br, bg, bb, _ := b.RGBA()
	apart := func(x, y uint32) bool { return max(x, y)-min(x, y) > 24<<8 }
	return apart(ar, br) || apart(ag, bg) || apart(ab, bb)
}
