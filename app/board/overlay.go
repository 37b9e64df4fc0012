package board

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
)

// overlay shows live shapes as toolkit objects. It is a widget of its own, so that
// refreshing it leaves the kept bitmap alone.
type overlay struct {
	widget.BaseWidget
	objects []fyne.CanvasObject
	lines   pool[*canvas.Line]
	boxes   pool[*canvas.Rectangle]
	rings   pool[*canvas.Circle]
	texts   pool[*canvas.Text]
	images  pool[*picture]
}

// picture is a raster that shows the image it holds.
type picture struct {
	*canvas.Raster
	image *image.RGBA
}

// pool gives out objects again in every frame.
type pool[T any] struct {
	all  []T
	used int
}

func (p *pool[T]) next(fresh func() T) T {
	if p.used == len(p.all) {
		p.all = append(p.all, fresh())
	}
	p.used++
	return p.all[p.used-1]
}

func newOverlay() *overlay {
	o := &overlay{}
	o.ExtendBaseWidget(o)
	return o
}

// set shows shapes; density is pixels a unit.
func (o *overlay) set(shapes []shape, density float64) {
	if len(shapes) == 0 && len(o.objects) == 0 {
		return
	}
	o.objects = o.objects[:0]
	o.lines.used, o.boxes.used, o.rings.used, o.texts.used, o.images.used = 0, 0, 0, 0, 0
	for i := range shapes {
		o.objects = append(o.objects, o.object(&shapes[i], float32(density)))
	}
	canvas.Refresh(o)
}

func (o *overlay) object(s *shape, d float32) fyne.CanvasObject {
	a := fyne.NewPos(float32(s.a.X)/d, float32(s.a.Y)/d)
	b := fyne.NewPos(float32(s.b.X)/d, float32(s.b.Y)/d)
	switch s.kind {
	case lineShape:
		l := o.lines.next(func() *canvas.Line { return &canvas.Line{} })
		l.Position1, l.Position2, l.StrokeColor, l.StrokeWidth = a, b, s.color, float32(s.width)/d
		return l
	case boxShape:
		r := o.boxes.next(func() *canvas.Rectangle { return &canvas.Rectangle{} })
		r.FillColor, r.StrokeColor, r.StrokeWidth = s.fill, s.color, float32(s.width)/d
		r.Move(fyne.NewPos(min(a.X, b.X), min(a.Y, b.Y)))
		r.Resize(fyne.NewSize(abs(b.X-a.X), abs(b.Y-a.Y)))
		return r
	case ringShape:
		c := o.rings.next(func() *canvas.Circle { return &canvas.Circle{} })
		c.FillColor, c.StrokeColor, c.StrokeWidth = s.fill, s.color, float32(s.width)/d
		c.Position1, c.Position2 = a, b
		return c
	case textShape:
		t := o.texts.next(func() *canvas.Text { return &canvas.Text{} })
		t.Text, t.Color, t.TextSize, t.TextStyle.Bold = s.text, s.color, float32(s.size), s.bold
		t.Move(a)
		t.Resize(t.MinSize())
		return t
	}
	p := o.images.next(func() *picture {
		p := &picture{}
		p.Raster = canvas.NewRaster(func(int, int) image.Image { return p.image })
		return p
	})
	p.image = s.image
	p.Move(fyne.NewPos(round(float64(a.X*d))/d, round(float64(a.Y*d))/d))
	p.Resize(fyne.NewSize(float32(s.image.Rect.Dx())/d, float32(s.image.Rect.Dy())/d))
	return p.Raster
}

func abs(v float32) float32 { return max(v, -v) }

func round(v float64) float32 { return float32(math.Round(v)) }

// CreateRenderer implements fyne.Widget.
func (o *overlay) CreateRenderer() fyne.WidgetRenderer { return overlayRenderer{o} }

type overlayRenderer struct{ o *overlay }

func (r overlayRenderer) Destroy()                     {}
func (r overlayRenderer) Layout(fyne.Size)             {}
func (r overlayRenderer) MinSize() fyne.Size           { return fyne.Size{} }
func (r overlayRenderer) Objects() []fyne.CanvasObject { return r.o.objects }
func (r overlayRenderer) Refresh()                     {}
