package look

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
)

// Style is how a text looks. The zero value is body text in ink, and is left-aligned.
type Style struct {
	Size  float32 // 0 is BodySize
	Bold  bool
	Tone  Tone
	Align fyne.TextAlign
}

// The styles used over and over.
var (
	Body   = Style{}
	Second = Style{Size: SecondSize, Tone: Muted}
	Title  = Style{Size: TitleSize, Bold: true}
	Quiet  = Style{Tone: Muted}
	Strong = Style{Bold: true}
)

func (s Style) size() float32 {
	if s.Size == 0 {
		return Scaled(BodySize)
	}
	return Scaled(s.Size)
}

func (s Style) text(words string) *canvas.Text {
	t := canvas.NewText(words, s.Tone.Color(Current()))
	s.dress(t)
	return t
}

func (s Style) dress(t *canvas.Text) {
	t.Color, t.TextSize, t.Alignment = s.Tone.Color(Current()), s.size(), s.Align
	t.TextStyle = fyne.TextStyle{Bold: s.Bold}
}

func (s Style) measure(words string) fyne.Size {
	return fyne.MeasureText(words, s.size(), fyne.TextStyle{Bold: s.Bold})
}

// Text is one line that follows the theme. What is too long for its place ends in an
// ellipsis; a Text in a flexible place asks for no width of its own.
type Text struct {
	widget.BaseWidget
	words    string
	style    Style
	flexible bool
}

// NewText makes a line that asks for its whole width.
func NewText(words string, style Style) *Text {
	t := &Text{words: words, style: style}
	t.ExtendBaseWidget(t)
	return t
}

// NewFlexible makes a line that takes the width it is given.
func NewFlexible(words string, style Style) *Text {
	t := NewText(words, style)
	t.flexible = true
	return t
}

// Words returns the whole text.
func (t *Text) Words() string { return t.words }

// SetWords changes the text.
func (t *Text) SetWords(words string) {
	if words != t.words {
		t.words = words
		t.Refresh()
	}
}

// SetTone changes the colour.
func (t *Text) SetTone(tone Tone) {
	if tone != t.style.Tone {
		t.style.Tone = tone
		t.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (t *Text) CreateRenderer() fyne.WidgetRenderer {
	return &textRenderer{text: t, line: t.style.text(t.words)}
}

type textRenderer struct {
	text *Text
	line *canvas.Text
}

func (r *textRenderer) MinSize() fyne.Size {
	size := r.text.style.measure(r.text.words)
	if r.text.flexible {
		size.Width = 0
	}
	size.Height = float32(math.Ceil(float64(size.Height))) // else the last row of pixels may be lost
	return size
}

func (r *textRenderer) Layout(size fyne.Size) {
	words := r.text.words
	if r.text.flexible {
		words = r.text.style.fit(words, size.Width)
	}
	if words != r.line.Text {
		r.line.Text = words
		r.line.Refresh()
	}
	r.line.Resize(fyne.NewSize(size.Width, r.line.MinSize().Height))
	r.line.Move(fyne.NewPos(0, float32(math.Floor(float64(size.Height-r.line.MinSize().Height)/2))))
}

func (r *textRenderer) Refresh() {
	r.text.style.dress(r.line)
	r.line.Text = r.text.words
	r.Layout(r.text.Size())
	r.line.Refresh()
}

func (r *textRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.line} }
func (r *textRenderer) Destroy()                     {}

// fit cuts words to a width.
func (s Style) fit(words string, width float32) string {
	if width <= 0 || s.measure(words).Width <= width {
		return words
	}
	letters := []rune(words)
	lo, hi := 0, len(letters)
	for lo < hi {
		mid := (lo + hi + 1) / 2
		if s.measure(string(letters[:mid])+"…").Width <= width {
			lo = mid
		} else {
			hi = mid - 1
		}
	}
	return string(letters[:lo]) + "…"
}
