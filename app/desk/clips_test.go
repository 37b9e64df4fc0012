package desk

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// den is a room of 14 by 12 ft with receptacles on its north face at places in feet.
func (b *bench) den(feet ...unit.Length) (room *plan.Room, ids []plan.ID) {
	b.t.Helper()
	id := b.room(14*unit.Foot, 12*unit.Foot)
	room = b.doc().Index().RoomOf(id)
	for _, at := range feet {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(room.Sides[0].ID, at*unit.Foot))
		o.ID = work.NewID(plan.KindOpening)
		b.did(edit.AddOpening{Opening: o})
		ids = append(ids, o.ID)
	}
	return room, ids
}

func (b *bench) did(e edit.Edit) {
	b.t.Helper()
	if err := b.editor.Do(e); err != nil {
		b.t.Fatal(err)
	}
}

// places lists where the chosen openings are.
func (b *bench) places() (all []plan.Anchor) {
	for _, id := range b.doc().Selection() {
		if o, _ := b.doc().Plan().Opening(id); o != nil {
			all = append(all, o.At)
		}
	}
	return all
}

func TestSeveralAreCopiedOntoAnotherWall(t *testing.T) {
	b := newBench(t)
	room, ids := b.den(3, 9)
	b.doc().Select(ids...)
	b.shortcut(shell.Ctrl, fyne.KeyC)
	before, south := b.doc().Plan(), room.Sides[2].ID
	b.doc().Select(south)
	b.shortcut(shell.Ctrl, fyne.KeyV)
	got := b.places()
	if len(got) != 2 || got[0] != plan.OnFace(south, 3*unit.Foot) || got[1] != plan.OnFace(south, 9*unit.Foot) {
		t.Errorf("in hand are openings at %v, want two on the south face at 3 and 9 ft", got)
	}
	if b.doc().Undo(); !plan.Equal(before, b.doc().Plan()) {
		t.Error("one undo does not take them back")
	}
}

// The distance from one to the next is kept: the copies begin as far on as the whole goes.
func TestSeveralAreDuplicatedBeside(t *testing.T) {
	b := newBench(t)
	room, ids := b.den(2, 5)
	b.doc().Select(ids...)
	b.shortcut(shell.Ctrl, fyne.KeyD)
	north := room.Sides[0].ID
	if got := b.places(); len(got) != 2 || got[0] != plan.OnFace(north, 5*unit.Foot) && got[0] != plan.OnFace(north, 6*unit.Foot) {
		t.Errorf("in hand are openings at %v", got)
	} else if got[0] == plan.OnFace(north, 5*unit.Foot) {
		t.Error("a copy stands on one that was copied")
	}
}

func TestARoomIsDuplicatedByTheKey(t *testing.T) {
	b := newBench(t)
	room, _ := b.den(3)
	b.doc().Select(room.ID)
	b.shortcut(shell.Ctrl, fyne.KeyD)
	l := b.doc().Plan().Level(b.doc().Level())
	if l.Rooms.Len() != 2 || l.Openings.Len() != 2 {
		t.Errorf("%d rooms with %d openings, want 2 with 2", l.Rooms.Len(), l.Openings.Len())
	}
	if got := b.doc().Selection(); len(got) != 1 || got[0] == room.ID || got[0].Kind() != plan.KindRoom {
		t.Errorf("in hand is %v, want the copy", got)
	}
}

// All chosen (Ctrl+A, or one drag round them), a click opens the choice of boxes and another
// takes one: with the drag three.
func TestTenBoxesGoToAnotherAssemblyByTwoClicksMore(t *testing.T) {
	b := newBench(t)
	_, ids := b.den(1, 2, 3, 4, 5, 6, 7, 8, 9, 10)
	b.shortcut(shell.Ctrl, fyne.KeyA)
	if got := b.doc().Selection(); !slices.Equal(got, ids) {
		t.Errorf("chosen are %v, want all by their tags %v", got, ids)
	}
	var boxes *look.Choice
	for _, c := range windowtest.All[*look.Choice](b.column.Object) {
		if c.Label() == "Box" {
			boxes = c
		}
	}
	if boxes == nil {
		t.Fatal("the card of ten has no choice of boxes")
	}
	test.Tap(windowtest.All[*look.Press](boxes)[0])
	for _, o := range windowtest.All[fyne.CanvasObject](b.window.Canvas().Overlays().Top()) {
		if row, isTappable := o.(fyne.Tappable); isTappable && strings.Contains(textOf(o), "SQ2:") {
			row.Tapped(&fyne.PointEvent{})
			break
		}
	}
	for _, id := range ids {
		if o, _ := b.doc().Plan().Opening(id); o.Assembly.Code != "SQ2" {
			t.Errorf("%s has the box %q", o.Tag, o.Assembly.Code)
		}
	}
}

// A copy past the board's edge comes into view: a level shown whole is shown whole again, and
// else the board moves by as little as it must, without another scale.
func TestACopyComesIntoView(t *testing.T) {
	for _, isFitted := range []bool{true, false} {
		b := newBench(t)
		room, _ := b.den(3)
		b.view.Fit()
		if !isFitted {
			b.view.board.ZoomOut()
		}
		scale := b.view.board.Scale()
		b.doc().Select(room.ID)
		var copied plan.ID
		for range 4 {
			b.shortcut(shell.Ctrl, fyne.KeyD)
			copied = b.doc().Selection()[0]
		}
		box, _ := b.doc().Index().BoxOf(copied)
		size := b.view.board.Size()
		for _, p := range []geom.Point{box.Min, box.Max} {
			if at := b.view.board.Place(p); at.X < 0 || at.Y < 0 || at.X > size.Width || at.Y > size.Height {
				t.Errorf("fitted %v: a corner of the copy stands at %v of %v", isFitted, at, size)
			}
		}
		if isFitted != b.view.fitted || isFitted == (b.view.board.Scale() == scale) {
			t.Errorf("fitted %v: now %v, at scale %v, before %v", isFitted, b.view.fitted, b.view.board.Scale(), scale)
		}
	}
}

// So does a room that is drawn past it.
func TestARoomDrawnPastTheEdgeComesIntoView(t *testing.T) {
	b := newBench(t)
	b.room(8*unit.Foot, 10*unit.Foot)
	b.view.Fit()
	corners := geom.Polygon{{X: 60 * unit.Foot}, {X: 70 * unit.Foot}, {X: 70 * unit.Foot, Y: 9 * unit.Foot}, {X: 60 * unit.Foot, Y: 9 * unit.Foot}}
	room := fill.NewRoom(unit.Imperial, "raaaaaaab", "Far", corners, []plan.ID{"saaaaaaab", "saaaaaaac", "saaaaaaad", "saaaaaaae"})
	if err := b.tools.Do(edit.AddRoom{Level: b.doc().Level(), Room: room}); err != nil {
		t.Fatal(err)
	}
	if at := b.view.board.Place(corners[2]); at.X > b.view.board.Size().Width || !b.view.fitted {
		t.Errorf("its corner stands at %v of %v", at, b.view.board.Size())
	}
}

func TestWhatIsCutIsPastedBack(t *testing.T) {
	b := newBench(t)
	room, ids := b.den(3, 9)
	b.doc().Select(ids...)
	b.shortcut(shell.Ctrl, fyne.KeyX)
	if n := b.doc().Plan().Level(b.doc().Level()).Openings.Len(); n != 0 {
		t.Fatalf("%d openings are left", n)
	}
	b.shortcut(shell.Ctrl, fyne.KeyV)
	north := room.Sides[0].ID
	if got := b.places(); len(got) != 2 || got[0] != plan.OnFace(north, 3*unit.Foot) || got[1] != plan.OnFace(north, 9*unit.Foot) {
		t.Errorf("in hand are openings at %v, want them where they were", got)
	}
}

func TestSeveralAreArrangedByKeys(t *testing.T) {
	b := newBench(t)
	room, ids := b.den(1, 2, 11)
	at := func(i int) plan.Anchor {
		o, _ := b.doc().Plan().Opening(ids[i])
		return o.At
	}
	b.doc().Select(ids...)
	b.shortcut(shell.Ctrl, fyne.KeyE)
	if got := at(1).Along; got != 6*unit.Foot {
		t.Errorf("spread, the one between is at %v, want 6 ft", got)
	}
	b.shortcut(shell.Ctrl|shift, fyne.KeyE)
	if got := at(0).Along; got != 14*unit.Foot/4 {
		t.Errorf("spread over the wall, the first is at %v, want a quarter of 14 ft", got)
	}
	b.shortcut(shell.Ctrl, fyne.KeyR)
	if got := at(0).Host; got != room.Sides[1].ID {
		t.Errorf("turned, it is on %v, want the east face", got)
	}
	b.shortcut(shell.Ctrl, fyne.KeyM)
	if got := at(0).Along; got != 12*unit.Foot-14*unit.Foot/4 {
		t.Errorf("mirrored, it is at %v of 12 ft, want 8 ft 6 in", got)
	}
	b.did(edit.SetHeight{ID: ids[0], Height: plan.CentreAt(44 * unit.Inch)})
	b.shortcut(shell.Ctrl, fyne.KeyH)
	if o, _ := b.doc().Plan().Opening(ids[2]); o.Height.Value != 44*unit.Inch {
		t.Errorf("aligned, it is %v high", o.Height.Value)
	}
}

func TestARowOfSeveralCopies(t *testing.T) {
	b := newBench(t)
	_, ids := b.den(1, 2)
	b.doc().Select(ids...)
	before := b.doc().Plan()
	b.shortcut(shell.Ctrl|shift, fyne.KeyD)
	b.sent("Place them", "3", "3'")
	if n := b.doc().Plan().Level(b.doc().Level()).Openings.Len(); n != 8 {
		t.Errorf("%d openings, want three copies of two more", n)
	}
	if b.doc().Undo(); !plan.Equal(before, b.doc().Plan()) {
		t.Error("one undo does not take them back")
	}
}
