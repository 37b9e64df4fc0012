package walk

import (
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/plan"
)

// shownOn puts a walk on a screen that is not there.
func shownOn(t *testing.T, h Host, room plan.ID) (*Walk, fyne.Window) {
	t.Helper()
	app := test.NewTempApp(t)
	app.Settings().SetTheme(&look.Theme{Scale: 1})
	w := New(h, room)
	window := test.NewTempWindow(t, look.Back(look.OnPaper, 0, w.Object))
	window.SetPadded(false)
	window.Resize(fyne.NewSize(1440, 900))
	return w, window
}

// keep leaves a picture where STUDBAY_SHOTS names a folder.
func keep(t *testing.T, name string, window fyne.Window) {
	t.Helper()
	folder := os.Getenv("STUDBAY_SHOTS")
	if folder == "" {
		return
	}
	f, err := os.Create(filepath.Join(folder, name+".png"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, window.Canvas().Capture()); err != nil {
		t.Fatal(err)
	}
}

// A client goes on by keys, answers by keys, and turns on what a switch works.
func TestWalkByKeys(t *testing.T) {
	host := cottage(t)
	w, window := shownOn(t, host, "")
	press := func(name fyne.KeyName) { w.Key(&fyne.KeyEvent{Name: name}) }
	first := w.tour.Opening().Opening.ID
	press(fyne.KeyA)
	if got := w.tour.Answer(first); got != plan.WishAgreed {
		t.Errorf("A keeps %q", got)
	}
	press(fyne.KeyPageDown)
	second := w.tour.Opening().Opening.ID
	if second == first {
		t.Fatal("PageDown leads nowhere")
	}
	w.note.SetText("Two inches higher, please")
	press(fyne.KeyC)
	if w.tour.Answer(second) != plan.WishChange || w.tour.Note(second) != "Two inches higher, please" {
		t.Errorf("C keeps %q with %q", w.tour.Answer(second), w.tour.Note(second))
	}
	keep(t, "walk-answered", window)
	for range 200 {
		if len(w.tour.Opening().Lights) > 0 {
			break
		}
		press(fyne.KeySpace)
	}
	press(fyne.KeyL)
	if len(w.tour.Lit()) == 0 {
		t.Error("L lights nothing at a switch")
	}
	keep(t, "walk-lit", window)
	room := w.tour.Room().ID
	w.ByRoom(1)
	if w.tour.Room().ID == room {
		t.Error("the next room is the same")
	}
	keep(t, "walk-next-room", window)
}

// The opening spoken of is in the picture, wherever it is in the room.
func TestWhatIsSpokenOfIsInSight(t *testing.T) {
	w, _ := shownOn(t, cottage(t), "")
	for range 80 {
		o := w.tour.Opening()
		w.eye.items()
		found := false
		for _, m := range w.eye.marks {
			if m.ID == o.Opening.ID && m.At.X >= 0 && m.At.X <= w.eye.camera.Width {
				found = true
			}
		}
		if !found && o.Opening.At.Part == plan.PartFace {
			t.Errorf("%s in the %s is out of sight", o.Opening.Tag, w.tour.Room().Name)
		}
		w.tour.Step(1)
		w.show()
	}
}

func TestDraggingTurnsTheView(t *testing.T) {
	w, _ := shownOn(t, cottage(t), "")
	was := w.eye.camera.Bearing
	w.eye.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(w.eye.Size().Width/2, 0)})
	// Half of the width is half of the field, and the room follows the pointer.
	turned := was - w.eye.camera.Bearing
	for turned < 0 {
		turned += 360
	}
	if want := w.eye.camera.Field / 2; turned < want-0.01 || turned > want+0.01 {
		t.Errorf("a drag by half of the picture turns by %v, want %v", turned, want)
	}
}
