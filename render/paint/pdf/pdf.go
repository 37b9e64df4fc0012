// Package pdf writes scenes as the pages of one PDF file, true to scale: a millimetre
// of a scene is a millimetre of paper, to within 0.01 point. Text stays text, in the
// fonts it was measured with, so a file can be searched.
//
// The same scenes and options give the same bytes.
package pdf

import (
	"context"
	"errors"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"studbay/render/scene"
)

// Options say what a file tells of itself. The zero value is fit for use.
type Options struct {
	Title    string
	Date     time.Time             // written as the date of making; zero means 1 January 2000
	Progress func(done, total int) // called as pages are drawn, from one goroutine; may be nil
}

// Encode writes pages as one file, with a bookmark for each that has a title. It
// stops between pages with the context's error, and then writes nothing.
func Encode(ctx context.Context, w io.Writer, pages []*scene.Scene, o Options) error {
	p := newPainter(pages, o)
	for i, s := range pages {
		if err := ctx.Err(); err != nil {
			return err
		}
		p.page(s)
		if o.Progress != nil {
			o.Progress(i+1, len(pages))
		}
	}
	p.press()
	if err := errors.Join(ctx.Err(), p.Close()); err != nil {
		return err
	}
	return p.write(w)
}

func newPainter(pages []*scene.Scene, o Options) *painter {
	date := o.Date
	if date.IsZero() {
		date = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	doc := newDocument()
	doc.SetCompression(false) // of pages with nothing on them: for each the library makes a deflater of a megabyte
	doc.SetCreationDate(date)
	doc.SetModificationDate(date)
	doc.SetProducer("Studbay", true)
	doc.SetCreator("Studbay", true)
	doc.SetTitle(o.Title, true)
	doc.SetLang(unscaled)
	p := &painter{file: doc, anchors: map[string]int{}}
	for _, s := range pages {
		if s.Meta.Title != "" {
			p.anchors["#"+s.Meta.Title] = doc.AddLink()
		}
	}
	return p
}

func newDocument() *fpdf.Fpdf {
	doc := fpdf.New("P", "mm", "", "")
	doc.SetMargins(0, 0, 0)
	doc.SetAutoPageBreak(false, 0)
	doc.SetCatalogSort(true) // else fonts come in the random order of a map
	return doc
}

// unscaled asks a viewer to print pages at their size (ISO 32000-1, 12.2, PrintScaling).
// The library has no call for it: it writes the language, here unknown, as it is given, so
// that what follows stands in the catalogue, and the bracket it ends with in a comment.
const unscaled = ") /ViewerPreferences <</PrintScaling /None>> %"

// page begins a page and paints the scene on it.
func (p *painter) page(s *scene.Scene) {
	width, height := s.Width.Millimetres(), s.Height.Millimetres()
	p.begin(fpdf.SizeType{Wd: width, Ht: height})
	if title := s.Meta.Title; title != "" {
		p.fileFont(0) // a bookmark's encoding is that of the font in hand
		p.file.Bookmark(title, 0, 0)
		p.file.SetLink(p.anchors["#"+title], 0, p.file.PageNo())
	}
	if paper := s.Background(); paper != (&scene.Scene{}).Background() {
		p.Fill(scene.Rect{Max: scene.Point{X: width, Y: height}}.Path(), paper)
	}
	s.Paint(p)
	if p.doc.PageCount() == partPages {
		p.press()
	}
}
