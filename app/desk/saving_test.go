package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestUnsavedChangesAreGuarded(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	drawn := b.doc.Plan()
	b.New()
	if !plan.Equal(drawn, b.doc.Plan()) {
		t.Fatal("New took the plan away before it was answered")
	}
	b.press(b.dialog(), "Go back")
	b.noDialog()
	if !plan.Equal(drawn, b.doc.Plan()) {
		t.Error("going back lost the plan")
	}
	b.New()
	b.press(b.dialog(), "Do not save")
	if b.doc.IsDirty() || plan.Equal(drawn, b.doc.Plan()) {
		t.Error("letting go did not begin an empty plan")
	}
}

func TestSaveOpenAndAChangeUnderneath(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.written()
	b.noDialog()
	if b.doc.IsDirty() {
		t.Error("a saved plan is still said to be unsaved")
	}
	saved := b.doc.Plan()
	b.New()
	b.noDialog()
	b.OpenGuarded(path)
	b.until("the file", func() bool { return b.doc.Path() == path })
	if !plan.Equal(saved, b.doc.Plan()) {
		t.Error("the plan opened differs from the one saved")
	}
	if got := b.prefs.recent(); len(got) == 0 || got[0] != path {
		t.Errorf("recent plans are %q, want %q first", got, path)
	}

	other := plan.New("Someone else's", newID(plan.KindLevel))
	now, err := file.StampOf(path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := file.Save(path, other, now); err != nil {
		t.Fatal(err)
	}
	b.room(9*unit.Foot, 9*unit.Foot)
	b.Save()
	b.written()
	if !strings.Contains(textOf(b.dialog()), "changed by someone else") {
		t.Fatalf("saving over another's change shows:\n%s", textOf(b.dialog()))
	}
	b.press(b.dialog(), "Go back")
	b.noticeChange()
	b.press(b.dialog(), "Read it again")
	b.until("the other's plan", func() bool { return b.doc.Title() == "Someone else's" })
}

// TestAFileChangedUnderneathIsToldAtTheNextLook: not while something is dragged or typed,
// but as soon as that has ended.
func TestAFileChangedUnderneathIsToldAtTheNextLook(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.written()
	looked := func() {
		t.Helper()
		b.house.lookRound()
		b.until("the look", func() bool { return len(b.queue) == 0 })
		select {
		case f := <-b.queue:
			f()
		case <-time.After(300 * time.Millisecond):
		}
	}
	looked()
	b.noDialog()
	now, err := file.StampOf(path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := file.Save(path, plan.New("Someone else's", newID(plan.KindLevel)), now); err != nil {
		t.Fatal(err)
	}
	b.doc.Begin(words.New("plain", "{0}", "a drag"))
	looked()
	b.noDialog()
	b.doc.End()
	looked()
	b.dialogSays("changed by another program")
	b.press(b.dialog(), "Keep what is here")
	b.asked = time.Time{}
	looked()
	b.noDialog()
}

func TestAFailedSaveLosesNothing(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	drawn := b.doc.Plan()
	b.saveAs(filepath.Join(t.TempDir(), "no", "such", "folder", "x.studbay"), nil)
	b.written()
	said := textOf(b.dialog())
	if !strings.Contains(said, "could not be saved") || !strings.Contains(said, "x.studbay") {
		t.Errorf("a save that failed says:\n%s", said)
	}
	b.press(b.dialog(), "Go back")
	if !plan.Equal(drawn, b.doc.Plan()) || !b.doc.IsDirty() {
		t.Error("a save that failed lost the plan or its changes")
	}
}

func TestABrokenFileIsRefusedPlainly(t *testing.T) {
	b := newBench(t)
	path := filepath.Join(t.TempDir(), "broken.studbay")
	if err := os.WriteFile(path, []byte(`{"format": "studbay", "version"`), 0o600); err != nil {
		t.Fatal(err)
	}
	b.OpenGuarded(path)
	b.until("the refusal", func() bool { return b.window.Canvas().Overlays().Top() != nil })
	if said := textOf(b.dialog()); !strings.Contains(said, "broken.studbay") {
		t.Errorf("the refusal does not name the file:\n%s", said)
	}
}

func TestWhatWasKilledIsOffered(t *testing.T) {
	folder := t.TempDir()
	killed, err := file.OpenRecovery(folder)
	if err != nil {
		t.Fatal(err)
	}
	p := plan.New("Half a house", newID(plan.KindLevel))
	if err := killed.Keep(file.Unsaved{Doc: "half", Time: time.Now(), Plan: p}); err != nil {
		t.Fatal(err)
	}
	killed.Close() // as the end of the process would

	b := newBench(t)
	b.house.Close()
	b.house.openRecovery(folder)
	b.offerRecovery()
	for _, want := range []string{"“Half a house”", "never saved", "Kept on " + time.Now().Format("2006-01-02"), "less than a minute ago", "0 rooms and 0 openings"} {
		b.dialogSays(want)
	}
	b.press(b.dialog(), "Take it up")
	if b.doc.Title() != "Half a house" || !b.doc.IsDirty() {
		t.Errorf("taken up %q, dirty %v; want the plan that was kept, unsaved", b.doc.Title(), b.doc.IsDirty())
	}
}

func TestARecoveryTellsHowItDiffersFromItsFile(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.written()
	kept := b.doc.unsaved(time.Now().Add(-3 * time.Hour))
	offered := func(u file.Unsaved, want ...string) {
		t.Helper()
		b.house.left = []file.Unsaved{u}
		b.offerRecovery()
		b.until("the offer", func() bool { return b.window.Canvas().Overlays().Top() != nil })
		for _, text := range want {
			if said := textOf(b.dialog()); !strings.Contains(strings.ReplaceAll(said, "\n", " "), text) {
				t.Errorf("the offer lacks %q:\n%s", text, said)
			}
		}
		b.press(b.dialog(), "Later")
	}
	offered(kept, path, "3 hours ago", "1 room and 0 openings", "Its file holds the same")

	if err := b.addRoom("Hall", 6*unit.Foot, 5*unit.Foot); err != nil {
		t.Fatal(err)
	}
	first := b.doc.Plan().Levels[0].Rooms
	for r := range first.All() {
		if r.Name == "Den" {
			changed := *r
			changed.Ceiling = 9 * unit.Foot
			if err := b.Do(plan.ChangeRoom{Room: changed}); err != nil {
				t.Fatal(err)
			}
		}
	}
	kept.Plan = b.doc.Plan()
	offered(kept, "It holds 2 rooms and 0 openings", "Its file holds 1 room and 0 openings", "rooms: 1 new, 1 changed; openings: the same; other things: the same")

	kept.Stamp = file.Stamp{Size: 1}
	offered(kept, "changed since by another program")
	if err := os.WriteFile(path, []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	offered(kept, "Its file cannot be read: ")
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	offered(kept, "Its file is not there any more")
}

func TestAPlanOpenElsewhereIsToldOf(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.written()

	other := newBench(t)
	other.house.claims = b.house.claims
	other.OpenGuarded(path)
	other.until("the question", func() bool { return other.window.Canvas().Overlays().Top() != nil })
	if said := textOf(other.dialog()); !strings.Contains(said, "Another window has this plan open") {
		t.Errorf("opening a plan a second time says:\n%s", said)
	}
	other.press(other.dialog(), "Open it all the same")
	if other.doc.Path() != path {
		t.Error("the plan is not opened all the same")
	}
}

func TestAPlanWithoutATitleTakesThatOfItsFile(t *testing.T) {
	b := newBench(t)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.written()
	if got := b.doc.Title(); got != "den" || b.doc.IsDirty() {
		t.Errorf("saved as den.studbay: titled %q, unsaved %v", got, b.doc.IsDirty())
	}
	other := filepath.Join(t.TempDir(), "other.studbay")
	b.saveAs(other, nil)
	b.written()
	if got := b.doc.Title(); got != "den" {
		t.Errorf("saved under another name: titled %q", got)
	}
}

// While a slow disk writes, work goes on; what is asked for meanwhile comes after it.
func TestWorkGoesOnWhileAPlanIsSaved(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	if err := b.addRoom("Hall", 6*unit.Foot, 5*unit.Foot); err != nil {
		t.Fatal(err)
	}
	first := b.saving
	b.until("the first saving", func() bool { return b.saving != first })
	if !b.doc.IsDirty() {
		t.Error("what was drawn while the plan was written is said to be saved")
	}
	b.Save()
	b.New() // waits, and then has nothing to ask
	if b.window.Canvas().Overlays().Top() != nil {
		t.Error("it asks before the saving has ended")
	}
	b.written()
	b.noDialog()
	p, _, err := file.Load(path)
	if err != nil || p.Levels[0].Rooms.Len() != 2 {
		t.Errorf("the file has not both rooms: %v", err)
	}
	if b.doc.Path() != "" {
		t.Error("the new plan was not begun")
	}
}

// What is drawn while the plan is saved on the way to another is asked for, not dropped.
func TestWhatIsDrawnDuringASaveIsNotDropped(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	b.saveAs(filepath.Join(t.TempDir(), "den.studbay"), nil)
	b.written()
	b.draw("Hall")
	b.New()
	b.press(b.dialog(), "Save")
	b.draw("Bath")
	b.written()
	b.press(b.dialog(), "Go back")
	if n := b.doc.Plan().Levels[0].Rooms.Len(); n != 3 || !b.doc.IsDirty() {
		t.Errorf("%d rooms are left, unsaved %v", n, b.doc.IsDirty())
	}
}

// draw adds a room without a wait.
func (b *bench) draw(name string) {
	b.t.Helper()
	if err := b.addRoom(name, 6*unit.Foot, 5*unit.Foot); err != nil {
		b.t.Fatal(err)
	}
}

// A plan takes the title of its file also where it is changed or dragged while that is
// written.
func TestATitleIsTakenWhateverGoesOn(t *testing.T) {
	for name, during := range map[string]func(b *bench){
		"a room is drawn": func(b *bench) { b.draw("Hall") },
		"a drag begins":   func(b *bench) { b.table.Begin(words.New("plain", "{0}", "a drag")) },
	} {
		t.Run(name, func(t *testing.T) {
			b := newBench(t)
			b.room(12*unit.Foot, 10*unit.Foot)
			b.saveAs(filepath.Join(t.TempDir(), "den.studbay"), nil)
			during(b)
			b.written()
			b.table.End()
			if b.doc.Title() != "den" {
				t.Errorf("it is titled %q", b.doc.Title())
			}
		})
	}
}

// What is asked for during a saving is done after it, all of it and in order.
func TestSavesWaitInLine(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	first, second := filepath.Join(t.TempDir(), "den.studbay"), filepath.Join(t.TempDir(), "copy.studbay")
	b.saveAs(first, nil)
	b.Save()
	b.noDialog() // it has a name by then
	b.draw("Hall")
	b.saveAs(second, nil)
	b.Save()
	b.written()
	b.noDialog()
	for _, path := range []string{first, second} {
		if p, _, err := file.Load(path); err != nil || p.Levels[0].Rooms.Len() != 2 {
			t.Errorf("%s: %v", filepath.Base(path), err)
		}
	}
	if b.doc.Path() != second || b.doc.IsDirty() {
		t.Errorf("the plan stands in %s, unsaved %v", b.doc.Path(), b.doc.IsDirty())
	}
}
