package look

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	_ "studbay/app/locale"
)

// menuOn shows a menu of many lines in a window.
func menuOn(t *testing.T, items []MenuItem) (*Menu, fyne.Canvas) {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	app.Settings().SetTheme(&Theme{Mode: LightMode})
	w := app.NewWindow("menu")
	w.SetContent(container.NewWithoutLayout())
	w.Resize(fyne.NewSize(640, 400))
	return ShowMenu(w.Canvas(), fyne.NewPos(600, 380), 120, items), w.Canvas()
}

func TestAMenuLongerThanTheWindowScrolls(t *testing.T) {
	chosen := -1
	var items []MenuItem
	for i := range 60 {
		items = append(items, MenuItem{Label: fmt.Sprintf("line %d", i), Checked: i == 50, Do: func() { chosen = i }})
	}
	m, on := menuOn(t, items)
	p := m.panels[0]
	if at, size := p.Position(), p.Size(); at.Y < 0 || at.Y+size.Height > 400 || at.X+size.Width > 640 {
		t.Fatalf("the menu stands at %v %v, out of a window of 640 by 400", at, size)
	}
	if p.active != 50 || p.scroll.Offset.Y == 0 {
		t.Errorf("line %d is in hand, scrolled by %v; want the one in force in sight", p.active, p.scroll.Offset.Y)
	}
	for _, key := range []fyne.KeyName{fyne.KeyDown, fyne.KeyReturn} {
		m.Panel().TypedKey(&fyne.KeyEvent{Name: key})
	}
	if chosen != 51 || on.Overlays().Top() != nil {
		t.Errorf("chosen %d with the menu there %v, want 51 and none", chosen, on.Overlays().Top() != nil)
	}
}

func TestAMenuWithinAMenu(t *testing.T) {
	chosen, closed := "", 0
	do := func(name string) func() { return func() { chosen = name } }
	items := []MenuItem{
		{Label: "off", Disabled: true, Do: do("off")},
		{Label: "more", Sub: []MenuItem{{Label: "inner", Do: do("inner")}}},
		{Label: "plain", Line: true, Do: do("plain")},
	}
	m, on := menuOn(t, items)
	m.OnClose = func() { closed++ }
	keys := func(names ...fyne.KeyName) {
		for _, name := range names {
			m.Panel().TypedKey(&fyne.KeyEvent{Name: name})
		}
	}
	test.Tap(m.panels[0].rows[0])
	if chosen != "" {
		t.Error("a line that is off was chosen")
	}
	keys(fyne.KeyDown, fyne.KeyRight)
	if len(m.panels) != 2 {
		t.Fatal("right does not open the menu within")
	}
	keys(fyne.KeyLeft)
	if len(m.panels) != 1 {
		t.Fatal("left does not close it")
	}
	keys(fyne.KeyReturn, fyne.KeyReturn)
	if chosen != "inner" || closed != 1 || on.Overlays().Top() != nil {
		t.Errorf("chosen %q, closed %d times", chosen, closed)
	}
}

// TestALongMenuIsFoundByTyping finds lines that hold what is typed, wherever in them.
func TestALongMenuIsFoundByTyping(t *testing.T) {
	chosen := ""
	var items []MenuItem
	for _, name := range []string{"Bedroom", "Bath", "Living room", "Mudroom", "Room of machines", "Baño Principal"} {
		items = append(items, MenuItem{Label: name, Checked: name == "Bath", Do: func() { chosen = name }})
	}
	_, on := menuOn(t, nil)
	m := ShowFinder(on, fyne.NewPos(0, 0), 120, items, MenuFind{Hint: "type", None: "none"})
	p := m.panels[0]
	typed := func(text string) {
		for _, r := range text {
			p.TypedRune(r)
		}
	}
	labels := func() (all []string) {
		for _, item := range p.items {
			all = append(all, item.Label)
		}
		return all
	}
	if p.finds.said.Words() != "type" || p.active != 1 {
		t.Fatalf("it begins with %q and line %d", p.finds.said.Words(), p.active)
	}
	typed("rOOm")
	if got := labels(); len(got) != 4 || p.items[p.active].Label != "Room of machines" {
		t.Errorf("“room” leaves %v with line %d in hand, want the one that begins so", got, p.active)
	}
	typed(" of")
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	if got := labels(); len(got) != 1 || chosen != "" {
		t.Errorf("“room of” leaves %v, and %q is chosen by the space in it", got, chosen)
	}
	typed("zz")
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if len(labels()) != 0 || p.finds.said.Words() != "room ofzz|  none" && p.finds.said.Words() != "rOOm ofzz|  none" {
		t.Errorf("nothing found shows %v and says %q", labels(), p.finds.said.Words())
	}
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyBackspace})
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(labels()) != len(items) || on.Overlays().Top() == nil {
		t.Fatal("Escape does not first bring all lines back")
	}
	tall := m.Size().Height
	typed("principal ban")
	if got := labels(); len(got) != 1 || got[0] != "Baño Principal" {
		t.Errorf("words without accents leave %v", got)
	}
	if m.Size().Height >= tall {
		t.Errorf("one line is %v tall, all were %v", m.Size().Height, tall)
	}
	typed("zz")
	if got, most := m.Size().Height, p.above()+Scaled(2*menuGap); got > most {
		t.Errorf("with nothing found it is %v tall, want the line that says so alone, %v", got, most)
	}
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if m.Size().Height != tall {
		t.Errorf("with all lines again it is %v tall, want %v", m.Size().Height, tall)
	}
	typed("mud")
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if chosen != "Mudroom" {
		t.Errorf("Enter took %q", chosen)
	}
}
