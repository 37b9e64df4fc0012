package raster

import (
	"image"
	"image/color"
	"math"
	"math/bits"
	"testing"

	"pgregory.net/rapid"

	"studbay/render/scene"
)

// distance returns how far p is from the piece from a to b.
func distance(p, a, b scene.Point) float64 {
	along, to := b.Sub(a), p.Sub(a)
	t := 0.0
	if long := along.X*along.X + along.Y*along.Y; long > 0 {
		t = min(max((to.X*along.X+to.Y*along.Y)/long, 0), 1)
	}
	off := to.Sub(along.Mul(t))
	return math.Hypot(off.X, off.Y)
}

// samples are how many places of a pixel are looked at.
const samples = 256

// covered returns how much of a pixel is within reach of a line, from samples where that
// is in question. They are a Hammersley set, no two of them in one row or column: on a
// square grid an upright edge would be seen in steps of a whole row.
func covered(x, y int, reach float64, points []scene.Point) float64 {
	at := func(dx, dy float64) float64 {
		p, least := scene.Point{X: float64(x) + dx, Y: float64(y) + dy}, math.Inf(1)
		for i := 1; i < len(points); i++ {
			least = min(least, distance(p, points[i-1], points[i]))
		}
		return least
	}
	if middle := at(.5, .5); middle > reach+1 {
		return 0
	} else if middle < reach-1 {
		return 1
	}
	n := 0
	for i := range samples {
		if at((float64(i)+.5)/samples, (float64(bits.Reverse8(uint8(i)))+.5)/samples) <= reach {
			n++
		}
	}
	return float64(n) / samples
}

// ink returns the area inked in pixels.
func ink(im *image.RGBA) (sum float64) {
	for i := 0; i < len(im.Pix); i += 4 {
		sum += 1 - float64(im.Pix[i])/0xff
	}
	return sum
}

// TestRoundEndedLineInksAllWithinHalfItsWidth holds the ink against its definition.
func TestRoundEndedLineInksAllWithinHalfItsWidth(t *testing.T) {
	for _, tt := range []struct {
		name   string
		bends  int
		within float64
		source string
	}{
		{"straight", 0, 0.1, "as exact as the flattened curves and the samples are"},
		{"bent", 2, 0.45, "the pen turns back at the ends, which darkens half covered pixels"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				pen := scene.Pen{
					Width: rapid.Float64Range(1, 12).Draw(t, "width"),
					Color: scene.Color{A: rapid.SampledFrom([]uint8{0x60, 0xff}).Draw(t, "opacity")},
					Cap:   scene.RoundCap,
				}
				points := anyLine(t, tt.bends, pen.Width)
				im := blank(120, 120)
				Items(im, 1, scene.Point{}, scene.Stroke{Path: scene.Polyline(points...), Pen: pen})
				opacity, sum := float64(pen.Color.A)/0xff, 0.0
				for y := range 120 {
					for x := range 120 {
						want := covered(x, y, pen.Width/2, points)
						got := (1 - float64(im.RGBAAt(x, y).R)/0xff) / opacity
						if sum += want; math.Abs(got-want) > tt.within {
							t.Fatalf("pixel %d, %d is inked %.2f, want %.2f within %.2f: %s", x, y, got, want, tt.within, tt.source)
						}
					}
				}
				if got := ink(im) / opacity; math.Abs(got-sum) > 0.05*sum+0.7 {
					t.Fatalf("%.2f pixels of ink, want %.2f", got, sum)
				}
			})
		})
	}
}

// anyLine returns points on the grid. A straight line may be a speck; the pieces of a
// bent one are as long as the pen is wide and turn by a quarter at most.
func anyLine(t *rapid.T, bends int, width float64) []scene.Point {
	at := scene.Point{
		X: rapid.Float64Range(58, 62).Draw(t, "x"),
		Y: rapid.Float64Range(58, 62).Draw(t, "y"),
	}
	points := []scene.Point{onGrid(at)}
	way := rapid.Float64Range(0, 360).Draw(t, "way")
	shortest := 0.05
	if bends > 0 {
		shortest = width
	}
	for range bends + 1 {
		at = at.Add(scene.Direction(way).Mul(rapid.Float64Range(shortest, shortest+3).Draw(t, "length")))
		points = append(points, onGrid(at))
		way += rapid.Float64Range(-90, 90).Draw(t, "turn")
	}
	return points
}

func TestRoundEndsOfABevelledLine(t *testing.T) {
	im := blank(40, 30)
	pen := scene.Pen{Width: 10, Color: black, Cap: scene.RoundCap, Join: scene.BevelJoin}
	corner := []scene.Point{{X: 10, Y: 20}, {X: 30, Y: 20}, {X: 30, Y: 10}}
	Items(im, 1, scene.Point{}, scene.Stroke{Path: scene.Polyline(corner...), Pen: pen})
	for _, tt := range []struct {
		where string
		at    image.Point
		want  uint8
	}{
		{"half a disc before the start", image.Pt(6, 20), 0},
		{"beyond it", image.Pt(5, 16), 0xff},
		{"half a disc after the end", image.Pt(30, 6), 0},
		{"beyond it", image.Pt(25, 5), 0xff},
		{"the corner, cut off from 35, 20 to 30, 25", image.Pt(32, 23), 0xff},
		{"within the cut", image.Pt(31, 21), 0},
	} {
		if got := im.RGBAAt(tt.at.X, tt.at.Y).R; got != tt.want {
			t.Errorf("%s: pixel %v is %d, want %d", tt.where, tt.at, got, tt.want)
		}
	}
}

// TestFinelyBentLineKeepsItsInk strokes pieces each too short for gg.
func TestFinelyBentLineKeepsItsInk(t *testing.T) {
	for _, tt := range []struct {
		name   string
		length float64
		closed bool
		want   float64
		within float64
	}{
		{"a speck", 1, false, 2. / 64, 0.5}, // half a pixel of ink is the least seen
		{"a line", 640, false, 2 * 640. / 64, 0.2},
		{"there and back", 640, true, 2 * 640. / 64, 0.7},
	} {
		var path scene.Path
		for i := range int(tt.length) + 1 {
			p := scene.Point{X: 5 + float64(i)/64, Y: 5}
			if i == 0 {
				path.MoveTo(p)
				continue
			}
			path.LineTo(p)
		}
		if tt.closed {
			path.Close()
		}
		im := blank(20, 10)
		Items(im, 1, scene.Point{}, scene.Stroke{Path: path, Pen: scene.Pen{Width: 2, Color: black, Join: scene.BevelJoin}})
		if got := ink(im); got == 0 || math.Abs(got-tt.want) > tt.within {
			t.Errorf("%s: %.2f pixels of ink, want %.2f", tt.name, got, tt.want)
		}
	}
}

func TestDrawsOnItsPieceAlone(t *testing.T) {
	whole := blank(60, 60)
	piece := whole.SubImage(image.Rect(20, 10, 41, 33)).(*image.RGBA)
	d := New(1, scene.Point{})
	clip := box(3, 4, 9, 8)
	red := scene.Color{R: 0xff, A: 0xff}
	scene.Paint(d,
		scene.Fill{Path: box(-50, -50, 100, 100).Path(), Color: black},
		scene.Group{Layer: scene.Layer{Clip: &clip}, Items: []scene.Item{
			scene.Stroke{Path: box(-50, -50, 100, 100).Path(), Pen: scene.Pen{Width: 200, Color: red}},
		}},
	)
	d.Draw(piece, image.Point{}, nil)
	for y := range 60 {
		for x := range 60 {
			want := color.RGBA{R: 0xff, G: 0xff, B: 0xff, A: 0xff}
			at := image.Pt(x, y)
			switch {
			case at.In(image.Rect(23, 14, 29, 18)):
				want = color.RGBA{R: 0xff, A: 0xff}
			case at.In(piece.Rect):
				want = color.RGBA{A: 0xff}
			}
			if got := whole.RGBAAt(x, y); got != want {
				t.Fatalf("pixel %v is %v, want %v", at, got, want)
			}
		}
	}
}
