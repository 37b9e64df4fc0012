package dialog

import (
	"testing"

	"fyne.io/fyne/v2"
	toolkit "fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"studbay/app/windowtest"
)

// TestTheToolkitsOwnChoiceOfFilesStillFallsShort holds the reasons that the package
// comment gives for a choice of files of our own. Where it fails the toolkit has caught
// up: try its own again.
func TestTheToolkitsOwnChoiceOfFilesStillFallsShort(t *testing.T) {
	s := newStand(t)
	open := toolkit.NewFileOpen(func(fyne.URIReadCloser, error) {}, s.window)
	open.Show()
	if n := len(windowtest.All[*widget.Entry](windowtest.Dialog(t, s.window))); n != 0 {
		t.Errorf("it has %d lines to write a path in, as from a message", n)
	}
	open.Hide()

	s.AskFile(FileForm{Title: "Open", Yes: "Open", Open: true, Extensions: []string{".studbay"}}, func(string) {})
	if n := len(entries(s.dialog())); n != 1 {
		t.Errorf("ours has %d lines to write a path in, want one", n)
	}
}
