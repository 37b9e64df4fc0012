package desk

import (
	"testing"

	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// The next room stands a partition beside the last, whatever swings out of that one.
func TestTheNextRoomStandsBesideTheLast(t *testing.T) {
	b := newBench(t)
	den := b.room(14*unit.Foot, 12*unit.Foot)
	north := b.doc().Index().RoomOf(den).Sides[0].ID
	door := plan.Break{
		ID: work.NewID(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(north, 3*unit.Foot),
		Width: 3 * unit.Foot, Head: 80 * unit.Inch, Hand: plan.HandLeft, Swing: plan.SwingOut,
	}
	if err := b.editor.Do(edit.AddBreak{Break: door}); err != nil {
		t.Fatal(err)
	}
	was := b.doc().Index().RoomOf(den).Outline().Box()
	hall := b.room(6*unit.Foot, 5*unit.Foot)
	next := b.doc().Index().RoomOf(hall).Outline().Box()
	if gap := next.Min.X - was.Max.X; next.Min.Y != was.Min.Y || gap != 9*unit.Inch/2 {
		t.Errorf("it stands %s to the right and %s down", unit.Imperial.Format(gap), unit.Imperial.Format(next.Min.Y-was.Min.Y))
	}
}
