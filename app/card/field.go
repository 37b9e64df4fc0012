package card

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/plan/words"
)

// LabelWidth is that of the names of fields, with the gap after them, in units.
const LabelWidth = 112

// newName makes the name of a field, on two lines where it is long.
func newName(label string) *look.Paragraph {
	return look.NewParagraph(label, look.Quiet, look.Scaled(LabelWidth-look.Grid/2))
}

// Spec is what a field shows and does.
type Spec struct {
	Label string
	// Read returns the text of the plan as it is now.
	Read func() string
	// Write makes the edit. Its error is shown under the field, and what was typed
	// stays. Nil: the field only shows.
	Write func(text string) error
	// Check returns what is wrong with a text before it is written, so that a complaint
	// goes as soon as the text is mended; nil: any change mends it.
	Check func(text string) error
	// Empty stands in the field while there is nothing in it.
	Empty string
	Lines int // over 1: a field of several lines
}

// Field is a name, an entry and a line for what is wrong with what was typed.
type Field struct {
	widget.BaseWidget
	spec  Spec
	label *look.Paragraph
	entry *Entry
	note  *look.Paragraph
	under *fyne.Container // of the note
	box   *fyne.Container
	voice words.Voice
	shown string // what the plan says; a text equal to it is not an edit
	wrong bool
}

// NewField makes a field for a column of a width.
func NewField(c Context, spec Spec) *Field {
	f := &Field{spec: spec, voice: c.Voice, entry: newEntry()}
	f.note = look.NewParagraph("", look.Style{Size: look.SecondSize, Tone: look.Stop}, c.Width-look.Scaled(LabelWidth))
	f.under = look.Inset(LabelWidth, 0, 0, 0, f.note)
	f.under.Hide()
	f.entry.done, f.entry.giveUp = f.commit, f.stepBack
	f.entry.dirty = func() bool { return f.entry.Text != f.shown }
	if c.Window != nil {
		f.entry.shortcut = c.Window.Shortcut
		f.entry.focused = func() { c.Window.Reveal(f.entry) }
	}
	f.entry.OnChanged = func(string) { f.changed() }
	f.entry.PlaceHolder = spec.Empty
	if spec.Lines > 1 {
		f.entry.MultiLine = true
		f.entry.Wrapping = fyne.TextWrapWord
		f.entry.SetMinRowsVisible(spec.Lines)
	}
	if spec.Write == nil {
		f.entry.Disable()
	}
	f.label = newName(spec.Label)
	f.box = look.Column(look.Grid/2,
		look.Row(0, 1, look.Sized(LabelWidth, 0, f.label), f.line(spec)),
		f.under)
	f.ExtendBaseWidget(f)
	f.Update()
	return f
}

// line is the entry at its height: what is pressed is never lower than a hit target.
func (f *Field) line(spec Spec) fyne.CanvasObject {
	if spec.Lines > 1 {
		return f.entry
	}
	return look.Sized(0, look.HitTarget, f.entry)
}

// Update shows what the plan says now, unless something is being typed.
func (f *Field) Update() {
	text := f.spec.Read()
	if text == f.shown {
		return
	}
	if f.entry.Text != f.shown && f.wrong {
		f.shown = text // keep what is wrong for its writer to mend
		return
	}
	f.shown = text
	f.entry.SetText(text)
	f.say("")
}

// SetLabel changes the field's name.
func (f *Field) SetLabel(label string) { f.label.SetWords(label) }

// Entry returns the line of text, for focus and tests.
func (f *Field) Entry() *Entry { return f.entry }

// Wrong returns what is wrong with what was typed, or nothing.
func (f *Field) Wrong() string {
	if !f.wrong {
		return ""
	}
	return f.note.Words()
}

// commit makes the edit where the text differs from what the plan says.
func (f *Field) commit() {
	if f.spec.Write == nil || f.entry.Text == f.shown {
		f.say("")
		return
	}
	if err := f.spec.Write(f.entry.Text); err != nil {
		f.complain(err)
		return
	}
	f.say("")
	f.shown = f.spec.Read()
	f.entry.SetText(f.shown)
}

// changed takes a complaint away once the text is mended.
func (f *Field) changed() {
	if !f.wrong {
		return
	}
	if f.spec.Check != nil && f.entry.Text != f.shown {
		if err := f.spec.Check(f.entry.Text); err != nil {
			f.complain(err)
			return
		}
	}
	f.say("")
}

// complain says under the entry what is wrong with it, by its name.
func (f *Field) complain(err error) {
	said := err.Error()
	if name := f.label.Words(); name != "" { // further lines of a list have none
		said = f.voice.Say(words.New("field.wrong", "{0}: {1}", name, said))
	}
	f.say(said)
}

// stepBack gives up what was typed, or leaves the field where nothing was.
func (f *Field) stepBack() {
	if f.entry.Text != f.shown || f.wrong {
		f.restore()
		return
	}
	if on := fyne.CurrentApp().Driver().CanvasForObject(f.entry); on != nil {
		on.Unfocus()
	}
}

// restore gives up what was typed.
func (f *Field) restore() {
	f.entry.SetText(f.shown)
	f.say("")
}

func (f *Field) say(wrong string) {
	if f.wrong = wrong != ""; !f.wrong && f.under.Hidden {
		return
	}
	f.note.SetWords(wrong)
	f.under.Hidden = !f.wrong
	f.box.Refresh()
	f.Refresh()
}

// CreateRenderer implements fyne.Widget.
func (f *Field) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(f.box) }
