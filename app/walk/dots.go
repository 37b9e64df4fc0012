package walk

import (
	"studbay/app/look"
	"studbay/plan"
	"studbay/render/scene"
)

// dots draws one mark an opening of the room: answered, spoken of, not yet.
func (w *Walk) dots(width, height float64, p *look.Palette) (items []scene.Item) {
	n := len(w.tour.openings)
	step := width / float64(max(1, n))
	for i, o := range w.tour.openings {
		at, r := scene.Point{X: (float64(i) + 0.5) * step, Y: height / 2}, min(7, 0.38*step)
		color := p.Muted
		answer := w.tour.Answer(o.Opening.ID)
		switch answer {
		case plan.WishAgreed:
			color = p.Accent
		case plan.WishChange:
			color = p.Warn
		case plan.WishQuestion:
			color = p.Note
		}
		if answer != "" {
			items = append(items, scene.Fill{Path: scene.Circle(at, r), Color: color})
		} else {
			items = append(items, scene.Stroke{Path: scene.Circle(at, r), Pen: scene.Pen{Width: 1.5, Color: color}})
		}
		if i == w.tour.at {
			items = append(items, scene.Stroke{Path: scene.Circle(at, r+4), Pen: scene.Pen{Width: 2.5, Color: p.Accent}})
		}
	}
	return items
}
