package board

import (
	"image"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

func TestClickIsToldInPlanCoordinates(t *testing.T) {
	s := newStage(t, 60)
	s.board.ZoomTo(1.0 / 48)
	s.board.setView(s.board.view.Centred(geom.Point{}, s.board.screen()))
	s.told.forget()
	x, y := s.board.view.Screen(geom.Point{X: 3 * unit.Foot, Y: 2 * unit.Foot})
	s.board.MouseDown(mouseAt(float32(x), float32(y), desktop.MouseButtonPrimary))
	s.board.MouseUp(mouseAt(float32(x), float32(y), desktop.MouseButtonPrimary))
	if len(s.told.kinds) != 2 || s.told.kinds[0] != Down || s.told.kinds[1] != Up {
		t.Fatalf("told %v, want a press and a release", s.told.kinds)
	}
	got, want := s.told.pointers[0], geom.Point{X: 3 * unit.Foot, Y: 2 * unit.Foot}
	if got.At.Distance(want) > s.board.view.Length(1) {
		t.Errorf("pressed at %v, want %v to within a pixel", got.At, want)
	}
	if s.window.Canvas().Focused() != s.board {
		t.Error("a click does not give the board the focus")
	}
}

func TestSecondPressAtOnceIsADouble(t *testing.T) {
	s := newStage(t, 60)
	press := func(x float32, after time.Duration) Kind {
		s.clock = s.clock.Add(after)
		s.told.forget()
		s.board.MouseDown(mouseAt(x, 200, desktop.MouseButtonPrimary))
		s.board.MouseUp(mouseAt(x, 200, desktop.MouseButtonPrimary))
		return s.told.kinds[0]
	}
	for i, tt := range []struct {
		x     float32
		after time.Duration
		want  Kind
	}{
		{300, time.Second, Down}, {301, 200 * time.Millisecond, Double}, {301, 200 * time.Millisecond, Down},
		{301, time.Second, Down}, {330, 100 * time.Millisecond, Down},
	} {
		if got := press(tt.x, tt.after); got != tt.want {
			t.Errorf("press %d is told as %v, want %v", i, got, tt.want)
		}
	}
}

func TestDragIsToldToItsEnd(t *testing.T) {
	s := newStage(t, 60)
	s.told.forget()
	s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonPrimary))
	s.board.Dragged(drag(320.4, 210.6))
	s.board.Dragged(drag(340, 220))
	s.board.DragEnd() // let go outside of the window: no MouseUp comes
	if s.told.count(Down) != 1 || s.told.count(Move) != 2 || s.told.count(Up) != 1 {
		t.Fatalf("told %v", s.told.kinds)
	}
	if want := s.board.view.Plan(340, 220); s.told.last().At != want {
		t.Errorf("let go at %v, want where it was last, %v", s.told.last().At, want)
	}
	s.told.forget()
	s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonPrimary))
	s.board.Dragged(drag(310, 200))
	s.board.MouseUp(mouseAt(310, 200, desktop.MouseButtonPrimary))
	s.board.DragEnd()
	if n := s.told.count(Up); n != 1 {
		t.Errorf("a release inside is told %d times", n)
	}
}

func TestMiddleButtonAndSpacePan(t *testing.T) {
	s := newStage(t, 60)
	before := s.board.view
	s.told.forget()
	s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonTertiary))
	s.board.Dragged(drag(350.3, 230.4))
	s.board.MouseUp(mouseAt(350.3, 230.4, desktop.MouseButtonTertiary))
	s.board.DragEnd()
	if got, want := s.board.view.At.Sub(before.At), image.Pt(50, 30); got != want {
		t.Errorf("the middle button panned by %v, want %v", got, want)
	}
	s.board.KeyDown(&fyne.KeyEvent{Name: fyne.KeySpace})
	s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonPrimary))
	s.board.Dragged(drag(290, 200))
	s.board.MouseUp(mouseAt(290, 200, desktop.MouseButtonPrimary))
	s.board.KeyUp(&fyne.KeyEvent{Name: fyne.KeySpace})
	if got, want := s.board.view.At.Sub(before.At), image.Pt(40, 30); got != want {
		t.Errorf("with the space bar it is panned by %v, want %v", got, want)
	}
	if len(s.told.kinds) != 0 {
		t.Errorf("tools were told of a pan: %v", s.told.kinds)
	}
}

func TestWheelZoomsAboutThePointer(t *testing.T) {
	s := newStage(t, 60)
	under := s.board.view.Plan(420, 310)
	zoom := s.board.view.Zoom
	s.board.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(420, 310)}, Scrolled: fyne.NewDelta(0, float32(notch))})
	if s.board.view.Zoom <= zoom {
		t.Fatal("a notch up does not zoom in")
	}
	if d := s.board.view.Plan(420, 310).Distance(under); d > s.board.view.Length(1) {
		t.Errorf("what was under the pointer is off by %v", d)
	}
	if s.told.scale != s.board.ScaleText() {
		t.Errorf("the listener was told %q, the scale is %q", s.told.scale, s.board.ScaleText())
	}
	at := s.board.view.At
	s.board.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(420, 310)}, Scrolled: fyne.NewDelta(3.5, -2.5)})
	if s.board.view.At == at || s.board.easel.shown.zoom != s.board.view.Zoom {
		t.Error("a touchpad does not pan, or it zooms")
	}
}

func TestKeysZoomOnlyWhereNobodyUsesThem(t *testing.T) {
	s := newStage(t, 60)
	zoom := s.board.view.Zoom
	s.board.TypedRune('+')
	if s.board.view.Zoom <= zoom {
		t.Error("+ does not zoom in")
	}
	s.told.uses = true
	zoom = s.board.view.Zoom
	s.board.TypedRune('-')
	s.board.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	s.board.TypedKey(&fyne.KeyEvent{Name: fyne.KeyMinus}) // comes as a rune as well
	if s.board.view.Zoom != zoom {
		t.Error("a key the listener used zooms as well")
	}
	if n := len(s.told.keys); n != 3 || s.told.keys[2].Name != "Enter" {
		t.Errorf("keys told: %+v", s.told.keys)
	}
}
