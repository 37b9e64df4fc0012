package view

import (
	"math"

	"studbay/plan"
	"studbay/render/scene"
)

// inSight is how far within the edges of a picture something is that one sees without looking
// for it, in scene units; for looks alone.
const inSight = 40

// Toward returns a camera that has an opening in its picture: turned so that it stands in the
// middle, from as much of the room as that needs, and only where it still is above or below the
// picture from the nearest place where it is not. It is as it was where the opening is not of
// the room.
func (m *Model) Toward(c Camera, id plan.ID) Camera {
	for _, p := range m.plates {
		if p.opening.ID == id {
			return m.toward(c, p)
		}
	}
	return c
}

// Sees reports whether an opening of the room is well within the picture, before the eye, though
// something may stand before it.
func (m *Model) Sees(c Camera, id plan.ID) bool {
	for _, p := range m.plates {
		if p.opening.ID == id {
			return (p.host == nil || c.Eye.sub(p.at).dot(p.out) > 0) && c.hasInSight(p.at)
		}
	}
	return false
}

func (m *Model) toward(c Camera, p plate) Camera {
	turned := c.facing(p.at)
	for turned.Field < MostField && !turned.hasInSight(p.at) {
		turned = turned.Widened(4)
	}
	if turned.hasInSight(p.at) {
		return turned
	}
	best, least := turned, math.Inf(1)
	for q := range m.places() {
		q.Z = c.Eye.Z
		there := turned
		there.Eye = q
		there = there.facing(p.at)
		far := math.Hypot(q.X-c.Eye.X, q.Y-c.Eye.Y)
		isBefore := p.host == nil || q.sub(p.at).dot(p.out) > 0
		if far < least && isBefore && there.hasInSight(p.at) {
			best, least = there, far
		}
	}
	return best
}

// facing returns the camera turned to a place, or as it is where that is straight above or
// below.
func (c Camera) facing(at Point) Camera {
	if way := at.sub(c.Eye); math.Hypot(way.X, way.Y) > 25.4 {
		c.Bearing = math.Atan2(way.X, -way.Y) * 180 / math.Pi
	}
	return c
}

// hasInSight reports whether a place shows well within the picture.
func (c Camera) hasInSight(at Point) bool {
	p, ok := c.Project(at)
	return ok && scene.Rect{Max: scene.Point{X: c.Width, Y: c.Height}}.Expanded(-inSight).Contains(p)
}
