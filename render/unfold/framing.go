package unfold

import (
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render"
	"studbay/render/scene"
)

// framing draws what is behind a face before the board goes up: studs at their width, in
// dashes where their place is assumed; plates, headers and sills; the blocks that boxes are
// held by, hatched; and the boxes set from the other side, in dashes.
func (u *unfolding) framing(f Face, side *index.SideView) (items []scene.Item) {
	w := frame.WallIn(side, u.strip.Room)
	for _, s := range w.All {
		items = append(items, u.upright(f, s)...)
	}
	for _, m := range w.Members(u.strip.Room) {
		if u.m.Kind == render.Sheet && !u.isAlone && m.Kind != frame.Header && m.Kind != frame.Sill {
			continue // floor and ceiling lie there
		}
		if r := u.box(f, m.Left, m.Right, max(m.Bottom, u.lowest()), m.Top); r.Height() > 0 {
			items = append(items, scene.Stroke{Path: r.Path(), Pen: u.lumberPen(plan.StudStated)})
		}
	}
	for _, b := range w.Boxes {
		if hold := w.HoldOn(b.Opening, u.strip.Room); hold.Block != nil && !b.IsThere() {
			items = append(items, u.blockOf(f, hold)...)
		}
	}
	for _, p := range w.Behind {
		if p.IsBuiltIn() {
			items = append(items, u.ghost(f, p))
		}
	}
	return items
}

// lowest is how low a drawing reaches: to the subfloor where a face stands alone.
func (u *unfolding) lowest() unit.Length {
	if u.isAlone {
		return -u.strip.Floor
	}
	return 0
}

// upright draws a stud: on a board as wood, paler where its place is assumed.
func (u *unfolding) upright(f Face, s frame.Stud) (items []scene.Item) {
	high := s.Top
	if high == 0 {
		high = u.strip.Ceiling
	}
	from, to := max(0, s.Left()), min(f.Length, s.Right())
	if from >= to || s.Bottom >= high {
		return nil
	}
	if u.m.Kind == render.Board {
		wood := u.Theme.Line
		if wood.A = 0x90; s.State == plan.StudAssumed {
			wood.A = 0x48
		}
		items = append(items, scene.Fill{Path: u.box(f, from, to, s.Bottom, high).Path(), Color: wood})
		if s.State == plan.StudMeasured && s.Kind == frame.CommonStud {
			items = append(items, u.tapeMark(f, s.At))
		}
	}
	for _, x := range []unit.Length{from, to} {
		line := scene.LinePath(u.m.ToStrip(f.Left+x, s.Bottom), u.m.ToStrip(f.Left+x, high))
		items = append(items, scene.Stroke{Path: line, Pen: u.lumberPen(s.State)})
	}
	return items
}

// tapeMark is a small triangle at the foot of a stud whose place was taped.
func (u *unfolding) tapeMark(f Face, at unit.Length) scene.Item {
	foot, size := u.m.ToStrip(f.Left+at, 0), 4*u.m.Pixel
	var path scene.Path
	path.MoveTo(foot).LineTo(foot.Add(scene.Point{X: -size, Y: -1.5 * size})).LineTo(foot.Add(scene.Point{X: size, Y: -1.5 * size})).Close()
	return scene.Fill{Path: path, Color: u.Theme.Muted}
}

// lumberPen draws the edges of lumber, in dashes where its place is assumed.
func (u *unfolding) lumberPen(s plan.StudState) scene.Pen {
	pen := u.Hairline()
	if u.isAlone { // read at the studs, on a copy of a copy
		pen = u.InkPen(2)
	}
	if s == plan.StudAssumed {
		pen = u.dashedPen(pen, 8, 6)
	}
	return pen
}

// leastDashed is how far it is round a box that can be drawn in dashes: a smaller one would be
// scraps, and is drawn in a thin line.
const leastDashed = 72

// ghost is the outside of a box that is set from the other face, in dashes.
func (u *unfolding) ghost(f Face, p frame.Placed) scene.Item {
	r := u.box(f, p.Left, p.Right, p.Bottom, p.Top)
	path := r.Path()
	if frame.FrontOf(p.Opening).IsRound {
		path = r.RoundedPath(r.Width())
	}
	if u.m.Kind == render.Board && 2*(r.Width()+r.Height()) < leastDashed*u.m.Pixel {
		return scene.Stroke{Path: path, Pen: u.Hairline()}
	}
	return scene.Stroke{Path: path, Pen: u.dashedPen(u.MutedPen(), 3, 3)}
}

// blockOf is the lumber between two studs, hatched: wood to be added.
func (u *unfolding) blockOf(f Face, hold frame.Hold) []scene.Item {
	r := u.box(f, max(0, hold.Bay.From), min(f.Length, hold.Bay.To), hold.Block.Bottom, hold.Block.Top)
	pen := u.MutedPen()
	if u.isAlone {
		pen = u.InkPen(2)
	}
	outline := scene.Stroke{Path: r.Path(), Pen: pen}
	items := []scene.Item{outline}
	step := 2.5 * r.Height()
	for x := r.Min.X + step/2; x < r.Max.X; x += step / 2 {
		slant := min(r.Height(), x-r.Min.X)
		items = append(items, scene.Stroke{
			Path: scene.LinePath(scene.Point{X: x, Y: r.Min.Y}, scene.Point{X: x - slant, Y: r.Min.Y + slant}), Pen: pen,
		})
	}
	return items
}
