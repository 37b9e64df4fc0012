package desk

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/plan"
)

// column is the right side of the window: the card of what is chosen, then the
// findings.
type column struct {
	desk   *Desk
	width  float32 // of the column
	card   card.Card
	of     []plan.ID // the card was made for
	seen   bool      // a card was made
	list   *card.Findings
	stack  *fyne.Container
	scroll *container.Scroll
	object fyne.CanvasObject
}

const columnGap = 2 * look.Grid

func newColumn(d *Desk) *column {
	c := &column{desk: d, width: look.Scaled(cardWidth), stack: look.Column(2 * look.Grid)}
	c.list = card.NewFindings()
	c.scroll = container.NewVScroll(look.Inset(columnGap, columnGap, columnGap, columnGap, c.stack))
	c.object = look.Back(look.OnSurface, 0, look.Wheeled(c.scroll))
	return c
}

// setWidth makes the cards anew where the column becomes another width.
func (c *column) setWidth(w float32) {
	if w != c.width {
		c.width, c.seen = w, false
		c.refresh()
	}
}

// context is what cards show now.
func (d *Desk) context() card.Context {
	return card.Context{
		Window: d, Index: d.doc().Index(), Result: d.doc().Result(), Voice: d.voice,
		Width: d.column.width - 2*look.Scaled(columnGap),
	}
}

// refresh brings the card and the list up to the document; another card is made only
// where something else is chosen, so that a field in use keeps its place.
func (c *column) refresh() {
	context := c.desk.context()
	chosen := c.desk.doc().Selection()
	if !c.seen || !slices.Equal(chosen, c.of) || !c.card.Show(context) {
		c.card, c.of, c.seen = card.For(context, chosen), slices.Clone(chosen), true
		c.scroll.ScrollToTop()
	}
	c.list.Show(context)
	c.stack.Objects = []fyne.CanvasObject{c.card.Object(), c.list.Object()}
	c.stack.Refresh()
	c.scroll.Refresh()
}

// Reveal implements card.Window.
func (d *Desk) Reveal(o fyne.CanvasObject) { d.column.reveal(o) }

// reveal scrolls so that an object of the column is in sight.
func (c *column) reveal(o fyne.CanvasObject) {
	driver := c.desk.app.Driver()
	top := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(c.scroll).Y
	bottom, room := top+o.Size().Height, c.scroll.Size().Height
	margin := look.Scaled(columnGap)
	switch at := c.scroll.Offset; {
	case top < 0:
		c.scroll.ScrollToOffset(fyne.NewPos(0, at.Y+top-margin))
	case bottom > room:
		c.scroll.ScrollToOffset(fyne.NewPos(0, at.Y+min(top, bottom-room+margin)))
	}
}

// focusFindings puts the list of findings in hand.
func (d *Desk) focusFindings() {
	if !d.prefs.cards() {
		d.prefs.setCards(true)
		d.showPanels()
	}
	d.column.list.Focus()
}
