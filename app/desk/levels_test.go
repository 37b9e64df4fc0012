package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/app/tool"
	"studbay/app/windowtest"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// The bar under the board is the first click, a line of its menu the second.
func TestALevelIsCopiedInTwoClicks(t *testing.T) {
	b := newBench(t)
	den := b.room(14*unit.Foot, 12*unit.Foot)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(b.doc().Index().RoomOf(den).Sides[0].ID, 4*unit.Foot))
	o.ID = "oaaaaaaaa"
	if err := b.editor.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	below := b.doc().Level()
	test.Tap(windowtest.All[*look.Press](b.level.Object)[0])
	b.chooseLine("Copy this level with what is in it")
	l := b.doc().Plan().Level(b.doc().Level())
	if l.ID == below || l.Rooms.Len() != 1 || l.Openings.Len() != 1 || l.Elevation != 9*unit.Foot {
		t.Fatalf("the level shown is %+v", l)
	}
	if got := b.view.board.Picture().Ghost; got != below {
		t.Errorf("%q shows through it, want the level below", got)
	}
	b.commands.Run("ghost-below")
	if got := b.view.board.Picture().Ghost; got != "" {
		t.Errorf("%q shows through though none is wanted", got)
	}
	b.commands.Run("undo")
	if n := len(b.doc().Plan().Levels); n != 1 {
		t.Errorf("one undo leaves %d levels", n)
	}
}

// chooseLine presses a line of the menu that is open.
func (b *bench) chooseLine(label string) {
	b.t.Helper()
	for _, o := range windowtest.All[fyne.CanvasObject](b.window.Canvas().Overlays().Top()) {
		row, isTappable := o.(fyne.Tappable)
		if isTappable && strings.TrimSpace(textOf(o)) == label {
			row.Tapped(&fyne.PointEvent{})
			return
		}
	}
	b.t.Fatalf("no line of the menu says %q", label)
}

// What is shown at the pointer goes with the level that it is of.
func TestWhatIsLiveGoesWithItsLevel(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.editor.addLevel()
	b.commands.Run("level-down")
	b.hand.TakeKind("duplex")
	b.hand.tool().Move(b.tools, tool.Pointer{At: geom.Point{X: 4 * unit.Foot, Y: unit.Inch}, Reach: 2 * unit.Inch})
	if b.hand.preview.Ghost == nil {
		t.Fatal("nothing is shown at the pointer")
	}
	b.view.pointedAt(geom.Point{X: 4 * unit.Foot, Y: 2 * unit.Foot})
	b.commands.Run("level-up")
	if room, _ := b.view.roomInHand(); room != nil {
		t.Errorf("%s is unfolded on the level above, where no room is", room.Name)
	}
	if p := b.hand.preview; p.Ghost != nil || len(p.Dims) > 0 {
		t.Errorf("on the level above still shows %+v", p)
	}
}

// A refusal stands at the pointer until that is pressed again or has gone on.
func TestARefusalStandsAtThePointer(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.hand.TakeKind("duplex")
	outside := tool.Pointer{At: geom.Point{X: 40 * unit.Foot, Y: 40 * unit.Foot}, Reach: 2 * unit.Inch}
	b.hand.tool().Down(b.tools, outside)
	if p := b.hand.live(); p.Refused.IsZero() {
		t.Fatal("nothing is said at the pointer")
	}
	b.hand.pointed(tool.Pointer{At: geom.Point{X: 2 * unit.Foot, Y: 2 * unit.Foot}, Reach: 2 * unit.Inch})
	if p := b.hand.live(); !p.Refused.IsZero() {
		t.Errorf("far from there it still says %q", p.Refused)
	}
	b.hand.Take(0)
	if got, want := b.hand.hint().ID, b.hand.tool().Hint(b.tools).ID; got != want {
		t.Errorf("with another tool the status line says %q, want %q", got, want)
	}
	b.hand.refuse(words.New("plain", "{0}", "no"))
	b.hand.say(words.Text{})
	if p := b.hand.live(); !p.Refused.IsZero() {
		t.Error("what was done since leaves the refusal")
	}
}

// The guide in the empty window goes away for good.
func TestTheGuideGoesAwayForGood(t *testing.T) {
	b := newBench(t)
	if !b.steps.IsShown() {
		t.Fatal("an empty window shows no guide")
	}
	b.press(b.window.Content(), "Do not show this again")
	if b.steps.IsShown() {
		t.Error("the guide stays")
	}
	other := newDesk(b.house)
	b.house.desks = append(b.house.desks, other)
	if other.steps.IsShown() {
		t.Error("the next empty window shows it again")
	}
}

// With nothing chosen all openings of the level are rounded, in one step.
func TestOpeningsAreRoundedInOneStep(t *testing.T) {
	b := newBench(t)
	den := b.room(14*unit.Foot, 12*unit.Foot)
	sides := b.doc().Index().RoomOf(den).Sides
	for i, id := range []plan.ID{"oaaaaaaaa", "obbbbbbbb"} {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(sides[i].ID, 40*unit.Inch+unit.Inch/7))
		if o.ID = id; b.editor.Do(edit.AddOpening{Opening: o}) != nil {
			t.Fatal("not added")
		}
	}
	b.doc().Select()
	steps := len(b.doc().History().Done())
	b.run("to-steps")
	for o := range b.doc().Plan().Level(b.doc().Level()).Openings.All() {
		if b.doc().System().Format(o.At.Along)[0] == "≈"[0] {
			t.Errorf("%s is at %s", o.Tag, b.doc().System().Format(o.At.Along))
		}
	}
	if got := len(b.doc().History().Done()); got != steps+1 {
		t.Errorf("it took %d steps", got-steps)
	}
}
