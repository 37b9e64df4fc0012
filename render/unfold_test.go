package render

import (
	"fmt"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
)

func unfoldOf(t *testing.T, c cottage, kind MediumKind, theme Theme, width, height float64) UnfoldMedium {
	t.Helper()
	m := UnfoldMedium{Medium: BoardMedium(1, 1, theme, words.Voice{}), Side: c.bedroom.Sides[3].ID, Opening: c.headed.ID}
	if kind == Sheet {
		m.Medium = SheetMedium(unit.Inch/4, unit.Foot, theme, words.Voice{})
	}
	s, ok := StripOf(c.ix, c.bedroom.ID)
	if !ok {
		t.Fatal("no strip")
	}
	return m.Fitted(s, scene.Rect{Max: scene.Point{X: width, Y: height}})
}

func TestUnfoldedBedroomLooksAsKept(t *testing.T) {
	c := newCottage(t)
	for _, tt := range []struct {
		name  string
		kind  MediumKind
		theme Theme
		w, h  float64
		dpi   int
	}{
		{"unfold-light.png", Board, Light, 900, 220, 96},
		{"unfold-dark.png", Board, Dark, 900, 220, 96},
		{"unfold-print.png", Sheet, Print, 250, 60, 150},
	} {
		t.Run(tt.name, func(t *testing.T) {
			m := unfoldOf(t, c, tt.kind, tt.theme, tt.w, tt.h)
			s := page(m.Medium, tt.w, tt.h, Unfold(c.ix, c.bedroom.ID, c.findings, m))
			s.Paper = tt.theme.Surface
			golden(t, tt.name, tt.dpi, s)
		})
	}
}

func TestRightEndOfEachFaceIsLeftEndOfTheNext(t *testing.T) {
	c := newCottage(t)
	for room := range c.ix.Plan().Levels[0].Rooms.All() {
		s, ok := StripOf(c.ix, room.ID)
		if !ok {
			t.Fatalf("%s does not unfold", room.Name)
		}
		for i, f := range s.Faces {
			next := s.Faces[(i+1)%len(s.Faces)]
			if f.Line.B != next.Line.A {
				t.Errorf("%s: the right end of %v is %v, the left end of %v is %v", room.Name, f.Name, f.Line.B, next.Name, next.Line.A)
			}
			if i+1 < len(s.Faces) && f.Left+f.Length != next.Left {
				t.Errorf("%s: %v ends at %v and %v begins at %v", room.Name, f.Name, f.Left+f.Length, next.Name, next.Left)
			}
			if length := f.Line.Length(); f.Length != length {
				t.Errorf("%s: %v is %v long, on the plan %v", room.Name, f.Name, f.Length, length)
			}
		}
	}
}

func TestFacesAreNamedByWhereTheyStand(t *testing.T) {
	for _, tt := range []struct {
		name  string
		north int
		want  []string
	}{
		{"north is up", 0, []string{"north", "east", "south", "west"}},
		{"up is east", 90, []string{"east", "south", "west", "north"}},
		{"up is 10 degrees off north", 10, []string{"north", "east", "south", "west"}},
		{"up is near no wind", 23, []string{"face A", "face B", "face C", "face D"}},
		{"up is north-west", 315, []string{"north-west", "north-east", "south-east", "south-west"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b := newBuilder(t)
			r := b.box("Room", plan.UseBedroom, 0, 0, 120, 96)
			header := *b.p.Header
			header.North = tt.north
			b.p.Header = &header
			for i, n := range FaceNames(b.index(), r) {
				if n.String() != tt.want[i] {
					t.Errorf("face %d is %q, want %q", i, n, tt.want[i])
				}
			}
		})
	}
}

func TestStripStartsAtNorth(t *testing.T) {
	b := newBuilder(t)
	r := b.room("Room", plan.UseBedroom, 120, 96, 0, 96, 0, 0, 120, 0) // stored from the south
	s, _ := StripOf(b.index(), r.ID)
	if got := s.Faces[0].Name.String(); got != "north" {
		t.Errorf("the strip begins with %q", got)
	}
}

func TestBoxesStandAtTheirTrueHeights(t *testing.T) {
	c := newCottage(t)
	m := unfoldOf(t, c, Sheet, Print, 250, 60)
	s, _ := StripOf(c.ix, c.bedroom.ID)
	face, _ := s.Face(c.headed.At.Host)
	want := m.ToStrip(face.Left+c.headed.At.Along, in(26))
	for _, p := range Unfold(c.ix, c.bedroom.ID, nil, m) {
		if p.ID != c.headed.ID || p.Layer != LayerOpenings {
			continue
		}
		got := p.Items[0].Bounds()
		if d := got.Middle().Sub(want); d.X > 1e-9 || d.X < -1e-9 || d.Y > 1e-9 || d.Y < -1e-9 {
			t.Errorf("the box's centre is at %v, want %v", got.Middle(), want)
		}
		w, _ := BoxFront(m.parts(), c.headed)
		if wide := m.Length(w); got.Width() < wide-1e-9 || got.Width() > wide+1e-9 {
			t.Errorf("the box is %v wide, want %v", got.Width(), wide)
		}
		return
	}
	t.Error("the box is not drawn")
}

// TestAHeightIsWrittenClearOfOtherBoxes: of a switch with a receptacle low at its left or at
// its right.
func TestAHeightIsWrittenClearOfOtherBoxes(t *testing.T) {
	for name, others := range map[string][]float64{"left": {54}, "right": {66}, "none": nil} {
		b := newBuilder(t)
		r := b.box("Room", plan.UseBedroom, 0, 0, 120, 96)
		o := b.on("A1", "switch", r, 0, 60, 46)
		for i, at := range others {
			b.on(fmt.Sprintf("B%d", i), "duplex", r, 0, at, 16)
		}
		ix := b.index()
		s, _ := StripOf(ix, r.ID)
		m := UnfoldMedium{Medium: BoardMedium(1, 1, Light, words.Voice{}), Opening: o.ID}.Fitted(s, scene.Rect{Max: scene.Point{X: 700, Y: 150}})
		pieces := Unfold(ix, r.ID, nil, m)
		for _, p := range pieces {
			if p.Layer != LayerMarks || p.ID != o.ID {
				continue
			}
			for _, q := range pieces {
				if q.Layer == LayerOpenings && q.ID != o.ID && q.Bounds.Overlaps(p.Bounds) {
					t.Errorf("%s: the dimension at %v lies on the box at %v", name, p.Bounds, q.Bounds)
				}
			}
		}
	}
}

func TestStripComesBackFromTheScene(t *testing.T) {
	c := newCottage(t)
	m := unfoldOf(t, c, Board, Light, 900, 220)
	x, h := m.FromStrip(m.ToStrip(in(100), in(46)))
	if (x-in(100)).Abs() > unit.Millimetre/1000 || (h-in(46)).Abs() > unit.Millimetre/1000 {
		t.Errorf("came back as %v, %v", x, h)
	}
	s, _ := StripOf(c.ix, c.bedroom.ID)
	f, along := s.FaceAt(s.Faces[1].Left + in(3))
	if f.Side != s.Faces[1].Side || along != in(3) {
		t.Errorf("FaceAt gives %v at %v", f.Name, along)
	}
}

func TestDimensionChain(t *testing.T) {
	b := newBuilder(t)
	r := b.box("Room", plan.UseBedroom, 0, 0, 120, 96)
	b.door(r, 0, 20, 30, plan.HandLeft, plan.SwingIn)
	o := b.on("A1", "duplex", r, 0, 80, 16)
	light := b.ceiling("A2", "ceiling-light", r, 40, 30)
	ix := b.index()
	want := []unit.Length{in(30), in(40), in(80)} // casing edge, right corner, left corner
	got := DimensionChain(ix, o.At, o.ID)
	if len(got) != len(want) {
		t.Fatalf("chain of %d, want %d: %v", len(got), len(want), got)
	}
	for i, d := range got {
		if d.Length != want[i] || d.From != (geom.Point{X: in(80)}) {
			t.Errorf("dimension %d is %v from %v, want %v", i, d.Length, d.From, want[i])
		}
	}
	flat := DimensionChain(ix, light.At, light.ID)
	for i, w := range []unit.Length{in(40), in(80), in(30), in(66)} {
		if flat[i].Length != w {
			t.Errorf("ceiling dimension %d is %v, want %v", i, flat[i].Length, w)
		}
	}
}
