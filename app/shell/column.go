package shell

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/card"
	"studbay/app/card/bind"
	"studbay/app/card/found"
	"studbay/app/look"
	"studbay/plan"
)

// Column is the right side of the window: the card of what is chosen, then the
// findings.
type Column struct {
	shown  func() (bind.Context, []plan.ID)
	width  float32 // of the column
	card   card.Card
	of     []plan.ID // the card was made for
	seen   bool      // a card was made
	folds  map[string]bool
	list   *found.List
	stack  *fyne.Container
	scroll *container.Scroll
	Object fyne.CanvasObject
}

const columnGap = 2 * look.Grid

// NewColumn makes the column; shown returns what cards show now, but for their width, and
// what is chosen.
func NewColumn(shown func() (bind.Context, []plan.ID)) *Column {
	c := &Column{shown: shown, width: look.Scaled(cardWidth), stack: look.Column(2 * look.Grid)}
	c.list = found.NewList()
	c.scroll = container.NewVScroll(look.Inset(columnGap, columnGap, columnGap, columnGap, c.stack))
	c.Object = look.Back(look.OnSurface, 0, look.Wheeled(c.scroll))
	return c
}

// SetWidth makes the cards anew where the column becomes another width.
func (c *Column) SetWidth(w float32) {
	if w != c.width {
		c.width, c.seen = w, false
		c.Refresh()
	}
}

// Refresh brings the card and the list up to the document; another card is made only
// where something else is chosen, so that a field in use keeps its place. One that is made anew
// of the same thing, such as for another status, has its folds as they were.
func (c *Column) Refresh() {
	context, chosen := c.shown()
	context.Width = c.width - 2*look.Scaled(columnGap)
	isSame := slices.Equal(chosen, c.of)
	if !isSame || c.folds == nil {
		c.folds = map[string]bool{}
	}
	context.Folds = c.folds
	if !c.seen || !isSame || !c.card.Show(context) {
		c.card, c.of, c.seen = card.For(context, chosen), slices.Clone(chosen), true
		if !isSame {
			c.scroll.ScrollToTop()
		}
	}
	c.list.Show(&context)
	c.stack.Objects = []fyne.CanvasObject{c.card.Object(), c.list.Object()}
	c.stack.Refresh()
	c.scroll.Refresh()
}

// Reveal scrolls so that an object of the column is in sight.
func (c *Column) Reveal(o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
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

// FocusFindings puts the list of findings in hand.
func (c *Column) FocusFindings() { c.list.Focus() }
