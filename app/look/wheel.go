package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// wheelSteps is how many times the toolkit's step one notch of the wheel moves; its own
// is less than a line of a card.
const wheelSteps = 2

// Wheeled returns a scrolled list that also moves while the pointer is over a text field
// in it, which would keep the wheel for itself.
func Wheeled(scroll *container.Scroll) fyne.CanvasObject {
	w := &wheel{of: scroll}
	w.ExtendBaseWidget(w)
	return container.NewStack(scroll, w)
}

// wheel lies over a scrolled list and takes nothing but the wheel.
type wheel struct {
	widget.BaseWidget
	of *container.Scroll
}

func (w *wheel) Scrolled(e *fyne.ScrollEvent) {
	more := *e
	more.Scrolled.DX, more.Scrolled.DY = wheelSteps*e.Scrolled.DX, wheelSteps*e.Scrolled.DY
	w.of.Scrolled(&more)
}

func (w *wheel) MinSize() fyne.Size { return fyne.Size{} }

func (w *wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(canvas.NewRectangle(color.Transparent))
}
