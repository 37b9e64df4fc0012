package disk

import (
	"bufio"
	"crypto/rand"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// Draft is a file under a hidden name of its own until it is whole: write, Finish, then
// Publish. Discard it in any case.
type Draft struct {
	system System
	path   string      // of the file it will be, no symbolic link
	temp   string      // where it is now, in the same folder: the rename is one step
	old    fs.FileInfo // of the file to be replaced; nil where there is none
	file   Handle      // nil once it is closed
	out    *bufio.Writer
	info   fs.FileInfo // of the finished file
	named  bool
}

// New begins a file that will stand at path, through symbolic links. Mode is that of a new
// file, before the umask; a replaced one keeps its own. It fails with ErrNoName, ErrLinks,
// a *KindError or what the system says, and has then made nothing.
func New(path string, mode fs.FileMode) (*Draft, error) { return NewOn(Real{}, path, mode) }

// NewOn is New on a system that may fail.
func NewOn(system System, path string, mode fs.FileMode) (*Draft, error) {
	if path == "" {
		return nil, ErrNoName
	}
	target, err := Followed(path)
	if err != nil {
		return nil, err
	}
	old, err := replaceable(target)
	if err != nil {
		return nil, err
	}
	sweep(system, target)
	temp := prefix(target) + rand.Text()
	file, err := system.Create(temp, mode)
	if err != nil {
		return nil, err
	}
	return &Draft{system: system, path: target, temp: temp, old: old, file: file, out: bufio.NewWriterSize(file, 1<<16)}, nil
}

// Write adds to the draft.
func (d *Draft) Write(data []byte) (int, error) { return d.out.Write(data) }

// Finish makes the draft whole and sees that the disk holds it. Nothing is replaced yet.
func (d *Draft) Finish() error {
	if err := d.out.Flush(); err != nil {
		return err
	}
	if err := d.likeOld(); err != nil {
		return err
	}
	if err := d.file.Sync(); err != nil {
		return err
	}
	info, err := d.file.Stat()
	if err != nil {
		return err
	}
	d.info = info
	return d.close()
}

// likeOld gives the draft the owner and mode of the file that it replaces.
func (d *Draft) likeOld() error {
	if d.old == nil {
		return nil
	}
	now, err := d.file.Stat()
	if err != nil {
		return err
	}
	uid, gid, ok := owner(d.old)
	if ourUID, ourGID, _ := owner(now); ok && (uid != ourUID || gid != ourGID) {
		if err := d.file.Chown(uid, gid); err != nil { // which may clear bits of the mode, so it is first
			return errors.Join(ErrOwner, err)
		}
	}
	return d.file.Chmod(d.old.Mode().Perm())
}

// Publish puts the finished draft in its place at once, and returns what is known of the
// file. On error what stood there is as it was; only with ErrUnsynced the new file is in
// place.
func (d *Draft) Publish() (fs.FileInfo, error) {
	if err := d.system.Rename(d.temp, d.path); err != nil {
		return nil, err
	}
	d.named = true
	if err := d.system.SyncFolder(filepath.Dir(d.path)); err != nil {
		return d.info, unsynced(err)
	}
	return d.info, nil
}

// Discard removes a draft that was not published.
func (d *Draft) Discard() {
	_ = d.close()
	if !d.named {
		_ = d.system.Remove(d.temp)
	}
}

func (d *Draft) close() error {
	if d.file == nil {
		return nil
	}
	file := d.file
	d.file = nil
	return file.Close()
}

// longest is how much of a file's name its draft bears: a name may have 255 bytes on the
// file systems in use, and 143 on those that encrypt it.
const longest = 100

// prefix begins the names of a file's drafts.
func prefix(path string) string {
	folder, name := filepath.Split(path)
	if len(name) > longest {
		name = strings.ToValidUTF8(name[:longest], "")
	}
	return folder + "." + name + ".saving-"
}

// sweep removes what a killed save of the same file left an hour ago or more. A younger
// one may be at work.
func sweep(system System, path string) {
	drafts := filepath.Base(prefix(path))
	entries, _ := os.ReadDir(filepath.Dir(path)) // where it cannot be read Create will say why
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), drafts) {
			continue
		}
		if info, err := e.Info(); err == nil && time.Since(info.ModTime()) > time.Hour {
			_ = system.Remove(filepath.Join(filepath.Dir(path), e.Name()))
		}
	}
}

// Put writes a file by a function, whole or not at all: New, Finish and Publish in one.
func Put(system System, path string, mode fs.FileMode, write func(io.Writer) error) error {
	d, err := NewOn(system, path, mode)
	if err != nil {
		return err
	}
	defer d.Discard()
	if err := write(d); err != nil {
		return err
	}
	if err := d.Finish(); err != nil {
		return err
	}
	_, err = d.Publish()
	return err
}
