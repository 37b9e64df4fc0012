package desk

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"studbay/fill"
	"studbay/plan/words"
	"studbay/render/paint/pdf"
	"studbay/render/paint/png"
	"studbay/render/scene"
	"studbay/render/sheet"
)

// pngDPI is the resolution of a picture that is looked at on a screen and printed on a
// house printer.
const pngDPI = 150

// writeSheets lays the sheets out and writes them: one file as PDF, one a page as PNG.
// It returns the files written. A file is complete or not there.
func writeSheets(ctx context.Context, job exporting, result fill.Result, voice words.Voice) ([]string, error) {
	pages, err := sheet.Build(job.index, result, sheet.Options{Voice: voice})
	if err != nil {
		return nil, err
	}
	if strings.EqualFold(filepath.Ext(job.path), ".pdf") {
		return []string{job.path}, intoFile(job.path, func(f *os.File) error {
			return pdf.Encode(ctx, f, pages, pdf.Options{Progress: func(done, of int) { job.progress(float64(done) / float64(of)) }})
		})
	}
	var files []string
	for i, page := range pages {
		path := pagePath(job.path, i)
		if err := intoFile(path, func(f *os.File) error { return writePNG(ctx, f, page) }); err != nil {
			return files, err
		}
		files = append(files, path)
		job.progress(float64(i+1) / float64(len(pages)))
	}
	return files, nil
}

func writePNG(ctx context.Context, f *os.File, page *scene.Scene) error {
	return png.Encode(ctx, f, page, png.Options{DPI: pngDPI})
}

// pagePath names the file of a page: the first as asked, then name-2, name-3.
func pagePath(path string, page int) string {
	if page == 0 {
		return path
	}
	extension := filepath.Ext(path)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(path, extension), page+1, extension)
}

// intoFile writes a file beside its place and moves it there once it is whole.
func intoFile(path string, write func(*os.File) error) error {
	f, err := os.CreateTemp(filepath.Dir(path), ".studbay-*")
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	defer os.Remove(f.Name())
	if err := write(f); err != nil {
		_ = f.Close()
		return err
	}
	if err := f.Close(); err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	return os.Rename(f.Name(), path)
}
