package paint

import (
	"context"
	"errors"
	"fmt"
	"os"

	"studbay/plan/disk"
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
	var drafts []*disk.Draft
	defer func() {
		for _, d := range drafts {
			d.Discard()
		}
	}()
	for i, set := range sets {
		name := format.PageFile(file, i)
		d, err := disk.New(name, 0o666)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		drafts = append(drafts, d)
		if err := format.encode(ctx, d, set, o.part(i, len(sets))); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		if err := d.Finish(); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
	}
	for i, d := range drafts {
		name := format.PageFile(file, i)
		if _, err := d.Publish(); err != nil {
			return files, fmt.Errorf("%s: %w", name, err)
		}
		files = append(files, name)
	}
	for _, old := range outdated(format, file, len(sets)) {
		if err := os.Remove(old); err != nil {
			return files, fmt.Errorf("page of an earlier set: %w", err)
		}
	}
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
		page, of, ours := format.pageOf(f)
		f.Close()
		if !ours || page != i+1 || of <= now {
			return files
		}
		files = append(files, name)
	}
}
