package unfold

import (
	"fmt"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
)

func unfoldOf(t *testing.T, c rendertest.Cottage, kind render.MediumKind, theme render.Theme, width, height float64) Medium {
	t.Helper()
	m := Medium{Medium: render.BoardMedium(1, 1, theme, words.Voice{}), Side: c.Bedroom.Sides[3].ID, Opening: c.Headed.ID}
	if kind == render.Sheet {
		m.Medium = render.SheetMedium(unit.Inch/4, unit.Foot, theme, words.Voice{})
	}
	s, ok := StripOf(c.Index, c.Bedroom.ID)
	if !ok {
		t.Fatal("no strip")
	}
	return m.Fitted(s, scene.Rect{Max: scene.Point{X: width, Y: height}})
}

func TestUnfoldedBedroomLooksAsKept(t *testing.T) {
	c := rendertest.NewCottage(t)
	for _, tt := range []struct {
		name  string
		kind  render.MediumKind
		theme render.Theme
		w, h  float64
		dpi   int
	}{
		{"unfold-light.png", render.Board, render.Light, 900, 220, 96},
		{"unfold-dark.png", render.Board, render.Dark, 900, 220, 96},
		{"unfold-print.png", render.Sheet, render.Print, 250, 60, 150},
	} {
		t.Run(tt.name, func(t *testing.T) {
			m := unfoldOf(t, c, tt.kind, tt.theme, tt.w, tt.h)
			s := rendertest.Page(m.Medium, tt.w, tt.h, Draw(c.Index, c.Bedroom.ID, c.Findings, m))
			s.Paper = tt.theme.Surface
			rendertest.Golden(t, tt.name, tt.dpi, s)
		})
	}
}

func TestRightEndOfEachFaceIsLeftEndOfTheNext(t *testing.T) {
	c := rendertest.NewCottage(t)
	for room := range c.Index.Plan().Levels[0].Rooms.All() {
		s, ok := StripOf(c.Index, room.ID)
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

func TestStripStartsAtNorth(t *testing.T) {
	b := rendertest.NewBuilder(t)
	r := b.Room("Room", plan.UseBedroom, 120, 96, 0, 96, 0, 0, 120, 0) // stored from the south
	s, _ := StripOf(b.Index(), r.ID)
	if got := s.Faces[0].Name.String(); got != "north" {
		t.Errorf("the strip begins with %q", got)
	}
}

func TestBoxesStandAtTheirTrueHeights(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := unfoldOf(t, c, render.Sheet, render.Print, 250, 60)
	s, _ := StripOf(c.Index, c.Bedroom.ID)
	face, _ := s.Face(c.Headed.At.Host)
	want := m.ToStrip(face.Left+c.Headed.At.Along, rendertest.In(26))
	for _, p := range Draw(c.Index, c.Bedroom.ID, nil, m) {
		if p.ID != c.Headed.ID || p.Layer != render.LayerOpenings {
			continue
		}
		got := p.Items[0].Bounds()
		if d := got.Middle().Sub(want); d.X > 1e-9 || d.X < -1e-9 || d.Y > 1e-9 || d.Y < -1e-9 {
			t.Errorf("the box's centre is at %v, want %v", got.Middle(), want)
		}
		if wide := m.Length(frame.FrontOf(c.Headed).Width); got.Width() < wide-1e-9 || got.Width() > wide+1e-9 {
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
		b := rendertest.NewBuilder(t)
		r := b.Box("Room", plan.UseBedroom, 0, 0, 120, 96)
		o := b.On("A1", "switch", r, 0, 60, 46)
		for i, at := range others {
			b.On(fmt.Sprintf("B%d", i), "duplex", r, 0, at, 16)
		}
		ix := b.Index()
		s, _ := StripOf(ix, r.ID)
		m := Medium{Medium: render.BoardMedium(1, 1, render.Light, words.Voice{}), Opening: o.ID}.Fitted(s, scene.Rect{Max: scene.Point{X: 700, Y: 150}})
		pieces := Draw(ix, r.ID, nil, m)
		for _, p := range pieces {
			if p.Layer != render.LayerMarks || p.ID != o.ID {
				continue
			}
			for _, q := range pieces {
				if q.Layer == render.LayerOpenings && q.ID != o.ID && q.Bounds.Overlaps(p.Bounds) {
					t.Errorf("%s: the dimension at %v lies on the box at %v", name, p.Bounds, q.Bounds)
				}
			}
		}
	}
}

func TestStripComesBackFromTheScene(t *testing.T) {
	c := rendertest.NewCottage(t)
	m := unfoldOf(t, c, render.Board, render.Light, 900, 220)
	x, h := m.FromStrip(m.ToStrip(rendertest.In(100), rendertest.In(46)))
	if (x-rendertest.In(100)).Abs() > unit.Millimetre/1000 || (h-rendertest.In(46)).Abs() > unit.Millimetre/1000 {
		t.Errorf("came back as %v, %v", x, h)
	}
	s, _ := StripOf(c.Index, c.Bedroom.ID)
	f, along := s.FaceAt(s.Faces[1].Left + rendertest.In(3))
	if f.Side != s.Faces[1].Side || along != rendertest.In(3) {
		t.Errorf("FaceAt gives %v at %v", f.Name, along)
	}
}
