package geom

import (
	"cmp"
	"maps"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/plan/unit"
)

// skyline is a room of upright and level walls: a floor, and above it columns a foot wide
// that each begin at a height of their own. It is clockwise, and plain.
func skyline(r *rand.Rand, columns, height int) (p Polygon) {
	add := func(x, y int) {
		q := Point{unit.Length(x) * unit.Foot, unit.Length(y) * unit.Foot}
		if n := len(p); n > 1 && (p[n-1].Y == q.Y && p[n-2].Y == q.Y) {
			p = p[:n-1]
		}
		p = append(p, q)
	}
	last := -1
	for x := range columns {
		top := r.IntN(height)
		if top != last {
			add(x, top)
		}
		add(x+1, top)
		last = top
	}
	add(columns, height)
	add(0, height)
	return p
}

// cellsOf lists the centres of the square feet of a polygon on a grid of whole feet.
func cellsOf(p Polygon) map[Point]bool {
	cells, b := map[Point]bool{}, p.Box()
	for x := b.Min.X + unit.Foot/2; x < b.Max.X; x += unit.Foot {
		for y := b.Min.Y + unit.Foot/2; y < b.Max.Y; y += unit.Foot {
			if slowContains(p, Point{x, y}) {
				cells[Point{x, y}] = true
			}
		}
	}
	return cells
}

// TestOverlapsAgreeWithSquareFeet: two rooms on a grid share an area where they share a
// square foot.
func TestOverlapsAgreeWithSquareFeet(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	seen := map[bool]int{}
	for range 1500 {
		p, q := skyline(r, 1+r.IntN(5), 1+r.IntN(4)), skyline(r, 1+r.IntN(5), 1+r.IntN(4))
		q = q.Turned(r.IntN(4)).Moved(Point{unit.Length(r.IntN(11)-5) * unit.Foot, unit.Length(r.IntN(11)-5) * unit.Foot})
		want, of := false, cellsOf(q)
		for c := range cellsOf(p) {
			want = want || of[c]
		}
		seen[want]++
		if got := p.Overlaps(q, 0); got != want || q.Overlaps(p, 0) != want {
			t.Fatalf("%v and %v overlap: %v, want %v", p, q, got, want)
		}
	}
	if seen[true] < 100 || seen[false] < 100 {
		t.Errorf("overlapping and not: %v", seen)
	}
}

// TestOverlapsDeeperThanATolerance: two strips of the same breadth, the second so far within
// the first, level, upright and aslant.
func TestOverlapsDeeperThanATolerance(t *testing.T) {
	const m = unit.Metre
	for _, along := range []Point{{m, 0}, {0, m}, {-m, 0}, {3 * m, 4 * m}} {
		f := FrameOf(Segment{Point{}, along})
		for _, deep := range []unit.Length{unit.Millimetre, 20 * unit.Millimetre} {
			p, q := f.Rectangle(2*m, m), f.Moved(2*m-deep, 0).Rectangle(2*m, m)
			for tolerance, want := range map[unit.Length]bool{0: true, deep - 3: true, deep + 3: false, 2 * deep: false} {
				if p.Overlaps(q, tolerance) != want || q.Overlaps(p, tolerance) != want {
					t.Errorf("%v, %d deep: want %v beyond %d", along, deep, want, tolerance)
				}
			}
			if along.X == 0 || along.Y == 0 {
				if p.Overlaps(q, deep) || !p.Overlaps(q, deep-1) {
					t.Errorf("%v: exactly %d deep is not deeper", along, deep)
				}
			}
		}
	}
}

// slowClear reports whether a straight line stays in a polygon: so does the middle of each
// piece between the edges that it meets.
func slowClear(p Polygon, a, b Point) bool {
	line := Segment{a, b}
	shares := []*big.Rat{new(big.Rat), one}
	for _, e := range p.Edges() {
		if of, ofEdge, parallel := slowShares(line, e); !parallel && isShare(of) && isShare(ofEdge) {
			shares = append(shares, of)
		}
		for _, end := range []Point{e.A, e.B} {
			if d := bigDot(line.Vector(), line.Vector()); d.Sign() > 0 && slowOn(end, line) {
				shares = append(shares, new(big.Rat).SetFrac(bigDot(end.Sub(a), line.Vector()), d))
			}
		}
	}
	slices.SortFunc(shares, (*big.Rat).Cmp)
	for i := range shares[1:] {
		middle, _ := new(big.Rat).Add(shares[i], shares[i+1]).Float64()
		v := line.Vector()
		q := a.Add(Point{unit.Length(float64(v.X) * middle / 2), unit.Length(float64(v.Y) * middle / 2)})
		if shares[i].Cmp(shares[i+1]) < 0 && !slowContains(p, q) {
			return false
		}
	}
	return true
}

// TestWaysAgreeWithAllWays: the shortest way goes from corner to corner; a table of all pairs
// that see each other, closed step by step (Floyd and Warshall), has its length.
func TestWaysAgreeWithAllWays(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 40 {
		p := skyline(r, 3+r.IntN(4), 3+r.IntN(3)).Turned(r.IntN(4))
		cells := slices.SortedFunc(maps.Keys(cellsOf(p)), func(a, b Point) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
		nodes := append(Polygon{cells[r.IntN(len(cells))], cells[r.IntN(len(cells))]}, p...)
		if r.IntN(2) == 0 {
			nodes[0] = p.Edge(r.IntN(len(p))).At(unit.Foot / 3)
		}
		far := make([][]unit.Length, len(nodes))
		for i := range nodes {
			far[i] = make([]unit.Length, len(nodes))
			for j := range nodes {
				if far[i][j] = 1 << 50; slowClear(p, nodes[i], nodes[j]) {
					far[i][j] = nodes[i].Distance(nodes[j])
				}
			}
		}
		for k := range nodes {
			for i := range nodes {
				for j := range nodes {
					far[i][j] = min(far[i][j], far[i][k]+far[k][j])
				}
			}
		}
		ways := p.WaysFrom(nodes[0])
		for i, to := range nodes {
			if got, ok := ways.To(to); !ok || (got-far[0][i]).Abs() > 4 {
				t.Fatalf("in %v from %v to %v: %v, %v, want %v", p, nodes[0], to, got, ok, far[0][i])
			}
		}
	}
}
