package draft

import (
	"math"

	"studbay/plan"
	"studbay/render/scene"
)

// Obstacles is what labels must keep clear Of: boxes and lines, found by the cells of a grid
// they lie in. A cell is about as large as a tag, so that few are looked at for one.
type Obstacles struct {
	cell  float64 // the side of a cell; unset before the first Obstacle
	cells map[cell][]int32
	all   []Obstacle
	large []int32 // those over too many cells, looked at each time
}

// cell is a place in the grid.
type cell struct{ x, y int32 }

// mostCells is how many cells an Obstacle may be entered in.
const mostCells = 256

// cellText is the side of a cell in em heights of tags.
const cellText = 3.5

// NewObstacles returns none, for texts of an em height.
func NewObstacles(text float64) Obstacles {
	return Obstacles{cell: cellText * text, cells: map[cell][]int32{}}
}

// Obstacle is a box, or a straight line where IsLine is set.
type Obstacle struct {
	Of     plan.ID
	IsLine bool
	IsText bool
	box    scene.Rect
	a, b   scene.Point
}

func (f *Obstacles) insert(o Obstacle) {
	at := int32(len(f.all))
	f.all = append(f.all, o)
	if from, to := f.span(o.box); !o.IsLine && int(to.x-from.x+1)*int(to.y-from.y+1) > mostCells {
		f.large = append(f.large, at)
		return
	}
	f.over(o, func(c cell) bool {
		f.cells[c] = append(f.cells[c], at)
		return true
	})
}

// span returns the first and last cell that a box reaches into.
func (f *Obstacles) span(box scene.Rect) (from, to cell) {
	return cell{f.index(box.Min.X), f.index(box.Min.Y)}, cell{f.index(box.Max.X), f.index(box.Max.Y)}
}

func (f *Obstacles) index(v float64) int32 { return int32(math.Floor(v / f.cell)) }

// over calls do for each cell that an Obstacle reaches into, from the left, until it
// returns false. Of a line these are the cells along it.
func (f *Obstacles) over(o Obstacle, do func(cell) bool) {
	from, to := f.span(o.box)
	for x := from.x; x <= to.x; x++ {
		low, high := from.y, to.y
		if o.IsLine && from.x != to.x {
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
func (f *Obstacles) rows(o Obstacle, x int32) (low, high int32) {
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

// Block keeps labels off a box.
func (f *Obstacles) Block(box scene.Rect, of plan.ID) {
	if !box.IsEmpty() {
		f.insert(Obstacle{Of: of, box: box})
	}
}

// Text keeps labels off a text.
func (f *Obstacles) Text(box scene.Rect, of plan.ID) {
	if !box.IsEmpty() {
		f.insert(Obstacle{Of: of, IsText: true, box: box})
	}
}

// Line keeps labels off a straight line.
func (f *Obstacles) Line(a, b scene.Point, of plan.ID) { f.insert(lineObstacle(a, b, of)) }

func lineObstacle(a, b scene.Point, of plan.ID) Obstacle {
	return Obstacle{Of: of, IsLine: true, a: a, b: b, box: scene.Rect{
		Min: scene.Point{X: min(a.X, b.X), Y: min(a.Y, b.Y)},
		Max: scene.Point{X: max(a.X, b.X), Y: max(a.Y, b.Y)},
	}}
}

// IsFree reports whether nothing lies in a box.
func (f *Obstacles) IsFree(box scene.Rect) bool {
	return !f.Hits(box, func(*Obstacle) bool { return true })
}

// Hits reports whether an Obstacle that counts lies in a box.
func (f *Obstacles) Hits(box scene.Rect, counts func(*Obstacle) bool) bool {
	return f.any(Obstacle{box: box}, func(o *Obstacle) bool { return o.meets(box) && counts(o) })
}

// Crosses reports whether a line meets a text, or a body of another noun unless only
// texts count.
func (f *Obstacles) Crosses(a, b scene.Point, of plan.ID, onlyTexts bool) bool {
	line := lineObstacle(a, b, of)
	return f.any(line, func(o *Obstacle) bool {
		counts := o.IsText || !onlyTexts && !o.IsLine && o.Of != of
		return counts && line.meets(o.box)
	})
}

// any reports whether an Obstacle near another one meets a test.
func (f *Obstacles) any(near Obstacle, is func(*Obstacle) bool) (found bool) {
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

// meets reports whether the Obstacle has a point inside the box.
func (o *Obstacle) meets(box scene.Rect) bool {
	if !o.IsLine {
		return o.box.Overlaps(box)
	}
	return Clips(o.a, o.b, box)
}

// IsNear reports whether the Obstacle has a point inside a circle.
func (o *Obstacle) IsNear(middle scene.Point, radius float64) bool {
	near := scene.Point{
		X: max(o.box.Min.X, min(middle.X, o.box.Max.X)),
		Y: max(o.box.Min.Y, min(middle.Y, o.box.Max.Y)),
	}
	if d := o.b.Sub(o.a); o.IsLine && d != (scene.Point{}) {
		away := middle.Sub(o.a)
		share := (away.X*d.X + away.Y*d.Y) / (d.X*d.X + d.Y*d.Y)
		near = o.a.Add(d.Mul(max(0, min(1, share))))
	}
	return math.Hypot(near.X-middle.X, near.Y-middle.Y) < radius
}

// Clips reports whether a line has a point inside a box, by cutting it at the box's
// edges (Liang and Barsky, 1984).
func Clips(a, b scene.Point, box scene.Rect) bool {
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

// Avoid keeps labels off the lines, outlines and texts of items.
func (d *Drawing) Avoid(of plan.ID, items ...scene.Item) {
	for _, it := range items {
		switch it := it.(type) {
		case scene.Stroke:
			d.AvoidPath(of, it.Path)
		case scene.Fill:
			d.AvoidPath(of, it.Path)
		case scene.Run:
			d.Obstacles.Text(it.Bounds(), of)
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

// AvoidPath keeps labels off a line, a curve within a hair of a tag.
func (d *Drawing) AvoidPath(of plan.ID, p scene.Path) {
	var first, at scene.Point
	p.Each(func(op scene.Op, points []scene.Point) {
		switch op {
		case scene.MoveOp:
			first, at = points[0], points[0]
		case scene.LineOp:
			d.Obstacles.Line(at, points[0], of)
			at = points[0]
		case scene.CubicOp:
			from := at
			chords := chordsOf(from, points[0], points[1], points[2], 0.06*d.Medium.Text)
			for i := 1; i <= chords; i++ {
				next := cubicAt(from, points[0], points[1], points[2], float64(i)/float64(chords))
				d.Obstacles.Line(at, next, of)
				at = next
			}
		case scene.CloseOp:
			d.Obstacles.Line(at, first, of)
			at = first
		}
	})
}

// cubicAt returns the point of a cubic Bézier curve at t from 0 to 1.
func cubicAt(a, b, c, e scene.Point, t float64) scene.Point {
	u := 1 - t
	return a.Mul(u * u * u).Add(b.Mul(3 * u * u * t)).Add(c.Mul(3 * u * t * t)).Add(e.Mul(t * t * t))
}
