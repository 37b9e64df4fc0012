package desk

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

func TestADraggedDividerIsRemembered(t *testing.T) {
	b := newBench(t)
	was := b.shell.card.Size().Width
	divider := b.shell.dividers[divideCard]
	divider.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(-60, 0)})
	divider.DragEnd()
	if got := b.shell.card.Size().Width; got != was+60 {
		t.Errorf("the card is %v wide, want %v", got, was+60)
	}
	if got := b.prefs.sizes().Card; got != was+60 {
		t.Errorf("the width remembered is %v, want %v", got, was+60)
	}
	test.DoubleTap(divider)
	if got := b.shell.card.Size().Width; got != was {
		t.Errorf("a double click leaves %v, want the usual %v", got, was)
	}
}
