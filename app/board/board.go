package board

import (
	"image"
	"math"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/render/scene"
)

var _ fyne.Widget = (*Board)(nil)

// Board shows one level of a plan. Make one with New.
type Board struct {
	widget.BaseWidget
	listener Listener
	pic      Picture
	view     View
	mouse    mouse
	easel    easel
	parts    *parts
	symbols  map[ghostKey]ghostImage
	toFit    bool    // Fit was asked before there was room or a plan
	made     float64 // the density the view is made for
}

// New returns an empty board.
func New(listener Listener) *Board {
	b := &Board{listener: listener, view: View{Zoom: zoomOf(1.0/48, 1), At: image.Pt(emptyCorner, emptyCorner)}, symbols: map[ghostKey]ghostImage{}}
	b.made = 1
	b.mouse = mouse{listener: listener, pointer: b.pointer, pan: b.pan, hover: b.pointAt, now: time.Now}
	b.mouse.idle = func() bool { return b.pic.Preview.IsBare() }
	b.mouse.limiter = limiter{apart: hoverEvery, now: time.Now, after: afterOn(fyne.Do)}
	b.easel.later = fyne.Do
	b.easel.done, b.easel.settle = b.adopt, b.ask
	b.easel.wanted = func(r request) bool {
		now := b.request()
		return r.zoom == now.zoom && r.density == now.density && r.pic.Level == now.pic.Level && r.pic.Theme == now.pic.Theme
	}
	b.parts = newParts()
	b.ExtendBaseWidget(b)
	return b
}

// PaintInPlace makes the board paint and tell of moves before its methods return, in the
// goroutine of the window: for tests, which have one alone.
func (b *Board) PaintInPlace() { b.easel.inPlace, b.mouse.limiter.apart = true, 0 }

// SetPicture shows a picture. It is not named Show, which the toolkit calls on any object.
func (b *Board) SetPicture(p Picture) {
	b.pic = p
	b.parts.colour(p.Theme)
	if b.toFit {
		b.Fit()
	}
	b.update()
}

// Picture returns what is shown.
func (b *Board) Picture() Picture { return b.pic }

// Scale returns the length on screen over that of building, taking 96 units of the
// window for an inch: 1/48 is 1/4 in to the foot.
func (b *Board) Scale() float64 { return scaleOf(b.view.Zoom, b.density()) }

// ScaleText says the scale in words.
func (b *Board) ScaleText() string { return scaleText(b.Scale(), b.pic.Voice) }

// zoomStep is what one press of a key or button zooms by.
const zoomStep = 1.25

// ZoomIn shows less of the plan, larger.
func (b *Board) ZoomIn() { b.zoomAtMiddle(b.view.Zoom * zoomStep) }

// ZoomOut shows more of the plan, smaller.
func (b *Board) ZoomOut() { b.zoomAtMiddle(b.view.Zoom / zoomStep) }

// ZoomTo shows the plan at a scale as Scale gives it, within limits.
func (b *Board) ZoomTo(scale float64) { b.zoomAtMiddle(zoomOf(scale, b.density())) }

func (b *Board) zoomAtMiddle(zoom float64) {
	on := b.screen()
	b.setView(b.view.Zoomed(zoom, b.density(), float64(on.Min.X+on.Max.X)/2, float64(on.Min.Y+on.Max.Y)/2))
}

// Fit shows the whole level; an empty one at the usual scale. Before there is room for
// it, it waits until there is.
func (b *Board) Fit() {
	on := b.screen()
	b.toFit = b.pic.Index == nil || on.Dx() < 2*TapeWidth || on.Dy() < 2*TapeWidth
	if b.toFit {
		return
	}
	box, ok := frame.Extent(b.pic.Index, b.pic.Level)
	if !ok && b.pic.Ghost != "" {
		box, ok = frame.Extent(b.pic.Index, b.pic.Ghost)
	}
	if ok {
		b.setView(Fitted(box, on, zoomOf(1.0/12, b.density()), b.density()))
		return
	}
	d := b.density()
	b.setView(View{Zoom: zoomOf(usual[b.pic.Voice.System].ratio, d), At: image.Pt(int(emptyCorner*d), int(emptyCorner*d))})
}

// emptyCorner is how far the origin of an empty plan stands from the board's corner, in
// units.
const emptyCorner = 60

// Reveal brings a box of the plan wholly into view and moves no farther than that takes:
// not at all where it is in view. The zoom changes only where the box would not fit.
func (b *Board) Reveal(box geom.Box) {
	b.setView(b.view.Revealed(box, b.screen(), b.density()))
}

// Hold keeps the plan where it is on the screen while the board's left upper corner
// moves by so many units, as where a drawer opens beside it.
func (b *Board) Hold(dx, dy float32) {
	b.setView(b.view.Panned(image.Point{}.Sub(b.pixel(fyne.NewPos(dx, dy)))))
}

// Place returns where a point of the plan is shown, in units from the left upper corner.
func (b *Board) Place(p geom.Point) fyne.Position {
	x, y := b.view.Screen(p)
	d := b.density()
	return fyne.NewPos(float32(x/d), float32(y/d))
}

func (b *Board) setView(v View) {
	if v == b.view {
		return
	}
	b.view = v
	b.listener.ViewChanged(b.ScaleText())
	b.update()
}

// density is device pixels per unit of the window.
func (b *Board) density() float64 {
	if c := fyne.CurrentApp().Driver().CanvasForObject(b); c != nil {
		return float64(c.Scale())
	}
	return 1
}

// screen returns the part of the board that shows the plan, in pixels: all but the
// tapes.
func (b *Board) screen() image.Rectangle {
	d, size := b.density(), b.Size()
	tape := int(TapeWidth * d)
	return image.Rect(tape, tape, int(float64(size.Width)*d), int(float64(size.Height)*d))
}

// request says what is to be painted now: what the board shows and a margin.
func (b *Board) request() request {
	d := b.density()
	on := b.screen()
	on.Min = image.Point{}
	return request{pic: b.pic, zoom: b.view.Zoom, density: d, frame: on.Inset(-int(margin * d)).Sub(b.view.At), wires: wiresOf(b.pic)}
}

func rectOf(r image.Rectangle) scene.Rect {
	return scene.Rect{Min: scene.Point{X: float64(r.Min.X), Y: float64(r.Min.Y)}, Max: scene.Point{X: float64(r.Max.X), Y: float64(r.Max.Y)}}
}

// edgeNear is how near the edge of the bitmap may come before it is painted anew about
// the place, in units.
const edgeNear = 64

// update brings all that is seen up to the picture and the view.
func (b *Board) update() {
	b.follow(b.density())
	b.ask()
	b.place()
	b.refreshLive()
}

// follow keeps the scale where the window has come to a screen of another density.
func (b *Board) follow(density float64) {
	k := density / b.made
	if k == 1 {
		return
	}
	b.made = density
	b.view.Zoom *= k
	b.view.At = image.Pt(int(math.Round(float64(b.view.At.X)*k)), int(math.Round(float64(b.view.At.Y)*k)))
}

// ask has painted what is not painted yet.
func (b *Board) ask() {
	if b.Size().Width < 1 || b.Size().Height < 1 {
		return
	}
	want := b.request()
	if shown := b.easel.shown; shown == nil || !shown.sameLooks(want) {
		if shown != nil && shown.zoom == want.zoom && b.holds(shown) {
			want.frame = shown.frame // the same place: only what differs is painted
		}
		b.easel.ask(want)
	} else if !b.holds(shown) {
		b.easel.ask(want)
	}
}

// holds reports whether what is painted reaches well beyond the board.
func (b *Board) holds(p *painted) bool {
	on := b.screen()
	on.Min = image.Point{}
	return on.Inset(-int(edgeNear * b.density())).Sub(b.view.At).In(p.frame)
}

// adopt puts what was painted on the screen.
func (b *Board) adopt() {
	b.parts.show(b.easel.shown)
	b.place()
	b.refreshLive()
}

// place moves the bitmap to where the view wants it, stretched while it is of another
// zoom.
func (b *Board) place() {
	if shown := b.easel.shown; shown != nil {
		b.parts.place(shown, b.view, float32(b.density()))
	}
}

// refreshLive shows what is live above the picture.
func (b *Board) refreshLive() {
	d := b.density()
	s := scribe{pic: b.pic, view: b.view, density: d, shown: b.easel.shown, symbols: b.symbols, screen: rectOf(b.screen())}
	if shown := b.easel.shown; shown != nil && shown.zoom == b.view.Zoom {
		s.pieces = shown.pieces
		s.shift = scene.Point{X: float64(shown.frame.Min.X + b.view.At.X), Y: float64(shown.frame.Min.Y + b.view.At.Y)}
	}
	if at := b.parts.pointer; at != nil {
		s.pointer = &scene.Point{X: float64(at.X) * d, Y: float64(at.Y) * d}
		s.bundle = b.bundleAt(b.pixel(*at))
	}
	b.parts.live.set(s.draw(), d)
}

// pointAt marks on the tapes where the pointer is; nil: elsewhere.
func (b *Board) pointAt(at *fyne.Position) {
	b.parts.pointer = at
	b.parts.placeMarks()
	b.refreshLive()
}

// lineAt returns the control or cable whose line is drawn at a pixel.
func (b *Board) lineAt(px image.Point) plan.ID {
	shown := b.easel.shown
	if shown == nil || shown.zoom != b.view.Zoom {
		return ""
	}
	at := px.Sub(b.view.At).Sub(shown.frame.Min)
	return shown.lineAt(scene.Point{X: float64(at.X), Y: float64(at.Y)}, reach*b.density()/2)
}

// bundleAt returns the openings of a bundle whose mark is drawn at a pixel.
func (b *Board) bundleAt(px image.Point) []plan.ID {
	shown := b.easel.shown
	if shown == nil || shown.zoom != b.view.Zoom {
		return nil
	}
	at := px.Sub(b.view.At).Sub(shown.frame.Min)
	return shown.bundleAt(scene.Point{X: float64(at.X), Y: float64(at.Y)}, reach*b.density()/2)
}

// symbolAt returns the opening whose symbol or tag is drawn at a pixel.
func (b *Board) symbolAt(px image.Point) plan.ID {
	shown := b.easel.shown
	if shown == nil || shown.zoom != b.view.Zoom {
		return ""
	}
	at := px.Sub(b.view.At).Sub(shown.frame.Min)
	return shown.symbolAt(scene.Point{X: float64(at.X), Y: float64(at.Y)}, reach*b.density()/2)
}

// DrawnIn lists the openings whose bodies are drawn with their middle in a box of the plan.
func (b *Board) DrawnIn(box geom.Box) (ids []plan.ID) {
	shown := b.easel.shown
	if shown == nil || shown.zoom != b.view.Zoom {
		return nil
	}
	off := shown.frame.Min.Add(b.view.At)
	shown.bodies(func(id plan.ID, middle scene.Point) {
		if box.Contains(b.view.Plan(middle.X+float64(off.X), middle.Y+float64(off.Y))) {
			ids = append(ids, id)
		}
	})
	return ids
}

func (b *Board) setFocused(is bool) {
	b.parts.focused = is
	b.parts.colour(b.pic.Theme)
}

// CreateRenderer implements fyne.Widget.
func (b *Board) CreateRenderer() fyne.WidgetRenderer { return &boardRenderer{b} }

type boardRenderer struct{ b *Board }

func (r *boardRenderer) Destroy()                     {}
func (r *boardRenderer) MinSize() fyne.Size           { return fyne.NewSize(120, 120) }
func (r *boardRenderer) Objects() []fyne.CanvasObject { return r.b.parts.objects() }
func (r *boardRenderer) Refresh()                     { r.b.update() }
func (r *boardRenderer) Layout(size fyne.Size) {
	r.b.parts.layout(size)
	if r.b.toFit {
		r.b.Fit()
	}
	r.b.update()
}
