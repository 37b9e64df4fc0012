package desk

import (
	"errors"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// scenes are what the window can be showing. Each begins with the demo cottage, with
// nothing chosen and nothing above the window.
var scenes = []struct {
	name string
	show func(*bench)
}{
	{"empty", func(b *bench) { b.session.Replace(b.emptyPlan(), "", file.Stamp{}) }},
	{"nothing chosen", func(b *bench) {}},
	{"opening that fits", func(b *bench) { b.choose(b.openingOf("switch")) }},
	{"opening with a finding", func(b *bench) { b.choose(b.found("box-fill").Opening) }},
	{"opening, all folds open", func(b *bench) { b.choose(b.found("box-fill").Opening); b.unfoldCards() }},
	{"opening in a ceiling", func(b *bench) { b.choose(b.openingOf("ceiling-light")) }},
	{"data jack", func(b *bench) { b.choose(b.openingOf("data")); b.unfoldCards() }},
	{"several openings", (*bench).selectAllOpenings},
	{"room", func(b *bench) { b.choose(b.first(plan.KindRoom)); b.unfoldCards() }},
	{"side", func(b *bench) { b.choose(b.first(plan.KindSide)); b.unfoldCards() }},
	{"break", func(b *bench) { b.choose(b.first(plan.KindBreak)); b.unfoldCards() }},
	{"fixture", func(b *bench) { b.choose(b.first(plan.KindFixture)); b.unfoldCards() }},
	{"circuit", func(b *bench) { b.choose(b.first(plan.KindCircuit)); b.unfoldCards() }},
	{"control", func(b *bench) { b.choose(b.first(plan.KindControl)) }},
	{"cable", func(b *bench) { b.cable(); b.unfoldCards() }},
	{"level", func(b *bench) { b.choose(b.first(plan.KindLevel)); b.unfoldCards() }},
	{"decision", func(b *bench) { b.choose(b.first(plan.KindDecision)); b.unfoldCards() }},
	{"finding of a room", func(b *bench) { b.findings.Go(*b.found("wall-reach")) }},
	{"plan, all folds open", (*bench).unfoldCards},
	{"room by size", asking("room-by-size")},
	{"copies", func(b *bench) { b.choose(b.openingOf("duplex")); b.run("copy-row") }},
	{"another circuit", asking("add-circuit")},
	{"a decision", asking("add-decision")},
	{"set aside", func(b *bench) { b.choose(b.found("box-fill").Opening); b.run("set-aside") }},
	{"a figure of the local code", asking("amend-figure")},
	{"a rule switched off", asking("amend-rule")},
	{"a box of one's own", asking("own-box")},
	{"a ring of one's own", asking("own-ring")},
	{"a device of one's own", asking("own-device")},
	{"card of one's own box", func(b *bench) { b.ownBox(); b.unfoldCards() }},
	{"what is checked", asking("rules")},
	{"help", asking("help")},
	{"keys", asking("shortcuts")},
	{"cautions", asking("cautions")},
	{"about", asking("about")},
	{"notices", asking("notices")},
	{"sheets", func(b *bench) { b.run("export"); b.laidOut() }},
	{"list for the visit", asking("visit")},
	{"list for the visit, the whole house", func(b *bench) { b.run("visit"); b.wholeHouse() }},
	{"walk in the dark", asking("walk")},
	{"plastic or steel", func(b *bench) { b.run("choice"); b.chosenBeside() }},
	{"prices", asking("prices")},
	{"recipes", func(b *bench) { b.run("prices"); b.takeOption("recipes", "recetas") }},
	{"a choice of one's own", func(b *bench) { b.run("choice"); b.chosenBeside(); b.ownChoice() }},
	{"what changed", (*bench).whatChanged},
	{"changed since the walk", (*bench).changedSinceWalk},
	{"open a file", asking("open")},
	{"save a file", asking("save-as")},
	{"unsaved changes", func(b *bench) { b.dirty(); b.run("new") }},
	{"trouble", func(b *bench) {
		b.stage.Trouble(b.voice.say("export.failed", "The sheets could not be written"), errors.New("no space left"))
	}},
	{"recovery", func(b *bench) {
		b.session.Offer(file.Unsaved{Plan: b.doc().Plan(), Path: filepath.Join(b.t.TempDir(), "lake cottage.studbay"), Time: time.Date(2026, 3, 4, 17, 5, 0, 0, time.Local)})
	}},
	{"menu of files", menu(shell.MenuFile)},
	{"menu of edits", menu(shell.MenuEdit)},
	{"menu of the view", menu(shell.MenuView)},
	{"menu of things to place", menu(shell.MenuPlace)},
	{"menu of the check", menu(shell.MenuCheck)},
	{"menu of what is handed over", menu(shell.MenuHand)},
	{"menu of help", menu(shell.MenuHelp)},
	{"menu of levels", func(b *bench) { b.showLevels() }},
	{"menu of an opening", func(b *bench) { b.menuAt(b.found("box-fill").Opening) }},
	{"menu of a room", func(b *bench) { b.menuAt(b.first(plan.KindRoom)) }},
	{"menu of a wall", func(b *bench) { b.menuAt(b.first(plan.KindSide)) }},
	{"menu of a door", func(b *bench) { b.menuAt(b.first(plan.KindBreak)) }},
	{"menu of a fixture", func(b *bench) { b.menuAt(b.first(plan.KindFixture)) }},
	{"menu of a finding", func(b *bench) { b.showMenuOfFinding(*b.found("wall-reach"), fyne.NewPos(700, 300)) }},
	{"menu of nothing", func(b *bench) {
		b.showMenuOf(tool.Pointer{At: geom.Point{X: -90 * unit.Foot}}, fyne.NewPos(300, 300))
	}},
	{"palette", asking("palette")},
	{"found in the palette", func(b *bench) { b.run("palette"); b.strike("", "t"); b.strike("", "h") }},
	{"boxes to the studs", func(b *bench) { b.choose(b.openingOf("duplex")); b.run("to-studs") }},
	{"how the rooms stand", asking("report")},
	{"use a price book", asking("prices-use")},
	{"answers of a client", asking("answers")},
	{"tool 1", holding(0)}, {"tool 2", holding(1)}, {"tool 3", holding(2)},
	{"tool 4", holding(3)}, {"tool 5", holding(4)}, {"tool 6", holding(5)},
	{"tool 7", holding(6)}, {"tool 8", holding(7)},
}

// emptyPlan is what a new document begins with.
func (b *bench) emptyPlan() plan.Plan {
	p := plan.New(b.voice.say("plan.untitled", "Untitled plan"), work.NewID(plan.KindLevel))
	p.Levels[0].Name = b.voice.say("level.ground", "Ground floor")
	return p
}

// menuAt opens the menu of a thing where it is.
func (b *bench) menuAt(id plan.ID) {
	b.t.Helper()
	b.choose(id)
	box, ok := b.doc().Index().BoxOf(id)
	if !ok {
		b.t.Fatalf("%s is nowhere", id)
	}
	b.showMenuOf(tool.Pointer{At: box.Center(), Symbol: id}, fyne.NewPos(500, 300))
}

func asking(command string) func(*bench) { return func(b *bench) { b.run(command) } }

func menu(which shell.Menu) func(*bench) { return func(b *bench) { b.menus.Open(which) } }

func holding(tool int) func(*bench) {
	return func(b *bench) {
		if tool < len(b.hand.tools) {
			b.hand.Take(tool)
		}
	}
}

func (b *bench) run(command string) {
	b.t.Helper()
	if !b.commands.Run(command) {
		b.t.Fatalf("command %q does not run", command)
	}
}

// first returns the first thing of a kind in the plan.
func (b *bench) first(kind byte) plan.ID {
	b.t.Helper()
	p := b.doc().Plan()
	for _, l := range p.Levels {
		switch kind {
		case plan.KindLevel:
			return l.ID
		case plan.KindRoom:
			for r := range l.Rooms.All() {
				return r.ID
			}
		case plan.KindSide:
			for r := range l.Rooms.All() {
				return r.Sides[0].ID
			}
		case plan.KindBreak:
			for x := range l.Breaks.All() {
				return x.ID
			}
		case plan.KindFixture:
			for x := range l.Fixtures.All() {
				return x.ID
			}
		}
	}
	for x := range p.Circuits.All() {
		if kind == plan.KindCircuit {
			return x.ID
		}
	}
	for x := range p.Controls.All() {
		if kind == plan.KindControl {
			return x.ID
		}
	}
	for x := range p.Decisions.All() {
		if kind == plan.KindDecision {
			return x.ID
		}
	}
	b.t.Fatalf("the plan has nothing of kind %c", kind)
	return ""
}

// cable draws a cable between two openings and shows its card.
func (b *bench) cable() {
	b.t.Helper()
	c := plan.Cable{ID: work.NewID(plan.KindCable), From: b.openingOf("switch"), To: b.openingOf("duplex"), Size: 12, Wires: 2, Ground: true}
	if err := b.editor.Do(edit.Add{Thing: &c}); err != nil {
		b.t.Fatal(err)
	}
	b.choose(c.ID)
}

// choose chooses one thing.
func (b *bench) choose(id plan.ID) {
	b.t.Helper()
	if b.doc().Select(id); len(b.doc().Selection()) != 1 || b.doc().Selection()[0] != id {
		b.t.Fatalf("%s cannot be chosen", id)
	}
}

// openingOf returns an opening of a kind.
func (b *bench) openingOf(kind string) plan.ID {
	b.t.Helper()
	kinds := map[string]bool{}
	for _, o := range b.doc().Plan().Openings() {
		if o.Kind == kind {
			return o.ID
		}
		kinds[o.Kind] = true
	}
	b.t.Fatalf("the plan has no opening of kind %q, but %v", kind, kinds)
	return ""
}

// found returns a finding of a rule.
func (b *bench) found(rule string) *rule.Finding {
	b.t.Helper()
	for _, f := range b.doc().Findings() {
		if f.Rule == rule {
			return &f
		}
	}
	b.t.Fatalf("no finding of %s", rule)
	return nil
}

func (b *bench) selectAllOpenings() { b.run("select-all") }

// dirty changes something.
func (b *bench) dirty() {
	b.t.Helper()
	if err := b.forms.addRoom("Shed", plan.UseStorage, 8*unit.Foot, 6*unit.Foot, nil); err != nil {
		b.t.Fatal(err)
	}
}

// unfoldCards opens every fold of the cards.
func (b *bench) unfoldCards() {
	var folds []*bind.Fold
	walk(b.column.Object, func(o fyne.CanvasObject) {
		if f, ok := o.(*bind.Fold); ok {
			folds = append(folds, f)
		}
	})
	for _, f := range folds {
		f.SetOpen(true)
	}
	b.settle()
}

// staged shows the cottage with nothing chosen and nothing above the window.
func (b *bench) staged(cottage plan.Plan) {
	b.t.Helper()
	c := b.window.Canvas()
	for top := c.Overlays().Top(); top != nil; top = c.Overlays().Top() {
		c.Overlays().Remove(top)
	}
	b.stage = dialog.NewStage(b.window, b.house.post, b.prefs)
	b.speak()
	b.hand.Take(0)
	if !plan.Equal(cottage, b.doc().Plan()) {
		b.session.Replace(cottage, "", file.Stamp{})
		b.checked()
	}
	b.doc().Select()
}

// settle lays the window out anew, as its driver does before each frame where a thing has
// come to want more room.
func (b *bench) settle() {
	size := b.window.Canvas().Size()
	b.window.Resize(size.AddWidthHeight(8, 8))
	b.window.Resize(size)
}

// laidOut waits for the sheets to be previewed.
func (b *bench) laidOut() {
	b.t.Helper()
	waiting := b.voice.say("export.pages.wait", "being laid out …")
	b.until("the preview", func() bool { return !strings.Contains(textOf(b.dialog()), waiting) })
}

// wholeHouse chooses what is of no room in the list for the visit.
func (b *bench) wholeHouse() {
	b.t.Helper()
	for _, o := range windowtest.All[*look.Choice](b.dialog()) {
		o.Options()[0].Do()
	}
	b.settle()
}

// takeOption takes the option of a list in the dialog that says a word, in either language.
func (b *bench) takeOption(words ...string) {
	b.t.Helper()
	for _, c := range windowtest.All[*look.Choice](b.dialog()) {
		for _, o := range c.Options() {
			for _, w := range words {
				if strings.Contains(strings.ToLower(o.Label), w) {
					o.Do()
					b.settle()
					return
				}
			}
		}
	}
	b.t.Fatalf("nothing in the dialog says %q", words)
}

// ownChoice makes a choice of boxes with two lines.
func (b *bench) ownChoice() {
	b.t.Helper()
	windowtest.Press(b.t, b.dialog(), b.voice.say("choice.own", "Your own, by room and kind …"))
	for range 2 {
		windowtest.Press(b.t, b.dialog(), b.voice.say("own-policy.add", "Add a line"))
	}
	b.settle()
}

// whatChanged compares the plan with one that it was before openings of it were moved and removed.
func (b *bench) whatChanged() {
	b.t.Helper()
	older := filepath.Join(b.t.TempDir(), "may.studbay")
	data, err := file.Encode(b.doc().Plan())
	if err == nil {
		err = os.WriteFile(older, data, 0o600)
	}
	if err != nil {
		b.t.Fatal(err)
	}
	o, _ := b.doc().Plan().Opening(b.openingOf("duplex"))
	to := o.At
	to.Along += unit.Inch
	if err := b.doc().Do(edit.Steps{Edits: []edit.Edit{edit.MoveOpening{ID: o.ID, To: to}, edit.Remove{Things: []plan.ID{b.openingOf("switch")}}}}); err != nil {
		b.t.Fatal(err)
	}
	b.stage.CompareWith(older, b.doc(), b.showChange)
	waiting := b.voice.say("compare.wait", "Both plans are compared …")
	b.until("the changes", func() bool { return !strings.Contains(textOf(b.dialog()), waiting) })
}

// changedSinceWalk compares the plan with how it was walked through, before an opening was moved.
func (b *bench) changedSinceWalk() {
	b.t.Helper()
	walked, err := file.Walk(b.doc().Plan(), "2026-03-02")
	if err != nil {
		b.t.Fatal(err)
	}
	o, _ := b.doc().Plan().Opening(b.openingOf("duplex"))
	to := o.At
	to.Along += unit.Inch
	if err := b.doc().Do(edit.Steps{Edits: []edit.Edit{edit.KeepWalk{Walked: walked}, edit.MoveOpening{ID: o.ID, To: to}}}); err != nil {
		b.t.Fatal(err)
	}
	b.run("compare-walk")
	waiting := b.voice.say("compare.wait", "Both plans are compared …")
	b.until("the changes", func() bool { return !strings.Contains(textOf(b.dialog()), waiting) })
	if text := textOf(b.dialog()); !strings.Contains(text, "2026-03-02") || !strings.Contains(text, o.Tag) {
		b.t.Errorf("since the walk it lists %q", text)
	}
}

// chosenBeside waits for the policies to stand beside each other.
func (b *bench) chosenBeside() {
	b.t.Helper()
	waiting := b.voice.say("choice.wait", "Every box is tried in its place …")
	b.until("the policies", func() bool { return !strings.Contains(textOf(b.dialog()), waiting) })
}

// TestNothingIsCutOffOrCovered looks at every scene in windows of three sizes in light,
// dark and high contrast, and on the way in both languages, both systems and at a large
// scale: no text is cut off or lies over another, and all can be read. With STUDBAY_SHOTS
// naming a folder it leaves pictures there. Under the race detector it looks at one window:
// what runs beside the window does so in all alike.
func TestNothingIsCutOffOrCovered(t *testing.T) {
	shots := os.Getenv("STUDBAY_SHOTS")
	for i, tt := range []struct {
		width, height float32
		mode          look.Mode
		language      string
		units         string
		percent       int
	}{
		{1366, 768, look.LightMode, "en", "imperial", 100},
		{1366, 768, look.DarkMode, "es", "metric", 100},
		{1366, 768, look.ContrastMode, "en", "metric", 100},
		{1440, 900, look.LightMode, "es", "imperial", 100},
		{1440, 900, look.DarkMode, "en", "imperial", 100},
		{1440, 900, look.ContrastMode, "es", "metric", 90},
		{2560, 1440, look.LightMode, "en", "imperial", 100},
		{2560, 1440, look.DarkMode, "es", "imperial", 115},
		{2560, 1440, look.ContrastMode, "es", "metric", 150},
	} {
		if racing && i > 0 {
			break
		}
		name := fmt.Sprintf("%.0f %s %s %s %d", tt.width, tt.mode, tt.language, tt.units, tt.percent)
		t.Run(name, func(t *testing.T) {
			b := newBench(t)
			b.window.Resize(fyne.NewSize(tt.width, tt.height))
			b.prefs.SetScale(tt.percent)
			b.prefs.SetMode(tt.mode)
			b.prefs.SetLanguage(tt.language)
			b.house.applyTheme()
			b.house.rebuildAll()
			b.run("demo")
			b.run("command.units-" + tt.units)
			b.checked()
			cottage := b.doc().Plan()
			for i, s := range scenes {
				b.staged(cottage)
				s.show(b)
				for _, fault := range b.sight().faults() {
					t.Errorf("%s: %s", s.name, fault)
				}
				if shots != "" {
					b.shoot(filepath.Join(shots, fmt.Sprintf("%s, %02d %s.png", name, i+1, s.name)))
				}
			}
		})
	}
}

// shoot leaves a picture of the window, drawn by the toolkit's software painter.
func (b *bench) shoot(path string) {
	b.t.Helper()
	out, err := os.Create(path)
	if err != nil {
		b.t.Fatal(err)
	}
	defer out.Close()
	if err := png.Encode(out, b.window.Canvas().Capture()); err != nil {
		b.t.Fatal(err)
	}
}
