package look

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// stack is a vertical layout with one gap and no padding of the toolkit's.
type stack struct{ gap float32 }

// Column stands objects under one another, each as wide as the column.
func Column(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: stack{gap}, Objects: objects}
}

func (s stack) MinSize(objects []fyne.CanvasObject) (size fyne.Size) {
	first := true
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		size.Width = max(size.Width, least.Width)
		size.Height += least.Height
		if !first {
			size.Height += Scaled(s.gap)
		}
		first = false
	}
	return size
}

func (s stack) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	y := float32(0)
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		height := o.MinSize().Height
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, height))
		y += height + Scaled(s.gap)
	}
}

// row is a horizontal layout. The object at stretch takes what is left.
type row struct {
	gap     float32
	stretch int
	top     bool
}

// Row stands objects beside one another at their least widths, in the middle of the
// height; the one at index stretch takes the width left over (−1: none).
func Row(gap float32, stretch int, objects ...fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: row{gap, stretch, false}, Objects: objects}
}

// TopRow is a Row whose objects stand at its top.
func TopRow(gap float32, stretch int, objects ...fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: row{gap, stretch, true}, Objects: objects}
}

func (r row) MinSize(objects []fyne.CanvasObject) (size fyne.Size) {
	n := 0
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		size.Width += least.Width
		size.Height = max(size.Height, least.Height)
		n++
	}
	size.Width += Scaled(r.gap) * float32(max(n-1, 0))
	return size
}

func (r row) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	spare := size.Width - r.MinSize(objects).Width
	x := float32(0)
	for i, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		width := least.Width
		if i == r.stretch {
			width = max(0, width+spare)
		}
		height := least.Height
		y := float32(math.Floor(float64(size.Height-height) / 2)) // text is sharp at whole places
		if r.top {
			y = 0
		}
		o.Move(fyne.NewPos(x, y))
		o.Resize(fyne.NewSize(width, height))
		x += width + Scaled(r.gap)
	}
}

// inset is a layout of one object with gaps round it.
type inset struct{ left, top, right, bottom float32 }

// Inset puts gaps round an object.
func Inset(left, top, right, bottom float32, object fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: inset{left, top, right, bottom}, Objects: []fyne.CanvasObject{object}}
}

func (n inset) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return objects[0].MinSize().Add(fyne.NewSize(Scaled(n.left+n.right), Scaled(n.top+n.bottom)))
}

func (n inset) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	objects[0].Move(fyne.NewPos(Scaled(n.left), Scaled(n.top)))
	objects[0].Resize(size.Subtract(fyne.NewSize(Scaled(n.left+n.right), Scaled(n.top+n.bottom))))
}

// atLeast gives one object a least height.
type atLeast struct{ height float32 }

// AtLeast gives an object a least height; it may be higher.
func AtLeast(height float32, object fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: atLeast{height}, Objects: []fyne.CanvasObject{object}}
}

func (l atLeast) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return objects[0].MinSize().Max(fyne.NewSize(0, Scaled(l.height)))
}

func (l atLeast) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	objects[0].Move(fyne.NewPos(0, 0))
	objects[0].Resize(size)
}

// fixed gives one object a least size.
type fixed struct{ width, height float32 }

// Sized gives an object a least size; 0 leaves its own.
func Sized(width, height float32, object fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: fixed{width, height}, Objects: []fyne.CanvasObject{object}}
}

func (f fixed) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := objects[0].MinSize()
	if f.width > 0 {
		least.Width = Scaled(f.width)
	}
	if f.height > 0 {
		least.Height = Scaled(f.height)
	}
	return least
}

func (f fixed) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	objects[0].Move(fyne.NewPos(0, 0))
	objects[0].Resize(size)
}

// Gap is an empty place of a size.
func Gap(width, height float32) fyne.CanvasObject {
	return Sized(width, height, layout.NewSpacer())
}

// Ground names a colour that things stand on.
type Ground int

// The grounds.
const (
	OnSurface Ground = iota
	OnPaper
	OnTint
	OnLine
)

// Backed is an object on a ground that follows the theme.
type Backed struct {
	widget.BaseWidget
	object fyne.CanvasObject
	ground Ground
	radius float32
}

// Back puts an object on a ground, with rounded corners where radius is over 0.
func Back(ground Ground, radius float32, object fyne.CanvasObject) *Backed {
	b := &Backed{object: object, ground: ground, radius: radius}
	b.ExtendBaseWidget(b)
	return b
}

// HairLine is a line one unit thick, across or down as it is laid out.
func HairLine() fyne.CanvasObject { return Back(OnLine, 0, Gap(1, 1)) }

// CreateRenderer implements fyne.Widget.
func (b *Backed) CreateRenderer() fyne.WidgetRenderer {
	r := &backedRenderer{of: b, back: canvas.NewRectangle(color.Transparent)}
	r.Refresh()
	return r
}

type backedRenderer struct {
	of   *Backed
	back *canvas.Rectangle
}

func (r *backedRenderer) MinSize() fyne.Size { return r.of.object.MinSize() }
func (r *backedRenderer) Layout(size fyne.Size) {
	r.back.Resize(size)
	r.of.object.Resize(size)
}
func (r *backedRenderer) Refresh() {
	p := Current()
	r.back.FillColor = [...]color.Color{p.Surface, p.Paper, p.Tint, p.Line}[r.of.ground]
	r.back.CornerRadius = Scaled(r.of.radius)
	r.back.Refresh()
	r.of.object.Refresh()
}
func (r *backedRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.back, r.of.object}
}
func (r *backedRenderer) Destroy() {}
