package board

import (
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

func TestNotesHoldTheirTextWhole(t *testing.T) {
	newStage(t, 20)
	for _, text := range []string{"square", `4-1/2" partition from Bedroom; in line with a face of Room 2`, "“12' 6” reads 12' 6\""} {
		w, h := noteSize(text, 1)
		written := canvas.NewText(text, nil)
		written.TextSize, written.TextStyle = noteText, fyne.TextStyle{Bold: true}
		if got := written.MinSize(); float64(got.Width) > w-8 || float64(got.Height) > h {
			t.Errorf("%q is %v, its note %v × %v", text, got, w, h)
		}
	}
}

func TestNotesLeaveSymbolsInSight(t *testing.T) {
	s := newStage(t, 60)
	s.board.ZoomTo(1.0 / 32)
	shown, tried := s.board.easel.shown, 0
	for _, o := range s.board.pic.Index.Plan().Openings() {
		if body, ok := shown.bodyOf(o.ID); ok {
			by := body.Middle().Add(scene.Point{X: float64(shown.frame.Min.X + s.board.view.At.X), Y: float64(shown.frame.Min.Y + s.board.view.At.Y)})
			if !rectOf(s.board.screen()).Expanded(-200).Contains(by) {
				continue
			}
			tried++
			d := scribe{pic: s.board.pic, density: 1, screen: rectOf(s.board.screen()), pieces: shown.pieces,
				shift: by.Sub(body.Middle())}
			d.beside(by, "in line with B4", render.Light.Accent)
			note := d.notes[len(d.notes)-1]
			for _, p := range shown.pieces {
				b := scene.Rect{Min: p.Bounds.Min.Add(d.shift), Max: p.Bounds.Max.Add(d.shift)}
				if p.Layer == render.LayerOpenings && b.Overlaps(note) {
					t.Errorf("the note by %s lies over the symbol of %s", o.Tag, p.ID)
				}
			}
		}
	}
	if tried < 5 {
		t.Fatalf("only %d openings in view", tried)
	}
}

func TestHoldKeepsThePlanOnTheScreen(t *testing.T) {
	s := newStage(t, 20)
	before := s.board.view
	s.board.Hold(196, 0)
	if got := before.At.Sub(s.board.view.At); got.X != 196 || got.Y != 0 {
		t.Errorf("a corner 196 to the right moves the plan by %v to the left on the board", got)
	}
	if s.board.Hold(-196, 0); s.board.view != before {
		t.Error("opened and shut, the drawer has moved the plan")
	}
}

// A dragged opening's tag is readable over what it passes.
func TestAMovingTagHasAGround(t *testing.T) {
	s := newStage(t, 20)
	pic := s.board.pic
	for _, o := range pic.Index.Plan().Openings() {
		pic.Preview = tool.Preview{Moving: []plan.ID{o.ID}, Snap: words.Text{}}
		s.board.SetPicture(pic)
		break
	}
	objects := s.board.parts.live.objects
	n := len(objects)
	if n < 2 {
		t.Fatalf("%d live things", n)
	}
	ground, isBox := objects[n-2].(*canvas.Rectangle)
	tag, isText := objects[n-1].(*canvas.Text)
	if !isBox || !isText || tag.Position().X < ground.Position().X || tag.Position().X+tag.MinSize().Width > ground.Position().X+ground.Size().Width {
		t.Errorf("the tag has no ground: %T %T", objects[n-2], objects[n-1])
	}
}

// The outline of a chosen room does not hide the stretch that a finding is of.
func TestStretchesStandAboveWhatIsChosen(t *testing.T) {
	s := newStage(t, 60)
	pic := s.board.pic
	for i := range pic.Findings {
		f := &pic.Findings[i]
		if len(f.Stretches) == 0 || f.Room == "" || f.Waived != nil {
			continue
		}
		pic.Selected = []plan.ID{f.Room}
		d := scribe{pic: pic, view: s.board.view, density: 1}
		shapes := d.draw()
		ink, outline, mark := severityInk(pic.Theme, f.Severity), -1, -1
		for at, sh := range shapes {
			if sh.kind == lineShape && sh.color == pic.Theme.Accent {
				outline = at
			}
			if sh.kind == lineShape && sh.color == ink {
				mark = at
			}
		}
		if outline < 0 || mark < outline {
			t.Errorf("the outline is drawn at %d, the stretch at %d", outline, mark)
		}
		return
	}
	t.Fatal("the house has no finding with a stretch in a room")
}

// TestFiguresOfShortDimensionsStandApart: two dimensions that meet, each shorter than its
// text, are both to be read.
func TestFiguresOfShortDimensionsStandApart(t *testing.T) {
	stage := newStage(t, 20)
	foot := func(x, y float64) geom.Point {
		return geom.Point{X: unit.Length(x * float64(unit.Foot)), Y: unit.Length(y * float64(unit.Foot))}
	}
	for name, to := range map[string]func(float64) geom.Point{
		"across":   func(x float64) geom.Point { return foot(4+x, 6) },
		"downward": func(y float64) geom.Point { return foot(4, 6+y) },
		"slanting": func(d float64) geom.Point { return foot(4+d, 6+d) },
	} {
		s := scribe{pic: stage.board.pic, view: stage.board.view, density: 1, screen: rectOf(stage.board.screen())}
		s.dim(tool.Dim{From: to(0), To: to(.2), Text: `1' 1-1/2"`})
		s.dim(tool.Dim{From: to(.2), To: to(.4), Text: `7' 2-1/2"`})
		s.dim(tool.Dim{From: to(.4), To: to(.6), Text: `3' 8-1/4"`})
		if len(s.figures) != 3 {
			t.Fatalf("%s: %d figures", name, len(s.figures))
		}
		for i, a := range s.figures {
			for _, b := range s.figures[:i] {
				if a.Overlaps(b) {
					t.Errorf("%s: one figure lies over another", name)
				}
			}
		}
	}
}

// A dimension of a room that is shown small stands beyond the wall and not over the room.
func TestDimensionsKeepOffASmallRoom(t *testing.T) {
	newStage(t, 0)
	const millimetres = 1000 // of room, from the wall at 0 downwards
	for _, tt := range []struct {
		name string
		zoom float64 // pixels a millimetre
		want float64 // where the line lies, in pixels down from the face
	}{
		{"there is place", tightUnits / float64(millimetres), asideUnits},
		{"a little less", (tightUnits - 1) / float64(millimetres), -asideUnits - 100*(tightUnits-1)/float64(millimetres)},
	} {
		s := scribe{view: View{Zoom: tt.zoom}, density: 1}
		s.dim(tool.Dim{
			To: geom.Point{X: 900 * unit.Millimetre}, Text: "900", Aside: geom.Point{Y: unit.Millimetre},
			Deep: millimetres * unit.Millimetre, Wall: 100 * unit.Millimetre,
		})
		found := false
		for _, line := range s.shapes {
			found = found || line.kind == lineShape && line.a.X == 0 && line.b.X > 100 && math.Abs(line.a.Y-tt.want) < 0.01
		}
		if !found {
			t.Errorf("%s: no line lies %.1f from the face: %+v", tt.name, tt.want, s.shapes)
		}
	}
}
