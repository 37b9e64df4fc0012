package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/shell"
	"studbay/plan"
)

var _ bind.Window = (*cardWindow)(nil)

// cardWindow is what cards see of the window.
type cardWindow struct {
	*findings
	commands *shell.Commands
	column   *shell.Column
	giveKeys func()
}

// GiveKeys implements bind.Window.
func (c *cardWindow) GiveKeys() { c.giveKeys() }

// Select implements bind.Window.
func (c *cardWindow) Select(ids ...plan.ID) { c.doc().Select(ids...) }

// Shortcut implements bind.Window.
func (c *cardWindow) Shortcut(s fyne.Shortcut) bool { return c.commands.Shortcut(s) }

// Reveal implements bind.Window.
func (c *cardWindow) Reveal(o fyne.CanvasObject) { c.column.Reveal(o) }

// Run implements bind.Window.
func (c *cardWindow) Run(command string) bool { return c.commands.Run(command) }
