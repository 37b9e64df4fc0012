package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// furnished is a room with a receptacle 30 in along the north face, a door in the south
// face and a light.
func furnished(t *testing.T) (*fake, *plan.Room) {
	f := newFake(t)
	r := f.square()
	o := &opening{}
	o.Move(f, at(30, 3))
	f.typed(o, "30")
	f.kind = "ceiling-light"
	f.click(o, at(72, 60))
	b := &brk{kind: plan.BreakDoor}
	f.click(b, at(50, 119))
	f.chosen = nil
	if f.failed != nil {
		t.Fatal(f.failed)
	}
	return f, r
}

func (f *fake) onNorth(r *plan.Room) *plan.Opening {
	for _, o := range f.openings() {
		if o.At.Part == plan.PartFace {
			return o
		}
	}
	f.t.Fatal("there is no opening on a face")
	return nil
}

func TestChooseTheSmallestThing(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	for _, tt := range []struct {
		name string
		at   Pointer
		kind byte
	}{
		{"an opening by its foot", at(31, 1), plan.KindOpening},
		{"the light", at(72, 60), plan.KindOpening},
		{"the door", at(50, 122), plan.KindBreak},
		{"a side", at(100, 1), plan.KindSide},
		{"the room", at(100, 40), plan.KindRoom},
	} {
		f.click(c, tt.at)
		if len(f.chosen) != 1 || f.chosen[0].Kind() != tt.kind {
			t.Errorf("%s: chose %v, want a %c", tt.name, f.chosen, tt.kind)
		}
	}
	symbol := at(100, 40)
	symbol.Symbol = f.onNorth(r).ID
	f.click(c, symbol)
	if len(f.chosen) != 1 || f.chosen[0] != symbol.Symbol {
		t.Errorf("the symbol drawn under the pointer is not chosen: %v", f.chosen)
	}
	f.click(c, at(400, 400))
	if len(f.chosen) != 0 {
		t.Errorf("a click on nothing leaves %v chosen", f.chosen)
	}
}

func TestShiftClickAndRubberBand(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	f.click(c, at(30, 0))
	more := at(72, 60)
	more.Shift = true
	f.click(c, more)
	if len(f.chosen) != 2 {
		t.Fatalf("with Shift %v is chosen, want two", f.chosen)
	}
	f.click(c, more)
	if len(f.chosen) != 1 {
		t.Errorf("with Shift again %v is chosen, want one", f.chosen)
	}
	f.drag(c, at(5, 20), at(100, 100))
	if len(f.chosen) != 1 || f.chosen[0].Kind() != plan.KindOpening {
		t.Errorf("the rubber band caught %v, want the light", f.chosen)
	}
	f.drag(c, at(-20, -20), at(170, 140))
	if len(f.chosen) != 3 {
		t.Errorf("a rubber band round all caught %v, want two openings and a door", f.chosen)
	}
	_ = r
}

// A wall is pointed at by its middle as by its face; a wall between two rooms is the one of
// the nearer. What is open has no wall.
func TestAWallIsPointedAtByItsMiddle(t *testing.T) {
	f := newFake(t)
	r := f.square()
	c := &choose{}
	far := at(80, -4)
	far.Reach = unit.Inch
	f.click(c, far)
	if len(f.chosen) != 1 || f.chosen[0] != r.Sides[0].ID {
		t.Errorf("in the middle of the north wall %v is chosen", f.chosen)
	}
	for _, away := range []Pointer{at(80, -10), at(-4, -4)} {
		away.Reach = unit.Inch
		if f.click(c, away); len(f.chosen) != 0 {
			t.Errorf("at %v, beyond the wall, %v is chosen", away.At, f.chosen)
		}
	}
	was := *r.Sides[0]
	open := was
	open.Kind = plan.SideOpen
	f.Do(edit.ChangeSide{Side: open})
	if f.click(c, far); len(f.chosen) != 0 {
		t.Errorf("beyond an open side %v is chosen", f.chosen)
	}
	f.Do(edit.ChangeSide{Side: was})
	f.drag(&room{}, at(0, -4.5), at(144, -100))
	next := f.rooms()[0]
	if next.ID == r.ID {
		next = f.rooms()[1]
	}
	for y, want := range map[float64]plan.ID{-1: r.ID, -4: next.ID} {
		p := at(80, y)
		p.Reach = unit.Inch / 2
		f.click(c, p)
		if ref, ok := f.Index().Side(f.chosen[0]); !ok || ref.Room.ID != want {
			t.Errorf("%v in from the face %v is chosen", -y, f.chosen)
		}
	}
}

// What is drawn in the rubber band is caught, though its place in the wall is not.
func TestARubberBandCatchesWhatItIsDrawnRound(t *testing.T) {
	f, r := furnished(t)
	o := f.onNorth(r)
	f.drawn = map[plan.ID]geom.Point{o.ID: {X: o.At.Along, Y: 8 * unit.Inch}}
	c := &choose{}
	f.drag(c, at(20, 4), at(40, 12))
	if len(f.chosen) != 1 || f.chosen[0] != o.ID {
		t.Errorf("round its body %v is chosen, want %s", f.chosen, o.Tag)
	}
	f.chosen = nil
	f.drag(c, at(40, 12), at(20, -4))
	if len(f.chosen) != 1 {
		t.Errorf("round its body and its place %v is chosen, want it once", f.chosen)
	}
	f.chosen = nil
	f.drag(c, at(20, 9), at(40, 30))
	if len(f.chosen) != 0 {
		t.Errorf("beside both %v is chosen", f.chosen)
	}
}

func TestDragOpening(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	f.drag(c, at(30, 0), at(60.2, 2))
	if got := f.onNorth(r).At.Along; got != inch(60) {
		t.Errorf("dragged along its face it is at %v, want 60 in", got)
	}
	undone := 0
	for f.history.Undo() {
		undone++
		if f.history.UndoName().String() == "Move opening" {
			t.Error("the drag left more than one step")
		}
	}
	for f.history.Redo() {
	}
	f.index = f.index.Updated(f.Plan())
	f.drag(c, at(60, 0), at(142, 50.3))
	got := f.onNorth(r)
	if got.At.Host != r.Sides[1].ID || (got.At.Along-inch(50)).Abs() > 2*unit.Inch {
		t.Errorf("dragged to the east face it is at %+v", got.At)
	}
	if !f.chosenIs(got.ID) {
		t.Errorf("chosen %v, want the opening dragged", f.chosen)
	}
	if len(f.preview.Moving) != 0 {
		t.Error("the preview still shows a drag")
	}
	f.check()
}

func (f *fake) chosenIs(id plan.ID) bool { return len(f.chosen) == 1 && f.chosen[0] == id }

func TestDragIsPutBackByEscape(t *testing.T) {
	f, r := furnished(t)
	before := f.Plan()
	name := f.history.UndoName().String()
	c := &choose{}
	c.Down(f, at(30, 0))
	c.Move(f, at(50, 3))
	if len(f.preview.Moving) != 1 || len(f.preview.Dims) != 2 {
		t.Errorf("while dragged the preview is %+v", f.preview)
	}
	c.Move(f, at(90, 3))
	if !c.Cancel(f) {
		t.Fatal("Esc does not end the drag")
	}
	c.Up(f, at(90, 3))
	if !plan.Equal(before, f.Plan()) {
		t.Error("Esc does not put back what was dragged")
	}
	if got := f.history.UndoName().String(); got != name {
		t.Errorf("a drag put back left the step %q", got)
	}
	_ = r
}

func TestTypedDistanceWhileDragging(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	c.Down(f, at(30, 0))
	c.Move(f, at(50, 3))
	f.typed(c, `3' 4-1/2"`)
	c.Up(f, at(50, 3))
	if got := f.onNorth(r).At.Along; got != inch(40.5) {
		t.Errorf("it is at %v, want 40.5 in", got)
	}
}

func TestDragCornerAndSide(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	f.click(c, at(100, 40)) // the room, so that its corners can be taken
	f.drag(c, at(144, 0), at(160.4, 0.5))
	if got, want := f.rooms()[0].Outline()[1], (geom.Point{X: inch(160), Y: 0}); got != want {
		t.Errorf("the corner is at %v, want %v", got, want)
	}
	f.history.Undo()
	f.index = f.index.Updated(f.Plan())
	f.chosen = nil
	f.drag(c, at(143, 90), at(168.2, 90))
	if got, want := f.rooms()[0].Outline(), corners(0, 0, 168, 0, 168, 120, 0, 120); !sameOutline(got, want) {
		t.Errorf("with its east side moved the room is %v, want %v", got, want)
	}
	f.check()
	_ = r
}

func TestDragBreak(t *testing.T) {
	f, _ := furnished(t)
	c := &choose{}
	var before, after *plan.Break
	for b := range f.Plan().Level(ground).Breaks.All() {
		before = b
	}
	f.drag(c, at(50, 121), at(80, 121))
	for b := range f.Plan().Level(ground).Breaks.All() {
		after = b
	}
	// The south face runs from the right end of the sheet to the left.
	if got := before.At.Along - after.At.Along; (got - inch(30)).Abs() > 4*unit.Inch {
		t.Errorf("the door moved by %v, want about 30 in to the right", got)
	}
	f.check()
}

func TestArrowsNudge(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	f.click(c, at(30, 0))
	c.Type(f, Key{Name: "Right"})
	c.Type(f, Key{Name: "Right", Shift: true})
	if got := f.onNorth(r).At.Along; got != inch(31.125) {
		t.Errorf("nudged to %v, want 31-1/8 in", got)
	}
	f.isMetric = true
	c.Type(f, Key{Name: "Left"})
	if got := f.onNorth(r).At.Along; got != inch(31.125)-unit.Centimetre {
		t.Errorf("nudged back to %v, want 1 cm less", got)
	}
	c.Type(f, Key{Name: "Up"}) // square to its face: nothing
	if got := f.onNorth(r).At.Along; got != inch(31.125)-unit.Centimetre {
		t.Errorf("nudged square to its face it went to %v", got)
	}
	f.click(c, at(72, 60))
	c.Type(f, Key{Name: "Down"})
	for _, o := range f.openings() {
		if o.At.Part == plan.PartCeiling && o.At.At != (geom.Point{X: inch(72), Y: inch(60) + unit.Centimetre}) {
			t.Errorf("the light went to %v", o.At.At)
		}
	}
}

// Taking out is the window's command, which asks where other things hang on what is
// chosen: no tool has a way of its own.
func TestDeleteIsLeftToTheWindow(t *testing.T) {
	f, _ := furnished(t)
	c := &choose{}
	f.drag(c, at(-20, -20), at(170, 140))
	for _, other := range []Tool{c, &cable{}} {
		for _, name := range []string{"Delete", "Backspace"} {
			if other.Type(f, Key{Name: name}) || len(f.openings()) != 2 || f.failed != nil {
				t.Errorf("%T took the key %s; %d openings are left (%v)", other, name, len(f.openings()), f.failed)
			}
		}
	}
}

func TestMoveSeveral(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	f.drag(c, at(-20, -20), at(170, 60.5))
	if len(f.chosen) != 2 {
		t.Fatalf("chosen %v", f.chosen)
	}
	f.drag(c, at(72, 60), at(82, 65))
	if got := f.onNorth(r).At.Along; got != inch(40) {
		t.Errorf("the one on the face is at %v, want 40 in", got)
	}
	for _, o := range f.openings() {
		if o.At.Part == plan.PartCeiling && o.At.At != (geom.Point{X: inch(82), Y: inch(65)}) {
			t.Errorf("the light is at %v, want 82, 65", o.At.At)
		}
	}
}

func TestDragInUnfoldedRoom(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	on := func(x, high float64) Pointer {
		return Pointer{At: geom.Point{X: inch(x)}, Reach: inch(2), OnUnfold: true, Side: r.Sides[0].ID, Height: inch(high), Symbol: f.onNorth(r).ID}
	}
	f.drag(c, on(30, 16), on(37.3, 44.2))
	got := f.onNorth(r)
	if got.At.Along != inch(37.5) && got.At.Along != inch(36) || got.Height.Value != inch(44) {
		t.Errorf("it went to %v along, %v up", got.At.Along, got.Height.Value)
	}
}

// One of several that is clicked is chosen alone; pressed and dragged, all of them go.
func TestAClickOnOneOfSeveralChoosesItAlone(t *testing.T) {
	f, r := furnished(t)
	c := &choose{}
	o := f.onNorth(r)
	var lamp plan.ID
	for _, x := range f.openings() {
		if x.ID != o.ID {
			lamp = x.ID
		}
	}
	f.Select(o.ID, lamp)
	f.drag(c, at(72, 60), at(84, 66))
	if len(f.chosen) != 2 || f.onNorth(r).At.Along != o.At.Along+inch(12) {
		t.Errorf("dragged, %v are chosen and the receptacle is %v along", f.chosen, f.onNorth(r).At.Along)
	}
	f.click(c, at(84, 66))
	if len(f.chosen) != 1 || f.chosen[0] != lamp {
		t.Errorf("clicked, %v are chosen, want the light alone", f.chosen)
	}
}
