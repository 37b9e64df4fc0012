package icon

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	kept "studbay/assets/icon"
	"studbay/render"
	"studbay/render/scene"
)

// TestKeptPicturesAreThoseDrawn holds assets/icon to the drawing: pixel by pixel, as
// another release of Go may pack the same picture otherwise.
func TestKeptPicturesAreThoseDrawn(t *testing.T) {
	for _, p := range Pictures {
		folder := filepath.Join("..", "..", "assets", "icon")
		for _, size := range Sizes {
			file := filepath.Join(folder, p.Name, fmt.Sprintf("%d.png", size))
			data, err := os.ReadFile(file)
			if err != nil {
				t.Error(err)
				continue
			}
			if got, want := decode(t, data), paint(t, p, size); !same(got, want) {
				t.Errorf("%s is not what is drawn now: go run ./app/icon/gen", file)
			}
		}
		data, err := kept.Files.ReadFile(p.Name + ".svg")
		if err != nil || !bytes.Equal(data, p.SVG()) {
			t.Errorf("%s.svg is not what is drawn now (%v): go run ./app/icon/gen", p.Name, err)
		}
	}
	if got := decode(t, kept.App).Bounds(); got != image.Rect(0, 0, 256, 256) {
		t.Errorf("icon.App is of %v, want 256 pixels a side", got)
	}
}

// TestSmallPicturesAreSharp holds what must be told apart at a glance, at every size:
// stud, box, the gap between box and stud, a hole in the box, the cable. Each has a
// pixel of its very colour, which no blurred edge has. The large ones are sharp anyway.
func TestSmallPicturesAreSharp(t *testing.T) {
	colors := map[string]scene.Color{
		"paper": render.Light.Paper, "stud": render.Light.Wall,
		"box": render.Light.Accent, "cable": render.Light.Contents.Conductor,
	}
	for _, p := range Pictures {
		for _, size := range Sizes[:6] {
			im := paint(t, p, size)
			for name, c := range colors {
				if !has(im, c) {
					t.Errorf("%s at %d pixels has no pixel in the colour of its %s", p.Name, size, name)
				}
			}
			if _, _, _, a := im.At(size-1, 0).RGBA(); a > 0x8000 {
				t.Errorf("%s at %d pixels: its corner is inked (%#x) and does not fit any ground", p.Name, size, a)
			}
			if got := bands(im, size); got != "stud box paper box paper stud" {
				t.Errorf("%s at %d pixels, through a hole of the box: %s", p.Name, size, got)
			}
		}
	}
}

// bands names the colours from the first stud to the last in the row of pixels that
// passes most of them.
func bands(im image.Image, size int) string {
	names := map[color.RGBA]string{
		rgba(render.Light.Wall): "stud", rgba(render.Light.Accent): "box", rgba(render.Light.Paper): "paper",
	}
	most := ""
	for y := range size {
		row, last := "", ""
		for x := range size {
			name := names[color.RGBAModel.Convert(im.At(x, y)).(color.RGBA)]
			if name == "" || name == last || row == "" && name != "stud" {
				continue
			}
			if row != "" {
				row += " "
			}
			row, last = row+name, name
		}
		row = strings.TrimSuffix(row, " paper") // beyond the last stud
		if len(row) > len(most) {
			most = row
		}
	}
	return most
}

func has(im image.Image, c scene.Color) bool {
	want := rgba(c)
	for y := im.Bounds().Min.Y; y < im.Bounds().Max.Y; y++ {
		for x := im.Bounds().Min.X; x < im.Bounds().Max.X; x++ {
			if color.RGBAModel.Convert(im.At(x, y)) == want {
				return true
			}
		}
	}
	return false
}

func rgba(c scene.Color) color.RGBA { return color.RGBA(c) }

func same(a, b *image.NRGBA) bool { return a.Rect == b.Rect && bytes.Equal(a.Pix, b.Pix) }

func paint(t *testing.T, p Picture, size int) *image.NRGBA {
	t.Helper()
	data, err := p.PNG(size)
	if err != nil {
		t.Fatal(err)
	}
	return decode(t, data)
}

func decode(t *testing.T, data []byte) *image.NRGBA {
	t.Helper()
	im, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	plain := image.NewNRGBA(im.Bounds())
	draw.Draw(plain, plain.Rect, im, im.Bounds().Min, draw.Src)
	return plain
}
