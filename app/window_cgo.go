//go:build cgo

package main

import (
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"studbay/app/desk"
	_ "studbay/app/quiet" // before the toolkit looks for a language
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
	house := desk.Open(program, paths)
	program.Run()
	house.Close()
	return 0
}
