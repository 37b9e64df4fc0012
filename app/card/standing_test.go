package card

import (
	"reflect"
	"testing"

	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// What a tape told inside an old box is written on its card, and the sizes near it are named:
// Table 314.16(A) has 3 × 2 × 2-1/2.
func TestAnOldBoxIsMeasuredInside(t *testing.T) {
	d := newDesktop(t)
	o, _ := d.history.Plan().Opening(plug)
	old := *o
	old.Status, old.Assembly = plan.StatusExisting, plan.Assembly{}
	if err := d.history.Do(edit.ChangeOpening{Opening: old}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{plug})
	c.Show(d.context())
	for _, tt := range []struct{ name, write string }{{"Inside width", "1 7/8"}, {"Inside height", "2 7/8"}, {"Inside depth", "2 7/16"}} {
		f := fieldNamed(t, c, tt.name)
		f.Entry().SetText(tt.write)
		f.Commit()
		c.Show(d.context())
	}
	now, _ := d.history.Plan().Opening(plug)
	want := plan.Inside{Width: 15 * unit.Inch / 8, Height: 23 * unit.Inch / 8, Depth: 39 * unit.Inch / 16}
	if now.Assembly.Inside != want {
		t.Errorf("measured as %+v", now.Assembly.Inside)
	}
	typed(fieldNamed(t, c, "Inside depth"), "")
	if now, _ = d.history.Plan().Opening(plug); now.Assembly.Inside.Depth != 0 || now.Assembly.Inside.Width != want.Width {
		t.Errorf("a depth that is emptied leaves %+v", now.Assembly.Inside)
	}
}

// An existing opening is moved by its new place: its card then asks what becomes of the old box
// and offers no other place, and is no wider than its column, long as its tag is now.
func TestACardOfWhatWasMovedIsMadeAnew(t *testing.T) {
	d := newDesktop(t)
	o, _ := d.history.Plan().Opening(plug)
	old := *o
	old.Status, old.Assembly, old.Tag = plan.StatusExisting, plan.Assembly{}, "GUEST12"
	if err := d.history.Do(edit.ChangeOpening{Opening: old}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{plug})
	c.Show(d.context())
	typed(fieldNamed(t, c, "New place, from left corner"), "2'")
	if now, _ := d.history.Plan().Opening(plug); now.Status != plan.StatusMoved || now.Tag != "GUEST12-old" {
		t.Fatalf("it is %s, %s", now.Status, now.Tag)
	}
	if c.Show(d.context()) {
		t.Error("the card of the existing opening goes on showing the moved one")
	}
	c = For(d.context(), []plan.ID{plug})
	c.Show(d.context())
	if got, most := c.Object().MinSize().Width, d.context().Width; got > most {
		t.Errorf("its card is %v wide, the column %v", got, most)
	}
}

// The mark of an old ceiling box is asked; of a new one its listing tells.
func TestTheMarkOfAnOldCeilingBoxIsAsked(t *testing.T) {
	for status, want := range map[plan.Status]bool{plan.StatusExisting: true, plan.StatusNew: false} {
		o := part.NewOpening(unit.Imperial, "ceiling-light", plan.OnCeiling(den, geom.Point{X: 7 * unit.Foot, Y: 5 * unit.Foot}))
		o.Status = status
		if got := isOldCeilingBox(o); got != want {
			t.Errorf("%s: asked %v", status, got)
		}
	}
}

// Four lengths and a diagonal lay a room out: one of 12 by 9 ft has a diagonal of 15 (3, 4, 5
// thrice). The second diagonal is a check.
func TestARoomIsLaidOutAsTaped(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{den})
	c.Show(d.context())
	for _, tt := range []struct{ name, write string }{
		{"North face, taped", "12'"}, {"East face, taped", "9'"}, {"South face, taped", "12'"}, {"West face, taped", "9'"},
		{"Corner west/north to corner east/south", "15'"}, {"Corner north/east to corner south/west", "15' 0 1/2"},
	} {
		f := fieldNamed(t, c, tt.name)
		f.Entry().SetText(tt.write)
		f.Commit()
		c.Show(d.context())
	}
	r, _ := d.history.Plan().Room(den)
	if got := r.Segment(1).Length(); (got - 9*unit.Foot).Abs() > 4 {
		t.Errorf("the east face is %v long", got)
	}
	if by, ok := r.Taped.Misclosure(); !ok || (by-unit.Inch/2).Abs() > 4 {
		t.Errorf("the readings miss one another by %v, %v", by, ok)
	}
	typed(fieldNamed(t, c, "Corner north/east to corner south/west"), "")
	if r, _ := d.history.Plan().Room(den); r.Taped.Other != 0 || r.Taped.Diagonal != 15*unit.Foot {
		t.Errorf("a reading that is emptied leaves %+v", r.Taped)
	}
}

// What a part of a face is written as on its card is kept: where it is, its condition, its own
// layers and studs; emptied, it is as its face again, and not said it is no part any more.
func TestAPartOfAFaceIsWrittenOnItsCard(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{north})
	c.Show(d.context())
	write := func(name, text string, zone bool) {
		t.Helper()
		var f *look.Field
		for _, one := range everything[*look.Field](c) {
			if one.Label() == name && (f == nil || zone) {
				f = one // that of a part comes after that of its face
			}
		}
		if f == nil {
			t.Fatalf("no field is called %q", name)
		}
		typed(f, text)
		c.Show(d.context())
	}
	zones := func() []plan.Zone {
		ref, _ := d.history.Plan().Side(north)
		return ref.Side().Zones
	}
	write("Another part, up to", "4 ft", false)
	write("From", "1 ft", true)
	write("To", "5 ft", true)
	choose := func(label string) {
		t.Helper()
		for _, o := range choiceNamed(t, c, "Part 1 is").Options() {
			if o.Label == label {
				o.Do()
				c.Show(d.context())
				return
			}
		}
		t.Fatalf("a part cannot be %q", label)
	}
	choose("Stays closed")
	write("Studs on center", "12 in", true)
	write("Depth of studs", "5-1/2", true)
	write("Another layer", "tile", false) // that of the face comes after it
	want := plan.Zone{From: unit.Foot, To: 5 * unit.Foot, Condition: plan.ConditionClosed, Spacing: unit.Foot, Depth: 11 * unit.Inch / 2, Finish: []plan.Layer{fill.NewLayer("tile")}}
	if got := zones(); len(got) != 1 || !reflect.DeepEqual(got[0], want) {
		t.Fatalf("kept as %+v, want %+v", got, want)
	}
	write("Studs on center", "", true)
	write("Depth of studs", "", true)
	write("Layer 1", "", true)
	if got := zones(); len(got) != 1 || got[0].Spacing != 0 || got[0].Depth != 0 || len(got[0].Finish) != 0 {
		t.Errorf("emptied it is %+v, want as its face", got)
	}
	write("Another part, up to", "8 ft", false)
	if got := zones(); len(got) != 2 || got[1].From != 5*unit.Foot || got[1].To != 8*unit.Foot {
		t.Errorf("the next part is %+v, want from the end of the one before", got)
	}
	choose("Not said")
	if got := zones(); len(got) != 1 || got[0].To != 8*unit.Foot {
		t.Errorf("not said, the first is still there: %+v", got)
	}
}
