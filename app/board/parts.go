package board

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"studbay/render"
)

// parts are the toolkit objects a board consists of: the bitmap, live things above
// it, and the tapes above these.
type parts struct {
	back    *canvas.Rectangle // seen only beyond a bitmap that is stretched
	picture *picture
	live    *overlay
	clip    *container.Clip // holds the two above
	tapes   [2]*picture
	strips  [2]*container.Clip
	marks   [2]*picture
	corner  *canvas.Rectangle
	theme   render.Theme
	focused bool
	shown   tint
	pointer *fyne.Position
}

// tint is what the colours of the parts follow.
type tint struct {
	isSet   bool
	theme   render.Theme
	focused bool
}

func newPicture() *picture {
	p := &picture{}
	p.Raster = canvas.NewRaster(func(int, int) image.Image {
		if p.image == nil {
			return image.NewRGBA(image.Rect(0, 0, 1, 1))
		}
		return p.image
	})
	return p
}

func newParts() *parts {
	p := &parts{
		back: canvas.NewRectangle(nil), picture: newPicture(), live: newOverlay(), corner: canvas.NewRectangle(nil),
	}
	p.picture.Hide()
	p.clip = container.NewClip(container.NewWithoutLayout(p.back, p.picture.Raster, p.live))
	for i := range p.tapes {
		p.tapes[i], p.marks[i] = newPicture(), newPicture()
		p.tapes[i].Hide()
		p.marks[i].Hide()
		p.strips[i] = container.NewClip(container.NewWithoutLayout(p.tapes[i].Raster, p.marks[i].Raster))
	}
	return p
}

func (p *parts) objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{p.clip, p.strips[0], p.strips[1], p.corner}
}

// colour follows the theme and the focus.
func (p *parts) colour(t render.Theme) {
	want := tint{isSet: true, theme: t, focused: p.focused}
	if p.shown == want {
		return // a refresh has the window painted
	}
	p.theme, p.shown = t, want
	p.back.FillColor = t.Paper
	p.back.Refresh()
	p.corner.FillColor, p.corner.StrokeColor, p.corner.StrokeWidth = t.Paper, t.Line, 1
	if p.focused {
		p.corner.FillColor = t.Tint
	}
	p.corner.Refresh()
}

func (p *parts) layout(size fyne.Size) {
	p.clip.Resize(size)
	p.back.Resize(size)
	p.live.Resize(size)
	p.strips[0].Resize(fyne.NewSize(size.Width, TapeWidth))
	p.strips[1].Resize(fyne.NewSize(TapeWidth, size.Height))
	p.corner.Resize(fyne.NewSize(TapeWidth, TapeWidth))
}

// show takes new pixels.
func (p *parts) show(s *painted) {
	p.picture.set(s.image)
	for i := range p.tapes {
		if p.tapes[i].image != s.tapes[i] {
			p.tapes[i].set(s.tapes[i])
			p.marks[i].set(pointerMark(s.pic.Theme, s.density, i))
			p.marks[i].Resize(fyne.NewSize(7, 7))
		}
	}
	p.placeMarks()
}

func (p *picture) set(im *image.RGBA) {
	p.image = im
	p.Show()
	p.Refresh()
}

// place moves the bitmap and the tapes to where the view wants them.
func (p *parts) place(s *painted, v View, d float32) {
	k := float32(v.Zoom / s.zoom)
	if v.Zoom == s.zoom {
		k = 1
	}
	x := (float32(s.frame.Min.X)*k + float32(v.At.X)) / d
	y := (float32(s.frame.Min.Y)*k + float32(v.At.Y)) / d
	w, h := float32(s.frame.Dx())*k/d, float32(s.frame.Dy())*k/d
	p.picture.Move(fyne.NewPos(x, y))
	p.picture.Resize(fyne.NewSize(w, h))
	p.tapes[0].Move(fyne.NewPos(x, 0))
	p.tapes[0].Resize(fyne.NewSize(w, TapeWidth))
	p.tapes[1].Move(fyne.NewPos(0, y))
	p.tapes[1].Resize(fyne.NewSize(TapeWidth, h))
	covered := x <= 0 && y <= 0 && x+w >= p.back.Size().Width && y+h >= p.back.Size().Height
	if covered == p.back.Visible() {
		p.back.Hidden = covered
		p.back.Refresh()
	}
}

// placeMarks moves the marks of the pointer on the tapes.
func (p *parts) placeMarks() {
	for i, m := range p.marks {
		if p.pointer == nil {
			m.Hide()
			continue
		}
		if i == 0 {
			m.Move(fyne.NewPos(p.pointer.X-3.5, TapeWidth-7))
		} else {
			m.Move(fyne.NewPos(TapeWidth-7, p.pointer.Y-3.5))
		}
		m.Show()
	}
}
