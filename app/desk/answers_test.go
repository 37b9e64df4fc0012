package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// What a client sent back from the page is kept as wishes, in one step; what is about a thing
// that is gone is left out, and nothing is moved.
func TestAnswersAreTakenInFromAFile(t *testing.T) {
	b := newBench(t)
	den := b.room(14*unit.Foot, 12*unit.Foot)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(b.doc().Index().RoomOf(den).Sides[0].ID, 4*unit.Foot))
	o.ID = "oaaaaaaaa"
	if err := b.editor.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "answers.txt")
	text := "Studbay answers 1\nby Ann\ndate 2026-11-30\n\nchange oaaaaaaaa Two inches higher, please\nagreed obbbbbbbb\nend\n"
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	before, _ := b.doc().Plan().Opening("oaaaaaaaa")
	b.takeAnswers(path)
	var kept []*plan.Wish
	for w := range b.doc().Plan().Wishes.All() {
		kept = append(kept, w)
	}
	if len(kept) != 1 || kept[0].Kind != plan.WishChange || kept[0].About != "oaaaaaaaa" || kept[0].By != "Ann" || kept[0].Note != "Two inches higher, please" {
		t.Fatalf("kept are %+v", kept)
	}
	if now, _ := b.doc().Plan().Opening("oaaaaaaaa"); now != before {
		t.Error("a wish moved an opening")
	}
	if told := textOf(b.window.Canvas().Overlays().Top()); !strings.Contains(told, "not in the plan any more") {
		t.Errorf("nothing tells what was left out: %q", told)
	}
	b.commands.Run("undo")
	if n := b.doc().Plan().Wishes.Len(); n != 0 {
		t.Errorf("one undo leaves %d wishes", n)
	}
}
