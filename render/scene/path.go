package scene

import "math"

// Op is one command of a Path.
type Op uint8

// The commands of a path; each uses as many points as its comment says.
const (
	MoveOp  Op = iota // one: begin a new part
	LineOp            // one
	CubicOp           // three: control, control, end
	CloseOp           // none: straight back to the beginning of the part
)

var opPoints = [...]int{MoveOp: 1, LineOp: 1, CubicOp: 3, CloseOp: 0}

// Path is lines and curves in scene units. The zero value is empty and ready for
// use. Copies share what was drawn: finish a path before it goes into an item.
type Path struct {
	ops    []Op
	points []Point
}

// IsEmpty reports whether nothing was drawn.
func (p Path) IsEmpty() bool { return len(p.ops) == 0 }

// MoveTo begins a new part of the path at a point.
func (p *Path) MoveTo(to Point) *Path { return p.add(MoveOp, to) }

// LineTo draws straight from the last point.
func (p *Path) LineTo(to Point) *Path { return p.add(LineOp, to) }

// CubicTo draws a cubic Bézier curve from the last point.
func (p *Path) CubicTo(c1, c2, to Point) *Path { return p.add(CubicOp, c1, c2, to) }

// QuadTo draws a quadratic Bézier curve from the last point, kept as a cubic.
func (p *Path) QuadTo(c, to Point) *Path {
	from := p.points[len(p.points)-1]
	c1 := from.Add(c.Sub(from).Mul(2.0 / 3))
	c2 := to.Add(c.Sub(to).Mul(2.0 / 3))
	return p.CubicTo(c1, c2, to)
}

// Close draws straight back to where the part began.
func (p *Path) Close() *Path { return p.add(CloseOp) }

func (p *Path) add(op Op, points ...Point) *Path {
	if len(p.ops) == 0 && op != MoveOp {
		panic("scene: a path begins with MoveTo")
	}
	p.ops = append(p.ops, op)
	p.points = append(p.points, points...)
	return p
}

// ArcTo draws part of a circle about a middle. Angles are in degrees, clockwise as
// seen, 0 to the right; a negative sweep runs the other way. The arc begins with a
// straight line from the last point, or a MoveTo in an empty path. Each quarter is
// one cubic, off a true circle by at most 0.03 % of the radius.
func (p *Path) ArcTo(middle Point, radius, start, sweep float64) *Path {
	at := func(a float64) (onCircle, tangent Point) {
		sin, cos := math.Sincos(a * math.Pi / 180)
		return middle.Add(Point{cos, sin}.Mul(radius)), Point{-sin, cos}.Mul(radius)
	}
	from, along := at(start)
	if p.IsEmpty() {
		p.MoveTo(from)
	} else {
		p.LineTo(from)
	}
	n := int(math.Ceil(math.Abs(sweep)/90 - 1e-9))
	for i := range n {
		step := sweep / float64(n)
		k := 4.0 / 3 * math.Tan(step*math.Pi/180/4)
		to, next := at(start + step*float64(i+1))
		p.CubicTo(from.Add(along.Mul(k)), to.Sub(next.Mul(k)), to)
		from, along = to, next
	}
	return p
}

// Append adds all parts of q after those of p.
func (p *Path) Append(q Path) *Path {
	p.ops = append(p.ops, q.ops...)
	p.points = append(p.points, q.points...)
	return p
}

// Each calls f for every command in order with the points it uses, which f must
// not keep or write to.
func (p Path) Each(f func(op Op, points []Point)) {
	rest := p.points
	for _, op := range p.ops {
		n := opPoints[op]
		f(op, rest[:n])
		rest = rest[n:]
	}
}

// Bounds returns the box of all points, control points included. The box of a
// straight line along an axis has no width and so is empty by IsEmpty.
func (p Path) Bounds() Rect {
	if len(p.points) == 0 {
		return Rect{}
	}
	r := Rect{p.points[0], p.points[0]}
	for _, q := range p.points[1:] {
		r.Min = Point{min(r.Min.X, q.X), min(r.Min.Y, q.Y)}
		r.Max = Point{max(r.Max.X, q.X), max(r.Max.Y, q.Y)}
	}
	return r
}

// Placed returns the path under a transform.
func (p Path) Placed(t Transform) Path {
	out := Path{ops: p.ops, points: make([]Point, len(p.points))}
	for i, q := range p.points {
		out.points[i] = t.Apply(q)
	}
	return out
}

// Transform takes (1, 0) to X, (0, 1) to Y and the origin to At.
type Transform struct{ X, Y, At Point }

// Apply returns where t takes p.
func (t Transform) Apply(p Point) Point {
	return Point{t.X.X*p.X + t.Y.X*p.Y + t.At.X, t.X.Y*p.X + t.Y.Y*p.Y + t.At.Y}
}

// Scaling returns the transform that makes everything k times as large and then
// moves the origin to at.
func Scaling(k float64, at Point) Transform {
	return Transform{Point{k, 0}, Point{0, k}, at}
}

// Turning returns the transform that turns about the origin, in degrees clockwise
// as seen, and then moves the origin to at.
func Turning(degrees float64, at Point) Transform {
	x := Direction(degrees)
	return Transform{x, x.Turned(), at}
}

// Direction returns the vector of length one at an angle in degrees, clockwise as
// seen, 0 to the right. Quarter turns are exact.
func Direction(degrees float64) Point {
	switch math.Mod(math.Mod(degrees, 360)+360, 360) {
	case 0:
		return Point{1, 0}
	case 90:
		return Point{0, 1}
	case 180:
		return Point{-1, 0}
	case 270:
		return Point{0, -1}
	}
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return Point{cos, sin}
}
