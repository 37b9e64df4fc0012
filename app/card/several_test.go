package card

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// tenPlugs are ten receptacles on the four faces of the den, and their IDs.
func tenPlugs(t *testing.T) (*desktop, []plan.ID) {
	d := newDesktop(t)
	ids := []plan.ID{plug}
	for i, side := range []plan.ID{north, "seaaaaaaa", "seaaaaaaa", "seaaaaaaa", "ssaaaaaaa", "ssaaaaaaa", "ssaaaaaaa", "swaaaaaaa", "swaaaaaaa"} {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(side, unit.Length(1+i)*unit.Foot))
		o.ID = plan.ID("oq" + strings.Repeat(string(rune('b'+i)), 7))
		if err := d.history.Do(edit.AddOpening{Opening: o}); err != nil {
			t.Fatal(err)
		}
		ids = append(ids, o.ID)
	}
	return d, ids
}

func (d *desktop) openings(ids []plan.ID) (all []*plan.Opening) {
	for _, id := range ids {
		o, _ := d.history.Plan().Opening(id)
		all = append(all, o)
	}
	return all
}

// Chosen together (one click or drag), the choice opened and an option pressed are the
// second and the third click.
func TestTenBoxesGoToAnotherAssemblyInThreeClicks(t *testing.T) {
	d, ids := tenPlugs(t)
	c := For(d.context(), ids)
	steps := d.edits
	for _, o := range choiceNamed(t, c, "Box of all").Options() {
		if strings.HasPrefix(o.Label, "SQ2:") {
			o.Do()
		}
	}
	for _, o := range d.openings(ids) {
		if o.Assembly.Code != "SQ2" {
			t.Errorf("%s has the box %q", o.Tag, o.Assembly.Code)
		}
	}
	if d.edits != steps+1 {
		t.Errorf("it took %d steps, want one", d.edits-steps)
	}
}

func TestOfSeveralWhatDiffersIsMixed(t *testing.T) {
	d, ids := tenPlugs(t)
	for _, e := range []edit.Edit{
		edit.SetStatus{ID: plug, Status: plan.StatusExisting},
		// What is in a box that is there is not known until it is stated.
		edit.SetContents{ID: plug, Contents: &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
			{What: plan.ItemCable, Size: 12, Wires: 2, Times: 2}, {What: plan.ItemDevice, Size: 12},
		}}},
		edit.SetNote{ID: plug, Note: "by the desk"},
		edit.SetHeight{ID: plug, Height: plan.CentreAt(44 * unit.Inch)},
	} {
		if err := d.history.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	c := For(d.context(), ids)
	now := func(name string) string {
		for _, o := range choiceNamed(t, c, name).Options() {
			if o.Now {
				return o.Label
			}
		}
		return ""
	}
	if got := now("Status of all"); got != "" {
		t.Errorf("statuses that differ are shown as %q", got)
	}
	if got := now("Kind of all"); got == "" {
		t.Error("the one kind of all is not shown")
	}
	for _, name := range []string{"Height of all", "Note on all"} {
		if e := fieldNamed(t, c, name).Entry(); e.Text != "" || e.PlaceHolder != "mixed" {
			t.Errorf("%s shows %q and %q, want mixed", name, e.Text, e.PlaceHolder)
		}
	}
	if e := fieldNamed(t, c, "In all boxes").Entry(); e.Text == "" || e.PlaceHolder != "" {
		t.Errorf("what all boxes hold alike is shown as %q and %q", e.Text, e.PlaceHolder)
	}
}

func TestSeveralAreChangedAtOnce(t *testing.T) {
	d, ids := tenPlugs(t)
	circuit := &plan.Circuit{ID: "kcaaaaaaa", Number: "7", Name: "den", Amps: 20, Volts: 120, Poles: 1}
	if err := d.history.Do(edit.Add{Thing: circuit}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), ids)
	take := func(name, label string) {
		t.Helper()
		options := choiceNamed(t, c, name).Options()
		i := slices.IndexFunc(options, func(o look.Option) bool { return strings.Contains(o.Label, label) })
		if i < 0 {
			t.Fatalf("%s offers no %q", name, label)
		}
		options[i].Do()
		c.Show(d.context())
	}
	take("Circuit of all", "den")
	take("Status of all", "Existing")
	take("Kind of all", look.Capital(part.All().Kind("gfci").Name))
	typed(fieldNamed(t, c, "Height of all"), "40")
	typed(fieldNamed(t, c, "Note on all"), "gray plates")
	typed(fieldNamed(t, c, "In all boxes"), "cable 12/2; device 12")
	for _, o := range d.openings(ids) {
		if o.Circuit != circuit.ID || o.Status != plan.StatusExisting || o.Kind == "duplex" || o.Height.Value != 40*unit.Inch ||
			o.Note != "gray plates" || o.Contents == nil || len(o.Contents.Items) != 2 {
			t.Errorf("%s is %+v", o.Tag, o)
		}
	}
}

// Cables go before what is typed, so typing for a box they are drawn to is refused, by
// its tag.
func TestContentsOfSeveralAreRefusedWhereCablesAreDrawn(t *testing.T) {
	d, ids := tenPlugs(t)
	cable := &plan.Cable{ID: "ccaaaaaaa", From: ids[0], To: ids[1], Size: 12, Wires: 2, Ground: true}
	if err := d.history.Do(edit.Add{Thing: cable}); err != nil {
		t.Fatal(err)
	}
	before := d.history.Plan()
	f := fieldNamed(t, For(d.context(), ids), "In all boxes")
	typed(f, "cable 14/2; device 14")
	if !plan.Equal(before, d.history.Plan()) {
		t.Error("it was taken")
	}
	if tag := d.openings(ids)[0].Tag; !strings.Contains(f.Wrong(), tag) {
		t.Errorf("it says %q, without %s", f.Wrong(), tag)
	}
}

func TestOneOfSeveralIsChosenAlone(t *testing.T) {
	d, ids := tenPlugs(t)
	c := For(d.context(), ids)
	var links []*look.Press
	walk(c.Object(), func(o fyne.CanvasObject) {
		if p, ok := o.(*look.Press); ok {
			links = append(links, p)
		}
	})
	links[len(links)-1].Tapped(nil)
	if len(d.chosen) != 1 || d.chosen[0] != ids[len(ids)-1] {
		t.Errorf("chosen is %v, want the last of them alone", d.chosen)
	}
}

func TestSeveralWallsTakeKindFinishAndFramingAtOnce(t *testing.T) {
	d := newDesktop(t)
	east := plan.ID("seaaaaaaa")
	walls := []plan.ID{north, east}
	tile := []plan.Layer{{Name: "tile", Thickness: unit.Inch / 4}}
	if err := d.history.Do(edit.ChangeSides{Sides: []plan.ID{north}, Change: edit.SideChange{Finish: &tile}}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), walls)
	options := choiceNamed(t, c, "Finish of all").Options()
	if len(options) != 2 || !strings.HasPrefix(options[0].Label, "tile") {
		t.Fatalf("the finishes to choose from are %v", options)
	}
	options[0].Do()
	c.Show(d.context())
	typed(fieldNamed(t, c, "Depth of studs"), "5-1/2")
	typed(fieldNamed(t, c, "Studs on center"), "24")
	for _, o := range choiceNamed(t, c, "Steel studs").Options() {
		if o.Label == "Yes" {
			o.Do()
		}
	}
	for _, o := range choiceNamed(t, c, "Made of").Options() {
		if o.Label == "Glass" {
			o.Do()
		}
	}
	room, _ := d.history.Plan().Room(den)
	for _, s := range room.Sides[:2] {
		if s.Kind != plan.SideGlass || len(s.Finish) != 1 || s.Studs.Depth != 11*unit.Inch/2 || s.Studs.Spacing != 24*unit.Inch || !s.Studs.Steel {
			t.Errorf("%s is %+v", s.ID, s)
		}
	}
	if s := room.Sides[2]; s.Kind != plan.SideWall || s.Studs.Steel {
		t.Errorf("a wall not chosen is %+v", s)
	}
}
