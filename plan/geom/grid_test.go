package geom

import (
	"slices"
	"testing"

	"studbay/plan/unit"
)

// onGrid yields all points of a small grid.
func onGrid(n unit.Length) (all []Point) {
	for x := range n {
		for y := range n {
			all = append(all, Point{x, y})
		}
	}
	return all
}

// within lists the points of a box by looking at each of the grid.
func within(b Box, n unit.Length) (all []Point) {
	for _, p := range onGrid(n) {
		if p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y {
			all = append(all, p)
		}
	}
	return all
}

// Every two boxes of a grid of 4 by 4 share a point, or hold one another, where a look at
// each point says so.
func TestBoxesOnAGrid(t *testing.T) {
	const n = 4
	var boxes []Box
	for _, a := range onGrid(n) {
		for _, b := range onGrid(n) {
			if a.X <= b.X && a.Y <= b.Y {
				boxes = append(boxes, Box{a, b})
			}
		}
	}
	for _, b := range boxes {
		own := within(b, n)
		for _, p := range onGrid(n) {
			if got, want := b.Contains(p), slices.Contains(own, p); got != want {
				t.Errorf("%v contains %v: %v", b, p, got)
			}
		}
		for _, c := range boxes {
			other := within(c, n)
			shared := slices.ContainsFunc(other, func(p Point) bool { return slices.Contains(own, p) })
			all := !slices.ContainsFunc(other, func(p Point) bool { return !slices.Contains(own, p) })
			if b.Intersects(c) != shared || b.ContainsBox(c) != all {
				t.Fatalf("%v and %v: share %v, holds %v; want %v and %v", b, c, b.Intersects(c), b.ContainsBox(c), shared, all)
			}
		}
	}
}

// Every two segments of a grid of 3 by 3, those without length too, meet and cross where
// the slow way finds it.
func TestSegmentsOnAGrid(t *testing.T) {
	var all []Segment
	for _, a := range onGrid(3) {
		for _, b := range onGrid(3) {
			all = append(all, Segment{a, b})
		}
	}
	for _, s := range all {
		for _, u := range all {
			if got, want := s.Intersects(u), slowIntersects(s, u); got != want {
				t.Fatalf("%v and %v meet: %v, want %v", s, u, got, want)
			}
			if got, want := s.Crosses(u), slowCrosses(s, u); got != want {
				t.Fatalf("%v and %v cross: %v, want %v", s, u, got, want)
			}
		}
		for _, p := range onGrid(3) {
			if got, want := OnSegment(p, s.A, s.B), slowOn(p, s); got != want {
				t.Fatalf("%v is on %v: %v, want %v", p, s, got, want)
			}
		}
	}
}

// Along an axis places and feet are exact whichever way it runs; behind the ends the line
// goes on.
func TestAlongTheAxes(t *testing.T) {
	for _, way := range []Point{{1, 0}, {-1, 0}, {0, 1}, {0, -1}} {
		s := Segment{Point{7, 3}, Point{7 + 10*way.X, 3 + 10*way.Y}}
		right := way.Turned(1)
		for along := unit.Length(-4); along <= 14; along++ {
			foot := Point{7 + along*way.X, 3 + along*way.Y}
			if got := s.At(along); got != foot {
				t.Errorf("%d along %v is %v, want %v", along, s, got, foot)
			}
			for off := unit.Length(-3); off <= 3; off++ {
				p := foot.Add(Point{off * right.X, off * right.Y})
				if a, o := s.Project(p); a != along || o != off {
					t.Errorf("%v is %d along and %d off %v, want %d and %d", p, a, o, s, along, off)
				}
				if along < 0 || along > 10 {
					continue
				}
				if a, away := s.Nearest(p); a != along || away != off.Abs() {
					t.Errorf("%v is nearest to %v at %d, %d away", p, s, a, away)
				}
			}
		}
	}
	// past its ends, 3 along and 4 aside are 5
	s := Segment{Point{0, 0}, Point{10, 0}}
	for p, want := range map[Point]unit.Length{{-3, 4}: 0, {13, 4}: 10, {13, -4}: 10, {0, 5}: 0, {10, 5}: 10} {
		if along, away := s.Nearest(p); along != want || away != 5 {
			t.Errorf("%v is nearest at %d, %d away; want %d, 5", p, along, away, want)
		}
	}
}

// Two faces back to back cover one another where both are; behind is on the left hand. Their
// ends may differ by the tolerance and no more, and what only touches covers nothing.
func TestFacesBackToBack(t *testing.T) {
	s := Segment{Point{0, 0}, Point{100, 0}} // behind it is up the sheet
	for _, tt := range []struct {
		a, b      Point
		tolerance unit.Length
		covered   Interval
		gap       unit.Length
		ok        bool
	}{
		{Point{80, -10}, Point{20, -10}, 0, Interval{20, 80}, 10, true}, {Point{120, -10}, Point{-20, -10}, 0, Interval{0, 100}, 10, true},
		{Point{80, 10}, Point{20, 10}, 0, Interval{20, 80}, -10, true}, {Point{20, -10}, Point{80, -10}, 0, Interval{}, 0, false},
		{Point{50, -10}, Point{50, -90}, 999, Interval{}, 0, false}, {Point{80, -14}, Point{20, -10}, 4, Interval{20, 80}, 12, true},
		{Point{80, -14}, Point{20, -10}, 3, Interval{}, 0, false}, {Point{80, -10}, Point{20, -14}, 4, Interval{20, 80}, 12, true}, {Point{80, -10}, Point{20, -14}, 3, Interval{}, 0, false},
		{Point{180, -10}, Point{100, -10}, 0, Interval{}, 0, false}, {Point{180, -10}, Point{99, -10}, 0, Interval{99, 100}, 10, true}, {Point{0, -10}, Point{-50, -10}, 0, Interval{}, 0, false}, {Point{1, -10}, Point{-50, -10}, 0, Interval{0, 1}, 10, true},
	} {
		covered, gap, ok := s.Overlap(Segment{tt.a, tt.b}, tt.tolerance)
		if covered != tt.covered || gap != tt.gap || ok != tt.ok {
			t.Errorf("%v to %v within %d: %v, %d, %v; want %v, %d, %v", tt.a, tt.b, tt.tolerance, covered, gap, ok, tt.covered, tt.gap, tt.ok)
		}
	}
	if i := (Interval{3, 7}); i.Length() != 4 || !i.Contains(3) || !i.Contains(7) || i.Contains(2) || i.Contains(8) {
		t.Error("a stretch is not from 3 to 7")
	}
}

// The most corners there may be, and one more.
func TestTheMostCorners(t *testing.T) {
	comb := make(Polygon, 0, MaxCorners+1)
	for i := range unit.Length(MaxCorners - 1) {
		comb = append(comb, Point{i, i * i}) // a bow, no three in line
	}
	comb = append(comb, Point{0, MaxCorners * MaxCorners})
	if err := comb.Check(); err != nil || len(comb) != MaxCorners {
		t.Errorf("%d corners: %v", len(comb), err)
	}
	more := append(slices.Clone(comb), Point{-1, MaxCorners})
	if err := more.Check(); err == nil || err.(*PolygonError).Flaw != TooManyCorners {
		t.Errorf("%d corners: %v", len(more), err)
	}
}
