package paint_test

import (
	"context"
	"fmt"
	"io"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/render/paint/pdf"
	"studbay/render/paint/png"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/sheet"
)

// What is drawn: a house of common size as one sheet, and a large one as a set.
const (
	common = 200
	large  = 1000
)

// sheets returns the sheets of a house with so many openings, 36 × 24 in.
func sheets(t testing.TB, openings int) []*scene.Scene {
	t.Helper()
	ix, result := checked(t, openings)
	return laidOut(t, ix, result, "archd")
}

// checked is a house with so many openings and what is found in it.
func checked(t testing.TB, openings int) (*index.Index, fill.Result) {
	t.Helper()
	ix := index.New(plantest.House(1, openings))
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return ix, result
}

func laidOut(t testing.TB, ix *index.Index, result fill.Result, name string) []*scene.Scene {
	t.Helper()
	paper, err := paper.Named(name)
	if err != nil {
		t.Fatal(err)
	}
	pages, err := sheet.Build(ix, result, sheet.Options{Paper: paper})
	if err != nil {
		t.Fatal(err)
	}
	return pages
}

// BenchmarkSheet draws the plan's sheet at 300 dpi beside the blank page, by our encoder,
// which passes over what is blank, and by one that does not; and beside librsvg as a
// whole process.
func BenchmarkSheet(b *testing.B) {
	page := sheets(b, common)[0]
	blank := &scene.Scene{Width: page.Width, Height: page.Height}
	for _, bb := range []struct {
		name string
		s    *scene.Scene
	}{{"blank", blank}, {"png", page}} {
		b.Run(bb.name, func(b *testing.B) {
			encodePNG(b, bb.s, 30) // loads the letters
			for b.Loop() {
				encodePNG(b, bb.s, png.DefaultDPI)
			}
		})
	}
	b.Run("plain", func(b *testing.B) {
		for b.Loop() {
			blankPlainly(b, blank, png.DefaultDPI)
		}
	})
	b.Run("librsvg", func(b *testing.B) {
		d := newDrawer(b)
		files := d.pages(b, []*scene.Scene{page})
		d.draw(b, "png", 30, files) // lists the fonts
		for b.Loop() {
			d.draw(b, "png", png.DefaultDPI, files)
		}
	})
}

// BenchmarkSet draws all sheets as one PDF, beside librsvg doing so.
func BenchmarkSet(b *testing.B) {
	pages := sheets(b, large)
	b.Run("pdf", func(b *testing.B) {
		for b.Loop() {
			if err := pdf.Encode(context.Background(), io.Discard, pages, pdf.Options{}); err != nil {
				b.Fatal(err)
			}
		}
		b.ReportMetric(float64(len(pages)), "sheets")
	})
	b.Run("librsvg", func(b *testing.B) {
		d := newDrawer(b)
		files := d.pages(b, pages)
		d.draw(b, "pdf", 72, files[:1])
		for b.Loop() {
			d.draw(b, "pdf", 72, files)
		}
	})
}

// BenchmarkLaidOut lays out all sheets on common paper and writes them as one PDF.
func BenchmarkLaidOut(b *testing.B) {
	for _, n := range []int{2000, 10_000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			ix, result := checked(b, n)
			for b.Loop() {
				pages := laidOut(b, ix, result, "tabloid")
				if err := pdf.Encode(context.Background(), io.Discard, pages, pdf.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func encodePNG(b *testing.B, s *scene.Scene, dpi int) {
	b.Helper()
	if err := png.Encode(context.Background(), io.Discard, s, png.Options{DPI: dpi}); err != nil {
		b.Fatal(err)
	}
}
