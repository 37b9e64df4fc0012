package file

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"studbay/plan"
)

// What callers branch on; an *Error wraps it where it fits.
var (
	// ErrNewer is returned for a file of a newer major version.
	ErrNewer = errors.New("written by a newer version")
	// ErrChanged is returned where the file is not what it was at the stamp.
	ErrChanged = errors.New("changed on disk")
	// ErrExists is returned where a file is in the place of one to be made.
	ErrExists = errors.New("there is a file already")
	// ErrUnsynced is returned with a stamp where the plan is saved but the disk did not
	// confirm it.
	ErrUnsynced = errors.New("not confirmed by the disk")
)

// Load reads the plan of a file. Its errors are of type *Error.
func Load(path string) (plan.Plan, Stamp, error) {
	data, stamp, err := readAll(path)
	if err != nil {
		return plan.Plan{}, Stamp{}, loading(path, err)
	}
	p, err := Decode(path, data)
	if err != nil {
		return plan.Plan{}, Stamp{}, err
	}
	return p, stamp, nil
}

// readAll reads a file of a plan's size at most. A device or pipe is not even opened.
func readAll(path string) ([]byte, Stamp, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, Stamp{}, err
	case !info.Mode().IsRegular():
		return nil, Stamp{}, notRegular(info.Mode())
	case info.Size() > MaxBytes:
		return nil, Stamp{}, tooLarge(info.Size())
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, Stamp{}, err
	}
	defer f.Close()
	data := make([]byte, 0, info.Size()+512)
	for len(data) <= MaxBytes { // it may grow while it is read
		n, err := f.Read(data[len(data):cap(data)])
		data = data[:len(data)+n]
		if err == io.EOF {
			return data, stampFor(data, info.ModTime()), nil
		}
		if err != nil {
			return nil, Stamp{}, err
		}
		if len(data) == cap(data) {
			data = append(data, 0)[:len(data)]
		}
	}
	return nil, Stamp{}, tooLarge(int64(len(data)))
}

// Save puts the plan in the file, all at once and for good: at any moment, also of a
// crash or a power cut, the file is the old one or the new one. It keeps the file's mode
// and follows a symbolic link. It fails with ErrChanged where the file holds other bytes
// than at the stamp, and with ErrExists where there is one though the stamp is zero; a
// file deleted since is made again. On error the old file is untouched and nothing is
// left beside it; only with ErrUnsynced the new file is in place and its stamp returned.
// Errors are of type *Error.
func Save(path string, p plan.Plan, expect Stamp) (Stamp, error) {
	return save(realDisk{}, path, p, expect)
}

func save(d disk, path string, p plan.Plan, expect Stamp) (Stamp, error) {
	data, err := Encode(p)
	if err != nil {
		return Stamp{}, saved(path, err)
	}
	if len(data) > MaxBytes {
		return Stamp{}, saved(path, tooLarge(int64(len(data))))
	}
	target, err := followed(path)
	if err != nil {
		return Stamp{}, saved(path, err)
	}
	keep, err := writable(target)
	if err != nil {
		return Stamp{}, saved(path, err)
	}
	r := replacement{path: target, data: data, mode: 0o666, keep: keep, ready: func() error { return unchanged(target, expect) }}
	if err := r.ready(); err != nil { // before anything is written, and again at the end
		return Stamp{}, saved(path, err)
	}
	info, err := r.put(d)
	var unsynced errUnsynced
	if err != nil && !errors.As(err, &unsynced) {
		return Stamp{}, saved(path, err)
	}
	stamp := stampFor(data, info.ModTime())
	if err != nil {
		return stamp, &Error{File: path, Err: fault(errors.Join(ErrUnsynced, err), "file.unsynced",
			"the plan is saved, but the disk did not confirm it ({0}); save a copy elsewhere", unsynced.Error())}
	}
	return stamp, nil
}

// followed returns what a path leads to through symbolic links, also where the last one
// points to no file yet.
func followed(path string) (string, error) {
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
	return "", fault(nil, "file.links", "its symbolic links lead in a circle; save under another name")
}

// writable returns the mode of a file that may be written, or 0 where there is none.
func writable(path string) (fs.FileMode, error) {
	info, err := os.Stat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return 0, nil
	}
	if err != nil {
		return 0, err
	}
	if !info.Mode().IsRegular() {
		return 0, notRegular(info.Mode())
	}
	f, err := os.OpenFile(path, os.O_WRONLY, 0) // a rename would not ask
	if err != nil {
		return 0, err
	}
	return info.Mode().Perm(), f.Close()
}

// unchanged reports that a file is not the one expected.
func unchanged(path string, expect Stamp) error {
	now, err := readStamp(path)
	switch {
	case err != nil:
		return err
	case now.IsZero():
		return nil
	case expect.IsZero():
		return fault(ErrExists, "file.exists", "there is a file of this name already; replace it or choose another name")
	case now.Hash != expect.Hash:
		return fault(ErrChanged, "file.changed",
			"the file was changed by someone else since it was opened; save under another name, or open theirs first")
	}
	return nil
}
