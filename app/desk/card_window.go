package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/card"
	"studbay/app/shell"
	"studbay/app/work"
	"studbay/plan"
)

var _ card.Window = (*cardWindow)(nil)

// cardWindow is what cards see of the window.
type cardWindow struct {
	*findings
	commands *shell.Commands
	column   *shell.Column
}

// Select implements card.Window.
func (c *cardWindow) Select(ids ...plan.ID) { c.doc().Select(ids...) }

// Shortcut implements card.Window.
func (c *cardWindow) Shortcut(s fyne.Shortcut) bool { return c.commands.Shortcut(s) }

// Reveal implements card.Window.
func (c *cardWindow) Reveal(o fyne.CanvasObject) { c.column.Reveal(o) }

// Run implements card.Window.
func (c *cardWindow) Run(command string) bool { return c.commands.Run(command) }

// NewID implements card.Window.
func (c *cardWindow) NewID(kind byte) plan.ID { return work.NewID(kind) }
