package geom

import (
	"testing"

	"pgregory.net/rapid"
)

func TestBox(t *testing.T) {
	b := BoxOf(Point{10, 20}, Point{0, 30}, Point{5, 25})
	if want := (Box{Point{0, 20}, Point{10, 30}}); b != want {
		t.Fatalf("got %v, want %v", b, want)
	}
	for _, tt := range []struct {
		name      string
		got, want any
	}{
		{"width", b.Width(), b.Max.X - b.Min.X},
		{"centre", b.Center(), Point{5, 25}},
		{"the edge belongs to it", b.Contains(Point{10, 20}), true},
		{"a step outside", b.Contains(Point{11, 20}), false},
		{"touching boxes intersect", b.Intersects(Box{Point{10, 30}, Point{20, 40}}), true},
		{"boxes a step apart do not", b.Intersects(Box{Point{11, 20}, Point{20, 40}}), false},
		{"expanded", b.Expand(2), Box{Point{-2, 18}, Point{12, 32}}},
		{"shrunk", b.Expand(-2), Box{Point{2, 22}, Point{8, 28}}},
		{"shrunk to its centre at most", b.Expand(-50), Box{Point{5, 25}, Point{5, 25}}},
		{"union", b.Union(Box{Point{-1, 0}, Point{2, 2}}), Box{Point{-1, 0}, Point{10, 30}}},
		{"corners are clockwise", b.Corners().IsClockwise(), true},
		{"of no points", BoxOf(), Box{}},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: got %v, want %v (arithmetic)", tt.name, tt.got, tt.want)
		}
	}
}

func TestBoxesHoldTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, q, r := points().Draw(t, "p"), points().Draw(t, "q"), points().Draw(t, "r")
		b, c := BoxOf(p, q), BoxOf(q, r)
		union := b.Union(c)
		if !b.Intersects(c) || !union.ContainsBox(b) || !union.ContainsBox(c) || union != BoxOf(p, q, r) {
			t.Fatalf("%v and %v make %v", b, c, union)
		}
		if b.Expand(1).Expand(-1) != b {
			t.Fatalf("%v is not the same out and in", b)
		}
	})
}
