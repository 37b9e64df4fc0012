package desk

import (
	"testing"

	"studbay/app/work"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// sent fills in the form in sight and answers it.
func (b *bench) sent(yes string, texts ...string) {
	b.t.Helper()
	form := b.dialog()
	for i, text := range texts {
		b.entries(form)[i].SetText(text)
	}
	b.press(form, yes)
}

// TestACeilingLightIsCopiedInRows: two rows of three, in one step, and none where one
// would lie outside.
func TestACeilingLightIsCopiedInRows(t *testing.T) {
	b := newBench(t)
	room := b.room(14*unit.Foot, 12*unit.Foot)
	o := part.NewOpening(unit.Imperial, "recessed", plan.OnCeiling(room, geom.Point{X: 2 * unit.Foot, Y: 3 * unit.Foot}))
	o.ID = work.NewID(plan.KindOpening)
	if err := b.editor.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	b.choose(o.ID)
	before := b.doc().Plan()
	b.run("copy-row")
	b.dialogSays("How many down")
	b.sent("Place them", "3", "5'", "2", "6'")
	at := map[geom.Point]bool{}
	for _, o := range b.doc().Plan().Openings() {
		at[o.At.At] = true
	}
	for _, x := range []unit.Length{2, 7, 12} {
		for _, y := range []unit.Length{3, 9} {
			if !at[geom.Point{X: x * unit.Foot, Y: y * unit.Foot}] {
				t.Errorf("none stands %d ft along, %d ft down", x, y)
			}
		}
	}
	if len(at) != 6 {
		t.Errorf("%d lights, want 6", len(at))
	}
	if b.doc().Undo(); !plan.Equal(before, b.doc().Plan()) {
		t.Error("one undo does not take them back")
	}
	b.run("copy-row")
	b.sent("Place them", "4", "5'", "1", "6'")
	if !plan.Equal(before, b.doc().Plan()) {
		t.Error("copies were made though one would lie outside")
	}
	b.dialogSays("How many down")
}
