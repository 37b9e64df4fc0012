package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

var (
	_ fyne.Draggable      = (*Divider)(nil)
	_ fyne.DoubleTappable = (*Divider)(nil)
	_ desktop.Hoverable   = (*Divider)(nil)
	_ desktop.Cursorable  = (*Divider)(nil)
	_ fyne.Focusable      = (*Divider)(nil)
)

// DividerWidth is how wide the strip is that takes the pointer, in units before the
// interface scale.
const DividerWidth = 7

// dividerStep is how far an arrow moves a divider, in units before the interface scale.
const dividerStep = 2 * Grid

// Divider is the line between two panels that can be dragged. While it is dragged only
// the line moves; what it divides is laid out once, when it is let go. With the focus it
// is moved by the arrows, and Home is the usual size again.
type Divider struct {
	widget.BaseWidget
	// OnMoved gets how far the line was dragged, right or down above zero.
	OnMoved func(by float32)
	// OnReset is a double click: the usual size again.
	OnReset func()
	down    bool // it runs from left to right, and is dragged up and down
	moved   float32
	hot     bool
	focused bool
}

// NewDivider makes a divider that runs from top to bottom, or from left to right.
func NewDivider(leftToRight bool) *Divider {
	d := &Divider{down: leftToRight}
	d.ExtendBaseWidget(d)
	return d
}

// Dragged implements fyne.Draggable.
func (d *Divider) Dragged(e *fyne.DragEvent) {
	by := e.Dragged.DX
	if d.down {
		by = e.Dragged.DY
	}
	d.moved += by
	d.hot = true
	if d.down {
		d.Move(d.Position().AddXY(0, by))
	} else {
		d.Move(d.Position().AddXY(by, 0))
	}
	d.Refresh()
}

// DragEnd implements fyne.Draggable.
func (d *Divider) DragEnd() {
	by := d.moved
	d.moved, d.hot = 0, false
	d.Refresh()
	if by != 0 && d.OnMoved != nil {
		d.OnMoved(by)
	}
}

// DoubleTapped implements fyne.DoubleTappable.
func (d *Divider) DoubleTapped(*fyne.PointEvent) {
	if d.OnReset != nil {
		d.OnReset()
	}
}

// MouseIn implements desktop.Hoverable.
func (d *Divider) MouseIn(*desktop.MouseEvent) { d.hot = true; d.Refresh() }

// MouseMoved implements desktop.Hoverable.
func (d *Divider) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (d *Divider) MouseOut() { d.hot = d.moved != 0; d.Refresh() }

// FocusGained implements fyne.Focusable.
func (d *Divider) FocusGained() { d.focused = true; d.Refresh() }

// FocusLost implements fyne.Focusable.
func (d *Divider) FocusLost() { d.focused = false; d.Refresh() }

// TypedRune implements fyne.Focusable: a letter is the window's.
func (d *Divider) TypedRune(r rune) {
	if on := canvasOf(d); on != nil && on.OnTypedRune() != nil {
		on.OnTypedRune()(r)
	}
}

// TypedKey implements fyne.Focusable. A key that it has no use for is the window's.
func (d *Divider) TypedKey(e *fyne.KeyEvent) {
	before, after := fyne.KeyLeft, fyne.KeyRight
	if d.down {
		before, after = fyne.KeyUp, fyne.KeyDown
	}
	switch {
	case e.Name == before && d.OnMoved != nil:
		d.OnMoved(-Scaled(dividerStep))
	case e.Name == after && d.OnMoved != nil:
		d.OnMoved(Scaled(dividerStep))
	case e.Name == fyne.KeyHome && d.OnReset != nil:
		d.OnReset()
	default:
		if on := canvasOf(d); on != nil && on.OnTypedKey() != nil {
			on.OnTypedKey()(e)
		}
	}
}

// Cursor implements desktop.Cursorable.
func (d *Divider) Cursor() desktop.Cursor {
	if d.down {
		return desktop.VResizeCursor
	}
	return desktop.HResizeCursor
}

// CreateRenderer implements fyne.Widget.
func (d *Divider) CreateRenderer() fyne.WidgetRenderer {
	r := &dividerRenderer{of: d, line: canvas.NewRectangle(color.Transparent)}
	r.Refresh()
	return r
}

type dividerRenderer struct {
	of   *Divider
	line *canvas.Rectangle
}

func (r *dividerRenderer) MinSize() fyne.Size { return fyne.NewSize(1, 1) }

func (r *dividerRenderer) Layout(size fyne.Size) {
	const thick = 2
	if r.of.down {
		r.line.Resize(fyne.NewSize(size.Width, thick))
		r.line.Move(fyne.NewPos(0, (size.Height-thick)/2))
		return
	}
	r.line.Resize(fyne.NewSize(thick, size.Height))
	r.line.Move(fyne.NewPos((size.Width-thick)/2, 0))
}

func (r *dividerRenderer) Refresh() {
	r.line.FillColor = color.Transparent
	if r.of.hot || r.of.focused {
		r.line.FillColor = Current().Accent
	}
	r.line.Refresh()
}

func (r *dividerRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.line} }
func (r *dividerRenderer) Destroy()                     {}
