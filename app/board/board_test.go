package board

import (
	"image"
	"slices"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

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
		Snap:  words.New("snap.centre", "center of the wall"), SnapAt: &place.Foot, Typed: words.New("plain", "{0}", "40"),
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

func TestWhatIsDrawnInABox(t *testing.T) {
	s := newStage(t, 60)
	s.board.ZoomTo(1.0 / 24)
	found := 0
	for _, o := range s.board.pic.Index.Plan().Openings() {
		body, ok := s.board.easel.shown.bodyOf(o.ID)
		if !ok {
			continue
		}
		found++
		at := body.Middle()
		off := s.board.easel.shown.frame.Min.Add(s.board.view.At)
		middle := s.board.view.Plan(at.X+float64(off.X), at.Y+float64(off.Y))
		if got := s.board.DrawnIn(geom.BoxOf(middle).Expand(unit.Millimetre)); !slices.Contains(got, o.ID) {
			t.Errorf("round the body of %s %v is drawn", o.Tag, got)
		}
		if got := s.board.DrawnIn(geom.BoxOf(middle.Add(geom.Point{X: 2 * unit.Inch})).Expand(unit.Inch)); slices.Contains(got, o.ID) {
			t.Errorf("beside the body of %s it is drawn too", o.Tag)
		}
	}
	if found == 0 {
		t.Error("no symbol was painted")
	}
}

func TestEditPaintsInPlaceAndMovingIsLeftOut(t *testing.T) {
	s := newStage(t, 60)
	frame := s.board.easel.shown.frame
	pic := s.board.pic
	o := firstOnFace(pic)
	pic.Preview.Moving = []plan.ID{o.ID}
	s.board.SetPicture(pic)
	if _, ok := s.board.easel.shown.bodyOf(o.ID); ok {
		t.Error("what is dragged is still in the bitmap")
	}
	if len(s.board.parts.live.objects) == 0 {
		t.Error("what is dragged is not drawn live")
	}
	pic.Preview.Moving = nil
	now, err := edit.Remove{Things: []plan.ID{o.ID}}.Apply(pic.Index.Plan())
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

// While an opening is dragged the picture below it stays, as it would be painted anew the
// same; with a cable of it in sight, or with another thing changed, it does not.
func TestThePictureStaysUnderADrag(t *testing.T) {
	s := newStage(t, 60)
	pic := s.board.pic
	o := firstOnFace(pic)
	pic.Preview.Moving = []plan.ID{o.ID}
	s.board.SetPicture(pic)
	below := s.board.easel.shown
	pic.Index = movedBy(t, pic.Index, o, 2*unit.Inch)
	s.board.SetPicture(pic)
	if s.board.easel.shown != below {
		t.Error("the picture below a drag was painted anew")
	}
	moved := below.request
	moved.pic = pic
	if string(paint(moved, nil, nil, &s.board.easel.sprites).image.Pix) != string(below.image.Pix) {
		t.Error("the picture below a drag is not what it would be painted anew")
	}
	wired := pic
	wired.Preview.Cables = true
	s.board.SetPicture(wired)
	if below = s.board.easel.shown; len(pic.Index.CablesAt(o.ID)) == 0 {
		t.Fatal("no cable ends in the opening: this proves nothing")
	}
	wired.Index = movedBy(t, pic.Index, o, 4*unit.Inch)
	s.board.SetPicture(wired)
	if s.board.easel.shown == below {
		t.Error("a cable in sight did not follow its opening")
	}
	s.board.SetPicture(pic)
	below = s.board.easel.shown
	other := *o
	for id := range pic.Index.Plan().Levels[0].Openings.All() {
		if id.ID != o.ID && id.At.Part == plan.PartFace {
			other = *id
			break
		}
	}
	pic.Index = movedBy(t, pic.Index, &other, unit.Inch)
	s.board.SetPicture(pic)
	if s.board.easel.shown == below {
		t.Error("a thing that is not dragged was changed and the picture stayed")
	}
}

func TestPaintingBesideTheWindow(t *testing.T) {
	waited := make(chan func(), 8)
	pic := houseOf(t, 60)
	want := request{pic: pic, zoom: 0.05, density: 1, frame: image.Rect(0, 0, 300, 200)}
	e := easel{later: func(f func()) { waited <- f }, done: func() {}}
	e.wanted = func(r request) bool { return r.zoom == want.zoom }
	e.settle = func() {
		if e.shown == nil || !e.shown.sameLooks(want) {
			e.ask(want)
		}
	}
	e.ask(want)
	want.zoom = 0.1 // the board moves on while the first is painted
	e.ask(want)
	(<-waited)()
	if e.shown != nil || !e.busy {
		t.Error("a bitmap of a zoom no longer shown was taken, or the new one was not begun")
	}
	now, err := edit.Remove{Things: []plan.ID{firstOnFace(pic).ID}}.Apply(pic.Index.Plan())
	if err != nil {
		t.Fatal(err)
	}
	edited := want
	edited.pic.Index = pic.Index.Updated(now)
	want, edited = edited, want
	e.ask(want)
	want = edited // and the edit is undone before its turn has come
	(<-waited)()
	if e.shown == nil || !e.shown.sameLooks(want) || e.busy {
		t.Error("what is shown in the end is not what is wanted")
	}
}

func firstOnFace(p Picture) *plan.Opening {
	for _, o := range p.Index.Plan().Openings() {
		if o.At.Part == plan.PartFace {
			return o
		}
	}
	return nil
}

func TestScaleStaysOnAnotherScreen(t *testing.T) {
	s := newStage(t, 60)
	scale, under := s.board.Scale(), s.board.view.Plan(400, 300)
	s.window.Canvas().(interface{ SetScale(float32) }).SetScale(2)
	s.board.update()
	if d := s.board.Scale()/scale - 1; d > 1e-9 || d < -1e-9 {
		t.Errorf("the scale went from %v to %v", scale, s.board.Scale())
	}
	if d := s.board.view.Plan(800, 600).Distance(under); d > s.board.view.Length(2) {
		t.Errorf("what was at one place is off by %v", d)
	}
	shown := s.board.easel.shown
	if got := s.board.parts.picture.Size(); got.Width != float32(shown.frame.Dx())/2 {
		t.Errorf("the bitmap of %v pixels is %v wide at density 2", shown.frame.Dx(), got.Width)
	}
}

func TestAnEmptyPlanIsShownAtTheUsualScale(t *testing.T) {
	s := newStage(t, 60)
	level := plan.ID("vaaaaaaaa")
	for system, want := range map[unit.System]string{unit.Imperial: "1/4 in = 1 ft", unit.Metric: "1:50"} {
		s.board.ZoomTo(1.0 / 20)
		s.board.SetPicture(Picture{
			Index: index.New(plan.New("Empty", level)), Level: level, Theme: s.board.pic.Theme, Voice: words.Voice{System: system},
		})
		s.board.Fit()
		if got := s.board.ScaleText(); got != want {
			t.Errorf("an empty plan is shown at %s, want %s", got, want)
		}
	}
}
