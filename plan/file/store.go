package file

import (
	"errors"
	"io"
	"io/fs"
	"os"

	"studbay/plan"
	"studbay/plan/disk"
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
		return nil, Stamp{}, notRegular(nil, info.Mode())
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
	return save(disk.Real{}, path, p, expect)
}

func save(system disk.System, path string, p plan.Plan, expect Stamp) (Stamp, error) {
	data, err := Encode(p)
	if len(data) > MaxBytes {
		err = tooLarge(int64(len(data)))
	}
	if err == nil {
		err = unchanged(path, expect) // before anything is written, and again at the end
	}
	if err != nil {
		return Stamp{}, saved(path, err)
	}
	info, err := replace(system, path, data, expect)
	if err != nil && !errors.Is(err, disk.ErrUnsynced) {
		return Stamp{}, saved(path, err)
	}
	stamp := stampFor(data, info.ModTime())
	if err != nil {
		return stamp, &Error{File: path, Err: fault(errors.Join(ErrUnsynced, err), "file.unsynced",
			"the plan is saved, but the disk did not confirm it ({0}); save a copy elsewhere", reason(err))}
	}
	return stamp, nil
}

// replace puts the text in the file, unless that has changed meanwhile.
func replace(system disk.System, path string, data []byte, expect Stamp) (fs.FileInfo, error) {
	d, err := disk.NewOn(system, path, 0o666)
	if err != nil {
		return nil, err
	}
	defer d.Discard()
	if _, err := d.Write(data); err != nil {
		return nil, err
	}
	if err := d.Finish(); err != nil {
		return nil, err
	}
	if err := unchanged(path, expect); err != nil {
		return nil, err
	}
	return d.Publish()
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
