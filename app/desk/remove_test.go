package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/work"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// A room that holds something goes by the Delete key only after a question; an empty one
// goes at once.
func TestARoomWithOpeningsGoesOnlyAfterAQuestion(t *testing.T) {
	b := newBench(t)
	id := b.room(12*unit.Foot, 10*unit.Foot)
	made := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(b.doc().Index().RoomOf(id).Sides[0].ID, 4*unit.Foot))
	made.ID = work.NewID(plan.KindOpening)
	if err := b.editor.Do(edit.AddOpening{Opening: made}); err != nil {
		t.Fatal(err)
	}
	b.doc().Select(id)
	b.keys.typed(fyne.KeyDelete)
	if b.doc().Index().RoomOf(id) == nil {
		t.Fatal("the room has gone without a question")
	}
	if said := textOf(b.dialog()); !strings.Contains(said, "go with it: opening D1") {
		t.Errorf("asked: %q", said)
	}
	b.press(b.dialog(), "Delete all of it")
	if b.doc().Index().RoomOf(id) != nil {
		t.Error("confirmed, the room is still there")
	}
	b.noDialog()
	id = b.room(12*unit.Foot, 10*unit.Foot)
	b.doc().Select(id)
	b.keys.typed(fyne.KeyDelete)
	if b.doc().Index().RoomOf(id) != nil {
		t.Error("an empty room does not go by the key")
	}
}
