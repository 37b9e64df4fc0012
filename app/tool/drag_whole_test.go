package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
)

// besideSquare adds a room of 8 by 8 ft well to the right of the square one.
func (f *fake) besideSquare() *plan.Room {
	far := &room{}
	f.click(far, at(400, 300))
	f.typed(far, "8'x8'")
	for _, r := range f.rooms() {
		if r.Sides[0].Start.X >= inch(300) {
			return r
		}
	}
	f.t.Fatalf("no second room: %v", f.failed)
	return nil
}

func TestARoomIsDraggedByItsInside(t *testing.T) {
	f := newFake(t)
	f.square()
	r := f.besideSquare()
	left := r.Outline().Box().Min
	light := &opening{}
	f.kind = "ceiling-light"
	inside := Pointer{At: left.Add(geom.Point{X: inch(48), Y: inch(48)}), Reach: at(0, 0).Reach}
	f.click(light, inside)
	c := &choose{}
	f.chosen = nil
	grip := inside
	grip.At = left.Add(geom.Point{X: inch(20), Y: inch(70)})
	to := grip
	to.At = grip.At.Add(geom.Point{X: inch(10), Y: inch(10)})
	f.drag(c, grip, to)
	if got := f.rooms(); got[0].Outline().Box() == (geom.Box{}) || f.Index().RoomOf(r.ID).Outline().Box().Min != left {
		t.Error("a drag across a room that is not chosen moves it")
	}
	f.chosen = []plan.ID{r.ID}
	c.Move(f, grip)
	if f.preview.Cursor != CursorMove || c.Hint(f).ID != "tool.select.hint-room" {
		t.Errorf("over a chosen room: cursor %v, hint %q", f.preview.Cursor, c.Hint(f))
	}
	// 144 in is the square's east face: 4-1/2 in of partition beyond it is 148-1/2.
	to.At = grip.At.Add(geom.Point{X: inch(147) - left.X, Y: inch(1) - left.Y})
	c.Down(f, grip)
	c.Move(f, to)
	if got := f.preview.Snap.String(); got != `4-1/2" partition from Room 1; in line with a face of Room 1` {
		t.Errorf("the snap is %q", got)
	}
	c.Up(f, to)
	if got := f.Index().RoomOf(r.ID).Outline().Box().Min; got != (geom.Point{X: inch(148.5)}) {
		t.Errorf("the room stands at %v, want 148-1/2 in and 0", got)
	}
	f.check()
	if f.history.Undo(); f.history.Plan().Level(ground).Rooms.Len() != 2 {
		t.Error("one undo takes back more than the drag")
	}
}

func TestARoomIsDraggedByATypedDistance(t *testing.T) {
	f := newFake(t)
	r := f.square()
	f.chosen = []plan.ID{r.ID}
	c := &choose{}
	c.Down(f, at(70, 60))
	c.Move(f, at(90, 62))
	f.typed(c, "5'")
	if got := f.Index().RoomOf(r.ID).Outline().Box().Min; got != (geom.Point{X: inch(60)}) {
		t.Errorf("the room stands at %v, want 5 ft to the right", got)
	}
	c.Down(f, at(130, 60))
	c.Move(f, at(160, 62))
	if !c.Cancel(f) || f.Index().RoomOf(r.ID).Outline().Box().Min.X != inch(60) {
		t.Error("Esc does not put the room back")
	}
}

func TestACornerIsDraggedByATypedLength(t *testing.T) {
	f := newFake(t)
	r := f.square()
	f.chosen = []plan.ID{r.ID}
	c := &choose{}
	c.Down(f, at(144, 0))
	c.Move(f, at(156, 1))
	f.typed(c, "14'")
	if got := f.Index().RoomOf(r.ID).Sides[1].Start; got != (geom.Point{X: inch(168)}) {
		t.Errorf("the corner is at %v, want 14 ft from the one to its left", got)
	}
	f.check()
}

func TestSeveralAreDraggedByATypedDistance(t *testing.T) {
	f, r := furnished(t)
	o := f.onNorth(r)
	var light *plan.Opening
	for _, each := range f.openings() {
		if each.ID != o.ID {
			light = each
		}
	}
	f.chosen = []plan.ID{o.ID, light.ID}
	c := &choose{}
	c.Down(f, at(30, 1))
	c.Move(f, at(40, 2))
	f.typed(c, "20")
	if now, _ := f.Plan().Opening(o.ID); now.At.Along != inch(50) {
		t.Errorf("the receptacle is at %v, want 50 in", now.At.Along)
	}
	if now, _ := f.Plan().Opening(light.ID); now.At.At.X != inch(92) {
		t.Errorf("the light is at %v, want 20 in to the right", now.At.At)
	}
}

// opened is a table that opens cards.
type opened struct {
	*fake
	card plan.ID
}

func (o *opened) OpenCard(id plan.ID) { o.card = id }

func TestADoubleClickOpensTheCard(t *testing.T) {
	f, r := furnished(t)
	table := &opened{fake: f}
	c := &choose{}
	twice := at(31, 1)
	twice.Double = true
	c.Down(table, twice)
	c.Up(table, twice)
	if id := f.onNorth(r).ID; table.card != id || len(f.chosen) != 1 || f.chosen[0] != id {
		t.Errorf("opened %q, chosen %v", table.card, f.chosen)
	}
}

func TestMeasureAlongTheWalls(t *testing.T) {
	f, m := newFake(t), &measure{}
	f.square()
	f.click(m, at(100, 1))
	f.click(m, at(143, 40))
	// 44 in to the corner and 40 in down, against the straight way of 59.46 in.
	if len(f.preview.Notes) != 1 || f.preview.Notes[0].Text != `7' 0"` {
		t.Errorf("notes %+v, want 7 ft along the walls", f.preview.Notes)
	}
	if f.said.ID != "tool.measure.walls" {
		t.Errorf("said %q", f.said)
	}
	f.click(m, at(20, 1))
	f.click(m, at(60, 1))
	if len(f.preview.Notes) != 0 || f.preview.Dims[0].Text != `3' 4"` {
		t.Errorf("on one face: %+v and %+v, want the straight way alone", f.preview.Notes, f.preview.Dims)
	}
}
