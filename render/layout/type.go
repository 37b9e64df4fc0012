package layout

import (
	"slices"

	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/scene"
)

// The type of a sheet, in points. Nothing is smaller than Small.
const (
	Small   = 6.5
	Body    = 7
	Heading = 9.5
	Title   = 16
)

// TagText is the size of tags in drawings, in points: second text is nine tenths of it
// there, and that is not to be under Small.
const TagText = 7.25

// Hairline, Divider and Border are the widths of lines, in points.
const (
	Hairline = 0.25
	Divider  = 0.6
	Border   = 1.1
)

// Theme is what everything but a finding is drawn in.
var Theme = &render.Print

// Faint is the ground of every other row: it prints, and a figure on it reads.
var Faint = scene.Color{R: 0xf1, G: 0xf1, B: 0xf1, A: 0xff}

// Style is how a line of text looks.
type Style struct {
	Size  float64 // points
	Bold  bool
	Muted bool
	Align scene.Align
}

// The usual styles.
var (
	Plain  = Style{Size: Body}
	Strong = Style{Size: Body, Bold: true}
	Fine   = Style{Size: Small, Muted: true}
)

func (s Style) Weight() glyph.Weight {
	if s.Bold {
		return glyph.Bold
	}
	return glyph.Regular
}

func (s Style) MM() float64 { return s.Size * scene.PointSize }

// Line is the distance from baseline to baseline.
func (s Style) Line() float64 { return glyph.MetricsOf(s.Weight(), s.MM()).Line }

// Cap is the height of a capital.
func (s Style) Cap() float64 { return glyph.MetricsOf(s.Weight(), s.MM()).CapHeight }

func (s Style) Width(text string) float64 { return glyph.Width(s.Weight(), s.MM(), text) }

// Wrap breaks text to a width; a word that is wider goes on in the next line.
func (s Style) Wrap(text string, width float64) (lines []string) {
	for _, line := range glyph.Wrap(s.Weight(), s.MM(), width, text) {
		for line != "" && s.Width(line) > width { // no width at all still ends
			n := s.letters(line, width)
			lines, line = append(lines, line[:n]), line[n:]
		}
		lines = append(lines, line)
	}
	return lines
}

// letters returns how many bytes of text go into a width: those of one letter at least.
func (s Style) letters(text string, width float64) int {
	reach := 0.0
	for i, letter := range text {
		if reach += s.Width(string(letter)); reach > width && i > 0 {
			return i
		}
	}
	return len(text)
}

// Fit cuts text to a width.
func (s Style) Fit(text string, width float64) string {
	return glyph.Fit(s.Weight(), s.MM(), width, text)
}

// AtMost keeps the first lines of text, the last with a sign that more was there.
func AtMost(lines []string, n int) []string {
	if len(lines) <= n {
		return lines
	}
	lines = slices.Clone(lines[:n])
	lines[n-1] += " …"
	return lines
}

// At returns the text with its baseline at a place.
func (s Style) At(x, y float64, text string) scene.Run {
	color := Theme.Ink
	if s.Muted {
		color = Theme.Muted
	}
	return scene.Run{At: scene.Point{X: x, Y: y}, Text: text, Size: s.MM(), Weight: s.Weight(), Align: s.Align, Color: color}
}

// Centered returns the style set about its place.
func (s Style) Centered() Style {
	s.Align = scene.Center
	return s
}

// Right returns the style set against its place from the left.
func (s Style) Right() Style {
	s.Align = scene.End
	return s
}

func Pen(points float64) scene.Pen {
	return scene.Pen{Width: points * scene.PointSize, Color: Theme.Ink}
}

func HLine(x, to, y float64, p scene.Pen) scene.Item {
	return scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: y}, scene.Point{X: to, Y: y}), Pen: p}
}

func VLine(x, y, to float64, p scene.Pen) scene.Item {
	return scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: y}, scene.Point{X: x, Y: to}), Pen: p}
}
