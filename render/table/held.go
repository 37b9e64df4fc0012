package table

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/words"
)

// heldTexts say how a box is held.
var heldTexts = map[frame.Way]words.Text{
	frame.ByNailLeft:  words.New("held.nail-left", "nail, left stud"),
	frame.ByNailRight: words.New("held.nail-right", "nail, right stud"),
	frame.ByBracket:   words.New("held.bracket", "bracket"),
	frame.ByBlock:     words.New("held.block", "block"),
	frame.ByBar:       words.New("held.bar", "bar hanger"),
	frame.ByBoard:     words.New("held.board", "clamps the board"),
	frame.ByJoist:     words.New("held.joist", "joist"),
	frame.ByFloor:     words.New("held.floor", "floor"),
	frame.InMasonry:   words.New("held.masonry", "masonry"),
	frame.OnSurface:   words.New("held.surface", "on the surface"),
	frame.ByItsOwn:    words.New("held.own", "its own housing"),
}

// Held says how a box is held, nothing where that is not known.
func Held(by frame.Way) words.Text { return heldTexts[by] }

// StudState says how well studs are known.
func StudState(s plan.StudState) words.Text {
	switch s {
	case plan.StudMeasured:
		return words.New("studs.measured", "measured")
	case plan.StudStated:
		return words.New("studs.stated", "stated")
	}
	return words.New("studs.assumed", "assumed")
}
