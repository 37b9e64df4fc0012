package desk

import (
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/unit"
)

// bench is a window under test, with the queue of what comes back from beside it.

type bench struct {
	*Desk
	t     *testing.T
	queue chan func()
}

// queuedApp is the test application with a driver that keeps to one goroutine: the

// toolkit's own test driver runs what comes back on the goroutine it comes from.

type queuedApp struct {
	fyne.App
	driver queuedDriver
}

func (a queuedApp) Driver() fyne.Driver { return a.driver }

type queuedDriver struct {
	fyne.Driver
	queue chan func()
}

func (d queuedDriver) DoFromGoroutine(f func(), _ bool) { d.queue <- f }

// newBench opens a window on the toolkit's test driver.

func newBench(t *testing.T) *bench {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	b := &bench{t: t, queue: make(chan func(), 10_000)}
	queued := queuedApp{app, queuedDriver{app.Driver(), b.queue}}
	fyne.SetCurrentApp(queued)
	h := &House{app: queued, post: fyne.Do}
	h.shop = work.NewShop(t.TempDir(), h.post, h.keepFailed)
	h.applyTheme()
	b.Desk = newDesk(h)
	h.desks = append(h.desks, b.Desk)
	b.window.Resize(fyne.NewSize(1440, 900))
	t.Cleanup(h.Close)
	return b
}

// until runs what comes back until done holds.

func (b *bench) until(what string, done func() bool) {
	b.t.Helper()
	deadline := time.After(20 * time.Second)
	for !done() {
		select {
		case f := <-b.queue:
			f()
		case <-deadline:
			b.t.Fatalf("waited in vain for %s", what)
		}
	}
}

// checked waits for the findings of the plan as it is.

func (b *bench) checked() {
	b.t.Helper()
	b.until("the findings", func() bool {
		return b.doc().IsChecked()
	})
}

// room draws a room of a width and depth and waits for its findings.

func (b *bench) room(w, h unit.Length) plan.ID {
	b.t.Helper()
	if err := b.addRoom("Den", w, h); err != nil {
		b.t.Fatal(err)
	}
	b.checked()
	return b.doc().Selection()[0]
}

// words collects all text in sight.

func textOf(o fyne.CanvasObject) string {
	var all []string
	walk(o, func(o fyne.CanvasObject) {
		switch w := o.(type) {
		case *look.Text:
			all = append(all, w.Words())
		case *look.Paragraph:
			all = append(all, w.Words())
		}
	})
	return strings.Join(all, "\n")
}

// walk visits what is visible, outer things first.

func walk(o fyne.CanvasObject, visit func(fyne.CanvasObject)) {
	if o == nil || !o.Visible() {
		return
	}
	visit(o)
	switch w := o.(type) {
	case *fyne.Container:
		for _, child := range w.Objects {
			walk(child, visit)
		}
	case fyne.Widget:
		for _, child := range test.WidgetRenderer(w).Objects() {
			walk(child, visit)
		}
	}
}

// press presses the thing whose text holds words.

func (b *bench) press(in fyne.CanvasObject, words string) {
	b.t.Helper()
	var found *look.Press
	walk(in, func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok && found == nil && strings.Contains(textOf(p.Content), words) {
			found = p
		}
	})
	if found == nil {
		b.t.Fatalf("nothing to press says %q in:\n%s", words, textOf(in))
	}
	test.Tap(found)
}

// dialog returns what stands above the window.

func (b *bench) dialog() fyne.CanvasObject {
	b.t.Helper()
	top := b.window.Canvas().Overlays().Top()
	if top == nil {
		b.t.Fatal("no dialog in sight")
	}
	return top
}

func (b *bench) noDialog() {
	b.t.Helper()
	if top := b.window.Canvas().Overlays().Top(); top != nil {
		b.t.Fatalf("a dialog in sight:\n%s", textOf(top))
	}
}

// keys gives a shortcut as the toolkit would with nothing in focus.

func (b *bench) shortcut(mod fyne.KeyModifier, key fyne.KeyName) {
	b.window.Canvas().(interface{ TypedShortcut(fyne.Shortcut) }).TypedShortcut(Keys{mod, key}.shortcut())
}

func TestEmptyWindowTeaches(t *testing.T) {
	b := newBench(t)
	said := textOf(b.window.Content())
	for _, want := range []string{"Begin with a room", "Look at the demo cottage", "planning aid"} {
		if !strings.Contains(said, want) {
			t.Errorf("an empty window does not say %q", want)
		}
	}
	b.room(12*unit.Foot, 10*unit.Foot)
	if strings.Contains(textOf(b.window.Content()), "Begin with a room") {
		t.Error("the first steps stay in sight with a room drawn")
	}
}

func TestFindingGoesToItsPlaceAndItsRemedyClearsIt(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	all := b.doc().Result().All()
	if len(all) == 0 || len(all[0].Stretches) == 0 {
		t.Fatalf("a room without receptacles has findings %v, want a stretch not served", all)
	}
	b.Select()
	b.press(b.column.object, b.voice.Say(all[0].Message))
	if len(b.doc().Selection()) != 1 {
		t.Fatalf("a pressed finding chooses %v, want one thing", b.doc().Selection())
	}
	if len(all[0].Remedies) == 0 {
		t.Fatal("no remedy is offered")
	}
	before := b.doc().Plan()
	b.press(b.column.object, b.voice.Say(all[0].Remedies[0].Label))
	if plan.Equal(before, b.doc().Plan()) {
		t.Error("the remedy left the plan as it was")
	}
	b.shortcut(ctrl, fyne.KeyZ)
	if !plan.Equal(before, b.doc().Plan()) {
		t.Error("one undo does not take the remedy back")
	}
}

// item returns the item of a menu whose label begins with a text.

func TestThemesReachEverything(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	for _, mode := range []look.Mode{look.DarkMode, look.ContrastMode, look.LightMode} {
		if !b.Run("mode-" + string(mode)) {
			t.Fatalf("no command for mode %q", mode)
		}
		want := look.Current().Surface
		if got := b.app.Settings().Theme().Color("background", 0); got != want {
			t.Errorf("mode %q: background %v, want %v", mode, got, want)
		}
	}
}

func TestLanguageReachesTheMenus(t *testing.T) {
	b := newBench(t)
	b.Run("language-es")
	if said := textOf(b.menus.object); !strings.Contains(said, "Archivo") {
		t.Errorf("in Spanish the menus say:\n%s", said)
	}
	b.Run("language-en")
}

func TestUnitsChangeWhatCardsSay(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	b.Run("command.units-metric")
	if said := textOf(b.column.object); !strings.Contains(said, "m²") {
		t.Errorf("in metric the card says:\n%s", said)
	}
}

var _ card.Window = (*Desk)(nil)
