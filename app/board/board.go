package board

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"studbay/plan/geom"
)

var _ fyne.Widget = (*Board)(nil)

// Board shows one level of a plan. Make one with New.
type Board struct {
	widget.BaseWidget
	host Host
	pic  Picture
	view View
}

// New returns an empty board.
func New(host Host) *Board {
	b := &Board{host: host, view: View{Zoom: zoomOf(1.0/48, 1)}}
	b.ExtendBaseWidget(b)
	return b
}

// SetPicture shows a picture. It is not named Show, which the toolkit calls on any object.
func (b *Board) SetPicture(p Picture) {
	b.pic = p
	b.Refresh()
}

// Scale returns the length on screen over that of building, taking 96 units of the
// window for an inch: 1/48 is 1/4 in to the foot.
func (b *Board) Scale() float64 { return scaleOf(b.view.Zoom, b.density()) }

// ScaleText says the scale in words.
func (b *Board) ScaleText() string { return scaleText(b.Scale(), b.pic.Voice) }

// zoomStep is what one press of a key or button zooms by.
const zoomStep = 1.25

// ZoomIn shows less of the plan, larger.
func (b *Board) ZoomIn() { b.zoomAtMiddle(b.view.Zoom * zoomStep) }

// ZoomOut shows more of the plan, smaller.
func (b *Board) ZoomOut() { b.zoomAtMiddle(b.view.Zoom / zoomStep) }

// ZoomTo shows the plan at a scale as Scale gives it, within limits.
func (b *Board) ZoomTo(scale float64) { b.zoomAtMiddle(zoomOf(scale, b.density())) }

func (b *Board) zoomAtMiddle(zoom float64) {
	on := b.screen()
	b.setView(b.view.Zoomed(zoom, b.density(), float64(on.Min.X+on.Max.X)/2, float64(on.Min.Y+on.Max.Y)/2))
}

// Fit shows the whole level.
func (b *Board) Fit() {
	if b.pic.Index == nil {
		return
	}
	if box, ok := b.pic.Index.Extent(b.pic.Level); ok {
		b.setView(Fitted(box, b.screen(), zoomOf(1.0/12, b.density()), b.density()))
	}
}

// CenterOn brings a box of the plan to the middle; the zoom changes only where the box
// would not fit.
func (b *Board) CenterOn(box geom.Box) {
	b.setView(Fitted(box, b.screen(), b.view.Zoom, b.density()))
}

func (b *Board) setView(v View) {
	if v == b.view {
		return
	}
	b.view = v
	b.host.ViewChanged(b.ScaleText())
	b.Refresh()
}

// density is device pixels per unit of the window.
func (b *Board) density() float64 {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		return float64(c.Scale())
	}
	return 1
}

// screen returns the part of the board that shows the plan, in pixels.
func (b *Board) screen() image.Rectangle {
	d, size := b.density(), b.Size()
	return image.Rect(0, 0, int(float64(size.Width)*d), int(float64(size.Height)*d))
}

// CreateRenderer implements fyne.Widget.
func (b *Board) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(canvas.NewRectangle(b.pic.Theme.Paper))
}
