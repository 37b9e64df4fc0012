package board

import (
	"math"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
)

// reach is how near the pointer must be to what it points at, in units.
const reach = 9

// The limits within which two presses are a double click: common practice.
const (
	doubleTime = 400 * time.Millisecond
	doubleWay  = 4 // units
)

// mouse turns the toolkit's events into what a listener is told.
type mouse struct {
	listener Listener
	// pointer returns what tools are told of a place, and false where there is nothing
	// to point at.
	pointer func(fyne.Position, fyne.KeyModifier) (tool.Pointer, bool)
	// pan moves the view between two places; nil where it does not move.
	pan func(from, to fyne.Position)
	// hover is told where the pointer is; nil: elsewhere.
	hover func(*fyne.Position)
	// idle reports whether nothing is in hand that follows the pointer.
	idle    func() bool
	limiter limiter // of moves while idle

	button  desktop.MouseButton // held; 0: none
	panning bool
	last    fyne.Position // of the last event
	pressed time.Time     // of the last press of the first button
	at      fyne.Position // of that press
	isTwice bool          // that press was the second of a double click
	space   bool          // the space bar is held
	now     func() time.Time
}

// press notes a press of the first button and reports whether it is the second of a
// double click.
func (m *mouse) press(at fyne.Position) bool {
	now := m.now()
	twice := !m.isTwice && now.Sub(m.pressed) < doubleTime && near(at, m.at)
	m.pressed, m.at, m.isTwice = now, at, twice
	return twice
}

func near(a, b fyne.Position) bool {
	return math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y)) <= doubleWay
}

// modifiers asks what is held now: moves and scrolls do not tell.
func modifiers() fyne.KeyModifier {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return d.CurrentKeyModifiers()
	}
	return 0
}

// down takes a press. One button counts at a time.
func (m *mouse) down(e *desktop.MouseEvent) {
	if m.button != 0 {
		return
	}
	m.limiter.flush()
	m.button, m.last = e.Button, e.Position
	switch {
	case m.pan != nil && (e.Button == desktop.MouseButtonTertiary || e.Button == desktop.MouseButtonPrimary && m.space):
		m.panning = true
	case e.Button == desktop.MouseButtonSecondary:
		m.button = 0 // a menu takes the release
		if p, ok := m.pointer(e.Position, e.Modifier); ok {
			m.listener.Menu(p, e.AbsolutePosition)
		}
	case e.Button == desktop.MouseButtonPrimary:
		p, ok := m.pointer(e.Position, e.Modifier)
		if !ok {
			return
		}
		kind := Down
		if m.press(e.Position) {
			p.Double, kind = true, Double
		}
		m.listener.Pointer(kind, p)
	}
}

func (m *mouse) up(e *desktop.MouseEvent) {
	if e.Button == m.button {
		m.release(e.Position, e.Modifier)
	}
}

// release ends what the held button did, once.
func (m *mouse) release(at fyne.Position, mod fyne.KeyModifier) {
	button, panned := m.button, m.panning
	m.button, m.panning = 0, false
	if button != desktop.MouseButtonPrimary || panned {
		return
	}
	if p, ok := m.pointer(at, mod); ok {
		m.listener.Pointer(Up, p)
	}
}

// dragged comes in place of moves while a button is held.
func (m *mouse) dragged(e *fyne.DragEvent) {
	if m.button != 0 {
		m.moved(e.Position, modifiers())
	}
}

// dragEnd stands in for the release outside, of which nothing else tells.
func (m *mouse) dragEnd() {
	if m.button != 0 {
		m.release(m.last, modifiers())
	}
}

func (m *mouse) moved(at fyne.Position, mod fyne.KeyModifier) {
	if m.panning {
		m.pan(m.last, at)
		m.last = at
		return
	}
	m.last = at
	if m.button == 0 && m.idle() {
		m.limiter.do(func() { m.point(at, mod) })
		return
	}
	m.limiter.drop()
	m.point(at, mod)
}

// point tells of the pointer where it is.
func (m *mouse) point(at fyne.Position, mod fyne.KeyModifier) {
	m.hover(&at)
	p, ok := m.pointer(at, mod)
	if !ok {
		return
	}
	if m.button == 0 || m.button == desktop.MouseButtonPrimary {
		m.listener.Pointer(Move, p)
	}
	m.listener.PointerAt(p.At, true)
}

// out notes that the pointer has left.
func (m *mouse) out() {
	if m.button != 0 {
		return
	}
	m.limiter.drop()
	m.hover(nil)
	p, _ := m.pointer(m.last, 0)
	m.listener.PointerAt(p.At, false)
}

// keyNames are the toolkit's names that tool.Key spells otherwise.
var keyNames = map[fyne.KeyName]string{
	fyne.KeyReturn: "Enter", fyne.KeyEnter: "Enter", fyne.KeyBackspace: "Backspace", fyne.KeyEscape: "Escape",
}

// key hands on a key that writes nothing and reports whether it was used. Keys that
// write something come as runes.
func (m *mouse) key(name fyne.KeyName) bool {
	m.limiter.flush()
	if len(name) == 1 || name == fyne.KeySpace {
		return true
	}
	text, ok := keyNames[name]
	if !ok {
		text = string(name)
	}
	return m.listener.Key(tool.Key{Name: text, Shift: modifiers()&fyne.KeyModifierShift != 0})
}

// cursor returns how the pointer looks over a picture.
func (m *mouse) cursor(p Picture) desktop.Cursor {
	if m.panning || m.space && m.pan != nil {
		return moveCursor
	}
	if c := p.Preview.Cursor; c != tool.CursorArrow {
		return cursors[c]
	}
	return cursors[p.Cursor]
}
