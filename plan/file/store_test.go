package file

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"testing"
	"time"
)

// write puts text in a file of its own.
func write(t *testing.T, path, text string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func content(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func saving(t *testing.T, path string, expect Stamp) Stamp {
	t.Helper()
	stamp, err := Save(path, sample(), expect)
	if err != nil {
		t.Fatal(err)
	}
	return stamp
}

func TestSaveThenLoad(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	first := saving(t, path, Stamp{})
	p, loaded, err := Load(path)
	if err != nil || !same(t, p, sample()) {
		t.Fatal(err)
	}
	now, err := StampOf(path)
	if err != nil || !equalStamps(first, loaded) || !equalStamps(first, now) {
		t.Errorf("stamps of one file: %v %v %v %v", first, loaded, now, err)
	}
	if changed, err := HasChanged(path, first); changed || err != nil {
		t.Error(changed, err)
	}
	saving(t, path, first)
}

func equalStamps(a, b Stamp) bool {
	return a.Hash == b.Hash && a.Size == b.Size && a.ModTime.Equal(b.ModTime)
}

func TestChangedByOthersIsNotOverwritten(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	stamp := saving(t, path, Stamp{})
	mine := content(t, path)
	// As long as before and as old: only the bytes tell.
	theirs := string(bytes.Replace([]byte(mine), []byte("Boat shed"), []byte("Goat shed"), 1))
	write(t, path, theirs)
	if err := os.Chtimes(path, stamp.ModTime, stamp.ModTime); err != nil {
		t.Fatal(err)
	}
	if _, err := Save(path, sample(), stamp); !errors.Is(err, ErrChanged) {
		t.Errorf("same size and time, other bytes: %v", err)
	}
	if content(t, path) != theirs {
		t.Error("their file is gone")
	}
	if _, err := Save(path, sample(), Stamp{}); !errors.Is(err, ErrExists) {
		t.Errorf("as a new file: %v", err)
	}
	now, err := StampOf(path)
	if err != nil {
		t.Fatal(err)
	}
	saving(t, path, now) // they were asked
	if content(t, path) != mine {
		t.Error("not replaced though asked for")
	}
}

func TestHasChanged(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	has := func(s Stamp) bool {
		t.Helper()
		changed, err := HasChanged(path, s)
		if err != nil {
			t.Fatal(err)
		}
		return changed
	}
	if has(Stamp{}) {
		t.Error("no file then, no file now")
	}
	stamp := saving(t, path, Stamp{})
	if !has(Stamp{}) {
		t.Error("a file has come")
	}
	later := time.Now().Add(time.Minute)
	if err := os.Chtimes(path, later, later); err != nil {
		t.Fatal(err)
	}
	if has(stamp) {
		t.Error("only its time is another")
	}
	old := content(t, path)
	write(t, path, string(bytes.Replace([]byte(old), []byte("Boat"), []byte("Goat"), 1)))
	if err := os.Chtimes(path, later, later); err != nil {
		t.Fatal(err)
	}
	if !has(stamp) {
		t.Error("a letter is another")
	}
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	if !has(stamp) {
		t.Error("it was deleted")
	}
	saving(t, path, stamp) // nothing is lost by making it again
}

func TestSaveKeepsModeAndFollowsLinks(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	stamp := saving(t, path, Stamp{})
	if err := os.Chmod(path, 0o640); err != nil {
		t.Fatal(err)
	}
	first, second := filepath.Join(folder, "first"), filepath.Join(folder, "second")
	for link, to := range map[string]string{first: second, second: "shed.studbay"} {
		if err := os.Symlink(to, link); err != nil {
			t.Fatal(err)
		}
	}
	saving(t, first, stamp)
	info, err := os.Lstat(path)
	if err != nil || info.Mode() != 0o640 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
	if info, err := os.Lstat(first); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Error("the link is replaced by a file")
	}
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	saving(t, first, Stamp{}) // both links lead to a file not made yet
	if _, err := os.Lstat(path); err != nil {
		t.Error(err)
	}
	if err := os.Symlink("circle", filepath.Join(folder, "circle")); err != nil {
		t.Fatal(err)
	}
	if _, err := Save(filepath.Join(folder, "circle"), sample(), Stamp{}); err == nil {
		t.Error("saved in a circle of links")
	}
}

func TestSaveWhereNoneCanBe(t *testing.T) {
	folder := t.TempDir()
	for path, id := range map[string]string{
		filepath.Join(folder, "none", "shed.studbay"): "file.no-folder",
		folder:     "file.folder",
		os.DevNull: "file.special",
	} {
		_, err := Save(path, sample(), Stamp{})
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != id || e.File != path {
			t.Errorf("%s: %v", path, err)
		}
	}
	if names := listed(t, folder); len(names) != 0 {
		t.Errorf("left %v", names)
	}
}

func listed(t *testing.T, folder string) (names []string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

func TestSaveSweepsOldLeftovers(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	for name, age := range map[string]time.Duration{
		".shed.studbay.saving-OLD":   2 * time.Hour,
		".shed.studbay.saving-YOUNG": time.Minute,
		".barn.studbay.saving-OTHER": 2 * time.Hour,
	} {
		write(t, filepath.Join(folder, name), "half a plan")
		then := time.Now().Add(-age)
		if err := os.Chtimes(filepath.Join(folder, name), then, then); err != nil {
			t.Fatal(err)
		}
	}
	saving(t, path, Stamp{})
	if got := listed(t, folder); len(got) != 3 || got[0] != ".barn.studbay.saving-OTHER" || got[1] != ".shed.studbay.saving-YOUNG" {
		t.Errorf("left %v", got)
	}
}

// A clock that goes back, or a file dated in the future, neither hides a change nor
// makes one up: the bytes decide.
func TestClockGoingBack(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	stamp := saving(t, path, Stamp{})
	for _, when := range []time.Time{time.Now().Add(-24 * time.Hour), time.Now().Add(24 * time.Hour), time.Unix(0, 0)} {
		if err := os.Chtimes(path, when, when); err != nil {
			t.Fatal(err)
		}
		if changed, err := HasChanged(path, stamp); changed || err != nil {
			t.Errorf("dated %v: changed %v, %v", when, changed, err)
		}
		stamp = saving(t, path, stamp)
	}
	theirs := string(bytes.Replace([]byte(content(t, path)), []byte("Boat shed"), []byte("Goat shed"), 1))
	write(t, path, theirs)
	before := stamp.ModTime.Add(-time.Hour)
	if err := os.Chtimes(path, before, before); err != nil {
		t.Fatal(err)
	}
	if _, err := Save(path, sample(), stamp); !errors.Is(err, ErrChanged) {
		t.Errorf("other bytes, dated before ours: %v", err)
	}
}
