package card

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan"
)

// newPress makes content of a card pressable. When the focus comes to it, it is scrolled
// into sight.
func (c *Context) newPress(content fyne.CanvasObject, frame look.Frame, gapX, gapY float32, do func()) *look.Press {
	p := look.NewPress(content, frame, gapX, gapY, do)
	if c.Window != nil {
		p.OnFocus = func() { c.Window.Reveal(p) }
	}
	return p
}

// button is a row that gives a command of the window.
func (c *Context) button(label, command string) row {
	text := look.NewText(label, look.Style{Bold: true, Tone: look.Accent})
	press := c.newPress(text, look.Outline, 2*look.Grid, look.Grid, func() { c.Window.Run(command) })
	return row{object: look.Row(0, -1, look.Sized(0, look.HitTarget, press))}
}

// link is a row that says something of a thing and shows its card where it is pressed.
func (c *Context) link(id plan.ID, read func() string) row {
	text := look.NewParagraph(read(), look.Body, c.Width-look.Scaled(2*look.Grid))
	return row{c.linked(id, text), func() { text.SetWords(read()) }}
}

// linked makes content show the card of a thing where it is pressed.
func (c *Context) linked(id plan.ID, content fyne.CanvasObject) *look.Press {
	return c.newPress(content, look.Bare, look.Grid/2, look.Grid, func() { c.Window.Select(id) })
}

// links is a row of links to things, those there are now.
func (c *Context) links(gap float32, ids func() []plan.ID, say func(plan.ID) string) row {
	return rowList(gap, func() string { return joined(ids()) }, func() (rows []row) {
		for _, id := range ids() {
			rows = append(rows, c.link(id, func() string { return say(id) }))
		}
		return rows
	})
}

// joined tells lists of things apart.
func joined(ids []plan.ID) string {
	var all strings.Builder
	for _, id := range ids {
		all.WriteString(string(id))
	}
	return all.String()
}

// said is a sentence on a card.
func (c *Context) said(read func() string) row {
	text := look.NewParagraph(read(), look.Quiet, c.Width)
	return row{text, func() { text.SetWords(read()) }}
}
