package tool

import (
	"slices"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
)

// choose is the tool that selects, moves, nudges and removes.
type choose struct {
	last    Pointer
	pressed *Pointer // where the button went down, while it is held
	under   plan.ID  // what was there
	band    bool     // a rubber band is drawn
	drag    drag     // what is dragged, or nil
	typed   typing
	chose   bool // something is chosen
	onWall  bool // the pointer is on a chosen face of the unfolded room
	onRoom  bool // the pointer is on the inside of a chosen room
}

var _ Tool = (*choose)(nil)

func (*choose) ID() string { return "select" }

func (c *choose) Hint(Window) words.Text {
	switch {
	case c.takesAlong():
		return words.New("tool.select.hint-door", "Ctrl takes the door's switch along; type a distance for an exact place and Enter; Shift places freely, Esc puts it back")
	case c.drag != nil:
		return words.New("tool.select.hint-drag", "Type a distance for an exact place and Enter; Shift places freely, Esc puts it back")
	case c.onWall:
		return words.New("tool.select.hint-studs", "Drag a stud, or type where it was taped; Alt+click removes one, or adds one where none is")
	case c.onRoom:
		return words.New("tool.select.hint-room", "Drag the room by its inside, a side or a corner; arrows move it, Shift+arrows by a little")
	case c.chose:
		return words.New("tool.select.hint-chosen", "Drag, or nudge with the arrows, with Shift by a little; Del deletes it, Shift+click adds to the selection")
	}
	return words.New("tool.select.hint", "Click to select, drag to move; drag over a free place to select several, Shift adds to the selection")
}

// takesAlong reports whether something may go along with what is dragged.
func (c *choose) takesAlong() bool {
	d, isBreak := c.drag.(*dragBreak)
	return isBreak && len(d.switches) > 0
}

func (c *choose) Down(t Window, p Pointer) {
	c.last, c.pressed, c.band = p, &p, false
	c.typed.clear()
	if toggleStud(t, p) {
		c.pressed = nil
		return
	}
	c.under = pick(t, p)
	if u, e := chosenEdge(t, p); e != noEdge {
		c.under = u.id // its edge is taken from outside too
	}
	if p.Double && c.under != "" {
		t.Select(c.under)
		if o, ok := t.(Opener); ok {
			o.OpenCard(c.under)
		}
		return
	}
	if c.under == "" || c.under.Kind() == plan.KindRoom {
		return // a room is chosen by a click; a drag across it is a rubber band
	}
	if len(p.Bundle) > 0 && !p.Shift {
		c.takeBundle(t, p.Bundle)
		return
	}
	switch {
	case p.Shift:
		c.toggle(t, c.under)
	case !slices.Contains(t.Selection(), c.under):
		t.Select(c.under)
	}
}

// takeBundle chooses all that one mark stands for: a press chooses them, and a second none of
// them alone.
func (c *choose) takeBundle(t Window, ids []plan.ID) {
	for _, id := range ids {
		if !slices.Contains(t.Selection(), id) {
			t.Select(ids...)
			break
		}
	}
}

func (c *choose) toggle(t Window, id plan.ID) {
	chosen := slices.Clone(t.Selection())
	if i := slices.Index(chosen, id); i >= 0 {
		chosen = slices.Delete(chosen, i, i+1)
	} else {
		chosen = append(chosen, id)
	}
	t.Select(chosen...)
}

func (c *choose) Move(t Window, p Pointer) {
	c.last = p
	if c.pressed == nil {
		c.hover(t)
		return
	}
	if c.drag == nil && !c.band && !c.begin(t) {
		return
	}
	c.follow(t)
}

// begin starts a drag once the pointer has gone far enough to mean one.
func (c *choose) begin(t Window) bool {
	if c.pressed.At.Distance(c.last.At) < c.last.Reach/2 && (c.last.Height-c.pressed.Height).Abs() < c.last.Reach/2 {
		return false
	}
	c.drag = dragOf(t, *c.pressed, c.under)
	if c.drag == nil {
		c.band = !c.last.OnUnfold
		return c.band
	}
	t.Begin(c.drag.name())
	return true
}

// follow moves what is dragged to the pointer, or draws the rubber band.
func (c *choose) follow(t Window) {
	if c.band {
		box := geom.BoxOf(c.pressed.At, c.last.At)
		t.Preview(Preview{Box: &box, Cursor: CursorCross})
		return
	}
	edit, preview := c.drag.to(t, c.last, &c.typed)
	if edit != nil {
		t.Do(edit)
	}
	preview.Typed, preview.Cursor = c.typed.shown(t.System()), CursorMove
	t.Preview(preview)
}

func (c *choose) Up(t Window, p Pointer) {
	c.last = p
	pressed := c.pressed
	c.pressed = nil
	switch {
	case pressed == nil:
	case c.drag != nil:
		c.end(t)
	case c.band:
		c.catch(t, geom.BoxOf(pressed.At, p.At), p.Shift)
	case c.under == "" && !p.Shift:
		t.Select()
	case len(pressed.Bundle) > 0:
	case isOneOfSeveral(t, c.under) && !p.Shift && !pressed.Shift:
		t.Select(c.under) // it was pressed without being dragged
	case c.under.Kind() == plan.KindRoom && p.Shift:
		c.toggle(t, c.under)
	case c.under.Kind() == plan.KindRoom:
		t.Select(c.under)
	}
	c.band = false
	c.hover(t)
}

// isOneOfSeveral reports whether a thing is chosen with others.
func isOneOfSeveral(t Window, id plan.ID) bool {
	return len(t.Selection()) > 1 && slices.Contains(t.Selection(), id)
}

// hover shows what a press would do.
func (c *choose) hover(t Window) {
	chosen := t.Selection()
	cursor := c.cursor(t)
	c.chose = len(chosen) > 0
	c.onRoom = cursor == CursorMove && len(chosen) == 1 && chosen[0].Kind() == plan.KindRoom
	_, _, c.onWall = chosenStud(t, c.last)
	t.Preview(Preview{Cursor: cursor})
}

func (c *choose) end(t Window) {
	t.End()
	c.drag = nil
	c.typed.clear()
}

// catch chooses what the rubber band holds.
func (c *choose) catch(t Window, box geom.Box, adds bool) {
	ids := within(t, box)
	if adds {
		for _, id := range t.Selection() {
			if !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
	}
	t.Select(ids...)
}

// cursor tells what a press would do.
func (c *choose) cursor(t Window) Cursor {
	if _, ok := chosenCorner(t, c.last); ok {
		return CursorMove
	}
	if _, e := chosenEdge(t, c.last); e != noEdge {
		return e.cursor()
	}
	if _, i, ok := chosenStud(t, c.last); ok && i >= 0 {
		return CursorAcross
	}
	id := pick(t, c.last)
	switch {
	case id == "":
		return CursorArrow
	case slices.Contains(t.Selection(), id) && isMovable(id):
		return CursorMove
	case id.Kind() == plan.KindRoom:
		return CursorArrow
	}
	return CursorHand
}

// isMovable reports whether a drag of a thing moves it.
func isMovable(id plan.ID) bool {
	return id.Kind() != plan.KindCable && id.Kind() != plan.KindControl
}

func (c *choose) Type(t Window, k Key) bool {
	if c.drag != nil {
		return c.typeInDrag(t, k)
	}
	switch k.Name {
	case "Left", "Right", "Up", "Down":
		return nudge(t, k)
	}
	return false
}

// typeInDrag reads an exact distance for what is dragged. Enter lays it down.
func (c *choose) typeInDrag(t Window, k Key) bool {
	if k.Name == "Enter" {
		if _, err := c.typed.length(t.System()); err != nil && !c.typed.isEmpty() {
			t.Refuse(words.NoLength(c.typed.text, t.System()))
			return true
		}
		c.follow(t)
		c.end(t)
		c.pressed = nil
		t.Preview(Preview{})
		return true
	}
	letters := ""
	if _, isUpright := c.drag.(*dragUpright); isUpright || c.last.OnUnfold && c.under.Kind() == plan.KindOpening {
		letters = "h"
	}
	if !c.typed.takeSize(k, letters) {
		return false
	}
	c.follow(t)
	return true
}

// Cancel puts back what is being dragged.
func (c *choose) Cancel(t Window) bool {
	switch {
	case c.drag != nil && !c.typed.isEmpty():
		c.typed.clear()
		c.follow(t)
		return true
	case c.drag != nil:
		if back := c.drag.back(); back != nil {
			t.Do(back)
		}
		c.end(t)
	case !c.band:
		return false
	}
	c.pressed, c.band = nil, false
	t.Preview(Preview{})
	return true
}

func (c *choose) Leave(t Window) {
	if c.drag != nil {
		c.Cancel(t)
	}
	*c = choose{}
	t.Preview(Preview{})
}
