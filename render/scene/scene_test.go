package scene

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/glyph"
)

func near(a, b float64) bool { return math.Abs(a-b) < 1e-9 }

func TestRunStandsWhereItIsAligned(t *testing.T) {
	m := glyph.MetricsOf(glyph.Regular, 10)
	width := glyph.Width(glyph.Regular, 10, "B12")
	for _, tt := range []struct {
		name string
		run  Run
		want Point
	}{
		{"start", Run{}, Point{100, 50}},
		{"center", Run{Align: Center}, Point{100 - width/2, 50}},
		{"end", Run{Align: End}, Point{100 - width, 50}},
		{"middle", Run{VAlign: Middle}, Point{100, 50 + m.CapHeight/2}},
		{"top", Run{VAlign: Top}, Point{100, 50 + m.CapHeight}},
		{"end, reading down", Run{Align: End, Angle: 90}, Point{100, 50 - width}},
		{"top, reading up", Run{VAlign: Top, Angle: -90}, Point{100 + m.CapHeight, 50}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := tt.run
			r.At, r.Text, r.Size = Point{100, 50}, "B12", 10
			got := r.Origin()
			if !near(got.X, tt.want.X) || !near(got.Y, tt.want.Y) {
				t.Errorf("Origin() = %v, want %v", got, tt.want)
			}
		})
	}
}

func TestInkOfTextLiesInItsBox(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Run{
			At:     Point{3, 4},
			Text:   rapid.StringMatching(`[A-Za-z0-9 .,½"]{1,12}`).Draw(t, "text"),
			Size:   rapid.Float64Range(1, 40).Draw(t, "size"),
			Weight: glyph.Weight(rapid.IntRange(0, 1).Draw(t, "weight")),
			Align:  Align(rapid.IntRange(0, 2).Draw(t, "align")),
			VAlign: VAlign(rapid.IntRange(0, 2).Draw(t, "valign")),
			Angle:  float64(rapid.IntRange(0, 3).Draw(t, "quarter")) * 90,
		}
		ink := r.Outline().Bounds()
		// Letters may lean over the edge of their advance by up to a tenth of an em.
		box := r.Bounds().Expanded(0.1 * r.Size)
		if !ink.IsEmpty() && ink.Union(box) != box {
			t.Errorf("ink %v outside box %v of %+v", ink, box, r)
		}
	})
}

func TestArcStaysOnItsCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		middle := Point{5, -7}
		arc := Arc(middle, 10, rapid.Float64Range(-360, 360).Draw(t, "start"), rapid.Float64Range(-360, 360).Draw(t, "sweep"))
		var from Point
		arc.Each(func(op Op, p []Point) {
			if op == CubicOp {
				for i := range 11 {
					at := cubicAt(from, p[0], p[1], p[2], float64(i)/10)
					if off := math.Abs(math.Hypot(at.X-middle.X, at.Y-middle.Y) - 10); off > 0.003 {
						t.Fatalf("%v is %v off the circle", at, off)
					}
				}
			}
			from = p[len(p)-1]
		})
	})
}

func cubicAt(a, b, c, d Point, t float64) Point {
	u := 1 - t
	return a.Mul(u * u * u).Add(b.Mul(3 * u * u * t)).Add(c.Mul(3 * u * t * t)).Add(d.Mul(t * t * t))
}

func TestRectUnionAndIntersect(t *testing.T) {
	a, b := Rect{Point{0, 0}, Point{4, 4}}, Rect{Point{3, 1}, Point{8, 2}}
	if got, want := a.Union(b), (Rect{Point{0, 0}, Point{8, 4}}); got != want {
		t.Errorf("Union = %v, want %v", got, want)
	}
	if got, want := a.Intersect(b), (Rect{Point{3, 1}, Point{4, 2}}); got != want {
		t.Errorf("Intersect = %v, want %v", got, want)
	}
	if got := (Rect{}).Union(b); got != b {
		t.Errorf("union with nothing = %v, want %v", got, b)
	}
	if edge := (Rect{Point{4, 0}, Point{5, 4}}); a.Overlaps(edge) {
		t.Errorf("%v and %v share an edge only and must not overlap", a, edge)
	}
}

func TestGroupIsNoLargerThanItsClip(t *testing.T) {
	clip := Rect{Point{1, 1}, Point{2, 2}}
	g := Group{Layer: Layer{Clip: &clip}, Items: []Item{Fill{Path: Rect{Max: Point{9, 9}}.Path()}}}
	if got := g.Bounds(); got != clip {
		t.Errorf("Bounds() = %v, want %v", got, clip)
	}
}
