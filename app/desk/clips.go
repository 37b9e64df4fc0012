package desk

import (
	"slices"
	"studbay/app/shell"
	"studbay/app/work"
	"studbay/fill/frame"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// clips are the commands that set copies of what is chosen, and those that place several
// things by one another. What each does is an edit of the plan.
type clips struct {
	*editor
	view     *view
	copied   *arrange.Clip // shared by the windows
	commands *shell.Commands
}

// isPlaced reports whether a thing is one that can be copied, mirrored and turned.
func isPlaced(id plan.ID) bool {
	switch id.Kind() {
	case plan.KindRoom, plan.KindFixture, plan.KindBreak, plan.KindOpening:
		return true
	}
	return false
}

// chosen are the things among what is chosen that can be placed, the first chosen first.
func (c *clips) chosen() []plan.ID {
	return slices.DeleteFunc(slices.Clone(c.doc().Selection()), func(id plan.ID) bool { return !isPlaced(id) })
}

func (c *clips) any() bool { return slices.ContainsFunc(c.doc().Selection(), isPlaced) }

func (c *clips) several() bool { return len(c.chosen()) > 1 }

func (c *clips) canPaste() bool { return !c.copied.IsEmpty() }

// taken takes up what is chosen.
func (c *clips) taken() arrange.Clip { return arrange.ClipOf(c.doc().Plan(), c.chosen()) }

// copy keeps what is chosen, so that its like can be set elsewhere, in any window.
func (c *clips) copy() {
	*c.copied = c.taken()
	key := c.commands.ByID("paste").Keys[0].Said(c.voice.Voice)
	if one := c.copied.One(); one != nil {
		c.hand.say(words.New("copy.done", "Copied {0}; {1} pastes it", one.Tag, key))
		return
	}
	c.hand.say(words.New("copy.done-several", "{0} things are copied: {1} sets them on the wall or in the room selected then, else beside", c.copied.Len(), key))
}

// cut keeps what is chosen and takes it out.
func (c *clips) cut() {
	*c.copied = c.taken()
	c.removeSelected()
}

// paste sets the like of what was copied: on the wall or in the room that is chosen, else
// beside it. One opening is taken in hand, to be set where a click says.
func (c *clips) paste() {
	onto := c.target()
	if one := c.copied.One(); one != nil && onto == "" {
		c.hand.takeLike(*one)
		return
	}
	clip := *c.copied
	as := fresh(clip)
	if l := c.doc().Plan().Level(c.doc().Level()); onto == "" && clip.IsOn(l) {
		c.set(c.beside(clip, as), clip, as)
		return
	}
	c.set(arrange.Paste{Clip: clip, As: as, Level: c.doc().Level(), Onto: onto}, clip, as)
}

// target returns the wall or the room that alone is chosen, or nothing.
func (c *clips) target() plan.ID {
	if chosen := c.doc().Selection(); len(chosen) == 1 && (chosen[0].Kind() == plan.KindSide || chosen[0].Kind() == plan.KindRoom) {
		return chosen[0]
	}
	return ""
}

// duplicate sets the like of what is chosen beside it.
func (c *clips) duplicate() {
	clip := c.taken()
	as := fresh(clip)
	c.set(c.beside(clip, as), clip, as)
}

// set makes the edit that sets copies, and chooses them.
func (c *clips) set(e edit.Edit, clip arrange.Clip, as []plan.ID) {
	if c.Do(e) == nil {
		c.doc().Select(clip.Outer(as)...)
		c.view.keepInSight(clip.Outer(as)...)
	}
}

func (c *clips) beside(clip arrange.Clip, as []plan.ID) edit.Edit {
	e := arrange.Duplicate{Clip: clip, As: as, Level: c.doc().Level(), Step: unit.Foot}
	if c.doc().System() == unit.Metric {
		e.Step = 300 * unit.Millimetre
	}
	if rooms := clip.Rooms(); len(rooms) > 0 {
		e.Partition = frame.PartitionBehind(rooms[0].Sides[0])
	}
	return e
}

// fresh makes the IDs that a copy wants.
func fresh(clip arrange.Clip) []plan.ID {
	ids := clip.IDs()
	for i, id := range ids {
		ids[i] = work.NewID(id.Kind())
	}
	return ids
}

func (c *clips) turn()         { _ = c.Do(arrange.Turn{Things: c.chosen()}) }
func (c *clips) mirror()       { _ = c.Do(arrange.Mirror{Things: c.chosen()}) }
func (c *clips) spread()       { _ = c.Do(arrange.Spread{Things: c.chosen()}) }
func (c *clips) spreadToEnds() { _ = c.Do(arrange.Spread{Things: c.chosen(), ToEnds: true}) }

// toSteps sets what is chosen at whole steps; with nothing chosen, all on the level.
func (c *clips) toSteps() {
	chosen := slices.DeleteFunc(slices.Clone(c.doc().Selection()), func(id plan.ID) bool { return id.Kind() != plan.KindOpening })
	if len(chosen) == 0 {
		chosen = c.openingsHere()
	}
	made := place.ToSteps(c.doc().Index(), chosen)
	if n := len(made.Places); n == 0 {
		c.hand.say(words.New("to-steps.none", "All of them are at the step already, {0}", words.Height(c.doc().System().Placing())))
	} else if c.Do(made) == nil {
		c.hand.say(words.New("to-steps.done", "Rounded to {0}: {1}", words.Height(c.doc().System().Placing()), work.OpeningsText(n)))
	}
}

func (c *clips) alignHeights() {
	_ = c.Do(arrange.AlignHeights{To: c.chosen()[0], Things: c.chosen()})
}

func (c *clips) sameFromLeft() {
	_ = c.Do(arrange.SameDistance{As: c.chosen()[0], Things: c.chosen()})
}

func (c *clips) sameFromRight() {
	_ = c.Do(arrange.SameDistance{As: c.chosen()[0], Things: c.chosen(), IsRight: true})
}
