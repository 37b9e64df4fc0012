package bind

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan"
)

// Press makes content of a card pressable. When the focus comes to it, it is scrolled into
// sight.
func (c *Context) Press(content fyne.CanvasObject, frame look.Frame, gapX, gapY float32, do func()) *look.Press {
	p := look.NewPress(content, frame, gapX, gapY, do)
	if c.Window != nil {
		p.OnFocus = func() { c.Window.Reveal(p) }
	}
	return p
}

// Button is a row that gives a command of the window.
func (c *Context) Button(label, command string) Row {
	text := look.NewText(label, look.Style{Bold: true, Tone: look.Accent})
	press := c.Press(text, look.Outline, 2*look.Grid, look.Grid, func() { c.Window.Run(command) })
	return Row{Object: look.Row(0, -1, look.Sized(0, look.HitTarget, press))}
}

// link is a row that says something of a thing and shows its card where it is pressed.
func (c *Context) link(id plan.ID, read func() string) Row {
	text := look.NewParagraph(read(), look.Body, c.Width-look.Scaled(2*look.Grid))
	return Row{c.Linked(id, text), func() { text.SetWords(read()) }}
}

// Linked makes content show the card of a thing where it is pressed.
func (c *Context) Linked(id plan.ID, content fyne.CanvasObject) *look.Press {
	return c.Press(content, look.Bare, look.Grid/2, look.Grid, func() { c.Window.Select(id) })
}

// Said is a sentence on a card.
func (c *Context) Said(read func() string) Row {
	text := look.NewParagraph(read(), look.Quiet, c.Width)
	return Row{text, func() { text.SetWords(read()) }}
}
