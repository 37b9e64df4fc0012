package dialog

import (
	"context"
	"errors"
	"strings"

	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/fill/takeoff"
	"studbay/plan/file"
	"studbay/plan/heap"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/paint"
	"studbay/render/scene"
	tables "studbay/render/table"
)

// Source is what is exported: a plan and its findings as they are when asked.
type Source interface {
	Index() *index.Index
	Result() fill.Result
	System() unit.System
	Title() string
}

// ExportMemory remembers how sheets were written last.
type ExportMemory interface {
	Paper() string
	SetPaper(name string)
	ExportFormat() string // the ending of the file
	SetExportFormat(extension string)
	ExportDPI() int
	SetExportDPI(dpi int)
}

// sheetJob is an export under way: which pages, where to, and how.
type sheetJob struct {
	pages []*scene.Scene
	path  string
	dpi   int
}

// export writes sheets beside the window, with a bar that can be cancelled.
func (s *Stage) export(of Source, job sheetJob) {
	ctx, cancel := context.WithCancel(context.Background())
	bar := widget.NewProgressBar()
	width := look.Scaled(dialogWidth)
	var shown *raised
	stop := button(s.say("answer.cancel", "Cancel"), false, func() {
		cancel()
		shown.lower()
	})
	shown = s.raise(look.Column(look.Grid,
		look.NewParagraph(s.say("export.title", "Drawing the sheets"), look.Title, width),
		look.NewParagraph(work.ShortPath(job.path), look.Second, width), bar, buttonRow(stop)))
	s.canvas().Focus(stop)
	s.cancel = cancel
	pages := ownPages(job.pages)
	options := paint.Options{Title: of.Title(), Date: of.Index().Plan().Header.Day(), DPI: job.dpi, Spend: true, Progress: func(share float64) {
		s.post(func() { bar.SetValue(share) })
	}}
	go func() {
		defer heap.Sparingly()()
		files, err := paint.Save(ctx, job.path, pages, options)
		s.post(func() {
			shown.lower()
			s.cancel = nil
			s.exported(job.path, files, err)
		})
	}()
}

// ownPages returns the pages as an export may spend them: the preview of a form may still
// be drawing its own.
func ownPages(pages []*scene.Scene) []*scene.Scene {
	own := make([]*scene.Scene, len(pages))
	for i, p := range pages {
		page := *p
		own[i] = &page
	}
	return own
}

func (s *Stage) exported(path string, files []string, err error) {
	switch {
	case errors.Is(err, context.Canceled) || s.closed:
	case err != nil:
		s.Trouble(s.say("export.failed", "The sheets could not be exported"), file.NotWritten(path, err))
	default:
		lines := make([]string, len(files))
		for i, f := range files {
			lines[i] = work.ShortPath(f)
		}
		s.tellWritten(files[0], strings.Join(lines, "\n"))
	}
}

// ExportSchedule asks for a file and writes the schedule of openings to it, in the form
// of the file's ending.
func (s *Stage) ExportSchedule(of Source, extension string) {
	s.exportTable(s.say("schedule.choose", "Save the opening schedule as"), work.FileName(of.Title())+extension, extension, func() tables.Table {
		return tables.Schedule(of.Index(), of.Result(), s.voiceOf(of))
	})
}

// ExportParts asks for a file and writes one of the lists that follow from the parts of a
// plan to it.
func (s *Stage) ExportParts(of Source, list tables.List, extension string) {
	fig := of.Result().Figures
	if fig == nil {
		s.Tell(s.voice.Say(list.Title), s.voice.Say(of.Result().NotChecked()))
		return
	}
	name := work.FileName(of.Title()) + " " + list.ID + extension
	s.exportTable(s.say("parts.choose", "Save the list as"), name, extension, func() tables.Table {
		whole := takeoff.NewTaker(of.Index(), fig, s.Prices()).Whole(of.Index().Plan())
		return (&tables.Lists{Index: of.Index(), Takeoff: whole, Voice: s.voiceOf(of)}).Of(list)
	})
}

func (s *Stage) voiceOf(of Source) words.Voice {
	return words.Voice{Catalogue: s.voice.Catalogue, System: of.System()}
}

// exportTable asks for a file and writes a table to it.
func (s *Stage) exportTable(title, name, extension string, rows func() tables.Table) {
	s.canvas().Unfocus()
	s.AskFile(FileForm{
		Title: title, Yes: s.say("answer.save", "Save"), Name: name, Extensions: []string{extension},
	}, func(path string) {
		path = work.WithExtension(path, extension)
		if err := tables.Save(path, rows()); err != nil {
			s.Trouble(s.say("schedule.failed", "The schedule could not be written"), file.NotWritten(path, err))
			return
		}
		s.tellWritten(path, work.ShortPath(path))
	})
}
