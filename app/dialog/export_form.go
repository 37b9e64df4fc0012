package dialog

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/language"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan/words"
	"studbay/render/paint"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/scene"
	"studbay/render/sheet"
)

// exportForm is the dialog before an export: the pages as they will be, and what may be
// chosen of them.
type exportForm struct {
	stage  *Stage
	of     Source
	recall ExportMemory
	paper  paper.Paper
	scale  paper.Scale
	reader sheet.Reader
	format string // .pdf, .png or .svg
	dpi    int
	// second is another language that the pages are written in as well, or nil.
	second *language.Language
	only   int // the page to write, from 1; 0 writes all
	// isSince has the set show what changed since the plan that was compared last.
	isSince bool

	pages    []*scene.Scene // nil while they are laid out
	job      int            // counts layouts: an old one that comes late is dropped
	preview  *preview
	choices  []*look.Choice
	paperOf  *look.Paragraph // size and scale in words
	wrong    *look.Paragraph
	yes      *look.Press
	resolves *look.Choice
	column   *fyne.Container
	shown    *raised
}

// pictureDPIs are what a picture can be written at: for a screen, a house printer and a
// copy shop.
var pictureDPIs = []int{100, 150, 300, 600}

const choicesWidth = 300

// AskExport shows the dialog.
func (s *Stage) AskExport(of Source, recall ExportMemory) {
	s.canvas().Unfocus()
	f := &exportForm{stage: s, of: of, recall: recall, reader: sheet.ForAll, format: recall.ExportFormat(), dpi: recall.ExportDPI()}
	var err error
	if f.paper, err = paper.Named(recall.Paper()); err != nil || f.paper.System != of.System() {
		f.paper = paper.Usual(of.System())
	}
	f.build()
	f.layOut()
}

func (f *exportForm) build() {
	s := f.stage
	f.preview = newPreview(s)
	width := look.Scaled(choicesWidth)
	f.paperOf = look.NewParagraph("", look.Second, width)
	f.wrong = look.NewParagraph("", look.Style{Tone: look.Stop}, width)
	f.wrong.Hide()
	choice := func(label string, options func() []look.Option) *look.Choice {
		c := look.NewChoice(label, "", options)
		c.OnEscape(func() { f.shown.lower() })
		f.choices = append(f.choices, c)
		return c
	}
	fields := []fyne.CanvasObject{
		choice(s.say("export.reader", "For"), f.readers),
		choice(s.say("export.paper", "Paper"), f.papers),
		choice(s.say("export.scale", "Scale"), f.scales),
		choice(s.say("export.pages", "Pages"), f.which),
		choice(s.say("export.language", "Language"), f.languages),
		choice(s.say("export.form", "Format"), f.formats),
	}
	if s.older != nil {
		fields = append(fields, choice(s.say("export.since", "What changed"), f.sinces))
	}
	f.resolves = choice(s.say("export.dpi", "Dots per inch"), f.resolutions)
	fields = append(fields, f.resolves, look.Gap(1, look.Grid/2), f.paperOf, f.wrong)
	f.column = look.Column(look.Grid, fields...)
	no := button(s.say("answer.cancel", "Cancel"), false, func() { f.shown.lower() })
	f.yes = button(s.say("export.next", "Choose a file …"), true, f.next)
	body := look.TopRow(3*look.Grid, -1, f.preview.object, look.Sized(choicesWidth, 0, f.column))
	f.shown = s.raise(look.Column(2*look.Grid,
		look.NewText(s.say("export.ask", "Export the sheets"), look.Title), body, buttonRow(no, f.yes)))
	f.update()
	s.canvas().Focus(f.yes)
}

// option is one to choose from; choosing it shows all anew, and lays the pages out
// again where they become others.
func (f *exportForm) option(label string, now, again bool, set func()) look.Option {
	return look.Option{Label: label, Now: now, Do: func() {
		set()
		f.update()
		if again {
			f.layOut()
		}
	}}
}

func (f *exportForm) papers() (options []look.Option) {
	for _, p := range paper.All {
		ways := []paper.Paper{p}
		if upright, err := p.Upright(); err == nil {
			ways = append(ways, upright)
		}
		for _, p := range ways {
			label := strings.ToUpper(p.Name[:1]) + p.Name[1:] + ", " + p.Size(f.stage.voice)
			options = append(options, f.option(label, p == f.paper, true, func() {
				f.paper = p
				f.recall.SetPaper(p.Name)
			}))
		}
	}
	return options
}

// readers offers whom the set is for, everybody first.
func (f *exportForm) readers() (options []look.Option) {
	all := sheet.Readers
	for _, r := range append([]sheet.Reader{sheet.ForAll}, all[:len(all)-1]...) {
		options = append(options, f.option(f.stage.voice.Say(r.Text()), r == f.reader, true, func() { f.reader = r }))
	}
	return options
}

// scales offers those of the plan's units: the others would print no round figure.
func (f *exportForm) scales() []look.Option {
	options := []look.Option{f.option(f.stage.say("export.scale.fit", "The largest that fits"), f.scale.IsFit(), true, func() { f.scale = paper.Scale{} })}
	for _, s := range paper.Scales {
		if s.System == f.of.System() {
			options = append(options, f.option(s.Words(f.stage.voice), s == f.scale, true, func() { f.scale = s }))
		}
	}
	return options
}

// languages offers that of the window, alone or with another beside it.
func (f *exportForm) languages() []look.Option {
	own, other := language.Of(f.stage.voice.Catalogue)
	return []look.Option{
		f.option(own.Name, f.second == nil, true, func() { f.second = nil }),
		f.option(f.stage.say("export.language.both", "{0} and {1}", own.Name, other.Name), f.second != nil, true, func() { f.second = &other }),
	}
}

// sinces offers to show what changed since the plan that was compared last.
func (f *exportForm) sinces() []look.Option {
	s := f.stage
	return []look.Option{
		f.option(s.say("export.since.no", "not shown"), !f.isSince, true, func() { f.isSince = false }),
		f.option(s.say("export.since.yes", "since {0}", s.olderName), f.isSince, true, func() { f.isSince = true }),
	}
}

func (f *exportForm) which() []look.Option {
	options := []look.Option{f.option(f.pagesText(), f.only == 0, false, func() { f.only = 0 })}
	for i, p := range f.pages {
		label := f.stage.say("export.page", "Only {0}: {1}", i+1, p.Meta.Title)
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
		return f.stage.say("export.pages.wait", "being laid out …")
	case 1:
		return f.stage.say("export.pages.one", "the one there is")
	default:
		return f.stage.say("export.pages.all", "all {0}", n)
	}
}

func (f *exportForm) formats() (options []look.Option) {
	for _, format := range []struct {
		extension string
		name      words.Text
	}{
		{".pdf", words.New("export.pdf", "PDF, one file")},
		{".png", words.New("export.png", "PNG, one picture per page")},
		{".svg", words.New("export.svg", "SVG, one drawing per page")},
	} {
		options = append(options, f.option(f.stage.voice.Say(format.name), f.format == format.extension, true, func() {
			f.format = format.extension
			f.recall.SetExportFormat(format.extension)
		}))
	}
	return options
}

func (f *exportForm) resolutions() (options []look.Option) {
	for _, dpi := range pictureDPIs {
		options = append(options, f.option(f.stage.say("plain", "{0}", dpi), f.dpi == dpi, false, func() {
			f.dpi = dpi
			f.recall.SetExportDPI(dpi)
		}))
	}
	return options
}

// update shows what is chosen.
func (f *exportForm) update() {
	for _, c := range f.choices {
		c.Update()
	}
	look.ShowIf(f.resolves, f.format == ".png")
	f.yes.SetDisabled(len(f.pages) == 0)
	f.column.Refresh()
}

// layOut lays the pages out beside the window.
func (f *exportForm) layOut() {
	s := f.stage
	f.job++
	job, ix, result := f.job, f.of.Index(), f.of.Result()
	o := sheet.Options{Paper: f.paper, Scale: f.scale, Voice: s.voice, Reader: f.reader, Cover: paint.IsSet(f.format), Prices: s.Prices()}
	if f.isSince {
		list := revision.Compare(*s.older, revision.Side{Index: ix, Result: result})
		o.Since = &list
	}
	if f.second != nil {
		o.Second = &words.Voice{Catalogue: language.Catalogue(f.second.Tag), System: s.voice.System}
	}
	f.pages, f.only = nil, 0
	f.say("")
	f.update()
	go func() {
		pages, err := sheet.Build(ix, result, o)
		s.post(func() {
			if job == f.job && s.open == f.shown {
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
	f.paperOf.SetWords(f.stage.say("export.size", "{0}, true to scale: print it at 100 %.", f.paper.Size(f.stage.voice)))
	f.update()
}

// faultText says why the pages cannot be laid out, and what would do.
func (f *exportForm) faultText(err error) string {
	var large *sheet.FitError
	if !errors.As(err, &large) {
		return f.stage.ErrorText(err)
	}
	text := f.stage.say("export.large", "At {0}, {1} would take about {2} pages.", large.Scale.Words(f.stage.voice), large.Level, large.Pages)
	if len(large.Scales) > 0 {
		text += " " + f.stage.say("export.large.scale", "{0} would do.", large.Scales[0].Words(f.stage.voice))
	}
	if len(large.Papers) > 0 {
		text += " " + f.stage.say("export.large.paper", "So would paper of {0}.", large.Papers[0].Size(f.stage.voice))
	}
	return text
}

func (f *exportForm) say(wrong string) {
	f.wrong.SetWords(wrong)
	look.ShowIf(f.wrong, wrong != "")
	look.ShowIf(f.paperOf, wrong == "")
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
	s := f.stage
	f.shown.lower()
	s.AskFile(FileForm{
		Title: s.say("export.choose", "Save the sheets as"), Yes: s.say("answer.save", "Save"),
		Name: work.FileName(f.of.Title()) + f.format, Extensions: []string{f.format},
	}, func(path string) {
		s.export(f.of, sheetJob{pages: pages, path: work.WithExtension(path, f.format), dpi: f.dpi})
	})
}
