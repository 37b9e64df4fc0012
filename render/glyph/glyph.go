// Package glyph measures text and gives the outlines of its letters, the same for
// every painter and for label layout, so that what fits in one medium fits in all.
//
// There is one family in two weights. A letter the family lacks (⅓ ⅔ ☐ △ and the
// like) is taken from a second font of the same weight. Nothing is hinted or
// kerned: a width at one size is the width at another times their ratio.
//
// All functions are safe for concurrent use. Sizes are em heights and results are
// in the unit the size came in: millimetres of paper, pixels or points.
package glyph

import (
	"strings"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Weight is the thickness of the letters. The zero value is Regular.
type Weight uint8

// The two weights of the family.
const (
	Regular Weight = iota
	Bold
)

// Op is what a segment of an outline does.
type Op uint8

// The kinds of segment; each uses as many of its points as its comment says.
const (
	Move  Op = iota // one point: begin a contour
	Line            // one point
	Quad            // two points: control, end
	Cubic           // three points: control, control, end
)

// Point is a place in an outline, in ems from the start of the baseline: X along
// it, Y down.
type Point struct{ X, Y float64 }

// Segment is one piece of an outline.
type Segment struct {
	Op     Op
	Points [3]Point
}

// Glyph is one letter's shape. It is shared: do not write to Outline. Contours are
// closed, and filled by the non-zero rule.
type Glyph struct {
	Advance  float64 // ems to the next letter
	Outline  []Segment
	Min, Max Point // box of all points of the outline, in ems; equal for a blank
	Font     FontID
}

type key struct {
	weight Weight
	letter rune
}

var cache sync.Map // key to *Glyph

// Of returns the shape of one letter. One that no font has is shown as a box, and
// a control character as a blank of no width.
func Of(w Weight, letter rune) *Glyph {
	k := key{w, letter}
	if g, ok := cache.Load(k); ok {
		return g.(*Glyph)
	}
	g, _ := cache.LoadOrStore(k, load(w, letter))
	return g.(*Glyph)
}

func load(w Weight, letter rune) *Glyph {
	if letter < ' ' || letter == 0x7f {
		return &Glyph{Font: fontFor(w, ' ')}
	}
	id := fontFor(w, letter)
	f := id.parsed()
	var buf sfnt.Buffer
	index, err := f.GlyphIndex(&buf, letter)
	must(err)
	// One em of as many pixels as the font has units keeps its whole precision.
	em := fixed.I(int(f.UnitsPerEm()))
	advance, err := f.GlyphAdvance(&buf, index, em, font.HintingNone)
	must(err)
	segments, err := f.LoadGlyph(&buf, index, em, nil)
	must(err)
	g := &Glyph{Advance: float64(advance) / float64(em), Font: id}
	g.setOutline(segments, float64(em))
	return g
}

// must stops on a fault in the embedded fonts, which no input can bring about.
func must(err error) {
	if err != nil {
		panic("glyph: embedded font: " + err.Error())
	}
}

func (g *Glyph) setOutline(segments []sfnt.Segment, em float64) {
	counts := [...]int{Move: 1, Line: 1, Quad: 2, Cubic: 3}
	g.Outline = make([]Segment, len(segments))
	for i, s := range segments {
		out := Segment{Op: Op(s.Op)} // sfnt lists its operations in our order
		for j := range counts[out.Op] {
			out.Points[j] = Point{float64(s.Args[j].X) / em, float64(s.Args[j].Y) / em}
			g.include(out.Points[j], i == 0 && j == 0)
		}
		g.Outline[i] = out
	}
}

func (g *Glyph) include(p Point, first bool) {
	if first {
		g.Min, g.Max = p, p
		return
	}
	g.Min = Point{min(g.Min.X, p.X), min(g.Min.Y, p.Y)}
	g.Max = Point{max(g.Max.X, p.X), max(g.Max.Y, p.Y)}
}

// Width returns how far text reaches along its baseline at an em height of size.
func Width(w Weight, size float64, text string) float64 {
	ems := 0.0
	for _, letter := range text {
		ems += Of(w, letter).Advance
	}
	return ems * size
}

// Metrics are the heights of a line of text, all positive.
type Metrics struct {
	Ascent    float64 // baseline to the top of the tallest letters
	Descent   float64 // baseline to the bottom of the lowest letters
	CapHeight float64 // baseline to the top of H
	XHeight   float64 // baseline to the top of x
	Line      float64 // baseline to baseline of text set solid but readable
}

// MetricsOf returns the heights of the family at an em height of size. They are
// those of the first font: a line does not move for a letter of the second.
func MetricsOf(w Weight, size float64) Metrics {
	height := func(letter rune) float64 { return -Of(w, letter).Min.Y * size }
	return Metrics{
		Ascent:    height('b'),
		Descent:   Of(w, 'p').Max.Y * size,
		CapHeight: height('H'),
		XHeight:   height('x'),
		Line:      1.3 * size,
	}
}

// Wrap breaks text at its blanks into lines no wider than width. A word wider than
// that stands alone on its line, uncut; newlines are kept. No text is no lines.
func Wrap(w Weight, size, width float64, text string) (lines []string) {
	if text == "" {
		return nil
	}
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range Words(paragraph) {
			switch longer := line + " " + word; {
			case line == "":
				line = word
			case Width(w, size, longer) <= width:
				line = longer
			default:
				lines, line = append(lines, line), word
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// Fit returns text, or as much of its beginning as goes into width with an ellipsis
// after it. Where not even that fits, the result is empty.
func Fit(w Weight, size, width float64, text string) string {
	if Width(w, size, text) <= width {
		return text
	}
	room := width - Width(w, size, "…")
	if room < 0 {
		return ""
	}
	reach := 0.0
	for i, letter := range text {
		reach += Of(w, letter).Advance * size
		if reach > room {
			return strings.TrimRight(text[:i], " ") + "…"
		}
	}
	return text
}
