package card

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/card/bind"
	"studbay/app/card/found"
	_ "studbay/app/locale"
	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/fill"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// desktop is a window of a few lines for cards under test.
type desktop struct {
	t       *testing.T
	history *edit.History
	edits   int
	went    rule.Finding
	given   int // times the keys were given back
	menuOf  rule.Finding
	chosen  []plan.ID
	ran     string
	voice   words.Voice
}

func (d *desktop) Do(e edit.Edit) error { d.edits++; return d.history.Do(e) }

func (d *desktop) Select(ids ...plan.ID) { d.chosen = ids }

func (d *desktop) Go(f rule.Finding) { d.went = f }

func (d *desktop) Shortcut(fyne.Shortcut) bool { return false }

func (d *desktop) Run(command string) bool { d.ran = command; return true }

func (d *desktop) Reveal(fyne.CanvasObject) {}

func (d *desktop) GiveKeys() { d.given++ }

func (d *desktop) Menu(f rule.Finding, _ fyne.Position) { d.menuOf = f }

func (d *desktop) context() bind.Context {
	d.t.Helper()
	ix := index.New(d.history.Plan())
	result, err := fill.Check(ix)
	if err != nil {
		d.t.Fatal(err)
	}
	return bind.Context{Window: d, Index: ix, Result: result, Voice: d.voice, Width: 320}
}

var textOf = windowtest.AllTextOf

const (
	den   = plan.ID("rdenaaaaa")
	north = plan.ID("snaaaaaaa")
	plug  = plan.ID("opaaaaaaa")
)

// newDesktop begins with a den of 14 by 12 feet and a receptacle in its north face.
func newDesktop(t *testing.T) *desktop {
	t.Helper()
	app := test.NewApp()
	t.Cleanup(app.Quit)
	app.Settings().SetTheme(&look.Theme{Mode: look.LightMode})
	p := plan.New("Den", "vaaaaaaaa")
	d := &desktop{t: t, history: edit.NewHistory(p, 0)}
	w, h := 14*unit.Foot, 12*unit.Foot
	room := plan.NewRoom(den, "Den", plan.UseDen, geom.Polygon{{}, {X: w}, {X: w, Y: h}, {Y: h}},
		[]plan.ID{north, "seaaaaaaa", "ssaaaaaaa", "swaaaaaaa"})
	room.Ceiling = 8 * unit.Foot
	opening := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(north, 6*unit.Foot))
	opening.ID = plug
	for _, e := range []edit.Edit{edit.AddRoom{Level: "vaaaaaaaa", Room: room}, edit.AddOpening{Opening: opening}} {
		if err := d.history.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	return d
}

func (d *desktop) plug() *plan.Opening {
	o, _ := d.history.Plan().Opening(plug)
	return o
}

// everything lists all of a type on a card, also what is folded away.
func everything[T fyne.CanvasObject](c Card) (all []T) {
	windowtest.WalkAll(c.Object(), func(o fyne.CanvasObject) {
		if w, ok := o.(T); ok {
			all = append(all, w)
		}
	})
	return all
}

// named finds the last field or choice of a name on a card.
func named[T interface {
	fyne.CanvasObject
	Label() string
}](t *testing.T, c Card, name string) (found T) {
	t.Helper()
	has := false
	for _, w := range everything[T](c) {
		if w.Label() == name && (!has || w.Visible() || !found.Visible()) {
			found, has = w, true // what is in sight, where there are two
		}
	}
	if !has {
		t.Fatalf("nothing to fill in is called %q", name)
	}
	return found
}

func fieldNamed(t *testing.T, c Card, name string) *look.Field {
	t.Helper()
	return named[*look.Field](t, c, name)
}

func choiceNamed(t *testing.T, c Card, name string) *look.Choice {
	t.Helper()
	return named[*look.Choice](t, c, name)
}

func typed(f *look.Field, text string) {
	f.Entry().SetText(text)
	f.Entry().OnSubmitted(text)
}

func TestAFieldNotEditedWritesNothing(t *testing.T) {
	d := newDesktop(t)
	// A third of an inch cannot be shown to a sixteenth: the field must not round it.
	at := plan.OnFace(north, 6*unit.Foot+unit.Inch/3)
	if err := d.history.Do(edit.MoveOpening{ID: plug, To: at}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{plug})
	f := fieldNamed(t, c, "From west corner")
	if !strings.HasPrefix(f.Entry().Text, "≈") {
		t.Errorf("a rounded distance shows %q, want it marked", f.Entry().Text)
	}
	f.Entry().FocusGained()
	f.Entry().FocusLost()
	typed(f, f.Entry().Text)
	if d.edits != 0 || d.plug().At != at {
		t.Errorf("%d edits, place %v; want none and %v", d.edits, d.plug().At, at)
	}
}

func TestAnEditedFieldWritesOnce(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	typed(fieldNamed(t, c, "Height to center"), "1.1 m")
	c.Show(d.context())
	if got, want := d.plug().Height.Value, 1100*unit.Millimetre; got != want || d.edits != 1 {
		t.Errorf("height %v after %d edits, want %v after 1", got, d.edits, want)
	}
	typed(fieldNamed(t, c, "From east corner"), "2' 6")
	if got, want := d.plug().At.Along, 14*unit.Foot-30*unit.Inch; got != want {
		t.Errorf("along %v, want %v: 2 ft 6 in from the right end of 14 ft", got, want)
	}
}

func TestWhatIsWrongStandsBesideItsField(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	f := fieldNamed(t, c, "Height to center")
	for _, text := range []string{"abc", "99'"} { // no length; above the ceiling
		typed(f, text)
		if f.Wrong() == "" || f.Entry().Text != text {
			t.Errorf("%q: wrong %q, text %q; want a reason, and what was typed kept", text, f.Wrong(), f.Entry().Text)
		}
	}
	if got := d.plug().Height.Value; got != 16*unit.Inch {
		t.Errorf("height is %v after refused texts, want it as it was", got)
	}
	f.Entry().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if f.Wrong() != "" || f.Entry().Text != `16"` {
		t.Errorf("Escape leaves %q with %q, want the plan's text and nothing wrong", f.Entry().Text, f.Wrong())
	}
}

func TestACardOfWhatIsGoneAsksForAnother(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	if err := d.history.Do(edit.Remove{Things: []plan.ID{plug}}); err != nil {
		t.Fatal(err)
	}
	if c.Show(d.context()) {
		t.Error("a card goes on showing an opening that is gone")
	}
	if For(d.context(), []plan.ID{plug}) == nil {
		t.Error("no card in place of that of what is gone")
	}
}

func TestRoomCardMovesAFace(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{den})
	typed(fieldNamed(t, c, "North face"), "15'")
	ref, _ := index.New(d.history.Plan()).Side(north)
	if got := ref.Line().Length(); got != 15*unit.Foot {
		t.Errorf("the north face is %v, want 15 ft", got)
	}
}

func TestFindingsAreListedByRoomWorstFirst(t *testing.T) {
	d := newDesktop(t)
	c := d.context()
	findings := found.NewList()
	findings.Show(&c)
	list := findings.Object()
	said := textOf(list)
	all := c.Result.All()
	if len(all) == 0 {
		t.Fatal("the den with one receptacle has no finding")
	}
	if !strings.Contains(said, found.Counts(&c)) || !strings.Contains(said, "Den") {
		t.Errorf("the list lacks counts or room:\n%s", said)
	}
	row := windowtest.All[*look.Press](list)[0]
	test.Tap(row)
	if d.went.Rule != all[0].Rule {
		t.Errorf("the first row goes to %q, want %q", d.went.Rule, all[0].Rule)
	}
}

// TestFindingsAreFilteredAndToldToTheTrade: what is chosen under the list stays out of it or
// comes back, and the wording follows what is kept of it.
func TestFindingsAreFilteredAndToldToTheTrade(t *testing.T) {
	d := newDesktop(t)
	c := d.context()
	kept := false
	c.SetTrade = func(trade bool) { kept = trade }
	findings := found.NewList()
	findings.Show(&c)
	choose := func(label, option string) {
		t.Helper()
		var choices []*look.Choice
		windowtest.WalkAll(findings.Object(), func(o fyne.CanvasObject) {
			if c, ok := o.(*look.Choice); ok && c.Label() == label {
				choices = append(choices, c)
			}
		})
		if len(choices) != 1 {
			t.Fatalf("%d choices of %s", len(choices), label)
		}
		for _, o := range choices[0].Options() {
			if o.Label == option {
				o.Do()
				return
			}
		}
		t.Fatalf("%s has no %q", label, option)
	}
	all := c.Result.All()
	last := c.Voice.Say(all[len(all)-1].Message)
	if !strings.Contains(textOf(findings.Object()), last) || all[len(all)-1].Severity == rule.Stop {
		t.Fatalf("%q is not listed, or a stop", last)
	}
	choose("Weight", "stops alone")
	if strings.Contains(textOf(findings.Object()), last) {
		t.Errorf("%q is listed among stops", last)
	}
	choose("Weight", "all")
	if !strings.Contains(textOf(findings.Object()), last) {
		t.Errorf("%q is not listed again", last)
	}
	choose("Told", "to the trade: section and figures")
	c.Trade = kept
	findings.Show(&c)
	if want := c.Voice.Say(rule.Figures(all[0])); !kept || !strings.Contains(textOf(findings.Object()), want) {
		t.Errorf("to the trade %v: no %q in\n%s", kept, want, textOf(findings.Object()))
	}
}

// pressNamed presses the button on a card that says a text.
func pressNamed(t *testing.T, c Card, says string) {
	t.Helper()
	var found *look.Press
	for _, p := range everything[*look.Press](c) {
		if strings.Contains(textOf(p.Content), says) {
			found = p
		}
	}
	if found == nil {
		t.Fatalf("nothing to press says %q", says)
	}
	test.Tap(found)
}

func TestTypingReplacesALineReachedByTheKeys(t *testing.T) {
	d := newDesktop(t)
	f := fieldNamed(t, For(d.context(), []plan.ID{plug}), "Height to center")
	f.Entry().FocusGained()
	f.Entry().TypedRune('9')
	if got := f.Entry().Text; got != "9" {
		t.Errorf("typed 9 into a line just reached: %q", got)
	}
}

// TestJoistsAreToldOnTheRoom: what is typed on the card of the room is what a light in its
// ceiling is held by: joists taped at 34 and 50 in from the north wall leave it a block of
// 50 − 34 − 1-1/2 = 14-1/2 in.
func TestJoistsAreToldOnTheRoom(t *testing.T) {
	d := newDesktop(t)
	light := part.NewOpening(unit.Imperial, "ceiling-light", plan.OnCeiling(den, geom.Point{X: 7 * unit.Foot, Y: 42 * unit.Inch}))
	light.ID = "opbbbbbbb"
	if err := d.history.Do(edit.AddOpening{Opening: light}); err != nil {
		t.Fatal(err)
	}
	said := func() string { return textOf(For(d.context(), []plan.ID{light.ID}).Object()) }
	if text := said(); !strings.Contains(text, "Nobody tells where the joists are") {
		t.Errorf("with no joists the card says %s", text)
	}
	c := For(d.context(), []plan.ID{den})
	typed(fieldNamed(t, c, "Joists on center"), "16")
	now, _ := d.history.Plan().Room(den)
	joists := now.Joists
	joists.Along = north
	room := *now
	room.Joists = joists
	if err := d.history.Do(edit.ChangeRoom{Room: room}); err != nil {
		t.Fatal(err)
	}
	c = For(d.context(), []plan.ID{den})
	typed(fieldNamed(t, c, "Joists taped at"), "34, 50")
	if text := said(); !strings.Contains(text, `between joists at 34-3/4" and 49-1/4" from the north wall`) || !strings.Contains(text, `cut 14-1/2" long`) || !strings.Contains(text, "measured") {
		t.Errorf("the card says %s", text)
	}
	if text := textOf(For(d.context(), []plan.ID{den}).Object()); !strings.Contains(text, "2 joists, measured") {
		t.Errorf("the card of the room says %s", text)
	}
}
