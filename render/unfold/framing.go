package unfold

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// framing draws on a sheet what is behind a face before the board goes up: studs at their
// width, in dashes where their place is assumed; the blocks that boxes are held by,
// hatched; and the boxes set from the other side, in dashes.
func (u *unfolding) framing(f Face, side *index.SideView) (items []scene.Item) {
	w := frame.WallIn(side, u.strip.Room)
	for _, s := range w.All {
		high := s.Top
		if high == 0 {
			high = u.strip.Ceiling
		}
		from, to := max(0, s.Left()), min(f.Length, s.Right())
		if from >= to || s.Bottom >= high {
			continue
		}
		pen := u.Hairline()
		if s.State == plan.StudAssumed {
			pen = u.dashedPen(pen, 8, 6)
		}
		for _, x := range []unit.Length{from, to} {
			line := scene.LinePath(u.m.ToStrip(f.Left+x, s.Bottom), u.m.ToStrip(f.Left+x, high))
			items = append(items, scene.Stroke{Path: line, Pen: pen})
		}
	}
	for _, b := range w.Boxes {
		if hold := w.HoldOn(b.Opening, u.strip.Room); hold.Block != nil {
			items = append(items, u.blockOf(f, hold)...)
		}
	}
	for _, p := range w.Behind {
		if p.IsBuiltIn() {
			r := u.box(f, p.Left, p.Right, p.Bottom, p.Top)
			items = append(items, scene.Stroke{Path: r.Path(), Pen: u.dashedPen(u.MutedPen(), 3, 3)})
		}
	}
	return items
}

// blockOf is the lumber between two studs, hatched: wood to be added.
func (u *unfolding) blockOf(f Face, hold frame.Hold) []scene.Item {
	r := u.box(f, max(0, hold.Bay.From), min(f.Length, hold.Bay.To), hold.Block.Bottom, hold.Block.Top)
	outline := scene.Stroke{Path: r.Path(), Pen: u.MutedPen()}
	items := []scene.Item{outline}
	step := 2.5 * r.Height()
	for x := r.Min.X + step/2; x < r.Max.X; x += step / 2 {
		slant := min(r.Height(), x-r.Min.X)
		items = append(items, scene.Stroke{
			Path: scene.LinePath(scene.Point{X: x, Y: r.Min.Y}, scene.Point{X: x - slant, Y: r.Min.Y + slant}), Pen: u.MutedPen(),
		})
	}
	return items
}
