package rendertest

import (
	"bytes"
	"context"
	"testing"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	painter "studbay/render/paint/png"
	"studbay/render/picturetest"
	"studbay/render/scene"
)

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

// Golden compares a picture with the one that the test's package keeps.
func Golden(t testing.TB, name string, dpi int, s *scene.Scene) {
	t.Helper()
	var got bytes.Buffer
	if err := painter.Encode(context.Background(), &got, s, painter.Options{DPI: dpi}); err != nil {
		t.Fatal(err)
	}
	picturetest.Kept(t, name, got.Bytes())
}
