package flat_test

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/flat"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

func in(inches float64) unit.Length { return unit.Length(inches*16) * (unit.Inch / 16) }

// TestFootprints lays two things side by side in a ceiling: squares meet past their edges, round
// ones within the sum of their radii, a round one meets a square at its nearest corner (3-4-5).
func TestFootprints(t *testing.T) {
	at := func(x, y float64, box string) flat.Footprint {
		return flat.FootprintOf(&plan.Opening{At: plan.OnCeiling("", geom.Point{X: in(x), Y: in(y)}), Assembly: plan.Assembly{Box: box}})
	}
	const square, round = "sq4-1.5", "oct4-1.5" // 4 in across, Table 314.16(A)
	if got := at(10, 20, square); got.Area != geom.BoxOf(geom.Point{X: in(8), Y: in(18)}, geom.Point{X: in(12), Y: in(22)}) || got.Center != (geom.Point{X: in(10), Y: in(20)}) || got.IsRound {
		t.Errorf("a square of 4 about (10, 20) is %+v", got)
	}
	if got := at(0, 0, round); got.Radius() != in(2) || !got.IsRound {
		t.Errorf("a round of 4 is %+v", got)
	}
	for _, tt := range []struct {
		name string
		a, b flat.Footprint
		want bool
	}{
		{"squares edge to edge", at(0, 0, square), at(4, 0, square), false},
		{"nearer by a sixteenth", at(0, 0, square), at(3.9375, 0, square), true},
		{"under each other", at(0, 0, square), at(0, 4, square), false},
		{"under each other, nearer", at(0, 0, square), at(0, -3.9375, square), true},
		{"rounds 4 apart", at(0, 0, round), at(4, 0, round), false},
		{"rounds aslant, 5 apart", at(0, 0, round), at(3, 4, round), false},
		{"rounds aslant, 3.9 apart", at(0, 0, round), at(3, 2.5, round), true},
		{"a round 2 from an edge", at(4, 0, round), at(0, 0, square), false},
		{"a round nearer", at(3.9375, 0, round), at(0, 0, square), true},
		{"a round 2.06 from a corner", at(3.5, 3.4375, round), at(0, 0, square), false},
		{"a round 1.98 from a corner", at(3.375, 3.4375, round), at(0, 0, square), true},
		{"a round in a square", at(0, 0, round), at(0, 0, square), true},
	} {
		if got := tt.a.Meets(tt.b); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
		if got := tt.b.Meets(tt.a); got != tt.want {
			t.Errorf("%s, the other way: %v, want %v", tt.name, got, tt.want)
		}
	}
	line := func(x1, y1, x2, y2 float64) geom.Segment {
		return geom.Segment{A: geom.Point{X: in(x1), Y: in(y1)}, B: geom.Point{X: in(x2), Y: in(y2)}}
	}
	for _, tt := range []struct {
		name          string
		line          geom.Segment
		square, round bool
	}{
		{"through the middle", line(-9, 0, 9, 0), true, true},
		{"along the edge", line(-9, 2, 9, 2), false, false},
		{"within the edge", line(-9, 1.9375, 9, 1.9375), true, true},
		{"past it", line(-9, 2.0625, 9, 2.0625), false, false},
		{"over a corner", line(0, 3.9375, 3.9375, 0), true, false},
		{"at a corner", line(0, 4, 4, 0), false, false},
		{"ending before it", line(-9, 0, -2, 0), false, false},
		{"ending in it", line(-9, 0, -1.9375, 0), true, true},
		{"upright", line(1, -9, 1, 9), true, true},
		{"upright on the edge", line(-2, -9, -2, 9), false, false},
	} {
		for _, l := range []geom.Segment{tt.line, {A: tt.line.B, B: tt.line.A}} {
			if got := at(0, 0, square).IsCut(l); got != tt.square {
				t.Errorf("%s: a square is cut %v, want %v", tt.name, got, tt.square)
			}
			if got := at(0, 0, round).IsCut(l); got != tt.round {
				t.Errorf("%s: a round is cut %v, want %v", tt.name, got, tt.round)
			}
		}
	}
}

// TestToWallsLooksAlongTheAxes: in rooms of squares, the nearest wall to either hand, up and
// down is found by going there an inch at a time.
func TestToWallsLooksAlongTheAxes(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 3))
	for range 200 {
		w, d := 20+random.IntN(80), 20+random.IntN(80)
		x, y := 5+random.IntN(w-10), 5+random.IntN(d-10)
		p := func(x, y int) geom.Point { return geom.Point{X: in(float64(x)), Y: in(float64(y))} }
		corners := geom.Polygon{p(0, 0), p(w, 0), p(w, y), p(x, y), p(x, d), p(0, d)} // an L
		ids := []plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6", "saaaaaaa7"}
		r := plan.NewRoom("raaaaaaa2", "Ell", plan.UseLiving, corners, ids)
		ax, ay := random.IntN(w+1), random.IntN(d+1)
		if ax > x && ay > y {
			continue
		}
		inside := func(x1, y1 int) bool {
			return x1 >= 0 && y1 >= 0 && x1 <= w && y1 <= d && (x1 <= x || y1 <= y)
		}
		got := map[geom.Point]unit.Length{}
		for _, dim := range flat.ToWalls(&r, p(ax, ay)) {
			if dim.From != p(ax, ay) || dim.Length < 0 {
				t.Fatalf("%+v from (%d, %d)", dim, ax, ay)
			}
			got[dim.To] = dim.Length
			if side := r.SideAt(dim.Wall); !geom.OnSegment(dim.To, r.Segment(side).A, r.Segment(side).B) {
				t.Fatalf("%+v does not end on its wall", dim)
			}
		}
		if ax == 0 || ay == 0 || ax == w || ay == d || ax == x || ay == y {
			continue // on the line of a wall: which end is meant is a matter of taste
		}
		for _, way := range [][2]int{{-1, 0}, {1, 0}, {0, -1}, {0, 1}} {
			n := 0
			for inside(ax+way[0]*(n+1), ay+way[1]*(n+1)) {
				n++
			}
			if to := p(ax+way[0]*n, ay+way[1]*n); got[to] != in(float64(n)) {
				t.Fatalf("room %d × %d less (%d, %d): from (%d, %d) by %v it is %d in, got %v", w, d, x, y, ax, ay, way, n, got)
			}
		}
	}
}

// TestToASlantedWall: the ray meets a wall from (0, 60) to (60, 0) where x + y = 60.
func TestToASlantedWall(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }
	r := plan.NewRoom("raaaaaaa2", "Corner", plan.UseLiving, geom.Polygon{p(0, 60), p(60, 0), p(100, 0), p(100, 100), p(0, 100)},
		[]plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6"})
	want := []flat.Dim{
		{p(40, 50), p(10, 50), in(30), r.Sides[0].ID}, {p(40, 50), p(100, 50), in(60), r.Sides[2].ID},
		{p(40, 50), p(40, 20), in(30), r.Sides[0].ID}, {p(40, 50), p(40, 100), in(50), r.Sides[3].ID},
	}
	got := flat.ToWalls(&r, p(40, 50))
	if len(got) != 4 {
		t.Fatalf("%+v", got)
	}
	for i := range got {
		if got[i] != want[i] {
			t.Errorf("%+v, want %+v", got[i], want[i])
		}
	}
	// Square to the slanted wall: (40, 50) is 30/√2 in off it, at (25, 35).
	near := flat.NearWalls(&r, plan.PartCeiling, p(40, 50))
	if len(near) != 1 || near[0].Wall != r.Sides[0].ID || (near[0].To.X-in(25)).Abs() > 2 || (near[0].To.Y-in(35)).Abs() > 2 {
		t.Errorf("%+v, want the slanted wall alone, at (25, 35): none is square to it", near)
	}
}

// TestATapeIsLaidToWhatIsBeforeIt: within a hair of the end of a wall a place is still before
// it; on the wall itself it is no distance off; a wall behind another is not in sight.
func TestATapeIsLaidToWhatIsBeforeIt(t *testing.T) {
	p := func(x, y float64) geom.Point { return geom.Point{X: in(x), Y: in(y)} }
	ids := []plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6", "saaaaaaa7", "saaaaaaa8", "saaaaaaa9"}
	// A U: the left arm 0 to 20, the right arm 80 to 100, both 100 deep, the bottom 20 deep.
	u := plan.NewRoom("raaaaaaa2", "U", plan.UseLiving, geom.Polygon{p(0, 0), p(20, 0), p(20, 80), p(80, 80), p(80, 0), p(100, 0), p(100, 100), p(0, 100)}, ids)
	for _, tt := range []struct {
		name  string
		x, y  float64
		walls []int
		away  []float64
	}{
		{"in the left arm", 8, 30, []int{7, 0}, []float64{8, 30}},
		{"nearer the inner wall", 15, 50, []int{1, 0}, []float64{5, 50}},
		{"on a wall", 0, 30, []int{7, 0}, []float64{0, 30}},
		{"in the bottom", 50, 88, []int{2, 5}, []float64{8, 50}},
	} {
		got := flat.NearWalls(&u, plan.PartCeiling, p(tt.x, tt.y))
		if len(got) != len(tt.walls) {
			t.Errorf("%s: %+v", tt.name, got)
			continue
		}
		for i, d := range got {
			if d.Wall != ids[tt.walls[i]] || d.Length != in(tt.away[i]) {
				t.Errorf("%s: tape %d is %v to side %d, want %v to %d", tt.name, i, d.Length, u.SideAt(d.Wall), tt.away[i], tt.walls[i])
			}
		}
	}
}

// A ceiling point of a room 120 × 100 at (40, 30): 40 to the left, 80 to the right, 30
// up, 70 down.
func TestToWalls(t *testing.T) {
	sides := []plan.ID{"saaaaaaa1", "saaaaaaa2", "saaaaaaa3", "saaaaaaa4"}
	room := plan.NewRoom("raaaaaaa1", "Den", plan.UseDen, geom.Polygon{{}, {X: in(120)}, {X: in(120), Y: in(100)}, {Y: in(100)}}, sides)
	dims := flat.ToWalls(&room, geom.Point{X: in(40), Y: in(30)})
	want := []unit.Length{in(40), in(80), in(30), in(70)}
	walls := []plan.ID{sides[3], sides[1], sides[0], sides[2]}
	if len(dims) != 4 {
		t.Fatalf("%d dimensions, want 4", len(dims))
	}
	for i, d := range dims {
		if d.Length != want[i] || d.Wall != walls[i] {
			t.Errorf("dimension %d: %s to %s, want %s to %s", i, d.Length, d.Wall, want[i], walls[i])
		}
	}
}

// The figures are read off the drawing: an L, 120 in wide and 100 in deep, of which the
// lower right quarter, 60 by 50, is cut away.
func TestTheDistanceFromAWallIsSquareToIt(t *testing.T) {
	corners := geom.Polygon{{X: 0, Y: 0}, {X: in(120), Y: 0}, {X: in(120), Y: in(50)}, {X: in(60), Y: in(50)}, {X: in(60), Y: in(100)}, {X: 0, Y: in(100)}}
	ids := []plan.ID{"saaaaaaa2", "saaaaaaa3", "saaaaaaa4", "saaaaaaa5", "saaaaaaa6", "saaaaaaa7"}
	r := plan.NewRoom("raaaaaaa2", "Ell", plan.UseLiving, corners, ids)
	type wall struct {
		side int
		away float64
	}
	railed := r
	railed.Sides = append([]*plan.Side{}, r.Sides...)
	railing := *r.Sides[0]
	railing.Kind = plan.SideRailing
	railed.Sides[0] = &railing
	for _, tt := range []struct {
		name string
		room plan.Room
		part plan.Part
		x, y float64
		want []wall
	}{
		{"before every wall", r, plan.PartCeiling, 20, 30, []wall{{5, 20}, {0, 30}}},
		{"five from the inner corner aslant, before neither wall of it", r, plan.PartCeiling, 56, 47, []wall{{0, 47}, {5, 56}}},
		{"before one wall of the inner corner", r, plan.PartCeiling, 64, 47, []wall{{2, 3}, {1, 56}}},
		{"on the line of the wall that ends there", r, plan.PartCeiling, 60, 47, []wall{{2, 3}, {1, 60}}},
		{"a railing is no wall for a ceiling", railed, plan.PartCeiling, 20, 30, []wall{{5, 20}, {4, 70}}},
		{"but for a floor", railed, plan.PartFloor, 20, 30, []wall{{5, 20}, {0, 30}}},
	} {
		var got []wall
		for _, d := range flat.NearWalls(&tt.room, tt.part, geom.Point{X: in(tt.x), Y: in(tt.y)}) {
			side := tt.room.SideAt(d.Wall)
			got = append(got, wall{side, float64(d.Length) / float64(unit.Inch)})
			line := geom.FrameOf(tt.room.Segment(side))
			if along, _ := line.Project(d.From); d.To != line.Point(along, 0) {
				t.Errorf("%s: the tape to side %d runs aslant", tt.name, side)
			}
		}
		if len(got) != len(tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
			continue
		}
		for i := range got {
			if got[i] != tt.want[i] {
				t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
			}
		}
	}
}
