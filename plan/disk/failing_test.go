//go:build unix

package disk

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"testing/fstest"
	"time"
)

// failingAt is a system that gives an error at one call and notes all that it was asked.
type failingAt struct {
	Real
	call  string
	asked *[]string
}

var errFailing = errors.New("it does not work")

func (s failingAt) at(call string) error {
	*s.asked = append(*s.asked, call)
	if s.call == call {
		return errFailing
	}
	return nil
}

func (s failingAt) Create(path string, mode fs.FileMode) (Handle, error) {
	if err := s.at("create"); err != nil {
		return nil, err
	}
	h, err := s.Real.Create(path, mode)
	return failingHandle{h, s}, err
}

func (s failingAt) Rename(from, to string) error {
	if err := s.at("rename"); err != nil {
		return err
	}
	return s.Real.Rename(from, to)
}

func (s failingAt) SyncFolder(path string) error {
	return errors.Join(s.at("sync folder"), s.Real.SyncFolder(path))
}

type failingHandle struct {
	Handle
	s failingAt
}

func (h failingHandle) Write(data []byte) (int, error) {
	if err := h.s.at("write"); err != nil {
		return 0, err
	}
	return h.Handle.Write(data)
}
func (h failingHandle) Chmod(mode fs.FileMode) error {
	return errors.Join(h.s.at("chmod"), h.Handle.Chmod(mode))
}
func (h failingHandle) Chown(uid, gid int) error {
	return errors.Join(h.s.at("chown"), h.Handle.Chown(uid, gid))
}
func (h failingHandle) Sync() error  { return errors.Join(h.s.at("sync"), h.Handle.Sync()) }
func (h failingHandle) Close() error { return errors.Join(h.s.at("close"), h.Handle.Close()) }
func (h failingHandle) Stat() (fs.FileInfo, error) {
	info, err := h.Handle.Stat()
	return info, errors.Join(h.s.at("stat"), err)
}

// TestWhereverItFailsTheOldFileStays: each call to the system in turn fails. Before the rename
// the old file is there, whole, and nothing beside it; after it the new one.
func TestWhereverItFailsTheOldFileStays(t *testing.T) {
	for _, isThere := range []bool{true, false} {
		for _, call := range []string{"", "create", "write", "chmod", "sync", "stat", "close", "rename", "sync folder"} {
			folder := t.TempDir()
			path := filepath.Join(folder, "out.csv")
			if isThere {
				old(t, path, 0o640)
			}
			var asked []string
			err := Put(failingAt{call: call, asked: &asked}, path, 0o666, func(w io.Writer) error {
				_, err := io.WriteString(w, "new")
				return err
			})
			fails := call != "" && (isThere || call != "chmod") // there is no mode to keep
			if errors.Is(err, errFailing) != fails || errors.Is(err, ErrUnsynced) != (call == "sync folder") || (err != nil) != fails {
				t.Errorf("%s fails, there is one %v: %v", call, isThere, err)
			}
			switch isNew := !fails || call == "sync folder"; {
			case isNew:
				holds(t, folder, "out.csv")
				says(t, path, "new")
			case isThere:
				holds(t, folder, "out.csv")
				says(t, path, "old")
			default:
				holds(t, folder)
			}
			if n := strings.Count(fmt.Sprint(asked), "close"); n > 1 {
				t.Errorf("%s fails: it is closed %d times", call, n)
			}
		}
	}
}

// TestWhatIsKnownOfAPublishedFile is its size and the name it has now.
func TestWhatIsKnownOfAPublishedFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	d, err := New(path, 0o666)
	if err != nil {
		t.Fatal(err)
	}
	if n, err := d.Write([]byte("twelve bytes")); n != 12 || err != nil {
		t.Error(n, err)
	}
	if err := d.Finish(); err != nil {
		t.Fatal(err)
	}
	info, err := d.Publish()
	if err != nil || info == nil || info.Size() != 12 {
		t.Errorf("%v, %v", info, err)
	}
	d.Discard()
	says(t, path, "twelve bytes")
}

// TestDraftsLeftBehindAreSwept: those of the same file, more than an hour old.
func TestDraftsLeftBehindAreSwept(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "out.csv")
	now := time.Now()
	for name, age := range map[string]time.Duration{
		".out.csv.saving-OLD": time.Hour + time.Minute, ".out.csv.saving-YOUNG": 59 * time.Minute, ".out.csv.saving-NEW": 0,
		".other.csv.saving-OLD": 2 * time.Hour, "out.csv.bak": 2 * time.Hour,
	} {
		at := filepath.Join(folder, name)
		old(t, at, 0o600)
		if err := os.Chtimes(at, now.Add(-age), now.Add(-age)); err != nil {
			t.Fatal(err)
		}
	}
	mustPut(t, path, "new")
	holds(t, folder, ".other.csv.saving-OLD", ".out.csv.saving-NEW", ".out.csv.saving-YOUNG", "out.csv", "out.csv.bak")
}

// TestNamesOfDraftsAreShort: a hundred bytes of a name at most, whole letters all the same.
func TestNamesOfDraftsAreShort(t *testing.T) {
	for name, want := range map[string]string{
		"out.csv":                              ".out.csv.saving-",
		strings.Repeat("a", 100):               "." + strings.Repeat("a", 100) + ".saving-",
		strings.Repeat("a", 101):               "." + strings.Repeat("a", 100) + ".saving-",
		strings.Repeat("a", 99) + "½":          "." + strings.Repeat("a", 99) + ".saving-",
		strings.Repeat("a", 98) + "½":          "." + strings.Repeat("a", 98) + "½.saving-",
		strings.Repeat("a", 98) + "½" + "more": "." + strings.Repeat("a", 98) + "½.saving-",
	} {
		if got := prefix("/plans/" + name); got != "/plans/"+want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
}

// TestAsManyLinksAsTheSystemFollows: forty, path_resolution(7).
func TestAsManyLinksAsTheSystemFollows(t *testing.T) {
	folder := t.TempDir()
	at := func(n int) string { return filepath.Join(folder, fmt.Sprintf("link%d", n)) }
	for n := range 45 {
		if err := os.Symlink(fmt.Sprintf("link%d", n+1), at(n)); err != nil {
			t.Fatal(err)
		}
	}
	for first, ok := range map[int]bool{44: true, 6: true, 5: false, 0: false} { // 45 - first links lead to no file
		got, err := Followed(at(first))
		if ok != (err == nil) || ok && got != at(45) || !ok && !errors.Is(err, ErrLinks) {
			t.Errorf("%d links: %s, %v", 45-first, got, err)
		}
	}
	mustPut(t, at(44), "new")
	says(t, at(45), "new")
}

// TestWhatTheSystemSaid: full disks, quotas, limits and read-only file systems, errno(3).
func TestWhatTheSystemSaid(t *testing.T) {
	for err, want := range map[syscall.Errno][2]bool{
		syscall.ENOSPC: {true, false}, syscall.EDQUOT: {true, false}, syscall.EFBIG: {true, false},
		syscall.EROFS: {false, true}, syscall.EIO: {false, false}, syscall.EACCES: {false, false},
	} {
		at := &fs.PathError{Op: "write", Path: "x", Err: err}
		if IsFull(at) != want[0] || IsReadOnly(at) != want[1] {
			t.Errorf("%v: full %v, read-only %v", err, IsFull(at), IsReadOnly(at))
		}
	}
	if got := (&KindError{"x", fs.ModeDir}).Error() + (&KindError{"x", fs.ModeNamedPipe}).Error(); got != "x: is a folderx: is a device or pipe" {
		t.Error(got)
	}
	if err := (Real{}).SyncFolder(filepath.Join(t.TempDir(), "none")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a folder that is not there: %v", err)
	}
	if err := (Real{}).SyncFolder(t.TempDir()); err != nil {
		t.Errorf("a folder: %v", err)
	}
	if err := (Real{}).SyncFolder(os.DevNull); err != nil {
		t.Errorf("what cannot be synced promises nothing: %v", err)
	}
}

// What no system keeps has no owner: a file that is only in memory.
func TestAFileInMemoryHasNoOwner(t *testing.T) {
	info, err := fs.Stat(fstest.MapFS{"plan": {}}, "plan")
	if err != nil {
		t.Fatal(err)
	}
	if uid, gid, ok := owner(info); ok {
		t.Errorf("it belongs to %d, %d", uid, gid)
	}
}
