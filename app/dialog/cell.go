package dialog

import "studbay/app/look"

// cell is one to write in: what stands in it is taken once it is left, or at Enter; Escape
// brings back what was taken last.
type cell struct {
	*look.Entry
	kept string
}

// newCell makes one with a text; take reports whether what was written is taken.
func newCell(text string, take func() bool) *cell {
	c := &cell{look.NewEntry(), text}
	c.SetText(text)
	leave := func() {
		if c.Text != c.kept && take() {
			c.kept = c.Text
		}
	}
	c.OnLeave = leave
	c.OnSubmitted = func(string) { leave() }
	c.OnEscape = func() { c.SetText(c.kept) }
	return c
}

// put writes a text that was taken already.
func (c *cell) put(text string) {
	c.kept = text
	c.SetText(text)
}
