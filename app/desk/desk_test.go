package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"studbay/app/card"
	"studbay/app/look"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
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
	h := &House{app: queued, claims: t.TempDir(), post: fyne.Do}
	h.openRecovery(t.TempDir())
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
		return b.doc.Result().Figures != nil && plan.Equal(b.doc.checked, b.doc.Plan())
	})
}

// room draws a room of a width and depth and waits for its findings.
func (b *bench) room(w, h unit.Length) plan.ID {
	b.t.Helper()
	if err := b.addRoom("Den", w, h); err != nil {
		b.t.Fatal(err)
	}
	b.checked()
	return b.doc.Selection()[0]
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
	all := b.doc.Result().All()
	if len(all) == 0 || len(all[0].Stretches) == 0 {
		t.Fatalf("a room without receptacles has findings %v, want a stretch not served", all)
	}
	b.Select()
	b.press(b.column.object, b.voice.Say(all[0].Message))
	if len(b.doc.Selection()) != 1 {
		t.Fatalf("a pressed finding chooses %v, want one thing", b.doc.Selection())
	}
	if len(all[0].Remedies) == 0 {
		t.Fatal("no remedy is offered")
	}
	before := b.doc.Plan()
	b.press(b.column.object, b.voice.Say(all[0].Remedies[0].Label))
	if plan.Equal(before, b.doc.Plan()) {
		t.Error("the remedy left the plan as it was")
	}
	b.shortcut(ctrl, fyne.KeyZ)
	if !plan.Equal(before, b.doc.Plan()) {
		t.Error("one undo does not take the remedy back")
	}
}

func TestShortcutsWaitBehindDialogs(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	was := b.doc.Plan()
	b.showCautions()
	b.shortcut(ctrl, fyne.KeyZ)
	if !plan.Equal(was, b.doc.Plan()) {
		t.Error("undo ran behind a dialog")
	}
	b.press(b.dialog(), "Understood")
	b.shortcut(ctrl, fyne.KeyZ)
	if plan.Equal(was, b.doc.Plan()) {
		t.Error("undo does not run once the dialog is gone")
	}
	for b.doc.History().CanUndo() {
		b.doc.Undo()
	}
	empty := b.doc.Plan()
	b.shortcut(ctrl, fyne.KeyZ) // nothing to undo: the command may not run
	if !plan.Equal(empty, b.doc.Plan()) {
		t.Error("a command that may not run did")
	}
}

func TestUndoIsNamedInTheMenu(t *testing.T) {
	b := newBench(t)
	if item := b.item(MenuEdit, "Undo"); !item.Disabled {
		t.Error("undo is offered with nothing done")
	}
	b.room(12*unit.Foot, 10*unit.Foot)
	if item := b.item(MenuEdit, "Undo"); item.Disabled || !strings.Contains(item.Label, "Add room") {
		t.Errorf("the menu says %q (disabled %v), want the step's name", item.Label, item.Disabled)
	}
}

// item returns the item of a menu whose label begins with a text.
func (b *bench) item(m Menu, begins string) look.MenuItem {
	b.t.Helper()
	for _, item := range b.menuItems(m) {
		if strings.HasPrefix(item.Label, begins) {
			return item
		}
	}
	b.t.Fatalf("no item of menu %d begins with %q", m, begins)
	return look.MenuItem{}
}

func TestMenusOpenUnderTheirTitles(t *testing.T) {
	b := newBench(t)
	for i := range menuTitles {
		test.Tap(b.menus.titles[i])
		if b.window.Canvas().Overlays().Top() == nil {
			t.Errorf("menu %v does not open", menuTitles[i])
			continue
		}
		b.window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
		b.noDialog()
	}
}

func TestEveryShortcutIsOfOneCommand(t *testing.T) {
	b := newBench(t)
	of := map[string]string{}
	ids := map[string]bool{}
	for _, c := range b.commands {
		if ids[c.ID] {
			t.Errorf("two commands have the ID %s", c.ID)
		}
		ids[c.ID] = true
		for _, k := range c.Keys {
			if other, taken := of[k.String()]; taken {
				t.Errorf("%s is of both %s and %s", k, other, c.ID)
			}
			of[k.String()] = c.ID
			if _, custom := k.shortcut().(*desktop.CustomShortcut); custom && k.Mod == fyne.KeyModifierShift {
				t.Errorf("%s of %s: the toolkit reports no shortcut of Shift alone", k, c.ID)
			}
		}
	}
}

func TestUnsavedChangesAreGuarded(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	drawn := b.doc.Plan()
	b.New()
	if !plan.Equal(drawn, b.doc.Plan()) {
		t.Fatal("New took the plan away before it was answered")
	}
	b.press(b.dialog(), "Go back")
	b.noDialog()
	if !plan.Equal(drawn, b.doc.Plan()) {
		t.Error("going back lost the plan")
	}
	b.New()
	b.press(b.dialog(), "Do not save")
	if b.doc.IsDirty() || plan.Equal(drawn, b.doc.Plan()) {
		t.Error("letting go did not begin an empty plan")
	}
}

func TestSaveOpenAndAChangeUnderneath(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)
	b.noDialog()
	if b.doc.IsDirty() {
		t.Error("a saved plan is still said to be unsaved")
	}
	saved := b.doc.Plan()
	b.New()
	b.noDialog()
	b.OpenGuarded(path)
	b.until("the file", func() bool { return b.doc.Path() == path })
	if !plan.Equal(saved, b.doc.Plan()) {
		t.Error("the plan opened differs from the one saved")
	}
	if got := b.prefs.recent(); len(got) == 0 || got[0] != path {
		t.Errorf("recent plans are %q, want %q first", got, path)
	}

	other := plan.New("Someone else's", newID(plan.KindLevel))
	now, err := file.StampOf(path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := file.Save(path, other, now); err != nil {
		t.Fatal(err)
	}
	b.room(9*unit.Foot, 9*unit.Foot)
	b.Save()
	if !strings.Contains(textOf(b.dialog()), "changed by someone else") {
		t.Fatalf("saving over another's change shows:\n%s", textOf(b.dialog()))
	}
	b.press(b.dialog(), "Go back")
	b.noticeChange()
	b.press(b.dialog(), "Read it again")
	b.until("the other's plan", func() bool { return b.doc.Title() == "Someone else's" })
}

func TestAFailedSaveLosesNothing(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	drawn := b.doc.Plan()
	b.saveAs(filepath.Join(t.TempDir(), "no", "such", "folder", "x.studbay"), nil)
	said := textOf(b.dialog())
	if !strings.Contains(said, "could not be saved") || !strings.Contains(said, "x.studbay") {
		t.Errorf("a save that failed says:\n%s", said)
	}
	b.press(b.dialog(), "Go back")
	if !plan.Equal(drawn, b.doc.Plan()) || !b.doc.IsDirty() {
		t.Error("a save that failed lost the plan or its changes")
	}
}

func TestABrokenFileIsRefusedPlainly(t *testing.T) {
	b := newBench(t)
	path := filepath.Join(t.TempDir(), "broken.studbay")
	if err := os.WriteFile(path, []byte(`{"format": "studbay", "version"`), 0o600); err != nil {
		t.Fatal(err)
	}
	b.OpenGuarded(path)
	b.until("the refusal", func() bool { return b.window.Canvas().Overlays().Top() != nil })
	if said := textOf(b.dialog()); !strings.Contains(said, "broken.studbay") {
		t.Errorf("the refusal does not name the file:\n%s", said)
	}
}

func TestWhatWasKilledIsOffered(t *testing.T) {
	folder := t.TempDir()
	killed, err := file.OpenRecovery(folder)
	if err != nil {
		t.Fatal(err)
	}
	p := plan.New("Half a house", newID(plan.KindLevel))
	if err := killed.Keep(file.Unsaved{Doc: "half", Time: time.Now(), Plan: p}); err != nil {
		t.Fatal(err)
	}
	killed.Close() // as the end of the process would

	b := newBench(t)
	b.house.Close()
	b.house.openRecovery(folder)
	b.offerRecovery()
	b.press(b.dialog(), "Take it up")
	if b.doc.Title() != "Half a house" || !b.doc.IsDirty() {
		t.Errorf("taken up %q, dirty %v; want the plan that was kept, unsaved", b.doc.Title(), b.doc.IsDirty())
	}
}

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

func TestStaleFindingsAreDropped(t *testing.T) {
	var posted []func()
	var taken []*plan.Index
	c := startChecking(func(f func()) { posted = append(posted, f) }, func(r checkResult) { taken = append(taken, r.of) })
	old := plan.NewIndex(plan.New("old", newID(plan.KindLevel)))
	now := plan.NewIndex(plan.New("new", newID(plan.KindLevel)))
	c.latest = now
	c.deliver(checkResult{of: old})
	c.deliver(checkResult{of: now, result: fill.Result{}})
	if len(taken) != 1 || taken[0] != now {
		t.Errorf("taken %d results, want only those of the plan asked for last", len(taken))
	}
}

func TestAPlanOpenElsewhereIsToldOf(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	path := filepath.Join(t.TempDir(), "den.studbay")
	b.saveAs(path, nil)

	other := newBench(t)
	other.house.claims = b.house.claims
	other.OpenGuarded(path)
	other.until("the question", func() bool { return other.window.Canvas().Overlays().Top() != nil })
	if said := textOf(other.dialog()); !strings.Contains(said, "another window has this plan open") {
		t.Errorf("opening a plan a second time says:\n%s", said)
	}
	other.press(other.dialog(), "Open it all the same")
	if other.doc.Path() != path {
		t.Error("the plan is not opened all the same")
	}
}

func TestMenusAreWorkedByKeys(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	key := func(names ...fyne.KeyName) {
		for _, name := range names {
			b.window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: name})
		}
	}
	test.Tap(b.menus.titles[MenuFile])
	key(fyne.KeyRight)
	if !b.menus.titles[MenuEdit].Chosen() || b.menus.titles[MenuFile].Chosen() {
		t.Fatal("right does not go to the next menu")
	}
	key(fyne.KeyDown, fyne.KeyReturn) // the first that can be chosen: Undo
	b.noDialog()
	if b.doc.History().CanUndo() {
		t.Error("Enter did not take the step back")
	}
	test.Tap(b.menus.titles[MenuView])
	b.window.Canvas().Focused().TypedRune('c') // Cards
	b.window.Canvas().Focused().TypedRune('c') // Colours
	key(fyne.KeyRight, fyne.KeyDown, fyne.KeyDown, fyne.KeyReturn)
	if got := b.prefs.mode(); got != look.ContrastMode && got != look.DarkMode {
		t.Errorf("the colours chosen by keys are %q", got)
	}
	test.Tap(b.menus.titles[MenuFile])
	key(fyne.KeyLeft)
	if !b.menus.titles[MenuHelp].Chosen() {
		t.Error("left of the first menu is not the last")
	}
	key(fyne.KeyEscape)
	b.noDialog()
}
