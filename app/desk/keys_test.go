package desk

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/windowtest"
	"studbay/plan"
)

func TestKeysAreNamedInTheLanguage(t *testing.T) {
	b := newBench(t)
	for tag, want := range map[string]string{"en": "Ctrl+Shift+S Del Enter", "es": "Ctrl+Mayús+S Supr Enter"} {
		b.prefs.SetLanguage(tag)
		b.house.rebuildAll()
		got := shell.Keys{Mod: fyne.KeyModifierControl | shift, Key: fyne.KeyS}.Said(b.voice.Voice) + " " +
			shell.Keys{Key: fyne.KeyDelete}.Said(b.voice.Voice) + " " + shell.Keys{Key: fyne.KeyReturn}.Said(b.voice.Voice)
		if got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
	}
}

// strike gives a key and its character as the toolkit does: to what has the focus, else to
// the window.
func (b *bench) strike(name fyne.KeyName, text string) {
	on := b.window.Canvas()
	if f := on.Focused(); f != nil {
		f.TypedKey(&fyne.KeyEvent{Name: name})
	} else {
		on.OnTypedKey()(&fyne.KeyEvent{Name: name})
	}
	for _, r := range text {
		if f := on.Focused(); f != nil {
			f.TypedRune(r)
		} else {
			on.OnTypedRune()(r)
		}
	}
}

// A length typed while something is placed changes neither tool nor zoom, whether the board
// has the focus or nothing has.
func TestALengthTypedIsNoCommand(t *testing.T) {
	for _, isFocused := range []bool{true, false} {
		b := newBench(t)
		b.dirty()
		b.hand.TakeKind("duplex")
		if !isFocused {
			b.window.Canvas().Unfocus()
		}
		zoom, inHand := b.view.board.Scale(), b.hand.inHand
		for _, r := range `4-1/2"1.2 m90cm` {
			b.strike(fyne.KeyName(strings.ToUpper(string(r))), string(r))
		}
		if b.hand.inHand != inHand || b.view.board.Scale() != zoom {
			t.Errorf("focus on the board %v: tool %d became %d, scale %v %v", isFocused, inHand, b.hand.inHand, zoom, b.view.board.Scale())
		}
		if b.strike(fyne.KeyEscape, ""); b.hand.inHand != inHand {
			t.Error("Escape leaves the tool where it should take back what was typed")
		}
	}
}

func TestKeysComeBackToTheBoard(t *testing.T) {
	b := newBench(t)
	b.dirty()
	on := b.window.Canvas()
	board := fyne.Focusable(b.view.board)
	field := windowtest.All[*look.Field](b.column.Object)[0]
	on.Focus(field.Entry())
	field.Entry().SetText("Shed two")
	if b.strike(fyne.KeyReturn, ""); on.Focused() != board {
		t.Errorf("after Enter in a field %T has the keys", on.Focused())
	}
	on.Focus(windowtest.All[*look.Field](b.column.Object)[0].Entry())
	if b.hand.Take(1); on.Focused() != board {
		t.Errorf("after a tool was taken %T has the keys", on.Focused())
	}
}

// A click beside a dialog takes the focus from it; its keys work on.
func TestADialogKeepsItsKeysAfterAClickBesideIt(t *testing.T) {
	b := newBench(t)
	b.dirty()
	on := b.window.Canvas()
	b.run("room-by-size")
	on.Unfocus()
	if b.strike(fyne.KeyEscape, ""); b.stage.IsOpen() {
		t.Error("Escape does not close a form that was clicked beside")
	}
	answered := 0
	b.stage.Ask(dialog.Question{Title: "Well?", Answers: []dialog.Answer{{Label: "No"}, {Label: "Yes", Do: func() { answered++ }}}})
	on.Unfocus()
	if b.strike(fyne.KeyReturn, ""); answered != 1 || b.stage.IsOpen() {
		t.Errorf("Enter answered %d times, open %v", answered, b.stage.IsOpen())
	}
}

func TestTheMenusOpenByKeys(t *testing.T) {
	b := newBench(t)
	on := b.window.Canvas()
	isOpen := func() bool { return on.Overlays().Top() != nil }
	altKey, other := &fyne.KeyEvent{Name: desktop.KeyAltLeft}, &fyne.KeyEvent{Name: fyne.KeyF}
	b.keys.down(altKey)
	if b.keys.up(altKey); !isOpen() {
		t.Error("Alt opens no menu")
	}
	b.strike(fyne.KeyEscape, "")
	if isOpen() {
		t.Fatal("Escape leaves the menu open")
	}
	b.keys.down(altKey)
	b.keys.down(other)
	if b.keys.up(altKey); isOpen() {
		t.Error("Alt with another key opens a menu")
	}
	if b.strike(fyne.KeyF10, ""); !isOpen() {
		t.Error("F10 opens no menu")
	}
	b.strike(fyne.KeyEscape, "")
	b.dirty()
	on.Focus(windowtest.All[*look.Field](b.column.Object)[0].Entry())
	if b.strike(fyne.KeyF10, ""); !isOpen() {
		t.Error("F10 in a field opens no menu")
	}
}

// A room that was typed too small and is not meant gives back the form as it was filled in.
func TestTheFormComesBackWhereATinyRoomIsNotMeant(t *testing.T) {
	b := newBench(t)
	b.run("room-by-size")
	for i, text := range []string{"Powder room", "5 in", "6 in"} {
		b.entries(b.dialog())[i].SetText(text)
	}
	b.take(b.choice(b.dialog(), "Use"), "Closet")
	b.press(b.dialog(), "Draw it")
	b.press(b.dialog(), "Cancel")
	if !b.stage.IsOpen() {
		t.Fatal("the form is gone")
	}
	var got []string
	for _, e := range b.entries(b.dialog()) {
		got = append(got, e.Text)
	}
	if want := []string{"Powder room", "5 in", "6 in"}; !slices.Equal(got, want) {
		t.Errorf("the form holds %q, want %q", got, want)
	}
	if said := textOf(b.choice(b.dialog(), "Use")); !strings.Contains(said, "Closet") {
		t.Errorf("the use chosen by hand is gone: %s", said)
	}
	if n := b.doc().Plan().Levels[0].Rooms.Len(); n != 0 {
		t.Errorf("%d rooms were drawn", n)
	}
	b.entries(b.dialog())[0].SetText("Bath")
	if said := textOf(b.choice(b.dialog(), "Use")); !strings.Contains(said, "Closet") {
		t.Errorf("the use chosen by hand follows the name: %s", said)
	}
	b.press(b.dialog(), "Draw it")
	b.press(b.dialog(), "Draw it")
	b.noDialog()
	if got := b.onlyRoom(); got.Name != "Bath" || got.Use != plan.UseCloset {
		t.Errorf("drawn is %s, a %s", got.Name, got.Use)
	}
}
