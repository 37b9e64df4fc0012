// Package card holds what stands in the right column: one card a file for what is
// chosen (an opening, a room, a break, a fixture), and the list of findings.
//
// A card shows what it is given and turns what is typed into edits. It judges no rule,
// does no arithmetic of the code and touches no file. A field that was not edited
// never writes back.
package card

import (
	"fyne.io/fyne/v2"

	"studbay/fill"
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
	// Shortcut runs the command of a shortcut that a field has no use for, and
	// reports whether there was one.
	Shortcut(fyne.Shortcut) bool
	// Reveal scrolls the column so that an object of a card is in sight.
	Reveal(fyne.CanvasObject)
	// Run gives a command of the window by its ID and reports whether it could run.
	Run(command string) bool
	// NewID makes a fresh ID.
	NewID(kind byte) plan.ID
}

// Context is what a card shows at one moment.
type Context struct {
	Window Window
	Index  *index.Index
	Result fill.Result
	Voice  words.Voice
	Width  float32 // of what stands in the column, its padding taken off
}

func (c *Context) say(id, english string, args ...any) string {
	return c.Voice.Say(words.New(id, english, args...))
}

// A Card is one thing's card. Show brings it up to a later plan and reports false
// where it can no longer show what it was made for, so that another must be made.
type Card interface {
	Object() fyne.CanvasObject
	Show(Context) bool
}
