package view

import (
	"math"
	"slices"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/scene"
)

// tile is the grid that is drawn on floors, in millimetres: 12 in, for looks alone, so that
// one sees how far things are.
const tile = 12 * 25.4

// flats draws floor and ceiling. An eye between them has all else of the room before
// them, so they need no order.
func (b *builder) flats() {
	var low, high []Point
	outline := b.view.Room.Outline()
	for _, p := range outline {
		low = append(low, At(p, 0))
		high = append(high, At(p, b.view.Room.Ceiling))
	}
	slices.Reverse(high)
	t := b.style.Theme
	b.ground = append(b.ground,
		shape{points: low, normal: upward, fill: render.Mixed(t.Paper, t.Line, 0.6), pen: b.pen(1.5)},
		shape{points: high, normal: upward.mul(-1), fill: t.Surface, pen: b.pen(1.5)})
	b.grid(low)
	floor := patch{right: Point{X: 1}, up: Point{Y: -1}, out: upward}
	ceiling := patch{right: Point{X: 1}, up: Point{Y: 1}, out: upward.mul(-1)}
	for _, o := range b.view.Floor {
		b.ground = append(b.ground, b.plate(floor.moved(At(o.At.At, 0)), o, nil)...)
	}
	for _, o := range b.view.Ceiling {
		b.ground = append(b.ground, b.plate(ceiling.moved(At(o.At.At, b.view.Room.Ceiling)), o, nil)...)
	}
}

func (g patch) moved(to Point) patch {
	g.origin = to
	return g
}

// grid draws lines on the floor each way, as far as the outline holds them.
func (b *builder) grid(outline []Point) {
	pen := b.thin()
	pen.Color = render.Mixed(b.style.Theme.Line, b.style.Theme.Muted, 0.15)
	for _, isAcross := range []bool{false, true} {
		get := func(p Point) (along, over float64) {
			if isAcross {
				return p.Y, p.X
			}
			return p.X, p.Y
		}
		from, to := math.Inf(1), math.Inf(-1)
		for _, p := range outline {
			along, _ := get(p)
			from, to = min(from, along), max(to, along)
		}
		for at := from + tile; at < to-1; at += tile {
			var cuts []float64
			for i, p := range outline {
				x0, y0 := get(p)
				x1, y1 := get(outline[(i+1)%len(outline)])
				if (x0 < at) != (x1 < at) {
					cuts = append(cuts, y0+(y1-y0)*(at-x0)/(x1-x0))
				}
			}
			slices.Sort(cuts)
			for i := 0; i+1 < len(cuts); i += 2 {
				a, z := Point{X: at, Y: cuts[i]}, Point{X: at, Y: cuts[i+1]}
				if isAcross {
					a, z = Point{X: cuts[i], Y: at}, Point{X: cuts[i+1], Y: at}
				}
				b.ground = append(b.ground, shape{points: []Point{a, z}, normal: upward, pen: pen})
			}
		}
	}
}

// The base board is drawn 6 in high, and a railing 36 in: for looks alone.
const (
	baseHigh = 6 * 25.4
	railHigh = 36 * 25.4
)

// wall draws a face with its doors, windows, base board and openings.
func (b *builder) wall(s *index.SideView) {
	g := wallPatch(s, b.ceiling)
	switch s.Side.Kind {
	case plan.SideOpen, plan.SideRailing:
		b.solid(g.box(g.whole(), render.Mixed(b.style.Theme.Paper, b.style.Theme.Line, 0.25), b.thin()))
		if s.Side.Kind == plan.SideRailing {
			for y := 4 * 25.4; y <= railHigh; y += 8 * 25.4 {
				b.add(g.line(b.pen(1.5), 0, y, g.wide, y))
			}
		}
	case plan.SideGlass:
		b.solid(g.box(g.whole(), b.glass(), b.pen(1.5)))
		b.add(b.glints(g, g.whole())...)
	default:
		b.solid(g.box(g.whole(), b.wallColor(g.out), b.pen(1.5)))
		b.shade(g)
		b.baseBoard(g, s.Cuts)
	}
	for _, c := range s.Cuts {
		b.cut(g, c)
	}
	for _, o := range s.Openings {
		at := g
		at.origin = g.at(o.At.Along.Millimetres(), b.centre(o))
		b.add(b.plate(at, o, &g)...)
	}
}

// shade darkens a face toward its corners in a few steps.
func (b *builder) shade(g patch) {
	for i := range 4 {
		wide := min(g.wide/4, float64(4-i)*3*25.4)
		dark := scene.Color{A: 5}
		b.add(g.box(rect{0, 0, wide, g.high}, dark, scene.Pen{}), g.box(rect{g.wide - wide, 0, g.wide, g.high}, dark, scene.Pen{}))
	}
}

// baseBoard runs along the foot of a face, between what is cut down to the floor.
func (b *builder) baseBoard(g patch, cuts []index.Cut) {
	at := 0.0
	put := func(to float64) {
		if to-at > 1 {
			b.add(g.box(rect{at, 0, to, baseHigh}, render.Mixed(b.style.Theme.Surface, b.style.Theme.Paper, 0.25), b.thin()))
		}
	}
	for _, c := range cuts {
		if c.Break.Sill > 0 {
			continue
		}
		casing := c.Break.Casing.Millimetres()
		put(max(0, c.From.Millimetres()-casing))
		at = max(at, c.To.Millimetres()+casing)
	}
	put(g.wide)
}
