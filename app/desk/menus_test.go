package desk

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

func TestShortcutsWaitBehindDialogs(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	was := b.doc().Plan()
	b.stage.ShowCautions()
	b.shortcut(shell.Ctrl, fyne.KeyZ)
	if !plan.Equal(was, b.doc().Plan()) {
		t.Error("undo ran behind a dialog")
	}
	b.press(b.dialog(), "OK")
	b.shortcut(shell.Ctrl, fyne.KeyZ)
	if plan.Equal(was, b.doc().Plan()) {
		t.Error("undo does not run once the dialog is gone")
	}
	for b.doc().History().CanUndo() {
		b.doc().Undo()
	}
	empty := b.doc().Plan()
	b.shortcut(shell.Ctrl, fyne.KeyZ) // nothing to undo: the command may not run
	if !plan.Equal(empty, b.doc().Plan()) {
		t.Error("a command that may not run did")
	}
}

func TestUndoIsNamedInTheMenu(t *testing.T) {
	b := newBench(t)
	if item := b.item(shell.MenuEdit, "Undo"); !item.Disabled {
		t.Error("undo is offered with nothing done")
	}
	b.room(12*unit.Foot, 10*unit.Foot)
	if item := b.item(shell.MenuEdit, "Undo"); item.Disabled || !strings.Contains(item.Label, "Add room") {
		t.Errorf("the menu says %q (disabled %v), want the step's name", item.Label, item.Disabled)
	}
}

func (b *bench) item(m shell.Menu, begins string) look.MenuItem {
	b.t.Helper()
	for _, item := range b.commands.Items(m, b.voice.Voice) {
		if strings.HasPrefix(item.Label, begins) {
			return item
		}
	}
	b.t.Fatalf("no item of menu %d begins with %q", m, begins)
	return look.MenuItem{}
}

// menuTitles are what opens the menus, in their order.
func (b *bench) menuTitles() []*look.Press { return windowtest.All[*look.Press](b.menus.Object) }

func TestMenusOpenUnderTheirTitles(t *testing.T) {
	b := newBench(t)
	for _, title := range b.menuTitles() {
		test.Tap(title)
		if b.window.Canvas().Overlays().Top() == nil {
			t.Errorf("menu %v does not open", textOf(title))
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
	for _, c := range b.commands.All {
		if ids[c.ID] {
			t.Errorf("two commands have the ID %s", c.ID)
		}
		ids[c.ID] = true
		for _, k := range c.Keys {
			if other, taken := of[k.Said(b.voice.Voice)]; taken {
				t.Errorf("%s is of both %s and %s", k.Said(b.voice.Voice), other, c.ID)
			}
			of[k.Said(b.voice.Voice)] = c.ID
			if _, custom := k.Shortcut().(*desktop.CustomShortcut); custom && k.Mod == fyne.KeyModifierShift {
				t.Errorf("%s of %s: the toolkit reports no shortcut of Shift alone", k.Said(b.voice.Voice), c.ID)
			}
		}
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
	test.Tap(b.menuTitles()[shell.MenuFile])
	key(fyne.KeyRight)
	if !b.menuTitles()[shell.MenuEdit].Chosen() || b.menuTitles()[shell.MenuFile].Chosen() {
		t.Fatal("right does not go to the next menu")
	}
	key(fyne.KeyDown, fyne.KeyReturn) // the first that can be chosen: Undo
	b.noDialog()
	if b.doc().History().CanUndo() {
		t.Error("Enter did not take the step back")
	}
	test.Tap(b.menuTitles()[shell.MenuView])
	b.window.Canvas().Focused().TypedRune('c') // Cards
	b.window.Canvas().Focused().TypedRune('c') // Colours
	key(fyne.KeyRight, fyne.KeyDown, fyne.KeyDown, fyne.KeyReturn)
	if got := b.prefs.Mode(); got != look.ContrastMode && got != look.DarkMode {
		t.Errorf("the colours chosen by keys are %q", got)
	}
	test.Tap(b.menuTitles()[shell.MenuFile])
	key(fyne.KeyLeft)
	if !b.menuTitles()[shell.MenuHelp].Chosen() {
		t.Error("left of the first menu is not the last")
	}
	key(fyne.KeyEscape)
	b.noDialog()
}

// Every command that can run is found by words of it, and run by Enter.
func TestACommandIsFoundByWords(t *testing.T) {
	b := newBench(t)
	b.dirty()
	b.run("palette")
	for _, r := range "dark" {
		b.strike("", string(r))
	}
	b.strike(fyne.KeyReturn, "")
	if b.prefs.Mode() != look.DarkMode || b.window.Canvas().Overlays().Top() != nil {
		t.Errorf("typing dark and Enter leaves the mode %q", b.prefs.Mode())
	}
	// With nothing selected, what needs something is told of and does nothing.
	b.doc().Select()
	dimmed := map[string]bool{}
	for _, item := range b.commands.Palette(b.voice.Voice) {
		if item.Do == nil {
			t.Errorf("the palette lists %q, which cannot run", item.Label)
		}
		dimmed[item.Label] = item.Disabled
	}
	if is, listed := dimmed["Delete   (Edit)"]; !listed || !is {
		t.Errorf("with nothing selected Delete is listed: %v, dimmed: %v", listed, is)
	}
	if is, listed := dimmed["Zoom to fit   (View)"]; !listed || is {
		t.Errorf("Zoom to fit, which can always run, is listed: %v, dimmed: %v", listed, is)
	}
}

// A command is found by what people call it elsewhere too, in the language of the window; one
// that its own words hold comes first in hand.
func TestACommandIsFoundByOtherWords(t *testing.T) {
	b := newBench(t)
	b.dirty()
	for _, tt := range []struct {
		typed string
		done  func() bool
	}{
		{"metric", func() bool { return b.doc().System() == unit.Metric }},
		{"customary", func() bool { return b.doc().System() == unit.Imperial }},
		{"night", func() bool { return b.prefs.Mode() == look.DarkMode }},
	} {
		b.run("palette")
		for _, r := range tt.typed {
			b.strike("", string(r))
		}
		b.strike(fyne.KeyReturn, "")
		if !tt.done() || b.window.Canvas().Overlays().Top() != nil {
			t.Errorf("typing %s and Enter does not do it", tt.typed)
		}
	}
}

// What can be placed is found in the palette by what people call it, accents or none, and is
// then in hand.
func TestWhatIsPlacedIsFoundByWords(t *testing.T) {
	b := newBench(t)
	kind := func(want string) func() bool {
		return func() bool { return b.hand.tool().ID() == "opening" && b.hand.Kind() == want }
	}
	sort := func(id, want string) func() bool {
		return func() bool {
			made, ok := b.hand.tool().(tool.Chooser)
			return ok && b.hand.tool().ID() == id && made.Choice() == want
		}
	}
	for _, tt := range []struct {
		typed string
		done  func() bool
	}{
		{"dimmer", kind("dimmer")},
		{"can light", kind("recessed")},
		{"3-way", kind("three-way")},
		{"detector de humo", kind("smoke")},
		{"interruptor de tres vias", kind("three-way")},
		{"stairs", sort("fixture", string(plan.FixtureStairs))},
		{"cased opening", sort("break", string(plan.BreakPassage))},
	} {
		b.run("palette")
		for _, r := range tt.typed {
			b.strike("", string(r))
		}
		b.strike(fyne.KeyReturn, "")
		if !tt.done() || b.window.Canvas().Overlays().Top() != nil {
			t.Errorf("typing %s and Enter takes the tool %s, kind %s", tt.typed, b.hand.tool().ID(), b.hand.Kind())
		}
	}
}

// Steps are listed by their names, the last first; one that is chosen goes back with all
// after it.
func TestStepsAreTakenBackFromAList(t *testing.T) {
	b := newBench(t)
	b.dirty()
	b.run("add-level")
	b.run("add-level")
	list := b.undoList()
	if len(list) != 3 || list[2].Label != "Add room" || list[0].Label != list[1].Label {
		t.Fatalf("the steps are %v", list)
	}
	list[1].Do()
	if got := len(b.doc().Plan().Levels); got != 1 {
		t.Errorf("%d levels are left, want the first", got)
	}
	if got := b.undoList(); len(got) != 1 {
		t.Errorf("%d steps are left, want one", len(got))
	}
}

// The second button chooses what is under the pointer and shows what can be done with it.
func TestAMenuOfWhatIsUnderThePointer(t *testing.T) {
	b := newBench(t)
	b.dirty()
	b.doc().Select()
	room := b.onlyRoom()
	b.showMenuOf(tool.Pointer{At: room.Outline().Box().Center(), Reach: unit.Inch}, fyne.NewPos(200, 200))
	if got := b.doc().Selection(); len(got) != 1 || got[0] != room.ID {
		t.Errorf("chosen is %v, want the room", got)
	}
	if said := textOf(b.dialog()); !strings.Contains(said, "Delete") || !strings.Contains(said, "Duplicate") {
		t.Errorf("the menu of a room says\n%s", said)
	}
	b.strike(fyne.KeyEscape, "")
	b.showMenuOf(tool.Pointer{At: geom.Point{X: -90 * unit.Foot}, Reach: unit.Inch}, fyne.NewPos(200, 200))
	if got := b.doc().Selection(); len(got) != 0 {
		t.Errorf("chosen beside everything is %v", got)
	}
	if said := textOf(b.dialog()); !strings.Contains(said, "Zoom to fit") {
		t.Errorf("the menu of the level says\n%s", said)
	}
}

// The toolkit gives the second button to the row itself, whatever lies round it.
func TestRowsHaveMenus(t *testing.T) {
	b := newBench(t)
	b.room(14*unit.Foot, 12*unit.Foot)
	b.checked()
	b.doc().Select()
	b.shortcut(shell.Ctrl, fyne.KeyL)
	row, isPress := b.window.Canvas().Focused().(*look.Press)
	if !isPress {
		t.Fatal("the list has not got the focus")
	}
	row.TappedSecondary(&fyne.PointEvent{AbsolutePosition: fyne.NewPos(300, 300)})
	if said := textOf(b.dialog()); !strings.Contains(said, "Show where it is") || !strings.Contains(said, "Set the finding aside") {
		t.Errorf("the menu of a finding says\n%s", said)
	}
	b.strike(fyne.KeyEscape, "")
	windowtest.All[*look.Press](b.level.Object)[0].TappedSecondary(&fyne.PointEvent{})
	if said := textOf(b.dialog()); !strings.Contains(said, "Copy this level with what is in it") {
		t.Errorf("the menu of the level says\n%s", said)
	}
	b.strike(fyne.KeyEscape, "")
	windowtest.All[*look.Press](b.rail.Object)[0].TappedSecondary(&fyne.PointEvent{}) // it has none
	b.noDialog()
}

func (b *bench) onlyRoom() (room *plan.Room) {
	for r := range b.doc().Plan().Levels[0].Rooms.All() {
		room = r
	}
	return room
}

// menuItem finds a line of the menu of a place, and what it offers within it.
func (b *bench) menuItem(p tool.Pointer, label, within string) *look.MenuItem {
	b.t.Helper()
	for _, item := range b.menuOf(p) {
		if item.Label != label {
			continue
		}
		if within == "" {
			return &item
		}
		for _, sub := range item.Sub {
			if sub.Label == within {
				return &sub
			}
		}
	}
	return nil
}

// The menu of a wall offers what a wall can take, at the place where it was asked for, and
// what it can be made of.
func TestTheMenuOfAWall(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	corner := b.onlyRoom().Outline().Box().Min
	onWall := tool.Pointer{At: corner.Add(geom.Point{X: 9 * unit.Foot}), Reach: unit.Inch}
	take := func(label, within string) {
		t.Helper()
		item := b.menuItem(onWall, label, within)
		if item == nil {
			t.Fatalf("the menu of a wall has no %q %q", label, within)
		}
		item.Do()
	}
	take("Add here: Duplex receptacle", "")
	var placed *plan.Opening
	for _, o := range b.doc().Plan().Openings() {
		placed = o
	}
	if placed == nil || placed.Kind != "duplex" || placed.At.Along != 9*unit.Foot {
		t.Fatalf("placed is %+v, want a duplex 9 ft along", placed)
	}
	b.doc().Undo()
	take("Add here: Door", "")
	var door *plan.Break
	for k := range b.doc().Plan().Levels[0].Breaks.All() {
		door = k
	}
	if door == nil || door.Kind != plan.BreakDoor || (door.At.Along+door.Width/2-9*unit.Foot).Abs() > unit.Inch {
		t.Fatalf("the door is %+v, want its middle 9 ft along", door)
	}
	b.doc().Undo()
	take("Add here: Window", "")
	if got := b.doc().Selection(); len(got) != 1 || got[0].Kind() != plan.KindBreak {
		t.Errorf("selected is %v, want the window", got)
	}
	b.doc().Undo()
	take("Made of", "Glass")
	if ref, ok := b.doc().Index().Side(b.onlyRoom().Sides[0].ID); !ok || ref.Side().Kind != plan.SideGlass {
		t.Error("the wall is not made of glass")
	}
	if item := b.menuItem(onWall, "Made of", "Glass"); item == nil || !item.Checked {
		t.Error("the menu does not mark what the wall is made of")
	}
	take("Made of", "Open")
	if b.menuItem(onWall, "Add here: Door", "") != nil || b.menuItem(onWall, "Add here: Duplex receptacle", "") != nil {
		t.Error("an open side is offered a door or a receptacle")
	}
	if b.menuItem(onWall, "Serve the room by the fewest receptacles …", "") == nil {
		t.Error("the menu of a wall does not serve its room")
	}
	take("Select the room it is in", "")
	if got := b.doc().Selection(); len(got) != 1 || got[0] != b.onlyRoom().ID {
		t.Errorf("selected is %v, want the room", got)
	}
}

// Menus of doors, openings and rooms offer what each can be.
func TestTheMenusOfWhatIsInARoom(t *testing.T) {
	b := newBench(t)
	b.room(12*unit.Foot, 10*unit.Foot)
	side := b.onlyRoom().Sides[0]
	b.doc().Select(side.ID)
	b.run("add-door")
	door := b.doc().Selection()[0]
	brk := func() *plan.Break {
		k, _ := b.doc().Plan().Break(door)
		return k
	}
	if at := brk().At.Along + brk().Width/2; at != 6*unit.Foot {
		t.Errorf("without a menu the door stands at %v, want the middle of the wall", at)
	}
	choose := func(command, label string) {
		t.Helper()
		for _, item := range b.commands.ByID(command).Items() {
			if item.Label == label {
				item.Do()
				return
			}
		}
		t.Fatalf("%s offers no %q", command, label)
	}
	choose("break-swing", "Out of this room")
	if brk().Swing != plan.SwingOut {
		t.Errorf("the door swings %q", brk().Swing)
	}
	choose("break-kind", "Window")
	if brk().Kind != plan.BreakWindow || brk().Swing != plan.SwingNone {
		t.Errorf("the door became %+v", brk())
	}
	if got := b.commands.ByID("break-swing").Items(); got != nil {
		t.Errorf("a window is offered to swing: %v", got)
	}
	b.doc().Select(side.ID, door)
	if got := b.commands.ByID("break-kind").Items(); got != nil {
		t.Errorf("a wall and a window are offered kinds: %v", got)
	}
	b.doc().Select(b.onlyRoom().ID)
	choose("room-use", "Bath")
	if got := b.onlyRoom().Use; got != plan.UseBath {
		t.Errorf("the room is used as %s", got)
	}
	b.run("add-opening")
	var light *plan.Opening
	for _, o := range b.doc().Plan().Openings() {
		light = o
	}
	if light == nil || light.Kind != "ceiling-light" || light.At.At != b.onlyRoom().Outline().LabelPoint() {
		t.Fatalf("added to the room is %+v, want a ceiling light in its middle", light)
	}
	if got := b.commands.ByID("opening-circuit").Items(); got != nil {
		t.Errorf("circuits are offered where there are none: %v", got)
	}
	circuit := work.NewID(plan.KindCircuit)
	if err := b.editor.Do(edit.Add{Thing: &plan.Circuit{ID: circuit, Number: "3", Name: "lights", Amps: 15, Volts: 120, Poles: 1}}); err != nil {
		t.Fatal(err)
	}
	choose("opening-circuit", "3  lights")
	choose("opening-status", "Existing")
	if o, _ := b.doc().Plan().Opening(light.ID); o.Circuit != circuit || o.Status != plan.StatusExisting {
		t.Errorf("the light is %+v", o)
	}
	steps := b.doc().History().CanUndo()
	was := b.doc().Plan()
	choose("opening-status", "Existing")
	if !steps || !plan.Equal(was, b.doc().Plan()) {
		t.Error("what is so already was done again")
	}
}
