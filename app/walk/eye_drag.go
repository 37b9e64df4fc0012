package walk

import (
	"math"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan"
	"studbay/render/scene"
)

// markAt is the nearest opening in reach of a place in the picture, or none.
func (e *eye) markAt(at fyne.Position) plan.ID {
	best, least := plan.ID(""), float64(look.Scaled(reach))
	for _, m := range e.marks {
		d := math.Hypot(m.At.X-float64(at.X), m.At.Y-float64(at.Y))
		if d < least && !m.IsHidden {
			best, least = m.ID, d
		}
	}
	return best
}

// Dragged implements fyne.Draggable: what is taken at an opening says where that is asked for,
// else the room follows the pointer.
func (e *eye) Dragged(d *fyne.DragEvent) {
	e.take(e.markAt, d)
	if e.held == "" {
		if w := e.Size().Width; w > 0 {
			e.turn(-float64(d.Dragged.DX) / float64(w) * e.camera.Field)
		}
		return
	}
	if to, ok := e.model.Spot(e.camera, scene.Point{X: float64(d.Position.X), Y: float64(d.Position.Y)}, e.parts[e.held]); ok {
		e.drag = e.settle(e.held, to)
		e.Refresh()
	}
}

// DragEnd implements fyne.Draggable.
func (e *eye) DragEnd() {
	if e.let() {
		e.Refresh()
	}
}

// arrows draws what is asked for: what was kept, and what is dragged now in its place.
func (e *eye) arrows(p *look.Palette) (items []scene.Item) {
	for _, a := range e.all() {
		to, ok := e.model.Project(e.camera, a.to)
		for _, m := range e.marks {
			if ok && m.ID == a.id {
				items = append(items, wishArrow(m.At, to, a.far, float64(look.Scaled(sizeState)), p)...)
			}
		}
	}
	return items
}
