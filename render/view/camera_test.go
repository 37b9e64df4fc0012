package view

import (
	"math"
	"testing"

	"studbay/render/scene"
)

// level60 looks up the sheet from 60 in over the origin, in a picture of 1000 × 1000 whose
// focal length is 1000/2/tan(45°) = 500.
var level60 = Camera{Eye: Point{Z: 60 * 25.4}, Field: 90, Width: 1000, Height: 1000}

func inches(x, y, z float64) Point { return Point{x * 25.4, y * 25.4, z * 25.4} }

func isNearTo(a, b scene.Point) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < 1e-6 }

// Worked by hand: x = 500 + 500·right/depth, y = 410 − 500·(z − 60)/depth, where the gaze
// goes and what is to its right follow from the bearing.
func TestProjectIsAPinhole(t *testing.T) {
	turned := level60
	turned.Bearing = 90
	away := level60
	away.Bearing, away.Eye = 30, inches(10, 20, 48)
	for _, tt := range []struct {
		name string
		c    Camera
		at   Point
		want scene.Point
	}{
		{"straight ahead at the height of the eye", level60, inches(0, -100, 60), scene.Point{X: 500, Y: 410}},
		{"24 in to the right and 24 in up, 120 in ahead", level60, inches(24, -120, 84), scene.Point{X: 600, Y: 310}},
		{"on the floor 100 in ahead", level60, inches(-50, -100, 0), scene.Point{X: 250, Y: 710}},
		{"half as large at twice the depth", level60, inches(24, -240, 84), scene.Point{X: 550, Y: 360}},
		{"turned to the right: what was right is ahead", turned, inches(100, 0, 60), scene.Point{X: 500, Y: 410}},
		{"turned to the right: what was behind is right", turned, inches(100, 50, 60), scene.Point{X: 750, Y: 410}},
		// Forward is (sin 30°, −cos 30°), right is (cos 30°, sin 30°): 100 ahead and 40 to the right.
		{"turned by 30 degrees from another place", away, inches(10+100*0.5+40*math.Sqrt(3)/2, 20-100*math.Sqrt(3)/2+40*0.5, 48+20), scene.Point{X: 700, Y: 310}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, ok := tt.c.Project(tt.at)
			if !ok || !isNearTo(got, tt.want) {
				t.Errorf("Project(%v) = %v, %v, want %v", tt.at, got, ok, tt.want)
			}
		})
	}
}

func TestWhatIsBehindIsNotProjected(t *testing.T) {
	for _, p := range []Point{inches(0, 10, 60), inches(5, -3.9, 60)} {
		if at, ok := level60.Project(p); ok {
			t.Errorf("Project(%v) = %v, want nothing: it is nearer than 4 in", p, at)
		}
	}
}

// Lines that run the same way meet in one point of the horizon, whatever the gaze.
func TestParallelLinesMeetOnTheHorizon(t *testing.T) {
	c := level60
	c.Bearing = 25
	far := 1e9 // millimetres
	var meet []scene.Point
	for _, from := range []Point{inches(0, 0, 0), inches(40, -10, 90), inches(-30, 5, 36)} {
		at, ok := c.Project(from.add(Point{X: 0.3, Y: -0.8}.mul(far)))
		if !ok {
			t.Fatalf("the far end of the line from %v is not before the eye", from)
		}
		meet = append(meet, at)
	}
	for _, p := range meet {
		if math.Abs(p.X-meet[0].X) > 0.01 || math.Abs(p.Y-410) > 0.01 {
			t.Errorf("lines that run one way end in %v, want one point on the horizon at 410", meet)
		}
	}
}

// The cross-ratio of four points of a line is kept by every projection (Desargues).
func TestCrossRatioIsKept(t *testing.T) {
	c := level60
	c.Bearing = -17
	ratio := func(a, b, p, q float64) float64 { return (p - a) / (p - b) / ((q - a) / (q - b)) }
	from, way := inches(-60, -90, 10), Point{X: 2, Y: -1, Z: 0.7}
	at := []float64{0, 300, 900, 2500}
	var x []float64
	for _, k := range at {
		p, ok := c.Project(from.add(way.mul(k)))
		if !ok {
			t.Fatal("not before the eye")
		}
		x = append(x, p.X)
	}
	want, got := ratio(at[0], at[1], at[2], at[3]), ratio(x[0], x[1], x[2], x[3])
	if math.Abs(want-got) > 1e-9 {
		t.Errorf("the cross-ratio is %v in the picture and %v in the room", got, want)
	}
}

func TestUprightStaysUpright(t *testing.T) {
	for bearing := -80.0; bearing <= 80; bearing += 20 {
		c := level60
		c.Bearing = bearing
		low, okLow := c.Project(inches(50, -200, 0))
		high, okHigh := c.Project(inches(50, -200, 96))
		if okLow && okHigh && math.Abs(low.X-high.X) > 1e-9 {
			t.Errorf("turned by %v, an upright edge leans from %v to %v", bearing, low, high)
		}
	}
}

func TestOutlineIsCutBeforeTheEye(t *testing.T) {
	// A floor strip 20 in wide from 96 in behind the eye to 96 in before it: the cut at 4 in
	// is 500·10/4 = 1250 to either side and 500·60/4 = 7500 below the horizon.
	out := level60.outline([]Point{inches(-10, 96, 0), inches(10, 96, 0), inches(10, -96, 0), inches(-10, -96, 0)})
	if len(out) != 4 {
		t.Fatalf("%d corners, want 4: %v", len(out), out)
	}
	var low float64
	for _, p := range out {
		low = max(low, p.Y)
	}
	if math.Abs(low-7910) > 1e-6 {
		t.Errorf("it reaches down to %v, want 410 + 7500", low)
	}
}
