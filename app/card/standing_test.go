package card

import (
	"testing"

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
}
