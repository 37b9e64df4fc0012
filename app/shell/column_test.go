package shell

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/fill"
	"studbay/plan"
	"studbay/render/rendertest"
)

// A card made anew for another status has its folds as they were and stays where it was scrolled
// to; that of another opening begins with its own.
func TestACardMadeAnewKeepsItsFolds(t *testing.T) {
	app := test.NewTempApp(t)
	app.Settings().SetTheme(&look.Theme{Mode: look.LightMode})
	b := rendertest.NewBuilder(t)
	room := b.Box("Den", plan.UseDen, 0, 0, 144, 120)
	o, other := b.On("D1", "duplex", room, 0, 36, 16), b.On("D2", "duplex", room, 0, 100, 16)
	ix, chosen := b.Index(), o.ID
	c := NewColumn(func() (bind.Context, []plan.ID) {
		r, err := fill.Check(ix)
		if err != nil {
			t.Fatal(err)
		}
		return bind.Context{Index: ix, Result: r}, []plan.ID{chosen}
	})
	window := test.NewTempWindow(t, c.Object)
	window.Resize(fyne.NewSize(360, 400))
	folds := func() (more *bind.Fold) {
		for _, f := range windowtest.All[*bind.Fold](c.card.Object()) {
			if strings.HasPrefix(strings.TrimSpace(windowtest.TextOf(f)), "More") {
				more = f
			}
		}
		return more
	}
	c.Refresh()
	was, card := folds(), c.card
	was.SetOpen(true)
	c.scroll.ScrollToOffset(fyne.NewPos(0, 80))
	o.Status = plan.StatusExisting
	ix = b.Index()
	c.Refresh()
	if c.card == card {
		t.Fatal("the card is the same for another status")
	}
	if !folds().IsOpen() || c.scroll.Offset.Y == 0 {
		t.Errorf("made anew, what was opened is open: %v, scrolled to %v", folds().IsOpen(), c.scroll.Offset.Y)
	}
	chosen = other.ID
	c.Refresh()
	if folds().IsOpen() || c.scroll.Offset.Y != 0 {
		t.Errorf("of another, it is open: %v, scrolled to %v", folds().IsOpen(), c.scroll.Offset.Y)
	}
}
