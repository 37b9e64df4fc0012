package board

import (
	"image"
	"math"
	"slices"

	"studbay/render"
	"studbay/render/scene"
)

// cellSide is the side of a cell in pixels: a few symbols wide.
const cellSide = 64

// cells say which of what was painted can be pointed at where, so that a move of the
// pointer costs the same however much is in sight.
type cells map[image.Point][]int

// cellsOf parts pieces into cells. Those that cannot be pointed at are left out.
func cellsOf(pieces []render.Piece) cells {
	c := cells{}
	for i := range pieces {
		switch p := &pieces[i]; p.Layer {
		case render.LayerOpenings, render.LayerLabels, render.LayerControls:
			c.each(p.Bounds, func(at image.Point) { c[at] = append(c[at], i) })
		}
	}
	return c
}

// near returns which of the pieces that it is of may be within so many pixels of a place, in
// the order painted.
func (c cells) near(pieces []render.Piece, at scene.Point, reach float64) (all []int) {
	c.each(scene.Rect{Min: at, Max: at}.Expanded(reach), func(cell image.Point) {
		for _, i := range c[cell] {
			if pieces[i].Bounds.Expanded(reach).Contains(at) {
				all = append(all, i)
			}
		}
	})
	slices.Sort(all)
	return slices.Compact(all)
}

// each does something for every cell that a box touches.
func (cells) each(box scene.Rect, do func(image.Point)) {
	cell := func(v float64) int { return int(math.Floor(v / cellSide)) }
	for y := cell(box.Min.Y); y <= cell(box.Max.Y); y++ {
		for x := cell(box.Min.X); x <= cell(box.Max.X); x++ {
			do(image.Pt(x, y))
		}
	}
}
