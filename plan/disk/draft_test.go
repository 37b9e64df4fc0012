//go:build unix

package disk

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
)

func put(t *testing.T, path, text string) error {
	t.Helper()
	return Put(Real{}, path, 0o666, func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	})
}

func mustPut(t *testing.T, path, text string) {
	t.Helper()
	if err := put(t, path, text); err != nil {
		t.Fatal(err)
	}
}

func old(t *testing.T, path string, mode fs.FileMode) {
	t.Helper()
	if err := errors.Join(os.WriteFile(path, []byte("old"), 0o600), os.Chmod(path, mode)); err != nil {
		t.Fatal(err)
	}
}

// holds fails unless the folder has these files and no other.
func holds(t *testing.T, folder string, want ...string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range entries {
		got = append(got, e.Name())
	}
	if !slices.Equal(got, want) {
		t.Errorf("the folder holds %q, want %q", got, want)
	}
}

func says(t *testing.T, path, want string) {
	t.Helper()
	if got, err := os.ReadFile(path); err != nil || string(got) != want {
		t.Errorf("%s holds %q (%v), want %q", filepath.Base(path), got, err, want)
	}
}

// The umask is what a user sets so that new files are as open as they like: umask(2).
func TestNewFileHasTheModeThatTheUmaskLeaves(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	before := syscall.Umask(0o027)
	err := put(t, path, "new")
	syscall.Umask(before)
	info, statErr := os.Stat(path)
	if err != nil || statErr != nil || info.Mode() != 0o640 {
		t.Errorf("mode %v (%v, %v), want 0640 under a umask of 027", info.Mode(), err, statErr)
	}
}

func TestReplacedFileKeepsItsMode(t *testing.T) {
	for _, mode := range []fs.FileMode{0o600, 0o640, 0o664, 0o777, 0o200} {
		path := filepath.Join(t.TempDir(), "out.csv")
		old(t, path, mode)
		mustPut(t, path, "new")
		if info, err := os.Stat(path); err != nil || info.Mode() != mode {
			t.Errorf("mode %v (%v), want %v", info.Mode(), err, mode)
		}
	}
}

func TestReplacedFileKeepsItsOwner(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	old(t, path, 0o664)
	const someone, group = 65534, 65533
	if err := os.Chown(path, someone, group); err != nil {
		t.Skip("cannot give a file away: ", err)
	}
	mustPut(t, path, "new")
	info, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	if uid, gid, _ := owner(info); uid != someone || gid != group || info.Mode() != 0o664 {
		t.Errorf("belongs to %d and %d with mode %v, want %d, %d and 0664", uid, gid, info.Mode(), someone, group)
	}
	says(t, path, "new")
}

// notOurs is a system that gives no file away, as to a user other than root.
type notOurs struct{ Real }

func (notOurs) Create(path string, mode fs.FileMode) (Handle, error) {
	h, err := Real{}.Create(path, mode)
	return keeping{h}, err
}

type keeping struct{ Handle }

func (keeping) Chown(int, int) error { return syscall.EPERM }

func TestFileOfAnotherUserIsNotMadeOurs(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	old(t, path, 0o666)
	if err := os.Chown(path, 65534, -1); err != nil {
		t.Skip("cannot give a file away: ", err)
	}
	err := Put(notOurs{}, path, 0o666, func(io.Writer) error { return nil })
	if !errors.Is(err, ErrOwner) {
		t.Errorf("%v, want ErrOwner", err)
	}
	says(t, path, "old")
	holds(t, filepath.Dir(path), "out.csv")
}

func TestReadOnlyFileIsNotReplaced(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	old(t, path, 0o444)
	if err := put(t, path, "new"); !errors.Is(err, fs.ErrPermission) {
		t.Errorf("%v, want that it may not be written", err)
	}
	says(t, path, "old")
	holds(t, filepath.Dir(path), "out.csv")
}

func TestLinkIsFollowedAndStays(t *testing.T) {
	folder := t.TempDir()
	if err := os.Mkdir(filepath.Join(folder, "real"), 0o755); err != nil {
		t.Fatal(err)
	}
	target, link := filepath.Join(folder, "real", "out.csv"), filepath.Join(folder, "link.csv")
	if err := os.Symlink(filepath.Join("real", "out.csv"), link); err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"made through a link that led to nothing", "replaced"} {
		mustPut(t, link, text)
		says(t, target, text)
		if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
			t.Errorf("the link is replaced by a file (%v)", err)
		}
	}
	if err := os.Symlink("circle", filepath.Join(folder, "circle")); err != nil {
		t.Fatal(err)
	}
	if err := put(t, filepath.Join(folder, "circle"), "new"); !errors.Is(err, ErrLinks) {
		t.Errorf("a circle of links: %v", err)
	}
}

func TestWhatIsNoFileIsNotReplaced(t *testing.T) {
	folder := t.TempDir()
	pipe := filepath.Join(folder, "pipe")
	if err := syscall.Mkfifo(pipe, 0o666); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(folder, "to-pipe")
	if err := os.Symlink("pipe", link); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{pipe, link, folder, os.DevNull} {
		var kind *KindError
		if err := put(t, path, "new"); !errors.As(err, &kind) {
			t.Errorf("%s: %v, want a *KindError", path, err)
		}
	}
	if info, err := os.Lstat(pipe); err != nil || info.Mode()&fs.ModeNamedPipe == 0 {
		t.Errorf("the pipe is one no more (%v)", err)
	}
	holds(t, folder, "pipe", "to-pipe")
}

func TestNoName(t *testing.T) {
	if err := put(t, "", "new"); !errors.Is(err, ErrNoName) {
		t.Errorf("%v, want ErrNoName", err)
	}
}

// NAME_MAX of Linux is 255 bytes (limits.h); letters of two bytes must not be cut.
func TestLongNames(t *testing.T) {
	for _, name := range []string{
		strings.Repeat("a", 248) + ".csv", strings.Repeat("a", 251) + ".csv",
		strings.Repeat("é", 124) + ".csv", "x" + strings.Repeat("é", 124) + ".csv",
	} {
		folder := t.TempDir()
		path := filepath.Join(folder, name)
		mustPut(t, path, "new")
		mustPut(t, path, "again")
		says(t, path, "again")
		holds(t, folder, name)
	}
}

func TestStoppedWriteLeavesTheOldFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "out.csv")
	old(t, path, 0o644)
	stopped := errors.New("stopped")
	err := Put(Real{}, path, 0o666, func(w io.Writer) error {
		_, _ = io.WriteString(w, strings.Repeat("new", 1<<16))
		return stopped
	})
	if err != stopped {
		t.Errorf("%v, want what the writer said", err)
	}
	says(t, path, "old")
	holds(t, filepath.Dir(path), "out.csv")
}

// recording is a system that tells the order of what it is asked.
type recording struct {
	Real
	calls *[]string
	sync  error
}

func (n recording) note(call string) { *n.calls = append(*n.calls, call) }

func (n recording) Create(path string, mode fs.FileMode) (Handle, error) {
	n.note("create")
	h, err := n.Real.Create(path, mode)
	return notingHandle{h, n}, err
}

func (n recording) Rename(from, to string) error {
	n.note("rename")
	return n.Real.Rename(from, to)
}

func (n recording) SyncFolder(path string) error {
	n.note("sync " + filepath.Base(path))
	return errors.Join(n.sync, n.Real.SyncFolder(path))
}

type notingHandle struct {
	Handle
	on recording
}

func (h notingHandle) Sync() error {
	h.on.note("sync file")
	return h.Handle.Sync()
}

// A file is durable once it is synced before the rename, and its folder after: fsync(2).
func TestFileIsSyncedBeforeItIsNamedAndTheFolderAfter(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "sheets")
	if err := os.Mkdir(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	var calls []string
	path := filepath.Join(folder, "out.csv")
	if err := Put(recording{calls: &calls}, path, 0o666, func(io.Writer) error { return nil }); err != nil {
		t.Fatal(err)
	}
	if want := []string{"create", "sync file", "rename", "sync sheets"}; !slices.Equal(calls, want) {
		t.Errorf("asks %q, want %q", calls, want)
	}
	err := Put(recording{calls: &calls, sync: syscall.EIO}, path, 0o666, func(w io.Writer) error {
		_, err := io.WriteString(w, "new")
		return err
	})
	if !errors.Is(err, ErrUnsynced) || !errors.Is(err, syscall.EIO) {
		t.Errorf("%v, want ErrUnsynced and its cause", err)
	}
	says(t, path, "new")
}
