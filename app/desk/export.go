package desk

import (
	"context"
	"errors"
	"strings"
	"time"

	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan/file"
	"studbay/plan/words"
	"studbay/render/paint"
	"studbay/render/scene"
	tables "studbay/render/table"
)

// sheetJob is an export under way: which pages, where to, and how.
type sheetJob struct {
	pages []*scene.Scene
	path  string
	dpi   int
}

// export writes sheets beside the window, with a bar that can be cancelled.
func (d *Desk) export(job sheetJob) {
	ctx, cancel := context.WithCancel(context.Background())
	bar := widget.NewProgressBar()
	width := look.Scaled(dialogWidth)
	var shown *raised
	stop := button(d.say("answer.cancel", "Cancel"), false, func() {
		cancel()
		shown.lower()
	})
	shown = d.raise(look.Column(look.Grid,
		look.NewParagraph(d.say("export.title", "Drawing the sheets"), look.Title, width),
		look.NewParagraph(work.ShortPath(job.path), look.Second, width), bar, buttonRow(stop)))
	d.window.Canvas().Focus(stop)
	d.busy = cancel
	options := paint.Options{Title: d.doc().Title(), Date: d.planDate(), DPI: job.dpi, Progress: func(share float64) {
		d.house.post(func() { bar.SetValue(share) })
	}}
	go func() {
		files, err := paint.Save(ctx, job.path, job.pages, options)
		d.house.post(func() {
			shown.lower()
			d.busy = nil
			d.exported(job.path, files, err)
		})
	}()
}

// planDate is the plan's own, so that one plan gives the same file each time.
func (d *Desk) planDate() time.Time {
	if h := d.doc().Plan().Header; h != nil {
		date, _ := time.Parse(time.DateOnly, h.Date)
		return date
	}
	return time.Time{}
}

func (d *Desk) exported(path string, files []string, err error) {
	switch {
	case errors.Is(err, context.Canceled) || d.session.IsClosed():
	case err != nil:
		d.trouble(d.say("export.failed", "The sheets could not be exported"), file.NotWritten(path, err))
	default:
		lines := make([]string, len(files))
		for i, f := range files {
			lines[i] = work.ShortPath(f)
		}
		d.tellWritten(files[0], strings.Join(lines, "\n"))
	}
}

// cancelExport stops an export under way.
func (d *Desk) cancelExport() {
	if d.busy != nil {
		d.busy()
	}
}

// exportSchedule asks for a file and writes the schedule of openings to it, in the form
// of the file's ending.
func (d *Desk) exportSchedule(extension string) {
	d.window.Canvas().Unfocus()
	d.choose(choosing{
		title: d.say("schedule.choose", "Write the opening schedule to"), yes: d.say("answer.write", "Write"),
		name: work.FileName(d.doc().Title()) + extension, extensions: []string{extension},
	}, func(path string) {
		path = work.WithExtension(path, extension)
		rows := tables.Schedule(d.doc().Index(), d.doc().Result(), words.Voice{Catalogue: d.voice.Catalogue, System: d.doc().System()})
		if err := tables.Save(path, rows); err != nil {
			d.trouble(d.say("schedule.failed", "The schedule could not be written"), file.NotWritten(path, err))
			return
		}
		d.tellWritten(path, work.ShortPath(path))
	})
}
