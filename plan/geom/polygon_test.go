package geom

import (
	"errors"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"studbay/plan/unit"
)

const foot = unit.Foot

// ell is an L-shaped room, 20 by 15 feet less 8 by 6 at its right upper corner.
var ell = Polygon{
	{0, 0}, {12 * foot, 0}, {12 * foot, 6 * foot}, {20 * foot, 6 * foot}, {20 * foot, 15 * foot}, {0, 15 * foot},
}

func TestPolygonMeasures(t *testing.T) {
	for _, tt := range []struct {
		name      string
		got, want any
		source    string
	}{
		{"area", ell.Area().Cmp(unit.SquareFoot.Mul(252)), 0, "arithmetic: 20 × 15 - 8 × 6"},
		{"the same area the other way round", reversed(ell).Area().Cmp(ell.Area()), 0, "arithmetic"},
		{"perimeter", ell.Perimeter(), 70 * foot, "arithmetic: 2 × (20 + 15)"},
		{"box", ell.Box(), Box{Point{0, 0}, Point{20 * foot, 15 * foot}}, "arithmetic"},
		{"clockwise", ell.IsClockwise(), true, "y grows down the sheet"},
		{"not clockwise", reversed(ell).IsClockwise(), false, "y grows down the sheet"},
		{"half a square nanometre is dropped", Polygon{{0, 0}, {1, 0}, {0, 1}}.Area().Sign(), 0, "arithmetic: 1/2"},
		{"but not from twice the area", Polygon{{0, 0}, {1, 0}, {0, 1}}.TwiceArea().Sign(), 1, "arithmetic: 1"},
		{"the first edge", ell.Edge(0), Segment{Point{0, 0}, Point{12 * foot, 0}}, "own form"},
		{"the last edge closes", ell.Edge(-1), Segment{Point{0, 15 * foot}, Point{0, 0}}, "own form"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: got %v, want %v (%s)", tt.name, tt.got, tt.want, tt.source)
		}
	}
}

func reversed(p Polygon) Polygon {
	turned := make(Polygon, len(p))
	for i, q := range p {
		turned[len(p)-1-i] = q
	}
	return turned
}

func TestContains(t *testing.T) {
	for _, tt := range []struct {
		name            string
		q               Point
		inside, onBound bool
	}{
		{"well inside", Point{foot, foot}, true, false},
		{"on a side", Point{foot, 0}, true, true},
		{"at a corner", Point{12 * foot, 6 * foot}, true, true},
		{"on the lowest side", Point{foot, 15 * foot}, true, true},
		{"on the side to the right", Point{20 * foot, 7 * foot}, true, true},
		{"in the notch", Point{13 * foot, 5 * foot}, false, false},
		{"level with an inner corner, inside", Point{foot, 6 * foot}, true, false},
		{"level with an inner corner, outside", Point{-foot, 6 * foot}, false, false},
		{"level with the top, outside", Point{-foot, 0}, false, false},
		{"level with the bottom, outside", Point{-foot, 15 * foot}, false, false},
		{"a nanometre inside", Point{1, 1}, true, false},
		{"a nanometre outside", Point{-1, 1}, false, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if ell.Contains(tt.q) != tt.inside || ell.OnBoundary(tt.q) != tt.onBound {
				t.Errorf("contains %t, on boundary %t", ell.Contains(tt.q), ell.OnBoundary(tt.q))
			}
			if ell.InteriorContains(tt.q) != (tt.inside && !tt.onBound) {
				t.Errorf("interior contains %t", ell.InteriorContains(tt.q))
			}
		})
	}
}

var checkRows = []struct {
	name string
	p    Polygon
	want PolygonError // zero for a sound polygon
	text string
}{
	{"a room", ell, PolygonError{}, ""},
	{"the other way round", reversed(ell), PolygonError{}, ""},
	{"corners in line", Polygon{{0, 0}, {5, 0}, {9, 0}, {9, 9}, {0, 9}}, PolygonError{}, ""},
	{"a triangle", Polygon{{0, 0}, {9, 0}, {0, 9}}, PolygonError{}, ""},
	{"nothing", nil, PolygonError{TooFewCorners, -1, -1}, "fewer than three corners"},
	{"two corners", Polygon{{0, 0}, {9, 0}}, PolygonError{TooFewCorners, -1, -1}, "fewer than three"},
	{"too many", make(Polygon, MaxCorners+1), PolygonError{TooManyCorners, -1, -1}, "more than 2000"},
	{"too far out", Polygon{{0, 0}, {Reach + 1, 0}, {0, 9}}, PolygonError{OutOfReach, 1, -1}, "corner 2 lies too far out"},
	{"too far out the other way", Polygon{{0, 0}, {9, 0}, {0, -Reach - 1}}, PolygonError{OutOfReach, 2, -1}, "corner 3 lies too far out"},
	{"a doubled corner", Polygon{{0, 0}, {9, 0}, {9, 0}, {0, 9}}, PolygonError{ZeroEdge, 1, -1}, "edge 2 has no length"},
	{"closed twice", Polygon{{0, 0}, {9, 0}, {0, 9}, {0, 0}}, PolygonError{ZeroEdge, 3, -1}, "edge 4 has no length"},
	{"pinched at a corner", Polygon{{0, 0}, {4, 4}, {8, 0}, {8, 8}, {4, 4}, {0, 8}}, PolygonError{RepeatedCorner, 1, 4}, "corners 2 and 5 are the same"},
	{"a bow tie", Polygon{{0, 0}, {9, 9}, {9, 0}, {0, 9}}, PolygonError{EdgesMeet, 0, 2}, "edges 1 and 3 cross or touch"},
	{"a spike", Polygon{{0, 0}, {9, 0}, {5, 0}, {5, 9}}, PolygonError{EdgesMeet, 0, 1}, "edges 1 and 2 cross or touch"},
	{"a spike over the start", Polygon{{5, 0}, {9, 0}, {9, 9}, {5, 9}, {5, -3}}, PolygonError{EdgesMeet, 0, 3}, "edges 1 and 4"},
	{"all in line", Polygon{{0, 0}, {5, 0}, {9, 0}}, PolygonError{EdgesMeet, 0, 2}, "edges 1 and 3"},
	{"a corner on another edge", Polygon{{0, 0}, {9, 0}, {9, 9}, {4, 0}, {0, 9}}, PolygonError{EdgesMeet, 0, 2}, "edges 1 and 3"},
	{"a corner on an upright edge", Polygon{{0, 0}, {9, 0}, {9, 9}, {0, 9}, {0, 6}, {9, 5}, {0, 4}}, PolygonError{EdgesMeet, 1, 4}, "edges 2 and 5"},
	{"edges laid over each other", Polygon{{0, 0}, {9, 0}, {9, 9}, {6, 9}, {6, 0}, {3, 0}, {3, 9}, {0, 9}}, PolygonError{EdgesMeet, 0, 3}, "edges 1 and 4"},
	{"a crossing by a nanometre", Polygon{{0, 0}, {Reach, 0}, {Reach, Reach}, {1, -1}, {0, Reach}}, PolygonError{EdgesMeet, 0, 2}, "edges 1 and 3"},
}

func TestCheck(t *testing.T) {
	for _, tt := range checkRows {
		t.Run(tt.name, func(t *testing.T) {
			err := tt.p.Check()
			if tt.want == (PolygonError{}) {
				if err != nil {
					t.Errorf("a sound polygon fails with %v", err)
				}
				return
			}
			var flaw *PolygonError
			if !errors.As(err, &flaw) || *flaw != tt.want || !strings.Contains(err.Error(), tt.text) {
				t.Errorf("got %v, want %v (%s)", err, &tt.want, tt.text)
			}
		})
	}
}

// fromBytes makes a corner of each byte, on a grid of 16 by 16 so that corners and edges
// often meet; far moves and scales them almost to Reach.
func fromBytes(data []byte, far bool) Polygon {
	p := make(Polygon, 0, len(data))
	for _, b := range data {
		q := Point{unit.Length(b >> 4), unit.Length(b & 15)}
		if far {
			q = Point{(q.X - 8) * (Reach / 8), (q.Y - 8) * (Reach / 8)}
		}
		p = append(p, q)
	}
	return p
}

func FuzzCheck(f *testing.F) {
	for _, row := range checkRows {
		var data []byte
		for _, q := range row.p[:min(len(row.p), 32)] {
			data = append(data, byte(q.X/foot<<4|q.Y/foot), byte(q.X<<4|q.Y&15))
		}
		f.Add(data, false)
		f.Add(data, true)
	}
	f.Fuzz(func(t *testing.T, data []byte, far bool) {
		if len(data) > 64 {
			return
		}
		p := fromBytes(data, far)
		want, err := slowCheck(p), p.Check()
		if want == nil && err != nil || want != nil && err == nil {
			t.Fatalf("%v: got %v, want %v", p, err, want)
		}
		var got *PolygonError
		if want != nil && (!errors.As(err, &got) || *got != *want) {
			t.Fatalf("%v: got %v, want %v", p, err, want)
		}
	})
}

// stars draws simple polygons with at most 12 corners: one corner on each of some rays
// around the origin.
func stars() *rapid.Generator[Polygon] {
	rays := []Point{{4, 0}, {4, 1}, {3, 2}, {2, 4}, {0, 3}, {-1, 3}, {-3, 3}, {-4, 1}, {-3, 0}, {-4, -3}, {0, -2}, {3, -4}}
	return rapid.Custom(func(t *rapid.T) Polygon {
		var p Polygon
		for _, ray := range rays {
			n := unit.Length(rapid.Int64Range(1, 40).Draw(t, "reach"))
			p = append(p, Point{ray.X * n, ray.Y * n})
		}
		return p
	})
}

func TestSimplePolygons(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := stars().Draw(t, "p")
		if err := p.Check(); err != nil {
			t.Fatalf("%v: %v", p, err)
		}
		q := Point{unit.Length(rapid.Int64Range(-160, 160).Draw(t, "x")), unit.Length(rapid.Int64Range(-160, 160).Draw(t, "y"))}
		if got, want := p.Contains(q), slowContains(p, q); got != want {
			t.Fatalf("%v contains %v: %t, want %t", p, q, got, want)
		}
		if !p.IsClockwise() || !p.Contains(Point{}) || !p.Contains(p.LabelPoint()) {
			t.Fatalf("%v: clockwise %t, label %v", p, p.IsClockwise(), p.LabelPoint())
		}
		back := reversed(p)
		if back.IsClockwise() || !back.Clockwise().IsClockwise() || back.Clockwise()[0] != back[0] {
			t.Fatalf("%v turned about: %v", back, back.Clockwise())
		}
		if p.Contains(q) != p.Turned(3).Contains(q.Turned(3)) || p.Moved(q).Contains(q) != p.Contains(Point{}) {
			t.Fatalf("%v is another polygon when moved or turned", p)
		}
	})
}

func TestAreaAgreesWithBigNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Polygon(rapid.SliceOfN(points(), 3, 8).Draw(t, "p"))
		want := new(big.Int)
		for i := range p {
			want.Add(want, bigCross(p[i], p[(i+1)%len(p)]))
		}
		if got := p.TwiceArea().Big(); got.Cmp(want) != 0 {
			t.Fatalf("twice the area is %v, want %v", got, want)
		}
		if got := p.Area().Big(); got.Cmp(want.Abs(want).Rsh(want, 1)) != 0 {
			t.Fatalf("the area is %v, want %v", got, want)
		}
	})
}

func TestLabelPoint(t *testing.T) {
	for _, tt := range []struct {
		name  string
		p     Polygon
		want  Point // to within slack
		slack unit.Length
	}{
		{"the middle of a rectangle", Box{Point{0, 0}, Point{10 * foot, 8 * foot}}.Corners(), Point{5 * foot, 4 * foot}, unit.Nanometre},
		{"the middle of a long hall", Box{Point{0, 0}, Point{40 * foot, 3 * foot}}.Corners(), Point{20 * foot, 3 * foot / 2}, unit.Nanometre},
		{"far from the origin", Box{Point{0, 0}, Point{10 * foot, 8 * foot}}.Corners().Moved(Point{unit.Metre * 100_000, 0}), Point{unit.Metre*100_000 + 5*foot, 4 * foot}, unit.Nanometre},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := tt.p.LabelPoint()
			if got.Distance(tt.want) > tt.slack {
				t.Errorf("got %v, want %v (symmetry)", got, tt.want)
			}
		})
	}
}

// TestLabelPointOfBentRooms holds that the name of a bent room stands in its wide part,
// where a centroid would be near a wall or outside.
func TestLabelPointOfBentRooms(t *testing.T) {
	for _, tt := range []struct {
		name string
		p    Polygon
		room unit.Length // least distance to every edge: a little under half the width there
	}{
		{"an L", ell, 5 * foot},
		{"a U, whose centroid is outside", Polygon{
			{0, 0}, {4 * foot, 0}, {4 * foot, 16 * foot}, {16 * foot, 16 * foot}, {16 * foot, 0}, {20 * foot, 0}, {20 * foot, 20 * foot}, {0, 20 * foot},
		}, 19 * foot / 10},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := tt.p.LabelPoint()
			if !tt.p.InteriorContains(got) {
				t.Fatalf("%v lies outside", got)
			}
			for i, e := range tt.p.Edges() {
				if _, distance := e.Nearest(got); distance < tt.room {
					t.Errorf("%v is %v from edge %d, want at least %v (half the width)", got, distance, i+1, tt.room)
				}
			}
		})
	}
}

func TestLabelPointOfASliver(t *testing.T) {
	p := Polygon{{0, 0}, {1000, 1}, {1000, 2}, {1, 1}}
	if err := p.Check(); err != nil {
		t.Fatal(err)
	}
	if got := p.LabelPoint(); !p.Contains(got) {
		t.Errorf("%v is not in %v", got, p)
	}
}

func BenchmarkCheckThousandCorners(b *testing.B) {
	p := make(Polygon, 0, 1000)
	for i := range unit.Length(500) {
		p = append(p, Point{i * foot, i % 2 * foot})
	}
	for i := range unit.Length(500) {
		p = append(p, Point{(500 - i) * foot, 10 * foot})
	}
	for b.Loop() {
		if err := p.Check(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCheckSlantedComb(b *testing.B) {
	p := make(Polygon, 0, MaxCorners)
	for i := range unit.Length(MaxCorners / 2) {
		p = append(p, Point{i * inch, i * inch}, Point{i*inch + 10_000*foot, i*inch + 9_000*foot})
	}
	for b.Loop() {
		if err := p.Check(); err == nil {
			b.Fatal("a comb that closes over its teeth is sound")
		}
	}
}

func TestNearestPlaceOnAnOutline(t *testing.T) {
	for _, tt := range []struct {
		q, at Point
		away  unit.Length
	}{ // arithmetic: square to the nearest edge, at a corner beside none
		{Point{6 * foot, -2 * foot}, Point{6 * foot, 0}, 2 * foot},
		{Point{foot, 5 * foot}, Point{0, 5 * foot}, foot},
		{Point{23 * foot, 19 * foot}, Point{20 * foot, 15 * foot}, 5 * foot},
		{Point{20 * foot, 10 * foot}, Point{20 * foot, 10 * foot}, 0},
	} {
		if at, away := ell.Nearest(tt.q); at != tt.at || away != tt.away {
			t.Errorf("nearest to %v: %v, %v away; want %v, %v", tt.q, at, away, tt.at, tt.away)
		}
	}
}
