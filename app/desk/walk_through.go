package desk

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/look"
	client "studbay/app/walk"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

var _ client.Host = (*walking)(nil)

// walking is the walk-through of a document in a window of its own, over the whole screen.
type walking struct {
	desk   *Desk
	window fyne.Window
}

// Index implements client.Host.
func (w *walking) Index() *index.Index { return w.desk.doc().Index() }

// Voice implements client.Host.
func (w *walking) Voice() words.Voice { return w.desk.voice.Voice }

// Keep implements client.Host: the client's word is a step that can be undone.
func (w *walking) Keep(e edit.Edit) error { return w.desk.doc().Do(e) }

// Today implements client.Host.
func (w *walking) Today() string { return time.Now().Format(time.DateOnly) }

// Leave implements client.Host.
func (w *walking) Leave() { w.window.Close() }

// walkThrough shows the walk, beginning in the room in hand.
func (d *Desk) walkThrough() {
	w := &walking{desk: d, window: d.house.app.NewWindow(d.doc().Title())}
	var room plan.ID
	if r, _ := d.view.roomInHand(); r != nil {
		room = r.ID
	}
	shown := client.New(w, room)
	w.window.SetPadded(false)
	w.window.SetContent(look.Back(look.OnPaper, 0, shown.Object))
	on := w.window.Canvas()
	on.SetOnTypedKey(shown.Key)
	for key, by := range map[fyne.KeyName]int{fyne.KeyRight: 1, fyne.KeyLeft: -1} {
		on.AddShortcut(&desktop.CustomShortcut{KeyName: key, Modifier: fyne.KeyModifierControl}, func(fyne.Shortcut) { shown.ByRoom(by) })
	}
	w.window.Resize(fyne.NewSize(1440, 900))
	w.window.SetFullScreen(true)
	w.window.Show()
}
