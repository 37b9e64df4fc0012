package unfold

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

// seen is what of one thing is drawn: its texts, and how many of its lines are dashed and whole.
type seen struct {
	texts         []string
	dashed, whole []scene.Rect
}

// drawn draws a room with an opening in hand and returns what is seen of one thing.
func drawn(t *testing.T, b *rendertest.Builder, r *plan.Room, inHand, of plan.ID, layers ...render.Layer) (all seen) {
	t.Helper()
	ix := b.Index()
	s, ok := StripOf(ix, r.ID)
	if !ok {
		t.Fatal("no strip")
	}
	m := Medium{Medium: render.BoardMedium(1, 1, render.Light, words.Voice{}), Opening: inHand}.Fitted(s, scene.Rect{Max: scene.Point{X: 1400, Y: 300}})
	for _, p := range Draw(ix, r.ID, nil, m) {
		if p.ID != of || len(layers) > 0 && !slices.Contains(layers, p.Layer) {
			continue
		}
		for _, it := range p.Items {
			switch it := it.(type) {
			case scene.Run:
				all.texts = append(all.texts, it.Text)
			case scene.Stroke:
				if len(it.Pen.Dash) > 0 {
					all.dashed = append(all.dashed, it.Path.Bounds())
				} else {
					all.whole = append(all.whole, it.Path.Bounds())
				}
			}
		}
	}
	return all
}

// A casing that stands and that nobody measured is dashed and called assumed with its width;
// one that was measured is a whole line without a word, and of a new wall none is drawn, since
// there is none yet.
func TestCasingThatStands(t *testing.T) {
	for _, tt := range []struct {
		name       string
		condition  plan.Condition
		isMeasured bool
		casing     unit.Length
		dashed     bool
		told       string
	}{
		{"assumed, closed", plan.ConditionClosed, false, rendertest.In(4.5), true, `casing 4-1/2", assumed`},
		{"assumed, opened", plan.ConditionOpened, false, rendertest.In(4.5), true, `casing 4-1/2", assumed`},
		{"measured", plan.ConditionClosed, true, rendertest.In(4.5), false, ""},
		{"a new wall", plan.ConditionNew, false, rendertest.In(4.5), false, ""},
		{"no casing", plan.ConditionClosed, false, 0, false, ""},
	} {
		b := rendertest.NewBuilder(t)
		r := b.Box("Room", plan.UseBedroom, 0, 0, 144, 96)
		door := b.Cut(r, 0, plan.BreakPassage, 40, 48) // nothing is drawn within it
		door.Casing, door.CasingMeasured, door.Head = tt.casing, tt.isMeasured, rendertest.In(80)
		r.Sides[0].Condition, r.Ceiling = tt.condition, rendertest.In(120)
		got := drawn(t, b, r, "", door.ID)
		if (len(got.dashed) > 0) != tt.dashed {
			t.Errorf("%s: %d dashed lines", tt.name, len(got.dashed))
		}
		if told := strings.Join(got.texts, "|"); told != tt.told {
			t.Errorf("%s: says %q, want %q", tt.name, told, tt.told)
		}
	}
}

// Behind a ring's collar the body of its box is dashed, 4 in square round the collar of 2 by 3;
// a box without a ring is a whole line alone.
func TestBodiesBehindCollars(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 144, 96)
	ringed, plain := b.On("A1", "duplex", r, 0, 40, 16), b.On("A2", "duplex", r, 0, 80, 16)
	ringed.Assembly, plain.Assembly = plan.Assembly{Code: "SQ1"}, plan.Assembly{Code: "PN1"}
	got := drawn(t, b, r, "", ringed.ID, render.LayerOpenings)
	if len(got.dashed) != 1 || len(got.whole) == 0 {
		t.Fatalf("of a box with a ring %d dashed and %d whole lines", len(got.dashed), len(got.whole))
	}
	body, collar := got.dashed[0], got.whole[0]
	front, cut := frame.FrontOf(ringed), frame.CutoutOf(ringed)
	if near := collar.Width() / body.Width() * front.Width.Millimetres() / cut.Width.Millimetres(); near < 0.99 || near > 1.01 || body.Width() <= collar.Width() || front.Width != rendertest.In(4) {
		t.Errorf("the body is %v wide and the collar %v, want as %v to %v", body.Width(), collar.Width(), front.Width, cut.Width)
	}
	if got := drawn(t, b, r, "", plain.ID, render.LayerOpenings); len(got.dashed) != 0 {
		t.Errorf("a box without a ring has %d dashed lines", len(got.dashed))
	}
}

// The distance in the picture is the one that the card keeps: from the left corner unless the
// right one or another thing was chosen, whichever is nearer.
func TestTheDistanceIsToldFromWhatIsKept(t *testing.T) {
	for _, tt := range []struct {
		name string
		from func(r *plan.Room, door *plan.Break, other *plan.Opening) plan.ID
		want string
	}{
		{"nothing chosen", func(*plan.Room, *plan.Break, *plan.Opening) plan.ID { return "" }, `8' 4" from the west corner`},
		{"the right corner", func(r *plan.Room, _ *plan.Break, _ *plan.Opening) plan.ID { return r.Sides[1].ID }, `3' 8" from the east corner`},
		{"a side of where it once was", func(r *plan.Room, _ *plan.Break, _ *plan.Opening) plan.ID { return r.Sides[2].ID }, `8' 4" from the west corner`},
		{"a door at its left", func(_ *plan.Room, door *plan.Break, _ *plan.Opening) plan.ID { return door.ID }, `2' 8" from the door`},
		{"a receptacle at its right", func(_ *plan.Room, _ *plan.Break, other *plan.Opening) plan.ID { return other.ID }, `1' 8" from B1`},
		{"a thing that is gone from the face", func(*plan.Room, *plan.Break, *plan.Opening) plan.ID { return "o99999999" }, `8' 4" from the west corner`},
	} {
		b := rendertest.NewBuilder(t)
		r := b.Box("Room", plan.UseBedroom, 0, 0, 144, 96)
		door := b.Cut(r, 0, plan.BreakDoor, 36, 32)
		o, other := b.On("A1", "switch", r, 0, 100, 46), b.On("B1", "duplex", r, 0, 120, 16)
		o.From = tt.from(r, door, other)
		if got := drawn(t, b, r, o.ID, o.ID, render.LayerMarks); !slices.Contains(got.texts, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got.texts, tt.want)
		}
	}
}

// An arrow runs from the old box of what was moved to the new one, and says how far: 100 − 30
// is 70 in. It lies between the boxes; where they are in different rooms there is none.
func TestWhatWasMovedHasAnArrow(t *testing.T) {
	for _, by := range []float64{70, -20} {
		b := rendertest.NewBuilder(t)
		r, next := b.Box("Room", plan.UseBedroom, 0, 0, 144, 96), b.Box("Next", plan.UseBedroom, 200, 0, 300, 96)
		old, now := b.On("A1", "switch", r, 0, 30, 46), b.On("A1", "switch", r, 0, 30+by, 46)
		far := b.On("A2", "switch", next, 0, 30, 46)
		old.Status, now.Was, far.Was = plan.StatusMoved, old.ID, old.ID
		got := drawn(t, b, r, "", now.ID, render.LayerControls)
		want := map[float64]string{70: `moved 5' 10"`, -20: `moved 1' 8"`}[by]
		if !slices.Equal(got.texts, []string{want}) || len(got.whole) != 3 {
			t.Fatalf("moved by %v: %q and %d lines, want %q and an arrow of 3", by, got.texts, len(got.whole), want)
		}
		boxes := drawn(t, b, r, "", old.ID, render.LayerOpenings).whole
		line, from := got.whole[0], boxes[0]
		if by > 0 && line.Min.X <= from.Max.X || by < 0 && line.Max.X >= from.Min.X {
			t.Errorf("moved by %v: the arrow is from %v to %v, the old box from %v to %v", by, line.Min.X, line.Max.X, from.Min.X, from.Max.X)
		}
		if tip := got.whole[1]; by > 0 && tip.Max.X < line.Max.X-0.01 || by < 0 && tip.Min.X > line.Min.X+0.01 {
			t.Errorf("moved by %v: its head is not at the new box", by)
		}
		if away := drawn(t, b, next, "", far.ID, render.LayerControls); len(away.whole) != 0 || len(away.texts) != 0 {
			t.Errorf("in the next room: %+v", away)
		}
	}
}

// Where something is behind a face it is crossed and called what it is; where the place was found
// clear it is in dashes. One that is said to begin past the end of the face is not drawn.
func TestPlacesThatWereProbed(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Bedroom", plan.UseBedroom, 0, 0, 144, 120)
	side := r.Sides[0]
	side.Probes = []plan.Probe{
		{From: 40 * unit.Inch, To: 54 * unit.Inch, Bottom: 46 * unit.Inch, Top: 50 * unit.Inch, What: "fire block"},
		{From: 110 * unit.Inch, To: 124 * unit.Inch, Clear: true},
		{From: 200 * unit.Inch, To: 210 * unit.Inch, What: "duct"},
	}
	was := len(drawn(t, b, r, "", side.ID).whole)
	all := drawn(t, b, r, "", side.ID)
	if !slices.Contains(all.texts, "fire block, behind") || !slices.Contains(all.texts, "clear") || slices.Contains(all.texts, "duct, behind") {
		t.Errorf("%q", all.texts)
	}
	side.Probes = nil
	if n := was - len(drawn(t, b, r, "", side.ID).whole); n != 3 {
		t.Errorf("%d whole lines are of what was probed, want the outline of the block and its cross", n)
	}
}
