package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"studbay/render/scene"
)

// menuRow is one line of a menu.
type menuRow struct {
	widget.BaseWidget
	of   *menuPanel
	at   int
	item MenuItem
	row  *fyne.Container
}

const menuRowHeight = 28

func newMenuRow(p *menuPanel, at int, item MenuItem) *menuRow {
	r := &menuRow{of: p, at: at, item: item}
	label, second := Body, Second
	if item.Disabled {
		label.Tone = Muted
	}
	mark := NewPicture(14, 14, func(w, h float64, c *Palette) []scene.Item {
		if !item.Checked {
			return nil
		}
		var path scene.Path
		path.MoveTo(scene.Point{X: .15 * w, Y: .55 * h}).LineTo(scene.Point{X: .4 * w, Y: .8 * h}).LineTo(scene.Point{X: .85 * w, Y: .25 * h})
		return []scene.Item{scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.8, Color: c.Accent, Cap: scene.RoundCap}}}
	})
	end := NewText(item.Keys, second)
	objects := []fyne.CanvasObject{mark, NewText(item.Label, label), Gap(2*Grid, 1), end}
	if len(item.Sub) > 0 {
		objects[3] = NewPicture(12, 12, func(w, h float64, c *Palette) []scene.Item {
			var path scene.Path
			path.MoveTo(scene.Point{X: .35 * w, Y: .2 * h}).LineTo(scene.Point{X: .65 * w, Y: .5 * h}).LineTo(scene.Point{X: .35 * w, Y: .8 * h})
			return []scene.Item{scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.4, Color: c.Muted, Cap: scene.RoundCap}}}
		})
	}
	r.row = Inset(Grid, 0, Grid, 0, Row(Grid, 2, objects...))
	r.ExtendBaseWidget(r)
	return r
}

// above is how much of the row is the line over it.
func (r *menuRow) above() float32 {
	if r.item.Line && r.at > 0 {
		return Scaled(Grid + 1)
	}
	return 0
}

// Tapped implements fyne.Tappable.
func (r *menuRow) Tapped(*fyne.PointEvent) { r.of.take(r.at) }

// MouseIn implements desktop.Hoverable.
func (r *menuRow) MouseIn(*desktop.MouseEvent) {
	if r.item.Disabled {
		return
	}
	if r.of.of.panels[len(r.of.of.panels)-1] != r.of {
		r.of.of.closeAbove(r.of)
	}
	r.of.point(r.at)
}

// MouseMoved implements desktop.Hoverable.
func (r *menuRow) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (r *menuRow) MouseOut() {}

// CreateRenderer implements fyne.Widget.
func (r *menuRow) CreateRenderer() fyne.WidgetRenderer {
	w := &menuRowRenderer{of: r, back: canvas.NewRectangle(color.Transparent), line: canvas.NewRectangle(color.Transparent)}
	w.Refresh()
	return w
}

type menuRowRenderer struct {
	of         *menuRow
	back, line *canvas.Rectangle
}

func (w *menuRowRenderer) MinSize() fyne.Size {
	return fyne.NewSize(w.of.row.MinSize().Width, Scaled(menuRowHeight)+w.of.above())
}

func (w *menuRowRenderer) Layout(size fyne.Size) {
	above := w.of.above()
	w.line.Resize(fyne.NewSize(size.Width, 1))
	w.line.Move(fyne.NewPos(0, above/2))
	place := fyne.NewSize(size.Width, size.Height-above)
	w.back.Resize(place)
	w.back.Move(fyne.NewPos(0, above))
	w.of.row.Resize(place)
	w.of.row.Move(fyne.NewPos(0, above))
}

func (w *menuRowRenderer) Refresh() {
	c := Current()
	w.back.FillColor, w.back.StrokeWidth = color.Transparent, 0
	if w.of.of.active == w.of.at {
		w.back.FillColor = c.Tint
		w.back.StrokeColor, w.back.StrokeWidth = c.Accent, 1
	}
	w.back.CornerRadius = Scaled(Radius - 2)
	w.line.FillColor = color.Transparent
	if w.of.above() > 0 {
		w.line.FillColor = c.Line
	}
	w.back.Refresh()
	w.line.Refresh()
	w.of.row.Refresh()
}

func (w *menuRowRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{w.back, w.line, w.of.row}
}
func (w *menuRowRenderer) Destroy() {}
