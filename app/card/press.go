package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// newPress makes content of a card pressable. When the focus comes to it, it is scrolled
// into sight.
func (c Context) newPress(content fyne.CanvasObject, frame look.Frame, gapX, gapY float32, do func()) *look.Press {
	p := look.NewPress(content, frame, gapX, gapY, do)
	if c.Window != nil {
		p.OnFocus = func() { c.Window.Reveal(p) }
	}
	return p
}
