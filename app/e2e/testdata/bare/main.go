// Bare opens a window of the toolkit with a word in it and nothing else: what the first
// frame of the program is measured against.
package main

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/widget"
)

func main() {
	w := app.NewWithID("studbay-bare").NewWindow("Bare")
	w.SetContent(widget.NewLabel("Bare"))
	w.Resize(fyne.NewSize(1440, 900))
	w.ShowAndRun()
}
