// Package bind joins the things of a plan to the rows of a card.
//
// A value of one thing, or of several of a kind together, is said once: how it is read and
// which edit puts another in its place. From that come a field or a choice that show it,
// refuse what it cannot be, and write nothing that was not edited. A row decides nothing.
package bind

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Window is what a card asks of the window it stands in.
type Window interface {
	// Do makes an edit the next step. The error is for the field that asked.
	Do(edit.Edit) error
	// Select makes the nouns what is chosen.
	Select(ids ...plan.ID)
	// Go shows the place of a finding and chooses what it is of.
	Go(rule.Finding)
	// Menu shows, at a place of the window, what can be done about a finding.
	Menu(f rule.Finding, at fyne.Position)
	// Shortcut runs the command of a shortcut that a field has no use for, and
	// reports whether there was one.
	Shortcut(fyne.Shortcut) bool
	// GiveKeys gives the keys back to the board.
	GiveKeys()
	// Reveal scrolls the column so that an object of a card is in sight.
	Reveal(fyne.CanvasObject)
	// Run gives a command of the window by its ID and reports whether it could run.
	Run(command string) bool
}

// Context is what a card shows at one moment.
type Context struct {
	Window Window
	Index  *index.Index
	Result fill.Result
	Voice  words.Voice
	Prices *price.Book // nil is the trial prices
	// Away does something slow away from the window's goroutine, and then another thing in it;
	// nil does both at once.
	Away  func(slow, then func())
	Width float32 // of what stands in the column, its padding taken off
	// Folds are the folds of the card that were opened or closed, by their titles: a card made anew
	// of the same thing has them so. Nil keeps none.
	Folds map[string]bool
	// Trade tells findings by section and figures, else by what to do and why. SetTrade
	// keeps another choice; nil: it cannot be changed.
	Trade    bool
	SetTrade func(trade bool)
}

// Say says a text in the voice of the window.
func (c *Context) Say(id, english string, args ...any) string {
	return c.Voice.Say(words.New(id, english, args...))
}

// Aside does something slow away from the window's goroutine, where the window has a way to,
// and then another thing in it.
func (c *Context) Aside(slow, then func()) {
	if c.Away != nil {
		c.Away(slow, then)
		return
	}
	slow()
	then()
}

// Do makes an edit whose refusal has no field to stand beside: the window shows it.
func (c *Context) Do(e edit.Edit) { _ = c.Window.Do(e) }

// Try makes an edit; its refusal is said in the voice of the window.
func (c *Context) Try(e edit.Edit) error { return look.Said(c.Voice, c.Window.Do(e)) }
