package plan

import "studbay/plan/unit"

// BreakKind says what interrupts a side.
type BreakKind string

// The kinds of break.
const (
	BreakDoor      BreakKind = "door"
	BreakSlider    BreakKind = "slider"
	BreakWindow    BreakKind = "window"
	BreakPassage   BreakKind = "passage" // cased, without a door
	BreakFireplace BreakKind = "fireplace"
)

// BreakKinds lists the kinds in the order a user sees.
var BreakKinds = []BreakKind{BreakDoor, BreakSlider, BreakPassage, BreakWindow, BreakFireplace}

// Hand says at which end of a door its hinges are, as seen from the room of its
// host side.
type Hand string

// The hands. The empty hand is not known yet: an open decision.
const (
	HandUnknown Hand = ""
	HandLeft    Hand = "left"
	HandRight   Hand = "right"
	HandDouble  Hand = "double"
)

// Swing says where a door's leaf goes.
type Swing string

// The swings, as seen from the room of the host side.
const (
	SwingIn   Swing = "in"
	SwingOut  Swing = "out"
	SwingNone Swing = "" // pocket, barn or bifold, or not known
)

// Panel is one panel of a slider.
type Panel string

// The panels of a slider, listed from its left end.
const (
	PanelFixed  Panel = "fixed"
	PanelMoving Panel = "moving"
)

// Break is a door, slider, window, passage or fireplace in a side. Its anchor's
// Along is its left end; a break between two rooms is stored on one side and cuts
// both.
type Break struct {
	ID     ID          `json:"id"`
	Kind   BreakKind   `json:"kind"`
	At     Anchor      `json:"at"`
	Width  unit.Length `json:"width"`
	Head   unit.Length `json:"head"`           // height of its top above the finished floor
	Sill   unit.Length `json:"sill,omitempty"` // height of its foot above the finished floor
	Hand   Hand        `json:"hand,omitempty"`
	Swing  Swing       `json:"swing,omitempty"`
	Panels []Panel     `json:"panels,omitempty"`
	Casing unit.Length `json:"casing,omitempty"` // width of the trim round it
	Note   string      `json:"note,omitempty"`
	Extra  Extra       `json:"-"`
}

// Key returns the break's ID.
func (b *Break) Key() ID { return b.ID }

// PanelAt returns the ends of the i-th panel from the break's left end. Panels are
// of equal width, and their widths add up to the whole.
func (b *Break) PanelAt(i int) (from, to unit.Length) {
	n := unit.Length(len(b.Panels))
	return b.Width * unit.Length(i) / n, b.Width * unit.Length(i+1) / n
}
