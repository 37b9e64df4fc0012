package sheet

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// inkOf keeps where on a page anything is painted, in strips from left to right: how far down
// each is taken, and how many lines of text and what else there is.
type inkOf struct {
	scene.Painter
	main  scene.Rect
	low   [8]float64
	lines map[int]bool // of text, by how far down in millimeters
	clips []*scene.Rect
}

func (k *inkOf) take(box scene.Rect) {
	for _, c := range k.clips {
		if c != nil {
			box.Min = scene.Point{X: max(box.Min.X, c.Min.X), Y: max(box.Min.Y, c.Min.Y)}
			box.Max = scene.Point{X: min(box.Max.X, c.Max.X), Y: min(box.Max.Y, c.Max.Y)}
		}
	}
	if box.Min.Y >= k.main.Max.Y-0.5 || box.Width() > k.main.Width() { // the title block and the border
		return
	}
	wide := k.main.Width() / float64(len(k.low))
	for i := range k.low {
		left := k.main.Min.X + float64(i)*wide
		if box.Min.X < left+wide && box.Max.X > left {
			k.low[i] = max(k.low[i], min(box.Max.Y, k.main.Max.Y)-k.main.Min.Y)
		}
	}
}

func (k *inkOf) Stroke(p scene.Path, _ scene.Pen) {
	k.take(p.Bounds())
}
func (k *inkOf) Fill(p scene.Path, _ scene.Color) { k.take(p.Bounds()) }
func (k *inkOf) Text(r scene.Run) {
	box := r.Bounds()
	k.take(box)
	if box.Max.Y < k.main.Max.Y {
		k.lines[int(r.At.Y*2)] = true
	}
}
func (k *inkOf) Begin(l scene.Layer) { k.clips = append(k.clips, l.Clip) }
func (k *inkOf) End()                { k.clips = k.clips[:len(k.clips)-1] }

// full is what share of a page is taken, down each strip to its lowest ink.
func (k *inkOf) full() (share float64) {
	for _, low := range k.low {
		share += low / k.main.Height() / float64(len(k.low))
	}
	return share
}

func inkOn(s *scene.Scene, p paper.Paper) *inkOf {
	k := p.Enlarged()
	main := layout.New(p, layout.Languages{}, 0).Main
	ink := &inkOf{main: scene.Rect{Min: main.Min.Mul(k), Max: main.Max.Mul(k)}, lines: map[int]bool{}}
	s.Paint(ink)
	return ink
}

// oneOfMany ends the title of a page that goes on.
var oneOfMany = regexp.MustCompile(`, (sheet|part) \d+.*$`)

// TestPagesAreWorthTheirPaper: over the sets of all demos on all papers no page is under a third
// full but the last of its kind, and none is there for eight lines.
func TestPagesAreWorthTheirPaper(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		result, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		for _, size := range paper.All {
			pages, err := Build(ix, result, Options{Paper: size, Cover: true, Voice: words.Voice{System: size.System}})
			if err != nil {
				t.Fatal(err)
			}
			kind := func(i int) string { return oneOfMany.ReplaceAllString(pages[i].Meta.Title, "") }
			for i, page := range pages {
				ink := inkOn(page, size)
				isLast := i+1 == len(pages) || !strings.HasPrefix(kind(i+1), kind(i))
				where := fmt.Sprintf("%s on %s, page %d, %s", name, size.Name, i+1, page.Meta.Title)
				full := ink.full()
				if !isLast && full < 1./3 {
					t.Errorf("%s: %.0f %% full and not the last of its kind", where, 100*full)
				}
				if len(ink.lines) <= 8 && full < 1./4 {
					t.Errorf("%s: a page for %d lines", where, len(ink.lines))
				}
			}
		}
	}
}

// TestNoHeadingOfElevationsStandsAlone: where elevations begin under what a page has already a
// room is drawn there too, on all papers, for who reads them.
func TestNoHeadingOfElevationsStandsAlone(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		for _, size := range paper.All {
			for i, page := range build(t, ix.Plan(), Options{Paper: size, Reader: ForClient, Voice: words.Voice{System: size.System}}) {
				if strings.Contains(page.Meta.Title, "· Interior elevations") && !strings.Contains(saidOn(page), "ceiling ") {
					t.Errorf("%s on %s: page %d, %s, shows no room", name, size.Name, i+1, page.Meta.Title)
				}
			}
		}
	}
}
