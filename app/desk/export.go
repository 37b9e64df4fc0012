package desk

import (
	"context"
	"errors"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/plan"
)

// exporting is one export under way: what, where to, and how to be told of progress.
type exporting struct {
	index *plan.Index
	desk  *Desk
	path  string
	// progress may be called from any goroutine with the share done, 0 to 1.
	progress func(float64)
}

// chooseExport asks for a file and exports the sheets to it.
func (d *Desk) chooseExport(extension string) {
	d.commitField()
	d.choose(fileName(d.doc.Title())+extension, []string{extension}, func(path string) {
		d.export(withExtension(path, extension))
	})
}

// export writes the sheets beside the window, with a bar that can be cancelled.
func (d *Desk) export(path string) {
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
		look.NewParagraph(shortPath(path), look.Second, width), bar, buttonRow([]*look.Press{stop})))
	d.window.Canvas().Focus(stop)
	d.busy = cancel
	job := exporting{index: d.doc.Index(), desk: d, path: path, progress: func(share float64) {
		d.house.post(func() { bar.SetValue(share) })
	}}
	result := d.doc.Result()
	voice := d.voice
	go func() {
		files, err := writeSheets(ctx, job, result, voice)
		d.house.post(func() {
			shown.lower()
			d.busy = nil
			d.exported(files, err)
		})
	}()
}

func (d *Desk) exported(files []string, err error) {
	switch {
	case errors.Is(err, context.Canceled) || d.closed:
	case err != nil:
		d.trouble(d.say("export.failed", "The sheets could not be exported"), err)
	default:
		var lines []string
		for _, f := range files {
			lines = append(lines, shortPath(f))
		}
		d.tell(d.say("export.done", "{0} written", filepath.Base(files[0])), strings.Join(lines, "\n"))
	}
}

// cancelExport stops an export under way.
func (d *Desk) cancelExport() {
	if d.busy != nil {
		d.busy()
	}
}
