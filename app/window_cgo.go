//go:build cgo

package main

import (
	"errors"
	"fmt"
	"os"
	"runtime"
	"sync/atomic"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"studbay/app/desk"
	_ "studbay/app/locale" // before the toolkit looks for a language
	"studbay/app/verb"
	"studbay/plan/heap"
)

// appID names the program's settings on a machine.
const appID = "studbay"

// openWindow opens the window on the plans' files named, or on an empty plan, and
// returns once the last window has closed.
func openWindow(paths []string) int {
	app.SetMetadata(fyne.AppMetadata{
		ID: appID, Name: "Studbay", Icon: desk.Icon(),
		// All that runs beside the window comes back by fyne.Do.
		Migrations: map[string]bool{"fyneDo": true},
	})
	// X11 takes the window's class from here; the desktop entry names the same.
	os.Setenv("RESOURCE_NAME", appID)
	program := app.NewWithID(appID)
	program.SetIcon(desk.Icon())
	shown := heap.Never() // nothing that the first frame makes is garbage yet
	house, err := opened(program, paths)
	shown()
	if err != nil {
		fmt.Fprintln(os.Stderr, "studbay: no window can be opened:", err)
		fmt.Fprintln(os.Stderr, "It needs a display with OpenGL. The verbs need none: studbay --help lists them.")
		return verb.StatusWrong
	}
	runWindows(program)
	house.Close()
	return 0
}

// runWindows shows them until the last has closed.
//
// The toolkit hands its last work, the writing of the settings, to its main loop just
// as that ends. Where the loop drains what waits before that work has come, nobody does
// it, and the program waits for it forever. So it is taken out of the loop's hands and
// done here, once the loop has ended.
func runWindows(program fyne.App) {
	last := takeLastWork(program)
	var changed atomic.Int64
	program.Preferences().AddChangeListener(func() { changed.Store(time.Now().UnixNano()) })
	program.Run()
	if time.Since(time.Unix(0, changed.Load())) < settling {
		last()
	}
}

// settling is how long after a change the toolkit may still have to write the settings.
// Written after that once more for nothing, it would read its own half-written file now
// and then, and complain.
const settling = 300 * time.Millisecond

// takeLastWork returns what the toolkit would do as its loop ends, and takes it away
// from there. The toolkit has both methods, though its interface does not say so; a
// test holds that it does.
func takeLastWork(program fyne.App) func() {
	cycle, ok := program.Lifecycle().(interface {
		OnStopped() func()
		SetOnStoppedHookExecuted(func())
	})
	if !ok {
		return func() {}
	}
	last := cycle.OnStopped()
	if last == nil {
		return func() {}
	}
	cycle.SetOnStoppedHookExecuted(nil)
	return last
}

// opened opens the windows. Without a display the toolkit's driver panics: that is no
// fault of ours and is told as an error.
func opened(program fyne.App, paths []string) (house *desk.House, err error) {
	defer func() {
		if r := recover(); r != nil {
			var fault runtime.Error
			if cause, ok := r.(error); ok && !errors.As(cause, &fault) {
				err = cause
				return
			}
			panic(r)
		}
	}()
	return desk.Open(program, paths), nil
}
