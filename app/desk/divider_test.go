package desk

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/app/windowtest"
)

// dividers are those of the unfolded room, the drawer and the card.
func (b *bench) dividers() []*look.Divider {
	b.hand.takeByID("opening") // for its drawer
	return windowtest.All[*look.Divider](b.window.Content())
}

func TestADraggedDividerIsRemembered(t *testing.T) {
	b := newBench(t)
	divider := b.dividers()[2]
	was := b.panels.Card.Size().Width
	divider.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(-60, 0)})
	divider.DragEnd()
	if got := b.panels.Card.Size().Width; got != was+60 {
		t.Errorf("the card is %v wide, want %v", got, was+60)
	}
	if got := b.prefs.Sizes().Card; got != was+60 {
		t.Errorf("the width remembered is %v, want %v", got, was+60)
	}
	test.DoubleTap(divider)
	if got := b.panels.Card.Size().Width; got != was {
		t.Errorf("a double click leaves %v, want the usual %v", got, was)
	}
}
