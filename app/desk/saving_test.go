package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/unit"
)

// save saves to a file that the chooser is answered with, and waits for it.
func (b *bench) save(path string) {
	b.t.Helper()
	b.run("save-as")
	b.write(path)
	b.until("the saving", func() bool { return b.doc().Path() == path && !b.doc().IsDirty() })
}

// What the life of a document asks and tells reaches the window, and the answers it.
func TestTheWindowAsksForTheDocument(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	drawn := b.doc().Plan()
	b.run("new")
	b.press(b.dialog(), "Cancel")
	b.noDialog()
	if !plan.Equal(drawn, b.doc().Plan()) {
		t.Error("going back lost the plan")
	}
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.save(path)
	b.noDialog()
	if got := b.prefs.Recent(); len(got) == 0 || got[0] != path {
		t.Errorf("recent plans are %q, want %q first", got, path)
	}
	if got := b.windowTitle(); got != "den · Studbay" {
		t.Errorf("the window is titled %q", got)
	}
	b.run("new")
	b.noDialog()
	b.session.Open(path)
	b.until("the file", func() bool { return b.doc().Path() == path })
	if b.doc().Plan().Levels[0].Rooms.Len() != 1 {
		t.Error("the plan opened is not the one saved")
	}
}

func TestABrokenFileIsRefusedPlainly(t *testing.T) {
	b := newBench(t)
	path := filepath.Join(t.TempDir(), "broken.studbay")
	if err := os.WriteFile(path, []byte(`{"format": "studbay", "version": "1.0", "walls": 3}`), 0o600); err != nil {
		t.Fatal(err)
	}
	b.session.Open(path)
	b.dialogSays("broken.studbay")
	if said := textOf(b.dialog()); !strings.Contains(said, "Line 1") {
		t.Errorf("the refusal does not name the line:\n%s", said)
	}
}

func TestWhatWasKilledIsShownInTheWindow(t *testing.T) {
	b := newBench(t)
	b.session.Offer(file.Unsaved{Doc: "half", Time: time.Now(), Plan: plan.New("Half a house", work.NewID(plan.KindLevel))})
	b.dialogSays("“Half a house”")
	b.press(b.dialog(), "Recover it")
	if b.doc().Title() != "Half a house" || b.windowTitle() != "• Half a house · Studbay" {
		t.Errorf("the window is titled %q", b.windowTitle())
	}
}
