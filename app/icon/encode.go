package icon

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"math"
	"strconv"
	"strings"

	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// PNG returns the picture with a side of so many pixels, transparent around it. The
// same picture is the same bytes each time.
func (p Picture) PNG(size int) ([]byte, error) {
	im := image.NewRGBA(image.Rect(0, 0, size, size))
	raster.Items(im, float64(size)/Side, scene.Point{}, p.Items(size)...)
	var out bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, im); err != nil {
		return nil, fmt.Errorf("picture %s at %d pixels: %w", p.Name, size, err)
	}
	return out.Bytes(), nil
}

// SVG returns the picture as a drawing that scales freely (SVG 1.1, paths alone).
func (p Picture) SVG() []byte {
	w := &writer{}
	fmt.Fprintf(w, `<svg xmlns="http://www.w3.org/2000/svg" width="%[1]d" height="%[1]d" viewBox="0 0 %[1]d %[1]d">`+"\n", Side)
	scene.Paint(w, p.Items(Side)...)
	w.WriteString("</svg>\n")
	return []byte(w.String())
}

var _ scene.Painter = (*writer)(nil)

// writer writes fills as elements of an SVG. The pictures are made of nothing else.
type writer struct{ strings.Builder }

// Fill implements scene.Painter.
func (w *writer) Fill(p scene.Path, c scene.Color) {
	fmt.Fprintf(w, `  <path fill="#%02x%02x%02x" d="`, c.R, c.G, c.B)
	letters := map[scene.Op]string{scene.MoveOp: "M", scene.LineOp: "L", scene.CubicOp: "C", scene.CloseOp: "Z"}
	gap := ""
	p.Each(func(op scene.Op, points []scene.Point) {
		w.WriteString(gap + letters[op])
		gap = " "
		for _, q := range points {
			w.WriteString(" " + number(q.X) + " " + number(q.Y))
		}
	})
	w.WriteString("\"/>\n")
}

// number writes a coordinate to a thousandth of a unit.
func number(v float64) string {
	return strconv.FormatFloat(math.Round(v*1000)/1000+0, 'f', -1, 64) // no minus zero
}

// Stroke implements scene.Painter.
func (w *writer) Stroke(scene.Path, scene.Pen) { panic("icon: a picture has a stroke") }

// Text implements scene.Painter.
func (w *writer) Text(scene.Run) { panic("icon: a picture has text") }

// Begin implements scene.Painter.
func (w *writer) Begin(scene.Layer) {}

// End implements scene.Painter.
func (w *writer) End() {}

// Close implements scene.Painter.
func (w *writer) Close() error { return nil }
