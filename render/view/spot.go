package view

import (
	"math"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// Spot is a place on a face of the room or on its ceiling. Height is above the finished floor,
// of a face alone.
type Spot struct {
	At     plan.Anchor
	Height unit.Length
}

// Spot returns the place that shows at a point of the picture: on the nearest wall, or on the
// ceiling where the part is that. It reports false where there is none before the eye.
// Things that stand in the room hide nothing: it is of the wall behind them.
func (m *Model) Spot(c Camera, at scene.Point, part plan.Part) (s Spot, ok bool) {
	way := m.way(c, at)
	if part == plan.PartCeiling {
		return m.overhead(c, way)
	}
	nearest := math.Inf(1)
	for i, side := range m.view.Sides {
		if side.Side.Kind != plan.SideWall {
			continue
		}
		g := wallPatch(&m.view.Sides[i], m.view.Room.Ceiling.Millimetres())
		if way.dot(g.out) >= 0 {
			continue // seen from behind, or along it
		}
		far := g.origin.sub(c.Eye).dot(g.out) / way.dot(g.out)
		on := c.Eye.add(way.mul(far)).sub(g.origin)
		x, y := on.dot(g.right), on.dot(g.up)
		if far <= 0 || far >= nearest || x < 0 || x > g.wide || y < 0 || y > g.high {
			continue
		}
		nearest, ok = far, true
		s = Spot{plan.OnFace(side.Side.ID, unit.FromMillimetres(x)), unit.FromMillimetres(y)}
	}
	return s, ok
}

// way is where the eye looks to see a point of the picture, one deep.
func (m *Model) way(c Camera, at scene.Point) Point {
	right, up := (at.X-c.Width/2)/c.focal(), (c.Height*horizon-at.Y)/c.focal()
	return c.forward().add(c.right().mul(right)).add(upward.mul(up))
}

func (m *Model) overhead(c Camera, way Point) (s Spot, ok bool) {
	if way.Z <= 0 {
		return s, false
	}
	on := c.Eye.add(way.mul((m.view.Room.Ceiling.Millimetres() - c.Eye.Z) / way.Z))
	foot := geom.Point{X: unit.FromMillimetres(on.X), Y: unit.FromMillimetres(on.Y)}
	if !m.view.Room.Outline().Contains(foot) {
		return s, false
	}
	return Spot{At: plan.OnCeiling(m.view.Room.ID, foot)}, true
}

// Project returns where a spot of the room shows. It reports false of one that is not of this
// room, or not before the eye.
func (m *Model) Project(c Camera, s Spot) (scene.Point, bool) {
	switch s.At.Part {
	case plan.PartCeiling:
		if s.At.Host == m.view.Room.ID {
			return c.Project(At(s.At.At, m.view.Room.Ceiling))
		}
	case plan.PartFace:
		for i, side := range m.view.Sides {
			if side.Side.ID == s.At.Host {
				return c.Project(wallPatch(&m.view.Sides[i], 0).at(s.At.Along.Millimetres(), s.Height.Millimetres()))
			}
		}
	}
	return scene.Point{}, false
}
