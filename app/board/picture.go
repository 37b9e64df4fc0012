// Package board is the drawing widget: it shows a level of a plan and a room unfolded,
// and tells its host what the pointer and the keys do there.
//
// A board holds no plan of its own and makes no edit: it shows the Picture it is given
// and reports gestures in plan coordinates. What is drawn is decided in package render;
// here it is put on the screen as one kept bitmap that is moved and stretched, with
// what is live above it. All methods are for the goroutine of the window.
package board

import (
	"fyne.io/fyne/v2"

	"studbay/app/tool"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
)

// Picture is all that a board shows. Its parts are immutable values: a board compares
// them with what it showed before and draws what differs.
type Picture struct {
	Index    *index.Index // nil shows an empty board
	Level    plan.ID
	Ghost    plan.ID // the level that shows through as a ghost, or empty
	Findings []rule.Finding
	Checked  bool // Findings are all that was found; else nothing was looked for
	Partly   bool // rules that the edition has no confirmed figures for were left out
	Selected []plan.ID
	Theme    render.Theme
	Voice    words.Voice
	Preview  tool.Preview
	// Cursor is shown where the preview asks for none.
	Cursor tool.Cursor
}

// Kind is what a pointer did.
type Kind int

// The kinds. A Double is a press that follows another at once at the same place; it
// comes in place of the second Down.
const (
	Down Kind = iota
	Move
	Up
	Double
)

// Listener is told what happens on a board.
type Listener interface {
	// Pointer is told of every press of the first button, of moves with and without
	// it, and of its release, wherever that is. A gesture that pans is not told.
	Pointer(Kind, tool.Pointer)
	// Key is told of keys while the board has the focus, first of all: names are those
	// of tool.Key, "Escape", or else the toolkit's. Keys nobody uses zoom and pan.
	Key(tool.Key) bool
	// ViewChanged is told the scale in words when the view has changed.
	ViewChanged(scale string)
	// Menu is told of a press of the second button, at a place of the window.
	Menu(p tool.Pointer, at fyne.Position)
	// PointerAt is told where the pointer is, or that it has left the board.
	PointerAt(at geom.Point, inside bool)
}
