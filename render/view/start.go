package view

import (
	"iter"
	"math"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// wholeFrom is how far off a face is seen well: 10 ft, for looks alone.
const wholeFrom = 120 * 25.4

// backOff is how far the eye stands off the wall behind it: 6 in, for looks alone; free is
// how far from what stands there.
const (
	backOff = 6 * 25.4
	free    = 12 * 25.4
)

// Start returns where one begins to look at a room from, for a picture of a size: at the
// wall over against the face with the most openings, in free floor, the gaze turned a
// little so that a face beside it shows.
func (m *Model) Start(width, height float64) Camera {
	c := Camera{Field: UsualField, Width: width, Height: height}
	if height > width {
		c.Field = LeastField
	}
	var face patch
	var eye Point
	most := -1.0
	for i, s := range m.view.Sides {
		// The longer of two that carry as many shows more of the room.
		n := 1 + float64(len(s.Openings)) + s.Length.Millimetres()/1e6
		for _, f := range s.Fixtures {
			n += 0.4 + float64(len(f.Openings))
		}
		g := wallPatch(&m.view.Sides[i], 0)
		from := m.farthest(g)
		// A face that one stands too near to is not seen whole.
		if n *= min(1, from.sub(g.origin).dot(g.out)/wholeFrom); n > most {
			face, eye, most = g, from, n
		}
	}
	c.Eye = eye
	c.Eye.Z = min(EyeHeight.Millimetres(), 0.85*m.view.Room.Ceiling.Millimetres())
	gaze := face.at(face.wide/2, 0).sub(eye)
	if math.Hypot(gaze.X, gaze.Y) < 1 {
		gaze = face.out.mul(-1)
	}
	c.Bearing = math.Atan2(gaze.X, -gaze.Y) * 180 / math.Pi
	return c
}

// farthest looks in the room for the free place that is farthest before a face.
func (m *Model) farthest(face patch) Point {
	best, most := At(m.view.Room.Outline().LabelPoint(), 0), math.Inf(-1)
	for q := range m.places() {
		out := q.sub(face.origin)
		// Straight before the middle rather than a little farther in a corner.
		worth := out.dot(face.out) - 0.6*math.Abs(out.dot(face.right)-face.wide/2)
		if worth > most {
			best, most = q, worth
		}
	}
	return best
}

// places are where one can stand in the room, at the floor: the free points of a grid.
func (m *Model) places() iter.Seq[Point] {
	outline := m.view.Room.Outline()
	box := outline.Box()
	const steps = 24
	return func(yield func(Point) bool) {
		for i := range steps + 1 {
			for k := range steps + 1 {
				p := geom.Point{
					X: box.Min.X + box.Width()*unit.Length(i)/steps,
					Y: box.Min.Y + box.Height()*unit.Length(k)/steps,
				}
				if m.isFree(p, outline) && !yield(At(p, 0)) {
					return
				}
			}
		}
	}
}

// isFree reports whether one can stand at a place: clear of walls and of what stands there.
func (m *Model) isFree(p geom.Point, outline geom.Polygon) bool {
	if !outline.InteriorContains(p) {
		return false
	}
	if _, away := outline.Nearest(p); away.Millimetres() < backOff {
		return false
	}
	for _, s := range m.view.Sides {
		for _, f := range s.Fixtures {
			if isNear(f.Footprint, p) && f.Fixture.Bottom < EyeHeight+unit.Foot {
				return false
			}
		}
	}
	for _, f := range m.view.Standing {
		if isNear(f.Footprint, p) {
			return false
		}
	}
	return true
}

func isNear(foot geom.Polygon, p geom.Point) bool {
	if foot.Contains(p) {
		return true
	}
	_, away := foot.Nearest(p)
	return away.Millimetres() < free
}

// Turned returns the camera turned clockwise by degrees, with a field in its bounds.
func (c Camera) Turned(degrees float64) Camera {
	c.Bearing = math.Mod(math.Mod(c.Bearing+degrees, 360)+360, 360)
	return c
}

// Widened returns the camera with so many degrees more to be seen, within the bounds.
func (c Camera) Widened(degrees float64) Camera {
	c.Field = max(LeastField, min(MostField, c.Field+degrees))
	return c
}
