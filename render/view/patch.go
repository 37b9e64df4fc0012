package view

import (
	"math"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/render/scene"
)

// patch is a flat ground to draw on: X to the right and Y up, in millimetres, as one has
// them who looks at it.
type patch struct {
	origin         Point
	right, up, out Point // of length one
	wide, high     float64
}

// at returns the place of a point of the patch.
func (g patch) at(x, y float64) Point { return g.origin.add(g.right.mul(x)).add(g.up.mul(y)) }

// level makes a vector of the plan one of length one in the room.
func level(v geom.Point) Point {
	p := Point{X: v.X.Millimetres(), Y: v.Y.Millimetres()}
	return p.mul(1 / math.Hypot(p.X, p.Y))
}

var upward = Point{Z: 1}

// wallPatch is the face of a side from its left end.
func wallPatch(s *index.SideView, ceiling float64) patch {
	return patch{
		origin: At(s.Frame.Origin, 0), right: level(s.Frame.Along()), up: upward, out: level(s.Frame.Out()),
		wide: s.Length.Millimetres(), high: ceiling,
	}
}

// fixturePatch is a face of what stands in the room, between two heights; of its top, at
// the higher one, X runs along its front and Y toward its back.
func fixturePatch(v index.FixtureView, part plan.Part, low, high float64) patch {
	along, out := level(v.Frame.Along()), level(v.Frame.Out())
	wide, deep := v.Fixture.Width.Millimetres(), v.Fixture.Depth.Millimetres()
	back := At(v.Frame.Origin, 0)
	minus := func(p Point) Point { return p.mul(-1) }
	g := patch{up: upward, wide: wide, high: high - low}
	switch part {
	case plan.PartFront:
		g.origin, g.right, g.out = back.add(out.mul(deep)), along, out
	case plan.PartBack:
		g.origin, g.right, g.out = back.add(along.mul(wide)), minus(along), minus(out)
	case plan.PartLeft:
		g.origin, g.right, g.out, g.wide = back, out, minus(along), deep
	case plan.PartRight:
		g.origin, g.right, g.out, g.wide = back.add(along.mul(wide)).add(out.mul(deep)), minus(out), along, deep
	default:
		g.origin, g.right, g.up, g.out, g.high = back.add(out.mul(deep)), along, minus(out), upward, deep
		g.origin.Z = high
		return g
	}
	g.origin.Z = low
	return g
}

// rect is a box of the patch.
type rect struct{ left, low, right, high float64 }

func (r rect) in(d float64) rect { return rect{r.left + d, r.low + d, r.right - d, r.high - d} }

func (r rect) isEmpty() bool { return r.right-r.left < 0.5 || r.high-r.low < 0.5 }

func (g patch) whole() rect { return rect{0, 0, g.wide, g.high} }

// box makes a shape of a box, with a line round it.
func (g patch) box(r rect, fill scene.Color, pen scene.Pen) shape {
	return g.polygon(fill, pen, [2]float64{r.left, r.low}, [2]float64{r.right, r.low}, [2]float64{r.right, r.high}, [2]float64{r.left, r.high})
}

func (g patch) polygon(fill scene.Color, pen scene.Pen, at ...[2]float64) shape {
	s := shape{normal: g.out, fill: fill, pen: pen}
	for _, p := range at {
		s.points = append(s.points, g.at(p[0], p[1]))
	}
	return s
}

// oval makes a shape of an ellipse in a box.
func (g patch) oval(r rect, fill scene.Color, pen scene.Pen) shape {
	const corners = 28
	at := make([][2]float64, corners)
	for i := range at {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		at[i] = [2]float64{(r.left+r.right)/2 + cos*(r.right-r.left)/2, (r.low+r.high)/2 + sin*(r.high-r.low)/2}
	}
	return g.polygon(fill, pen, at...)
}

// line makes a shape of a line between two points.
func (g patch) line(pen scene.Pen, x0, y0, x1, y1 float64) shape {
	return shape{normal: g.out, pen: pen, points: []Point{g.at(x0, y0), g.at(x1, y1)}}
}
