package paint_test

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"studbay/render/glyph"
	"studbay/render/paint"
	"studbay/render/paint/svg"
	"studbay/render/scene"
)

// librsvg is the program that draws the same scenes by another hand, from SVG 1.1.
const librsvg = "rsvg-convert"

// svgOf writes one page, a unit of which is a millimetre.
func svgOf(t testing.TB, s *scene.Scene) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := svg.Encode(t.Context(), &b, s, 0, 0); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// drawer is librsvg with our fonts to draw by, in a folder of its own.
type drawer struct {
	folder string
	env    []string
}

// newDrawer skips where librsvg is not installed.
func newDrawer(t testing.TB) drawer {
	t.Helper()
	if _, err := exec.LookPath(librsvg); err != nil {
		t.Skipf("%s is not installed", librsvg)
	}
	d := drawer{folder: t.TempDir()}
	for _, id := range glyph.Fonts {
		d.write(t, id.Name()+".ttf", id.TTF())
	}
	fonts := fmt.Sprintf("<fontconfig><dir>%s</dir><cachedir>%s</cachedir></fontconfig>", d.folder, d.folder)
	d.env = append(os.Environ(), "FONTCONFIG_FILE="+d.write(t, "fonts.conf", []byte(fonts)))
	return d
}

func (d drawer) write(t testing.TB, name string, data []byte) string {
	t.Helper()
	file := filepath.Join(d.folder, name)
	if err := os.WriteFile(file, data, 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

// pages writes scenes as SVG files and returns their names.
func (d drawer) pages(t testing.TB, scenes []*scene.Scene) (files []string) {
	t.Helper()
	for i, s := range scenes {
		files = append(files, d.write(t, fmt.Sprintf("page-%d.svg", i+1), svgOf(t, s)))
	}
	return files
}

// draw draws files as one of a format and returns its name.
func (d drawer) draw(t testing.TB, format string, dpi int, files []string) string {
	t.Helper()
	out := filepath.Join(d.folder, "out."+format)
	resolution := strconv.Itoa(dpi)
	cmd := exec.Command(librsvg, append([]string{"--unlimited", "-f", format, "-d", resolution, "-p", resolution, "-o", out}, files...)...)
	cmd.Env = d.env
	if said, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%s: %v\n%s", librsvg, err, said)
	}
	return out
}

// A sheet drawn by librsvg is a sheet drawn by us, to what two ways of smoothing edges
// differ by.
func TestSheetIsWhatAnotherProgramDraws(t *testing.T) {
	const dpi = 50
	d := newDrawer(t)
	page := sheets(t, common)[0]
	theirs := decode(t, d.draw(t, "png", dpi, d.pages(t, []*scene.Scene{page})))
	files, err := paint.Save(t.Context(), filepath.Join(d.folder, "ours.png"), []*scene.Scene{page}, paint.Options{DPI: dpi})
	if err != nil {
		t.Fatal(err)
	}
	ours := decode(t, files[0])
	if want := image.Pt(36*dpi, 24*dpi); ours.Bounds().Size() != want || theirs.Bounds().Size() != want {
		t.Fatalf("pictures of %v and %v, want %v", ours.Bounds().Size(), theirs.Bounds().Size(), want)
	}
	inked, apart := compare(ours, theirs)
	if inked < 50_000 {
		t.Errorf("only %d pixels are inked: the page is all but blank", inked)
	}
	if apart*1000 > inked {
		t.Errorf("%d pixels are apart by over a third of black, of %d inked; want one in a thousand at most", apart, inked)
	}
}

// compare counts pixels that are not white in either picture, and those of them that
// differ by over a third of black from all pixels about them in the other.
func compare(a, b image.Image) (inked, apart int) {
	bounds := a.Bounds()
	for y := bounds.Min.Y; y < bounds.Max.Y; y++ {
		for x := bounds.Min.X; x < bounds.Max.X; x++ {
			p, q := grey(a, x, y), grey(b, x, y)
			if p > 250 && q > 250 {
				continue
			}
			inked++
			if max(p, q)-min(p, q) > 85 && (!isAbout(b, x, y, p) || !isAbout(a, x, y, q)) {
				apart++
			}
		}
	}
	return inked, apart
}

// isAbout reports whether a shade is within a third of black of a pixel's or of one
// beside it.
func isAbout(im image.Image, x, y, shade int) bool {
	for dy := -1; dy <= 1; dy++ {
		for dx := -1; dx <= 1; dx++ {
			if at := image.Pt(x+dx, y+dy); at.In(im.Bounds()) {
				if g := grey(im, at.X, at.Y); max(g, shade)-min(g, shade) <= 85 {
					return true
				}
			}
		}
	}
	return false
}

func grey(im image.Image, x, y int) int {
	r, g, b, _ := im.At(x, y).RGBA()
	return int((r + g + b) / 3 >> 8)
}

func decode(t testing.TB, file string) image.Image {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	im, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return im
}
