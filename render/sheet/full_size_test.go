package sheet

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"strconv"
	"strings"
	"testing"

	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/render/fullsize"
	"studbay/render/paint"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// fullSizePages are those of a house for a drywaller, of which the first shows templates.
func fullSizePages(t *testing.T, on string) (ix *index.Index, pages []*scene.Scene) {
	t.Helper()
	p := plantest.House(2, 38)
	for _, s := range build(t, p, Options{Paper: onPaper(t, on), Reader: ForDrywall}) {
		if strings.Contains(s.Meta.Title, "Full size") {
			pages = append(pages, s)
		}
	}
	if len(pages) == 0 {
		t.Fatal("no page is at full size")
	}
	return index.New(p), pages
}

// TestTemplatesAreTrueOnPaper measures the templates and the bar on the printed page: at 640
// pixels an inch 1/64 in are ten. On paper whose type is larger they are as large as on any.
func TestTemplatesAreTrueOnPaper(t *testing.T) {
	for _, on := range []string{"tabloid", "archc"} {
		t.Run(on, func(t *testing.T) { areTemplatesTrue(t, on) })
	}
}

func areTemplatesTrue(t *testing.T, on string) {
	const perInch, most = 640.0, 10
	ix, pages := fullSizePages(t, on)
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

// strokeBoxes are the bounds of all lines of a page as they are painted.
func strokeBoxes(s *scene.Scene) (all []scene.Rect) {
	for _, item := range s.Items {
		if stroke, ok := item.(scene.Stroke); ok {
			box, k := stroke.Path.Bounds(), max(s.Enlarged, 1)
			all = append(all, scene.Rect{Min: box.Min.Mul(k), Max: box.Max.Mul(k)})
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

// TestAWholeTemplateIsNotCut: what the paper has room for in one piece is one piece, wherever its
// pages begin, and a page is named for what is on it: the bar to measure stands on the first.
func TestAWholeTemplateIsNotCut(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		for _, on := range []string{"letter", "tabloid", "archc"} {
			seen := false
			for _, s := range build(t, ix.Plan(), Options{Paper: onPaper(t, on), Reader: ForCrew}) {
				if !strings.Contains(s.Meta.Title, "Full size") {
					continue
				}
				all := saidOn(s)
				if strings.Contains(all, "part 1 of 1") {
					t.Errorf("%s on %s: %s cuts a template into one part", name, on, s.Meta.Title)
				}
				if !seen && !strings.Contains(all, "if printed true") {
					t.Errorf("%s on %s: %s has no bar to measure", name, on, s.Meta.Title)
				}
				seen = true
			}
			if !seen {
				t.Errorf("%s on %s: nothing at full size", name, on)
			}
		}
	}
}

// saidOn is all that is written on a page, a line each.
func saidOn(s *scene.Scene) string {
	var all strings.Builder
	for _, r := range runsOf(s.Items) {
		all.WriteString(r.Text + "\n")
	}
	return all.String()
}
