package dialog

import (
	"bytes"
	"image/png"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"studbay/app/help"
	"studbay/app/look"
	pictures "studbay/assets/help"
	"studbay/fill/code"
)

const (
	helpList   = 190 // width of the list of pages
	helpText   = 500 // of the text of one
	helpHeight = 520
)

// helper shows the pages of the help: those that have what is looked for at the left, one
// of them at the right.
type helper struct {
	stage *Stage
	pages []help.Page
	shown int // the page
	find  *look.Entry
	list  *fyne.Container
	text  *fyne.Container
	view  *container.Scroll
}

// ShowHelp opens the help at a page, in a language. Figures are those in force, of which
// the page of what is checked speaks; nil stands for the latest edition.
func (s *Stage) ShowHelp(language, page string, figures *code.Figures) {
	title := s.say("help.title", "Help")
	pages, err := help.Pages(language, s.voice, figures)
	if err != nil {
		s.Trouble(title, err)
		return
	}
	h := &helper{stage: s, pages: pages, find: look.NewEntry(), list: look.Column(2), text: look.Column(look.Grid)}
	h.view = container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, h.text))
	h.find.SetPlaceHolder(s.say("help.find", "Find in the help"))
	h.find.OnChanged = func(string) { h.search() }
	for i, p := range pages {
		if p.ID == page {
			h.shown = i
		}
	}
	h.refill()
	h.show(h.shown)
	left := look.Inset(0, 0, 2*look.Grid, 0, look.Sized(helpList, 0, look.Column(look.Grid, h.find, h.list)))
	s.Spread(title, helpList+helpText+6*look.Grid, helpHeight, container.NewBorder(nil, nil, left, nil, look.Wheeled(h.view)))
	shown := s.open
	h.find.OnEscape = func() {
		if h.find.Text == "" {
			shown.lower()
		}
		h.find.SetText("")
	}
	s.canvas().Focus(h.find)
}

// search lists the pages that have what is looked for, and shows the best of them.
func (h *helper) search() {
	hits := help.Search(h.pages, h.find.Text)
	h.refill()
	if h.find.Text != "" && len(hits) > 0 {
		h.show(hits[0].Page)
	}
}

// refill lists the pages found anew.
func (h *helper) refill() {
	h.list.Objects = nil
	hits := help.Search(h.pages, h.find.Text)
	for _, hit := range hits {
		name := look.NewParagraph(h.pages[hit.Page].Title, look.Body, look.Scaled(helpList-2*look.Grid))
		row := look.NewPress(name, look.Bare, look.Grid, look.Grid/2, func() { h.show(hit.Page) })
		row.SetChosen(hit.Page == h.shown)
		h.list.Add(row)
	}
	if len(hits) == 0 {
		h.list.Add(look.NewParagraph(h.stage.say("help.none", "No page has that. Try another word."), look.Quiet, look.Scaled(helpList-look.Grid)))
	}
	h.list.Refresh()
}

// show puts a page at the right, from its beginning.
func (h *helper) show(page int) {
	h.shown = page
	h.refill()
	h.text.Objects = []fyne.CanvasObject{look.NewParagraph(h.pages[page].Title, look.Title, look.Scaled(helpText))}
	for _, b := range h.pages[page].Blocks {
		h.text.Add(block(b))
	}
	h.text.Refresh()
	h.view.ScrollToTop()
}

// block is what a part of a page looks like.
func block(b help.Block) fyne.CanvasObject {
	width := look.Scaled(helpText)
	switch b.Kind {
	case help.Heading:
		return look.Inset(0, look.Grid, 0, 0, look.NewParagraph(b.Text, look.Style{Bold: true}, width))
	case help.Item:
		return look.Inset(look.Grid, 0, 0, 0, look.NewParagraph(b.Text, look.Body, width-look.Scaled(look.Grid)))
	case help.Source:
		return look.NewText(b.Text, look.Second)
	case help.Picture:
		return shown(b)
	}
	return look.NewParagraph(b.Text, look.Body, width)
}

// shown is a picture as wide as the text, or as itself where it is narrower, with what is
// to be seen on it below.
func shown(b help.Block) fyne.CanvasObject {
	says := look.NewParagraph(b.Text, look.Second, look.Scaled(helpText))
	data, err := pictures.Files.ReadFile("pictures/" + b.File)
	if err != nil {
		return says
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return says
	}
	size := img.Bounds().Size()
	wide := min(float32(helpText), float32(size.X))
	picture := canvas.NewImageFromImage(img)
	picture.FillMode = canvas.ImageFillContain
	picture.ScaleMode = canvas.ImageScaleSmooth
	return look.Column(look.Grid/2, look.Sized(0, wide*float32(size.Y)/float32(size.X), picture), says)
}
