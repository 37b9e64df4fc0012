// Package disk puts files on the disk whole or not at all. One writer serves plans,
// sheets and tables: whoever looks, and whenever the power goes, there is the old file or
// the new one.
//
// A file that is replaced keeps its mode, its owner and, where the name is a symbolic
// link, the link. A file that may not be written is not replaced, though a rename would
// not ask; nor is what is no file: a folder, a pipe, a device.
package disk

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// What callers branch on.
var (
	// ErrNoName is returned for an empty path.
	ErrNoName = errors.New("no file is named")
	// ErrLinks is returned where symbolic links lead in a circle.
	ErrLinks = errors.New("its symbolic links lead in a circle")
	// ErrOwner is returned where a file is another user's and would become ours.
	ErrOwner = errors.New("the file belongs to another user")
	// ErrUnsynced is returned where the new file is in place but may not outlive a power
	// cut.
	ErrUnsynced = errors.New("not confirmed by the disk")
)

// A KindError says that a path leads to something other than a file.
type KindError struct {
	Path string
	Mode fs.FileMode
}

func (e *KindError) Error() string {
	if e.Mode.IsDir() {
		return e.Path + ": is a folder"
	}
	return e.Path + ": is a device or pipe"
}

// System is what replacing a file asks of the system: tests let each call fail.
type System interface {
	Create(path string, mode fs.FileMode) (Handle, error) // fails where there is one
	Rename(from, to string) error
	Remove(path string) error
	SyncFolder(path string) error
}

// Handle is a file being written.
type Handle interface {
	io.WriteCloser
	Chmod(fs.FileMode) error
	Chown(uid, gid int) error
	Sync() error
	Stat() (fs.FileInfo, error)
}

// Real is the system itself.
type Real struct{}

// Create makes a file that is not there yet.
func (Real) Create(path string, mode fs.FileMode) (Handle, error) {
	return os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
}

// Rename puts a file in place of another at once.
func (Real) Rename(from, to string) error { return os.Rename(from, to) }

// Remove removes a file.
func (Real) Remove(path string) error { return os.Remove(path) }

// Followed returns what a path leads to through symbolic links, also where the last one
// points to no file yet. It fails with ErrLinks for a circle of them.
func Followed(path string) (string, error) {
	for range 40 { // as many links as Linux follows, path_resolution(7)
		real, err := filepath.EvalSymlinks(path)
		if err == nil {
			return real, nil
		}
		link, readErr := os.Readlink(path)
		if readErr != nil {
			return path, nil // no link, no file: it is to be made
		}
		if !filepath.IsAbs(link) {
			link = filepath.Join(filepath.Dir(path), link)
		}
		path = link
	}
	return "", ErrLinks
}

// replaceable returns what is known of a file that may be replaced, or nil where there is
// none. A file that nobody may write is not even root's to replace: its owner said so.
func replaceable(path string) (fs.FileInfo, error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, &KindError{path, info.Mode()}
	case info.Mode().Perm()&0o222 == 0:
		return nil, &fs.PathError{Op: "open", Path: path, Err: fs.ErrPermission}
	}
	f, err := os.OpenFile(path, os.O_WRONLY, 0) // a rename would not ask
	if err != nil {
		return nil, err
	}
	return info, f.Close()
}

// unsynced says that the file is in place and what the disk answered.
func unsynced(cause error) error { return fmt.Errorf("%w: %w", ErrUnsynced, cause) }
