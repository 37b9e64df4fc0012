package look

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// Drawing returns what to show on a space of so many units, in the palette's colours.
type Drawing func(width, height float64, p *Palette) []scene.Item

// Picture shows scene items at a settled size: marks, icons, symbols and gauges are
// all shapes, never letters of a font.
type Picture struct {
	widget.BaseWidget
	least fyne.Size
	draw  Drawing
}

// NewPicture makes a picture that asks for a size.
func NewPicture(width, height float32, draw Drawing) *Picture {
	p := &Picture{least: fyne.NewSize(width, height), draw: draw}
	p.ExtendBaseWidget(p)
	return p
}

// SetDrawing changes what is shown.
func (p *Picture) SetDrawing(draw Drawing) {
	p.draw = draw
	p.Refresh()
}

// Items returns what the picture draws now, for tests.
func (p *Picture) Items() []scene.Item {
	size := p.Size()
	return p.draw(float64(size.Width), float64(size.Height), Current())
}

// CreateRenderer implements fyne.Widget.
func (p *Picture) CreateRenderer() fyne.WidgetRenderer {
	r := &pictureRenderer{of: p}
	r.raster = canvas.NewRaster(r.paint)
	return r
}

type pictureRenderer struct {
	of     *Picture
	raster *canvas.Raster
}

// paint draws at the pixels the toolkit asks for.
func (r *pictureRenderer) paint(w, h int) image.Image {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	size := r.of.Size()
	if w == 0 || h == 0 || size.Width <= 0 || r.of.draw == nil {
		return img
	}
	items := r.of.draw(float64(size.Width), float64(size.Height), Current())
	raster.Items(img, float64(w)/float64(size.Width), scene.Point{}, items...)
	return img
}

func (r *pictureRenderer) MinSize() fyne.Size {
	return fyne.NewSize(Scaled(r.of.least.Width), Scaled(r.of.least.Height))
}
func (r *pictureRenderer) Layout(size fyne.Size)        { r.raster.Resize(size) }
func (r *pictureRenderer) Refresh()                     { r.raster.Refresh() }
func (r *pictureRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.raster} }
func (r *pictureRenderer) Destroy()                     {}
