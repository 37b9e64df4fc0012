package dialog

import (
	"errors"

	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// Line is one line to fill in of a small form.
type Line struct {
	Label string
	Text  string // it begins with
	Hint  string // how it may be written
	// Options are what there is to choose from, in place of a text to write.
	Options []string
	// Told returns the option that the texts of the lines before tell of, and how it is
	// shown as a guess: it is taken until one is chosen. It may be nil.
	Told func(texts []string) (option, shown string)
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
	// Echo returns how what is written is read, or nothing: it is shown while it is typed.
	// It may be nil.
	Echo func(texts []string) string
	// Do gets the texts, each having passed its check, and returns what is wrong with
	// them together, which keeps the form open.
	Do func(texts []string) error
}

// formLine is one line of a form in sight: a field to write in, or a choice.
type formLine struct {
	field  *look.Field // nil where it is chosen
	picked *picked     // nil where it is written
}

func (l *formLine) read() string {
	if l.picked != nil {
		return l.picked.chosen
	}
	return l.field.Text()
}

// openForm is a form in sight.
type openForm struct {
	stage  *Stage
	lines  []*formLine
	wrong  *look.Paragraph // with all of it
	echo   *look.Paragraph
	read   func([]string) string // what the echo says; nil: nothing
	column *fyne.Container
	shown  *raised
	do     func([]string) error
}

// AskForm shows a form.
func (s *Stage) AskForm(of Form) {
	width := look.Scaled(dialogWidth)
	f := &openForm{stage: s, do: of.Do, read: of.Echo, wrong: look.NewParagraph("", look.Style{Tone: look.Stop}, width), echo: look.NewParagraph("", look.Quiet, width)}
	f.wrong.Hide()
	rows := []fyne.CanvasObject{look.NewParagraph(of.Title, look.Title, width)}
	if of.Body != "" {
		rows = append(rows, look.NewParagraph(of.Body, look.Quiet, width))
	}
	for _, l := range of.Lines {
		rows = append(rows, f.line(l))
	}
	buttons := []*look.Press{
		button(s.say("answer.cancel", "Cancel"), false, f.giveUp),
		button(of.Yes, true, f.submit),
	}
	f.sayRead()
	f.column = look.Column(look.Grid, append(rows, f.echo, f.wrong, look.Gap(1, look.Grid/2), buttonRow(buttons...))...)
	f.shown = s.raise(f.column)
	for _, l := range f.lines {
		if l.field != nil {
			l.field.Entry().HoldOn(s.canvas())
			break
		}
	}
}

func (f *openForm) giveUp() { f.shown.lower() }

// line makes a line of the form.
func (f *openForm) line(of Line) fyne.CanvasObject {
	if of.Options != nil {
		c := pick(of)
		c.Finds(f.stage.voice)
		c.SetWidth(look.Scaled(dialogWidth))
		c.OnEscape(f.giveUp)
		c.follow(f.texts())
		f.lines = append(f.lines, &formLine{picked: c})
		return c.Choice
	}
	spec := look.FieldSpec{
		Label: of.Label, Empty: of.Hint, Voice: f.stage.voice, Width: look.Scaled(dialogWidth),
		Read: func() string { return of.Text }, Submit: f.submit, Escape: f.giveUp,
		Changed: f.changed,
	}
	if of.Check != nil {
		spec.Check = func(text string) error { return f.said(of.Check(text)) }
	}
	made := look.NewField(spec)
	f.lines = append(f.lines, &formLine{field: made})
	return made
}

// changed takes what was said of the texts before away, and lets guesses follow.
func (f *openForm) changed() {
	if f.column == nil { // it is not in sight yet
		return
	}
	f.say("")
	texts := f.texts()
	for i, l := range f.lines {
		if l.picked != nil {
			l.picked.follow(texts[:i])
		}
	}
	f.sayRead()
	f.column.Refresh()
}

// texts returns what stands in the lines.
func (f *openForm) texts() (all []string) {
	for _, l := range f.lines {
		all = append(all, l.read())
	}
	return all
}

// said is an error in the voice of the stage; no error stays none.
func (f *openForm) said(err error) error {
	if err == nil {
		return nil
	}
	return errors.New(f.stage.ErrorText(err))
}

// sayRead shows how what is written is read.
func (f *openForm) sayRead() {
	text := ""
	if f.read != nil {
		text = f.read(f.texts())
	}
	f.echo.SetWords(text)
	look.ShowIf(f.echo, text != "")
}

// say shows what is wrong with all of the form, or nothing.
func (f *openForm) say(text string) {
	if text != "" || f.wrong.Visible() {
		f.wrong.SetWords(text)
		look.ShowIf(f.wrong, text != "")
		f.column.Refresh()
	}
}

// give takes the form away. What its answer raised above it stays: the toolkit takes that
// out with the form, so it is stood there once more.
func (f *openForm) give(next *raised) {
	if next == nil || next == f.shown {
		f.shown.lower()
		return
	}
	next.lower()
	f.shown.lower()
	next.again()
	f.stage.focused()
}

// submit does what the form is for, or says at each line what is wrong with it.
func (f *openForm) submit() {
	var first *formLine
	texts := f.texts()
	for _, l := range f.lines {
		if l.field != nil && !l.field.Judge() && first == nil {
			first = l
		}
	}
	f.say("")
	if first == nil {
		err := f.do(texts)
		if err == nil {
			f.give(f.stage.open)
			return
		}
		var of LineFault
		if !errors.As(err, &of) {
			f.say(f.stage.ErrorText(err))
			return
		}
		if first = f.lines[of.Line]; first.field != nil {
			first.field.Complain(f.said(of.Err))
		}
	}
	f.column.Refresh()
	if first.field != nil {
		first.field.Entry().HoldOn(f.stage.canvas())
	}
}
