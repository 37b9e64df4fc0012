package file

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"studbay/plan/disk"
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
	if !saidBySystem(err) {
		return err
	}
	return &Error{File: path, Err: inWords(err, func() *Fault {
		if f := refused(path, err); f != nil {
			return f
		}
		if errors.Is(err, disk.ErrUnsynced) {
			return fault(err, "file.make-unsynced", "the file is written, but the disk did not confirm it ({0}); write it elsewhere too", reason(err))
		}
		return fault(err, "file.make", "the file cannot be written ({0}); choose another place. Nothing is changed", reason(err))
	})}
}

// saidBySystem reports whether an error is about the file and not about what goes in it.
func saidBySystem(err error) bool {
	for _, own := range []error{disk.ErrNoName, disk.ErrLinks, disk.ErrOwner, disk.ErrUnsynced} {
		if errors.Is(err, own) {
			return true
		}
	}
	var at *fs.PathError
	var between *os.LinkError
	var kind *disk.KindError
	return errors.As(err, &at) || errors.As(err, &between) || errors.As(err, &kind)
}

// refused says what a user can do about a file that the system refuses to write, or is
// nil where it cannot be said.
func refused(path string, err error) *Fault {
	switch kind := new(disk.KindError); {
	case errors.As(err, &kind):
		return notRegular(err, kind.Mode)
	case errors.Is(err, disk.ErrNoName):
		return fault(err, "file.no-name", "no file is named; give it a name")
	case errors.Is(err, disk.ErrLinks):
		return fault(err, "file.links", "its symbolic links lead in a circle; save under another name")
	case errors.Is(err, disk.ErrOwner):
		return fault(err, "file.owner", "the file belongs to another user and would no longer; save under another name. Nothing is changed")
	case errors.Is(err, fs.ErrNotExist):
		return fault(err, "file.no-folder", "there is no folder {0}; make it or save elsewhere", filepath.Dir(path))
	case disk.IsReadOnly(err), errors.Is(err, fs.ErrPermission):
		return fault(err, "file.no-write", "the file or its folder may not be written to; save elsewhere. Nothing is changed")
	case disk.IsFull(err):
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

func notRegular(cause error, mode fs.FileMode) *Fault {
	if mode.IsDir() {
		return fault(cause, "file.folder", "this is a folder; choose a file in it")
	}
	return fault(cause, "file.special", "this is a device or pipe; choose a file")
}
