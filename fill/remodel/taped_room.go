package remodel

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// tapeOff is how far six readings of a tape may miss one another and still be good: common
// practice, a sixteenth each and some sag.
const tapeOff = unit.Inch / 4

// TapedRoom compares the diagonals of a room with its lengths.
var TapedRoom = rule.Rule{
	ID:    "room-taped",
	Title: words.New("rule.room-taped.title", "Readings of a tape that go together"),
	Doc:   words.New("rule.room-taped.doc", `Four lengths and a diagonal lay out a room of four sides; where the other diagonal was taped too, it is compared with what the rest makes it. More than {0} between them is told (common practice), since one of the readings is wrong by about as much. Not checked: rooms of which no second diagonal was taped, which of the readings it is, and whether the walls are plumb.`, words.Height(tapeOff)),
	Room:  checkTapedRoom,
}

func checkTapedRoom(v index.RoomView, _ *code.Figures) []rule.Finding {
	by, ok := v.Room.Taped.Misclosure()
	if !ok || by.Abs() <= tapeOff {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Note, IsOpen: true, ByPractice: true,
		Measured: rule.LengthOf(by.Abs()), Limit: rule.LengthOf(tapeOff),
		Message: words.New("rule.room-taped.off", "{0}: the readings of the tape miss one another by {1}", v.Room.Name, words.Height(by.Abs())),
		Why:     words.New("rule.room-taped.why", "By four lengths and one diagonal the other would be {0}; {1} was read. Tape them again.", v.Room.Taped.Other-by, v.Room.Taped.Other),
	}}
}
