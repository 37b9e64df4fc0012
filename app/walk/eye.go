package walk

import (
	"image"
	"runtime"
	"sync"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/glyph"
	"studbay/render/paint/raster"
	"studbay/render/scene"
	"studbay/render/view"
)

// eye shows the view into a room; it is turned by dragging, and a press on an opening
// speaks of it.
type eye struct {
	widget.BaseWidget
	raster *canvas.Raster
	model  *view.Model
	room   plan.ID
	isDark bool
	camera view.Camera
	marks  []view.Mark
	title  string // over the picture: the room
	chosen plan.ID
	lit    map[plan.ID]bool
	speak  func(plan.ID)
	grip
}

var (
	_ fyne.Draggable  = (*eye)(nil)
	_ fyne.Tappable   = (*eye)(nil)
	_ fyne.Scrollable = (*eye)(nil)
)

func newEye(speak func(plan.ID)) *eye {
	e := &eye{speak: speak}
	e.raster = canvas.NewRaster(e.paint)
	e.ExtendBaseWidget(e)
	return e
}

// show shows a room with the opening spoken of and what is lit. While anything is lit the
// room is dark.
func (e *eye) show(ix *index.Index, room plan.ID, chosen plan.ID, lit map[plan.ID]bool) {
	theme := *look.Current()
	if len(lit) > 0 {
		theme = render.Dark
	}
	isNew := e.room != room || e.model == nil
	if m, ok := view.New(ix, room, view.Style{Theme: theme, Pixel: 1.25}); ok {
		e.model, e.isDark = m, theme.IsDark
	}
	if isNew || e.camera.Width == 0 {
		e.room = room
		e.begin()
	}
	if e.chosen != chosen || isNew {
		e.chosen = chosen
		e.turnTo(chosen)
	}
	e.lit = lit
	e.Refresh()
}

// begin looks as one does who comes in.
func (e *eye) begin() {
	if e.model != nil && e.Size().Width > 0 {
		e.camera = e.model.Start(float64(e.Size().Width), float64(e.Size().Height))
	}
}

// turnTo turns the gaze where an opening is out of sight.
func (e *eye) turnTo(id plan.ID) {
	if e.model != nil && e.camera.Width > 0 && !e.model.Sees(e.camera, id) {
		e.camera = e.model.Toward(e.camera, id)
	}
}

// turn turns the gaze by degrees.
func (e *eye) turn(degrees float64) {
	e.camera = e.camera.Turned(degrees)
	e.Refresh()
}

// widen shows more of the room, or less.
func (e *eye) widen(degrees float64) {
	e.camera = e.camera.Widened(degrees)
	e.Refresh()
}

// home looks as at the start.
func (e *eye) home() {
	e.begin()
	e.Refresh()
}

// Scrolled implements fyne.Scrollable.
func (e *eye) Scrolled(s *fyne.ScrollEvent) { e.widen(-float64(s.Scrolled.DY) / 8) }

// reach is how far from the middle of a mark it can be pressed, in units.
const reach = 28

// Tapped implements fyne.Tappable: the nearest mark in reach is spoken of.
func (e *eye) Tapped(p *fyne.PointEvent) {
	if at := e.markAt(p.Position); at != "" {
		e.speak(at)
	}
}

// Resize implements fyne.CanvasObject.
func (e *eye) Resize(size fyne.Size) {
	e.BaseWidget.Resize(size)
	if e.model == nil {
		return
	}
	if e.camera.Width == 0 {
		e.begin()
	}
	// What is spoken of stays in sight, however low the picture becomes.
	e.camera.Width, e.camera.Height = float64(size.Width), float64(size.Height)
	e.turnTo(e.chosen)
}

// items is what is seen now, with the marks on it.
func (e *eye) items() []scene.Item {
	if e.model == nil || e.camera.Width == 0 {
		return nil
	}
	p := e.model.Draw(e.camera)
	e.marks = p.Marks
	items := p.Items
	for _, m := range p.Marks {
		if e.lit[m.ID] {
			items = append(items, glow(m)...)
		}
	}
	c := look.Current()
	if e.isDark {
		c = &render.Dark
	}
	for _, m := range p.Marks {
		items = append(items, ring(m, m.ID == e.chosen, c)...)
	}
	items = append(items, e.arrows(c)...)
	size := float64(look.Scaled(sizeRoom))
	return append(items, scene.Run{At: scene.Point{X: 0.8 * size, Y: 1.4 * size}, Text: e.title, Size: size, Weight: glyph.Bold, Color: c.Ink})
}

// glow is the light about a lamp that is lit: a few rings that fade.
func glow(m view.Mark) (items []scene.Item) {
	warm := scene.Color{R: 0xff, G: 0xdf, B: 0x9e}
	for i, round := range []float64{48, 34, 22, 13, 7} { // inches
		warm.A = uint8(14 + 9*i)
		items = append(items, scene.Fill{Path: scene.Circle(m.At, round*25.4*m.Mil), Color: warm})
	}
	warm.A = 0xff
	return append(items, scene.Fill{Path: scene.Circle(m.At, 2.4*25.4*m.Mil), Color: warm})
}

// ring marks an opening in the sizes of the screen, so that it reads from afar; one that
// something stands before has a broken ring.
func ring(m view.Mark, isChosen bool, c *look.Palette) []scene.Item {
	shade, line := c.Accent, c.Accent
	if isChosen {
		shade.A = 0x33
		pen := scene.Pen{Width: 4, Color: line}
		if m.IsHidden {
			pen.Dash = []float64{9, 7}
		}
		return []scene.Item{
			scene.Stroke{Path: scene.Circle(m.At, 39.5), Pen: scene.Pen{Width: 9, Color: shade}},
			scene.Stroke{Path: scene.Circle(m.At, 35), Pen: pen},
		}
	}
	if m.IsHidden {
		return nil
	}
	shade.A, line.A = 0x17, 0x8c
	return []scene.Item{
		scene.Fill{Path: scene.Circle(m.At, 22), Color: shade},
		scene.Stroke{Path: scene.Circle(m.At, 22), Pen: scene.Pen{Width: 1.75, Color: line}},
	}
}

func (e *eye) paint(w, h int) image.Image {
	img := image.NewRGBA(image.Rect(0, 0, max(1, w), max(1, h)))
	if e.Size().Width == 0 {
		return img
	}
	d := raster.New(float64(w)/float64(e.Size().Width), scene.Point{})
	scene.Paint(d, e.items()...)
	var bands sync.WaitGroup
	for _, band := range bandsOf(img) {
		bands.Go(func() { d.Draw(band.img, image.Pt(0, band.from), nil) })
	}
	bands.Wait()
	return img
}

// band is a part of a picture from a row on, as a picture of its own.
type band struct {
	img  *image.RGBA
	from int
}

// bandsOf divides a picture into as many bands as can be painted at once, from the top.
func bandsOf(img *image.RGBA) (all []band) {
	wide, high, n := img.Rect.Dx(), img.Rect.Dy(), min(runtime.GOMAXPROCS(0), img.Rect.Dy())
	for i := range n {
		from, to := high*i/n, high*(i+1)/n
		all = append(all, band{&image.RGBA{Pix: img.Pix[from*img.Stride : to*img.Stride], Stride: img.Stride, Rect: image.Rect(0, 0, wide, to-from)}, from})
	}
	return all
}

// CreateRenderer implements fyne.Widget.
func (e *eye) CreateRenderer() fyne.WidgetRenderer { return &eyeRenderer{e} }

type eyeRenderer struct{ eye *eye }

func (r *eyeRenderer) MinSize() fyne.Size           { return fyne.NewSize(200, 150) }
func (r *eyeRenderer) Layout(size fyne.Size)        { r.eye.raster.Resize(size) }
func (r *eyeRenderer) Refresh()                     { r.eye.raster.Refresh() }
func (r *eyeRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.eye.raster} }
func (r *eyeRenderer) Destroy()                     {}
