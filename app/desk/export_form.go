package desk

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/sheet"
)

// exportForm is the dialog before an export: the pages as they will be, and what may be
// chosen of them.
type exportForm struct {
	desk  *Desk
	paper sheet.Paper
	scale sheet.Scale
	form  string // .pdf or .png
	dpi   int
	only  int // the page to write, from 1; 0 writes all

	pages    []*scene.Scene // nil while they are laid out
	job      int            // counts layouts: an old one that comes late is dropped
	preview  *preview
	choices  []*card.Choice
	paperOf  *look.Paragraph // size and scale in words
	wrong    *look.Paragraph
	yes      *look.Press
	resolves *card.Choice
	column   *fyne.Container
	shown    *raised
}

// pictureDPIs are what a picture can be written at: for a screen, a house printer and a
// copy shop.
var pictureDPIs = []int{100, 150, 300, 600}

const fieldsWidth = 300

// askExport shows the dialog.
func (d *Desk) askExport() {
	d.window.Canvas().Unfocus()
	f := &exportForm{desk: d, form: d.prefs.exportForm(), dpi: d.prefs.exportDPI()}
	var err error
	if f.paper, err = sheet.PaperNamed(d.prefs.paper()); err != nil || f.paper.System != d.doc().System() {
		f.paper = sheet.UsualPaper(d.doc().System())
	}
	f.build()
	f.layOut()
}

func (f *exportForm) build() {
	d := f.desk
	f.preview = newPreview(d)
	width := look.Scaled(fieldsWidth)
	f.paperOf = look.NewParagraph("", look.Second, width)
	f.wrong = look.NewParagraph("", look.Style{Tone: look.Stop}, width)
	f.wrong.Hide()
	choice := func(label string, options func() []card.Option) *card.Choice {
		c := card.NewChoice(label, "", options)
		c.OnEscape(func() { f.shown.lower() })
		f.choices = append(f.choices, c)
		return c
	}
	fields := []fyne.CanvasObject{
		choice(d.say("export.paper", "Paper"), f.papers),
		choice(d.say("export.scale", "Scale"), f.scales),
		choice(d.say("export.pages", "Pages"), f.which),
		choice(d.say("export.form", "Written as"), f.forms),
	}
	f.resolves = choice(d.say("export.dpi", "Dots an inch"), f.resolutions)
	fields = append(fields, f.resolves, look.Gap(1, look.Grid/2), f.paperOf, f.wrong)
	f.column = look.Column(look.Grid, fields...)
	no := button(d.say("answer.stay", "Go back"), false, func() { f.shown.lower() })
	f.yes = button(d.say("export.next", "Choose a file …"), true, f.next)
	body := look.TopRow(3*look.Grid, -1, f.preview.object, look.Sized(fieldsWidth, 0, f.column))
	f.shown = d.raise(look.Column(2*look.Grid,
		look.NewText(d.say("export.ask", "Export the sheets"), look.Title), body, buttonRow(no, f.yes)))
	f.update()
	d.window.Canvas().Focus(f.yes)
}

// option is one to choose from; choosing it shows all anew, and lays the pages out
// again where they become others.
func (f *exportForm) option(label string, now, again bool, set func()) card.Option {
	return card.Option{Label: label, Now: now, Do: func() {
		set()
		f.update()
		if again {
			f.layOut()
		}
	}}
}

func (f *exportForm) papers() (options []card.Option) {
	for _, p := range sheet.Papers {
		label := strings.ToUpper(p.Name[:1]) + p.Name[1:] + ", " + p.Size()
		options = append(options, f.option(label, p == f.paper, true, func() {
			f.paper = p
			f.desk.prefs.setPaper(p.Name)
		}))
	}
	return options
}

// scales offers those of the plan's units: the others would print no round figure.
func (f *exportForm) scales() []card.Option {
	options := []card.Option{f.option(f.desk.say("export.scale.fit", "The largest that fits"), f.scale.IsFit(), true, func() { f.scale = sheet.Scale{} })}
	for _, s := range sheet.Scales {
		if s.System == f.desk.doc().System() {
			options = append(options, f.option(s.Words(), s == f.scale, true, func() { f.scale = s }))
		}
	}
	return options
}

func (f *exportForm) which() []card.Option {
	options := []card.Option{f.option(f.pagesText(), f.only == 0, false, func() { f.only = 0 })}
	for i, p := range f.pages {
		label := f.desk.say("export.page", "Only {0}: {1}", i+1, p.Meta.Title)
		options = append(options, f.option(label, f.only == i+1, false, func() {
			f.only = i + 1
			f.preview.turnTo(i)
		}))
	}
	return options
}

func (f *exportForm) pagesText() string {
	switch n := len(f.pages); n {
	case 0:
		return f.desk.say("export.pages.wait", "being laid out …")
	case 1:
		return f.desk.say("export.pages.one", "the one there is")
	default:
		return f.desk.say("export.pages.all", "all {0}", n)
	}
}

func (f *exportForm) forms() (options []card.Option) {
	for _, form := range []struct {
		extension string
		name      words.Text
	}{
		{".pdf", words.New("export.pdf", "PDF, one file")},
		{".png", words.New("export.png", "PNG, a picture a page")},
	} {
		options = append(options, f.option(f.desk.voice.Say(form.name), f.form == form.extension, false, func() {
			f.form = form.extension
			f.desk.prefs.setExportForm(form.extension)
		}))
	}
	return options
}

func (f *exportForm) resolutions() (options []card.Option) {
	for _, dpi := range pictureDPIs {
		options = append(options, f.option(f.desk.say("plain", "{0}", dpi), f.dpi == dpi, false, func() {
			f.dpi = dpi
			f.desk.prefs.setExportDPI(dpi)
		}))
	}
	return options
}

// update shows what is chosen.
func (f *exportForm) update() {
	for _, c := range f.choices {
		c.Update()
	}
	showIf(f.resolves, f.form == ".png")
	f.yes.SetDisabled(len(f.pages) == 0)
	f.column.Refresh()
}

// layOut lays the pages out beside the window.
func (f *exportForm) layOut() {
	d := f.desk
	f.job++
	job, ix, result := f.job, d.doc().Index(), d.doc().Result()
	o := sheet.Options{Paper: f.paper, Scale: f.scale, Voice: d.voice}
	f.pages, f.only = nil, 0
	f.say("")
	f.update()
	go func() {
		pages, err := sheet.Build(ix, result, o)
		d.house.post(func() {
			if job == f.job && d.open == f.shown {
				f.take(pages, err)
			}
		})
	}()
}

// take shows pages laid out, or why there are none.
func (f *exportForm) take(pages []*scene.Scene, err error) {
	if err != nil {
		f.say(f.faultText(err))
		f.preview.show(nil)
		return
	}
	f.pages = pages
	f.preview.show(pages)
	f.paperOf.SetWords(f.desk.say("export.size", "{0}, true to scale: print it at 100 %.", f.paper.Size()))
	f.update()
}

// faultText says why the pages cannot be laid out, and what would do.
func (f *exportForm) faultText(err error) string {
	var large *sheet.FitError
	if !errors.As(err, &large) {
		return f.desk.errorText(err)
	}
	text := f.desk.say("export.large", "At {0}, {1} would take about {2} pages.", large.Scale.Words(), large.Level, large.Pages)
	if len(large.Scales) > 0 {
		text += " " + f.desk.say("export.large.scale", "{0} would do.", large.Scales[0].Words())
	}
	if len(large.Papers) > 0 {
		text += " " + f.desk.say("export.large.paper", "So would paper of {0}.", large.Papers[0].Size())
	}
	return text
}

func (f *exportForm) say(wrong string) {
	f.wrong.SetWords(wrong)
	showIf(f.wrong, wrong != "")
	showIf(f.paperOf, wrong == "")
	f.column.Refresh()
}

// next asks for the file and writes it.
func (f *exportForm) next() {
	pages := f.pages
	if len(pages) == 0 {
		return
	}
	if f.only > 0 {
		pages = pages[f.only-1 : f.only]
	}
	d := f.desk
	f.shown.lower()
	d.choose(choosing{
		title: d.say("export.choose", "Write the sheets to"), yes: d.say("answer.write", "Write"),
		name: work.FileName(d.doc().Title()) + f.form, extensions: []string{f.form},
	}, func(path string) {
		d.export(sheetJob{pages: pages, path: work.WithExtension(path, f.form), dpi: f.dpi})
	})
}
