package dialog

import (
	"image"
	"image/color"
	"image/draw"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"studbay/app/look"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// The largest picture of a page in the preview, in units; and what the window must
// leave beside and above it.
const (
	previewWidth  = 540
	previewHeight = 384
	besidePreview = choicesWidth + 120
	abovePreview  = 220
)

// preview shows pages one at a time, drawn beside the window.
type preview struct {
	stage  *Stage
	most   fyne.Size // of the picture
	pages  []*scene.Scene
	at     int
	job    int // counts drawings: an old one that comes late is dropped
	image  *image.RGBA
	raster *canvas.Raster
	paper  *fyne.Container
	count  *look.Text
	turns  [2]*look.Press // back and on
	object fyne.CanvasObject
}

func newPreview(s *Stage) *preview {
	v := &preview{stage: s, count: look.NewText("", look.Second)}
	window := s.canvas().Size()
	v.most = fyne.NewSize(
		max(look.Scaled(160), min(look.Scaled(previewWidth), window.Width-look.Scaled(besidePreview))),
		max(look.Scaled(120), min(look.Scaled(previewHeight), window.Height-look.Scaled(abovePreview))))
	v.raster = canvas.NewRaster(func(int, int) image.Image {
		if v.image == nil {
			return image.NewRGBA(image.Rect(0, 0, 1, 1))
		}
		return v.image
	})
	v.raster.ScaleMode = canvas.ImageScaleSmooth
	v.paper = &fyne.Container{Layout: inTheMiddle{v}, Objects: []fyne.CanvasObject{v.raster}}
	turn := func(label string, by int) *look.Press {
		return look.NewPress(look.NewText(label, look.Style{Bold: true, Tone: look.Accent}), look.Bare, 2*look.Grid, look.Grid, func() { v.turnTo(v.at + by) })
	}
	v.turns = [2]*look.Press{turn("‹", -1), turn("›", 1)}
	row := look.Row(look.Grid, -1, v.turns[0], v.count, v.turns[1])
	ground := look.Back(look.OnPaper, look.Radius, v.paper)
	v.object = look.Column(look.Grid/2, ground, look.Centred(row))
	v.tell()
	return v
}

// show shows the first of other pages, or none.
func (v *preview) show(pages []*scene.Scene) {
	v.pages, v.at = pages, 0
	v.draw()
}

// turnTo shows a page, from 0.
func (v *preview) turnTo(i int) {
	if i >= 0 && i < len(v.pages) && i != v.at {
		v.at = i
		v.draw()
	}
}

// tell says which page is shown.
func (v *preview) tell() {
	text := ""
	if len(v.pages) > 0 {
		text = v.stage.say("preview.page", "{0} of {1}: {2}", v.at+1, len(v.pages), v.pages[v.at].Meta.Title)
	}
	v.count.SetWords(text)
	v.turns[0].SetDisabled(v.at == 0)
	v.turns[1].SetDisabled(v.at+1 >= len(v.pages))
	if v.object != nil {
		v.object.Refresh()
	}
}

// size is how large the page shown is in the preview, in units.
func (v *preview) size() fyne.Size {
	most := v.most
	if len(v.pages) == 0 {
		return fyne.NewSize(0, 0)
	}
	p := v.pages[v.at]
	share := min(most.Width/float32(p.Width), most.Height/float32(p.Height))
	return fyne.NewSize(share*float32(p.Width), share*float32(p.Height))
}

// draw draws the page beside the window at the pixels it will have.
func (v *preview) draw() {
	v.job++
	v.tell()
	if len(v.pages) == 0 {
		v.image = nil
		v.paper.Refresh()
		return
	}
	job, page := v.job, v.pages[v.at]
	scale := v.stage.canvas().Scale()
	width := int(v.size().Width*scale + .5)
	go func() {
		img := drawPage(page, width)
		v.stage.post(func() {
			if job == v.job {
				v.image = img
				v.paper.Layout.Layout(v.paper.Objects, v.paper.Size())
				v.raster.Refresh()
			}
		})
	}()
}

// drawPage draws a page so many pixels wide. A scene's unit is a millimetre.
func drawPage(page *scene.Scene, width int) *image.RGBA {
	perMM := float64(width) / page.Width.Millimetres()
	img := image.NewRGBA(image.Rect(0, 0, width, max(1, int(page.Height.Millimetres()*perMM+.5))))
	draw.Draw(img, img.Bounds(), image.NewUniform(color.NRGBA(page.Background())), image.Point{}, draw.Src)
	raster.Items(img, perMM, scene.Point{}, page.Items...)
	return img
}

// inTheMiddle lays the picture of the page out in the middle of its ground.
type inTheMiddle struct{ of *preview }

func (m inTheMiddle) MinSize([]fyne.CanvasObject) fyne.Size {
	edge := look.Scaled(2 * look.Grid)
	return m.of.most.AddWidthHeight(edge, edge)
}

func (m inTheMiddle) Layout(o []fyne.CanvasObject, size fyne.Size) {
	page := m.of.size()
	o[0].Resize(page)
	o[0].Move(fyne.NewPos((size.Width-page.Width)/2, (size.Height-page.Height)/2))
}
