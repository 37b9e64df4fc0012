package card

import (
	"reflect"
	"strings"
	"testing"

	"studbay/app/card/bind"
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

// Before anybody says what is in an existing box nothing is assumed of it and no other box is
// offered. Said to be known in part, its card asks at once how many cables were seen, and tells
// the least that they need: two cables of two 14 AWG conductors and a yoke, 6 × 2.00 (NEC 2023
// Table 314.16(B)(1), 314.16(B)(4)).
func TestTheCardOfABoxThatNobodyOpened(t *testing.T) {
	d := newDesktop(t)
	old := *d.plug()
	old.Status, old.Assembly, old.Contents = plan.StatusExisting, plan.Assembly{}, nil
	if err := d.history.Do(edit.ChangeOpening{Opening: old}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{plug})
	if !c.Show(d.context()) {
		t.Fatal("a card just made cannot show its opening")
	}
	if isOffered(c) {
		t.Error("other boxes are offered for one that nobody has opened")
	}
	for _, o := range choiceNamed(t, c, "Source").Options() {
		if o.Label == "Assumed by its kind" {
			t.Error("its contents may be assumed")
		}
	}
	takeOption(t, choiceNamed(t, c, "Source"), "Known in part")
	if c.Show(d.context()) {
		t.Error("the card goes on without asking what was seen")
	}
	c = For(d.context(), []plan.ID{plug})
	typed(fieldNamed(t, c, "Cables seen, not read"), "2")
	c.Show(d.context())
	if said := textOf(c.Object()); !strings.Contains(said, "At least 12 in³.") {
		t.Errorf("it says\n%s", said)
	}
	if !isOffered(c) {
		t.Error("no box is offered for one that somebody has looked into")
	}
	for code, again := range map[string]bool{"PN1": false, "": true} {
		now := *d.plug()
		now.Assembly = plan.Assembly{Code: code}
		if err := d.history.Do(edit.ChangeOpening{Opening: now}); err != nil {
			t.Fatal(err)
		}
		c = For(d.context(), []plan.ID{plug})
		now.Assembly = plan.Assembly{Code: map[bool]string{true: "PN1"}[again]}
		if err := d.history.Do(edit.ChangeOpening{Opening: now}); err != nil {
			t.Fatal(err)
		}
		if c.Show(d.context()) {
			t.Errorf("the card of a box of code %q goes on for one of %q", code, now.Assembly.Code)
		}
	}
}

// isOffered reports whether a card offers every box in place of its own.
func isOffered(c Card) bool {
	for _, f := range everything[*bind.Fold](c) {
		if strings.HasPrefix(textOf(f), "Every box, tried here") {
			return f.Visible()
		}
	}
	return false
}

// A kind that asks something of its own has it on its card as soon as it is chosen.
func TestTheCardOfAnotherKindIsMadeAnew(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	light := *d.plug()
	light.Kind = part.ReadingLight
	if err := d.history.Do(edit.ChangeOpening{Opening: light}); err != nil {
		t.Fatal(err)
	}
	if c.Show(d.context()) {
		t.Error("the card of a receptacle goes on showing a reading light")
	}
	choiceNamed(t, For(d.context(), []plan.ID{plug}), "Put on by")
}

// Plaster on lath asks how far its keys reach, what has none does not; trim tells how thick it
// is.
func TestKeysAndTrimAreMeasured(t *testing.T) {
	d := newDesktop(t)
	ref, _ := d.history.Plan().Side(north)
	side := *ref.Side()
	side.Finish = []plan.Layer{{Name: "plaster", Thickness: 3 * unit.Inch / 4}}
	side.Trim = []plan.Trim{{Name: "baseboard", Height: 8 * unit.Inch}}
	if err := d.history.Do(edit.ChangeSide{Side: side}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{north})
	keys := func() *look.Field { return fieldNamed(t, c, "Keys behind it") }
	if keys().Visible() {
		t.Error("keys are asked of what is on no lath")
	}
	takeOption(t, choiceNamed(t, c, "Keyed to"), "Wood lath")
	c.Show(d.context())
	if !keys().Visible() || keys().Entry().Text != "" {
		t.Errorf("keys nobody measured are shown %v as %q", keys().Visible(), keys().Entry().Text)
	}
	typed(keys(), "5/8")
	c.Show(d.context())
	for _, f := range everything[*look.Field](c) {
		if f.Label() == "Thickness" { // of the trim, which comes first
			typed(f, "7/8")
			break
		}
	}
	ref, _ = d.history.Plan().Side(north)
	if s := ref.Side(); s.Finish[0].Keys != 5*unit.Inch/8 || s.Trim[0].Thick != 7*unit.Inch/8 {
		t.Errorf("kept as %+v, %+v", s.Finish, s.Trim)
	}
}

// A year that nobody knows is an empty field.
func TestTheYearThatNobodyKnows(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), nil)
	year := fieldNamed(t, c, "Year built")
	if got := year.Entry().Text; got != "" {
		t.Errorf("it reads %q", got)
	}
	typed(year, "1926")
	c.Show(d.context())
	if got := d.history.Plan().Header.Built; got != 1926 || year.Entry().Text != "1926" {
		t.Errorf("kept as %d, it reads %q", got, year.Entry().Text)
	}
	typed(year, "")
	if got := d.history.Plan().Header.Built; got != 0 {
		t.Errorf("emptied it is %d", got)
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
