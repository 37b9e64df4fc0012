package tool

import (
	"strings"
	"testing"

	"studbay/plan"
)

func TestBreaks(t *testing.T) {
	f, b := newFake(t), &brk{kind: plan.BreakDoor}
	r := f.square()
	b.Move(f, at(20, 2))
	if f.preview.Snap.String() != "by the left corner" || len(f.preview.Lines) < 5 {
		t.Errorf("preview %+v", f.preview)
	}
	f.click(b, at(20, 2))
	b.Type(f, Key{Rune: ']'})
	if b.Choice() != string(plan.BreakSlider) {
		t.Errorf("after ] the kind is %q", b.Choice())
	}
	b.Choose(string(plan.BreakWindow))
	b.Move(f, at(142, 30))
	f.typed(b, "3'")
	var door, window *plan.Break
	for k := range f.Plan().Level(ground).Breaks.All() {
		switch k.Kind {
		case plan.BreakDoor:
			door = k
		case plan.BreakWindow:
			window = k
		}
	}
	if door == nil || door.At.Along != inch(4) || door.Hand != plan.HandLeft || door.Swing != plan.SwingIn {
		t.Errorf("door %+v, want 4 in from the corner, hung left, opening in", door)
	}
	if window == nil || window.At.Host != r.Sides[1].ID || window.At.Along != inch(36) {
		t.Errorf("window %+v, want 36 in from the left corner of the east side", window)
	}
	b.Choose(string(plan.BreakDoor))
	b.Type(f, Key{Rune: 'r'})
	f.click(b, at(100, 119))
	for k := range f.Plan().Level(ground).Breaks.All() {
		if k.At.Host == r.Sides[2].ID && k.Hand != plan.HandRight {
			t.Errorf("turned round it is hung %q", k.Hand)
		}
	}
	f.check()
}

func TestFixtures(t *testing.T) {
	f, x := newFake(t), &fixture{kind: plan.FixtureCounter}
	r := f.square()
	f.click(x, at(37, 5))
	x.Choose(string(plan.FixtureRange))
	x.Move(f, at(88, 5))
	if f.preview.Snap.String() != "beside the counter" {
		t.Errorf("the snap is %q", f.preview.Snap)
	}
	f.click(x, at(88, 5))
	x.Choose(string(plan.FixtureBed))
	free := at(60, 70)
	free.Alt = true
	x.Type(f, Key{Rune: 'r'})
	f.click(x, free)
	found := map[plan.FixtureKind]*plan.Fixture{}
	for k := range f.Plan().Level(ground).Fixtures.All() {
		found[k.Kind] = k
	}
	if c := found[plan.FixtureCounter]; c == nil || c.At != plan.OnFace(r.Sides[0].ID, 0) {
		t.Errorf("counter %+v, want in the left corner", c)
	}
	if s := found[plan.FixtureRange]; s == nil || s.At.Along != inch(72) {
		t.Errorf("range %+v, want beside the counter at 72 in", s)
	}
	if b := found[plan.FixtureBed]; b == nil || b.At.Part != plan.PartFloor || b.Turn != 1 {
		t.Errorf("bed %+v, want free on the floor, turned once", b)
	}
	f.check()
}

func TestCables(t *testing.T) {
	f, c := newFake(t), &cable{}
	f.square()
	o := &opening{}
	for _, x := range []float64{30, 60, 100} {
		f.click(o, at(x, 3))
	}
	f.click(c, at(30, 1))
	f.click(c, at(60, 1))
	f.click(c, at(100, 1))
	if got := f.Plan().Cables.Len(); got != 2 {
		t.Fatalf("%d cables, want 2: %v", got, f.failed)
	}
	for k := range f.Plan().Cables.All() {
		if k.Size != 12 || k.Wires != 2 || !k.Ground {
			t.Errorf("cable %+v, want 12/2 with ground, as a duplex is usually wired", k)
		}
	}
	c.Move(f, at(70, 50))
	if len(f.preview.Lines) != 1 || !f.preview.Cables {
		t.Errorf("shown are %d next cables, want 1, with those drawn", len(f.preview.Lines))
	}
	if !c.Cancel(f) || c.Cancel(f) {
		t.Error("Esc does not end the run once")
	}
	f.click(c, at(70, 50))
	if f.said.IsZero() {
		t.Error("a click on nothing is not answered")
	}
}

func TestMeasure(t *testing.T) {
	f, m := newFake(t), &measure{}
	f.square()
	f.click(m, at(1, 1))
	m.Move(f, at(143, 1))
	if len(f.preview.Dims) != 1 || !strings.HasPrefix(f.preview.Dims[0].Text, "12'") {
		t.Errorf("measured %+v, want 12 ft from corner to corner", f.preview.Dims)
	}
	if f.preview.Snap.String() != "corner of Room 1" {
		t.Errorf("the snap is %q", f.preview.Snap)
	}
	f.click(m, at(143, 119))
	if f.said.IsZero() {
		t.Error("a slanting measure does not tell both ways")
	}
	if !m.Cancel(f) || m.Cancel(f) {
		t.Error("Esc does not drop the measure once")
	}
}

func TestTableOfTools(t *testing.T) {
	ids, keys := map[string]bool{}, map[string]bool{}
	f := newFake(t)
	for _, e := range Tools {
		made := e.New()
		if ids[made.ID()] || keys[e.Key] || made.Hint(newFake(t)).IsZero() || e.Title.IsZero() {
			t.Errorf("%s: its ID or key is another's, or it has no title or hint", made.ID())
		}
		ids[made.ID()], keys[e.Key] = true, true
		// On an empty plan nothing may break.
		f.click(made, at(3, 4))
		made.Type(f, Key{Name: "Enter"})
		made.Cancel(f)
		made.Leave(f)
	}
}
