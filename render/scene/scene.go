// Package scene is the display list: what to draw, settled, with no knowledge of
// plans or of file formats.
//
// Coordinates and sizes are float64 in scene units, x to the right and y down. On a
// sheet a unit is a millimetre of paper; on a board it is a pixel. Colours are
// final: the builder has applied its theme. Floats here are for drawing only;
// nothing in a scene is compared with a limit.
//
// Items are values that nobody writes to once they are in a scene, so several
// painters may read one scene at a time.
package scene

import (
	"image/color"

	"studbay/plan/unit"
)

// Point is a place or, where said, a direction, in scene units: X right, Y down.
type Point struct{ X, Y float64 }

// Add returns p moved by v.
func (p Point) Add(v Point) Point { return Point{p.X + v.X, p.Y + v.Y} }

// Sub returns the vector from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Mul returns the vector p made k times as long.
func (p Point) Mul(k float64) Point { return Point{p.X * k, p.Y * k} }

// Turned returns the vector p turned a quarter clockwise as seen.
func (p Point) Turned() Point { return Point{-p.Y, p.X} }

// MM returns a length in the units of a sheet's scene: millimetres of paper.
func MM(l unit.Length) float64 { return l.Millimetres() }

// PointSize is one typographic point in the units of a sheet's scene: 1/72 in.
const PointSize = 25.4 / 72

// Color is a colour with its opacity, not premultiplied.
type Color = color.NRGBA

// Scene is one page.
type Scene struct {
	Width, Height unit.Length // of the paper
	Paper         Color       // behind everything; the zero value means white
	Items         []Item      // painted in this order, above what is packed
	Meta          Meta
	// Enlarged is how many times as large as its items say the page is painted; 0 and 1 are
	// as they say.
	Enlarged float64

	packed []Kept // by Pack, the first lowest
}

// Meta is what a file says of a page besides its picture.
type Meta struct {
	Title string // of the page, for bookmarks: "Ground floor, openings"
}

// Add puts items above those already in the scene.
func (s *Scene) Add(items ...Item) { s.Items = append(s.Items, items...) }

// Paint puts the whole scene on a painter. It does not close the painter.
func (s *Scene) Paint(p Painter) {
	if s.Enlarged > 0 && s.Enlarged != 1 {
		p = enlarger{p, s.Enlarged}
	}
	for _, part := range s.packed {
		unpack(part.Bytes(), p)
	}
	Paint(p, s.Items...)
}

// Background returns the colour of the paper.
func (s *Scene) Background() Color {
	if s.Paper == (Color{}) {
		return Color{R: 0xff, G: 0xff, B: 0xff, A: 0xff}
	}
	return s.Paper
}

// Painter puts items on a page of one format. It keeps its first error for Close,
// so that drawing code has none to handle.
type Painter interface {
	Stroke(Path, Pen)
	Fill(Path, Color) // by the non-zero rule; open ends are closed
	Text(Run)
	Begin(Layer) // what follows up to the matching End belongs to the layer
	End()
	Close() error
}

// Paint puts items on a painter, the first lowest.
func Paint(p Painter, items ...Item) {
	for _, it := range items {
		it.paint(p)
	}
}

// Item is one thing to paint. The set is closed: its kinds are Painter's methods.
type Item interface {
	paint(Painter)
	// Bounds returns the box of what is painted, pen width and text included. A
	// curve's box may be larger than its ink by reaching to its control points.
	Bounds() Rect
}

// Stroke is a line drawn along a path.
type Stroke struct {
	Path Path
	Pen  Pen
}

// Fill is the inside of a path.
type Fill struct {
	Path  Path
	Color Color
}

// Layer is what a group of items has in common. The zero value is nothing.
type Layer struct {
	Name string // what the items are, such as an opening's tag; painters may write it
	Link string // where a click on the items leads: "#" and a page's title, or a URL
	Clip *Rect  // nothing shows outside of it; nil means no clip
}

// Group is items of one layer. Groups may stand in groups; clips then intersect.
type Group struct {
	Layer Layer
	Items []Item
}

func (s Stroke) paint(p Painter) { p.Stroke(s.Path, s.Pen) }
func (f Fill) paint(p Painter)   { p.Fill(f.Path, f.Color) }
func (r Run) paint(p Painter)    { p.Text(r) }
func (g Group) paint(p Painter) {
	p.Begin(g.Layer)
	Paint(p, g.Items...)
	p.End()
}

// Bounds implements Item.
func (s Stroke) Bounds() Rect { return s.Path.Bounds().Expanded(s.Pen.reach()) }

// Bounds implements Item.
func (f Fill) Bounds() Rect { return f.Path.Bounds() }

// Bounds implements Item.
func (g Group) Bounds() Rect {
	all := Bounds(g.Items...)
	if g.Layer.Clip != nil {
		return all.Intersect(*g.Layer.Clip)
	}
	return all
}

// Bounds returns the box of all items, empty if there are none.
func Bounds(items ...Item) (all Rect) {
	for _, it := range items {
		all = all.Union(it.Bounds())
	}
	return all
}
