// Package view draws a room in perspective, as one sees it who stands in it: its faces with
// their doors and windows, what stands in it, and openings as plates at their true places.
//
// The projection is that of a pinhole: straight lines stay straight and what is upright
// stays upright, since the gaze is level; the horizon is moved in the picture, never
// tilted. What hides what is told by the planes of the faces, so it is right from
// everywhere in the room. Like every drawing it decides nothing and is floats throughout,
// in millimetres of building.
package view

import (
	"math"

	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render/scene"
)

// Point is a place in a house in millimetres: X and Y as on the sheet, right and down,
// Z up from the finished floor of the room.
type Point struct{ X, Y, Z float64 }

func (p Point) add(v Point) Point           { return Point{p.X + v.X, p.Y + v.Y, p.Z + v.Z} }
func (p Point) sub(q Point) Point           { return Point{p.X - q.X, p.Y - q.Y, p.Z - q.Z} }
func (p Point) mul(k float64) Point         { return Point{p.X * k, p.Y * k, p.Z * k} }
func (p Point) dot(q Point) float64         { return p.X*q.X + p.Y*q.Y + p.Z*q.Z }
func (p Point) to(q Point, k float64) Point { return p.add(q.sub(p).mul(k)) }

// At returns the place over a point of the plan at a height above the finished floor.
func At(p geom.Point, height unit.Length) Point {
	return Point{p.X.Millimetres(), p.Y.Millimetres(), height.Millimetres()}
}

// EyeHeight is that of one who stands, above the finished floor: 60 in, common practice
// for views into a room.
const EyeHeight = 60 * unit.Inch

// The bounds of how much of the room is seen at once, in degrees from left to right, and
// what it begins with.
const (
	LeastField = 60.0
	MostField  = 90.0
	UsualField = 76.0
)

// horizon is where the horizon stands in a picture, from its top, as a share of its
// height: more floor is seen than ceiling.
const horizon = 0.41

// near is how far before the eye anything is drawn: 4 in. What is nearer is cut off, so
// nothing is divided by a depth of nothing.
const near = 4 * 25.4

// Camera is who looks and how. Bearing is the way that the gaze goes, in degrees
// clockwise as seen on the sheet, 0 straight up the sheet; Field is what is seen from the
// left edge of the picture to the right, in degrees.
type Camera struct {
	Eye           Point
	Bearing       float64
	Field         float64
	Width, Height float64 // of the picture, in scene units
}

// forward and right return the way of the gaze and what is to its right hand, both level
// and of length one.
func (c Camera) forward() Point {
	sin, cos := math.Sincos(c.Bearing * math.Pi / 180)
	return Point{X: sin, Y: -cos}
}

func (c Camera) right() Point {
	f := c.forward()
	return Point{X: -f.Y, Y: f.X}
}

// focal is how long a length is in the picture, times its depth over itself.
func (c Camera) focal() float64 { return c.Width / 2 / math.Tan(c.Field*math.Pi/360) }

// Pinhole returns how long in the picture what is as long as it is deep is, and how far down from
// its top the horizon stands, in scene units.
func (c Camera) Pinhole() (focal, level float64) { return c.focal(), c.Height * horizon }

// seen is a place as the eye has it: to the right, up from the eye, and along the gaze.
type seen struct{ right, up, depth float64 }

func (c Camera) seen(p Point) seen {
	d := p.sub(c.Eye)
	return seen{d.dot(c.right()), d.Z, d.dot(c.forward())}
}

// Project returns where in the picture a place is, and whether it is before the eye at
// all; it may lie outside of the picture.
func (c Camera) Project(p Point) (scene.Point, bool) {
	s := c.seen(p)
	if s.depth < near {
		return scene.Point{}, false
	}
	return c.flat(s), true
}

// flat projects what lies before the eye.
func (c Camera) flat(s seen) scene.Point {
	k := c.focal() / s.depth
	return scene.Point{X: c.Width/2 + k*s.right, Y: c.Height*horizon - k*s.up}
}

// outline projects a polygon, cut off where it comes too near; it is empty where none of
// it lies before the eye.
func (c Camera) outline(points []Point) (out []scene.Point) {
	all := make([]seen, len(points))
	for i, p := range points {
		all[i] = c.seen(p)
	}
	for i, b := range all {
		a := all[(i+len(all)-1)%len(all)]
		if (a.depth < near) != (b.depth < near) {
			out = append(out, c.flat(cutAt(a, b)))
		}
		if b.depth >= near {
			out = append(out, c.flat(b))
		}
	}
	return out
}

// line projects the way between two places, cut off where it comes too near.
func (c Camera) line(p, q Point) (a, b scene.Point, ok bool) {
	s, t := c.seen(p), c.seen(q)
	switch {
	case s.depth < near && t.depth < near:
		return a, b, false
	case s.depth < near:
		s = cutAt(s, t)
	case t.depth < near:
		t = cutAt(t, s)
	}
	return c.flat(s), c.flat(t), true
}

// cutAt returns where the way between two places comes to the nearest depth.
func cutAt(a, b seen) seen {
	k := (near - a.depth) / (b.depth - a.depth)
	return seen{a.right + (b.right-a.right)*k, a.up + (b.up-a.up)*k, near}
}
