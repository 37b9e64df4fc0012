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
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
)

// listener is a host that keeps what it is told.
type listener struct {
	kinds    []Kind
	pointers []tool.Pointer
	keys     []tool.Key
	scale    string
	inside   bool
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
	ix := plan.NewIndex(p)
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

func TestPictureShowsPlanTapesAndLiveThings(t *testing.T) {
	s := newStage(t, 60)
	pic := s.board.pic
	var chosen *plan.Opening
	for _, o := range pic.Index.Plan().Openings() {
		chosen = o
		break
	}
	place, _ := pic.Index.Place(chosen.At)
	pic.Selected = []plan.ID{chosen.ID}
	along := geom.Point{X: 40 * unit.Inch}
	pic.Preview = tool.Preview{
		Area:  geom.Polygon{place.Foot, place.Foot.Add(along), place.Foot.Add(geom.Point{X: 40 * unit.Inch, Y: -50 * unit.Inch})},
		Ghost: &tool.Ghost{Kind: "duplex", Foot: place.Foot.Add(along), Into: place.Into},
		Dims:  []tool.Dim{{From: place.Foot, To: place.Foot.Add(along), Text: `40"`, Aside: place.Into}},
		Snap:  words.New("snap.centre", "middle of the wall"), SnapAt: &place.Foot, Typed: "40",
	}
	s.board.SetPicture(pic)
	s.board.MouseMoved(mouseAt(500, 300, 0))
	if s.board.easel.shown == nil {
		t.Fatal("nothing was painted")
	}
	if n := len(s.board.parts.live.objects); n < 12 || n > mostShapes {
		t.Errorf("%d live things", n)
	}
	s.picture(t, "board")
}

func TestClickIsToldInPlanCoordinates(t *testing.T) {
	s := newStage(t, 60)
	s.board.ZoomTo(1.0 / 48)
	s.board.CenterOn(geom.BoxOf(geom.Point{}))
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

func TestPanMovesTheBitmapWithoutPaintingIt(t *testing.T) {
	s := newStage(t, 60)
	shown, at := s.board.easel.shown, s.board.parts.picture.Position()
	s.board.setView(s.board.view.Panned(image.Pt(17, -9)))
	if s.board.easel.shown != shown {
		t.Error("a short pan painted anew")
	}
	if got := s.board.parts.picture.Position().Subtract(at); got != fyne.NewPos(17, -9) {
		t.Errorf("the bitmap moved by %v, want 17, -9", got)
	}
	s.board.setView(s.board.view.Panned(image.Pt(400, 0)))
	if s.board.easel.shown == shown {
		t.Error("panned beyond its margin, the bitmap is still the old one")
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
		t.Errorf("the host was told %q, the scale is %q", s.told.scale, s.board.ScaleText())
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
		t.Error("a key the host used zooms as well")
	}
	if n := len(s.told.keys); n != 3 || s.told.keys[2].Name != "Enter" {
		t.Errorf("keys told: %+v", s.told.keys)
	}
}

func TestSymbolUnderThePointer(t *testing.T) {
	s := newStage(t, 60)
	s.board.ZoomTo(1.0 / 24)
	shown := 0
	for _, o := range s.board.pic.Index.Plan().Openings() {
		body, ok := s.board.easel.shown.bodyOf(o.ID)
		if !ok {
			continue
		}
		shown++
		at := body.Middle()
		px := image.Pt(int(at.X), int(at.Y)).Add(s.board.easel.shown.frame.Min).Add(s.board.view.At)
		if got := s.board.symbolAt(px); got != o.ID {
			t.Errorf("at the body of %s the symbol is %q", o.Tag, got)
		}
	}
	if shown == 0 {
		t.Error("no symbol was painted")
	}
}

func TestEditPaintsInPlaceAndMovingIsLeftOut(t *testing.T) {
	s := newStage(t, 60)
	frame := s.board.easel.shown.frame
	pic := s.board.pic
	var o *plan.Opening
	for _, each := range pic.Index.Plan().Openings() {
		if each.At.Part == plan.PartFace {
			o = each
			break
		}
	}
	pic.Preview.Moving = []plan.ID{o.ID}
	s.board.SetPicture(pic)
	if _, ok := s.board.easel.shown.bodyOf(o.ID); ok {
		t.Error("what is dragged is still in the bitmap")
	}
	if len(s.board.parts.live.objects) == 0 {
		t.Error("what is dragged is not drawn live")
	}
	pic.Preview.Moving = nil
	now, err := plan.RemoveOpening{ID: o.ID}.Apply(pic.Index.Plan())
	if err != nil {
		t.Fatal(err)
	}
	pic.Index = pic.Index.Updated(now)
	s.board.SetPicture(pic)
	shown := s.board.easel.shown
	if shown.frame != frame {
		t.Error("after an edit the bitmap is about another place")
	}
	fresh := paint(shown.request, nil, nil, &s.board.easel.sprites)
	if string(fresh.image.Pix) != string(shown.image.Pix) {
		t.Error("what was painted after the edit differs from a fresh painting")
	}
}

func TestPaintingBesideTheWindow(t *testing.T) {
	pic := houseOf(t, 60)
	var queue []func()
	e := easel{later: func(f func()) { queue = append(queue, f) }, done: func() {}}
	waited := make(chan func(), 8)
	e.later = func(f func()) { waited <- f }
	want := request{pic: pic, zoom: 0.05, density: 1, frame: image.Rect(0, 0, 300, 200)}
	e.wanted = func(r request) bool { return r.zoom == want.zoom }
	e.ask(want)
	old := want
	want.zoom = 0.1
	e.ask(old) // the same again: nothing to do
	e.ask(want)
	(<-waited)()
	if e.shown != nil {
		t.Error("a bitmap of a zoom no longer shown was taken")
	}
	(<-waited)()
	if e.shown == nil || e.shown.zoom != want.zoom || e.busy {
		t.Error("what was asked for meanwhile was not painted")
	}
	_ = queue
}

func TestUnfoldedRoom(t *testing.T) {
	test.NewTempApp(t)
	told := &listener{}
	u := NewUnfold(told)
	w := test.NewWindow(u)
	defer w.Close()
	w.SetPadded(false)
	w.Resize(fyne.NewSize(800, 214))
	pic := houseOf(t, 60)
	var o *plan.Opening
	for _, each := range pic.Index.Plan().Openings() {
		if each.At.Part == plan.PartFace {
			o = each
			break
		}
	}
	place, _ := pic.Index.Place(o.At)
	pic.Selected = []plan.ID{o.ID}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID, Datum: plan.FinishedFloor})
	face, ok := u.strip.Face(place.Side.ID)
	if !ok {
		t.Fatal("the face is not in the strip")
	}
	at := u.medium.ToStrip(face.Left+o.At.Along, o.Height.Value)
	u.MouseDown(mouseAt(float32(at.X), float32(at.Y), desktop.MouseButtonPrimary))
	got := told.last()
	if !got.OnUnfold || got.Side != place.Side.ID || got.Symbol != o.ID || (got.Height-o.Height.Value).Abs() > 3*unit.Inch {
		t.Errorf("told %+v, want opening %s on side %s", got, o.ID, place.Side.ID)
	}
	if d := got.At.Distance(place.Foot); d > 3*unit.Inch {
		t.Errorf("the place on the face is off by %v", d)
	}
	u.Dragged(drag(float32(at.X)+20, float32(at.Y)-10))
	u.DragEnd()
	if told.count(Move) != 1 || told.count(Up) != 1 {
		t.Errorf("told %v", told.kinds)
	}
	if len(u.live.objects) == 0 {
		t.Error("what is chosen is not marked")
	}
	pic.Preview.Ghost = &tool.Ghost{Kind: "duplex", At: plan.OnFace(place.Side.ID, 20*unit.Inch), Height: 40 * unit.Inch}
	u.SetPicture(UnfoldPicture{Picture: pic, Room: place.Room.ID, Side: place.Side.ID})
	(&stage{window: w}).picture(t, "unfold")
	u.SetPicture(UnfoldPicture{Picture: pic})
	told.forget()
	u.MouseMoved(mouseAt(10, 10, 0))
	if len(told.kinds) != 0 {
		t.Error("an empty strip tells of pointers")
	}
}
