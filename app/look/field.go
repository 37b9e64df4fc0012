package look

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/plan/words"
)

// LabelWidth is that of the names of fields, with the gap after them, in units.
const LabelWidth = 112

// newName makes the name of a field, on two lines where it is long.
func newName(label string) *Paragraph {
	return NewParagraph(label, Quiet, Scaled(LabelWidth-Grid/2))
}

// FieldSpec is what a field shows and does. A field of something that is kept (a plan)
// has Write and is written when it is left; one of a form has Submit and is asked.
type FieldSpec struct {
	Label string
	Voice words.Voice
	Width float32 // of the whole field, in pixels
	// Read returns the text as it is kept now; nil: nothing is kept.
	Read func() string
	// Write keeps another text. Its error is shown under the field, and what was typed
	// stays.
	Write func(text string) error
	// Submit is what Enter does in place of writing. A field with neither only shows.
	Submit func()
	// Check returns what is wrong with a text before it is written, so that a complaint
	// goes as soon as the text is mended; nil: any change mends it.
	Check func(text string) error
	// Changed is told of every change of the text; it may be nil.
	Changed func()
	// Escape is what that key does in place of giving up what was typed.
	Escape func()
	// Done is told once Enter has written a text, or left it as it was; it may be nil.
	Done     func()
	Shortcut func(fyne.Shortcut) bool // as an Entry's
	Focused  func(fyne.CanvasObject)  // the entry has got the focus; it may be nil
	Empty    string                   // stands in the field while there is nothing in it
	Lines    int                      // over 1: a field of several lines
}

// Field is a name, an entry and a line for what is wrong with what was typed.
type Field struct {
	widget.BaseWidget
	spec  FieldSpec
	label *Paragraph
	entry *Entry
	note  *Paragraph
	under *fyne.Container // of the note
	box   *fyne.Container
	shown string // what is kept; a text equal to it is no change
	wrong bool
}

// NewField makes a field.
func NewField(spec FieldSpec) *Field {
	f := &Field{spec: spec, label: newName(spec.Label), entry: NewEntry()}
	f.note = NewParagraph("", Style{Size: SecondSize, Tone: Stop}, spec.Width-Scaled(LabelWidth))
	f.under = Inset(LabelWidth, 0, 0, 0, f.note)
	f.under.Hide()
	f.wire()
	f.box = Column(Grid/2,
		Row(0, 1, Sized(LabelWidth, 0, f.label), f.line()),
		f.under)
	f.ExtendBaseWidget(f)
	f.Update()
	return f
}

// wire says what the entry's keys do.
func (f *Field) wire() {
	e, spec := f.entry, f.spec
	e.PlaceHolder = spec.Empty
	e.OnChanged = func(string) { f.changed() }
	e.OnShortcut = spec.Shortcut
	if spec.Focused != nil {
		e.OnFocus = func() { spec.Focused(e) }
	}
	if e.OnEscape = spec.Escape; spec.Escape == nil {
		e.OnEscape = f.stepBack
	}
	switch {
	case spec.Submit != nil:
		e.OnSubmitted = func(string) { spec.Submit() }
		return
	case spec.Write == nil:
		e.Disable()
	}
	e.dirty = f.IsDirty
	e.OnSubmitted = func(string) {
		if f.Commit(); !f.wrong && spec.Done != nil {
			spec.Done()
		}
	}
	e.OnLeave = f.Commit
}

// line is the entry at its height: what is pressed is never lower than a hit target.
func (f *Field) line() fyne.CanvasObject {
	if f.spec.Lines > 1 {
		f.entry.MultiLine = true
		f.entry.Wrapping = fyne.TextWrapWord
		f.entry.SetMinRowsVisible(f.spec.Lines)
		return f.entry
	}
	return Sized(0, HitTarget, f.entry)
}

// Update shows what is kept now, unless something wrong is being typed: that stays for
// its writer to mend.
func (f *Field) Update() {
	if f.spec.Read == nil {
		return
	}
	text := f.spec.Read()
	if text == f.shown {
		return
	}
	mending := f.IsDirty() && f.wrong
	if f.shown = text; mending {
		return
	}
	f.Restore()
}

// Label returns the field's name.
func (f *Field) Label() string { return f.label.Words() }

// SetLabel changes the field's name.
func (f *Field) SetLabel(label string) { f.label.SetWords(label) }

// Entry returns the line of text.
func (f *Field) Entry() *Entry { return f.entry }

// Text returns what stands in the field, without blanks about it.
func (f *Field) Text() string { return strings.TrimSpace(f.entry.Text) }

// IsDirty reports whether what stands in the field is not what is kept.
func (f *Field) IsDirty() bool { return f.entry.Text != f.shown }

// Wrong returns what is wrong with what was typed, or nothing.
func (f *Field) Wrong() string {
	if !f.wrong {
		return ""
	}
	return f.note.Words()
}

// Commit keeps the text where it differs from what is kept.
func (f *Field) Commit() {
	if f.spec.Write == nil || !f.IsDirty() {
		f.say("")
		return
	}
	if err := f.spec.Write(f.entry.Text); err != nil {
		f.Complain(err)
		return
	}
	f.shown = f.spec.Read()
	f.Restore()
}

// Judge says what the check finds wrong with the text, and reports whether that is
// nothing.
func (f *Field) Judge() bool {
	var err error
	if f.spec.Check != nil {
		err = f.spec.Check(f.Text())
	}
	f.Complain(err)
	return err == nil
}

// changed takes a complaint away once the text is mended.
func (f *Field) changed() {
	switch {
	case !f.wrong:
	case f.spec.Check != nil && (f.IsDirty() || f.spec.Submit != nil):
		f.Judge()
	default:
		f.say("")
	}
	if f.spec.Changed != nil {
		f.spec.Changed()
	}
}

// Complain says under the entry what is wrong with it, by its name; nil is nothing. The
// error is said as it says itself.
func (f *Field) Complain(err error) {
	if err == nil {
		f.say("")
		return
	}
	said := err.Error()
	if name := f.Label(); name != "" { // further lines of a list have none
		said = f.spec.Voice.Say(words.New("field.wrong", "{0}: {1}", name, said))
	}
	f.say(said)
}

// stepBack gives up what was typed, or leaves the field where nothing was.
func (f *Field) stepBack() {
	if f.IsDirty() || f.wrong {
		f.Restore()
		return
	}
	if on := canvasOf(f.entry); on != nil {
		on.Unfocus()
	}
}

// Restore shows what is kept in place of what was typed.
func (f *Field) Restore() {
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
