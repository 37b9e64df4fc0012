package level

import (
	"math"

	"studbay/plan/geom"
	"studbay/render"
	"studbay/render/scene"
)

// face takes millimetres along and out of a face into the scene.
type face struct{ t scene.Transform }

func (d *drawing) face(f geom.Frame) face {
	return face{scene.Transform{
		X:  unitVector(f.Along()).Mul(d.Medium.Scale),
		Y:  unitVector(f.Out()).Mul(d.Medium.Scale),
		At: d.Medium.ToScene(f.Origin),
	}}
}

// at returns the point at a distance along and out, in millimetres of building.
func (f face) at(along, out float64) scene.Point {
	return f.t.Apply(scene.Point{X: along, Y: out})
}

func (f face) line(along, out, toAlong, toOut float64) scene.Path {
	return scene.LinePath(f.at(along, out), f.at(toAlong, toOut))
}

// box returns the closed outline between two corners.
func (f face) box(from, near, to, far float64) scene.Path {
	return scene.Polygon(f.at(from, near), f.at(to, near), f.at(to, far), f.at(from, far))
}

// snapped returns the nearest whole pixel on a board, so that bodies which lie side by
// side or over one another show one crisp edge; on a sheet the point itself.
func (d *drawing) snapped(points ...scene.Point) []scene.Point {
	if d.Medium.Kind != render.Board {
		return points
	}
	whole := make([]scene.Point, len(points))
	for i, p := range points {
		// A hair is added so that one point worked out in two ways is snapped to one place.
		whole[i] = scene.Point{X: math.Floor(p.X + 0.5 + 1e-6), Y: math.Floor(p.Y + 0.5 + 1e-6)}
	}
	return whole
}

// unitVector returns a direction of the plan as a vector of length one.
func unitVector(v geom.Point) scene.Point {
	x, y := v.X.Millimetres(), v.Y.Millimetres()
	n := math.Hypot(x, y)
	if n == 0 {
		return scene.Point{}
	}
	return scene.Point{X: x / n, Y: y / n}
}
