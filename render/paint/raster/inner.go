package raster

import (
	"cmp"
	"image"
	"image/color"
	"image/draw"
	"math"
	"slices"

	"studbay/render/scene"
)

// inside is a box of whole pixels well within a shape, and which way round the shape goes
// about it: 1 with the sun on a page whose y points down, -1 the other way.
type inside struct {
	image.Rectangle
	turn int
}

// leastInside is the least width and height of a box that is worth a hole: gg works out
// the edges of the hole as it does those of the shape.
const leastInside = 8

// insides returns boxes that a shape covers once and wholly. Between two corners' heights
// no edge begins or ends: there the shape is what lies between its edges, from one to the
// next.
func insides(lines []line) (boxes []inside) {
	heights := heightsOf(lines)
	for i := 1; i < len(heights); i++ {
		top, bottom := int(math.Ceil(heights[i-1])), int(math.Floor(heights[i]))
		if bottom-top >= leastInside {
			boxes = append(boxes, between(crossings(lines, float64(top), float64(bottom)), top, bottom)...)
		}
	}
	return boxes
}

func heightsOf(lines []line) (all []float64) {
	for _, l := range lines {
		for _, p := range l.points {
			all = append(all, p.Y)
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// crossing is an edge's part in a slab: from where to where it lies, and 1 if it leads
// up, else -1.
type crossing struct {
	from, to float64
	turn     int
}

// crossings returns the edges that go through a slab, from left to right.
func crossings(lines []line, top, bottom float64) (all []crossing) {
	for _, l := range lines {
		last := l.points[len(l.points)-1]
		for _, p := range l.points {
			if c, is := cross(last, p, top, bottom); is {
				all = append(all, c)
			}
			last = p
		}
	}
	slices.SortFunc(all, func(a, b crossing) int { return cmp.Compare(a.from, b.from) })
	return all
}

func cross(a, b scene.Point, top, bottom float64) (c crossing, is bool) {
	c.turn = -1
	if a.Y > b.Y {
		a, b, c.turn = b, a, 1
	}
	if a.Y > top || b.Y < bottom {
		return c, false
	}
	at := func(y float64) float64 { return a.X + (b.X-a.X)*(y-a.Y)/(b.Y-a.Y) }
	c.from, c.to = min(at(top), at(bottom)), max(at(top), at(bottom))
	if a.X != b.X { // gg rounds on a slanted way
		c.from, c.to = c.from-1, c.to+1
	}
	return c, true
}

// between returns the boxes of a slab that lie between two crossings, where the shape
// goes round once.
func between(all []crossing, top, bottom int) (boxes []inside) {
	turns, reached := 0, math.Inf(-1)
	for _, c := range all {
		left, right := int(math.Ceil(max(reached, math.MinInt32))), int(math.Floor(c.from))
		if (turns == 1 || turns == -1) && right-left >= leastInside {
			boxes = append(boxes, inside{image.Rect(left, top, right, bottom), turns})
		}
		turns += c.turn
		reached = max(reached, c.to)
	}
	return boxes
}

// fill inks a shape. The pixels that are surely inside, of which there may be millions,
// are set at once and left out of what gg fills: each comes out as if gg did it.
func (c *canvas) fill(o *op) {
	ink := image.NewUniform(color.NRGBA(o.color))
	at := image.Pt(round(c.origin.X), round(c.origin.Y))
	c.trace(o.lines)
	for _, box := range o.insides {
		if !box.Overlaps(c.part) {
			continue
		}
		draw.Draw(c.view, box.Sub(at), ink, image.Point{}, draw.Src)
		c.hole(box)
	}
	c.gg.Fill()
}

// hole traces a box against the way the shape goes about it.
func (c *canvas) hole(box inside) {
	lo := scene.Point{X: float64(box.Min.X), Y: float64(box.Min.Y)}
	hi := scene.Point{X: float64(box.Max.X), Y: float64(box.Max.Y)}
	a, b := scene.Point{X: lo.X, Y: hi.Y}, scene.Point{X: hi.X, Y: lo.Y}
	if box.turn < 0 {
		a, b = b, a
	}
	for _, p := range []scene.Point{lo, a, hi, b} {
		c.lineTo(p)
	}
	c.gg.NewSubPath()
}
