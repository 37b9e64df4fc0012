package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/board"
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
)

var _ board.Host = (*host)(nil)

// host hands on what happens on the board and in the unfolded room to the tool in hand.
type host struct{ desk *Desk }

// Pointer implements board.Host.
func (h *host) Pointer(kind board.Kind, p tool.Pointer) {
	d := h.desk
	switch kind {
	case board.Down:
		d.said = words.Text{}
		d.tool().Down(d.table, p)
	case board.Double:
		p.Double = true
		d.tool().Down(d.table, p)
	case board.Move:
		d.tool().Move(d.table, p)
	case board.Up:
		d.tool().Up(d.table, p)
	}
	d.showHint()
}

// Key implements board.Host.
func (h *host) Key(k tool.Key) bool {
	d := h.desk
	if k.Rune != 0 {
		return d.typedRune(k.Rune)
	}
	return d.typedKey(keyOf(k.Name))
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

// ViewChanged implements board.Host.
func (h *host) ViewChanged(string) {
	if !h.desk.fitting {
		h.desk.fitted = false
	}
	h.desk.strip.refresh()
}

// PointerAt implements board.Host.
func (h *host) PointerAt(at geom.Point, inside bool) {
	d := h.desk
	d.status.showPlace(at, inside)
	if !inside {
		d.dropGhost()
	}
	if inside && len(d.doc().Selection()) == 0 {
		d.noteRoom(at)
	}
}

// dropGhost takes away what a tool shows at the pointer, once that points at nothing: the
// next move shows it again.
func (d *Desk) dropGhost() {
	p := &d.preview
	if p.Ghost == nil && p.Snap.IsZero() && p.SnapAt == nil {
		return
	}
	if p.Ghost != nil {
		p.Dims = nil // they measure it
	}
	p.Ghost, p.Snap, p.SnapAt = nil, words.Text{}, nil
	d.showPreview()
}

// noteRoom remembers the room the pointer is in, for the unfolded view.
func (d *Desk) noteRoom(at geom.Point) {
	ix := d.doc().Index()
	for _, id := range ix.Search(d.doc().Level(), geom.BoxOf(at)) {
		if id.Kind() != plan.KindRoom || id == d.lastRoom {
			continue
		}
		if r := ix.RoomOf(id); r != nil && r.Outline().InteriorContains(at) {
			d.lastRoom = id
			d.showPicture()
			d.pane.refresh()
			return
		}
	}
}

// shiftHeld reports whether a shift key is down.
func (d *Desk) shiftHeld() bool {
	driver, ok := d.app.Driver().(desktop.Driver)
	return ok && driver.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}
