package look

import (
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"studbay/render/glyph"
)

// Paragraph is text broken into lines for a width that is settled when it is made: a
// card is built for its column, so no line moves while it is laid out.
type Paragraph struct {
	widget.BaseWidget
	words string
	style Style
	width float32
}

// NewParagraph makes a paragraph of a width.
func NewParagraph(words string, style Style, width float32) *Paragraph {
	p := &Paragraph{words: words, style: style, width: width}
	p.ExtendBaseWidget(p)
	return p
}

// Words returns the whole text.
func (p *Paragraph) Words() string { return p.words }

// SetWords changes the text.
func (p *Paragraph) SetWords(words string) {
	if words != p.words {
		p.words = words
		p.Refresh()
	}
}

// SetWidth breaks the words for another width.
func (p *Paragraph) SetWidth(width float32) {
	if width != p.width {
		p.width = width
		p.Refresh()
	}
}

func (p *Paragraph) lines() (lines []string) {
	for _, part := range strings.Split(p.words, "\n") {
		line := ""
		for _, word := range glyph.Words(part) {
			longer := strings.TrimSpace(line + " " + word)
			if line != "" && p.style.measure(longer).Width > p.width {
				lines, longer = append(lines, line), word
			}
			line = longer
		}
		lines = append(lines, line)
	}
	return lines
}

// lineHeight is a whole number, so that no line is squeezed between two rows of pixels.
func (p *Paragraph) lineHeight() float32 {
	return float32(math.Ceil(float64(p.style.measure("Hg").Height)))
}

// CreateRenderer implements fyne.Widget.
func (p *Paragraph) CreateRenderer() fyne.WidgetRenderer {
	r := &paragraphRenderer{of: p}
	r.build()
	return r
}

type paragraphRenderer struct {
	of    *Paragraph
	lines []fyne.CanvasObject
}

func (r *paragraphRenderer) build() {
	r.lines = r.lines[:0]
	if r.of.words == "" {
		return
	}
	for i, line := range r.of.lines() {
		t := r.of.style.text(line)
		t.Move(fyne.NewPos(0, float32(i)*r.of.lineHeight()))
		r.lines = append(r.lines, t)
	}
}

func (r *paragraphRenderer) MinSize() fyne.Size {
	return fyne.NewSize(r.of.width, float32(len(r.lines))*r.of.lineHeight())
}

func (r *paragraphRenderer) Layout(size fyne.Size) {
	for _, line := range r.lines {
		line.Resize(fyne.NewSize(size.Width, r.of.lineHeight()))
	}
}

func (r *paragraphRenderer) Refresh() {
	r.build()
	r.Layout(r.of.Size())
	canvas.Refresh(r.of)
}

func (r *paragraphRenderer) Objects() []fyne.CanvasObject { return r.lines }
func (r *paragraphRenderer) Destroy()                     {}

// SetTone changes the tone of its words.
func (p *Paragraph) SetTone(tone Tone) {
	if tone != p.style.Tone {
		p.style.Tone = tone
		p.Refresh()
	}
}

// Tone returns the tone of its words.
func (p *Paragraph) Tone() Tone { return p.style.Tone }
