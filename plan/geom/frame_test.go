package geom

import (
	"math"
	"testing"

	"studbay/plan/unit"
)

// TestFramesOnTheSheet: x runs to the right and y down, so what is out of a wall that runs to
// the right is below it: the right hand of one who walks along.
func TestFramesOnTheSheet(t *testing.T) {
	const m = unit.Metre
	at := func(x, y unit.Length) Point { return Point{x, y} }
	a := at(7, -3)
	for _, tt := range []struct {
		name       string
		b          Point // the other end
		along, out Point // directions, a metre long
		five, side Point // five metres along; five out
	}{
		{"right", at(7+10*m, -3), at(m, 0), at(0, m), at(7+5*m, -3), at(7, -3+5*m)},
		{"down", at(7, -3+10*m), at(0, m), at(-m, 0), at(7, -3+5*m), at(7-5*m, -3)},
		{"left", at(7-10*m, -3), at(-m, 0), at(0, -m), at(7-5*m, -3), at(7, -3-5*m)},
		{"up", at(7, -3-10*m), at(0, -m), at(m, 0), at(7, -3-5*m), at(7+5*m, -3)},
		{"3, 4 and 5", at(7+3*m, -3+4*m), at(m*6/10, m*8/10), at(-m*8/10, m*6/10), at(7+3*m, -3+4*m), at(7-4*m, -3+3*m)},
		{"no way at all", a, at(m, 0), at(0, m), at(7+5*m, -3), at(7, -3+5*m)},
	} {
		f := FrameOf(Segment{a, tt.b})
		if f.Along() != tt.along || f.Out() != tt.out || f.Origin != a {
			t.Errorf("%s: along %v, out %v from %v", tt.name, f.Along(), f.Out(), f.Origin)
		}
		if f.Point(5*m, 0) != tt.five || f.Point(0, 5*m) != tt.side || f.Moved(5*m, 0).Origin != tt.five || f.Moved(0, 5*m).Origin != tt.side {
			t.Errorf("%s: 5 m along %v, out %v; want %v and %v", tt.name, f.Point(5*m, 0), f.Point(0, 5*m), tt.five, tt.side)
		}
		for _, p := range []Point{at(0, 0), at(3*m, 0), at(-2*m, 4*m), at(m/3, -5*m)} {
			if along, out := f.Project(f.Point(p.X, p.Y)); (along-p.X).Abs() > 1 || (out-p.Y).Abs() > 1 {
				t.Errorf("%s: %v comes back as %d, %d", tt.name, p, along, out)
			}
		}
		corners := Polygon{a, f.Point(2*m, 0), f.Point(2*m, m), f.Point(0, m)}
		if got := f.Rectangle(2*m, m); !equalPolygons(got, corners) || !got.IsClockwise() {
			t.Errorf("%s: a rectangle is %v", tt.name, got)
		}
		for quarters := -5; quarters <= 5; quarters++ {
			turned := f.Turned(quarters)
			if turned.Along() != f.Along().Turned(quarters) || turned.Out() != f.Out().Turned(quarters) || turned.Origin != a {
				t.Errorf("%s, turned by %d: along %v", tt.name, quarters, turned.Along())
			}
		}
	}
	if got := FrameAt(a); got != FrameOf(Segment{a, a.Add(at(m, 0))}) {
		t.Errorf("at a point it is %v", got)
	}
}

func equalPolygons(p, q Polygon) bool {
	for i := range p {
		if len(p) != len(q) || p[i] != q[i] {
			return false
		}
	}
	return true
}

// TestFramesFaceToFace: against each other, but for an angle: its sine is the rise over the
// length.
func TestFramesFaceToFace(t *testing.T) {
	f := FrameOf(Segment{Point{}, Point{unit.Metre, 0}})
	for _, tt := range []struct {
		dx, dy float64
		sine   float64
		want   bool
	}{
		{-1, 0, 0.01, true}, {1, 0, 0.01, false}, {0, 1, 0.01, false}, {0, 1, 2, false}, {0, -1, 2, false},
		{-4, 3, 0.61, true}, {-4, 3, 0.59, false}, {-4, -3, 0.61, true}, {-4, -3, 0.59, false}, {4, 3, 0.61, false},
	} {
		m := float64(unit.Metre)
		g := FrameOf(Segment{Point{}, Point{unit.Length(math.Round(tt.dx * m)), unit.Length(math.Round(tt.dy * m))}})
		for _, turned := range []int{0, 1, 2, 3} {
			if f.Turned(turned).IsOpposite(g.Turned(turned), tt.sine) != tt.want || g.Turned(turned).IsOpposite(f.Turned(turned), tt.sine) != tt.want {
				t.Errorf("%v, %v within %v: want %v", tt.dx, tt.dy, tt.sine, tt.want)
			}
		}
	}
}
