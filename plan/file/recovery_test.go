package file

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"studbay/plan"
)

func opened(t *testing.T, folder string) *Recovery {
	t.Helper()
	r, err := OpenRecovery(folder)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(r.Close)
	return r
}

func keep(t *testing.T, r *Recovery, doc string, p plan.Plan, at time.Time) Unsaved {
	t.Helper()
	u := Unsaved{Doc: doc, Path: doc, Stamp: stampFor([]byte("old"), at), Time: at, Plan: p}
	if err := r.Keep(u); err != nil {
		t.Fatal(err)
	}
	return u
}

func offered(t *testing.T, r *Recovery) []Unsaved {
	t.Helper()
	found, problems := r.List()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return found
}

var noon = time.Date(2026, 2, 14, 12, 0, 0, 0, time.UTC)

func TestRecoveryGivesBackAllThatWasKept(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "state", "studbay")
	r := opened(t, folder)
	keep(t, r, "/plans/shed.studbay", twoPlans()[1], noon)
	want := keep(t, r, "/plans/shed.studbay", sample(), noon.Add(time.Minute))
	keep(t, r, "saved since", sample(), noon)
	if err := r.Drop("saved since"); err != nil {
		t.Fatal(err)
	}
	r.Close() // as after a kill: what is not dropped stays
	r = opened(t, folder)
	found := offered(t, r)
	if len(found) != 1 {
		t.Fatalf("found %d", len(found))
	}
	got := found[0]
	if !same(t, got.Plan, want.Plan) || got.Path != want.Path || got.Doc != want.Doc || !got.Time.Equal(want.Time) || !equalStamps(got.Stamp, want.Stamp) {
		t.Errorf("got %v, want %v", got, want)
	}
	if again := offered(t, r); len(again) != 1 {
		t.Errorf("listed once more there are %d", len(again))
	}
	if err := r.Drop(got.Doc); err != nil || len(offered(t, r)) != 0 {
		t.Error("still there after it was dropped", err)
	}
	r.Close()
	if left := listed(t, folder); len(left) != 0 {
		t.Errorf("left %v", left)
	}
}

func TestRecoveryOffersTheLatestOfTwoRuns(t *testing.T) {
	folder := t.TempDir()
	first, second := opened(t, folder), opened(t, folder)
	keep(t, first, "shed", twoPlans()[1], noon.Add(time.Hour))
	keep(t, second, "shed", sample(), noon)
	first.Close()
	second.Close()
	r := opened(t, folder)
	if found := offered(t, r); len(found) != 1 || !found[0].Time.Equal(noon.Add(time.Hour)) {
		t.Errorf("found %v", found)
	}
}

func TestRecoveryOffersAPlanToOneRunOnly(t *testing.T) {
	folder := t.TempDir()
	dead := opened(t, folder)
	keep(t, dead, "shed", sample(), noon)
	dead.Close()
	first, second := opened(t, folder), opened(t, folder)
	if n, m := len(offered(t, first)), len(offered(t, second)); n != 1 || m != 0 {
		t.Errorf("offered %d and %d", n, m)
	}
	first.Close()
	if n := len(offered(t, second)); n != 1 {
		t.Errorf("when the first is gone, offered %d", n)
	}
}

func TestDamagedJournalsAreSetAside(t *testing.T) {
	for name, damage := range map[string]func(string) string{
		"empty":         func(string) string { return "" },
		"cut":           func(s string) string { return s[:len(s)/2] },
		"a byte off":    func(s string) string { return strings.Replace(s, "Boat", "Goat", 1) },
		"head cut":      func(s string) string { return s[:20] },
		"no journal":    func(string) string { return "\x00\x01\x02" },
		"newer journal": func(s string) string { return strings.Replace(s, `"journal":1`, `"journal":9`, 1) },
	} {
		folder := t.TempDir()
		r := opened(t, folder)
		keep(t, r, "shed", sample(), noon)
		keep(t, r, "barn", sample(), noon)
		path := filepath.Join(r.own.path, journalName("shed"))
		damaged := damage(content(t, path))
		write(t, path, damaged)
		r.Close()
		r = opened(t, folder)
		found, problems := r.List()
		if len(found) != 1 || found[0].Doc != "barn" || len(problems) != 1 {
			t.Errorf("%s: found %d, problems %v", name, len(found), problems)
			continue
		}
		var e *Error
		if !errors.As(problems[0], &e) || e.Text().ID != "file.journal" || content(t, e.File) != damaged {
			t.Errorf("%s: says %v", name, problems[0])
		}
		if found := offered(t, r); len(found) != 1 {
			t.Errorf("%s: then found %d", name, len(found))
		}
		r.Close()
	}
}

func TestKeepFailsInWords(t *testing.T) {
	r := opened(t, t.TempDir())
	if err := os.Remove(r.own.path); err != nil {
		t.Fatal(err)
	}
	err := r.Keep(Unsaved{Doc: "shed", Plan: sample()})
	var e *Error
	if !errors.As(err, &e) || e.Text().ID != "file.no-folder" {
		t.Error(err)
	}
	r.Close()
}

func TestAutosaveKeepsTheLatest(t *testing.T) {
	folder := t.TempDir()
	r := opened(t, folder)
	a := NewAutosave(r, time.Hour, func(err error) { t.Error(err) })
	a.Offer(Unsaved{Doc: "shed", Time: noon, Plan: twoPlans()[1]})
	a.Offer(Unsaved{Doc: "shed", Time: noon, Plan: sample()})
	a.Offer(Unsaved{Doc: "barn", Time: noon, Plan: sample()})
	if n := len(listed(t, r.own.path)); n != 0 {
		t.Errorf("kept %d before their time", n)
	}
	a.Forget("barn")
	a.Flush()
	r.Close()
	if found := offered(t, opened(t, folder)); len(found) != 1 || !same(t, found[0].Plan, sample()) {
		t.Errorf("found %d", len(found))
	}
}

func TestAutosaveByItself(t *testing.T) {
	r := opened(t, t.TempDir())
	if err := os.Remove(r.own.path); err != nil { // so that it fails, and we hear of it
		t.Fatal(err)
	}
	failed := make(chan error)
	a := NewAutosave(r, time.Millisecond, func(err error) { failed <- err })
	a.Offer(Unsaved{Doc: "shed", Plan: sample()})
	select {
	case err := <-failed:
		if !errors.Is(err, os.ErrNotExist) {
			t.Error(err)
		}
	case <-time.After(10 * time.Second):
		t.Error("nothing was kept after its time")
	}
}

func TestAutosaveFromManyGoroutines(t *testing.T) {
	folder := t.TempDir()
	r := opened(t, folder)
	a := NewAutosave(r, time.Millisecond, func(err error) { t.Error(err) })
	var wait sync.WaitGroup
	for _, doc := range []string{"shed", "barn", "gone"} {
		wait.Go(func() {
			for range 20 {
				a.Offer(Unsaved{Doc: doc, Plan: sample()})
				a.Flush()
			}
		})
	}
	wait.Wait()
	a.Forget("gone")
	a.Flush()
	r.Close()
	if found := offered(t, opened(t, folder)); len(found) != 2 {
		t.Errorf("found %d", len(found))
	}
}

// What is offered of a document after it was forgotten is kept, whichever is done first on
// the disk.
func TestWhatComesAfterForgettingIsKept(t *testing.T) {
	for range 20 {
		folder := t.TempDir()
		r := opened(t, folder)
		a := NewAutosave(r, time.Millisecond, func(err error) { t.Error(err) })
		a.Offer(Unsaved{Doc: "shed", Time: noon, Plan: twoPlans()[1]})
		a.Forget("shed")
		a.Offer(Unsaved{Doc: "shed", Time: noon, Plan: sample()})
		a.Flush()
		r.Close()
		if found := offered(t, opened(t, folder)); len(found) != 1 || !same(t, found[0].Plan, sample()) {
			t.Fatalf("found %d", len(found))
		}
	}
}
