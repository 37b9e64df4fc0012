package bind

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/render/scene"
)

// Fold is a heading that shows and hides what stands under it.
type Fold struct {
	widget.BaseWidget
	title string
	body  fyne.CanvasObject
	open  bool
	mark  *look.Picture
	box   *fyne.Container
	// Changed is told of each change; it may be nil.
	Changed func(open bool)
}

// NewFold makes a fold, closed.
func NewFold(c *Context, title string, body fyne.CanvasObject) *Fold {
	f := &Fold{title: title, body: body}
	f.mark = look.NewPicture(12, 12, f.arrow)
	heading := look.Row(look.Grid/2, 1, f.mark, look.NewFlexible(title, look.Quiet))
	body.Hide()
	press := c.Press(heading, look.Bare, 0, look.Grid/2, func() { f.SetOpen(!f.open) })
	f.box = look.Column(look.Grid/2, look.Sized(0, look.HitTarget, press), body)
	f.ExtendBaseWidget(f)
	return f
}

// SetOpen shows or hides the body.
func (f *Fold) SetOpen(open bool) {
	f.open = open
	if open {
		f.body.Show()
	} else {
		f.body.Hide()
	}
	f.mark.Refresh()
	f.box.Refresh()
	f.Refresh()
	if f.Changed != nil {
		f.Changed(open)
	}
}

// IsOpen reports whether the body is shown.
func (f *Fold) IsOpen() bool { return f.open }

func (f *Fold) arrow(w, h float64, p *look.Palette) []scene.Item {
	if f.open {
		return look.Chevron(w, h, p)
	}
	var path scene.Path
	path.MoveTo(scene.Point{X: .35 * w, Y: .2 * h}).LineTo(scene.Point{X: .65 * w, Y: .5 * h}).LineTo(scene.Point{X: .35 * w, Y: .8 * h})
	return []scene.Item{scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.4, Color: p.Muted, Cap: scene.RoundCap}}}
}

// CreateRenderer implements fyne.Widget.
func (f *Fold) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(f.box) }
