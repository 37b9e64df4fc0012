package card

import (
	"slices"
	"strings"
	"testing"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

const (
	theSwitch  = plan.ID("osaaaaaaa")
	other      = plan.ID("osbaaaaaa")
	light      = plan.ID("odaaaaaaa")
	theControl = plan.ID("taaaaaaaa")
)

// lit is a room with two switches, a light and a receptacle; one switch serves the light.
func lit(t *testing.T) *desktop {
	t.Helper()
	d := newDesktop(t)
	for i, e := range []struct {
		id   plan.ID
		kind string
	}{{theSwitch, "switch"}, {other, "three-way"}, {light, "wall-light"}} {
		o := part.NewOpening(unit.Imperial, e.kind, plan.OnFace(north, unit.Length(i+1)*3*unit.Foot))
		o.ID = e.id
		if err := d.history.Do(edit.AddOpening{Opening: o}); err != nil {
			t.Fatal(err)
		}
	}
	control := plan.Control{ID: theControl, Letter: "a", Switches: []plan.ID{theSwitch}, Loads: []plan.ID{light}}
	if err := d.history.Do(edit.Add{Thing: &control}); err != nil {
		t.Fatal(err)
	}
	return d
}

func (d *desktop) control() *plan.Control {
	c, _ := d.history.Plan().Controls.Get(theControl)
	return c
}

// pick takes the option of a choice that holds words.
func pick(t *testing.T, c *look.Choice, words string) {
	t.Helper()
	for _, o := range c.Options() {
		if strings.Contains(o.Label, words) {
			o.Do()
			return
		}
	}
	t.Fatalf("%s has no option %q", c.Label(), words)
}

// TestGangsAreOrderedOnTheCard: of a box that works two controls, another choice for the first
// gang puts what it worked on the second, as one step.
func TestGangsAreOrderedOnTheCard(t *testing.T) {
	d := lit(t)
	second := plan.Control{ID: "tbaaaaaaa", Letter: "b", Switches: []plan.ID{theSwitch}, Loads: []plan.ID{plug}}
	if err := d.history.Do(edit.Add{Thing: &second}); err != nil {
		t.Fatal(err)
	}
	c := For(d.context(), []plan.ID{theSwitch})
	pick(t, choiceNamed(t, c, "Gang 2 works"), "Control a: ")
	o, _ := d.history.Plan().Opening(theSwitch)
	if want := []plan.ID{second.ID, theControl}; !slices.Equal(o.Works, want) {
		t.Errorf("its gangs work %v, want %v", o.Works, want)
	}
	c.Show(d.context())
	for _, o := range choiceNamed(t, c, "Gang 2 works").Options() {
		if o.Now != strings.HasPrefix(o.Label, "Control a: ") {
			t.Errorf("gang 2: %q is shown: %v", o.Label, o.Now)
		}
	}
}

func TestControlCardAddsAndDrops(t *testing.T) {
	d := lit(t)
	c := For(d.context(), []plan.ID{theControl})
	tag := func(id plan.ID) string {
		o, _ := d.history.Plan().Opening(id)
		return o.Tag
	}
	if said, want := textOf(c.Object()), "Control a\n"+tag(theSwitch)+"; it serves "+tag(light)+"\n"; !strings.HasPrefix(said, want) {
		t.Errorf("it begins\n%s\nwant\n%s", said, want)
	}
	pick(t, choiceNamed(t, c, "Another switch"), tag(other)+"  ")
	c.Show(d.context())
	pick(t, choiceNamed(t, c, "Serves also"), tag(plug)+"  ")
	if got := d.control(); !slices.Equal(got.Switches, []plan.ID{theSwitch, other}) || !slices.Equal(got.Loads, []plan.ID{light, plug}) {
		t.Errorf("added to, it is %+v", got)
	}
	for _, o := range choiceNamed(t, c, "Serves also").Options() {
		if strings.HasPrefix(o.Label, tag(other)+"  ") {
			t.Error("a switch is on offer as something served")
		}
	}
	if !c.Show(d.context()) {
		t.Fatal("the card does not follow its control")
	}
	pick(t, choiceNamed(t, c, "Switch"), "Remove it from the control")
	if got := d.control(); !slices.Equal(got.Switches, []plan.ID{theSwitch}) {
		t.Errorf("with its last switch out it has %v", got.Switches)
	}
	for _, name := range []string{"Serves", "Serves", "Switch"} {
		c.Show(d.context())
		pick(t, choiceNamed(t, c, name), "Remove it from the control")
	}
	if d.control() != nil {
		t.Errorf("with nothing in it it is still there: %+v", d.control())
	}
}

func TestOpeningCardLeadsToItsControl(t *testing.T) {
	d := lit(t)
	for _, tt := range []struct {
		of   plan.ID
		want int
	}{{theSwitch, 1}, {light, 1}, {other, 0}, {plug, 0}} {
		said := textOf(For(d.context(), []plan.ID{tt.of}).Object())
		if got := strings.Count(said, "Control a: "); got != tt.want {
			t.Errorf("%s: %d rows of controls, want %d", tt.of, got, tt.want)
		}
	}
}
