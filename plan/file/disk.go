package file

import (
	"crypto/rand"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// disk is what replacing a file asks of the system: tests let each call fail.
type disk interface {
	create(path string, mode fs.FileMode) (handle, error) // fails where there is one
	rename(from, to string) error
	remove(path string) error
	syncFolder(path string) error
}

// handle is a file being written.
type handle interface {
	io.WriteCloser
	Chmod(fs.FileMode) error
	Sync() error
	Stat() (fs.FileInfo, error)
}

type realDisk struct{}

func (realDisk) create(path string, mode fs.FileMode) (handle, error) {
	return os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
}
func (realDisk) rename(from, to string) error { return os.Rename(from, to) }
func (realDisk) remove(path string) error     { return os.Remove(path) }

// replacement is a file to be put in place of another, or where none is.
type replacement struct {
	path string      // of a file, no symbolic link
	data []byte      // all of it
	mode fs.FileMode // of a new file, before umask
	keep fs.FileMode // of the file replaced; 0 where there is none
	// ready is asked last, when all is written and nothing is replaced yet.
	ready func() error
}

// errUnsynced wraps what the system said where the new file is in place but may not
// outlive a power cut.
type errUnsynced struct{ error }

func (e errUnsynced) Unwrap() error { return e.error }

// put replaces the file at once: whoever looks, and whenever the power goes, there is the
// old file or the new one. On error the old one is as it was (except errUnsynced) and
// nothing else is left.
func (r replacement) put(d disk) (fs.FileInfo, error) {
	sweep(d, r.path)
	temporary := temporaryPrefix(r.path) + rand.Text()
	info, err := r.write(d, temporary)
	if err == nil {
		err = r.ready()
	}
	if err == nil {
		err = d.rename(temporary, r.path)
	}
	if err != nil {
		_ = d.remove(temporary)
		return nil, err
	}
	if err := d.syncFolder(filepath.Dir(r.path)); err != nil {
		return info, errUnsynced{err}
	}
	return info, nil
}

// write makes the temporary file, whole and on the disk.
func (r replacement) write(d disk, path string) (info fs.FileInfo, err error) {
	f, err := d.create(path, r.mode)
	if err != nil {
		return nil, err
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	if _, err := f.Write(r.data); err != nil {
		return nil, err
	}
	if r.keep != 0 {
		if err := f.Chmod(r.keep); err != nil {
			return nil, err
		}
	}
	if err := f.Sync(); err != nil {
		return nil, err
	}
	return f.Stat()
}

// temporaryPrefix is hidden and in the same folder, so that the rename is one step.
func temporaryPrefix(path string) string {
	folder, name := filepath.Split(path)
	return folder + "." + name + ".saving-"
}

// sweep removes what a killed save of the same file left an hour ago or more. A younger
// one may be at work.
func sweep(d disk, path string) {
	prefix := temporaryPrefix(path)
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil {
		return // put will say why
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), filepath.Base(prefix)) {
			continue
		}
		if info, err := e.Info(); err == nil && time.Since(info.ModTime()) > time.Hour {
			_ = d.remove(filepath.Join(filepath.Dir(path), e.Name()))
		}
	}
}
