package sheet

import (
	"slices"

	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// The type of a sheet, in points. Nothing is smaller than small.
const (
	small   = 6.5
	body    = 7
	heading = 9.5
	title   = 16
)

// tagText is the size of tags in drawings, in points: second text is nine tenths of it
// there, and that is not to be under small.
const tagText = 7.25

// hairline, divider and border are the widths of lines, in points.
const (
	hairline = 0.25
	divider  = 0.6
	border   = 1.1
)

// ink is what everything but a finding is drawn in.
var theme = &render.Print

// style is how a line of text looks.
type style struct {
	size  float64 // points
	bold  bool
	muted bool
	align scene.Align
}

func (s style) weight() glyph.Weight {
	if s.bold {
		return glyph.Bold
	}
	return glyph.Regular
}

func (s style) mm() float64 { return s.size * scene.PointSize }

// line is the distance from baseline to baseline.
func (s style) line() float64 { return glyph.MetricsOf(s.weight(), s.mm()).Line }

// cap is the height of a capital.
func (s style) cap() float64 { return glyph.MetricsOf(s.weight(), s.mm()).CapHeight }

func (s style) width(text string) float64 { return glyph.Width(s.weight(), s.mm(), text) }

// wrap breaks text to a width; a word that is wider goes on in the next line.
func (s style) wrap(text string, width float64) (lines []string) {
	for _, line := range glyph.Wrap(s.weight(), s.mm(), width, text) {
		for s.width(line) > width {
			n := s.letters(line, width)
			lines, line = append(lines, line[:n]), line[n:]
		}
		lines = append(lines, line)
	}
	return lines
}

// letters returns how many bytes of text go into a width: those of one letter at least.
func (s style) letters(text string, width float64) int {
	reach := 0.0
	for i, letter := range text {
		if reach += s.width(string(letter)); reach > width && i > 0 {
			return i
		}
	}
	return len(text)
}

// fit cuts text to a width.
func (s style) fit(text string, width float64) string {
	return glyph.Fit(s.weight(), s.mm(), width, text)
}

// atMost keeps the first lines of text, the last with a sign that more was there.
func atMost(lines []string, n int) []string {
	if len(lines) <= n {
		return lines
	}
	lines = slices.Clone(lines[:n])
	lines[n-1] += " …"
	return lines
}

// at returns the text with its baseline at a place.
func (s style) at(x, y float64, text string) scene.Run {
	color := theme.Ink
	if s.muted {
		color = theme.Muted
	}
	return scene.Run{At: scene.Point{X: x, Y: y}, Text: text, Size: s.mm(), Weight: s.weight(), Align: s.align, Color: color}
}

// right returns the style set against its place from the left.
func (s style) right() style {
	s.align = scene.End
	return s
}

func pen(points float64) scene.Pen {
	return scene.Pen{Width: points * scene.PointSize, Color: theme.Ink}
}

func hline(x, to, y float64, p scene.Pen) scene.Item {
	return scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: y}, scene.Point{X: to, Y: y}), Pen: p}
}

func vline(x, y, to float64, p scene.Pen) scene.Item {
	return scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: y}, scene.Point{X: x, Y: to}), Pen: p}
}
