package shell

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/plan/words"
)

// player plays whom a drawer of kinds tells.
type player struct {
	kind string
	said words.Text
}

func (p *player) Kind() string                { return p.kind }
func (p *player) TakeKind(id string)          { p.kind = id }
func (p *player) LateKinds() []string         { return nil }
func (p *player) Explain(text words.Text)     { p.said = text }
func (p *player) Explained(words.Text)        { p.said = words.Text{} }
func (p *player) Shortcut(fyne.Shortcut) bool { return false }

// markedKinds returns the kinds that the drawer marks.
func markedKinds(w *KindDrawer) (ids []string) {
	for id, rows := range w.rows {
		if rows[0].Marked() {
			ids = append(ids, id)
		}
	}
	return ids
}

// newKinds shows a drawer of kinds in a window of its own.
func newKinds(t *testing.T) (*KindDrawer, *player, fyne.Canvas) {
	t.Helper()
	app, _ := windowtest.NewApp(t)
	app.Settings().SetTheme(&look.Theme{Mode: look.LightMode, Scale: 1})
	window := app.NewWindow("")
	p := &player{kind: "duplex"}
	w := NewKindDrawer(p, window.Canvas(), words.Voice{}, "Ctrl+F")
	window.SetContent(w.Object)
	window.Resize(fyne.NewSize(224, 500))
	w.SetWidth(224)
	return w, p, window.Canvas()
}

func TestAKindIsFoundAndTakenByKeys(t *testing.T) {
	w, p, on := newKinds(t)
	taken := func(id string) bool {
		is := p.kind == id
		w.Taken()
		return is
	}
	w.Find()
	if on.Focused() != fyne.Focusable(w.search) {
		t.Fatal("the search of the drawer has not the focus")
	}
	if hint := p.said.String(); !strings.Contains(hint, "Enter") || !strings.Contains(hint, "Esc") {
		t.Errorf("the hint %q does not say how the search is worked", hint)
	}
	if ids := markedKinds(w); len(ids) > 0 {
		t.Errorf("%v marked with nothing looked for", ids)
	}
	keys := func(names ...fyne.KeyName) {
		for _, name := range names {
			on.Focused().TypedKey(&fyne.KeyEvent{Name: name})
		}
	}
	if keys(fyne.KeyReturn); on.Focused() != nil || p.kind != "duplex" {
		t.Error("Enter with nothing looked for does not go on with the kind in hand")
	}
	if !p.said.IsZero() {
		t.Errorf("the hint still says %q", p.said)
	}
	w.Find()
	test.Type(w.search, "switch")
	if ids := markedKinds(w); len(ids) != 1 || ids[0] != "switch" {
		t.Fatalf("marked %v, want the one-pole switch before the half-switched receptacle", ids)
	}
	keys(fyne.KeyDown, fyne.KeyDown, fyne.KeyUp, fyne.KeyReturn)
	if !taken("three-way") {
		t.Errorf("in hand: %s", p.kind)
	}
	if w.search.Text != "" {
		t.Error("once a kind is taken the search keeps its text")
	}
	w.Find()
	test.Type(w.search, "thermo")
	keys(fyne.KeyReturn)
	is := taken("thermostat")
	top := w.places["thermostat"].Position().Y - w.scroll.Offset.Y
	if !is || top < 0 || top > w.scroll.Size().Height-look.HitTarget {
		t.Errorf("the kind taken, %s, is not in sight: it stands at %v", p.kind, top)
	}
	p.kind = "three-way"
	w.Find()
	test.Type(w.search, "alarm")
	if n := len(w.found); n != 2 {
		t.Errorf("%d kinds found for the name of two alarms", n)
	}
	w.search.SetText("")
	test.Type(w.search, "zzz")
	keys(fyne.KeyReturn, fyne.KeyDown)
	if p.kind != "three-way" {
		t.Error("a search that finds nothing takes something")
	}
	keys(fyne.KeyEscape)
	if w.search.Text != "" || on.Focused() == nil {
		t.Fatal("Escape does not first clear the search")
	}
	keys(fyne.KeyEscape)
	if on.Focused() != nil {
		t.Error("Escape does not then leave the search")
	}
}

// TestAKindIsFoundByEverydayWords looks for kinds as homeowners and crews speak, whatever
// the language of the window.
func TestAKindIsFoundByEverydayWords(t *testing.T) {
	w, _, _ := newKinds(t)
	for text, want := range map[string]string{
		"outlet": "duplex", "plug": "duplex", "light switch": "switch", "3-way": "three-way", "sconce": "wall-light",
		"can lights": "recessed", "pot light": "recessed", "2 gang": "switch-2", "cable TV": "coax", "smoke detector": "smoke",
		"GFCI": "gfci", "can light": "recessed", "three way switch": "three-way", "gang": "switch-2", "dimmer": "dimmer",
		"tomacorriente": "duplex", "interruptor de tres vías": "three-way", "interruptor de tres vias": "three-way",
		"atenuador": "dimmer", "interruptor": "switch", "alarma de humo": "smoke", "ventilador": "fan-light",
		"enchufe": "duplex", "apagador": "switch", "foco empotrado": "recessed", "detector de humo": "smoke",
	} {
		w.search.SetText(text)
		if ids := markedKinds(w); len(ids) != 1 || ids[0] != want {
			t.Errorf("%q marks %v, want %s", text, ids, want)
		}
	}
}
