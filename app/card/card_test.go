package card

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	_ "studbay/app/quiet"
	"studbay/fill"
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// desktop is a window of a few lines for cards under test.
type desktop struct {
	t       *testing.T
	history *plan.History
	edits   int
	went    fill.Finding
	chosen  []plan.ID
	ran     string
}

func (d *desktop) Do(e plan.Edit) error        { d.edits++; return d.history.Do(e) }
func (d *desktop) Select(ids ...plan.ID)       { d.chosen = ids }
func (d *desktop) Go(f fill.Finding)           { d.went = f }
func (d *desktop) Shortcut(fyne.Shortcut) bool { return false }
func (d *desktop) Run(command string) bool     { d.ran = command; return true }
func (d *desktop) Reveal(fyne.CanvasObject)    {}
func (d *desktop) NewID(byte) plan.ID          { return "" }

func (d *desktop) context() Context {
	d.t.Helper()
	ix := plan.NewIndex(d.history.Plan())
	result, err := fill.Check(ix)
	if err != nil {
		d.t.Fatal(err)
	}
	return Context{Window: d, Index: ix, Result: result, Width: 320}
}

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
	d := &desktop{t: t, history: plan.NewHistory(p, 0)}
	w, h := 14*unit.Foot, 12*unit.Foot
	room := plan.NewRoom(den, "Den", plan.UseDen, geom.Polygon{{}, {X: w}, {X: w, Y: h}, {Y: h}},
		[]plan.ID{north, "seaaaaaaa", "ssaaaaaaa", "swaaaaaaa"})
	room.Ceiling = 8 * unit.Foot
	opening := fill.NewOpening("duplex", plan.OnFace(north, 6*unit.Foot))
	opening.ID = plug
	for _, e := range []plan.Edit{plan.AddRoom{Level: "vaaaaaaaa", Room: room}, plan.AddOpening{Opening: opening}} {
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

// fieldNamed finds a field in a card by its name.
func fieldNamed(t *testing.T, c Card, name string) *Field {
	t.Helper()
	var found *Field
	walk(c.Object(), func(o fyne.CanvasObject) {
		if f, ok := o.(*Field); ok && f.label.Words() == name {
			found = f
		}
	})
	if found == nil {
		t.Fatalf("no field %q", name)
	}
	return found
}

func choiceNamed(t *testing.T, c Card, name string) *Choice {
	t.Helper()
	var found *Choice
	walk(c.Object(), func(o fyne.CanvasObject) {
		if f, ok := o.(*Choice); ok && f.label == name {
			found = f
		}
	})
	if found == nil {
		t.Fatalf("no choice %q", name)
	}
	return found
}

// walk visits everything, also what is folded away.
func walk(o fyne.CanvasObject, visit func(fyne.CanvasObject)) {
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

func typed(f *Field, text string) {
	f.Entry().SetText(text)
	f.Entry().OnSubmitted(text)
}

func TestAFieldNotEditedWritesNothing(t *testing.T) {
	d := newDesktop(t)
	// A third of an inch cannot be shown to a sixteenth: the field must not round it.
	at := plan.OnFace(north, 6*unit.Foot+unit.Inch/3)
	if err := d.history.Do(plan.MoveOpening{ID: plug, To: at}); err != nil {
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
	typed(fieldNamed(t, c, "Height to centre"), "1.1 m")
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
	f := fieldNamed(t, c, "Height to centre")
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

func TestHeightRestatedDoesNotMoveTheBox(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	room, _ := d.history.Plan().Room(den)
	before := fill.CentreHeight(d.plug(), room)
	for _, o := range choiceNamed(t, c, "Height goes to").Options() {
		o.Do()
		c.Show(d.context())
		if got := fill.CentreHeight(d.plug(), room); got != before {
			t.Errorf("told to %s, the centre is at %v, want %v", o.Label, got, before)
		}
	}
}

// contentsOf finds the lines of what is in the box: the first has the name, the last is
// for more.
func contentsOf(t *testing.T, c Card) (lines []*Field) {
	t.Helper()
	seen := false
	walk(c.Object(), func(o fyne.CanvasObject) {
		if f, ok := o.(*Field); ok {
			seen = seen && f.label.Words() == "" || f.label.Words() == "In the box"
			if seen {
				lines = append(lines, f)
			}
		}
	})
	if len(lines) == 0 {
		t.Fatal("the card does not list what is in the box")
	}
	return lines
}

func TestContentsAreTypedInTheWordsOfTheCalculator(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	lines := contentsOf(t, c)
	// The kind assumes two cables and the device: two lines, and one for more.
	if len(lines) != 3 || lines[0].Entry().Text != "cable 12/2 x2" && lines[0].Entry().Text != "cable 12/2x2" {
		t.Fatalf("%d lines, the first %q", len(lines), lines[0].Entry().Text)
	}
	typed(lines[2], "cable 12/2")
	c.Show(d.context())
	if got := d.plug().Contents; got == nil || got.Source != plan.ContentsStated || len(got.Items) != 3 {
		t.Fatalf("contents are %+v, want three items as stated", got)
	}
	// Six conductors, a yoke and the grounds: 9 allowances of 2.25 in³, NEC 2023 Table 314.16(B)(1).
	if said := textOf(c.Object()); !strings.Contains(said, "20.25") || !strings.Contains(said, "in³ over") {
		t.Errorf("the card does not show what is over:\n%s", said)
	}
	lines = contentsOf(t, c)
	if len(lines) != 4 || lines[2].Entry().Text != "cable 12/2" || lines[3].Entry().Text != "" {
		t.Fatalf("%d lines after one more", len(lines))
	}
	typed(lines[3], "cable twelve")
	if lines[3].Wrong() == "" {
		t.Error("contents that cannot be read are not refused")
	}
	lines[3].restore()
	typed(lines[2], "")
	c.Show(d.context())
	if got := d.plug().Contents; len(got.Items) != 2 || len(contentsOf(t, c)) != 3 {
		t.Errorf("an emptied line leaves %+v", got)
	}
}

// takeOption chooses an option that begins with a text.
func takeOption(t *testing.T, c *Choice, begins string) {
	t.Helper()
	for _, o := range c.Options() {
		if strings.HasPrefix(o.Label, begins) {
			o.Do()
			return
		}
	}
	t.Fatalf("%s has no option %q", c.label, begins)
}

// TestABoxIsPutTogetherByHand: a 4 × 1-1/2 square of Table 314.16(A) holds 21.0 in³; a
// ring without a mark adds nothing, one marked 3.5 its mark, 314.16(A).
func TestABoxIsPutTogetherByHand(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	volume := func() string {
		c.Show(d.context())
		built, ok, err := fill.BuiltOf(d.plug().Assembly)
		if err != nil || !ok {
			t.Fatalf("%+v: %v", d.plug().Assembly, err)
		}
		return built.Volume().String()
	}
	takeOption(t, choiceNamed(t, c, "Box"), "SQ1")
	c.Show(d.context())
	takeOption(t, choiceNamed(t, c, "The box itself"), "Take SQ1 apart")
	if got := volume(); got != "21" || d.plug().Assembly.Box != "sq4-1.5" || len(d.plug().Assembly.Parts) != 1 {
		t.Errorf("taken apart it is %s, %+v; want 21 of sq4-1.5 and a ring", got, d.plug().Assembly)
	}
	typed(fieldNamed(t, c, "Mark read off it"), "3.5")
	if got := volume(); got != "24.5" {
		t.Errorf("with a ring marked 3.5 it is %s, want 24.5", got)
	}
	takeOption(t, choiceNamed(t, c, "Put on it"), "Extension, 4 × 1-1/2")
	if got := volume(); got != "45.5" {
		t.Errorf("with an extension of the same size it is %s, want 45.5", got)
	}
	takeOption(t, choiceNamed(t, c, "On it, 2"), "take it off")
	c.Show(d.context())
	takeOption(t, choiceNamed(t, c, "Barrier"), "one of metal")
	c.Show(d.context())
	takeOption(t, choiceNamed(t, c, "Cover"), "Plate, one gang")
	if a := d.plug().Assembly; volume() != "24.5" || len(a.Parts) != 1 || len(a.Barriers) != 1 || a.Cover != "plate-1g" {
		t.Errorf("then it is %+v", a)
	}
	takeOption(t, choiceNamed(t, c, "Box"), "PN2")
	if a := d.plug().Assembly; a.Box != "" || a.Code != "PN2" {
		t.Errorf("a listed assembly leaves %+v", a)
	}
}

func TestEveryYokeIsToldOf(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	takeOption(t, choiceNamed(t, c, "Another yoke"), "One-pole switch")
	c.Show(d.context())
	devices := d.plug().Devices
	if len(devices) != 2 || devices[0].Kind != "duplex receptacle" || devices[0].Size != 12 || devices[1].Kind != "one-pole switch" {
		t.Fatalf("devices are %+v, want the kind's own and the switch", devices)
	}
	takeOption(t, choiceNamed(t, c, "Switched"), "One half")
	c.Show(d.context())
	typed(fieldNamed(t, c, "Largest wire, AWG"), "10")
	c.Show(d.context())
	typed(fieldNamed(t, c, "Gangs it needs"), "2")
	c.Show(d.context())
	if got := d.plug().Devices[1]; got.Switched != plan.HalfSwitched || got.Size != 10 || got.Gangs != 2 {
		t.Errorf("the second yoke is %+v", got)
	}
	takeOption(t, choiceNamed(t, c, "Yoke 2"), "take it out")
	c.Show(d.context())
	if got := d.plug().Devices; len(got) != 1 {
		t.Errorf("one taken out leaves %+v", got)
	}
	typed(fieldNamed(t, c, "Gangs"), "2")
	if got := d.plug().Gangs; got != 2 {
		t.Errorf("gangs are %d, want 2", got)
	}
}

func TestUnknownContentsGetNoVerdict(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	for _, o := range choiceNamed(t, c, "Known from").Options() {
		if o.Label == "Not known" {
			o.Do()
		}
	}
	c.Show(d.context())
	said := textOf(c.Object())
	if !strings.Contains(said, "no verdict") || strings.Contains(said, "to spare") {
		t.Errorf("a box of unknown contents says:\n%s", said)
	}
}

func TestACardOfWhatIsGoneAsksForAnother(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	if err := d.history.Do(plan.RemoveOpening{ID: plug}); err != nil {
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
	ref, _ := plan.NewIndex(d.history.Plan()).Side(north)
	if got := ref.Line().Length(); got != 15*unit.Foot {
		t.Errorf("the north face is %v, want 15 ft", got)
	}
}

func TestFindingsAreListedByRoomWorstFirst(t *testing.T) {
	d := newDesktop(t)
	c := d.context()
	findings := NewFindings()
	findings.Show(c)
	list := findings.Object()
	said := textOf(list)
	all := c.Result.All()
	if len(all) == 0 {
		t.Fatal("the den with one receptacle has no finding")
	}
	if !strings.Contains(said, c.Counts()) || !strings.Contains(said, "Den") {
		t.Errorf("the list lacks counts or room:\n%s", said)
	}
	var row *look.Press
	walk(list, func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok && row == nil {
			row = p
		}
	})
	test.Tap(row)
	if d.went.Rule != all[0].Rule {
		t.Errorf("the first row goes to %q, want %q", d.went.Rule, all[0].Rule)
	}
}

// TestEveryLineOfTheWorkingHasItsPhrase holds the short words of the sum to all lines
// that box fill can write, in every edition.
func TestEveryLineOfTheWorkingHasItsPhrase(t *testing.T) {
	contents, err := box.ParseContents("cable 12/2 x5; conductor 14; through 12; loop 12; ground 12; isolated-ground 12; fixture-wire 18 x2; canopy; device 12; device 10:2; clamps; fitting stud; fitting hickey; terminal-block 12")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range code.Editions() {
		figures, err := code.Edition(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []box.Contents{contents, {{What: box.Clamps}}} {
			lines, _, err := box.Need(figures, c)
			if err != nil {
				t.Fatal(err)
			}
			for _, l := range lines {
				short := words.Voice{}.Say(phraseOf(l).short(l))
				if short == l.What.String() || len(short) > 28 {
					t.Errorf("%s: %q (%s) has no short form: %q", name, l.What, l.What.ID, short)
				}
			}
		}
	}
}

func TestVolumesAlignAtTheirPoint(t *testing.T) {
	for _, tt := range []struct {
		volume   unit.Volume
		decimals int
		want     string
	}{
		{13*unit.CubicInch + unit.CubicInch/2, 2, "13.50"},
		{unit.CubicInch * 9 / 16, 2, "0.5625"},
		{18 * unit.CubicInch, 1, "18.0"},
		{18 * unit.CubicInch, 0, "18"},
		{-9 * unit.CubicInch / 4, 2, "−2.25"},
	} {
		if got := withDecimals(tt.volume, tt.decimals); got != tt.want {
			t.Errorf("withDecimals(%v, %d) = %q, want %q", tt.volume, tt.decimals, got, tt.want)
		}
	}
}

func TestCircuitCardTakesOnlyWholeNumbers(t *testing.T) {
	d := newDesktop(t)
	circuit := plan.Circuit{ID: "kaaaaaaaa", Number: "7", Amps: 15, Volts: 120, Poles: 1}
	if err := d.history.Do(plan.AddCircuit{Circuit: circuit}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{circuit.ID})
	f := fieldNamed(t, c, "Amperes")
	typed(f, "many")
	if f.Wrong() == "" {
		t.Error("amperes that are no number are not refused")
	}
	typed(f, "20")
	if now, _ := d.history.Plan().Circuits.Get(circuit.ID); now.Amps != 20 {
		t.Errorf("the breaker has %d A, want 20", now.Amps)
	}
	plain := For(d.context(), nil)
	if said := textOf(plain.Object()); !strings.Contains(said, "7") || !strings.Contains(said, "Circuits") {
		t.Errorf("the plan's card does not list the circuit:\n%s", said)
	}
}

// pressNamed presses the button on a card that says a text.
func pressNamed(t *testing.T, c Card, says string) {
	t.Helper()
	var found *look.Press
	walk(c.Object(), func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok && strings.Contains(textOf(p.Content), says) {
			found = p
		}
	})
	if found == nil {
		t.Fatalf("nothing to press says %q", says)
	}
	test.Tap(found)
}

func TestASettledDecisionLeavesItsAnswer(t *testing.T) {
	d := newDesktop(t)
	const id = plan.ID("daaaaaaaa")
	if err := d.history.Do(plan.AddDecision{Decision: plan.Decision{ID: id, Question: "How thick is the tile?", About: []plan.ID{plug, north, den}}}); err != nil {
		t.Fatal(err)
	}
	plain := For(d.context(), nil)
	pressNamed(t, plain, "How thick is the tile?")
	if len(d.chosen) != 1 || d.chosen[0] != id {
		t.Fatalf("pressing the decision chose %v", d.chosen)
	}
	c := For(d.context(), d.chosen)
	typed(fieldNamed(t, c, "Settled: it is"), "3/8 in")
	if _, open := d.history.Plan().Decisions.Get(id); open {
		t.Error("a settled decision is still open")
	}
	room, _ := d.history.Plan().Room(den)
	for what, note := range map[string]string{"opening": d.plug().Note, "room": room.Note} {
		if note != "How thick is the tile? 3/8 in" {
			t.Errorf("the note of the %s is %q, want question and answer once", what, note)
		}
	}
	if d.history.Undo(); d.plug().Note != "" {
		t.Error("one undo does not take it back")
	}
}

func TestLayersAreAddedChangedAndTakenOut(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{north})
	finish := func() []plan.Layer {
		c.Show(d.context())
		ref, _ := plan.NewIndex(d.history.Plan()).Side(north)
		return ref.Side().Finish
	}
	typed(fieldNamed(t, c, "One more layer"), "cement board")
	if got := finish(); len(got) != 1 || got[0].Name != "cement board" {
		t.Fatalf("layers are %+v, want one of cement board", got)
	}
	typed(fieldNamed(t, c, "One more layer"), "wood")
	finish()
	typed(fieldNamed(t, c, "Thickness"), "3/4\"")
	finish()
	takeOption(t, choiceNamed(t, c, "It burns"), "Yes")
	if got := finish(); len(got) != 2 || got[1].Thickness != 3*unit.Inch/4 || !got[1].Combustible || got[0].Combustible {
		t.Errorf("layers are %+v, want 3/4 in of wood that burns on top", got)
	}
	typed(fieldNamed(t, c, "Layer 1"), "")
	if got := finish(); len(got) != 1 || got[0].Name != "wood" {
		t.Errorf("layers are %+v, want the wood alone", got)
	}
	r := For(d.context(), []plan.ID{den})
	typed(fieldNamed(t, r, "One more layer"), "oak")
	if room, _ := d.history.Plan().Room(den); len(room.Floor) != 1 || room.Floor[0].Name != "oak" {
		t.Errorf("the floor is %+v, want oak", room.Floor)
	}
}

func TestAnAmendmentTakesOnlyWhatItsFigureCan(t *testing.T) {
	d := newDesktop(t)
	a := plan.Amendment{ID: "aaaaaaaaa", Figure: "wall-reach", Value: "72", Reason: "county code"}
	if err := d.history.Do(plan.AddAmendment{Amendment: a}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{a.ID})
	f := fieldNamed(t, c, "Value")
	typed(f, "far")
	if f.Wrong() == "" {
		t.Error("a reach of \"far\" is not refused")
	}
	f.restore()
	typed(f, "60")
	typed(fieldNamed(t, c, "Reason"), "")
	if now, _ := d.history.Plan().Amendments.Get(a.ID); now.Value != "60" || now.Reason != "county code" {
		t.Errorf("the amendment is %+v, want 60 with its reason", now)
	}
	pressNamed(t, c, "Take it back")
	if d.ran != "delete" {
		t.Errorf("taking it back ran %q", d.ran)
	}
}

func TestEveryFigureOfferedIsOne(t *testing.T) {
	for _, f := range Figures {
		for _, edition := range code.Editions() {
			ok := false
			for _, value := range []string{"1", "yes"} {
				ok = ok || CheckAmendment(edition, plan.Amendment{Figure: f.Name, Value: value, Reason: "test"}) == nil
			}
			if !ok {
				t.Errorf("%s: no value is taken for %s", edition, f.Name)
			}
		}
	}
}

func TestWaiverAndLevelCards(t *testing.T) {
	d := newDesktop(t)
	w := plan.Waiver{ID: "waaaaaaaa", Rule: "box-fill", About: plug, Reason: "measured"}
	if err := d.history.Do(plan.AddWaiver{Waiver: w}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{w.ID})
	typed(fieldNamed(t, c, "Who decided"), "the inspector")
	if now, _ := d.history.Plan().Waivers.Get(w.ID); now.By != "the inspector" {
		t.Errorf("the waiver is %+v", now)
	}
	l := For(d.context(), []plan.ID{"vaaaaaaaa"})
	typed(fieldNamed(t, l, "Name"), "Upstairs")
	l.Show(d.context())
	typed(fieldNamed(t, l, "Subfloor at"), "9'")
	if now := d.history.Plan().Levels[0]; now.Name != "Upstairs" || now.Elevation != 9*unit.Foot {
		t.Errorf("the level is %q at %v", now.Name, now.Elevation)
	}
}

func TestUpIsWholeDegrees(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), nil)
	f := fieldNamed(t, c, "Up is, degrees")
	if typed(f, "400"); f.Wrong() == "" {
		t.Error("400 degrees are not refused")
	}
	if typed(f, "90"); d.history.Plan().Header.North != 90 {
		t.Errorf("up is %d, want 90", d.history.Plan().Header.North)
	}
}

func TestOneIsSaidAsOne(t *testing.T) {
	for _, tt := range []struct {
		text words.Text
		want string
	}{
		{roomsText(1), "1 room"}, {roomsText(2), "2 rooms"}, {roomsText(0), "0 rooms"},
		{openingsText(1), "1 opening"}, {openingsText(12), "12 openings"},
		{openText(1), "1 open decision"}, {openText(3), "3 open decisions"},
	} {
		if got := tt.text.String(); got != tt.want {
			t.Errorf("said %q, want %q", got, tt.want)
		}
	}
}

// TestCardsKeepToTheirColumn holds every card to its width at every scale of the
// interface: what is wider is cut at the edge of the window.
func TestCardsKeepToTheirColumn(t *testing.T) {
	d := newDesktop(t)
	contents, err := box.ParseContents("cable 12/2 x3; device 12")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range []plan.Edit{
		plan.SetAssembly{ID: plug, Assembly: plan.Assembly{Code: "PN1"}},
		plan.SetContents{ID: plug, Contents: fill.StatedContents(contents)},
		plan.AddDecision{Decision: plan.Decision{ID: "daaaaaaaa", Question: "How thick is the tile behind the vanity?", About: []plan.ID{plug}}},
	} {
		if err := d.history.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	for _, scale := range []float32{.9, 1, 1.5, 2} {
		fyne.CurrentApp().Settings().SetTheme(&look.Theme{Mode: look.LightMode, Scale: scale})
		c := d.context()
		c.Width = 256 * scale // of the narrowest column
		for _, chosen := range [][]plan.ID{nil, {plug}, {den}, {north}, {"daaaaaaaa"}, {"vaaaaaaaa"}} {
			if got := For(c, chosen).Object().MinSize().Width; got > c.Width {
				t.Errorf("scale %v: the card of %v wants %v, its column has %v", scale, chosen, got, c.Width)
			}
		}
		list := NewFindings()
		list.Show(c)
		if got := list.Object().MinSize().Width; got > c.Width {
			t.Errorf("scale %v: the findings want %v, their column has %v", scale, got, c.Width)
		}
	}
}
