package card

import (
	"strings"
	"testing"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

func TestHeightRestatedDoesNotMoveTheBox(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	room, _ := d.history.Plan().Room(den)
	before := frame.CentreHeight(d.plug(), room)
	for _, o := range choiceNamed(t, c, "Height goes to").Options() {
		o.Do()
		c.Show(d.context())
		if got := frame.CentreHeight(d.plug(), room); got != before {
			t.Errorf("told to %s, the centre is at %v, want %v", o.Label, got, before)
		}
	}
}

func contentsIn(t *testing.T, c Card) (lines []*look.Field) {
	t.Helper()
	seen := false
	for _, f := range everything[*look.Field](c) {
		seen = seen && f.Label() == "" || f.Label() == "In the box"
		if seen {
			lines = append(lines, f)
		}
	}
	if len(lines) == 0 {
		t.Fatal("the card does not list what is in the box")
	}
	return lines
}

func TestContentsAreTypedInTheWordsOfTheCalculator(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	lines := contentsIn(t, c)
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
	// 20.25 times 16.387064 cm³, exact by definition: NIST SP 811 (2008), app. B.8.
	metric := newDesktop(t)
	metric.history, metric.voice.System = d.history, unit.Metric
	if said := textOf(For(metric.context(), []plan.ID{plug}).Object()); !strings.Contains(said, "20.25 in³ (332 cm³) needed") || !strings.Contains(said, "cm³) over") {
		t.Errorf("the card of a metric plan does not tell it in cm³:\n%s", said)
	}
	lines = contentsIn(t, c)
	if len(lines) != 4 || lines[2].Entry().Text != "cable 12/2" || lines[3].Entry().Text != "" {
		t.Fatalf("%d lines after one more", len(lines))
	}
	typed(lines[3], "cable twelve")
	if lines[3].Wrong() == "" {
		t.Error("contents that cannot be read are not refused")
	}
	lines[3].Restore()
	typed(lines[2], "")
	c.Show(d.context())
	if got := d.plug().Contents; len(got.Items) != 2 || len(contentsIn(t, c)) != 3 {
		t.Errorf("an emptied line leaves %+v", got)
	}
}

func takeOption(t *testing.T, c *look.Choice, begins string) {
	t.Helper()
	for _, o := range c.Options() {
		if strings.HasPrefix(o.Label, begins) {
			o.Do()
			return
		}
	}
	t.Fatalf("%s has no option %q", c.Label(), begins)
}

func TestABoxIsPutTogetherByHand(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	volume := func() string {
		c.Show(d.context())
		built, ok, err := part.Resolve(d.plug().Assembly)
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
	takeOption(t, choiceNamed(t, c, "Add to it"), "Extension, 4 × 1-1/2")
	if got := volume(); got != "45.5" {
		t.Errorf("with an extension of the same size it is %s, want 45.5", got)
	}
	takeOption(t, choiceNamed(t, c, "On it, 2"), "Remove it")
	c.Show(d.context())
	takeOption(t, choiceNamed(t, c, "Barrier"), "One metal")
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
	takeOption(t, choiceNamed(t, c, "Another yoke"), "Single-pole switch")
	c.Show(d.context())
	devices := d.plug().Devices
	if len(devices) != 2 || devices[0].Kind != "duplex receptacle" || devices[0].Size != 0 || devices[1].Kind != "one-pole switch" {
		t.Fatalf("devices are %+v, want the kind's own and the switch, of what reaches them", devices)
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
	takeOption(t, choiceNamed(t, c, "Yoke 2"), "Remove it")
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
	for _, o := range choiceNamed(t, c, "Source").Options() {
		if o.Label == "Not known" {
			o.Do()
		}
	}
	c.Show(d.context())
	said := textOf(c.Object())
	if !strings.Contains(said, "no verdict") || strings.Contains(said, "remaining") {
		t.Errorf("a box of unknown contents says:\n%s", said)
	}
}

// TestFinderOnTheCard tries every box once its fold is opened, uses the one picked as one step,
// and says why another fails.
func TestFinderOnTheCard(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	const title = "Every box, tried here"
	if strings.Contains(textOf(c.Object()), "do other work") {
		t.Error("boxes are tried behind a closed fold")
	}
	for _, f := range everything[*bind.Fold](c) {
		if strings.HasPrefix(textOf(f), title) {
			f.SetOpen(true)
		}
	}
	press := func(words string) {
		t.Helper()
		for _, p := range everything[*look.Press](c) {
			if strings.HasPrefix(textOf(p), words) {
				p.Tapped(nil)
				return
			}
		}
		t.Fatalf("nothing begins with %q in\n%s", words, textOf(c.Object()))
	}
	if said := textOf(c.Object()); !strings.Contains(said, "do other work") || !strings.Contains(said, "too small by") {
		t.Errorf("it says\n%s", said)
	}
	edits := d.edits
	press("Plastic nail-on, one gang, 22.5")
	press("Use here")
	if box, _ := part.Known(d.plug().Assembly); d.edits != edits+1 || box == nil || box.ID != "pn1-22.5" {
		t.Errorf("after %d edits it has %v", d.edits-edits, box)
	}
}

// TestTheFinderBlocksNoFrame: boxes are tried away from the window's goroutine, one trial at a
// time, and what was found for a plan that is gone is not shown.
func TestTheFinderBlocksNoFrame(t *testing.T) {
	d := newDesktop(t)
	type task struct{ slow, then func() }
	var waiting []task
	context := func() bind.Context {
		c := d.context()
		c.Away = func(slow, then func()) { waiting = append(waiting, task{slow, then}) }
		return c
	}
	done := func() {
		t.Helper()
		if len(waiting) != 1 {
			t.Fatalf("%d trials are under way, want one", len(waiting))
		}
		next := waiting[0]
		waiting = nil
		next.slow()
		next.then()
	}
	c := For(context(), []plan.ID{plug})
	for _, f := range everything[*bind.Fold](c) {
		if strings.HasPrefix(textOf(f), "Every box, tried here") {
			f.SetOpen(true)
		}
	}
	if said := textOf(c.Object()); !strings.Contains(said, "Every box is tried here …") || strings.Contains(said, "do other work") {
		t.Errorf("while boxes are tried it says\n%s", said)
	}
	if err := d.history.Do(edit.SetAssembly{ID: plug, Assembly: plan.Assembly{Code: "PN3"}}); err != nil {
		t.Fatal(err)
	}
	c.Show(context())
	done() // of the plan before
	if said := textOf(c.Object()); strings.Contains(said, "do other work") {
		t.Error("it shows what was found for a plan that is gone")
	}
	done()
	if said := textOf(c.Object()); !strings.Contains(said, "do other work") {
		t.Errorf("after the trial it says\n%s", said)
	}
	if len(waiting) != 0 {
		t.Error("it tries on where nothing changed")
	}
	for _, words := range []string{"Plastic nail-on, one gang, 20.0", "Wherever it fits", "Wherever it fits"} {
		for _, p := range everything[*look.Press](c) {
			if strings.HasPrefix(textOf(p), words) {
				p.Tapped(nil)
				break
			}
		}
	}
	edits := d.edits
	done()
	if d.edits != edits+1 {
		t.Errorf("a box used wherever it fits is %d edits", d.edits-edits)
	}
}
