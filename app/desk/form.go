package desk

import (
	"errors"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// asked is one line to fill in of a small form.
type asked struct {
	label string
	text  string // it begins with
	hint  string // how it may be written
	// options are what there is to choose from, in place of a text to write.
	options []string
	// check returns what is wrong with a text, with a sample of what is not; nil: any
	// text will do.
	check func(text string) error
}

// lineFault is an error of do that is of one line of the form.
type lineFault struct {
	line int
	err  error
}

func (f lineFault) Error() string { return f.err.Error() }

// formEntry is a line of a form: Escape gives the form up.
type formEntry struct {
	widget.Entry
	giveUp func()
}

// FocusGained implements fyne.Focusable. Typing replaces a line reached by the keys.
func (e *formEntry) FocusGained() {
	e.Entry.FocusGained()
	e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// TypedKey implements fyne.Focusable.
func (e *formEntry) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape {
		e.giveUp()
		return
	}
	e.Entry.TypedKey(key)
}

// formLine is one line of a form in sight: its entry or choice, and under it what is
// wrong with it, which goes as soon as it is mended.
type formLine struct {
	asked
	form  *openForm
	entry *formEntry // nil where it is chosen
	read  func() string
	wrong *look.Paragraph
	under *fyne.Container // of wrong
}

// openForm is a form in sight.
type openForm struct {
	desk   *Desk
	lines  []*formLine
	wrong  *look.Paragraph // with all of it
	column *fyne.Container
	shown  *raised
	do     func([]string) error
}

// formLabel is the width of the names of lines, as that of a card's: choices stand in line
// with entries.
const formLabel = card.LabelWidth

// form asks for a few texts. Do gets them, each having passed its check, and returns what
// is wrong with them together, which keeps the form open.
func (d *Desk) form(title, body, yes string, lines []asked, do func([]string) error) {
	width := look.Scaled(dialogWidth)
	f := &openForm{desk: d, do: do, wrong: look.NewParagraph("", look.Style{Tone: look.Stop}, width)}
	f.wrong.Hide()
	rows := []fyne.CanvasObject{look.NewParagraph(title, look.Title, width)}
	if body != "" {
		rows = append(rows, look.NewParagraph(body, look.Quiet, width))
	}
	for _, l := range lines {
		rows = append(rows, f.line(l))
	}
	buttons := []*look.Press{
		button(d.say("answer.stay", "Go back"), false, f.giveUp),
		button(yes, true, f.submit),
	}
	f.column = look.Column(look.Grid, append(rows, f.wrong, look.Gap(1, look.Grid/2), buttonRow(buttons...))...)
	f.shown = d.raise(f.column)
	for _, l := range f.lines {
		if l.entry != nil {
			l.hold()
			break
		}
	}
}

func (f *openForm) giveUp() { f.shown.lower() }

// line makes a line of the form.
func (f *openForm) line(of asked) fyne.CanvasObject {
	l := &formLine{asked: of, form: f}
	f.lines = append(f.lines, l)
	if of.options != nil {
		c, read := oneOf(of)
		c.Finds(f.desk.voice)
		c.SetWidth(look.Scaled(dialogWidth))
		c.OnEscape(f.giveUp)
		l.read = read
		return c
	}
	l.entry = &formEntry{giveUp: f.giveUp}
	l.entry.ExtendBaseWidget(l.entry)
	l.entry.SetText(of.text)
	l.entry.SetPlaceHolder(of.hint)
	l.entry.OnSubmitted = func(string) { f.submit() }
	l.entry.OnChanged = func(string) { l.changed() }
	l.read = func() string { return strings.TrimSpace(l.entry.Text) }
	l.wrong = look.NewParagraph("", look.Style{Size: look.SecondSize, Tone: look.Stop}, look.Scaled(dialogWidth-formLabel))
	l.under = look.Inset(formLabel, 0, 0, 0, l.wrong)
	l.under.Hide()
	name := look.Sized(formLabel, 0, look.NewParagraph(of.label, look.Quiet, look.Scaled(formLabel-look.Grid/2)))
	return look.Column(look.Grid/2,
		look.Row(0, 1, name, look.Sized(0, look.HitTarget, l.entry)),
		l.under)
}

// hold puts the line in hand, all of it chosen.
func (l *formLine) hold() {
	l.form.desk.window.Canvas().Focus(l.entry)
	l.entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// judge says what is wrong with the line, and reports whether nothing is.
func (l *formLine) judge() bool {
	var err error
	if l.check != nil {
		err = l.check(l.read())
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
		text = l.form.desk.say("field.wrong", "{0}: {1}", l.label, l.form.desk.errorText(err))
	}
	if text == "" && !l.under.Visible() {
		return
	}
	l.wrong.SetWords(text)
	showIf(l.under, text != "")
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
		showIf(f.wrong, text != "")
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
		var of lineFault
		if !errors.As(err, &of) {
			f.say(f.desk.errorText(err))
			return
		}
		first = f.lines[of.line]
		first.say(of.err)
	}
	if first.entry != nil {
		first.hold()
	}
}

// oneOf is a line of a form that is chosen, and what is chosen of it.
func oneOf(l asked) (*card.Choice, func() string) {
	chosen := l.text
	var c *card.Choice
	c = card.NewChoice(l.label, "", func() (options []card.Option) {
		for _, text := range l.options {
			options = append(options, card.Option{Label: text, Now: text == chosen, Do: func() {
				chosen = text
				c.Update()
			}})
		}
		return options
	})
	return c, func() string { return chosen }
}

// lengthOf reads a length in the units of the plan.
func (d *Desk) lengthOf(text string) (unit.Length, error) { return card.ReadLength(d.voice, text) }

func (d *Desk) isLength(text string) error {
	_, err := d.lengthOf(text)
	return err
}

func (d *Desk) isLengthOverNothing(text string) error {
	l, err := d.lengthOf(text)
	if err == nil && l <= 0 {
		return errors.New(d.say("form.positive", "it must be more than nothing, such as {0}", words.LengthSample(d.voice.System)))
	}
	return err
}

// countOf reads a whole number from 1 to 1000.
func (d *Desk) countOf(text string) (int, error) {
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > 1000 {
		return 0, errors.New(d.say("form.count", "“{0}” is no whole number from 1 to 1000; write it such as 20", text))
	}
	return n, nil
}

func (d *Desk) isCount(text string) error {
	_, err := d.countOf(text)
	return err
}

// isSaid returns a check that something is written, with a sample.
func (d *Desk) isSaid(sample string) func(string) error {
	return func(text string) error {
		if text == "" {
			return errors.New(d.say("form.empty", "write something here, {0}", sample))
		}
		return nil
	}
}
