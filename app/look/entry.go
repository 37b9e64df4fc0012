package look

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Entry is a line of text to write. Escape is its owner's, and so are the shortcuts that
// are of the window: a focused entry would swallow them.
type Entry struct {
	widget.Entry
	OnEscape   func()                   // nil does nothing
	OnFocus    func()                   // it has got the focus; nil does nothing
	OnLeave    func()                   // the focus has moved on; nil does nothing
	OnShortcut func(fyne.Shortcut) bool // reports whether the window had a use for one; nil: it has none
	// dirty reports whether what stands in it is kept nowhere yet; nil: it is no concern.
	dirty func() bool
}

// NewEntry makes an empty entry.
func NewEntry() *Entry {
	e := &Entry{}
	e.ExtendBaseWidget(e)
	return e
}

// FocusGained implements fyne.Focusable. A line reached by the keys is chosen whole, so
// that typing replaces it; a click that brings the focus undoes that.
func (e *Entry) FocusGained() {
	e.Entry.FocusGained()
	e.chooseAll()
	if e.OnFocus != nil {
		e.OnFocus()
	}
}

func (e *Entry) chooseAll() {
	if !e.MultiLine {
		e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
}

// FocusLost implements fyne.Focusable.
func (e *Entry) FocusLost() {
	e.Entry.FocusLost()
	if e.OnLeave != nil {
		e.OnLeave()
	}
}

// KeyDown and KeyUp implement desktop.Keyable: the window sees the keys too.
func (e *Entry) KeyDown(key *fyne.KeyEvent) {
	e.Entry.KeyDown(key)
	KeyDownOn(e, key)
}

// KeyUp implements desktop.Keyable.
func (e *Entry) KeyUp(key *fyne.KeyEvent) {
	e.Entry.KeyUp(key)
	KeyUpOn(e, key)
}

// KeyDownOn tells the window that a key has gone down while something in it has the focus.
func KeyDownOn(in fyne.CanvasObject, key *fyne.KeyEvent) {
	if on, ok := canvasOf(in).(desktop.Canvas); ok && on.OnKeyDown() != nil {
		on.OnKeyDown()(key)
	}
}

// KeyUpOn is KeyDownOn for a key that has come up.
func KeyUpOn(in fyne.CanvasObject, key *fyne.KeyEvent) {
	if on, ok := canvasOf(in).(desktop.Canvas); ok && on.OnKeyUp() != nil {
		on.OnKeyUp()(key)
	}
}

// isOfWindow reports whether a key means nothing in a line of text.
func isOfWindow(name fyne.KeyName) bool { return len(name) > 1 && name[0] == 'F' && name[1] <= '9' }

// TypedKey implements fyne.Focusable.
func (e *Entry) TypedKey(key *fyne.KeyEvent) {
	if on := canvasOf(e); isOfWindow(key.Name) && on != nil && on.OnTypedKey() != nil {
		on.OnTypedKey()(key)
		return
	}
	if key.Name == fyne.KeyEscape {
		if e.OnEscape != nil {
			e.OnEscape()
		}
		return
	}
	e.Entry.TypedKey(key)
}

// TypedShortcut implements fyne.Shortcutable. Undo and redo are of the text while it is
// kept nowhere yet, and the window's otherwise.
func (e *Entry) TypedShortcut(s fyne.Shortcut) {
	switch s.(type) {
	case *fyne.ShortcutCopy, *fyne.ShortcutCut, *fyne.ShortcutPaste, *fyne.ShortcutSelectAll:
		e.Entry.TypedShortcut(s)
		return
	case *fyne.ShortcutUndo, *fyne.ShortcutRedo:
		if e.IsDirty() {
			e.Entry.TypedShortcut(s)
			return
		}
	}
	if e.OnShortcut == nil || !e.OnShortcut(s) {
		e.Entry.TypedShortcut(s)
	}
}

// IsDirty reports whether what stands in it is kept nowhere yet.
func (e *Entry) IsDirty() bool { return e.dirty != nil && e.dirty() }

// Hold puts the entry in hand, all of it chosen. It must have been painted: the driver
// knows no canvas of one that was not, and then HoldOn is told which.
func (e *Entry) Hold() {
	if on := canvasOf(e); on != nil {
		e.HoldOn(on)
	}
}

// HoldOn puts an entry in hand that stands on a canvas, painted or not.
func (e *Entry) HoldOn(on fyne.Canvas) {
	on.Focus(e)
	e.chooseAll()
}
