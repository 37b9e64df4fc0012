package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/board"
	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/plan/geom"
	"studbay/plan/words"
)

var _ board.Listener = (*boardEvents)(nil)

// boardEvents hands on what happens on the board and in the unfolded room to the tool in
// hand.
type boardEvents struct {
	hand   *hand
	keys   *keyboard
	view   *view
	status *shell.Status
	menu   func(tool.Pointer, fyne.Position)
}

// Pointer implements board.Listener.
func (e *boardEvents) Pointer(kind board.Kind, p tool.Pointer) {
	h := e.hand
	e.keys.altAlone = false // it goes with the pointer
	h.pointed(p)
	switch kind {
	case board.Down:
		h.forgive()
		h.said = words.Text{}
		h.tool().Down(h.window, p)
	case board.Double:
		p.Double = true
		h.tool().Down(h.window, p)
	case board.Move:
		h.tool().Move(h.window, p)
	case board.Up:
		h.tool().Up(h.window, p)
	}
	h.shown.showHint()
}

// Menu implements board.Listener.
func (e *boardEvents) Menu(p tool.Pointer, at fyne.Position) {
	e.keys.altAlone = false
	e.menu(p, at)
}

// Key implements board.Listener.
func (e *boardEvents) Key(k tool.Key) bool {
	if k.Rune != 0 {
		return e.keys.typedRune(k.Rune)
	}
	return e.keys.typed(keyOf(k.Name))
}

// keyOf returns the toolkit's name of a key that a board names.
func keyOf(name string) fyne.KeyName {
	switch name {
	case "Enter":
		return fyne.KeyReturn
	case "Backspace":
		return fyne.KeyBackspace
	}
	return fyne.KeyName(name)
}

// ViewChanged implements board.Listener.
func (e *boardEvents) ViewChanged(string) {
	e.keys.altAlone = false
	e.view.moved()
}

// PointerAt implements board.Listener.
func (e *boardEvents) PointerAt(at geom.Point, inside bool) {
	e.status.ShowPlace(at, inside)
	if !inside {
		e.hand.dropGhost()
		return
	}
	e.view.pointedAt(at)
}
