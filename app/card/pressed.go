package card

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/plan"
)

// pressLine is a button on a card.
type pressLine struct {
	widget.BaseWidget
	press *look.Press
}

func (c Context) newPressLine(label string, do func()) *pressLine {
	text := look.NewText(label, look.Style{Bold: true, Tone: look.Accent})
	p := &pressLine{press: c.newPress(text, look.Outline, 2*look.Grid, look.Grid, do)}
	p.ExtendBaseWidget(p)
	return p
}

// Update implements updater: a button says the same always.
func (p *pressLine) Update() {}

// CreateRenderer implements fyne.Widget.
func (p *pressLine) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(look.Row(0, -1, look.Sized(0, look.HitTarget, p.press)))
}

// rowLine is a row of a list that shows another card where it is pressed.
type rowLine struct {
	widget.BaseWidget
	text *look.Paragraph
	read func() string
	box  *look.Press
}

// row makes a row that says what read returns and chooses a thing.
func (c Context) row(id plan.ID, read func() string) *rowLine {
	r := &rowLine{read: read, text: look.NewParagraph("", look.Body, c.Width-look.Scaled(2*look.Grid))}
	r.box = c.newPress(r.text, look.Bare, look.Grid/2, look.Grid, func() { c.Window.Select(id) })
	r.ExtendBaseWidget(r)
	return r
}

// Update implements updater.
func (r *rowLine) Update() { r.text.SetWords(r.read()) }

// CreateRenderer implements fyne.Widget.
func (r *rowLine) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(r.box) }

// wordsLine is a sentence on a card.
type wordsLine struct {
	widget.BaseWidget
	text *look.Paragraph
	read func() string
}

func (f *form) sentenceLine(read func() string) *wordsLine {
	w := &wordsLine{text: look.NewParagraph(read(), look.Quiet, f.Width), read: read}
	w.ExtendBaseWidget(w)
	return w
}

// Update implements updater.
func (w *wordsLine) Update() { w.text.SetWords(w.read()) }

// CreateRenderer implements fyne.Widget.
func (w *wordsLine) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(w.text) }
