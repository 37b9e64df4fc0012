// Package proof reads a page as a proofreader does, for tests: what lies on what, what
// leaves the frame, what is too small or too faint to print. It decides nothing of how
// a page should look.
package proof

import (
	"fmt"
	"math"
	"sort"
	"unicode/utf8"

	"studbay/render/scene"
)

// Rules are what a page is held to.
type Rules struct {
	Frame     scene.Rect // all ink lies within
	LeastText float64    // em height, in millimetres; a lone letter is part of a symbol
	LeastLine float64    // width of a line, in millimetres
}

// Read returns what is wrong with a page, a line each.
func Read(s *scene.Scene, r Rules) (faults []string) {
	c := &collector{}
	s.Paint(c)
	faults = append(faults, c.outside(r.Frame.Expanded(0.2))...)
	for _, run := range c.runs {
		if run.Size < r.LeastText-1e-6 && utf8.RuneCountInString(run.Text) > 1 {
			faults = append(faults, fmt.Sprintf("%q is %.2f pt high", run.Text, run.Size/scene.PointSize))
		}
	}
	for _, pen := range c.pens {
		if pen.Width < r.LeastLine-1e-6 {
			faults = append(faults, fmt.Sprintf("a line is %.3f pt wide", pen.Width/scene.PointSize))
		}
	}
	for _, text := range c.cut {
		faults = append(faults, fmt.Sprintf("%q is cut", text))
	}
	return append(append(faults, c.overlaps()...), c.crossed()...)
}

// Runs returns every run of text of a page, in the order painted.
func Runs(s *scene.Scene) []scene.Run {
	c := &collector{}
	s.Paint(c)
	return c.runs
}

// Texts returns every text of a page, in the order painted.
func Texts(s *scene.Scene) (texts []string) {
	for _, run := range Runs(s) {
		texts = append(texts, run.Text)
	}
	return texts
}

// Colors returns every colour of a page once.
func Colors(s *scene.Scene) map[scene.Color]bool {
	c := &collector{colors: map[scene.Color]bool{}}
	s.Paint(c)
	return c.colors
}

// collector is a painter that keeps what it is given.
type collector struct {
	runs   []scene.Run
	boxes  []scene.Rect // of the ink of each run
	pens   []scene.Pen
	lines  []line // straight ones of the page itself, outside of groups
	ink    []scene.Rect
	cut    []string // texts that a clip cuts
	clips  []*scene.Rect
	depth  int
	within []int // the depth of each run
	colors map[scene.Color]bool
}

type line struct{ a, b scene.Point }

func (c *collector) color(k scene.Color) {
	if c.colors != nil {
		c.colors[k] = true
	}
}

// Stroke implements scene.Painter.
func (c *collector) Stroke(p scene.Path, pen scene.Pen) {
	c.pens = append(c.pens, pen)
	c.mark(scene.Stroke{Path: p, Pen: pen}.Bounds())
	c.color(pen.Color)
	if c.depth > 0 {
		return
	}
	var at scene.Point
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			at = points[0]
		case scene.LineOp:
			c.lines = append(c.lines, line{at, points[0]})
			at = points[0]
		}
	})
}

// Fill implements scene.Painter.
func (c *collector) Fill(p scene.Path, k scene.Color) {
	c.mark(p.Bounds())
	c.color(k)
}

// Text implements scene.Painter.
func (c *collector) Text(r scene.Run) {
	c.color(r.Color)
	box := r.Outline().Bounds()
	if box.IsEmpty() {
		return
	}
	c.runs, c.boxes, c.within = append(c.runs, r), append(c.boxes, box), append(c.within, c.depth)
	if c.seen(box) != box {
		c.cut = append(c.cut, r.Text)
	}
	c.mark(box)
}

// Begin implements scene.Painter.
func (c *collector) Begin(l scene.Layer) {
	c.depth++
	c.clips = append(c.clips, l.Clip)
}

// End implements scene.Painter.
func (c *collector) End() {
	c.depth--
	c.clips = c.clips[:len(c.clips)-1]
}

// seen returns what of a box the clips in force let be seen.
func (c *collector) seen(box scene.Rect) scene.Rect {
	for _, clip := range c.clips {
		if clip != nil {
			box = scene.Rect{
				Min: scene.Point{X: max(box.Min.X, clip.Min.X), Y: max(box.Min.Y, clip.Min.Y)},
				Max: scene.Point{X: min(box.Max.X, clip.Max.X), Y: min(box.Max.Y, clip.Max.Y)},
			}
		}
	}
	return box
}

// mark notes ink, where there is any to be seen.
func (c *collector) mark(box scene.Rect) {
	if box = c.seen(box); box.Min.X <= box.Max.X && box.Min.Y <= box.Max.Y {
		c.ink = append(c.ink, box)
	}
}

// Close implements scene.Painter.
func (c *collector) Close() error { return nil }

func (c *collector) outside(frame scene.Rect) (faults []string) {
	for _, box := range c.ink {
		if !frame.Contains(box.Min) || !frame.Contains(box.Max) {
			faults = append(faults, fmt.Sprintf("ink leaves the frame at %.1f, %.1f to %.1f, %.1f", box.Min.X, box.Min.Y, box.Max.X, box.Max.Y))
		}
	}
	return faults
}

// touch is how far two inks may reach into each other's box: letters have air about them.
const touch = 0.08

// overlaps sweeps over the runs from the left.
func (c *collector) overlaps() (faults []string) {
	order := make([]int, len(c.boxes))
	for i := range order {
		order[i] = i
	}
	sort.Slice(order, func(i, k int) bool { return c.boxes[order[i]].Min.X < c.boxes[order[k]].Min.X })
	for i, a := range order {
		for _, b := range order[i+1:] {
			if c.boxes[b].Min.X > c.boxes[a].Max.X {
				break
			}
			if c.boxes[a].Expanded(-touch).Overlaps(c.boxes[b].Expanded(-touch)) {
				faults = append(faults, fmt.Sprintf("%q lies on %q", c.runs[a].Text, c.runs[b].Text))
			}
		}
	}
	return faults
}

// crossed finds texts of the page itself that an upright or level line of it runs through.
func (c *collector) crossed() (faults []string) {
	for i, box := range c.boxes {
		if c.within[i] > 0 {
			continue
		}
		box = box.Expanded(-touch)
		for _, l := range c.lines {
			ink := scene.Rect{
				Min: scene.Point{X: math.Min(l.a.X, l.b.X) - 0.01, Y: math.Min(l.a.Y, l.b.Y) - 0.01},
				Max: scene.Point{X: math.Max(l.a.X, l.b.X) + 0.01, Y: math.Max(l.a.Y, l.b.Y) + 0.01},
			}
			isUpright := l.a.X == l.b.X || l.a.Y == l.b.Y
			if isUpright && ink.Overlaps(box) {
				faults = append(faults, fmt.Sprintf("a line runs through %q", c.runs[i].Text))
			}
		}
	}
	return faults
}
