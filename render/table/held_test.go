package table

import (
	"testing"

	"studbay/fill/frame"
	"studbay/plan/unit"
)

// A bracket is on the stud that the box touches: the left one of a bay of 14-1/2 in, or the right.
func TestWhichStudABracketIsOn(t *testing.T) {
	bay := frame.Bay{Left: &frame.Stud{}, Right: &frame.Stud{}, From: 10 * unit.Inch, To: 24*unit.Inch + unit.Inch/2}
	at := func(left unit.Length) frame.Rect { return frame.Rect{Left: left, Right: left + 4*unit.Inch} }
	for _, tt := range []struct {
		by   frame.Way
		box  frame.Rect
		want string
	}{
		{frame.ByBracket, at(bay.From), "bracket, left stud"},
		{frame.ByBracket, at(bay.To - 4*unit.Inch), "bracket, right stud"},
		{frame.ByBracket, at(15 * unit.Inch), "bracket"},
		{frame.ByNailRight, at(bay.From), "nail, right stud"},
	} {
		if got := HeldBeside(frame.Hold{By: tt.by, Bay: bay, HasBay: true}, tt.box).String(); got != tt.want {
			t.Errorf("%s at %v: %q, want %q", tt.by, tt.box.Left, got, tt.want)
		}
	}
}
