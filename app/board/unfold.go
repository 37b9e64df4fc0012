package board

import (
	"image"
	"math"
	"runtime"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"studbay/app/board/bitmap"
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/unfold"
)

var (
	_ fyne.Widget        = (*Unfold)(nil)
	_ desktop.Mouseable  = (*Unfold)(nil)
	_ desktop.Hoverable  = (*Unfold)(nil)
	_ desktop.Cursorable = (*Unfold)(nil)
	_ fyne.Draggable     = (*Unfold)(nil)
	_ fyne.Focusable     = (*Unfold)(nil)
)

// UnfoldPicture is what the unfolded room shows.
type UnfoldPicture struct {
	Picture
	Room  plan.ID    // empty shows nothing
	Side  plan.ID    // the face in hand, or empty
	Datum plan.Datum // from which floor heights are told
}

// Unfold shows all faces of a room in a row, as seen standing in it. Make one with
// NewUnfold.
type Unfold struct {
	widget.BaseWidget
	listener Listener
	pic      UnfoldPicture
	mouse    mouse

	strip   unfold.Strip
	isThere bool                 // the room is in the plan
	faces   []unfold.FixtureFace // to the right of the strip
	medium  unfold.Medium
	pieces  []render.Piece
	sprites bitmap.Cache
	drawn   unfoldKey
	pointer *fyne.Position

	picture *picture
	live    *overlay
	clip    *container.Clip
}

// unfoldKey is all that the picture of an unfolded room depends on.
type unfoldKey struct {
	index   *index.Index
	room    plan.ID
	side    plan.ID
	opening plan.ID
	fixture plan.ID
	datum   plan.Datum
	theme   render.Theme
	size    image.Point
	density float64
	metric  int
}

// NewUnfold returns an empty one. The host is told of pointers with OnUnfold, Side and
// Height set, At being the place on the face; it is told of no view.
func NewUnfold(listener Listener) *Unfold {
	u := &Unfold{listener: listener, picture: newPicture(), live: newOverlay()}
	u.mouse = mouse{listener: listener, pointer: u.pointTo, hover: u.hover, now: time.Now}
	u.mouse.idle = func() bool { return u.pic.Preview.IsBare() }
	u.mouse.limiter = limiter{apart: hoverEvery, now: time.Now, after: afterOn(fyne.Do)}
	u.picture.Hide()
	u.clip = container.NewClip(container.NewWithoutLayout(u.picture.Raster, u.live))
	u.ExtendBaseWidget(u)
	return u
}

// SetPicture shows a room.
func (u *Unfold) SetPicture(p UnfoldPicture) {
	same := sameFindings(u.pic.Findings, p.Findings)
	u.pic = p
	if !same {
		u.drawn = unfoldKey{}
	}
	u.update()
}

// opening returns the one opening that is chosen, whose dimensions are drawn, or nothing;
// while another would be placed, those of that one stand there.
func (u *Unfold) opening() plan.ID {
	if u.pic.Preview.Ghost == nil && len(u.pic.Selected) == 1 && u.pic.Selected[0].Kind() == plan.KindOpening {
		return u.pic.Selected[0]
	}
	return ""
}

// fixture returns the one fixture that is chosen, all faces of which are shown, or nothing.
func (u *Unfold) fixture() plan.ID {
	if len(u.pic.Selected) == 1 && u.pic.Selected[0].Kind() == plan.KindFixture {
		return u.pic.Selected[0]
	}
	return ""
}

func (u *Unfold) density() float64 {
	if c := fyne.CurrentApp().Driver().CanvasForObject(u); c != nil {
		return float64(c.Scale())
	}
	return 1
}

// update paints the room anew where it differs, and shows what is live above it.
func (u *Unfold) update() {
	d, size := u.density(), u.Size()
	px := image.Pt(int(math.Round(float64(size.Width)*d)), int(math.Round(float64(size.Height)*d)))
	if px.X < 1 || px.Y < 1 {
		return
	}
	key := unfoldKey{
		u.pic.Index, u.pic.Room, u.pic.Side, u.opening(), u.fixture(), u.pic.Datum, u.pic.Theme, px, d, int(u.pic.Voice.System),
	}
	if key != u.drawn {
		u.drawn = key
		u.paint(px, d)
	}
	u.live.set(u.liveShapes(d), d)
}

func (u *Unfold) paint(size image.Point, d float64) {
	u.isThere, u.pieces, u.faces = false, nil, nil
	if u.pic.Index != nil {
		u.strip, u.isThere = unfold.StripOf(u.pic.Index, u.pic.Room)
	}
	if u.isThere {
		u.faces = unfold.FixtureFaces(u.pic.Index, u.pic.Room, u.fixture())
		u.medium = unfold.Medium{
			Medium: render.BoardMedium(1, d, u.pic.Theme, u.pic.Voice), Side: u.pic.Side, Opening: u.opening(), Fixture: u.fixture(), Datum: u.pic.Datum,
		}.Fitted(u.whole(), scene.Rect{Max: scene.Point{X: float64(size.X), Y: float64(size.Y)}})
		u.pieces = unfold.Draw(u.pic.Index, u.pic.Room, u.pic.Findings, u.medium)
		aside := u.medium
		aside.At.X += u.medium.Length(u.strip.Width + unfold.FixtureFaceGap)
		u.pieces = append(u.pieces, unfold.DrawFixtures(u.pic.Index, u.pic.Room, u.pic.Findings, aside)...)
	}
	im := image.NewRGBA(image.Rectangle{Max: size})
	bitmap.NewList(u.pieces, u.pic.Theme.Surface, &u.sprites).Paint(im, im.Rect, runtime.NumCPU())
	u.picture.set(im)
	u.picture.Resize(fyne.NewSize(float32(float64(size.X)/d), float32(float64(size.Y)/d)))
}

// pointTo returns what tools are told of a place.
func (u *Unfold) pointTo(at fyne.Position, mod fyne.KeyModifier) (tool.Pointer, bool) {
	if !u.isThere {
		return tool.Pointer{}, false
	}
	d := u.density()
	px := scene.Point{X: math.Round(float64(at.X) * d), Y: math.Round(float64(at.Y) * d)}
	x, high := u.medium.FromStrip(px)
	if p, ok := u.onFixture(x, high); ok {
		p.Reach, p.Symbol = unit.FromMillimetres(reach*d/u.medium.Scale), u.boxAt(px, d)
		p.Shift, p.Control, p.Alt = mod&fyne.KeyModifierShift != 0, mod&fyne.KeyModifierShortcutDefault != 0, mod&fyne.KeyModifierAlt != 0
		return p, true
	}
	face, along := u.strip.FaceAt(x)
	return tool.Pointer{
		At:       geom.FrameOf(face.Line).Point(along, 0),
		Reach:    unit.FromMillimetres(reach * d / u.medium.Scale),
		Shift:    mod&fyne.KeyModifierShift != 0,
		Control:  mod&fyne.KeyModifierShortcutDefault != 0,
		Alt:      mod&fyne.KeyModifierAlt != 0,
		OnUnfold: true, Side: face.Side.ID, Height: max(0, min(u.strip.Ceiling, high)),
		Symbol: u.boxAt(px, d),
	}, true
}

// boxAt returns the opening whose box or tag is drawn at a place.
func (u *Unfold) boxAt(at scene.Point, d float64) plan.ID {
	for i := range slices.Backward(u.pieces) {
		p := &u.pieces[i]
		if (p.Layer == render.LayerOpenings || p.Layer == render.LayerLabels) && p.ID.Kind() == plan.KindOpening &&
			p.Bounds.Expanded(3*d).Contains(at) {
			return p.ID
		}
	}
	return ""
}

func (u *Unfold) hover(at *fyne.Position) {
	u.pointer = at
	u.live.set(u.liveShapes(u.density()), u.density())
}

// MouseDown implements desktop.Mouseable.
func (u *Unfold) MouseDown(e *desktop.MouseEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(u); c != nil {
		c.Focus(u)
	}
	u.mouse.down(e)
}

// MouseUp implements desktop.Mouseable.
func (u *Unfold) MouseUp(e *desktop.MouseEvent) { u.mouse.up(e) }

// Dragged implements fyne.Draggable.
func (u *Unfold) Dragged(e *fyne.DragEvent) { u.mouse.dragged(e) }

// DragEnd implements fyne.Draggable.
func (u *Unfold) DragEnd() { u.mouse.dragEnd() }

// MouseIn implements desktop.Hoverable.
func (u *Unfold) MouseIn(e *desktop.MouseEvent) { u.mouse.moved(e.Position, modifiers()) }

// MouseMoved implements desktop.Hoverable.
func (u *Unfold) MouseMoved(e *desktop.MouseEvent) { u.mouse.moved(e.Position, modifiers()) }

// MouseOut implements desktop.Hoverable.
func (u *Unfold) MouseOut() { u.mouse.out() }

// Cursor implements desktop.Cursorable.
func (u *Unfold) Cursor() desktop.Cursor { return u.mouse.cursor(u.pic.Picture) }

// FocusGained implements fyne.Focusable.
func (u *Unfold) FocusGained() {}

// FocusLost implements fyne.Focusable.
func (u *Unfold) FocusLost() {}

// TypedKey implements fyne.Focusable.
func (u *Unfold) TypedKey(e *fyne.KeyEvent) { u.mouse.key(e.Name) }

// TypedRune implements fyne.Focusable.
func (u *Unfold) TypedRune(r rune) { u.listener.Key(tool.Key{Rune: r}) }

// CreateRenderer implements fyne.Widget.
func (u *Unfold) CreateRenderer() fyne.WidgetRenderer { return unfoldRenderer{u} }

type unfoldRenderer struct{ u *Unfold }

func (r unfoldRenderer) Destroy()                     {}
func (r unfoldRenderer) MinSize() fyne.Size           { return fyne.NewSize(120, 80) }
func (r unfoldRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.u.clip} }
func (r unfoldRenderer) Refresh()                     { r.u.update() }
func (r unfoldRenderer) Layout(size fyne.Size) {
	r.u.clip.Resize(size)
	r.u.live.Resize(size)
	r.u.update()
}
