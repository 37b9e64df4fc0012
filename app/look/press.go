package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"studbay/render"
)

var (
	_ fyne.Tappable          = (*Press)(nil)
	_ fyne.SecondaryTappable = (*Press)(nil)
	_ fyne.Focusable         = (*Press)(nil)
	_ desktop.Hoverable      = (*Press)(nil)
	_ desktop.Cursorable     = (*Press)(nil)
)

// Frame says what stands round the content of a Press.
type Frame int

// The frames.
const (
	Bare    Frame = iota // nothing until it is pointed at
	Outline              // a line in the accent
	Solid                // filled with the accent
	Boxed                // as a field: on paper, in a hairline
)

// Press is content that can be pressed: by a click, or by Space or Enter when it has
// the focus, which it shows.
type Press struct {
	widget.BaseWidget
	Content  fyne.CanvasObject
	OnPress  func()
	OnEscape func() // Escape while it has the focus; nil does nothing
	// OnKey gets the other keys while it has the focus, such as the arrows, and reports
	// whether it had a use for one; nil: it has none.
	OnKey   func(fyne.KeyName) bool
	OnFocus func() // it has got the focus; nil does nothing
	// OnMenu shows its menu at a place of the window, where the second button is pressed on
	// it; nil: it has none. The toolkit asks nothing that lies round it.
	OnMenu   func(at fyne.Position)
	frame    Frame
	padding  fyne.Size
	radius   float32
	chosen   bool
	marked   bool
	hovered  bool
	focused  bool
	disabled bool
}

// NewPress makes content pressable, with a gap all round it.
func NewPress(content fyne.CanvasObject, frame Frame, gapX, gapY float32, do func()) *Press {
	p := &Press{Content: content, OnPress: do, frame: frame, padding: fyne.NewSize(gapX, gapY), radius: Radius}
	p.ExtendBaseWidget(p)
	return p
}

// Rounded sets the radius of the corners.
func (p *Press) Rounded(r float32) *Press {
	p.radius = r
	return p
}

// SetChosen marks it as the one in hand.
func (p *Press) SetChosen(on bool) {
	if p.chosen != on {
		p.chosen = on
		p.Refresh()
	}
}

// Chosen reports whether it is the one in hand.
func (p *Press) Chosen() bool { return p.chosen }

// SetMarked draws a line about it, as about one that a key elsewhere would press.
func (p *Press) SetMarked(on bool) {
	if p.marked != on {
		p.marked = on
		p.Refresh()
	}
}

// Marked reports whether it is marked.
func (p *Press) Marked() bool { return p.marked }

// SetDisabled keeps it from being pressed.
func (p *Press) SetDisabled(off bool) {
	if p.disabled != off {
		p.disabled = off
		p.Refresh()
	}
}

// Tapped implements fyne.Tappable.
func (p *Press) Tapped(*fyne.PointEvent) {
	if p.OnPress != nil && !p.disabled {
		p.OnPress()
	}
}

// TappedSecondary implements fyne.SecondaryTappable.
func (p *Press) TappedSecondary(e *fyne.PointEvent) {
	if p.OnMenu != nil {
		p.OnMenu(e.AbsolutePosition)
	}
}

// TypedKey implements fyne.Focusable. A key that it has no use for is the window's.
func (p *Press) TypedKey(e *fyne.KeyEvent) {
	switch {
	case e.Name == fyne.KeySpace, e.Name == fyne.KeyReturn, e.Name == fyne.KeyEnter:
		p.Tapped(nil)
	case e.Name == fyne.KeyEscape && p.OnEscape != nil:
		p.OnEscape()
	case p.OnKey != nil && p.OnKey(e.Name):
	default:
		if on := canvasOf(p); on != nil && on.OnTypedKey() != nil {
			on.OnTypedKey()(e)
		}
	}
}

func canvasOf(o fyne.CanvasObject) fyne.Canvas {
	return fyne.CurrentApp().Driver().CanvasForObject(o)
}

// TypedRune implements fyne.Focusable: a letter is the window's, but for the space that
// presses it.
func (p *Press) TypedRune(r rune) {
	if on := canvasOf(p); r != ' ' && on != nil && on.OnTypedRune() != nil {
		on.OnTypedRune()(r)
	}
}

// FocusGained implements fyne.Focusable.
func (p *Press) FocusGained() {
	p.focused = true
	p.Refresh()
	if p.OnFocus != nil {
		p.OnFocus()
	}
}

// Focused reports whether it has the focus.
func (p *Press) Focused() bool { return p.focused }

// FocusLost implements fyne.Focusable.
func (p *Press) FocusLost() { p.focused = false; p.Refresh() }

// MouseIn implements desktop.Hoverable.
func (p *Press) MouseIn(*desktop.MouseEvent) { p.hovered = true; p.Refresh() }

// MouseMoved implements desktop.Hoverable.
func (p *Press) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (p *Press) MouseOut() { p.hovered = false; p.Refresh() }

// Cursor implements desktop.Cursorable.
func (p *Press) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (p *Press) CreateRenderer() fyne.WidgetRenderer {
	r := &pressRenderer{of: p, back: canvas.NewRectangle(color.Transparent)}
	r.Refresh()
	return r
}

type pressRenderer struct {
	of   *Press
	back *canvas.Rectangle
}

func (r *pressRenderer) gap() fyne.Size {
	return fyne.NewSize(Scaled(r.of.padding.Width), Scaled(r.of.padding.Height))
}

func (r *pressRenderer) MinSize() fyne.Size {
	gap := r.gap()
	return r.of.Content.MinSize().Add(gap).Add(gap)
}

func (r *pressRenderer) Layout(size fyne.Size) {
	r.back.Resize(size)
	gap := r.gap()
	inner := size.Subtract(gap).Subtract(gap)
	// Content lower than its place stands in the middle of it.
	height := min(inner.Height, max(r.of.Content.MinSize().Height, 1))
	r.of.Content.Resize(fyne.NewSize(inner.Width, height))
	r.of.Content.Move(fyne.NewPos(gap.Width, (size.Height-height)/2))
}

// fillAndLine returns the two colours of the frame; every state differs from every
// other by more than one of them where it must be told apart.
func (p *Press) fillAndLine(c *Palette) (fill, line color.Color) {
	fill, line = color.Transparent, color.Transparent
	switch {
	case p.frame == Solid:
		fill = c.Accent
	case p.chosen:
		fill = c.Tint
	case p.hovered && !p.disabled:
		fill = c.Paper
		if p.frame == Outline || p.frame == Boxed {
			fill = c.Tint
		}
	case p.frame == Outline:
		fill = c.Surface
	case p.frame == Boxed:
		fill = c.Paper
	}
	if p.frame == Outline && !p.disabled {
		line = c.Accent
	}
	if p.frame == Boxed {
		if line = c.Line; !c.IsDark {
			line = render.Mixed(c.Line, c.Muted, .3) // as the toolkit's own fields come out
		}
	}
	if p.focused || p.marked {
		line = c.Accent
		if p.frame == Solid {
			line = c.Ink
		}
	}
	return fill, line
}

func (r *pressRenderer) Refresh() {
	r.back.FillColor, r.back.StrokeColor = r.of.fillAndLine(Current())
	switch {
	case r.back.StrokeColor == color.Transparent:
		r.back.StrokeWidth = 0 // a line without colour would still leave an edge
	case r.of.focused, r.of.marked:
		r.back.StrokeWidth = 2
	default:
		r.back.StrokeWidth = 1
	}
	r.back.CornerRadius = Scaled(r.of.radius)
	r.back.Refresh()
	r.of.Content.Refresh()
}

func (r *pressRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.back, r.of.Content}
}
func (r *pressRenderer) Destroy() {}
