package dialog

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"

	"studbay/app/help"
	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/fill"
)

// TestHelpIsSearched opens the help, looks for a word and turns to another page.
func TestHelpIsSearched(t *testing.T) {
	s := newStand(t)
	s.ShowHelp("en", "", nil)
	shown := func() fyne.CanvasObject { return windowtest.Dialog(t, s.window) }
	if text := windowtest.TextOf(shown()); !strings.Contains(text, "Take the Room tool") {
		t.Errorf("it opens with\n%s\nwant the first room", text)
	}
	if len(windowtest.All[*canvas.Image](shown())) != 1 {
		t.Error("the first page has no picture")
	}
	find := windowtest.All[*look.Entry](shown())[0]
	if s.canvas().Focused() != fyne.Focusable(find) {
		t.Error("the search has not the focus")
	}
	test.Type(find, "clamps")
	if text := windowtest.TextOf(shown()); !strings.Contains(text, "Internal clamps count once") || strings.Contains(text, "Your first room") {
		t.Errorf("after a search it shows\n%s\nwant the page of boxes, and only pages that have the word", text)
	}
	find.SetText("zzz")
	if text := windowtest.TextOf(shown()); !strings.Contains(text, "No page has that") {
		t.Errorf("with nothing found it shows\n%s", text)
	}
	find.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	windowtest.Press(t, shown(), "Sheets")
	if text := windowtest.TextOf(shown()); !strings.Contains(text, "Sheets are what you hand over") {
		t.Errorf("a page chosen shows\n%s", text)
	}
	if s.open == nil {
		t.Fatal("Escape has closed the help while something was looked for")
	}
	find.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if s.open != nil {
		t.Error("Escape with nothing looked for leaves the help open")
	}
}

// TestHelpSaysWhatIsChecked opens the page that is made from the rules.
func TestHelpSaysWhatIsChecked(t *testing.T) {
	s := newStand(t)
	s.ShowHelp("en", help.Checked, nil)
	text := windowtest.TextOf(windowtest.Dialog(t, s.window))
	for _, r := range fill.Rules {
		if !strings.Contains(text, r.Title.English) {
			t.Errorf("%s is not told", r.ID)
		}
	}
}
