package paint_test

import (
	"bytes"
	"encoding/xml"
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
	"studbay/render/scene"
)

// librsvg is the program that draws the same scenes by another hand, from SVG 1.1.
const librsvg = "rsvg-convert"

// svg is a scene.Painter that writes SVG, for another program to draw what ours does.
type svg struct {
	bytes.Buffer
	clips int
}

var _ scene.Painter = (*svg)(nil)

// svgOf writes one page, a unit of which is a millimetre.
func svgOf(s *scene.Scene) []byte {
	p := &svg{}
	width, height := s.Width.Millimetres(), s.Height.Millimetres()
	fmt.Fprintf(p, `<svg xmlns="http://www.w3.org/2000/svg" width="%gin" height="%gin" viewBox="0 0 %g %g">`+"\n", width/25.4, height/25.4, width, height)
	p.Fill(scene.Rect{Max: scene.Point{X: width, Y: height}}.Path(), s.Background())
	s.Paint(p)
	p.WriteString("</svg>\n")
	return p.Bytes()
}

func (p *svg) Fill(path scene.Path, c scene.Color) {
	p.WriteString(`<path`)
	p.ink("fill", c)
	p.trace(path)
}

func (p *svg) Stroke(path scene.Path, pen scene.Pen) {
	p.WriteString(`<path fill="none"`)
	p.ink("stroke", pen.Color)
	fmt.Fprintf(p, ` stroke-width="%.5g"`, pen.Width)
	if cap := [...]string{"", "round", "square"}[pen.Cap]; cap != "" {
		fmt.Fprintf(p, ` stroke-linecap="%s"`, cap)
	}
	fmt.Fprintf(p, ` stroke-linejoin="%s"`, [...]string{"round", "bevel"}[pen.Join])
	if len(pen.Dash) > 0 {
		p.WriteString(` stroke-dasharray="`)
		p.numbers(pen.Dash...)
		p.WriteByte('"')
	}
	p.trace(path)
}

func (p *svg) Text(r scene.Run) {
	at := r.Origin()
	p.WriteString(`<text xml:space="preserve" font-family="Go, DejaVu Sans"`)
	p.ink("fill", r.Color)
	if r.Weight == glyph.Bold {
		p.WriteString(` font-weight="bold"`)
	}
	fmt.Fprintf(p, ` font-size="%.6g" x="%.6g" y="%.6g"`, r.Size, at.X, at.Y)
	if r.Angle != 0 {
		fmt.Fprintf(p, ` transform="rotate(%.6g %.6g %.6g)"`, r.Angle, at.X, at.Y)
	}
	p.WriteByte('>')
	_ = xml.EscapeText(p, []byte(r.Text)) // a Buffer takes everything
	p.WriteString("</text>\n")
}

func (p *svg) Begin(l scene.Layer) {
	if l.Clip == nil {
		p.WriteString("<g>\n")
		return
	}
	p.clips++
	fmt.Fprintf(p, `<clipPath id="c%d"><rect x="%g" y="%g" width="%g" height="%g"/></clipPath><g clip-path="url(#c%d)">`+"\n",
		p.clips, l.Clip.Min.X, l.Clip.Min.Y, l.Clip.Width(), l.Clip.Height(), p.clips)
}

func (p *svg) End() { p.WriteString("</g>\n") }

func (p *svg) Close() error { return nil }

func (p *svg) ink(what string, c scene.Color) {
	fmt.Fprintf(p, ` %s="#%02x%02x%02x"`, what, c.R, c.G, c.B)
	if c.A != 0xff {
		fmt.Fprintf(p, ` %s-opacity="%.4g"`, what, float64(c.A)/0xff)
	}
}

func (p *svg) trace(path scene.Path) {
	p.WriteString(` d="`)
	path.Each(func(op scene.Op, points []scene.Point) {
		p.WriteByte("MLCZ"[op])
		for _, q := range points {
			p.numbers(q.X, q.Y)
		}
	})
	p.WriteString("\"/>\n")
}

// numbers writes each with a blank after it, to a ten-thousandth.
func (p *svg) numbers(values ...float64) {
	for _, v := range values {
		p.Write(strconv.AppendFloat(p.AvailableBuffer(), v, 'f', 4, 64))
		p.WriteByte(' ')
	}
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
		files = append(files, d.write(t, fmt.Sprintf("page-%d.svg", i+1), svgOf(s)))
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
