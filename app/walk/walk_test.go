package walk

import (
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/unit"
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

// The opening spoken of is in the picture, wherever it is in the room, also on a screen of
// 1366 × 768, where the picture is low, and in a window that becomes one.
func TestWhatIsSpokenOfIsInSight(t *testing.T) {
	w, window := shownOn(t, cottage(t), "")
	window.Resize(fyne.NewSize(900, 900))
	window.Resize(fyne.NewSize(1366, 768))
	for i := range 160 {
		if i == 80 {
			window.Resize(fyne.NewSize(1440, 900))
			w.tour.Enter(0)
			w.show()
		}
		o := w.tour.Opening()
		w.eye.items()
		found := false
		for _, m := range w.eye.marks {
			if m.ID == o.Opening.ID && m.At.X >= 0 && m.At.X <= w.eye.camera.Width && m.At.Y >= 0 && m.At.Y <= w.eye.camera.Height {
				found = true
			}
		}
		if !found && o.Opening.At.Part == plan.PartFace {
			t.Errorf("%s in the %s is out of sight at %v", o.Opening.Tag, w.tour.Room().Name, window.Canvas().Size())
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

// bottom is how far down the window an object reaches.
func bottom(o fyne.CanvasObject) float32 {
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(o).Y + o.Size().Height
}

// The answers and the note are in sight on a screen of 1366 × 768, where the plan above them
// is smaller; on a large one it is whole.
func TestTheAnswersAreInSight(t *testing.T) {
	w, window := shownOn(t, cottage(t), "")
	picture := func() *field {
		var found []*field
		eachObject(w.column, func(o fyne.CanvasObject) {
			if p, ok := o.(*field); ok {
				found = append(found, p)
			}
		})
		return found[0]
	}
	if tall := picture().Size().Height; tall != fieldTall {
		t.Errorf("on a large screen the plan is %v high, want %v", tall, fieldTall)
	}
	window.Resize(fyne.NewSize(1366, 768))
	for range 40 {
		o := w.tour.Opening()
		foot := bottom(w.column)
		if got := bottom(w.note); got > foot {
			t.Errorf("%s: the note reaches down to %v of %v", o.Opening.Tag, got, foot)
		}
		if p := picture(); p.Visible() && (p.Size().Height < leastField || bottom(p) > bottom(w.note)) {
			t.Errorf("%s: the plan is %v", o.Opening.Tag, p.Size())
		}
		w.stepBy(1)
	}
	keep(t, "walk-small", window)
	window.Resize(fyne.NewSize(1366, 560))
	if picture().Visible() {
		t.Errorf("on a low screen the plan is shown %v high", picture().Size().Height)
	}
}

func eachObject(o fyne.CanvasObject, do func(fyne.CanvasObject)) {
	do(o)
	switch o := o.(type) {
	case *fyne.Container:
		for _, in := range o.Objects {
			eachObject(in, do)
		}
	case fyne.Widget:
		for _, in := range test.WidgetRenderer(o).Objects() {
			eachObject(in, do)
		}
	}
}

// After Enter or Escape in the note the keys are those of the walk again, and it is kept.
func TestTheNoteGivesTheKeysBack(t *testing.T) {
	w, window := shownOn(t, cottage(t), "")
	about := w.tour.Opening().Opening.ID
	for _, key := range []fyne.KeyName{fyne.KeyReturn, fyne.KeyEscape} {
		w.Key(&fyne.KeyEvent{Name: fyne.KeyN})
		if window.Canvas().Focused() != w.note {
			t.Fatal("N does not go to the note")
		}
		w.note.SetText("by " + string(key))
		w.note.TypedKey(&fyne.KeyEvent{Name: key})
		if got := window.Canvas().Focused(); got != nil {
			t.Errorf("after %s %T has the keys", key, got)
		}
		if got := w.tour.Note(about); got != "by "+string(key) {
			t.Errorf("after %s the note is %q", key, got)
		}
	}
}

// The room in hand and the summary are in sight in a narrow window.
func TestTheRoomInHandIsInSight(t *testing.T) {
	w, window := shownOn(t, cottage(t), "")
	window.Resize(fyne.NewSize(900, 640))
	for i, r := range w.tour.rooms {
		w.enter(i)
		seen := map[string]bool{}
		eachObject(w.rooms, func(o fyne.CanvasObject) {
			if text, ok := o.(*look.Text); ok {
				left := fyne.CurrentApp().Driver().AbsolutePositionForObject(o).X
				if left >= 0 && left+o.Size().Width <= 900 {
					seen[text.Words()] = true
				}
			}
		})
		if !seen[r.Name] || !seen["Summary"] {
			t.Errorf("in %s there is in sight: %v", r.Name, seen)
		}
	}
}

// Rooms of two levels that are called the same are told apart.
func TestRoomsOfTwoLevelsAreToldApart(t *testing.T) {
	host := cottage(t)
	p := host.ix.Plan()
	level := plan.ID("vuppr2222")
	clip := arrange.LevelClip(p, p.Levels[0].ID)
	as := clip.IDs()
	for i, id := range as {
		as[i] = plan.ID(fmt.Sprintf("%cup%c%c%c222", id.Kind(), 'a'+i/64, 'a'+i/8%8, 'a'+i%8))
	}
	if err := host.Keep(arrange.CopyLevel{Clip: clip, As: as, ID: level, Title: "Upstairs", Elevation: 9 * unit.Foot}); err != nil {
		t.Fatal(err)
	}
	w, _ := shownOn(t, host, "")
	last := len(w.tour.rooms) - 1
	w.enter(last)
	if name := w.tour.rooms[last].Name; w.eye.title != name+", Upstairs" {
		t.Errorf("a room upstairs is called %q, want %q with its level", w.eye.title, name)
	}
}
