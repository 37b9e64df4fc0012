package desk

import (
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// What is copied goes to where it is clicked, with all it is but its place, tag and, in
// another plan, its circuit.
func TestAnOpeningIsCopiedAndSetElsewhere(t *testing.T) {
	b := newBench(t)
	den := b.room(14*unit.Foot, 12*unit.Foot)
	north := b.doc().Index().RoomOf(den).Sides[0].ID
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(north, 4*unit.Foot))
	o.ID, o.Height, o.Status, o.Note = work.NewID(plan.KindOpening), plan.CentreAt(30*unit.Inch), plan.StatusExisting, "by the desk"
	if err := b.editor.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	if b.commands.Run("paste") {
		t.Error("there is something to set before anything was copied")
	}
	b.doc().Select(o.ID)
	b.shortcut(shell.Ctrl, fyne.KeyC)
	b.shortcut(shell.Ctrl, fyne.KeyV)
	p := tool.Pointer{At: geom.Point{X: 9 * unit.Foot, Y: unit.Inch}, Reach: 2 * unit.Inch}
	b.hand.tool().Move(b.tools, p)
	b.hand.tool().Down(b.tools, p)
	made, _ := b.doc().Plan().Opening(b.doc().Selection()[0])
	if made == nil || made.ID == o.ID {
		t.Fatal("no copy was set")
	}
	was, _ := b.doc().Plan().Opening(o.ID)
	if made.Height != was.Height || made.Status != was.Status || made.Note != was.Note || made.Assembly.Code != was.Assembly.Code {
		t.Errorf("the copy is %+v, of %+v", made, was)
	}
	if made.Tag == was.Tag || made.At == was.At {
		t.Errorf("the copy has the tag %s and the place %v", made.Tag, made.At)
	}
	b.hand.TakeKind("duplex")
	if b.hand.sample != nil {
		t.Error("choosing a kind does not put the copy away")
	}
}
