package desk

import (
	"bytes"
	"cmp"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// TestHelpPictures makes the pictures of the help anew, in the folder that
// STUDBAY_PICTURES names; "make pictures" calls it. They are made of the demo cottage.
func TestHelpPictures(t *testing.T) {
	folder := os.Getenv("STUDBAY_PICTURES")
	if folder == "" {
		t.Skip("pictures are made by make pictures")
	}
	b := newBench(t)
	b.window.Resize(fyne.NewSize(1000, 640))
	b.prefs.SetMode(look.LightMode)
	b.prefs.SetLanguage("en")
	b.house.applyTheme()
	b.house.rebuildAll()
	b.run("demo")
	b.run("command.units-imperial")
	b.checked()
	cottage := b.doc().Plan()
	whole := func() fyne.CanvasObject { return b.window.Canvas().Content() }
	for _, p := range []struct {
		file string
		show func()
		of   func() fyne.CanvasObject
	}{
		{"window.png", func() { b.choose(b.openingOf("switch")); b.view.goTo(b.doc().Selection()...) }, whole},
		{"card.png", func() { b.choose(b.found("box-fill").Opening) }, func() fyne.CanvasObject { return b.column.Object }},
		{"sheet.png", func() { b.run("export"); b.laidOut() }, b.dialog},
	} {
		b.staged(cottage)
		p.show()
		b.settled()
		b.picture(filepath.Join(folder, p.file), p.of())
	}
}

// settled waits until what is drawn beside the window has come: for a second nothing on
// it changes.
func (b *bench) settled() {
	b.t.Helper()
	looked := time.NewTicker(100 * time.Millisecond)
	defer looked.Stop()
	over := make(chan struct{})
	defer close(over)
	go func() { // a look is taken when something comes back, so something has to
		for {
			select {
			case <-looked.C:
				b.house.post(func() {})
			case <-over:
				return
			}
		}
	}()
	var last []byte
	since := time.Now()
	b.until("a picture that stays", func() bool {
		now := b.window.Canvas().Capture().(*image.NRGBA).Pix
		if !bytes.Equal(now, last) {
			last, since = now, time.Now()
		}
		return time.Since(since) > time.Second
	})
}

// picture writes what is to be seen of an object, in few colors so that it is small.
func (b *bench) picture(file string, of fyne.CanvasObject) {
	b.t.Helper()
	at, size := fyne.CurrentApp().Driver().AbsolutePositionForObject(of), of.Size()
	all := b.window.Canvas().Capture()
	part := image.Rect(int(at.X), int(at.Y), int(at.X+size.Width), int(at.Y+size.Height)).Intersect(all.Bounds())
	small := image.NewPaletted(image.Rectangle{Max: part.Size()}, fewColors(all, part))
	draw.Draw(small, small.Bounds(), all, part.Min, draw.Src)
	out, err := os.Create(file)
	if err != nil {
		b.t.Fatal(err)
	}
	defer out.Close()
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(out, small); err != nil {
		b.t.Fatal(err)
	}
}

// fewColors returns the 256 colors that a part of a picture has most of.
func fewColors(img image.Image, part image.Rectangle) color.Palette {
	times := map[color.RGBA]int{}
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			c := color.RGBAModel.Convert(img.At(x, y)).(color.RGBA)
			times[c]++
		}
	}
	all := slices.SortedFunc(maps.Keys(times), func(a, b color.RGBA) int {
		return cmp.Or(times[b]-times[a], cmp.Compare(a.R, b.R), cmp.Compare(a.G, b.G), cmp.Compare(a.B, b.B))
	})
	var colors color.Palette
	for _, c := range all[:min(256, len(all))] {
		colors = append(colors, c)
	}
	return colors
}
