package card

import (
	"slices"
	"strings"
	"testing"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
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
	for _, o := range choiceNamed(t, c, "Box").Options() {
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

// tenAndTwo are ten receptacles of one gang and two of two gangs.
func tenAndTwo(t *testing.T) (*desktop, []plan.ID) {
	d, ids := tenPlugs(t)
	for i, kind := range []string{"quad", "quad"} {
		o := part.NewOpening(unit.Imperial, kind, plan.OnFace("ssaaaaaaa", unit.Length(9+i)*unit.Foot))
		o.ID = plan.ID("ox" + strings.Repeat(string(rune('b'+i)), 7))
		if err := d.history.Do(edit.AddOpening{Opening: o}); err != nil {
			t.Fatal(err)
		}
		ids = append(ids, o.ID)
	}
	return d, ids
}

// No box is for all of several with other gangs: one option gives each its own of a kind, so
// that it is three clicks for them too.
func TestBoxesOfMixedGangsGoToAnotherKindInThreeClicks(t *testing.T) {
	d, ids := tenAndTwo(t)
	steps, left := d.edits, d.plug()
	ids = ids[1:]
	for _, o := range choiceNamed(t, For(d.context(), ids), "Box").Options() {
		if strings.HasPrefix(o.Label, "All steel") {
			o.Do()
		}
	}
	for _, o := range d.openings(ids) {
		if b, ok, err := part.Resolve(o.Assembly); !ok || err != nil || b.Box.Material != part.Steel || b.Gangs() != o.Gangs {
			t.Errorf("%s of %d gangs has the box %+v", o.Tag, o.Gangs, o.Assembly)
		}
	}
	if d.edits != steps+1 {
		t.Errorf("it took %d steps, want one", d.edits-steps)
	}
	if now := d.plug(); now != left {
		t.Error("one that was not selected has changed")
	}
}

// Those of one count can be selected alone.
func TestBoxesOfMixedGangsAreSelectedApart(t *testing.T) {
	d, ids := tenAndTwo(t)
	all := choiceNamed(t, For(d.context(), ids), "Box").Options()
	all = slices.DeleteFunc(all, func(o look.Option) bool { return !strings.HasPrefix(o.Label, "Select only") })
	if len(all) != 2 || all[0].Label != "Select only the 10 of one gang" || all[1].Label != "Select only the 2 of 2 gangs" {
		t.Fatalf("offered are %+v", all)
	}
	if all[1].Do(); !slices.Equal(d.chosen, ids[10:]) {
		t.Errorf("selected are %v, want %v", d.chosen, ids[10:])
	}
	if all[0].Do(); !slices.Equal(d.chosen, ids[:10]) {
		t.Errorf("selected are %v, want %v", d.chosen, ids[:10])
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
	if got := now("Status"); got != "" {
		t.Errorf("statuses that differ are shown as %q", got)
	}
	if got := now("Kind"); got == "" {
		t.Error("the one kind of all is not shown")
	}
	for _, name := range []string{"Height to center", "Note"} {
		if e := fieldNamed(t, c, name).Entry(); e.Text != "" || e.PlaceHolder != "mixed" {
			t.Errorf("%s shows %q and %q, want mixed", name, e.Text, e.PlaceHolder)
		}
	}
	if e := fieldNamed(t, c, "In the box").Entry(); e.Text == "" || e.PlaceHolder == "mixed" {
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
	take("Circuit", "den")
	take("Status", "Existing")
	take("Kind", look.Capital(part.All().Kind("gfci").Name))
	typed(fieldNamed(t, c, "Height to center"), "40")
	typed(fieldNamed(t, c, "Note"), "gray plates")
	typed(fieldNamed(t, c, "In the box"), "cable 12/2; device 12")
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
	f := fieldNamed(t, For(d.context(), ids), "In the box")
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
	links := everything[*look.Press](c)
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
	ref, _ := index.New(d.history.Plan()).Side(north)
	tiled := *ref.Side()
	tiled.Finish = tile
	if err := d.history.Do(edit.ChangeSide{Side: tiled}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), walls)
	options := choiceNamed(t, c, "Finish of all").Options()
	if len(options) != 2 || !strings.HasPrefix(options[0].Label, "Tile") {
		t.Fatalf("the finishes to choose from are %v", options)
	}
	options[0].Do()
	c.Show(d.context())
	typed(fieldNamed(t, c, "Depth of studs"), "5-1/2")
	c.Show(d.context())
	typed(fieldNamed(t, c, "Studs on center"), "24")
	c.Show(d.context())
	for _, o := range choiceNamed(t, c, "Steel studs").Options() {
		if o.Label == "Yes" {
			o.Do()
		}
	}
	c.Show(d.context())
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

// Doors and windows, cabinets and furniture, rooms and cables chosen together take what
// they have in common at once too; what one of them has not stays as it is.
func TestSeveralOfAnyKindAreChangedAtOnce(t *testing.T) {
	d := newDesktop(t)
	door := plan.Break{ID: "bdaaaaaaa", Kind: plan.BreakDoor, At: plan.OnFace(north, unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch}
	window := plan.Break{ID: "bwaaaaaaa", Kind: plan.BreakWindow, At: plan.OnFace("ssaaaaaaa", unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch, Sill: 3 * unit.Foot}
	for _, b := range []plan.Break{door, window} {
		if err := d.history.Do(edit.AddBreak{Break: b}); err != nil {
			t.Fatal(err)
		}
	}
	c := For(d.context(), []plan.ID{door.ID, window.ID})
	typed(fieldNamed(t, c, "Head height"), "82 in")
	c.Show(d.context())
	typed(fieldNamed(t, c, "Sill height"), "30 in")
	heads := map[plan.ID][2]unit.Length{}
	for _, id := range []plan.ID{door.ID, window.ID} {
		b, _ := d.history.Plan().Break(id)
		heads[id] = [2]unit.Length{b.Head, b.Sill}
	}
	if want := ([2]unit.Length{82 * unit.Inch, 0}); heads[door.ID] != want {
		t.Errorf("the door has head and sill %v, want %v", heads[door.ID], want)
	}
	if want := ([2]unit.Length{82 * unit.Inch, 30 * unit.Inch}); heads[window.ID] != want {
		t.Errorf("the window has head and sill %v, want %v", heads[window.ID], want)
	}
	if said := textOf(For(d.context(), []plan.ID{door.ID, den}).Object()); !strings.HasPrefix(said, "2 selected") {
		t.Errorf("a door and a room together are said as\n%s", said)
	}
}

// Every kind of thing of a plan has its card, but for ticks: they are made in the list for
// the visit and chosen nowhere.
func TestEveryKindHasACard(t *testing.T) {
	for _, kind := range plan.Kinds() {
		if pages[kind] == nil && kind != plan.KindTick {
			t.Errorf("things with IDs that begin with %c have no card", kind)
		}
	}
}
