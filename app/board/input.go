package board

import (
	"image"
	"math"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
)

var (
	_ desktop.Mouseable  = (*Board)(nil)
	_ desktop.Hoverable  = (*Board)(nil)
	_ desktop.Cursorable = (*Board)(nil)
	_ desktop.Keyable    = (*Board)(nil)
	_ fyne.Draggable     = (*Board)(nil)
	_ fyne.Scrollable    = (*Board)(nil)
	_ fyne.Focusable     = (*Board)(nil)
)

// reach is how near the pointer must be to what it points at, in units.
const reach = 9

// The limits within which two presses are a double click: common practice.
const (
	doubleTime = 400 * time.Millisecond
	doubleWay  = 4 // units
)

// hand is what the mouse is doing.
type hand struct {
	button  desktop.MouseButton // held; 0: none
	panning bool
	last    fyne.Position // of the last event
	pressed time.Time     // of the last press of the first button
	at      fyne.Position // of that press
	isTwice bool          // that press was the second of a double click
	space   bool          // the space bar is held
	shift   bool          // at the last press
	now     func() time.Time
}

// press notes a press of the first button and reports whether it is the second of a
// double click.
func (h *hand) press(at fyne.Position) bool {
	now := h.now()
	twice := !h.isTwice && now.Sub(h.pressed) < doubleTime && near(at, h.at)
	h.pressed, h.at, h.isTwice = now, at, twice
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

// pixel returns a place of the window in whole device pixels of the board.
func (b *Board) pixel(p fyne.Position) image.Point {
	d := b.density()
	return image.Pt(int(math.Round(float64(p.X)*d)), int(math.Round(float64(p.Y)*d)))
}

// pointer returns what tools are told of a place.
func (b *Board) pointer(at fyne.Position, mod fyne.KeyModifier) tool.Pointer {
	px := b.pixel(at)
	return tool.Pointer{
		At:      b.view.Plan(float64(px.X), float64(px.Y)),
		Reach:   b.view.Length(reach * b.density()),
		Shift:   mod&fyne.KeyModifierShift != 0,
		Control: mod&fyne.KeyModifierShortcutDefault != 0,
		Alt:     mod&fyne.KeyModifierAlt != 0,
		Symbol:  b.symbolAt(px),
	}
}

// MouseDown implements desktop.Mouseable.
func (b *Board) MouseDown(e *desktop.MouseEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		c.Focus(b)
	}
	if b.hand.button != 0 {
		return // one button at a time
	}
	b.hand.button, b.hand.last = e.Button, e.Position
	switch {
	case e.Button == desktop.MouseButtonTertiary, e.Button == desktop.MouseButtonPrimary && b.hand.space:
		b.hand.panning = true
	case e.Button == desktop.MouseButtonPrimary:
		p, kind := b.pointer(e.Position, e.Modifier), Down
		if b.hand.press(e.Position) {
			p.Double, kind = true, Double
		}
		b.host.Pointer(kind, p)
	}
}

// MouseUp implements desktop.Mouseable.
func (b *Board) MouseUp(e *desktop.MouseEvent) {
	if e.Button == b.hand.button {
		b.release(e.Position, e.Modifier)
	}
}

// release ends what the held button did, once.
func (b *Board) release(at fyne.Position, mod fyne.KeyModifier) {
	button, panned := b.hand.button, b.hand.panning
	b.hand.button, b.hand.panning = 0, false
	if button == desktop.MouseButtonPrimary && !panned {
		b.host.Pointer(Up, b.pointer(at, mod))
	}
}

// Dragged implements fyne.Draggable. It comes in place of moves while a button is
// held.
func (b *Board) Dragged(e *fyne.DragEvent) {
	if b.hand.button == 0 {
		return
	}
	b.moved(e.Position, modifiers())
}

// DragEnd implements fyne.Draggable. Released outside of the board there is no
// MouseUp.
func (b *Board) DragEnd() {
	if b.hand.button != 0 {
		b.release(b.hand.last, modifiers())
	}
}

// MouseIn implements desktop.Hoverable.
func (b *Board) MouseIn(e *desktop.MouseEvent) { b.moved(e.Position, modifiers()) }

// MouseMoved implements desktop.Hoverable.
func (b *Board) MouseMoved(e *desktop.MouseEvent) { b.moved(e.Position, modifiers()) }

// MouseOut implements desktop.Hoverable.
func (b *Board) MouseOut() {
	if b.hand.button == 0 {
		b.pointAt(nil)
		b.host.PointerAt(b.pointer(b.hand.last, 0).At, false)
	}
}

func (b *Board) moved(at fyne.Position, mod fyne.KeyModifier) {
	if b.hand.panning {
		b.setView(b.view.Panned(b.pixel(at).Sub(b.pixel(b.hand.last))))
		b.hand.last = at
		return
	}
	b.hand.last = at
	p := b.pointer(at, mod)
	b.pointAt(&at)
	if b.hand.button == 0 || b.hand.button == desktop.MouseButtonPrimary {
		b.host.Pointer(Move, p)
	}
	b.host.PointerAt(p.At, true)
}

// wheelZoom is what one notch of a wheel zooms by, and notch how far the toolkit says
// it turned.
const (
	wheelZoom = 1.18
	notch     = 10
	mostNotch = 3 // at once, whatever the toolkit makes of a fast wheel
)

// Scrolled implements fyne.Scrollable. A wheel turns by whole notches and zooms about
// the pointer; what moves otherwise is a touchpad and pans, zooming with the control
// key. With shift a wheel pans sideways, with alt up and down.
func (b *Board) Scrolled(e *fyne.ScrollEvent) {
	mod := modifiers()
	isWheel := e.Scrolled.DX == 0 && math.Mod(float64(e.Scrolled.DY), notch) == 0
	switch {
	case mod&fyne.KeyModifierShift != 0:
		b.panBy(e.Scrolled.DX+e.Scrolled.DY, 0)
	case mod&fyne.KeyModifierAlt != 0:
		b.panBy(0, e.Scrolled.DY)
	case isWheel || mod&fyne.KeyModifierShortcutDefault != 0:
		turns := max(-mostNotch, min(mostNotch, float64(e.Scrolled.DY)/notch))
		px := b.pixel(e.Position)
		b.setView(b.view.Zoomed(b.view.Zoom*math.Pow(wheelZoom, turns), b.density(), float64(px.X), float64(px.Y)))
	default:
		b.panBy(e.Scrolled.DX, e.Scrolled.DY)
	}
}

// panBy moves the plan by units of the window, thrice as far as the toolkit says,
// which speaks of lines of text.
func (b *Board) panBy(dx, dy float32) { b.setView(b.view.Panned(b.pixel(fyne.NewPos(3*dx, 3*dy)))) }

// FocusGained implements fyne.Focusable.
func (b *Board) FocusGained() { b.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (b *Board) FocusLost() {
	b.hand.space = false
	b.setFocused(false)
}

// KeyDown implements desktop.Keyable.
func (b *Board) KeyDown(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.hand.space = true
	}
}

// KeyUp implements desktop.Keyable.
func (b *Board) KeyUp(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.hand.space = false
	}
}

// keyNames are the toolkit's names that tool.Key spells otherwise.
var keyNames = map[fyne.KeyName]string{
	fyne.KeyReturn: "Enter", fyne.KeyEnter: "Enter", fyne.KeyBackspace: "Backspace", fyne.KeyEscape: "Escape",
}

// TypedKey implements fyne.Focusable. Keys that write something come as runes.
func (b *Board) TypedKey(e *fyne.KeyEvent) {
	if len(e.Name) == 1 || e.Name == fyne.KeySpace {
		return
	}
	name, ok := keyNames[e.Name]
	if !ok {
		name = string(e.Name)
	}
	mod := modifiers()
	if b.host.Key(tool.Key{Name: name, Shift: mod&fyne.KeyModifierShift != 0}) {
		return
	}
	if by, ok := arrows[e.Name]; ok {
		b.panBy(by.DX, by.DY)
	}
}

// arrows pan by some 100 units.
var arrows = map[fyne.KeyName]fyne.Delta{
	fyne.KeyLeft: {DX: 32}, fyne.KeyRight: {DX: -32}, fyne.KeyUp: {DY: 32}, fyne.KeyDown: {DY: -32},
}

// TypedRune implements fyne.Focusable.
func (b *Board) TypedRune(r rune) {
	if b.host.Key(tool.Key{Rune: r}) {
		return
	}
	switch r {
	case '+', '=':
		b.ZoomIn()
	case '-':
		b.ZoomOut()
	case '0':
		b.Fit()
	}
}
