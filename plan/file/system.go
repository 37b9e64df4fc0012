package file

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// loading puts in words why a file cannot be read.
func loading(path string, err error) error {
	return &Error{File: path, Err: inWords(err, func() *Fault {
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return fault(err, "file.missing", "there is no such file; look for it under another name or in another folder")
		case errors.Is(err, fs.ErrPermission):
			return fault(err, "file.no-read", "you may not read this file; ask its owner for leave")
		}
		return fault(err, "file.read", "the file cannot be read ({0}); try again or open a backup", reason(err))
	})}
}

// saved puts in words why a file cannot be saved.
func saved(path string, err error) error {
	return &Error{File: path, Err: inWords(err, func() *Fault {
		if f := refused(path, err); f != nil {
			return f
		}
		return fault(err, "file.write", "the plan cannot be saved ({0}); save elsewhere. Nothing is changed", reason(err))
	})}
}

// NotWritten puts in words why a sheet or table could not be written, as an Error that
// names the file and not the draft that was to become it. What the system did not say
// is returned as it is.
func NotWritten(path string, err error) error {
	var at *fs.PathError
	var between *os.LinkError
	if !errors.As(err, &at) && !errors.As(err, &between) {
		return err
	}
	return &Error{File: path, Err: inWords(err, func() *Fault {
		if f := refused(path, err); f != nil {
			return f
		}
		return fault(err, "file.make", "the file cannot be written ({0}); choose another place. Nothing is changed", reason(err))
	})}
}

// refused says what a user can do about a file that the system refuses to write, or is
// nil where it cannot be said.
func refused(path string, err error) *Fault {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fault(err, "file.no-folder", "there is no folder {0}; make it or save elsewhere", filepath.Dir(path))
	case isReadOnly(err), errors.Is(err, fs.ErrPermission):
		return fault(err, "file.no-write", "the file or its folder may not be written to; save elsewhere. Nothing is changed")
	case isFull(err):
		return fault(err, "file.full", "there is no space left on the disk; free some or save elsewhere. Nothing is changed")
	}
	return nil
}

// inWords returns err where it is in words already, else what other says.
func inWords(err error, other func() *Fault) error {
	var f *Fault
	if errors.As(err, &f) {
		return f
	}
	return other()
}

// reason is what the system said, without the path: that stands before it.
func reason(err error) string {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err.Error()
	}
	var l *os.LinkError
	if errors.As(err, &l) {
		return l.Err.Error()
	}
	return err.Error()
}

func notRegular(mode fs.FileMode) *Fault {
	if mode.IsDir() {
		return fault(nil, "file.folder", "this is a folder; choose a file in it")
	}
	return fault(nil, "file.special", "this is a device or pipe; choose a file")
}
