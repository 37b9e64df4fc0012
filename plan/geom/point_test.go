package geom

import (
	"testing"

	"pgregory.net/rapid"
)

func TestOrientation(t *testing.T) {
	for _, tt := range []struct {
		name    string
		a, b, c Point
		want    int
	}{
		{"down the sheet is right of walking right", Point{0, 0}, Point{10, 0}, Point{5, 1}, 1},
		{"up the sheet is left", Point{0, 0}, Point{10, 0}, Point{5, -1}, -1},
		{"in line", Point{0, 0}, Point{10, 0}, Point{50, 0}, 0},
		{"a step off at the rim", Point{-Reach, -Reach}, Point{Reach, Reach}, Point{0, 1}, 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := Orientation(tt.a, tt.b, tt.c); got != tt.want {
				t.Errorf("got %d, want %d (arithmetic)", got, tt.want)
			}
		})
	}
}

func TestTurned(t *testing.T) {
	p := Point{3, 1}
	for quarters, want := range map[int]Point{
		0: {3, 1}, 1: {-1, 3}, 2: {-3, -1}, 3: {1, -3}, 4: {3, 1}, -1: {1, -3}, -5: {1, -3},
	} {
		if got := p.Turned(quarters); got != want {
			t.Errorf("%d quarters: got %v, want %v (arithmetic)", quarters, got, want)
		}
	}
}

func TestExactTestsAgreeWithBigNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := segments().Draw(t, "s")
		other := rapid.OneOf(segments(), rapid.Custom(func(t *rapid.T) Segment {
			return Segment{near(s).Draw(t, "a"), rapid.OneOf(points(), near(s)).Draw(t, "b")}
		})).Draw(t, "t")
		p := rapid.OneOf(points(), near(s)).Draw(t, "p")

		if got, want := Orientation(s.A, s.B, p), bigCross(s.Vector(), p.Sub(s.A)).Sign(); got != want {
			t.Fatalf("Orientation = %d, want %d", got, want)
		}
		if got, want := OnSegment(p, s.A, s.B), slowOn(p, s); got != want {
			t.Fatalf("OnSegment = %t, want %t", got, want)
		}
		if got, want := s.Intersects(other), slowIntersects(s, other); got != want {
			t.Fatalf("Intersects = %t, want %t", got, want)
		}
		if got, want := s.Crosses(other), slowCrosses(s, other); got != want {
			t.Fatalf("Crosses = %t, want %t", got, want)
		}
	})
}

func TestOrientationTurnsWithTheSheet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := points().Draw(t, "a"), points().Draw(t, "b"), points().Draw(t, "c")
		quarters := rapid.IntRange(-8, 8).Draw(t, "quarters")
		want := Orientation(a, b, c)
		if got := Orientation(a.Turned(quarters), b.Turned(quarters), c.Turned(quarters)); got != want {
			t.Fatalf("turned by %d: %d, want %d", quarters, got, want)
		}
		if Orientation(b, c, a) != want || Orientation(b, a, c) != -want {
			t.Fatal("not the same seen from another corner")
		}
	})
}
