package paint

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"studbay/render/paint/png"
	"studbay/render/scene"
)

// ErrNoPages is returned for a save of nothing.
var ErrNoPages = errors.New("no pages to save")

// Save writes pages to a file in the format its name asks for, and to numbered files
// beside it where the format has one a page. It returns the names of the files.
//
// A file appears whole or not at all: on an error or once the context is over, what
// stood under the names before still does, unless the error came while the finished
// files were being named, when some pages may be new and some old. Pages that an earlier
// save under this name left, and that the set no longer has, are removed.
func Save(ctx context.Context, file string, pages []*scene.Scene, o Options) (files []string, err error) {
	format, err := FormatOf(file)
	if err != nil {
		return nil, err
	}
	if len(pages) == 0 {
		return nil, fmt.Errorf("%s: %w", file, ErrNoPages)
	}
	sets := [][]*scene.Scene{pages}
	if format.EachPage {
		sets = nil
		for i := range pages {
			sets = append(sets, pages[i:i+1])
		}
	}
	var drafts []*draft
	defer func() {
		for _, d := range drafts {
			d.discard()
		}
	}()
	for i, set := range sets {
		d, err := newDraft(format.PageFile(file, i))
		if err != nil {
			return nil, err
		}
		drafts = append(drafts, d)
		if err := d.write(ctx, format, set, o.part(i, len(sets))); err != nil {
			return nil, fmt.Errorf("%s: %w", d.file, err)
		}
	}
	for _, d := range drafts {
		if err := d.publish(); err != nil {
			return files, err
		}
		files = append(files, d.file)
	}
	for _, old := range outdated(format, file, len(sets)) {
		if err := os.Remove(old); err != nil {
			return files, fmt.Errorf("page of an earlier set: %w", err)
		}
	}
	syncFolder(filepath.Dir(file))
	return files, nil
}

// outdated lists the further pages of an earlier set of a name, which had more than it has
// now. A picture of someone else's is none, nor one of ours that was saved by itself.
func outdated(format Format, file string, now int) (files []string) {
	if !format.EachPage {
		return nil
	}
	for i := now; ; i++ {
		name := format.PageFile(file, i)
		f, err := os.Open(name)
		if err != nil {
			return files
		}
		page, of, ours := png.PageOf(f)
		f.Close()
		if !ours || page != i+1 || of <= now {
			return files
		}
		files = append(files, name)
	}
}

// draft is a file under a name of its own until it is whole.
type draft struct {
	file string // as it will be named
	temp *os.File
	done bool
}

// newDraft makes the draft in the folder of the file, so that naming it is a rename
// within one file system.
func newDraft(file string) (*draft, error) {
	if info, err := os.Stat(file); err == nil && info.IsDir() {
		return nil, fmt.Errorf("%s: is a folder: choose a file name", file)
	}
	temp, err := os.CreateTemp(filepath.Dir(file), "."+filepath.Base(file)+".*")
	if err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	return &draft{file: file, temp: temp}, nil
}

// write fills the draft and makes sure that the disk holds it.
func (d *draft) write(ctx context.Context, format Format, pages []*scene.Scene, o Options) error {
	buffered := bufio.NewWriterSize(d.temp, 1<<16)
	if err := format.encode(ctx, buffered, pages, o); err != nil {
		return err
	}
	if err := buffered.Flush(); err != nil {
		return err
	}
	if err := d.temp.Chmod(d.mode()); err != nil {
		return err
	}
	if err := d.temp.Sync(); err != nil {
		return err
	}
	return d.temp.Close()
}

// mode is that of the file to be replaced, or what people expect of a new one: a
// temporary file begins readable by its owner alone.
func (d *draft) mode() os.FileMode {
	if info, err := os.Stat(d.file); err == nil {
		return info.Mode().Perm()
	}
	return 0o644
}

func (d *draft) publish() error {
	if err := os.Rename(d.temp.Name(), d.file); err != nil {
		return err
	}
	d.done = true
	return nil
}

// discard removes a draft that was not published.
func (d *draft) discard() {
	if d.done {
		return
	}
	d.temp.Close()
	os.Remove(d.temp.Name())
}

// syncFolder makes the new names durable. Not every system can sync a folder; there
// the names are as durable as the system makes them.
func syncFolder(path string) {
	folder, err := os.Open(path)
	if err != nil {
		return
	}
	defer folder.Close()
	_ = folder.Sync()
}
