package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill"
)

// form is a card of a heading, fields, and the findings of its thing.
type form struct {
	Context
	// heading says the two lines at the top; it reports false once the thing is gone.
	heading func() (title, second string, ok bool)
	found   func(fill.Finding) bool // which findings are of it; nil: none are shown

	title    *look.Paragraph
	second   *look.Paragraph
	fields   []updater
	findings *fyne.Container
	root     *fyne.Container
}

// line is one row of a form.
type line interface {
	fyne.CanvasObject
	updater
}

// lay builds the form: the lines in sight, then those behind a fold.
func (f *form) lay(lines, folded []line, more ...fyne.CanvasObject) {
	f.title = look.NewParagraph("", look.Style{Size: look.TagSize, Bold: true}, f.Width)
	f.second = look.NewParagraph("", look.Second, f.Width)
	f.findings = look.Column(look.Grid)
	objects := []fyne.CanvasObject{look.Column(look.Grid/2, f.title, f.second)}
	objects = append(objects, f.take(lines)...)
	if len(folded) > 0 {
		objects = append(objects, NewFold(f.Context, f.say("card.more", "More"), look.Column(look.Grid, f.take(folded)...)))
	}
	f.root = look.Column(look.Grid, append(append(objects, more...), f.findings)...)
}

func (f *form) take(lines []line) (objects []fyne.CanvasObject) {
	for _, l := range lines {
		f.fields = append(f.fields, l)
		f.revealed(l)
		objects = append(objects, l)
	}
	return objects
}

// revealed scrolls a choice into sight when it gets the focus, as a field does itself, and
// lets an option of a long list be found by typing.
func (c Context) revealed(o fyne.CanvasObject) {
	if choice, ok := o.(*Choice); ok {
		choice.OnFocus(func() { c.Window.Reveal(choice) })
		choice.Finds(c.Voice)
		choice.SetWidth(c.Width)
	}
}

// Object implements Card.
func (f *form) Object() fyne.CanvasObject { return f.root }

// Show implements Card.
func (f *form) Show(c Context) bool {
	was := f.Width
	f.Context = c
	title, second, ok := f.heading()
	if !ok || was != c.Width {
		return false
	}
	f.title.SetWords(title)
	f.second.SetWords(second)
	for _, field := range f.fields {
		field.Update()
	}
	f.findings.Objects = nil
	if f.found != nil {
		f.findings.Objects = f.findingsOf(f.found)
	}
	f.root.Refresh()
	return true
}

// ready shows the form for the first time; it returns nil where its thing is gone.
func (f *form) ready() Card {
	if !f.Show(f.Context) {
		return nil
	}
	return f
}
