package sheet

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"strconv"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/fullsize"
	"studbay/render/layout"
	"studbay/render/paint"
	"studbay/render/scene"
)

// fullSizePages are those of a house for a drywaller, of which the first shows templates.
func fullSizePages(t *testing.T) (ix *index.Index, pages []*scene.Scene) {
	t.Helper()
	p := plantest.House(2, 38)
	for _, s := range build(t, p, Options{Reader: ForDrywall}) {
		if strings.HasPrefix(s.Meta.Title, "Full size") {
			pages = append(pages, s)
		}
	}
	if len(pages) == 0 {
		t.Fatal("no page is at full size")
	}
	return index.New(p), pages
}

// TestTemplatesAreTrueOnPaper measures the templates and the bar on the printed page: at 640
// pixels an inch 1/64 in are ten.
func TestTemplatesAreTrueOnPaper(t *testing.T) {
	const perInch, most = 640.0, 10
	ix, pages := fullSizePages(t)
	file := save(t, pages, "full.pdf", paint.Options{})
	perMM := perInch / 25.4
	// across measures how far apart the first and the last ink of a row are.
	across := func(page int, left, right, y float64) int {
		stem := strings.TrimSuffix(file, ".pdf")
		pixels := func(mm float64) string { return strconv.Itoa(int(mm * perMM)) }
		run(t, "pdftoppm", "-r", "640", "-f", strconv.Itoa(page+1), "-l", strconv.Itoa(page+1), "-x", pixels(left), "-W", pixels(right-left),
			"-y", pixels(y), "-H", "1", "-gray", "-png", "-singlefile", file, stem)
		data, err := os.ReadFile(stem + ".png")
		if err != nil {
			t.Fatal(err)
		}
		im, err := png.Decode(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		return inked(im)
	}
	found := map[unit.Length]bool{}
	for n, s := range pages {
		for _, box := range strokeBoxes(s) {
			for _, c := range fullsize.CutOuts(ix) {
				if c.IsRound || !isNear(box.Width(), c.Width) || !isNear(box.Height(), c.Height) || found[c.Width] {
					continue
				}
				want := int(c.Width.Millimetres()*perMM + 0.5)
				if got := across(n, box.Min.X-2, box.Max.X+2, box.Min.Y+box.Height()/4); got < want-most || got > want+most {
					t.Errorf("a cut-out of %s is %d pixels wide, want %d", c.Width, got, want)
				}
				found[c.Width] = true
			}
			if n == 0 && box.Height() == 0 && isNear(box.Width(), 6*unit.Inch) && !found[6*unit.Inch] {
				want := int(6 * perInch)
				if got := across(n, box.Min.X-2, box.Max.X+2, box.Min.Y-1); got < want-most || got > want+most {
					t.Errorf("the bar of 6 in is %d pixels long, want %d", got, want)
				}
				found[6*unit.Inch] = true
			}
		}
	}
	if len(found) < 2 || !found[6*unit.Inch] {
		t.Errorf("measured only %v", found)
	}
}

func isNear(mm float64, l unit.Length) bool {
	return mm > l.Millimetres()-0.01 && mm < l.Millimetres()+0.01
}

// strokeBoxes are the bounds of all lines of a page.
func strokeBoxes(s *scene.Scene) (all []scene.Rect) {
	for _, item := range s.Items {
		if stroke, ok := item.(scene.Stroke); ok {
			all = append(all, stroke.Path.Bounds())
		}
	}
	return all
}

// inked returns how far apart the middles of the first and the last inked run of a picture's
// first row are.
func inked(im image.Image) int {
	var middles []int
	begin := -1
	b := im.Bounds()
	for x := b.Min.X; x <= b.Max.X; x++ {
		dark := false
		if x < b.Max.X {
			v, _, _, _ := im.At(x, b.Min.Y).RGBA()
			dark = v < 0x8000
		}
		if dark && begin < 0 {
			begin = x
		} else if !dark && begin >= 0 {
			middles, begin = append(middles, (begin+x-1)/2), -1
		}
	}
	if len(middles) < 2 {
		return 0
	}
	return middles[len(middles)-1] - middles[0]
}

// TestMarksBesideTheTape: no line of a mark runs through the text of another, and all texts
// stand on the strip.
func TestMarksBesideTheTape(t *testing.T) {
	b := newBook(index.New(square(t, 10*unit.Foot)), fill.Result{}, Options{})
	s := fullsize.Strip{To: 15 * unit.Inch}
	var marks []fullsize.Mark
	for _, at := range []float64{0.5, 1, 1.25, 4, 4.0625, 9, 13.5, 14, 14.875} {
		marks = append(marks, fullsize.Mark{At: unit.Length(at * float64(unit.Inch)), Tags: []string{"K1", "K2", "K3"}})
	}
	all := b.beside(s, marks, layout.Strong, 4)
	if len(all) != len(marks) {
		t.Fatalf("%d of %d marks", len(all), len(marks))
	}
	for i, m := range all {
		if m.begin < 0 || m.end > 15*25.4 {
			t.Errorf("%q at %.1f leaves the strip", m.text, m.at)
		}
		for _, o := range all[i+1:] {
			if o.begin < m.end && m.begin < o.end && o.lane == m.lane {
				t.Errorf("%q and %q lie on each other", m.text, o.text)
			}
			for _, pair := range [][2]tapeMark{{m, o}, {o, m}} {
				line, text := pair[0], pair[1]
				sameSide := (line.begin > line.at) == (text.begin > text.at)
				if sameSide && line.at > text.begin && line.at < text.end && line.lane >= text.lane {
					t.Errorf("the line of %q at %.1f runs through %q", line.text, line.at, text.text)
				}
			}
		}
	}
}

// A tape of marks up to 41 in on strips of 15-3/4 in: whole inches, end to end, past the last
// mark by more than an inch; metric by whole centimeters.
func TestStrips(t *testing.T) {
	marks := []fullsize.Mark{{At: 16 * unit.Inch}, {At: 41 * unit.Inch}}
	want := []fullsize.Strip{{From: 0, To: 15 * unit.Inch}, {From: 15 * unit.Inch, To: 30 * unit.Inch}, {From: 30 * unit.Inch, To: 43 * unit.Inch}}
	got := fullsize.Strips(marks, 15*unit.Inch+3*unit.Inch/4, unit.Imperial)
	if len(got) != len(want) {
		t.Fatalf("%v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("strip %d is %v, want %v", i, got[i], want[i])
		}
	}
	mm := fullsize.Strips([]fullsize.Mark{{At: 407 * unit.Millimetre}}, 395*unit.Millimetre, unit.Metric)
	if len(mm) != 2 || mm[0].To != 390*unit.Millimetre || mm[1].To != 420*unit.Millimetre {
		t.Errorf("metric strips are %v", mm)
	}
	if fullsize.Strips(nil, unit.Foot, unit.Imperial) != nil {
		t.Error("a tape of no marks has strips")
	}
}
