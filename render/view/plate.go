package view

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/render"
)

// centre is the height of an opening's middle above the finished floor.
func (b *builder) centre(o *plan.Opening) float64 {
	return frame.CentreHeight(o, b.view.Room).Millimetres()
}

// plate draws an opening's plate about the origin of a patch, at its true size, with what
// tells its kind in the small, and notes where it is.
func (b *builder) plate(at patch, o *plan.Opening, wall *patch) []shape {
	outline := frame.PlateOf(o)
	w, h := outline.Width.Millimetres(), outline.Height.Millimetres()
	box := rect{-w / 2, -h / 2, w / 2, h / 2}
	f := family(o)
	hasHousing := part.All().Kind(o.Kind) != nil && !part.All().Kind(o.Kind).Cutout.IsZero()
	b.plates = append(b.plates, plate{
		opening: o, at: at.origin, out: at.out, host: wall,
		globe: f == part.Light && !hasHousing,
	})
	face := b.style.Theme.Surface
	if outline.IsRound {
		all := []shape{at.oval(box, face, b.pen(1.25))}
		if f == part.Alarm || hasHousing {
			all = append(all, at.oval(box.in(0.18*w), render.Mixed(face, b.style.Theme.Line, 0.5), b.thin()))
		}
		return all
	}
	all := []shape{at.box(box, face, b.pen(1.25))}
	gangs := max(1, o.Gangs)
	step := w / float64(gangs)
	for i := range gangs {
		x := box.left + step*(float64(i)+0.5)
		switch f {
		case part.Receptacle:
			for _, y := range []float64{-20, 20} { // two outlets, 1.5 in apart
				all = append(all, at.box(rect{x - 15, y - 13, x + 15, y + 13}, render.Mixed(face, b.style.Theme.Line, 0.35), b.pen(1)))
			}
		case part.Switch:
			rocker := rect{x - 16, -33, x + 16, 33}
			all = append(all, at.box(rocker, render.Mixed(face, b.style.Theme.Line, 0.25), b.pen(1)), at.line(b.thin(), rocker.left, 0, rocker.right, 0))
		case part.LowVoltage:
			all = append(all, at.oval(rect{x - 9, -9, x + 9, 9}, render.Mixed(face, b.style.Theme.Muted, 0.5), b.pen(1)))
		case part.Fan:
			for y := box.low + 0.2*h; y < box.high-0.1*h; y += h / 6 {
				all = append(all, at.line(b.thin(), box.left+0.12*w, y, box.right-0.12*w, y))
			}
		}
	}
	return all
}
