package work

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func TestUnsavedChangesAreGuarded(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	drawn := u.doc.Plan()
	u.New()
	if !plan.Equal(drawn, u.doc.Plan()) {
		t.Fatal("New took the plan away before it was answered")
	}
	u.answer("Cancel")
	if !plan.Equal(drawn, u.doc.Plan()) {
		t.Error("going back lost the plan")
	}
	u.New()
	u.answer("Do not save")
	if u.doc.IsDirty() || plan.Equal(drawn, u.doc.Plan()) {
		t.Error("letting go did not begin an empty plan")
	}
}

func TestASessionClosesOnlyOnceNothingIsLost(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	closed := false
	u.Close(func() { closed = true })
	u.Close(func() { t.Error("it closed behind a question") })
	if closed {
		t.Fatal("it closed before it was answered")
	}
	u.answer("Save")
	if u.choose == nil {
		t.Fatal("a plan without a file is saved without asking for one")
	}
	path, do := inFolder(t, "den.studbay"), u.choose
	u.choose = nil
	do(path)
	u.awaitSaving()
	if !closed || !u.IsClosed() || len(u.shop.sessions) != 0 {
		t.Errorf("closed %v, %d sessions are left", closed, len(u.shop.sessions))
	}
	if p, _, err := file.Load(path); err != nil || p.Levels[0].Rooms.Len() != 1 {
		t.Errorf("the file has not the room: %v", err)
	}
	if claim, err := file.ClaimFile(u.shop.claims, path); err != nil {
		t.Errorf("closed, it still claims its file: %v", err)
	} else {
		claim.Release()
	}
}

func TestSaveOpenAndAChangeUnderneath(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	path := inFolder(t, "den.studbay")
	u.savedTo(path)
	u.notAsked()
	if u.doc.IsDirty() {
		t.Error("a saved plan is still said to be unsaved")
	}
	saved := u.doc.Plan()
	u.New()
	u.notAsked()
	u.Open(path)
	u.until("the file", func() bool { return u.doc.Path() == path })
	if !plan.Equal(saved, u.doc.Plan()) {
		t.Error("the plan opened differs from the one saved")
	}
	if len(u.recent) == 0 || u.recent[0] != path {
		t.Errorf("recent plans are %q, want %q first", u.recent, path)
	}

	overwrite(t, path)
	u.draw("Hall")
	u.Save()
	u.awaitSaving()
	if !has(u.question(), "changed by someone else") {
		t.Fatalf("saving over another's change asks %q", u.question())
	}
	u.answer("Cancel")
	u.shop.CameBack()
	u.answer("Read it again")
	u.until("the other's plan", func() bool { return u.doc.Title() == "Someone else's" })
}

// TestAFileChangedUnderneathIsToldAtTheNextLook: not while something is dragged or typed,
// but as soon as that has ended.
func TestAFileChangedUnderneathIsToldAtTheNextLook(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	path := inFolder(t, "den.studbay")
	u.savedTo(path)
	looked := func() {
		t.Helper()
		u.looked = time.Time{}
		u.shop.LookRound()
		for done := false; !done; {
			select {
			case f := <-u.queue:
				f()
			case <-time.After(300 * time.Millisecond):
				done = true
			}
		}
	}
	looked()
	u.notAsked()
	overwrite(t, path)
	u.doc.Begin(words.New("plain", "{0}", "a drag"))
	looked()
	u.notAsked()
	u.EndDrag()
	u.typing = true
	looked()
	u.notAsked()
	u.typing = false
	looked()
	if !has(u.question(), "changed by another program") {
		t.Errorf("asked: %q", u.question())
	}
	u.answer("Keep what is here")
	if !u.doc.IsDirty() {
		t.Error("what is kept beside a changed file is said to be saved")
	}
	looked()
	u.notAsked()
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	looked()
	if !has(u.question(), "file is gone") {
		t.Errorf("asked: %q", u.question())
	}
}

func TestAFailedSaveLosesNothing(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	drawn := u.doc.Plan()
	u.savedTo(filepath.Join(t.TempDir(), "no", "such", "folder", "x.studbay"))
	if !has(u.question(), "could not be saved", "x.studbay") {
		t.Errorf("a save that failed says %q", u.question())
	}
	u.answer("Cancel")
	if !plan.Equal(drawn, u.doc.Plan()) || !u.doc.IsDirty() {
		t.Error("a save that failed lost the plan or its changes")
	}
}

func TestABrokenFileIsRefusedPlainly(t *testing.T) {
	u := newPlayer(t)
	path := inFolder(t, "broken.studbay")
	if err := os.WriteFile(path, []byte(`{"format": "studbay", "version"`), 0o600); err != nil {
		t.Fatal(err)
	}
	u.Open(path)
	u.until("the refusal", u.IsAsked)
	if !has(u.question(), "broken.studbay") {
		t.Errorf("the refusal %q does not name the file", u.question())
	}
	if !u.told.IsZero() {
		t.Errorf("it still says %q", u.told)
	}
}

func TestWhatWasKilledIsOffered(t *testing.T) {
	home := t.TempDir()
	killed, err := file.OpenRecovery(filepath.Join(home, "recovery"))
	if err != nil {
		t.Fatal(err)
	}
	half := file.Unsaved{Doc: "half", Time: time.Now(), Plan: plan.New("Half a house", NewID(plan.KindLevel))}
	if err := killed.Keep(half); err != nil {
		t.Fatal(err)
	}
	killed.Close() // as the end of the process would

	u := newPlayer(t)
	u.shop = NewShop(home, u.shop.Post, func(err error) { t.Error(err) })
	t.Cleanup(u.shop.Close)
	u.OfferRecovery()
	if !has(u.question(), "“Half a house”", "never saved", "Kept on "+time.Now().Format("2006-01-02"), "less than a minute ago", "0 rooms and 0 openings") {
		t.Errorf("the offer says %q", u.question())
	}
	u.answer("Recover it")
	u.notAsked()
	if u.doc.Title() != "Half a house" || !u.doc.IsDirty() {
		t.Errorf("taken up %q, dirty %v; want the plan that was kept, unsaved", u.doc.Title(), u.doc.IsDirty())
	}
}

// TestWhatIsNotSavedIsKeptUntilItIs: a run that is killed leaves what it drew, one that
// saves leaves nothing.
func TestWhatIsNotSavedIsKeptUntilItIs(t *testing.T) {
	home := t.TempDir()
	left := func() []file.Unsaved {
		t.Helper()
		r, err := file.OpenRecovery(filepath.Join(home, "recovery"))
		if err != nil {
			t.Fatal(err)
		}
		defer r.Close()
		all, problems := r.List()
		if len(problems) > 0 {
			t.Error(problems)
		}
		return all
	}
	u := newPlayer(t)
	u.shop = NewShop(home, u.shop.Post, func(err error) { t.Error(err) })
	u.shop.sessions = append(u.shop.sessions, u.Session)
	u.draw("Den")
	u.shop.Close() // as where the program ends with the window open
	kept := left()
	if len(kept) != 1 || !plan.Equal(kept[0].Plan, u.doc.Plan()) {
		t.Fatalf("%d plans are kept, want the one drawn", len(kept))
	}

	u.shop = NewShop(home, u.shop.Post, func(err error) { t.Error(err) })
	u.shop.left = nil
	u.doc.name = kept[0].Doc
	u.savedTo(inFolder(t, "den.studbay"))
	u.shop.Close()
	if kept := left(); len(kept) != 0 {
		t.Errorf("saved, %d plans are still kept", len(kept))
	}
}

func TestARecoveryTellsHowItDiffersFromItsFile(t *testing.T) {
	u := newPlayer(t)
	den := u.draw("Den")
	path := inFolder(t, "den.studbay")
	u.savedTo(path)
	kept := u.doc.unsaved(time.Now().Add(-3 * time.Hour))
	offered := func(of file.Unsaved, want ...string) {
		t.Helper()
		u.shop.left = []file.Unsaved{of}
		u.OfferRecovery()
		u.until("the offer", u.IsAsked)
		if !has(u.question(), want...) {
			t.Errorf("the offer says %q, want %q", u.question(), want)
		}
		u.answer("Later")
	}
	offered(kept, ShortPath(path), "3 hours ago", "1 room and 0 openings", "Its file holds the same")

	u.draw("Hall")
	changed := *u.doc.Index().RoomOf(den)
	changed.Ceiling = 9 * unit.Foot
	if err := u.doc.Do(edit.ChangeRoom{Room: changed}); err != nil {
		t.Fatal(err)
	}
	kept.Plan = u.doc.Plan()
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
	offered(kept, "Its file is no longer there")
}

// TestARecoveryTakesNothingAway: with a plan of its own in the window it goes to another.
func TestARecoveryTakesNothingAway(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	u.shop.left = []file.Unsaved{{Doc: "half", Time: time.Now(), Plan: plan.New("Half a house", NewID(plan.KindLevel))}}
	u.OfferRecovery()
	u.answer("Recover it")
	if len(u.others) != 1 || u.others[0].doc.Title() != "Half a house" {
		t.Fatal("it is not shown in another window")
	}
	if u.doc.Plan().Levels[0].Rooms.Len() != 1 {
		t.Error("what was in the first window has gone")
	}
}

func TestAPlanOpenElsewhereIsToldOf(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	path := inFolder(t, "den.studbay")
	u.savedTo(path)

	other := newPlayer(t)
	other.shop.claims = u.shop.claims
	other.Open(path)
	other.until("the question", other.IsAsked)
	if !has(other.question(), "another window has this plan open") {
		t.Errorf("opening a plan a second time asks %q", other.question())
	}
	other.answer("Open it anyway")
	if other.doc.Path() != path {
		t.Error("the plan is not opened all the same")
	}
}

func TestAPlanWithoutATitleTakesThatOfItsFile(t *testing.T) {
	u := newPlayer(t)
	u.savedTo(inFolder(t, "den.studbay"))
	if got := u.doc.Title(); got != "den" || u.doc.IsDirty() {
		t.Errorf("saved as den.studbay: titled %q, unsaved %v", got, u.doc.IsDirty())
	}
	u.savedTo(inFolder(t, "other.studbay"))
	if got := u.doc.Title(); got != "den" {
		t.Errorf("saved under another name: titled %q", got)
	}
}

// While a slow disk writes, work goes on; what is asked for meanwhile comes after it.
func TestWorkGoesOnWhileAPlanIsSaved(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	path := inFolder(t, "den.studbay")
	u.saveOver(path, nil)
	u.draw("Hall")
	first := u.saving
	u.until("the first saving", func() bool { return u.saving != first })
	if !u.doc.IsDirty() {
		t.Error("what was drawn while the plan was written is said to be saved")
	}
	u.Save()
	u.New() // waits, and then has nothing to ask
	if u.IsAsked() {
		t.Error("it asks before the saving has ended")
	}
	u.awaitSaving()
	u.notAsked()
	p, _, err := file.Load(path)
	if err != nil || p.Levels[0].Rooms.Len() != 2 {
		t.Errorf("the file has not both rooms: %v", err)
	}
	if u.doc.Path() != "" {
		t.Error("the new plan was not begun")
	}
}

// What is drawn while the plan is saved on the way to another is asked for, not dropped.
func TestWhatIsDrawnDuringASaveIsNotDropped(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	u.savedTo(inFolder(t, "den.studbay"))
	u.draw("Hall")
	u.New()
	u.answer("Save")
	u.draw("Bath")
	u.awaitSaving()
	u.answer("Cancel")
	if n := u.doc.Plan().Levels[0].Rooms.Len(); n != 3 || !u.doc.IsDirty() {
		t.Errorf("%d rooms are left, unsaved %v", n, u.doc.IsDirty())
	}
}

// A plan takes the title of its file also where it is changed or dragged while that is
// written.
func TestATitleIsTakenWhateverGoesOn(t *testing.T) {
	for name, during := range map[string]func(u *player){
		"a room is drawn": func(u *player) { u.draw("Hall") },
		"a drag begins":   func(u *player) { u.doc.Begin(words.New("plain", "{0}", "a drag")) },
	} {
		t.Run(name, func(t *testing.T) {
			u := newPlayer(t)
			u.draw("Den")
			u.saveOver(inFolder(t, "den.studbay"), nil)
			during(u)
			u.awaitSaving()
			u.EndDrag()
			if u.doc.Title() != "den" {
				t.Errorf("it is titled %q", u.doc.Title())
			}
		})
	}
}

// What is asked for during a saving is done after it, all of it and in order.
func TestSavesWaitInLine(t *testing.T) {
	u := newPlayer(t)
	u.draw("Den")
	first, second := inFolder(t, "den.studbay"), inFolder(t, "copy.studbay")
	u.saveOver(first, nil)
	u.Save()
	u.notAsked() // it has a name by then
	u.draw("Hall")
	u.saveOver(second, nil)
	u.Save()
	u.awaitSaving()
	u.notAsked()
	for _, path := range []string{first, second} {
		if p, _, err := file.Load(path); err != nil || p.Levels[0].Rooms.Len() != 2 {
			t.Errorf("%s: %v", filepath.Base(path), err)
		}
	}
	if u.doc.Path() != second || u.doc.IsDirty() {
		t.Errorf("the plan stands in %s, unsaved %v", u.doc.Path(), u.doc.IsDirty())
	}
}

func TestATitleMakesTheNameOfAFile(t *testing.T) {
	for title, want := range map[string]string{"Lake cottage": "Lake cottage", " A/B: east? ": "A-B- east-", "": "plan"} {
		if got := FileName(title); got != want {
			t.Errorf("FileName(%q) = %q, want %q", title, got, want)
		}
	}
	if got := WithExtension("den", Extension) + " " + WithExtension("den.txt", Extension); got != "den.studbay den.txt" {
		t.Errorf("with an ending: %q", got)
	}
}

func TestHowLongAgoIsSaidInTheUnitThatTells(t *testing.T) {
	for ago, want := range map[time.Duration]string{
		20 * time.Second: "less than a minute ago", time.Minute: "a minute ago", 59 * time.Minute: "59 minutes ago",
		time.Hour: "an hour ago", 47 * time.Hour: "47 hours ago", 48 * time.Hour: "2 days ago",
	} {
		if got := agoText(ago).String(); !strings.EqualFold(got, want) {
			t.Errorf("%v: %q, want %q", ago, got, want)
		}
	}
}
