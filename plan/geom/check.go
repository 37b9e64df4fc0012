package geom

import (
	"cmp"
	"fmt"
	"slices"
)

// MaxCorners is the most corners Check accepts. No room comes near; it bounds the time
// a hostile file can take, as that grows with the square where all edges lie close.
const MaxCorners = 2_000

// Flaw is a way in which corners fail to be the outline of one plain area.
type Flaw int

// The flaws, in the order Check looks for them.
const (
	TooFewCorners  Flaw = iota + 1 // fewer than three
	TooManyCorners                 // more than MaxCorners
	OutOfReach                     // corner I lies beyond Reach
	ZeroEdge                       // edge I joins two equal corners
	RepeatedCorner                 // corners I and J are equal
	EdgesMeet                      // edges I and J cross, touch or overlap, not counting the corner neighbours share
)

// PolygonError says which corners or edges of a polygon are wrong, counted from 0.
// Edge i runs from corner i to the next.
type PolygonError struct {
	Flaw Flaw
	I, J int // corners or edges, as the flaw says, I before J; -1 where it has none
}

// Error counts corners and edges from 1, as people do.
func (e *PolygonError) Error() string {
	switch e.Flaw {
	case TooFewCorners:
		return "fewer than three corners"
	case TooManyCorners:
		return fmt.Sprintf("more than %d corners", MaxCorners)
	case OutOfReach:
		return fmt.Sprintf("corner %d lies too far out", e.I+1)
	case ZeroEdge:
		return fmt.Sprintf("edge %d has no length", e.I+1)
	case RepeatedCorner:
		return fmt.Sprintf("corners %d and %d are the same point", e.I+1, e.J+1)
	case EdgesMeet:
		return fmt.Sprintf("edges %d and %d cross or touch", e.I+1, e.J+1)
	}
	panic(fmt.Sprintf("geom: no such flaw: %d", e.Flaw))
}

// Check returns nil where p is a simple polygon: at least three different corners
// within Reach, and edges that meet only where neighbours share a corner. Corners in
// line are fine. Otherwise it returns a *PolygonError with the first flaw found, the
// least I and then J. It is exact. It asks for no direction.
func (p Polygon) Check() error {
	if len(p) < 3 {
		return &PolygonError{TooFewCorners, -1, -1}
	}
	if len(p) > MaxCorners {
		return &PolygonError{TooManyCorners, -1, -1}
	}
	for _, look := range []func() *PolygonError{p.outOfReach, p.zeroEdge, p.repeated, p.edgesMeet} {
		if found := look(); found != nil {
			return found
		}
	}
	return nil
}

func (p Polygon) outOfReach() *PolygonError {
	for i, q := range p {
		if !q.WithinReach() {
			return &PolygonError{OutOfReach, i, -1}
		}
	}
	return nil
}

func (p Polygon) zeroEdge() *PolygonError {
	for i := range p {
		if e := p.Edge(i); e.A == e.B {
			return &PolygonError{ZeroEdge, i, -1}
		}
	}
	return nil
}

func (p Polygon) repeated() *PolygonError {
	last := make(map[Point]int, len(p))
	for j := len(p) - 1; j >= 0; j-- { // backwards, so that the map holds the next one
		if _, ok := last[p[j]]; ok {
			return p.leastRepeated()
		}
		last[p[j]] = j
	}
	return nil
}

func (p Polygon) leastRepeated() *PolygonError {
	for i := range p {
		if j := slices.Index(p[i+1:], p[i]); j >= 0 {
			return &PolygonError{RepeatedCorner, i, i + 1 + j}
		}
	}
	return nil
}

// edgesMeet sweeps the edges from left to right and compares those that overlap in X.
func (p Polygon) edgesMeet() *PolygonError {
	edges, order := p.Edges(), make([]int, len(p))
	boxes := make([]Box, len(p))
	for i, e := range edges {
		order[i], boxes[i] = i, e.Box()
	}
	slices.SortFunc(order, func(i, j int) int { return cmp.Compare(boxes[i].Min.X, boxes[j].Min.X) })
	var found *PolygonError
	for at, i := range order {
		for _, j := range order[at+1:] {
			if boxes[j].Min.X > boxes[i].Max.X {
				break
			}
			a, b := min(i, j), max(i, j)
			if found.isAfter(a, b) && boxes[a].Intersects(boxes[b]) && p.meet(a, b) {
				found = &PolygonError{EdgesMeet, a, b}
			}
		}
	}
	return found
}

// isAfter reports whether the pair would be told before e; always where e is nil.
func (e *PolygonError) isAfter(i, j int) bool {
	return e == nil || i < e.I || i == e.I && j < e.J
}

// meet reports whether edges i < j share more than the corner of neighbours.
func (p Polygon) meet(i, j int) bool {
	e, f := p.Edge(i), p.Edge(j)
	switch {
	case j == i+1:
		return foldsBack(e, f)
	case i == 0 && j == len(p)-1:
		return foldsBack(f, e)
	}
	return e.Intersects(f)
}

// foldsBack reports whether f, which starts where e ends, runs back over it.
func foldsBack(e, f Segment) bool {
	return Orientation(e.A, e.B, f.B) == 0 && dot(e.Vector(), f.Vector()).Sign() < 0
}
