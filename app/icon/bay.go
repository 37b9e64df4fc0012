package icon

import (
	"math"

	"studbay/render/scene"
)

// bay is two studs with a box between them that is held at one of them by its foot, and
// the cable that comes down to it. It stands in the middle from left to right.
type bay struct {
	grid
	left        int     // pixels to the first stud
	top, bottom int     // pixels, of the studs
	middle      float64 // of the box, in units from the top
	step        float64 // units: half a stud, a twelfth of the whole width
}

func (b bay) items() []scene.Item {
	right := b.size - b.left
	stud, foot := b.length(2*b.step), max(1, int(b.step/b.pixel()))
	from, to := b.left+stud, right-stud-foot // of the box with its foot
	hole := evenly(2*b.step/b.pixel(), to-from-foot)
	cable := evenly(b.step/b.pixel(), hole)
	high := max(b.length(8*b.step), 2*hole+3*foot)
	top := int(math.Round(b.middle/b.pixel() - float64(high)/2))
	holeLeft := from + foot + (to-from-foot-hole)/2
	cableLeft := holeLeft + (hole-cable)/2

	items := []scene.Item{
		b.block(wall, b.left, b.top, from, b.bottom, 0),
		b.block(wall, right-stud, b.top, right, b.bottom, 0),
		b.block(copper, cableLeft, b.top, cableLeft+cable, top+foot, 0),
		b.block(accent, from, top-foot, from+foot, top+high+foot, 0),
		b.block(accent, from, top, to, top+high, b.step/2),
	}
	rim := (high - 2*hole) / 3
	for _, y := range []int{top + rim, top + high - rim - hole} {
		items = append(items, b.block(paper, holeLeft, y, holeLeft+hole, y+hole, b.step/2))
	}
	return items
}

// evenly returns the whole width nearest to one in pixels that leaves the same on both
// sides of it, and is not nothing.
func evenly(width float64, whole int) int {
	odd := whole % 2
	return max(2-odd, odd+2*int(math.Round((width-float64(odd))/2)))
}

// rounded is the size in pixels from which on small corners are rounded: below it they
// would only be grey.
const rounded = 48

func (b bay) block(c scene.Color, x0, y0, x1, y1 int, radius float64) scene.Item {
	if b.size < rounded {
		radius = 0
	}
	return scene.Fill{Path: b.rect(x0, y0, x1, y1).RoundedPath(radius), Color: c}
}

// grid is the pixels of one size laid over a drawing of Side units.
type grid struct{ size int }

// pixel returns the side of one pixel in units.
func (g grid) pixel() float64 { return Side / float64(g.size) }

// place returns the edge between pixels that is nearest to a coordinate in units.
func (g grid) place(v float64) int { return int(math.Round(v / g.pixel())) }

// length returns a length of so many units in pixels, at least one.
func (g grid) length(v float64) int { return max(1, g.place(v)) }

// units returns so many pixels in units.
func (g grid) units(pixels int) float64 { return float64(pixels) * g.pixel() }

// rect returns the rectangle between edges of pixels, in units.
func (g grid) rect(x0, y0, x1, y1 int) scene.Rect {
	return scene.Rect{
		Min: scene.Point{X: g.units(x0), Y: g.units(y0)},
		Max: scene.Point{X: g.units(x1), Y: g.units(y1)},
	}
}
