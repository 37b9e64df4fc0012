package desk

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/unit"
)

// bench is a window under test, with the queue of what comes back from beside it.
type bench struct {
	*Desk
	t     *testing.T
	queue windowtest.Queue
}

// newBench opens a window on the toolkit's test driver.
func newBench(t *testing.T) *bench {
	t.Helper()
	app, queue := windowtest.NewApp(t)
	h := &House{app: app, post: fyne.Do}
	h.shop = work.NewShop(t.TempDir(), h.post, h.keepFailed)
	h.applyTheme()
	b := &bench{Desk: newDesk(h), t: t, queue: queue}
	h.desks = append(h.desks, b.Desk)
	b.window.Resize(fyne.NewSize(1440, 900))
	t.Cleanup(h.Close)
	return b
}

func (b *bench) until(what string, done func() bool) {
	b.t.Helper()
	b.queue.Until(b.t, what, done)
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
	if err := b.forms.addRoom("Den", plan.UseDen, w, h, nil); err != nil {
		b.t.Fatal(err)
	}
	b.checked()
	return b.doc().Selection()[0]
}

var (
	textOf = windowtest.TextOf
	walk   = windowtest.Walk
)

func (b *bench) press(in fyne.CanvasObject, words string) {
	b.t.Helper()
	windowtest.Press(b.t, in, words)
}

func (b *bench) dialog() fyne.CanvasObject {
	b.t.Helper()
	return windowtest.Dialog(b.t, b.window)
}

func (b *bench) noDialog() {
	b.t.Helper()
	windowtest.NoDialog(b.t, b.window)
}

// dialogSays waits for a dialog to say something.
func (b *bench) dialogSays(what string) {
	b.t.Helper()
	b.until("the dialog to say "+what, func() bool {
		top := b.window.Canvas().Overlays().Top()
		return top != nil && strings.Contains(textOf(top), what)
	})
}

// entries lists the lines of a dialog that are written in.
func (b *bench) entries(in fyne.CanvasObject) []*look.Entry {
	return windowtest.All[*look.Entry](in)
}

// choice finds a choice among what is in sight by its name.
func (b *bench) choice(in fyne.CanvasObject, name string) *look.Choice {
	b.t.Helper()
	for _, c := range windowtest.All[*look.Choice](in) {
		if c.Label() == name {
			return c
		}
	}
	b.t.Fatalf("no choice %q in:\n%s", name, textOf(in))
	return nil
}

func (b *bench) take(c *look.Choice, begins string) {
	b.t.Helper()
	for _, o := range c.Options() {
		if strings.HasPrefix(o.Label, begins) {
			o.Do()
			return
		}
	}
	b.t.Fatalf("no option begins with %q", begins)
}

// write answers the dialog of files in sight with a path.
func (b *bench) write(path string) {
	b.t.Helper()
	name := b.entries(b.dialog())[0]
	name.SetText(path)
	name.OnSubmitted(path)
}

// shortcut gives one as the toolkit would with nothing in focus.
func (b *bench) shortcut(mod fyne.KeyModifier, key fyne.KeyName) {
	b.window.Canvas().(interface{ TypedShortcut(fyne.Shortcut) }).TypedShortcut(shell.Keys{Mod: mod, Key: key}.Shortcut())
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
	all := slices.DeleteFunc(b.doc().Result().All(), func(f rule.Finding) bool { return f.Rule != spacing.WallReach.ID })
	if len(all) == 0 || len(all[0].Stretches) == 0 {
		t.Fatalf("a room without receptacles has findings %v, want a stretch not served", all)
	}
	b.doc().Select()
	b.press(b.column.Object, b.voice.Say(all[0].Message))
	if len(b.doc().Selection()) != 1 {
		t.Fatalf("a pressed finding chooses %v, want one thing", b.doc().Selection())
	}
	if len(all[0].Remedies) == 0 {
		t.Fatal("no remedy is offered")
	}
	before := b.doc().Plan()
	b.press(b.column.Object, b.voice.Say(all[0].Remedies[0].Label))
	if plan.Equal(before, b.doc().Plan()) {
		t.Error("the remedy left the plan as it was")
	}
	b.shortcut(shell.Ctrl, fyne.KeyZ)
	if !plan.Equal(before, b.doc().Plan()) {
		t.Error("one undo does not take the remedy back")
	}
}

func TestThemesReachEverything(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	for _, mode := range []look.Mode{look.DarkMode, look.ContrastMode, look.LightMode} {
		if !b.commands.Run("mode-" + string(mode)) {
			t.Fatalf("no command for mode %q", mode)
		}
		want := look.Current().Surface
		if got := b.house.app.Settings().Theme().Color("background", 0); got != want {
			t.Errorf("mode %q: background %v, want %v", mode, got, want)
		}
	}
}

func TestLanguageReachesTheMenus(t *testing.T) {
	b := newBench(t)
	b.commands.Run("language-es")
	if said := textOf(b.menus.Object); !strings.Contains(said, "Archivo") {
		t.Errorf("in Spanish the menus say:\n%s", said)
	}
	b.commands.Run("language-en")
}

func TestUnitsChangeWhatCardsSay(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	b.commands.Run("command.units-metric")
	if said := textOf(b.column.Object); !strings.Contains(said, "m²") {
		t.Errorf("in metric the card says:\n%s", said)
	}
}
