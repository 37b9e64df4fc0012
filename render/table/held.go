package table

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// heldTexts say how a box is held.
var heldTexts = map[frame.Way]words.Text{
	frame.ByNailLeft:  words.New("held.nail-left", "nail, left stud"),
	frame.ByNailRight: words.New("held.nail-right", "nail, right stud"),
	frame.ByBracket:   words.New("held.bracket", "bracket"),
	frame.ByBlock:     words.New("held.block", "block"),
	frame.ByBar:       words.New("held.bar", "bar hanger"),
	frame.ByBoard:     words.New("held.board", "clamps the finish"),
	frame.ByJoist:     words.New("held.joist", "joist"),
	frame.ByFloor:     words.New("held.floor", "floor"),
	frame.InMasonry:   words.New("held.masonry", "masonry"),
	frame.OnSurface:   words.New("held.surface", "on the surface"),
	frame.ByItsOwn:    words.New("held.own", "its own housing"),
}

// Held says how a box is held, nothing where that is not known.
func Held(by frame.Way) words.Text { return heldTexts[by] }

// HeldBeside says how a box at a place on a wall is held and at which stud of its bay.
func HeldBeside(h frame.Hold, box frame.Rect) words.Text {
	left, right := h.Against(box)
	switch {
	case h.By != frame.ByBracket || !left && !right:
		return Held(h.By)
	case left:
		return words.New("held.bracket-left", "bracket, left stud")
	}
	return words.New("held.bracket-right", "bracket, right stud")
}

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

// UnderJoists names the ceiling of a room with the wall from which places of its joists are
// told, nothing where nobody tells them.
func UnderJoists(ix *index.Index, room *plan.Room) words.Text {
	if wall := Wall(ix, room, room.Joists.Along); !wall.IsZero() {
		return words.New("held.ceiling", "ceiling, from the {0}", wall)
	}
	return words.Text{}
}

// holding works out how the box is held.
func (e *entry) holding() frame.Hold {
	switch {
	case e.room == nil || e.o.IsGone():
		return frame.Hold{}
	case e.view.Side == nil:
		return frame.HoldIn(e.o, e.room)
	}
	f, ok := e.known.framed[e.view.Side.ID]
	if !ok {
		face, _ := frame.FaceOf(e.known.index, e.view.Side.ID)
		f = face.Framed()
		e.known.framed[e.view.Side.ID] = f
	}
	return f.HoldOn(e.o, e.room)
}

// heldBy says what holds the box, a block with its length.
func (e *entry) heldBy() Cell {
	if b := e.hold.Block; b != nil {
		return e.say(words.New("schedule.held.block", "{0} {1}", Held(e.hold.By), words.Height(b.Length)))
	}
	if far := e.hold.FarSide; far > 0 {
		return e.say(words.New("schedule.held.far", "{0}; far side: block {1}", Held(e.hold.By), words.Height(far)))
	}
	return e.say(Held(e.hold.By))
}

// leftStud and rightStud are the near faces of the studs or joists that bound the bay of a
// box.
func (e *entry) leftStud() Cell {
	if !e.hold.HasBay || e.hold.Bay.Left == nil {
		return Cell{}
	}
	return LengthOf(e.hold.Bay.From)
}

func (e *entry) rightStud() Cell {
	if !e.hold.HasBay || e.hold.Bay.Right == nil {
		return Cell{}
	}
	return LengthOf(e.hold.Bay.To)
}

// beside is the stud that a box stands against, and at which side of it.
func (e *entry) beside() (number int, atRight, ok bool) {
	if e.view.Side == nil || e.room == nil || !e.hold.HasBay || e.o.Status.IsOld() {
		return 0, false, false
	}
	return e.hold.Beside(frame.RectOf(e.o, e.room), e.known.framed[e.view.Side.ID].Studs())
}

// stud is the number of that stud as the elevations count it.
func (e *entry) stud() Cell {
	if n, _, ok := e.beside(); ok {
		return NumberOf(n)
	}
	return Cell{}
}

// studSide is the side of that stud.
func (e *entry) studSide() Cell {
	_, atRight, ok := e.beside()
	switch {
	case !ok:
		return Cell{}
	case atRight:
		return e.say(words.New("schedule.stud-right", "right"))
	}
	return e.say(words.New("schedule.stud-left", "left"))
}

// studs says how well those are known.
func (e *entry) studs() Cell {
	if !e.hold.HasBay {
		return Cell{}
	}
	return e.say(StudState(e.hold.State))
}

// weight is that of what hangs from the box, where it is told.
func (e *entry) weight() Cell {
	if e.o.Weight == 0 {
		return Cell{}
	}
	return e.say(words.New("plain", "{0}", e.o.Weight))
}
