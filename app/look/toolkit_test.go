package look

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

// TestTheToolkitsOwnMenuStillFallsShort holds the reasons that the package comment gives
// for a menu of our own. Where it fails the toolkit has caught up: try its own again.
func TestTheToolkitsOwnMenuStillFallsShort(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	app.Settings().SetTheme(&Theme{Mode: LightMode, Scale: 1})
	const lines = 60 // as many as there are kinds of opening
	window := func() fyne.Window {
		w := app.NewWindow("")
		w.Resize(fyne.NewSize(800, 600))
		t.Cleanup(w.Close)
		return w
	}

	w := window()
	took := ""
	items := make([]*fyne.MenuItem, lines)
	for i := range items {
		name := fmt.Sprintf("%c %d", 'A'+rune(i%26), i)
		items[i] = fyne.NewMenuItem(name, func() { took = name })
	}
	theirs := widget.NewPopUpMenu(fyne.NewMenu("", items...), w.Canvas())
	theirs.ShowAtPosition(fyne.NewPos(0, 0))
	theirs.TypedRune('c')
	theirs.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if took != "" {
		t.Errorf("a letter goes to the line %q it begins", took)
	}

	w = window()
	mine := make([]MenuItem, lines)
	for i := range mine {
		name := fmt.Sprintf("%c %d", 'A'+rune(i%26), i)
		mine[i] = MenuItem{Label: name, Do: func() { took = name }}
	}
	ShowMenu(w.Canvas(), fyne.NewPos(0, 0), 0, mine)
	w.Canvas().Focused().TypedRune('c')
	w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if took != "C 2" {
		t.Errorf("with ours a letter and Enter took %q, want the first that begins with it", took)
	}
}
