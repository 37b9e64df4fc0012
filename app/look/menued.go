package look

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

var _ fyne.SecondaryTappable = (*Menued)(nil)

// Menued is content that shows a menu where the second button is pressed on it, but for what
// in it can be pressed: that has its own.
type Menued struct {
	widget.BaseWidget
	content fyne.CanvasObject
	menu    func(at fyne.Position)
}

// NewMenued gives content a menu, which is shown at a place of the window.
func NewMenued(content fyne.CanvasObject, menu func(at fyne.Position)) *Menued {
	m := &Menued{content: content, menu: menu}
	m.ExtendBaseWidget(m)
	return m
}

// TappedSecondary implements fyne.SecondaryTappable.
func (m *Menued) TappedSecondary(e *fyne.PointEvent) { m.menu(e.AbsolutePosition) }

// CreateRenderer implements fyne.Widget.
func (m *Menued) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(m.content) }
