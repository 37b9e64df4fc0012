package card

import (
	"strings"
	"testing"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestACeilingLightIsPlacedFromItsWalls in a room of 14 by 12 ft.
func TestACeilingLightIsPlacedFromItsWalls(t *testing.T) {
	d := newDesktop(t)
	o := part.NewOpening(unit.Imperial, "ceiling-light", plan.OnCeiling(den, geom.Point{X: 7 * unit.Foot, Y: 5 * unit.Foot}))
	o.ID = light
	if err := d.history.Do(edit.AddOpening{Opening: o}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{light})
	c.Show(d.context())
	for _, tt := range []struct{ name, reads, write string }{
		{"From west wall", `7' 0"`, "4' 6"}, {"From north wall", `5' 0"`, "10'"},
	} {
		f := fieldNamed(t, c, tt.name)
		if got := f.Entry().Text; got != tt.reads || !f.Visible() {
			t.Errorf("%s: reads %q, in sight %v; want %q", tt.name, got, f.Visible(), tt.reads)
		}
		f.Entry().SetText(tt.write)
		f.Commit()
		c.Show(d.context())
	}
	now, _ := d.history.Plan().Opening(light)
	if want := (geom.Point{X: 4*unit.Foot + 6*unit.Inch, Y: 10 * unit.Foot}); now.At.At != want {
		t.Errorf("it stands at %v, want %v", now.At.At, want)
	}
	for _, name := range []string{"Height goes to", "Measured from"} {
		if choiceNamed(t, c, name).Visible() {
			t.Errorf("%q is asked of a light in a ceiling", name)
		}
	}
	c = For(d.context(), []plan.ID{plug})
	c.Show(d.context())
	if f := fieldNamed(t, c, "From the wall"); f.Visible() {
		t.Error("a receptacle in a wall is measured from walls")
	}
}

// From another thing on its face a distance is typed too; from which is said, and kept.
func TestADistanceIsTypedFromAnotherThing(t *testing.T) {
	d := newDesktop(t)
	window := plan.Break{ID: "bwaaaaaaa", Kind: plan.BreakWindow, At: plan.OnFace(north, unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch, Sill: 3 * unit.Foot}
	if err := d.history.Do(edit.AddBreak{Break: window}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{plug})
	options := choiceNamed(t, c, "Distance from").Options()
	if len(options) != 3 || options[2].Label != "The window" {
		t.Fatalf("it is measured from one of %v, want the corners or the window", options)
	}
	options[2].Do()
	c.Show(d.context())
	typed(fieldNamed(t, c, "From the window"), "18 in")
	if got := d.plug().At.Along; got != 4*unit.Foot+18*unit.Inch {
		t.Errorf("it is at %v, want 18 in from the window's edge at 4 ft", got)
	}
	c = For(d.context(), []plan.ID{plug})
	if got := fieldNamed(t, c, "From the window").Entry().Text; !strings.HasPrefix(got, "1'") {
		t.Errorf("later it is told as %q", got)
	}
}

// The den is 14 ft wide. From which corner is shown and kept; a distance typed there is from
// that corner.
func TestADistanceIsToldFromTheCornerChosen(t *testing.T) {
	d := newDesktop(t)
	c := For(d.context(), []plan.ID{plug})
	c.Show(d.context())
	if !fieldNamed(t, c, "From west corner").Visible() || choiceNamed(t, c, "Distance from").Options()[0].Now != true {
		t.Error("it does not say that the distance is from the west corner")
	}
	choiceNamed(t, c, "Distance from").Options()[1].Do()
	c = For(d.context(), []plan.ID{plug}) // as later, or in another window
	c.Show(d.context())
	if o := choiceNamed(t, c, "Distance from").Options()[1]; !o.Now || o.Label != "East corner" {
		t.Errorf("it is told from another: %+v", o)
	}
	typed(fieldNamed(t, c, "From east corner"), "3 ft")
	if got := d.plug().At.Along; got != 11*unit.Foot {
		t.Errorf("it is at %v, want 3 ft from the east corner", got)
	}
}
