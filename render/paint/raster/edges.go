package raster

import (
	"image"

	"studbay/render/scene"
)

// The size of a tile, in pixels. As many of them as a word has bits lie in 1024 columns.
const (
	TileWidth  = 16
	TileHeight = 8
)

// Edges says in which tiles of a part a row may differ from the one above it, so that
// the others need not be looked at: within a shape all is alike, as it is outside. It
// may be used again for another part.
type Edges struct {
	words int // of a row of tiles
	tiles []uint64
}

// Row returns the tiles in the row of them that a row of pixels lies in: a bit each, the
// leftmost the lowest of the first word. Do not write to it. Two neighbouring pixels of
// a column differ only if either's tile is among them.
func (e *Edges) Row(y int) []uint64 {
	at := y / TileHeight * e.words
	return e.tiles[at : at+e.words]
}

// Edges sets e to the edges of what Draw draws on an image of a size, all of one colour.
func (d *Drawing) Edges(e *Edges, from, size image.Point) {
	e.reset(size)
	window := image.Rectangle{Min: from, Max: from.Add(size)}
	for i := range d.ops {
		if o := &d.ops[i]; o.box.Overlaps(window) {
			o.edges(func(r image.Rectangle) { e.mark(r.Intersect(o.box).Intersect(window).Sub(from)) })
		}
	}
}

func (e *Edges) reset(size image.Point) {
	e.words = (size.X + 64*TileWidth - 1) / (64 * TileWidth)
	need := e.words * ((size.Y + TileHeight - 1) / TileHeight)
	if cap(e.tiles) < need {
		e.tiles = make([]uint64, need)
	}
	e.tiles = e.tiles[:need]
	clear(e.tiles)
}

// mark adds the tiles that touch a rectangle.
func (e *Edges) mark(r image.Rectangle) {
	if r.Empty() {
		return
	}
	first, last := r.Min.X/TileWidth, (r.Max.X-1)/TileWidth
	for y := r.Min.Y / TileHeight; y <= (r.Max.Y-1)/TileHeight; y++ {
		row := e.tiles[y*e.words : (y+1)*e.words]
		for i := first / 64; i <= last/64; i++ {
			row[i] |= run(first-64*i, last-64*i)
		}
	}
}

// run returns a word with the bits from one to another, as far as it has them.
func run(first, last int) uint64 {
	return ^uint64(0) << max(first, 0) & (^uint64(0) >> max(63-last, 0))
}

// edges calls add with rectangles that the edges of the op lie in, but for upright ones
// of its clip.
func (o *op) edges(add func(image.Rectangle)) {
	switch {
	case len(o.letters) > 0:
		for _, l := range o.letters {
			add(l.box.Add(l.at))
		}
	case o.run != nil:
		add(o.box)
	default:
		width := 0.0
		if o.pen != nil {
			width = o.pen.Width // the corner of a square end is nearer
		}
		for _, l := range o.lines {
			last := l.points[len(l.points)-1]
			for _, p := range l.points {
				add(pixelsOver(around(last, p).Expanded(width)))
				last = p
			}
		}
	}
	if o.clip != everything {
		top, bottom := o.box, o.box
		top.Max.Y, bottom.Min.Y = o.box.Min.Y+1, o.box.Max.Y-1
		add(top)
		add(bottom)
	}
}

// around returns the rectangle about two points.
func around(a, b scene.Point) scene.Rect {
	return scene.Rect{
		Min: scene.Point{X: min(a.X, b.X), Y: min(a.Y, b.Y)},
		Max: scene.Point{X: max(a.X, b.X), Y: max(a.Y, b.Y)},
	}
}
