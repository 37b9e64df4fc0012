package board

import (
	"image"
	"math"
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/look"
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

// pixel returns a place of the window in whole device pixels of the board.
func (b *Board) pixel(p fyne.Position) image.Point {
	d := b.density()
	return image.Pt(int(math.Round(float64(p.X)*d)), int(math.Round(float64(p.Y)*d)))
}

// pointer returns what tools are told of a place.
func (b *Board) pointer(at fyne.Position, mod fyne.KeyModifier) (tool.Pointer, bool) {
	px := b.pixel(at)
	return tool.Pointer{
		At:      b.view.Plan(float64(px.X), float64(px.Y)),
		Reach:   b.view.Length(reach * b.density()),
		Shift:   mod&fyne.KeyModifierShift != 0,
		Control: mod&fyne.KeyModifierShortcutDefault != 0,
		Alt:     mod&fyne.KeyModifierAlt != 0,
		Symbol:  b.symbolAt(px),
		Bundle:  b.bundleAt(px),
		Line:    b.lineAt(px),
	}, true
}

// MouseDown implements desktop.Mouseable. A click does not give the focus by itself.
func (b *Board) MouseDown(e *desktop.MouseEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		c.Focus(b)
	}
	b.mouse.down(e)
}

// MouseUp implements desktop.Mouseable.
func (b *Board) MouseUp(e *desktop.MouseEvent) { b.mouse.up(e) }

// Dragged implements fyne.Draggable.
func (b *Board) Dragged(e *fyne.DragEvent) { b.mouse.dragged(e) }

// DragEnd implements fyne.Draggable.
func (b *Board) DragEnd() { b.mouse.dragEnd() }

// MouseIn implements desktop.Hoverable.
func (b *Board) MouseIn(e *desktop.MouseEvent) { b.mouse.moved(e.Position, modifiers()) }

// MouseMoved implements desktop.Hoverable.
func (b *Board) MouseMoved(e *desktop.MouseEvent) { b.mouse.moved(e.Position, modifiers()) }

// MouseOut implements desktop.Hoverable.
func (b *Board) MouseOut() { b.mouse.out() }

// Cursor implements desktop.Cursorable.
func (b *Board) Cursor() desktop.Cursor { return b.mouse.cursor(b.pic) }

// pan moves the view as the pointer goes.
func (b *Board) pan(from, to fyne.Position) {
	b.setView(b.view.Panned(b.pixel(to).Sub(b.pixel(from))))
}

// wheelZoom is what one notch of a wheel zooms by, and mostNotch how many count at
// once, whatever the toolkit makes of a fast wheel.
const (
	wheelZoom = 1.18
	mostNotch = 3
)

// notch is how far the toolkit says a wheel turned at one notch.
var notch = notchOn(runtime.GOOS)

func notchOn(system string) float64 {
	if system == "darwin" {
		return 10
	}
	return 25
}

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

// notchWay is how far the plan moves for a notch, in units.
const notchWay = 60

// panBy moves the plan as the toolkit says something scrolled.
func (b *Board) panBy(dx, dy float32) {
	k := float32(notchWay / notch)
	b.setView(b.view.Panned(b.pixel(fyne.NewPos(k*dx, k*dy))))
}

// FocusGained implements fyne.Focusable.
func (b *Board) FocusGained() { b.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (b *Board) FocusLost() {
	b.mouse.space = false
	b.setFocused(false)
}

// KeyDown implements desktop.Keyable.
func (b *Board) KeyDown(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.mouse.space = true
	}
	look.KeyDownOn(b, e)
}

// KeyUp implements desktop.Keyable.
func (b *Board) KeyUp(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.mouse.space = false
	}
	look.KeyUpOn(b, e)
}

// arrowWay is how far an arrow key pans, in units.
const arrowWay = 96

var arrows = map[fyne.KeyName]fyne.Position{
	fyne.KeyLeft: {X: arrowWay}, fyne.KeyRight: {X: -arrowWay}, fyne.KeyUp: {Y: arrowWay}, fyne.KeyDown: {Y: -arrowWay},
}

// TypedKey implements fyne.Focusable.
func (b *Board) TypedKey(e *fyne.KeyEvent) {
	if b.mouse.key(e.Name) {
		return
	}
	if by, ok := arrows[e.Name]; ok {
		b.setView(b.view.Panned(b.pixel(by)))
	}
}

// TypedRune implements fyne.Focusable.
func (b *Board) TypedRune(r rune) {
	if b.listener.Key(tool.Key{Rune: r}) {
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
