package shell

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/assets/messages"
	"studbay/plan/words"
)

// How to begin stands whole on the board of a small window, clear of the tapes, in both
// languages: else what takes it away for good cannot be reached.
func TestHowToBeginIsWholeInASmallWindow(t *testing.T) {
	test.NewTempApp(t).Settings().SetTheme(&look.Theme{Mode: look.LightMode})
	data, err := messages.Files.ReadFile("es.json")
	if err != nil {
		t.Fatal(err)
	}
	spanish, err := words.Load(data)
	if err != nil {
		t.Fatal(err)
	}
	// A screen of 1024 by 640 with the usual bar of a window's title on it.
	board := placesIn(fyne.NewSize(1024, 620), Shown{Unfold: true, Card: true}, Sizes{}).Board.Size
	const tape = 22
	for name, voice := range map[string]words.Voice{"English": {}, "Spanish": {Catalogue: spanish}} {
		steps := NewFirstSteps(voice, func() {}, func(string) bool { return true }, func() {})
		over := steps.Over(canvas.NewRectangle(nil), tape)
		over.Resize(board)
		at, size := steps.object.Position(), steps.object.Size()
		if at.X < tape || at.Y < tape || at.X+size.Width > board.Width || at.Y+size.Height > board.Height {
			t.Errorf("%s: the card of %v stands at %v on a board of %v", name, size, at, board)
		}
	}
}
