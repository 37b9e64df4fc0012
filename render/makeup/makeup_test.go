package makeup_test

import (
	"strings"
	"testing"

	"studbay/fill/ruletest"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/makeup"
	"studbay/render/scene"
)

// bank is a box of two switches fed by one cable, with one on to each of two lights.
func bank(t *testing.T) wire.MakeUp {
	t.Helper()
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 240, 120)
	c := h.Circuit(15)
	feed, box := r.Opening("duplex", r.On(0, 24), ruletest.On(c)), r.Opening("switch-2", r.On(0, 60), ruletest.On(c))
	box.Assembly = plan.Assembly{Code: "PN4"}
	one, two := r.Opening("wall-light", r.On(2, 60), ruletest.On(c)), r.Opening("wall-light", r.On(2, 100), ruletest.On(c))
	h.Control([]*plan.Opening{box}, []*plan.Opening{one}).Letter = "a"
	h.Control([]*plan.Opening{box}, []*plan.Opening{two}).Letter = "b"
	p := h.Made()
	for i, ends := range [][2]*plan.Opening{{feed, box}, {box, one}, {box, two}} {
		cable := &plan.Cable{ID: plan.ID("caaaaaaa" + string(rune('a'+i))), From: ends[0].ID, To: ends[1].ID, Size: 14, Wires: 2, Ground: true, Circuit: c.ID}
		next, err := edit.Add{Thing: cable}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	m, ok := wire.MakeUpOf(index.New(p), box.ID)
	if !ok {
		t.Fatal("it cannot be told")
	}
	return m
}

// TestNoTextTouchesAnother, and none leaves the drawing, however wide it is; each splice has a
// dot for each conductor and tail: 3 + 2 grounds, 3 neutrals, 1 + 2 hots.
func TestNoTextTouchesAnother(t *testing.T) {
	m := bank(t)
	for _, width := range []float64{110, 150, 300} {
		at := scene.Point{X: 10, Y: 20}
		items, tall := makeup.Draw(m, at, makeup.Look{Theme: &render.Print, Text: 2.5, Width: width})
		frame := scene.Rect{Min: at, Max: at.Add(scene.Point{X: width, Y: tall})}.Expanded(0.5)
		var runs []scene.Run
		dots := 0
		for _, item := range items {
			switch i := item.(type) {
			case scene.Run:
				runs = append(runs, i)
			case scene.Fill:
				if i.Color == render.Print.Ink {
					dots++
				}
			}
		}
		for i, r := range runs {
			if b := r.Bounds(); b.Intersect(frame) != b {
				t.Errorf("%v wide: %q leaves the drawing: %v of %v", width, r.Text, b, frame)
			}
			for _, other := range runs[:i] {
				if a, b := r.Bounds().Expanded(-0.3), other.Bounds().Expanded(-0.3); a.Overlaps(b) {
					t.Errorf("%v wide: %q lies on %q", width, r.Text, other.Text)
				}
			}
		}
		if want := 5 + 3 + 3; dots != want {
			t.Errorf("%v wide: %d dots, want %d", width, dots, want)
		}
	}
}

// TestWhatIsSaidOfANet in words.
func TestWhatIsSaidOfANet(t *testing.T) {
	var said []string
	for _, n := range bank(t).Nets {
		said = append(said, n.Conductor.Text().String()+": "+makeup.Says(n).String())
	}
	want := "ground: 3 + 2 tails; neutral: 3 together; hot: 1 + 2 tails; switched a: to its device; switched b: to its device"
	if got := strings.Join(said, "; "); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}
