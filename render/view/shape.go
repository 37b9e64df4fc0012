package view

import (
	"math"

	"studbay/render/scene"
)

// shape is a flat, convex polygon in the room, or a line of two points. It is seen only
// from the side that its normal points to.
type shape struct {
	points []Point
	normal Point
	fill   scene.Color // nothing where its A is 0
	pen    scene.Pen   // nothing where its Width is 0
	bare   []bool      // edges without a line, from each point to the next; nil: none
}

func (s shape) isLine() bool { return len(s.points) == 2 }

func (s shape) faces(eye Point) bool { return eye.sub(s.points[0]).dot(s.normal) > 0 }

// items are what the camera sees of it.
func (s shape) items(c Camera) (items []scene.Item) {
	if !s.isLine() && s.fill.A > 0 {
		if out := c.outline(s.points); len(out) > 2 {
			items = append(items, scene.Fill{Path: scene.Polygon(out...), Color: s.fill})
		}
	}
	if s.pen.Width == 0 {
		return items
	}
	var path scene.Path
	var end scene.Point
	for i, p := range s.points {
		if s.isLine() && i == 1 {
			break
		}
		if s.bare != nil && s.bare[i] {
			continue
		}
		a, b, ok := c.line(p, s.points[(i+1)%len(s.points)])
		if !ok {
			continue
		}
		if path.IsEmpty() || a != end {
			path.MoveTo(a)
		}
		path.LineTo(b)
		end = b
	}
	if !path.IsEmpty() {
		items = append(items, scene.Stroke{Path: path, Pen: s.pen})
	}
	return items
}

// plane is all places p with p·normal = at.
type plane struct {
	normal Point
	at     float64
}

func (s shape) plane() plane { return plane{s.normal, s.points[0].dot(s.normal)} }

// flush is how far off a plane still counts as in it, in millimetres: lengths are whole
// nanometres, so what is meant to be in it is nearer by far.
const flush = 0.02

// parted returns what of a shape lies before a plane and what behind, or that all of it
// lies in the plane.
func (s shape) parted(by plane) (before, behind *shape, within bool) {
	least, most := math.Inf(1), math.Inf(-1)
	off := make([]float64, len(s.points))
	for i, p := range s.points {
		off[i] = p.dot(by.normal) - by.at
		least, most = min(least, off[i]), max(most, off[i])
	}
	switch {
	case least >= -flush && most <= flush:
		return nil, nil, true
	case least >= -flush:
		return &s, nil, false
	case most <= flush:
		return nil, &s, false
	case s.isLine():
		middle := s.points[0].to(s.points[1], off[0]/(off[0]-off[1]))
		a, b := s, s
		a.points, b.points = []Point{s.points[0], middle}, []Point{middle, s.points[1]}
		if off[0] < 0 {
			a, b = b, a
		}
		return &a, &b, false
	}
	a, b := s.cut(off, 1), s.cut(off, -1)
	return &a, &b, false
}

// cut returns what of a polygon lies to one side, given how far each point is off the
// plane. The edge that the cut makes has no line.
func (s shape) cut(off []float64, side float64) shape {
	part := s
	part.points, part.bare = nil, nil
	add := func(p Point, bare bool) {
		part.points = append(part.points, p)
		part.bare = append(part.bare, bare)
	}
	for i, p := range s.points {
		k := (i + 1) % len(s.points)
		a, b := off[i]*side, off[k]*side
		bare := s.bare != nil && s.bare[i]
		if a >= 0 {
			add(p, bare)
		}
		if a*b < 0 {
			add(p.to(s.points[k], off[i]/(off[i]-off[k])), bare || a > 0)
		}
	}
	return part
}
