package view

import (
	"math"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

var style = Style{Theme: render.Light, Pixel: 1}

func markOf(t *testing.T, p Picture, id plan.ID) Mark {
	t.Helper()
	for _, m := range p.Marks {
		if m.ID == id {
			return m
		}
	}
	t.Fatalf("%s is not before the eye", id)
	return Mark{}
}

// A room 10 ft wide and 8 ft deep, an outlet 30 in from the left end of its north face and
// 16 in up. From the middle of the room 5 ft before that face: right = 30 − 60 = −30 in,
// up = 16 − 60 = −44 in, depth = 60 in; with a focal length of 500, x = 500 − 250 and
// y = 410 + 500·44/60.
func TestPlatesStandAtTheirTruePlaces(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseBedroom, 0, 0, 120, 96)
	o := b.On("A1", "duplex", r, 0, 30, 16)
	m, ok := New(b.Index(), r.ID, style)
	if !ok {
		t.Fatal("no model")
	}
	c := level60
	c.Eye = inches(60, 60, 60)
	got := markOf(t, m.Draw(c), o.ID)
	if want := (scene.Point{X: 250, Y: 410 + 500*44.0/60}); !isNearTo(got.At, want) || got.IsHidden {
		t.Errorf("the outlet stands at %v, hidden %v; want %v in sight", got.At, got.IsHidden, want)
	}
	if want := 500 / (60 * 25.4); math.Abs(got.Mil-want) > 1e-9 {
		t.Errorf("a millimetre there is %v long, want %v", got.Mil, want)
	}
}

func TestWhatStandsBeforeHides(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Box("Room", plan.UseKitchen, 0, 0, 120, 96)
	behind := b.On("A1", "duplex", r, 0, 30, 16)
	over := b.On("A2", "duplex", r, 0, 30, 80)
	b.Fixture(plan.FixtureRefrigerator, r, 0, 15, 30, 28, 70)
	m, _ := New(b.Index(), r.ID, style)
	c := level60
	c.Eye = inches(60, 90, 60)
	p := m.Draw(c)
	if !markOf(t, p, behind.ID).IsHidden {
		t.Error("an outlet behind a refrigerator is not hidden")
	}
	if markOf(t, p, over.ID).IsHidden {
		t.Error("an outlet 80 in up is hidden by a refrigerator of 70 in")
	}
}

// An L: from its foot, what is on the far face of its other arm is round the corner.
func TestCornersHideWhatIsRoundThem(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Room("Ell", plan.UseLiving, 0, 0, 240, 0, 240, 96, 96, 96, 96, 240, 0, 240)
	o := b.On("A1", "duplex", r, 1, 48, 16) // on the east face
	m, _ := New(b.Index(), r.ID, style)
	c := level60
	c.Bearing = 60
	c.Eye = inches(48, 200, 60)
	if !markOf(t, m.Draw(c), o.ID).IsHidden {
		t.Error("from the foot of the L the east face of its arm is seen")
	}
	c.Eye = inches(48, 48, 60)
	c.Bearing = 90
	if markOf(t, m.Draw(c), o.ID).IsHidden {
		t.Error("from the corner of the L the east face is not seen")
	}
}

// The order of the tree is that of depth: where two shapes cover one point of the picture,
// the nearer is painted later. Looked at along rays through the picture of a full room.
func TestNearerIsPaintedLater(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				m, ok := New(ix, r.ID, style)
				if !ok {
					continue
				}
				for turn := 0.0; turn < 360; turn += 45 {
					checkOrder(t, name+" "+r.Name, m, m.Start(800, 600).Turned(turn))
				}
			}
		}
	}
}

func checkOrder(t *testing.T, name string, m *Model, c Camera) {
	t.Helper()
	const rays = 9
	for i := range rays {
		for k := range rays {
			right := (float64(i)/(rays-1) - 0.5) * c.Width / c.focal()
			up := (float64(k)/(rays-1) - 0.5) * c.Height / c.focal()
			way := c.forward().add(c.right().mul(right)).add(Point{Z: up})
			last := math.Inf(1)
			m.tree.walk(c.Eye, func(s shape) {
				slope := way.dot(s.normal)
				if s.isLine() || slope >= -1e-9 {
					return
				}
				depth := s.points[0].sub(c.Eye).dot(s.normal) / slope
				if depth <= 0 || !s.holds(c.Eye.add(way.mul(depth))) {
					return
				}
				if depth > last+1 {
					t.Errorf("%s, looking %.0f: a shape %.0f mm away is painted over one %.0f mm away", name, c.Bearing, depth, last)
				}
				last = depth
			})
		}
	}
}

func TestStartStandsInFreeFloor(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				m, ok := New(ix, r.ID, style)
				if !ok {
					continue
				}
				c := m.Start(992, 716)
				if c.Eye.Z > r.Ceiling.Millimetres() || c.Field < LeastField || c.Field > MostField {
					t.Errorf("%s, %s: a start of %+v", name, r.Name, c)
				}
				at := geom.Point{X: unit.FromMillimetres(c.Eye.X), Y: unit.FromMillimetres(c.Eye.Y)}
				if !r.Outline().InteriorContains(at) {
					t.Errorf("%s, %s: the eye is at %v, outside the room", name, r.Name, at)
				}
				for f := range l.Fixtures.All() {
					foot, ok := ix.Footprint(f)
					if ok && f.Bottom < EyeHeight && foot.Contains(at) {
						t.Errorf("%s, %s: the eye is within %s", name, r.Name, f.Kind)
					}
				}
				if p := m.Draw(c); len(r.Sides) > 0 && len(p.Items) == 0 {
					t.Errorf("%s, %s: nothing is drawn", name, r.Name)
				}
			}
		}
	}
}

func BenchmarkTurn(b *testing.B) {
	for name, ix := range rendertest.Demos(b) {
		var room *plan.Room
		for _, l := range ix.Plan().Levels {
			for r := range l.Rooms.All() {
				if room == nil || len(ix.OpeningsOn(r.ID)) > len(ix.OpeningsOn(room.ID)) {
					room = r
				}
			}
		}
		m, _ := New(ix, room.ID, style)
		c := m.Start(992, 716)
		b.Run(name, func(b *testing.B) {
			for i := range b.N {
				m.Draw(c.Turned(float64(i)))
			}
		})
	}
}
