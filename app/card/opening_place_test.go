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

// TestADistanceIsFromWhereTheWallEnds: the den of 14 ft flows through its open east side
// into a nook of 6 ft whose north wall is in one line with its own. No corner is where the
// den's line ends.
func TestADistanceIsFromWhereTheWallEnds(t *testing.T) {
	d := newDesktop(t)
	ref, _ := d.history.Plan().Side("seaaaaaaa")
	open := *ref.Side()
	open.Kind = plan.SideOpen
	nook := plan.NewRoom("rnkaaaaaa", "Nook", plan.UseBreakfast, geom.Polygon{{X: 14 * unit.Foot}, {X: 20 * unit.Foot}, {X: 20 * unit.Foot, Y: 12 * unit.Foot}, {X: 14 * unit.Foot, Y: 12 * unit.Foot}},
		[]plan.ID{"snkaaaaaa", "sekaaaaaa", "sskaaaaaa", "swkaaaaaa"})
	nook.Ceiling = 8 * unit.Foot
	nook.Sides[3].Kind = plan.SideOpen
	for _, e := range []edit.Edit{edit.ChangeSide{Side: open}, edit.AddRoom{Level: "vaaaaaaaa", Room: nook}, edit.MoveOpening{ID: plug, To: plan.OnFace(north, 10*unit.Foot)}} {
		if err := d.history.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	c := For(d.context(), []plan.ID{plug})
	f := fieldNamed(t, c, "From east corner in Nook")
	if f.Entry().Text != `10' 0"` {
		t.Errorf("10 ft from the left of 20 ft of wall, it is %q from the right", f.Entry().Text)
	}
	f.Entry().SetText("4'")
	f.Commit()
	if got, want := d.plug().At, plan.OnFace("snkaaaaaa", 2*unit.Foot); got != want {
		t.Errorf("4 ft from the end of 20 ft it stands at %+v, want %+v", got, want)
	}
	c.Show(d.context())
	if f := fieldNamed(t, c, "From west corner in Den"); f.Entry().Text != `16' 0"` {
		t.Errorf("in the nook it is %q from the den's corner, want 16 ft", f.Entry().Text)
	}
}
