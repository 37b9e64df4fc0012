// Package tool holds the tools of the board: each turns gestures into edits of the
// plan. A tool draws nothing itself: it asks for a preview, and the board shows it.
package tool

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Tool is one way of working with the pointer. A tool is told of every pointer move
// and key while it is in hand.
type Tool interface {
	// ID is stable: preferences and shortcuts name the tool by it.
	ID() string
	// Hint says what the tool expects now, for the status line.
	Hint(Window) words.Text
	Down(Window, Pointer)
	Move(Window, Pointer)
	Up(Window, Pointer)
	// Type is given typed text (digits, quotes, units), Enter and Backspace included,
	// and reports whether it used it.
	Type(Window, Key) bool
	// Cancel takes one step back, as Esc asks, and reports whether there was one.
	Cancel(Window) bool
	// Leave is told when another tool is taken; what is unfinished is dropped.
	Leave(Window)
}

// Pointer is one pointer event in the plan's own coordinates.
type Pointer struct {
	At       geom.Point
	Reach    unit.Length // how far from At a thing still counts as pointed at
	Shift    bool
	Control  bool
	Alt      bool
	Double   bool // second click of a double click
	OnUnfold bool // it came from the unfolded room: At is on the face, Height counts
	Height   unit.Length
	Side     plan.ID     // the side under the pointer in the unfolded room, or empty
	Part     plan.Anchor // the place on a fixture's face under the pointer there, if it has a host
	Symbol   plan.ID     // the opening whose symbol or tag is drawn under the pointer, or empty
	Bundle   []plan.ID   // the openings for which one mark is drawn under the pointer, or none
	Line     plan.ID     // the control or cable whose line is drawn under the pointer, or empty
}

// Key is one key press: Rune for text, Name for Enter, Backspace, Left and so on.
type Key struct {
	Rune  rune
	Name  string // "Enter", "Backspace", "Left", "Right", "Up", "Down", "Delete", "Tab"
	Shift bool
}

// Window is what a tool sees of the window: the plan, what is under the pointer, and
// where to put previews and edits.
type Window interface {
	Plan() plan.Plan
	Index() *index.Index
	Level() plan.ID
	// Ghost is the level that shows through as a ghost and is snapped to, or empty.
	Ghost() plan.ID
	System() unit.System
	// Do makes an edit the next step; an error is also shown to the user.
	Do(edit.Edit) error
	// Begin and End bracket a drag, so that one undo takes all of it back.
	Begin(name words.Text)
	End()
	Selection() []plan.ID
	Select(ids ...plan.ID)
	// Preview replaces what is drawn live above the board.
	Preview(Preview)
	// Ask asks whether something that is hardly meant is; where it is, do is done.
	Ask(question, body, yes words.Text, do func())
	// Say puts a message in the status line.
	Say(words.Text)
	// Refuse says at the pointer and in the status line why something is not done.
	Refuse(words.Text)
	// Said returns a text in the language of the window, to be written in the plan.
	Said(words.Text) string
	// NewID makes a fresh ID.
	NewID(kind byte) plan.ID
	// DrawnIn lists the openings whose bodies are drawn in a box of the plan.
	DrawnIn(box geom.Box) []plan.ID
	// Kind is the opening kind in hand.
	Kind() string
	// Sample is the opening of that kind whose like is dropped, or nil: one as its kind
	// starts out.
	Sample() *plan.Opening
}

// Opener is a table that can bring the card of a thing into view, as a double click on
// the thing asks.
type Opener interface {
	OpenCard(id plan.ID)
}

// Preview is what a tool shows live: nothing of it is in the plan.
type Preview struct {
	Lines  []geom.Segment
	Cables bool         // the cables of the level are drawn, which else are not
	Area   geom.Polygon // outline being traced
	Ghost  *Ghost
	Dims   []Dim
	Snap   words.Text // name of the snap in force
	SnapAt *geom.Point
	Box    *geom.Box // rubber band
	Notes  []Note
	Typed  words.Text // what has been typed so far, and what it is read as
	// Refused says why what was asked for last is not done.
	Refused words.Text
	Cursor  Cursor
	Moving  []plan.ID // drawn live and left out of the picture below
}

// IsBare reports whether nothing shows but the look of the pointer.
func (p Preview) IsBare() bool {
	return len(p.Lines) == 0 && len(p.Area) == 0 && p.Ghost == nil && len(p.Dims) == 0 && p.Snap.IsZero() && p.SnapAt == nil &&
		p.Box == nil && len(p.Notes) == 0 && p.Typed.IsZero() && p.Refused.IsZero() && len(p.Moving) == 0
}

// placed is what shows once something was placed: the next one is shown when the pointer
// moves, so that it does not cover this one and its dimensions.
var placed = Preview{Cursor: CursorCross}

// Ghost is an opening that would be placed.
type Ghost struct {
	Kind   string
	At     plan.Anchor
	Foot   geom.Point
	Into   geom.Point // direction into the room
	Height unit.Length
}

// Dim is a dimension shown live, from one point to another with its text. Its line
// stands off what it measures, towards Aside; where that is zero it lies on it. Where the
// room on that side is shown too small for it, it stands beyond the wall.
type Dim struct {
	From, To geom.Point
	Text     string
	Aside    geom.Point  // a direction
	Deep     unit.Length // how far the room goes on towards Aside; 0: it is in none
	Wall     unit.Length // how thick the wall behind is
}

// Note is a text shown live about a place.
type Note struct {
	At   geom.Point
	Text string
}

// Cursor says how the pointer looks.
type Cursor int

// The cursors.
const (
	CursorArrow Cursor = iota
	CursorCross
	CursorHand
	CursorMove
	CursorNo
	CursorAcross // an edge that goes left and right
	CursorUpDown // one that goes up and down
)
