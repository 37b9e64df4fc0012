package dialog

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/card"
	"studbay/app/look"
)

// Line is one line to fill in of a small form.
type Line struct {
	Label string
	Text  string // it begins with
	Hint  string // how it may be written
	// Options are what there is to choose from, in place of a text to write.
	Options []string
	// Check returns what is wrong with a text, with a sample of what is not; nil: any
	// text will do.
	Check func(text string) error
}

// LineFault is an error of a form's Do that is of one of its lines, counted from 0.
type LineFault struct {
	Line int
	Err  error
}

func (f LineFault) Error() string { return f.Err.Error() }

// Form asks for a few texts.
type Form struct {
	Title, Body string
	Yes         string // the answer that does it
	Lines       []Line
	// Do gets the texts, each having passed its check, and returns what is wrong with
	// them together, which keeps the form open.
	Do func(texts []string) error
}

// LineEntry is a line of a form that is written in: Escape gives the form up.
type LineEntry struct {
	widget.Entry
	giveUp func()
}

// FocusGained implements fyne.Focusable. Typing replaces a line reached by the keys.
func (e *LineEntry) FocusGained() {
	e.Entry.FocusGained()
	e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// TypedKey implements fyne.Focusable.
func (e *LineEntry) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape {
		e.giveUp()
		return
	}
	e.Entry.TypedKey(key)
}

// formLine is one line of a form in sight: its entry or choice, and under it what is
// wrong with it, which goes as soon as it is mended.
type formLine struct {
	Line
	form  *openForm
	entry *LineEntry // nil where it is chosen
	read  func() string
	wrong *look.Paragraph
	under *fyne.Container // of wrong
}

// openForm is a form in sight.
type openForm struct {
	stage  *Stage
	lines  []*formLine
	wrong  *look.Paragraph // with all of it
	column *fyne.Container
	shown  *raised
	do     func([]string) error
}

// formLabel is the width of the names of lines, as that of a card's: choices stand in line
// with entries.
const formLabel = card.LabelWidth

// AskForm shows a form.
func (s *Stage) AskForm(of Form) {
	width := look.Scaled(dialogWidth)
	f := &openForm{stage: s, do: of.Do, wrong: look.NewParagraph("", look.Style{Tone: look.Stop}, width)}
	f.wrong.Hide()
	rows := []fyne.CanvasObject{look.NewParagraph(of.Title, look.Title, width)}
	if of.Body != "" {
		rows = append(rows, look.NewParagraph(of.Body, look.Quiet, width))
	}
	for _, l := range of.Lines {
		rows = append(rows, f.line(l))
	}
	buttons := []*look.Press{
		button(s.say("answer.stay", "Go back"), false, f.giveUp),
		button(of.Yes, true, f.submit),
	}
	f.column = look.Column(look.Grid, append(rows, f.wrong, look.Gap(1, look.Grid/2), buttonRow(buttons...))...)
	f.shown = s.raise(f.column)
	for _, l := range f.lines {
		if l.entry != nil {
			l.hold()
			break
		}
	}
}

func (f *openForm) giveUp() { f.shown.lower() }

// line makes a line of the form.
func (f *openForm) line(of Line) fyne.CanvasObject {
	l := &formLine{Line: of, form: f}
	f.lines = append(f.lines, l)
	if of.Options != nil {
		c, read := oneOf(of)
		c.Finds(f.stage.voice)
		c.SetWidth(look.Scaled(dialogWidth))
		c.OnEscape(f.giveUp)
		l.read = read
		return c
	}
	l.entry = &LineEntry{giveUp: f.giveUp}
	l.entry.ExtendBaseWidget(l.entry)
	l.entry.SetText(of.Text)
	l.entry.SetPlaceHolder(of.Hint)
	l.entry.OnSubmitted = func(string) { f.submit() }
	l.entry.OnChanged = func(string) { l.changed() }
	l.read = func() string { return strings.TrimSpace(l.entry.Text) }
	l.wrong = look.NewParagraph("", look.Style{Size: look.SecondSize, Tone: look.Stop}, look.Scaled(dialogWidth-formLabel))
	l.under = look.Inset(formLabel, 0, 0, 0, l.wrong)
	l.under.Hide()
	name := look.Sized(formLabel, 0, look.NewParagraph(of.Label, look.Quiet, look.Scaled(formLabel-look.Grid/2)))
	return look.Column(look.Grid/2,
		look.Row(0, 1, name, look.Sized(0, look.HitTarget, l.entry)),
		l.under)
}

// hold puts the line in hand, all of it chosen.
func (l *formLine) hold() {
	l.form.stage.canvas().Focus(l.entry)
	l.entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// judge says what is wrong with the line, and reports whether nothing is.
func (l *formLine) judge() bool {
	var err error
	if l.Check != nil {
		err = l.Check(l.read())
	}
	l.say(err)
	return err == nil
}

// say shows what is wrong at the line; nil is nothing.
func (l *formLine) say(err error) {
	if l.wrong == nil {
		return
	}
	text := ""
	if err != nil {
		text = l.form.stage.say("field.wrong", "{0}: {1}", l.Label, l.form.stage.ErrorText(err))
	}
	if text == "" && !l.under.Visible() {
		return
	}
	l.wrong.SetWords(text)
	look.ShowIf(l.under, text != "")
	l.form.column.Refresh()
}

// changed takes what was said of the text before away; where the line had been found
// wrong, it stays so only while it is.
func (l *formLine) changed() {
	if l.form.column == nil { // not in sight yet
		return
	}
	l.form.say("")
	if l.under.Visible() {
		l.judge()
	}
}

// say shows what is wrong with all of the form, or nothing.
func (f *openForm) say(text string) {
	if text != "" || f.wrong.Visible() {
		f.wrong.SetWords(text)
		look.ShowIf(f.wrong, text != "")
		f.column.Refresh()
	}
}

// submit does what the form is for, or says at each line what is wrong with it.
func (f *openForm) submit() {
	var first *formLine
	texts := make([]string, len(f.lines))
	for i, l := range f.lines {
		texts[i] = l.read()
		if !l.judge() && first == nil {
			first = l
		}
	}
	f.say("")
	if first == nil {
		err := f.do(texts)
		if err == nil {
			f.shown.lower()
			return
		}
		var of LineFault
		if !errors.As(err, &of) {
			f.say(f.stage.ErrorText(err))
			return
		}
		first = f.lines[of.Line]
		first.say(of.Err)
	}
	if first.entry != nil {
		first.hold()
	}
}

// oneOf is a line of a form that is chosen, and what is chosen of it.
func oneOf(l Line) (*card.Choice, func() string) {
	chosen := l.Text
	var c *card.Choice
	c = card.NewChoice(l.Label, "", func() (options []card.Option) {
		for _, text := range l.Options {
			options = append(options, card.Option{Label: text, Now: text == chosen, Do: func() {
				chosen = text
				c.Update()
			}})
		}
		return options
	})
	return c, func() string { return chosen }
}
