package draft

import (
	"studbay/render"
	"studbay/render/scene"
)

// Area is where texts of one room or face may stand.
type Area struct {
	Outline []scene.Point
	Bounds  scene.Rect // of the outline
	Window  scene.Rect // that of the medium
}

// edge is how far inside a window texts stay: letters reach a hair beyond what they are
// measured by.
const edge = 0.2

// Holds reports whether the middle of a box lies in the area, no side of it cuts the box
// and the window shows it.
func (a *Area) Holds(box scene.Rect) bool {
	if !a.Contains(box.Middle()) || !(render.Medium{Window: a.Window}).Shows(box.Expanded(edge)) {
		return false
	}
	for i, p := range a.Outline {
		if Clips(p, a.Outline[(i+1)%len(a.Outline)], box) {
			return false
		}
	}
	return true
}

// Contains reports whether a point lies in the outline, by counting crossings.
func (a *Area) Contains(p scene.Point) (inside bool) {
	for i, b := range a.Outline {
		c := a.Outline[(i+1)%len(a.Outline)]
		if (b.Y > p.Y) != (c.Y > p.Y) && p.X < b.X+(p.Y-b.Y)/(c.Y-b.Y)*(c.X-b.X) {
			inside = !inside
		}
	}
	return inside
}
