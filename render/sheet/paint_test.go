package sheet

import (
	"bytes"
	"context"
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/layout"
	"studbay/render/paint"
	"studbay/render/paper"
	"studbay/render/picturetest"
	"studbay/render/scene"
)

// save paints pages as a file of a fresh folder and returns its name.
func save(t *testing.T, pages []*scene.Scene, name string, o paint.Options) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), name)
	if _, err := paint.Save(context.Background(), file, pages, o); err != nil {
		t.Fatal(err)
	}
	return file
}

// run runs a tool on a file, or skips where it is not installed.
func run(t *testing.T, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Skipf("%s is not installed", name)
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s %s: %v\n%s", name, strings.Join(args, " "), err, out)
	}
	return string(out)
}

// TestPageLooksAsKept compares a page with the picture that was looked at.
func TestPageLooksAsKept(t *testing.T) {
	page := build(t, plantest.House(2, 38), Options{})[:1]
	got, err := os.ReadFile(save(t, page, "page.png", paint.Options{DPI: 72}))
	if err != nil {
		t.Fatal(err)
	}
	picturetest.Kept(t, "page.png", got)
}

// TestWallIsTrueToScaleInPDF measures a room of 10 ft between its walls at 1/4 in to the
// foot: 2.500 in, 1500 pixels at 600 an inch.
func TestWallIsTrueToScaleInPDF(t *testing.T) {
	scale, err := paper.ParseScale("1/4in=1ft")
	if err != nil {
		t.Fatal(err)
	}
	pages := build(t, square(t, 10*unit.Foot), Options{Scale: scale})[:1]
	file := save(t, pages, "wall.pdf", paint.Options{})
	stem := strings.TrimSuffix(file, ".pdf")
	// A band through the middle of the room is enough.
	run(t, "pdftoppm", "-r", "600", "-x", "0", "-W", "10200", "-y", "2600", "-H", "101", "-gray", "-png", "-singlefile", file, stem)
	data, err := os.ReadFile(stem + ".png")
	if err != nil {
		t.Fatal(err)
	}
	im, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	if got := between(im); got < 1499 || got > 1501 {
		t.Errorf("10 ft are %d pixels at 600 an inch, want 1500", got)
	}
}

// between returns the longest run of white between two runs of the grey of walls, along
// the row with most of that grey ends: one through the middle of the room.
func between(im image.Image) (most int) {
	isWall := func(x, y int) bool {
		r, _, _, _ := im.At(x, y).RGBA()
		wall := uint32(layout.Theme.Wall.R)
		return max(r>>8, wall)-min(r>>8, wall) < 8
	}
	b := im.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y += 50 {
		last, thick := -1, 0
		for x := b.Min.X; x < b.Max.X; x++ {
			if !isWall(x, y) {
				thick = 0
				continue
			}
			if thick++; thick < 20 {
				continue // a thin line is no wall
			}
			if gap := x - thick - last; last >= 0 && thick == 20 && gap > most {
				most = gap
			}
			last = x
		}
	}
	return most
}

func TestPDFIsSoundAndCanBeSearched(t *testing.T) {
	p := plantest.House(9, 64)
	file := save(t, build(t, p, Options{}), "house.pdf", paint.Options{Title: "House"})
	if out := run(t, "qpdf", "--check", file); strings.Contains(out, "WARNING") {
		t.Error(out)
	}
	words := map[string]bool{}
	for word := range strings.FieldsSeq(run(t, "pdftotext", "-layout", file, "-")) {
		words[word] = true
	}
	for _, o := range p.Openings() {
		if !words[o.Tag] {
			t.Errorf("a search does not find %s", o.Tag)
		}
	}
}

// TestPNGSaysItsResolution reads size and pHYs: 200 pixels an inch are 7874 a metre.
func TestPNGSaysItsResolution(t *testing.T) {
	file := save(t, build(t, plan.New("Empty", plantest.NewIDs(1).New(plan.KindLevel)), Options{}), "page.png", paint.Options{DPI: 200})
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	config, err := png.DecodeConfig(bytes.NewReader(data))
	if err != nil || config.Width != 3400 || config.Height != 2200 {
		t.Errorf("%d × %d pixels, %v; want 3400 × 2200, 17 × 11 in at 200", config.Width, config.Height, err)
	}
	if !bytes.Contains(data, []byte("pHYs\x00\x00\x1e\xc2\x00\x00\x1e\xc2\x01")) {
		t.Error("no pHYs chunk of 7874 pixels a metre")
	}
}
