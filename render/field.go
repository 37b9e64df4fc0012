package render

import (
	"github.com/tidwall/rtree"

	"studbay/plan"
	"studbay/render/scene"
)

// field is what labels must keep clear of: boxes and lines, found by place.
type field struct {
	tree rtree.RTreeG[obstacle]
}

// obstacle is a box, or a straight line where isLine is set.
type obstacle struct {
	of     plan.ID
	isLine bool
	isText bool
	box    scene.Rect
	a, b   scene.Point
}

func (f *field) insert(o obstacle) {
	f.tree.Insert([2]float64{o.box.Min.X, o.box.Min.Y}, [2]float64{o.box.Max.X, o.box.Max.Y}, o)
}

// block keeps labels off a box.
func (f *field) block(box scene.Rect, of plan.ID) {
	if !box.IsEmpty() {
		f.insert(obstacle{of: of, box: box})
	}
}

// text keeps labels off a text.
func (f *field) text(box scene.Rect, of plan.ID) {
	if !box.IsEmpty() {
		f.insert(obstacle{of: of, isText: true, box: box})
	}
}

// line keeps labels off a straight line.
func (f *field) line(a, b scene.Point, of plan.ID) {
	box := scene.Rect{
		Min: scene.Point{X: min(a.X, b.X), Y: min(a.Y, b.Y)},
		Max: scene.Point{X: max(a.X, b.X), Y: max(a.Y, b.Y)},
	}
	f.insert(obstacle{of: of, isLine: true, box: box, a: a, b: b})
}

// isFree reports whether nothing lies in a box.
func (f *field) isFree(box scene.Rect) bool { return !f.hits(box, func(obstacle) bool { return true }) }

// hits reports whether an obstacle that counts lies in a box.
func (f *field) hits(box scene.Rect, counts func(obstacle) bool) (hit bool) {
	f.tree.Search([2]float64{box.Min.X, box.Min.Y}, [2]float64{box.Max.X, box.Max.Y},
		func(_, _ [2]float64, o obstacle) bool {
			hit = o.meets(box) && counts(o)
			return !hit
		})
	return hit
}

// crosses reports whether a line meets a text, or a body of another noun unless only
// texts count.
func (f *field) crosses(a, b scene.Point, of plan.ID, onlyTexts bool) (hit bool) {
	line := obstacle{isLine: true, a: a, b: b}
	f.tree.Search(
		[2]float64{min(a.X, b.X), min(a.Y, b.Y)}, [2]float64{max(a.X, b.X), max(a.Y, b.Y)},
		func(_, _ [2]float64, o obstacle) bool {
			counts := o.isText || !onlyTexts && !o.isLine && o.of != of
			hit = counts && line.meets(o.box)
			return !hit
		})
	return hit
}

// meets reports whether the obstacle has a point inside the box.
func (o obstacle) meets(box scene.Rect) bool {
	if !o.isLine {
		return o.box.Overlaps(box)
	}
	return clips(o.a, o.b, box)
}

// clips reports whether a line has a point inside a box, by cutting it at the box's
// edges (Liang and Barsky, 1984).
func clips(a, b scene.Point, box scene.Rect) bool {
	from, to := 0.0, 1.0
	cut := func(p, q float64) bool {
		switch {
		case p == 0:
			return q > 0
		case p < 0:
			from = max(from, q/p)
		default:
			to = min(to, q/p)
		}
		return from < to
	}
	d := b.Sub(a)
	return cut(-d.X, a.X-box.Min.X) && cut(d.X, box.Max.X-a.X) &&
		cut(-d.Y, a.Y-box.Min.Y) && cut(d.Y, box.Max.Y-a.Y)
}

// avoid keeps labels off the lines, outlines and texts of items.
func (d *drawing) avoid(of plan.ID, items ...scene.Item) {
	for _, it := range items {
		switch it := it.(type) {
		case scene.Stroke:
			d.avoidPath(of, it.Path)
		case scene.Fill:
			d.avoidPath(of, it.Path)
		case scene.Run:
			d.field.text(it.Bounds(), of)
		}
	}
}

// chords is how many straight lines stand for one curve.
const chords = 8

func (d *drawing) avoidPath(of plan.ID, p scene.Path) {
	var first, at scene.Point
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			first, at = points[0], points[0]
		case scene.LineOp:
			d.field.line(at, points[0], of)
			at = points[0]
		case scene.CubicOp:
			from := at
			for i := 1; i <= chords; i++ {
				next := cubicAt(from, points[0], points[1], points[2], float64(i)/chords)
				d.field.line(at, next, of)
				at = next
			}
		case scene.CloseOp:
			d.field.line(at, first, of)
			at = first
		}
	})
}

// cubicAt returns the point of a cubic Bézier curve at t from 0 to 1.
func cubicAt(a, b, c, e scene.Point, t float64) scene.Point {
	u := 1 - t
	return a.Mul(u * u * u).Add(b.Mul(3 * u * u * t)).Add(c.Mul(3 * u * t * t)).Add(e.Mul(t * t * t))
}

// holds reports whether the middle of a box lies in the room and no wall cuts it.
func (r *roomDrawing) holds(box scene.Rect) bool {
	if !r.contains(box.Middle()) {
		return false
	}
	for i, a := range r.outline {
		if clips(a, r.outline[(i+1)%len(r.outline)], box) {
			return false
		}
	}
	return true
}

// contains reports whether a point lies in the room's outline, by counting crossings.
func (r *roomDrawing) contains(p scene.Point) (inside bool) {
	for i, a := range r.outline {
		b := r.outline[(i+1)%len(r.outline)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			inside = !inside
		}
	}
	return inside
}
