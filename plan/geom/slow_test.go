package geom

import (
	"math/big"

	"pgregory.net/rapid"

	"studbay/plan/unit"
)

// The slow, obvious versions: each test of the package done again with numbers of any
// size, by solving for the place where two lines meet.

func bigCross(u, v Point) *big.Int {
	a := new(big.Int).Mul(big.NewInt(int64(u.X)), big.NewInt(int64(v.Y)))
	return a.Sub(a, new(big.Int).Mul(big.NewInt(int64(u.Y)), big.NewInt(int64(v.X))))
}

func bigDot(u, v Point) *big.Int {
	a := new(big.Int).Mul(big.NewInt(int64(u.X)), big.NewInt(int64(v.X)))
	return a.Add(a, new(big.Int).Mul(big.NewInt(int64(u.Y)), big.NewInt(int64(v.Y))))
}

var one = big.NewRat(1, 1)

func isShare(r *big.Rat) bool { return r.Sign() >= 0 && r.Cmp(one) <= 0 }

// slowShares returns the shares of s and t at which their lines meet; parallel is true
// where they do not meet in one point.
func slowShares(s, t Segment) (ofS, ofT *big.Rat, parallel bool) {
	between := t.A.Sub(s.A)
	across := bigCross(s.Vector(), t.Vector())
	if across.Sign() == 0 {
		return nil, nil, true
	}
	return new(big.Rat).SetFrac(bigCross(between, t.Vector()), across),
		new(big.Rat).SetFrac(bigCross(between, s.Vector()), across), false
}

func slowOn(p Point, s Segment) bool {
	v, d := p.Sub(s.A), s.Vector()
	if bigDot(d, d).Sign() == 0 {
		return p == s.A
	}
	return bigCross(d, v).Sign() == 0 && isShare(new(big.Rat).SetFrac(bigDot(v, d), bigDot(d, d)))
}

func slowIntersects(s, t Segment) bool {
	ofS, ofT, parallel := slowShares(s, t)
	if !parallel {
		return isShare(ofS) && isShare(ofT)
	}
	return slowOn(s.A, t) || slowOn(s.B, t) || slowOn(t.A, s) || slowOn(t.B, s)
}

func slowCrosses(s, t Segment) bool {
	ofS, ofT, parallel := slowShares(s, t)
	inner := func(r *big.Rat) bool { return r.Sign() > 0 && r.Cmp(one) < 0 }
	return !parallel && inner(ofS) && inner(ofT)
}

// slowContains counts the edges met by a ray to the right that starts a little below
// q, so little that no corner lies between and no edge is passed.
func slowContains(p Polygon, q Point) bool {
	for i := range p {
		if slowOn(q, p.Edge(i)) {
			return true
		}
	}
	const share = 1 << 20 // little enough for sides up to some hundred nanometres
	inside := false
	for i := range p {
		a, b := p.Edge(i).A.Sub(q), p.Edge(i).B.Sub(q)
		row := big.NewRat(1, share)
		if a.Y == b.Y || (a.Y <= 0) == (b.Y <= 0) {
			continue
		}
		// x = a.X + (row - a.Y) × (b.X - a.X) / (b.Y - a.Y)
		x := row.Sub(row, new(big.Rat).SetInt64(int64(a.Y)))
		x.Mul(x, big.NewRat(int64(b.X-a.X), int64(b.Y-a.Y)))
		x.Add(x, new(big.Rat).SetInt64(int64(a.X)))
		if x.Sign() > 0 {
			inside = !inside
		}
	}
	return inside
}

// slowCheck looks at every pair of everything.
func slowCheck(p Polygon) *PolygonError {
	if len(p) < 3 {
		return &PolygonError{TooFewCorners, -1, -1}
	}
	for i := range p {
		if p[i] == p[(i+1)%len(p)] {
			return &PolygonError{ZeroEdge, i, -1}
		}
	}
	for i := range p {
		for j := i + 1; j < len(p); j++ {
			if p[i] == p[j] {
				return &PolygonError{RepeatedCorner, i, j}
			}
		}
	}
	for i := range p {
		for j := i + 1; j < len(p); j++ {
			if slowMeet(p.Edge(i), p.Edge(j)) {
				return &PolygonError{EdgesMeet, i, j}
			}
		}
	}
	return nil
}

func slowMeet(e, f Segment) bool {
	switch {
	case e.B == f.A:
		return slowOn(f.B, e) || slowOn(e.A, f)
	case f.B == e.A:
		return slowOn(e.B, f) || slowOn(f.A, e)
	}
	return slowIntersects(e, f)
}

// coordinates draws small ones, so that points often fall together and in line, and
// ones as far out as Reach.
func coordinates() *rapid.Generator[unit.Length] {
	toLength := func(n int64) unit.Length { return unit.Length(n) }
	return rapid.OneOf(
		rapid.Map(rapid.Int64Range(-4, 4), toLength),
		rapid.Map(rapid.Int64Range(-int64(Reach), int64(Reach)), toLength),
		rapid.SampledFrom([]unit.Length{Reach, -Reach, Reach - 1, 1 - Reach}),
	)
}

func points() *rapid.Generator[Point] {
	return rapid.Custom(func(t *rapid.T) Point {
		return Point{coordinates().Draw(t, "x"), coordinates().Draw(t, "y")}
	})
}

func segments() *rapid.Generator[Segment] {
	return rapid.Custom(func(t *rapid.T) Segment {
		return Segment{points().Draw(t, "a"), points().Draw(t, "b")}
	})
}

// near draws a point on the line of s or a step beside it, the worst case for floats.
func near(s Segment) *rapid.Generator[Point] {
	return rapid.Custom(func(t *rapid.T) Point {
		n := rapid.Int64Range(1, 64).Draw(t, "parts")
		k := rapid.Int64Range(0, n).Draw(t, "part")
		d := s.Vector()
		p := s.A.Add(Point{d.X / unit.Length(n) * unit.Length(k), d.Y / unit.Length(n) * unit.Length(k)})
		step := rapid.Int64Range(-1, 1)
		return p.Add(Point{unit.Length(step.Draw(t, "dx")), unit.Length(step.Draw(t, "dy"))})
	})
}
