package card

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Entry is a field's line of text. It tells when what was typed is done with (Enter,
// or the focus moving on), takes Escape to give up, and hands on shortcuts that are
// of the window: a focused entry would swallow them.
type Entry struct {
	widget.Entry
	done     func()
	giveUp   func()
	dirty    func() bool
	shortcut func(fyne.Shortcut) bool
	focused  func() // it has got the focus; it may be nil
}

func newEntry() *Entry {
	e := &Entry{}
	e.ExtendBaseWidget(e)
	e.OnSubmitted = func(string) { e.done() }
	return e
}

// FocusGained implements fyne.Focusable. A line reached by the keys is chosen whole, so
// that typing replaces it; a click that brings the focus undoes that.
func (e *Entry) FocusGained() {
	e.Entry.FocusGained()
	if !e.MultiLine {
		e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	if e.focused != nil {
		e.focused()
	}
}

// FocusLost implements fyne.Focusable.
func (e *Entry) FocusLost() {
	e.Entry.FocusLost()
	e.done()
}

// TypedKey implements fyne.Focusable.
func (e *Entry) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape {
		e.giveUp()
		return
	}
	e.Entry.TypedKey(key)
}

// TypedShortcut implements fyne.Shortcutable. Undo and redo are of the text while it
// differs from the plan, and of the plan otherwise.
func (e *Entry) TypedShortcut(s fyne.Shortcut) {
	switch s.(type) {
	case *fyne.ShortcutCopy, *fyne.ShortcutCut, *fyne.ShortcutPaste, *fyne.ShortcutSelectAll:
		e.Entry.TypedShortcut(s)
		return
	case *fyne.ShortcutUndo, *fyne.ShortcutRedo:
		if e.dirty() {
			e.Entry.TypedShortcut(s)
			return
		}
	}
	if e.shortcut == nil || !e.shortcut(s) {
		e.Entry.TypedShortcut(s)
	}
}

// IsDirty reports whether what stands in it is not in the plan.
func (e *Entry) IsDirty() bool { return e.dirty != nil && e.dirty() }
