//go:build !windows

package file

import (
	"errors"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"studbay/plan/disk"
)

// failing is a disk that gives an error at one stage.
type failing struct {
	disk.Real
	stage string
	err   error
}

func (d failing) at(stage string) error {
	if d.stage == stage {
		return d.err
	}
	return nil
}

func (d failing) Create(path string, mode fs.FileMode) (disk.Handle, error) {
	if err := d.at("create"); err != nil {
		return nil, err
	}
	h, err := d.Real.Create(path, mode)
	return failingHandle{h, d}, err
}

func (d failing) Rename(from, to string) error {
	if err := d.at("rename"); err != nil {
		return err
	}
	return d.Real.Rename(from, to)
}

func (d failing) SyncFolder(path string) error {
	if err := d.at("sync folder"); err != nil {
		return err
	}
	return d.Real.SyncFolder(path)
}

type failingHandle struct {
	disk.Handle
	on failing
}

func (h failingHandle) Write(data []byte) (int, error) {
	if err := h.on.at("write"); err != nil {
		n, _ := h.Handle.Write(data[:len(data)/2])
		return n, err
	}
	return h.Handle.Write(data)
}

func (h failingHandle) Chmod(mode fs.FileMode) error {
	return errors.Join(h.on.at("chmod"), h.Handle.Chmod(mode))
}

func (h failingHandle) Sync() error { return errors.Join(h.on.at("sync"), h.Handle.Sync()) }

func (h failingHandle) Stat() (fs.FileInfo, error) {
	info, err := h.Handle.Stat()
	return info, errors.Join(h.on.at("stat"), err)
}

func (h failingHandle) Close() error { return errors.Join(h.Handle.Close(), h.on.at("close")) }

func TestFailureAtEachStageLosesNothing(t *testing.T) {
	for _, stage := range []string{"create", "write", "chmod", "sync", "stat", "close", "rename"} {
		for err, id := range map[error]string{
			syscall.ENOSPC: "file.full", syscall.EDQUOT: "file.full", syscall.EROFS: "file.no-write",
			syscall.EACCES: "file.no-write", syscall.EIO: "file.write",
		} {
			folder := t.TempDir()
			path := filepath.Join(folder, "shed.studbay")
			stamp := saving(t, path, Stamp{})
			before := content(t, path)
			_, failed := save(failing{stage: stage, err: err}, path, twoPlans()[1], stamp)
			var e *Error
			if !errors.As(failed, &e) || e.Text().ID != id || !errors.Is(failed, err) {
				t.Errorf("%s, %v: says %v", stage, err, failed)
			}
			if content(t, path) != before {
				t.Errorf("%s, %v: the old file is another", stage, err)
			}
			if names := listed(t, folder); len(names) != 1 {
				t.Errorf("%s, %v: leaves %v", stage, err, names)
			}
		}
	}
}

func TestUnsyncedIsSavedAndSaid(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	stamp, err := save(failing{stage: "sync folder", err: syscall.EIO}, path, sample(), Stamp{})
	if !errors.Is(err, ErrUnsynced) || !errors.Is(err, syscall.EIO) {
		t.Error(err)
	}
	saving(t, path, stamp)
}

// The file changed after Save first looked: it must look again before it renames.
func TestChangedWhileSaving(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	stamp := saving(t, path, Stamp{})
	_, err := save(meddling{path: path}, path, sample(), stamp)
	if !errors.Is(err, ErrChanged) || content(t, path) != "theirs" {
		t.Error(err)
	}
}

// TestNothingIsWrittenWhereTheFileIsAnother: it is looked at before anything is made beside
// it.
func TestNothingIsWrittenWhereTheFileIsAnother(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	write(t, path, "theirs")
	if _, err := save(failing{stage: "create", err: syscall.EIO}, path, sample(), Stamp{}); !errors.Is(err, ErrExists) || errors.Is(err, syscall.EIO) {
		t.Errorf("says %v", err)
	}
}

// meddling is a disk on which another program writes while we do.
type meddling struct {
	disk.Real
	path string
}

func (d meddling) Create(path string, mode fs.FileMode) (disk.Handle, error) {
	if err := os.WriteFile(d.path, []byte("theirs"), 0o644); err != nil {
		return nil, err
	}
	return d.Real.Create(path, mode)
}

// saveUnderLimit runs in a process of its own, whose files may have 4096 bytes.
func saveUnderLimit(path string) error {
	signal.Ignore(syscall.SIGXFSZ)
	stamp, err := StampOf(path)
	if err == nil {
		err = syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 4096, Max: 4096})
	}
	if err == nil {
		_, err = Save(path, twoPlans()[1], stamp)
	}
	return err
}

func TestFileSizeLimitOfTheSystem(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "shed.studbay")
	saving(t, path, Stamp{})
	before := content(t, path)
	if _, line := started(t, "limit", path); !strings.Contains(line, path+": there is no space left") {
		t.Errorf("says %q", line)
	}
	if content(t, path) != before || len(listed(t, folder)) != 1 {
		t.Errorf("the old file is another, or there is more: %v", listed(t, folder))
	}
}
