// Package paint saves scenes as files. Formats is the list of what they can be
// saved as; each format has its package below this one.
package paint

import (
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strings"
	"time"

	"studbay/plan/words"
	"studbay/render/paint/pdf"
	"studbay/render/paint/png"
	"studbay/render/paint/svg"
	"studbay/render/scene"
)

// Options say how to save. The zero value is fit for use.
type Options struct {
	Title    string              // of the whole, for formats that hold one
	Date     time.Time           // of making, for formats that hold one; zero means a fixed date
	DPI      int                 // pixels an inch, for pictures; 0 means png.DefaultDPI
	Progress func(share float64) // rising to 1, called from one goroutine; may be nil
	// Spend takes the items off each page once it is written, so that a large set need not
	// be in memory twice: for a caller that draws the pages no more.
	Spend bool

	page, of int // of files of one page each
}

// Format is one kind of file.
type Format struct {
	Ext      string                                  // with its dot, in lower case
	EachPage bool                                    // a file for each page, else one file for all
	pageOf   func(io.Reader) (page, of int, ok bool) // which page of its set a file says it is; with EachPage
	encode   func(ctx context.Context, w io.Writer, pages []*scene.Scene, o Options) error
}

// Formats lists what pages can be saved as, in the order menus show.
var Formats = []Format{
	{Ext: ".pdf", encode: encodePDF},
	{Ext: ".png", EachPage: true, pageOf: png.PageOf, encode: encodePNG},
	{Ext: ".svg", EachPage: true, pageOf: svg.PageOf, encode: encodeSVG},
}

func encodePDF(ctx context.Context, w io.Writer, pages []*scene.Scene, o Options) error {
	return pdf.Encode(ctx, w, pages, pdf.Options{Title: o.Title, Date: o.Date, Progress: func(done, total int) {
		o.spend(pages[done-1])
		o.report(float64(done) / float64(total))
	}})
}

func encodePNG(ctx context.Context, w io.Writer, pages []*scene.Scene, o Options) error {
	err := png.Encode(ctx, w, pages[0], png.Options{DPI: o.DPI, Page: o.page, Of: o.of, Progress: func(done, total int) {
		o.report(float64(done) / float64(total))
	}})
	o.spend(pages[0])
	return err
}

func encodeSVG(ctx context.Context, w io.Writer, pages []*scene.Scene, o Options) error {
	err := svg.Encode(ctx, w, pages[0], o.page, o.of)
	o.spend(pages[0])
	o.report(1)
	return err
}

// spend lets go of what is on a page that was written.
func (o Options) spend(page *scene.Scene) {
	if o.Spend {
		page.Clear()
	}
}

func (o Options) report(share float64) {
	if o.Progress != nil {
		o.Progress(share)
	}
}

// part returns the options for file i of n, whose progress is that part of the whole.
func (o Options) part(i, n int) Options {
	o.page, o.of = i+1, n
	whole := o.Progress
	if whole != nil {
		o.Progress = func(share float64) { whole((float64(i) + share) / float64(n)) }
	}
	return o
}

// FormatError says that a file name ends in no format's ending.
type FormatError struct{ File string }

func (e *FormatError) Error() string { return e.Told().String() }

// Told implements words.Teller.
func (e *FormatError) Told() words.Text {
	known := make([]string, len(Formats))
	for i, f := range Formats {
		known[i] = f.Ext
	}
	return words.New("format.no-file", "{0}: unknown kind of file: end the name in {1}", e.File, strings.Join(known, ", "))
}

// FormatOf returns the format that a file name asks for by its ending, in capitals
// or not. It fails with a *FormatError.
func FormatOf(file string) (Format, error) {
	ext := strings.ToLower(filepath.Ext(file))
	for _, f := range Formats {
		if f.Ext == ext {
			return f, nil
		}
	}
	return Format{}, &FormatError{file}
}

// IsSet reports whether a file of this ending holds all pages, as a set that is leafed
// through does.
func IsSet(file string) bool {
	f, err := FormatOf(file)
	return err == nil && !f.EachPage
}

// PageFile returns the name of the file that page i, from 0, is saved in: out.png,
// out-2.png, out-3.png where each page has its own, else the name itself.
func (f Format) PageFile(file string, i int) string {
	if i == 0 || !f.EachPage {
		return file
	}
	ext := filepath.Ext(file)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(file, ext), i+1, ext)
}
