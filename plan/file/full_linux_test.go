package file

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"
)

// A disk of 64 KB that is full in truth; it takes the right to mount.
func TestFullDisk(t *testing.T) {
	folder := t.TempDir()
	if err := syscall.Mount("none", folder, "tmpfs", 0, "size=64k"); err != nil {
		t.Skip("cannot mount a small disk: ", err)
	}
	defer func() {
		if err := syscall.Unmount(folder, 0); err != nil {
			t.Error(err)
		}
	}()
	path := filepath.Join(folder, "shed.studbay")
	stamp := saving(t, path, Stamp{})
	before := content(t, path)
	_, err := Save(path, twoPlans()[1], stamp)
	var e *Error
	if !errors.As(err, &e) || e.Text().ID != "file.full" {
		t.Errorf("says %v", err)
	}
	if content(t, path) != before || len(listed(t, folder)) != 1 {
		t.Errorf("the old file is another, or there is more: %v", listed(t, folder))
	}
}

func TestReadOnly(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	stamp := saving(t, path, Stamp{})
	before := content(t, path)
	asNobody(t, folder, path)
	for _, tt := range []struct {
		name         string
		folder, file os.FileMode
	}{{"folder", 0o555, 0o666}, {"file", 0o777, 0o444}} {
		chmod(t, folder, tt.folder)
		chmod(t, path, tt.file)
		_, err := Save(path, twoPlans()[1], stamp)
		var e *Error
		if !errors.As(err, &e) || e.Text().ID != "file.no-write" {
			t.Errorf("%s: says %v", tt.name, err)
		}
		if content(t, path) != before || len(listed(t, folder)) != 1 {
			t.Errorf("%s: the old file is another, or there is more: %v", tt.name, listed(t, folder))
		}
	}
}

func chmod(t *testing.T, path string, mode os.FileMode) {
	t.Helper()
	if err := os.Chmod(path, mode); err != nil {
		t.Fatal(err)
	}
}

// asNobody makes root feel the modes of files for the rest of the test: on this thread
// the file system takes it for another user, who owns these files.
func asNobody(t *testing.T, theirs ...string) {
	if os.Getuid() != 0 {
		return
	}
	const nobody = 65534
	if err := os.Chmod(filepath.Dir(theirs[0]), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, path := range theirs {
		if err := os.Chown(path, nobody, -1); err != nil {
			t.Skip("cannot give a file away: ", err)
		}
	}
	runtime.LockOSThread()
	if err := syscall.Setfsuid(nobody); err != nil {
		t.Skip("cannot be another user: ", err)
	}
	t.Cleanup(func() {
		_ = syscall.Setfsuid(0)
		runtime.UnlockOSThread()
	})
}
