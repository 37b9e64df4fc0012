package render

import (
	"math"

	"studbay/plan"
	"studbay/render/scene"
)

// field is what labels must keep clear of: boxes and lines, found by the cells of a grid
// they lie in. A cell is about as large as a tag, so that few are looked at for one.
type field struct {
	cell  float64 // the side of a cell; unset before the first obstacle
	cells map[cell][]int32
	all   []obstacle
	large []int32 // those over too many cells, looked at each time
}

// cell is a place in the grid.
type cell struct{ x, y int32 }

// mostCells is how many cells an obstacle may be entered in.
const mostCells = 256

// cellText is the side of a cell in em heights of tags.
const cellText = 3.5

func newField(text float64) field {
	return field{cell: cellText * text, cells: map[cell][]int32{}}
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
	at := int32(len(f.all))
	f.all = append(f.all, o)
	if from, to := f.span(o.box); !o.isLine && int(to.x-from.x+1)*int(to.y-from.y+1) > mostCells {
		f.large = append(f.large, at)
		return
	}
	f.over(o, func(c cell) bool {
		f.cells[c] = append(f.cells[c], at)
		return true
	})
}

// span returns the first and last cell that a box reaches into.
func (f *field) span(box scene.Rect) (from, to cell) {
	return cell{f.index(box.Min.X), f.index(box.Min.Y)}, cell{f.index(box.Max.X), f.index(box.Max.Y)}
}

func (f *field) index(v float64) int32 { return int32(math.Floor(v / f.cell)) }

// over calls do for each cell that an obstacle reaches into, from the left, until it
// returns false. Of a line these are the cells along it.
func (f *field) over(o obstacle, do func(cell) bool) {
	from, to := f.span(o.box)
	for x := from.x; x <= to.x; x++ {
		low, high := from.y, to.y
		if o.isLine && from.x != to.x {
			low, high = f.rows(o, x)
		}
		for y := low; y <= high; y++ {
			if !do(cell{x, y}) {
				return
			}
		}
	}
}

// rows returns the first and last row that a line reaches into in a column.
func (f *field) rows(o obstacle, x int32) (low, high int32) {
	a, b := o.a, o.b
	if b.X < a.X {
		a, b = b, a
	}
	at := func(x float64) float64 {
		share := max(0, min(1, (x-a.X)/(b.X-a.X)))
		return a.Y + share*(b.Y-a.Y)
	}
	p, q := at(float64(x)*f.cell), at(float64(x+1)*f.cell)
	hair := f.cell * 1e-6
	return f.index(min(p, q) - hair), f.index(max(p, q) + hair)
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
func (f *field) line(a, b scene.Point, of plan.ID) { f.insert(lineObstacle(a, b, of)) }

func lineObstacle(a, b scene.Point, of plan.ID) obstacle {
	return obstacle{of: of, isLine: true, a: a, b: b, box: scene.Rect{
		Min: scene.Point{X: min(a.X, b.X), Y: min(a.Y, b.Y)},
		Max: scene.Point{X: max(a.X, b.X), Y: max(a.Y, b.Y)},
	}}
}

// isFree reports whether nothing lies in a box.
func (f *field) isFree(box scene.Rect) bool {
	return !f.hits(box, func(*obstacle) bool { return true })
}

// hits reports whether an obstacle that counts lies in a box.
func (f *field) hits(box scene.Rect, counts func(*obstacle) bool) bool {
	return f.any(obstacle{box: box}, func(o *obstacle) bool { return o.meets(box) && counts(o) })
}

// crosses reports whether a line meets a text, or a body of another noun unless only
// texts count.
func (f *field) crosses(a, b scene.Point, of plan.ID, onlyTexts bool) bool {
	line := lineObstacle(a, b, of)
	return f.any(line, func(o *obstacle) bool {
		counts := o.isText || !onlyTexts && !o.isLine && o.of != of
		return counts && line.meets(o.box)
	})
}

// any reports whether an obstacle near another one meets a test.
func (f *field) any(near obstacle, is func(*obstacle) bool) (found bool) {
	for _, i := range f.large {
		if is(&f.all[i]) {
			return true
		}
	}
	f.over(near, func(c cell) bool {
		for _, i := range f.cells[c] {
			if is(&f.all[i]) {
				found = true
				return false
			}
		}
		return true
	})
	return found
}

// meets reports whether the obstacle has a point inside the box.
func (o *obstacle) meets(box scene.Rect) bool {
	if !o.isLine {
		return o.box.Overlaps(box)
	}
	return clips(o.a, o.b, box)
}

// isNear reports whether the obstacle has a point inside a circle.
func (o *obstacle) isNear(middle scene.Point, radius float64) bool {
	near := scene.Point{
		X: max(o.box.Min.X, min(middle.X, o.box.Max.X)),
		Y: max(o.box.Min.Y, min(middle.Y, o.box.Max.Y)),
	}
	if d := o.b.Sub(o.a); o.isLine && d != (scene.Point{}) {
		away := middle.Sub(o.a)
		share := (away.X*d.X + away.Y*d.Y) / (d.X*d.X + d.Y*d.Y)
		near = o.a.Add(d.Mul(max(0, min(1, share))))
	}
	return math.Hypot(near.X-middle.X, near.Y-middle.Y) < radius
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

// chordsOf returns how many straight lines stand for a cubic Bézier curve so that none
// is farther from it than a length: its second derivative, at most six times the
// greater second difference of its points, over eight times the square of their number.
func chordsOf(a, b, c, e scene.Point, off float64) int {
	bend := func(p, q, r scene.Point) float64 { return math.Hypot(p.X-2*q.X+r.X, p.Y-2*q.Y+r.Y) }
	most := 6 * max(bend(a, b, c), bend(b, c, e))
	return max(4, min(mostChords, int(math.Ceil(math.Sqrt(most/(8*off))))))
}

const mostChords = 200

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
			chords := chordsOf(from, points[0], points[1], points[2], 0.06*d.m.Text)
			for i := 1; i <= chords; i++ {
				next := cubicAt(from, points[0], points[1], points[2], float64(i)/float64(chords))
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

// holds reports whether the middle of a box lies in the room, no wall cuts it and the
// window shows it.
func (r *roomDrawing) holds(box scene.Rect) bool {
	if !r.contains(box.Middle()) || !(Medium{Window: r.window}).shows(box) {
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
