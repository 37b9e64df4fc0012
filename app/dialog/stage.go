package dialog

import (
	"errors"
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/fill/choose"
	"studbay/fill/price"
	"studbay/plan/file"
	"studbay/plan/words"
	"studbay/render/revision"
)

// Stage is the place above one window where its dialogs stand.
type Stage struct {
	window  fyne.Window
	post    func(func())
	folders Folders
	voice   words.Voice
	// prices are those that the plan names, nil: the trial prices; pricesAt is where they were
	// looked for last.
	prices   *price.Book
	pricesAt string
	// ownPolicy is the user's own, made in the choice of boxes; none has no lines.
	ownPolicy []choose.OwnRow
	// older is the plan that was compared with last, and how its file is called; nil: none was.
	older     *revision.Side
	olderName string
	open      *raised // or nil
	cancel    func()  // of the export under way, or nil
	closed    bool
}

// NewStage makes the stage of a window. Post brings a function to the window's goroutine,
// from any other.
func NewStage(window fyne.Window, post func(func()), folders Folders) *Stage {
	s := &Stage{window: window, post: post, folders: folders}
	s.ownPolicy, _ = choose.ReadOwn("", strings.NewReader(folders.OwnPolicy())) // what cannot be read is none
	return s
}

// SetVoice says in which language and units dialogs speak from now on.
func (s *Stage) SetVoice(v words.Voice) { s.voice = v }

// IsOpen reports whether a dialog waits for its answer.
func (s *Stage) IsOpen() bool { return s.open != nil }

// Close is told that the window goes: nothing is shown any more, and an export under way
// is given up.
func (s *Stage) Close() {
	s.closed = true
	if s.cancel != nil {
		s.cancel()
	}
}

func (s *Stage) canvas() fyne.Canvas { return s.window.Canvas() }

func (s *Stage) say(id, english string, args ...any) string {
	return s.voice.Say(words.New(id, english, args...))
}

// raised is something that stands above the window until it is answered.
type raised struct {
	stage *Stage
	pop   *widget.PopUp
	home  fyne.Focusable // what has the focus first; nil: the first that can have it
	under *raised        // what waited when it was stood there; nil: nothing did
}

// raise stands content above the window.
func (s *Stage) raise(content fyne.CanvasObject) *raised {
	r := &raised{stage: s, pop: widget.NewModalPopUp(look.Inset(16, 12, 16, 12, content), s.canvas())}
	r.again()
	return r
}

// again stands it there, at first or once more.
func (r *raised) again() {
	if r.stage.open != r {
		r.under = r.stage.open
	}
	r.stage.open = r
	r.pop.Show()
}

// Key gives a key to the dialog in sight where nothing of it has the focus, as after a
// click beside it: its first line or its last answer has it again.
func (s *Stage) Key(name fyne.KeyName) bool {
	f := s.focused()
	if f != nil {
		f.TypedKey(&fyne.KeyEvent{Name: name})
	}
	return f != nil
}

// Rune is Key for a character.
func (s *Stage) Rune(r rune) bool {
	f := s.focused()
	if f != nil {
		f.TypedRune(r)
	}
	return f != nil
}

// focused gives the focus to what of the open dialog had it first, and returns it: nil
// where no dialog waits, or where something has the focus already.
func (s *Stage) focused() fyne.Focusable {
	on := s.canvas()
	if s.open == nil || on.Focused() != nil {
		return nil
	}
	if s.open.home != nil {
		on.Focus(s.open.home)
	} else {
		on.FocusNext()
	}
	return on.Focused()
}

// lower takes it away.
func (r *raised) lower() {
	r.pop.Hide()
	if r.stage.open != r {
		return
	}
	for r.stage.open = r.under; r.stage.open != nil && !r.stage.open.pop.Visible(); r.stage.open = r.stage.open.under {
	}
}

// ErrorText says an error in the window's voice where it is one of ours.
func (s *Stage) ErrorText(err error) string {
	var wrong *file.Error
	if errors.As(err, &wrong) {
		text := wrong.File + "\n" + sentence(s.voice.Say(wrong.Text()))
		if wrong.Place != "" {
			text += "\n" + s.say("error.place", "Line {0}, at {1}", wrong.Line, wrong.Place)
		}
		return text
	}
	return look.ErrorText(s.voice, err)
}

// sentence returns an error's text as a sentence of its own.
func sentence(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	text = string(unicode.ToUpper(first)) + text[size:]
	if strings.HasSuffix(text, ".") {
		return text
	}
	return text + "."
}
