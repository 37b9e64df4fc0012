package board

import (
	"image"
	"image/png"
	"os"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"studbay/app/tool"
	"studbay/fill"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/words"
	"studbay/render"
)

// listener is one that keeps what it is told.
type listener struct {
	kinds    []Kind
	pointers []tool.Pointer
	keys     []tool.Key
	scale    string
	inside   bool
	menu     *tool.Pointer
	uses     bool // says it used every key
}

func (l *listener) Pointer(k Kind, p tool.Pointer) {
	l.kinds, l.pointers = append(l.kinds, k), append(l.pointers, p)
}

func (l *listener) Key(k tool.Key) bool {
	l.keys = append(l.keys, k)
	return l.uses
}

func (l *listener) ViewChanged(scale string)             { l.scale = scale }
func (l *listener) Menu(p tool.Pointer, _ fyne.Position) { l.menu = &p }

func (l *listener) PointerAt(at geom.Point, inside bool) { l.inside = inside }
func (l *listener) last() tool.Pointer                   { return l.pointers[len(l.pointers)-1] }
func (l *listener) forget()                              { l.kinds, l.pointers, l.keys = nil, nil, nil }
func (l *listener) count(k Kind) (n int)                 { return countOf(l.kinds, k) }

func countOf(kinds []Kind, k Kind) (n int) {
	for _, got := range kinds {
		if got == k {
			n++
		}
	}
	return n
}

// stage is a board in a window of the test driver.
type stage struct {
	board  *Board
	told   *listener
	window fyne.Window
	clock  time.Time
}

func newStage(t testing.TB, openings int) *stage {
	t.Helper()
	test.NewTempApp(t)
	s := &stage{told: &listener{}, clock: time.Unix(0, 0)}
	s.board = New(s.told)
	s.board.PaintInPlace()
	s.board.mouse.now = func() time.Time { return s.clock }
	s.window = test.NewWindow(s.board)
	s.window.SetPadded(false)
	s.window.Resize(fyne.NewSize(1000, 700))
	t.Cleanup(s.window.Close)
	s.board.SetPicture(houseOf(t, openings))
	s.board.Fit()
	return s
}

func houseOf(t testing.TB, openings int) Picture {
	p := plantest.House(1, openings)
	ix := index.New(p)
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return Picture{Index: ix, Level: p.Levels[0].ID, Findings: result.All(), Theme: render.Light, Voice: words.Voice{}}
}

func mouseAt(x, y float32, b desktop.MouseButton) *desktop.MouseEvent {
	return &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, y)}, Button: b}
}

func drag(x, y float32) *fyne.DragEvent {
	return &fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, y)}}
}

// picture writes what the window shows where STUDBAY_PICTURES says, to be looked at.
func (s *stage) picture(t testing.TB, name string) image.Image {
	im := s.window.Canvas().Capture()
	if dir := os.Getenv("STUDBAY_PICTURES"); dir != "" {
		f, err := os.Create(dir + "/" + name + ".png")
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		if err := png.Encode(f, im); err != nil {
			t.Fatal(err)
		}
	}
	return im
}
