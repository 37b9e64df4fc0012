package tool

import (
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

// switched is a room with two switches and three lights, and where they are.
func switched(t *testing.T) (f *fake, switches, lights []Pointer) {
	return switchedBy(t, "switch", "switch")
}

// switchedBy is that room with switches of two kinds.
func switchedBy(t *testing.T, kinds ...string) (f *fake, switches, lights []Pointer) {
	f = newFake(t)
	f.square()
	o := &opening{}
	for _, x := range []float64{30, 60} {
		switches = append(switches, at(x, 1))
	}
	for i, p := range switches {
		f.kind = kinds[i]
		f.click(o, p)
	}
	f.kind = "ceiling-light"
	for _, x := range []float64{36, 72, 108} {
		lights = append(lights, at(x, 60))
		f.click(o, at(x, 60))
	}
	f.chosen = nil
	if len(f.openings()) != 5 {
		t.Fatalf("%d openings, want 5: %v", len(f.openings()), f.failed)
	}
	return f, switches, lights
}

func (f *fake) controls() (all []*plan.Control) {
	for c := range f.Plan().Controls.All() {
		all = append(all, c)
	}
	return all
}

func TestControl(t *testing.T) {
	f, switches, lights := switchedBy(t, "three-way", "three-way")
	c := &cable{}
	c.Choose(controlSort)
	f.click(c, lights[0])
	if f.said.IsZero() || len(f.controls()) != 0 {
		t.Error("a light is taken for a switch")
	}
	f.click(c, switches[0])
	f.click(c, lights[0])
	f.click(c, lights[1])
	if got := f.controls(); len(got) != 1 || got[0].Letter != "a" || len(got[0].Switches) != 1 || len(got[0].Loads) != 2 {
		t.Fatalf("controls %+v, want one, a, of a switch and two lights", got)
	}
	if got := f.preview.Snap.String(); !strings.HasSuffix(got, "; control a") {
		t.Errorf("the snap is %q", got)
	}
	f.click(c, lights[1])
	f.click(c, switches[1])
	if got := f.controls()[0]; len(got.Loads) != 1 || len(got.Switches) != 2 {
		t.Errorf("control %+v, want a load taken out and a switch added", got)
	}
	if !c.Cancel(f) || c.Cancel(f) {
		t.Error("Esc does not end it once")
	}
	f.click(c, switches[1])
	f.click(c, lights[2])
	if got := f.controls(); len(got) != 1 || len(got[0].Loads) != 2 {
		t.Errorf("controls %+v, want the one that the switch is in to go on", got)
	}
	f.check()
}

// One light on two switches takes three-ways, and four-ways between (common practice): any
// other switch that is clicked next begins a control of its own.
func TestAnotherSwitchBeginsAnew(t *testing.T) {
	for _, tt := range []struct {
		first, second string
		controls      int
	}{
		{"switch", "switch", 2}, {"three-way", "switch", 2}, {"switch", "three-way", 2}, {"dimmer", "dimmer", 2},
		{"three-way", "three-way", 1}, {"three-way", "four-way", 1}, {"four-way", "three-way", 1},
	} {
		f, switches, lights := switchedBy(t, tt.first, tt.second)
		c := &cable{sort: controlSort}
		for i := range switches {
			f.click(c, switches[i])
			if isAnew := i == 1 && f.said.ID == "tool.control.another"; isAnew != (i == 1 && tt.controls == 2) {
				t.Errorf("%s after %s: said %v", tt.second, tt.first, f.said)
			}
			f.click(c, lights[i])
		}
		if got := f.controls(); len(got) != tt.controls {
			t.Errorf("%s after %s: %d controls, want %d", tt.second, tt.first, len(got), tt.controls)
		}
	}
}

// A plan that joins two one-pole switches can be put right: the second is taken out again.
func TestASwitchLeavesWhateverItIs(t *testing.T) {
	f, switches, lights := switched(t)
	c := &cable{sort: controlSort}
	f.click(c, switches[0])
	f.click(c, lights[0])
	made := f.controls()[0]
	for _, o := range f.openings() {
		if o.Kind == "switch" && o.ID != made.Switches[0] {
			f.Do(edit.JoinControl{ID: made.ID, Opening: o.ID, IsSwitch: true})
		}
	}
	if got := f.controls(); len(got) != 1 || len(got[0].Switches) != 2 {
		t.Fatalf("controls %+v, want one of two switches", got)
	}
	f.click(c, switches[1])
	if got := f.controls(); len(got) != 1 || len(got[0].Switches) != 1 {
		t.Errorf("controls %+v, want the second switch taken out", got)
	}
}

func TestNextLetterIsFree(t *testing.T) {
	f, switches, lights := switched(t)
	c := &cable{sort: controlSort}
	for i := range switches {
		f.click(c, switches[i])
		f.click(c, lights[i])
		c.Cancel(f)
	}
	got := map[string]bool{}
	for _, k := range f.controls() {
		got[k.Letter] = true
	}
	if len(got) != 2 || !got["a"] || !got["b"] {
		t.Errorf("letters %v, want a and b", got)
	}
}

func TestCableSizes(t *testing.T) {
	f, switches, lights := switched(t)
	c := &cable{}
	c.Choose("14/3")
	f.click(c, switches[0])
	f.click(c, lights[0])
	c.Cancel(f)
	var made *plan.Cable
	for k := range f.Plan().Cables.All() {
		made = k
	}
	if made == nil || made.Size != 14 || made.Wires != 3 {
		t.Fatalf("cable %+v, want 14/3", made)
	}
	on := at(90, 30)
	on.Line = made.ID
	f.click(c, on)
	if len(f.chosen) != 1 || f.chosen[0] != made.ID {
		t.Fatalf("chosen %v, want the cable", f.chosen)
	}
	c.Type(f, Key{Rune: ']'})
	if now, _ := f.Plan().Cables.Get(made.ID); now.Size != 12 || now.Wires != 2 {
		t.Errorf("after ] it is %d/%d, want 12/2", now.Size, now.Wires)
	}
}

func TestLinesAreChosen(t *testing.T) {
	f, switches, lights := switched(t)
	w := &cable{sort: controlSort}
	f.click(w, switches[0])
	f.click(w, lights[0])
	id := f.controls()[0].ID
	c := &choose{}
	on := at(80, 30)
	on.Line = id
	f.click(c, on)
	if len(f.chosen) != 1 || f.chosen[0] != id || f.preview.Cursor != CursorHand {
		t.Errorf("chosen %v with cursor %v, want the control and a hand", f.chosen, f.preview.Cursor)
	}
	near := lights[1]
	near.Line = id
	f.click(c, near)
	if f.chosen[0].Kind() != plan.KindOpening {
		t.Errorf("chosen %v, want the light under the line", f.chosen)
	}
}
