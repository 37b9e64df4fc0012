// Package windowtest is what tests of the window share: the toolkit's test application
// kept to one goroutine, and eyes and a finger for what is in sight. It is for tests only.
package windowtest

import (
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
)

// Queue is what comes back to the window from beside it.
type Queue chan func()

// Until runs what comes back until done holds.
func (q Queue) Until(t *testing.T, what string, done func() bool) {
	t.Helper()
	deadline := time.After(20 * time.Second)
	for !done() {
		select {
		case f := <-q:
			f()
		case <-deadline:
			t.Fatalf("waited in vain for %s", what)
		}
	}
}

// queuedApp is the test application with a driver that keeps to one goroutine: the
// toolkit's own test driver runs what comes back on the goroutine it comes from.
type queuedApp struct {
	fyne.App
	driver queuedDriver
}

func (a queuedApp) Driver() fyne.Driver { return a.driver }

type queuedDriver struct {
	fyne.Driver
	queue Queue
}

func (d queuedDriver) DoFromGoroutine(f func(), _ bool) { d.queue <- f }

// NewApp makes the current application one whose fyne.Do puts into the queue returned.
func NewApp(t *testing.T) (fyne.App, Queue) {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	queue := make(Queue, 10_000)
	queued := queuedApp{app, queuedDriver{app.Driver(), queue}}
	fyne.SetCurrentApp(queued)
	return queued, queue
}

// Walk visits what is visible, outer things first.
func Walk(o fyne.CanvasObject, visit func(fyne.CanvasObject)) {
	walk(o, fyne.CanvasObject.Visible, visit)
}

// WalkAll visits all there is, also what is folded away, outer things first.
func WalkAll(o fyne.CanvasObject, visit func(fyne.CanvasObject)) {
	walk(o, func(fyne.CanvasObject) bool { return true }, visit)
}

func walk(o fyne.CanvasObject, into func(fyne.CanvasObject) bool, visit func(fyne.CanvasObject)) {
	if o == nil || !into(o) {
		return
	}
	visit(o)
	switch w := o.(type) {
	case *fyne.Container:
		for _, child := range w.Objects {
			walk(child, into, visit)
		}
	case fyne.Widget:
		for _, child := range test.WidgetRenderer(w).Objects() {
			walk(child, into, visit)
		}
	}
}

// All lists what is visible of a type, outer things first.
func All[T fyne.CanvasObject](in fyne.CanvasObject) (all []T) {
	Walk(in, func(o fyne.CanvasObject) {
		if w, ok := o.(T); ok {
			all = append(all, w)
		}
	})
	return all
}

// TextOf collects all text in sight.
func TextOf(o fyne.CanvasObject) string { return textOf(o, Walk) }

// AllTextOf collects all text, also what is folded away.
func AllTextOf(o fyne.CanvasObject) string { return textOf(o, WalkAll) }

func textOf(o fyne.CanvasObject, walk func(fyne.CanvasObject, func(fyne.CanvasObject))) string {
	var all []string
	walk(o, func(o fyne.CanvasObject) {
		switch w := o.(type) {
		case *look.Text:
			all = append(all, w.Words())
		case *look.Paragraph:
			all = append(all, w.Words())
		}
	})
	return strings.Join(all, "\n")
}

// Press presses the first thing whose text holds words.
func Press(t *testing.T, in fyne.CanvasObject, words string) {
	t.Helper()
	for _, p := range All[*look.Press](in) {
		if strings.Contains(TextOf(p.Content), words) {
			test.Tap(p)
			return
		}
	}
	t.Fatalf("nothing to press says %q in:\n%s", words, TextOf(in))
}

// Dialog returns what stands above a window.
func Dialog(t *testing.T, w fyne.Window) fyne.CanvasObject {
	t.Helper()
	top := w.Canvas().Overlays().Top()
	if top == nil {
		t.Fatal("no dialog in sight")
	}
	return top
}

// NoDialog fails where something stands above a window.
func NoDialog(t *testing.T, w fyne.Window) {
	t.Helper()
	if top := w.Canvas().Overlays().Top(); top != nil {
		t.Fatalf("a dialog in sight:\n%s", TextOf(top))
	}
}

// Faults lists what is said in sight in the tone of a stop.
func Faults(in fyne.CanvasObject) (said []string) {
	for _, p := range All[*look.Paragraph](in) {
		if p.Tone() == look.Stop && p.Words() != "" {
			said = append(said, p.Words())
		}
	}
	return said
}
