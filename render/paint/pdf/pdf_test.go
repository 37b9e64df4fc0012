package pdf

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"studbay/plan/unit"
	"studbay/render/glyph"
	"studbay/render/scene"
)

var ink = scene.Color{R: 0x11, G: 0x11, B: 0x11, A: 0xff}

func run(x, y, points float64, text string) scene.Run {
	return scene.Run{At: scene.Point{X: x, Y: y}, Text: text, Size: points * scene.PointSize, Color: ink}
}

// pages are two, with all that a scene can hold: text in both weights and from the
// second font, turned text, dashes, half transparent ink, a clip, links.
func pages() []*scene.Scene {
	one := &scene.Scene{Width: 17 * unit.Inch, Height: 11 * unit.Inch, Meta: scene.Meta{Title: "Ground floor, openings ⅓"}}
	bold := run(30, 30, 14, "Kitchen corner ⅔ in")
	bold.Weight = glyph.Bold
	up := run(20, 120, 7, "reading upward")
	up.Angle = -90
	clip := scene.Rect{Min: scene.Point{X: 100, Y: 100}, Max: scene.Point{X: 120, Y: 120}}
	pale := ink
	pale.A = 0x60
	// A 10 ft wall at 1/4 in to the foot is 2.5 in long.
	wall := scene.Rect{Min: scene.Point{X: 50.8, Y: 50.8}, Max: scene.Point{X: 50.8 + 2.5*25.4, Y: 54}}
	one.Add(
		scene.Fill{Path: wall.Path(), Color: ink}, bold, up,
		run(30, 40, 6.5, "box short by 2.25 in³, 6'-4½\" ≤ 16 in"),
		scene.Stroke{Path: scene.Circle(scene.Point{X: 200, Y: 100}, 20), Pen: scene.Pen{Width: .5, Color: ink, Dash: []float64{2, 1}, Cap: scene.RoundCap}},
		scene.Fill{Path: scene.Circle(scene.Point{X: 210, Y: 100}, 20), Color: pale},
		scene.Group{Layer: scene.Layer{Clip: &clip, Link: "#Schedule"}, Items: []scene.Item{
			scene.Fill{Path: scene.Circle(scene.Point{X: 100, Y: 100}, 10), Color: ink},
		}},
		run(30, 200, 8, "after the clip"),
	)
	two := &scene.Scene{Width: unit.Inch * 17 / 2, Height: 11 * unit.Inch, Meta: scene.Meta{Title: "Schedule"}}
	two.Add(scene.Group{Layer: scene.Layer{Link: "https://example.com"}, Items: []scene.Item{run(20, 20, 9, "B5 duplex 26 in")}})
	return []*scene.Scene{one, two}
}

func encode(t *testing.T, pages []*scene.Scene) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := Encode(context.Background(), &out, pages, Options{Title: "Lake cottage ⅓"}); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// tool runs an outside program on the pages' file, or skips the test without it.
func tool(t *testing.T, pages []*scene.Scene, name string, args func(pdf, dir string) []string) (out, dir string) {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Skipf("needs %s (Debian: apt-get install poppler-utils qpdf)", name)
	}
	dir = t.TempDir()
	file := filepath.Join(dir, "sheet.pdf")
	if err := os.WriteFile(file, encode(t, pages), 0o644); err != nil {
		t.Fatal(err)
	}
	got, err := exec.Command(name, args(file, dir)...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, got)
	}
	return string(got), dir
}

func TestSameScenesSameBytes(t *testing.T) {
	first := encode(t, pages())
	for range 5 {
		if !bytes.Equal(first, encode(t, pages())) {
			t.Fatal("two files of the same scenes differ")
		}
	}
}

func TestFileIsSound(t *testing.T) {
	out, _ := tool(t, pages(), "qpdf", func(pdf, _ string) []string { return []string{"--check", pdf} })
	if strings.Contains(strings.ToUpper(out), "WARNING") || !strings.Contains(out, "No syntax or stream encoding errors found") {
		t.Errorf("qpdf --check says:\n%s", out)
	}
}

func TestTextCanBeSearched(t *testing.T) {
	out, _ := tool(t, pages(), "pdftotext", func(pdf, _ string) []string { return []string{"-layout", pdf, "-"} })
	for _, want := range []string{
		"Kitchen corner ⅔ in", "box short by 2.25 in³, 6'-4½\" ≤ 16 in", "after the clip", "B5 duplex 26 in",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in the text of the file:\n%s", want, out)
		}
	}
}

func TestFileSaysItsTitleAndPages(t *testing.T) {
	out, _ := tool(t, pages(), "pdfinfo", func(pdf, _ string) []string { return []string{"-l", "2", pdf} })
	for _, want := range []string{"Lake cottage ⅓", "Pages:           2", "1224 x 792 pts", "612 x 792 pts", "2000"} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in:\n%s", want, out)
		}
	}
}

func TestEachPageHasItsBookmark(t *testing.T) {
	out, _ := tool(t, pages(), "qpdf", func(pdf, _ string) []string { return []string{"--json", "--json-key=outlines", pdf} })
	for _, want := range []string{`"title": "Ground floor, openings ⅓"`, `"title": "Schedule"`, `"destpageposfrom1": 2`} {
		if !strings.Contains(out, want) {
			t.Errorf("no %s in:\n%s", want, out)
		}
	}
}

// rasterised returns the first page as poppler draws it, without smoothing.
func rasterised(t *testing.T, pages []*scene.Scene, dpi string) image.Image {
	t.Helper()
	_, dir := tool(t, pages, "pdftoppm", func(pdf, dir string) []string {
		return []string{"-r", dpi, "-png", "-f", "1", "-l", "1", "-aa", "no", "-aaVector", "no", pdf, filepath.Join(dir, "page")}
	})
	found, err := filepath.Glob(filepath.Join(dir, "page*.png"))
	if err != nil || len(found) != 1 {
		t.Fatalf("pictures %v, %v", found, err)
	}
	f, err := os.Open(found[0])
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	im, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return im
}

func red(im image.Image, x, y int) uint8 {
	r, _, _, _ := im.At(x, y).RGBA()
	return uint8(r >> 8)
}

func TestWallMeasuresItsLengthOnPaper(t *testing.T) {
	im := rasterised(t, pages(), "600")
	if got := im.Bounds().Size(); got.X != 10200 || got.Y != 6600 {
		t.Errorf("page is %v pixels at 600 dpi, want 17 by 11 in", got)
	}
	dark, y := 0, 1238 // 52.4 mm down, within the wall
	for x := range im.Bounds().Dx() {
		if red(im, x, y) < 0x80 {
			dark++
		}
	}
	// 10 ft at 1/4 in to the foot is 2.500 in, or 1500 pixels; arithmetic. The file
	// rounds to 0.01 pt, which may move either edge over a pixel's middle.
	if dark < 1499 || dark > 1501 {
		t.Errorf("the wall is %d pixels long at 600 dpi, want 1500", dark)
	}
}

// TestClipTakesBackWhatItChanged: ending a clip brings back the ink of before it, so
// the text after it must not be as pale as what came before.
func TestClipTakesBackWhatItChanged(t *testing.T) {
	im := rasterised(t, pages(), "100")
	darkest := uint8(0xff)
	for y := 780; y < 795; y++ { // round the baseline of "after the clip", 200 mm down
		for x := 110; x < 200; x++ {
			darkest = min(darkest, red(im, x, y))
		}
	}
	if darkest > ink.R+2 {
		t.Errorf("the darkest ink of the text is %#x, want %#x", darkest, ink.R)
	}
	if in, out := red(im, 406, 406), red(im, 390, 390); in > 0x20 || out < 0xf0 {
		t.Errorf("inside the clip %#x, outside %#x, want ink and paper", in, out)
	}
}

// TestNothingIsWrittenWhenCancelled, after any of the pages: after the last they are still
// to be packed.
func TestNothingIsWrittenWhenCancelled(t *testing.T) {
	all := len(pages())
	for at := 1; at <= all; at++ {
		ctx, cancel := context.WithCancel(context.Background())
		var out bytes.Buffer
		err := Encode(ctx, &out, pages(), Options{Progress: func(done, _ int) {
			if done == at {
				cancel()
			}
		}})
		if !errors.Is(err, context.Canceled) || out.Len() > 0 {
			t.Errorf("cancelled after page %d of %d: Encode = %v with %d bytes written, want the context's error and none", at, all, err, out.Len())
		}
	}
}

func TestStrangeTextDoesNotBreakTheFile(t *testing.T) {
	s := &scene.Scene{Width: 8 * unit.Inch, Height: 4 * unit.Inch}
	for i, text := range []string{"", "a\nb\tc", "(paren\\thesis)", "\xff bad utf-8", "𝄞 beyond", "مرحبا 你好"} {
		s.Add(run(10, 10+8*float64(i), 9, text))
	}
	out, _ := tool(t, []*scene.Scene{s}, "qpdf", func(pdf, _ string) []string { return []string{"--check", pdf} })
	if strings.Contains(strings.ToUpper(out), "WARNING") {
		t.Errorf("qpdf --check says:\n%s", out)
	}
}

// Text after a clip has its own colour, even where the last fill in the clip had the
// same and the last one before it another: a library that takes the two for one and
// writes nothing leaves white letters on white paper.
func TestTextAfterAClipIsInked(t *testing.T) {
	page := &scene.Scene{Width: 4 * unit.Inch, Height: 4 * unit.Inch}
	box := scene.Rect{Min: scene.Point{X: 5, Y: 5}, Max: scene.Point{X: 20, Y: 20}}
	white := scene.Color{R: 0xff, G: 0xff, B: 0xff, A: 0xff}
	page.Add(
		scene.Fill{Path: box.Path(), Color: white},
		scene.Group{Layer: scene.Layer{Clip: &box}, Items: []scene.Item{scene.Fill{Path: box.Expanded(-5).Path(), Color: ink}}},
		run(10, 60, 40, "MMM"),
	)
	pic := rasterised(t, []*scene.Scene{page}, "72")
	dark := 0
	for y := 110; y < 180; y++ {
		for x := range pic.Bounds().Dx() {
			if red(pic, x, y) < 0x80 {
				dark++
			}
		}
	}
	if dark < 200 {
		t.Errorf("%d dark pixels where three large letters stand", dark)
	}
}

// TestPagesAreNotScaledInPrint reads the catalogue by another reader: a viewer is asked to
// print pages at their size (ISO 32000-1, table 150).
func TestPagesAreNotScaledInPrint(t *testing.T) {
	data := encode(t, pages())
	if !bytes.Contains(data, []byte("/ViewerPreferences <</PrintScaling /None>>")) {
		t.Error("nothing says that pages are printed at their size")
	}
	tool, err := exec.LookPath("qpdf")
	if err != nil {
		t.Skip("qpdf is not here")
	}
	file := filepath.Join(t.TempDir(), "out.pdf")
	if err := os.WriteFile(file, data, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(tool, "--json", file).CombinedOutput()
	if err != nil || !bytes.Contains(out, []byte(`"/PrintScaling": "/None"`)) {
		t.Errorf("another reader finds no print scaling, %v", err)
	}
}

// TestPagesOfAllPartsAreWhole reads a file of more pages than are held at a time by other
// readers: its text, how it is built, and how ink looks that is half transparent on one page
// of each part.
func TestPagesOfAllPartsAreWhole(t *testing.T) {
	var set []*scene.Scene
	pale, full := ink, ink
	pale.A = 0x80
	box := scene.Rect{Max: scene.Point{X: 40, Y: 40}}
	for i := range 2*partPages + 3 {
		s := &scene.Scene{Width: 4 * unit.Inch, Height: 4 * unit.Inch, Meta: scene.Meta{Title: fmt.Sprintf("Sheet %d", i+1)}}
		letter := string(rune('A' + i%26)) // some letters are first used in a later part
		s.Add(run(10, 60, 9, fmt.Sprintf("leaf %d %s", i+1, letter)))
		c := full
		if i%partPages == 1 {
			c = pale
		}
		s.Add(scene.Fill{Path: box.Path(), Color: c})
		s.Add(scene.Group{Layer: scene.Layer{Link: "#Sheet 1"}, Items: []scene.Item{run(10, 80, 9, "to the first")}})
		set = append(set, s)
	}
	out, dir := tool(t, set, "pdftotext", func(pdf, _ string) []string { return []string{"-layout", pdf, "-"} })
	for i := range set {
		if want := fmt.Sprintf("leaf %d %c\n", i+1, 'A'+i%26); !strings.Contains(out, want) {
			t.Errorf("no %q in the text", want)
		}
	}
	file := filepath.Join(dir, "sheet.pdf")
	if said, err := exec.Command("qpdf", "--check", file).CombinedOutput(); err != nil || strings.Contains(strings.ToUpper(string(said)), "WARNING") {
		t.Errorf("qpdf --check: %v\n%s", err, said)
	}
	for _, page := range []int{2, partPages + 1, partPages + 2, 2*partPages + 2} {
		args := []string{"-r", "72", "-png", "-singlefile", "-f", fmt.Sprint(page), "-l", fmt.Sprint(page), file, filepath.Join(dir, "one")}
		if said, err := exec.Command("pdftoppm", args...).CombinedOutput(); err != nil {
			t.Fatalf("pdftoppm: %v\n%s", err, said)
		}
		f, err := os.Open(filepath.Join(dir, "one.png"))
		if err != nil {
			t.Fatal(err)
		}
		im, err := png.Decode(f)
		f.Close()
		if err != nil {
			t.Fatal(err)
		}
		want := int(ink.R) // and half of it on white paper, by arithmetic
		if (page-1)%partPages == 1 {
			want = (int(ink.R)*0x80 + 0xff*0x7f) / 0xff
		}
		if got := int(red(im, 50, 50)); got < want-3 || got > want+3 {
			t.Errorf("page %d is inked %#x, want %#x", page, got, want)
		}
	}
}
