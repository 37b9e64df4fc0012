package clash

import (
	"math/rand/v2"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

const inch = unit.Inch

// TestAHabitIsWhatMostHave: three or more of one height, and more than have any other (common
// practice), however they are strewn.
func TestAHabitIsWhatMostHave(t *testing.T) {
	habits := 0
	for seed := range uint64(400) {
		n := rand.New(rand.NewPCG(seed, 2))
		var all []*plan.Opening
		count := [4]int{}
		for range n.IntN(12) {
			k := n.IntN(4)
			count[k]++
			all = append(all, &plan.Opening{Height: plan.CentreAt(unit.Length(10+k) * inch)})
		}
		most, want := 0, false
		for k, c := range count {
			isMost := c >= 3
			for j, other := range count {
				isMost = isMost && (j == k || other < c)
			}
			if isMost {
				most, want = k, true
				habits++
			}
		}
		if at, ok := usualHeight(all, nil); ok != want || ok && at != unit.Length(10+most)*inch {
			t.Fatalf("of %v: %v, %v", count, at, ok)
		}
	}
	if habits < 100 {
		t.Errorf("%d habits", habits)
	}
}

// TestHowHighOneReaches: ADA 2010 308.2.2 and 308.3.2: 48 in over what is up to 20 in deep, 46
// where it is up to 34 high and 24 deep, 44 up to 25 deep, nothing over a deeper one. What
// hangs, what is higher than the opening and what is beside it is in nobody's way.
func TestHowHighOneReaches(t *testing.T) {
	const none = 0
	for _, tt := range []struct {
		name                string
		deep, high, bottom  unit.Length
		along, centre, want unit.Length
	}{
		{"20 in deep", 20 * inch, 36 * inch, 0, 50 * inch, 42 * inch, 48 * inch},
		{"deeper", 20*inch + 1, 36 * inch, 0, 50 * inch, 42 * inch, 44 * inch},
		{"deeper and low", 20*inch + 1, 34 * inch, 0, 50 * inch, 42 * inch, 46 * inch},
		{"deeper and not quite as low", 20*inch + 1, 34*inch + 1, 0, 50 * inch, 42 * inch, 44 * inch},
		{"24 in deep and low", 24 * inch, 34 * inch, 0, 50 * inch, 42 * inch, 46 * inch},
		{"over 24 and low", 24*inch + 1, 34 * inch, 0, 50 * inch, 42 * inch, 44 * inch},
		{"25 in deep", 25 * inch, 36 * inch, 0, 50 * inch, 42 * inch, 44 * inch},
		{"over 25", 25*inch + 1, 36 * inch, 0, 50 * inch, 42 * inch, none},
		{"at its left end", 30 * inch, 36 * inch, 0, 40 * inch, 42 * inch, none},
		{"left of it", 30 * inch, 36 * inch, 0, 40*inch - 1, 42 * inch, 48 * inch},
		{"at its right end", 30 * inch, 36 * inch, 0, 70 * inch, 42 * inch, none},
		{"right of it", 30 * inch, 36 * inch, 0, 70*inch + 1, 42 * inch, 48 * inch},
		{"level with its top", 30 * inch, 36 * inch, 0, 50 * inch, 36 * inch, none},
		{"below its top", 30 * inch, 36 * inch, 0, 50 * inch, 36*inch - 1, 48 * inch},
		{"one that hangs", 30 * inch, 20 * inch, 1, 50 * inch, 42 * inch, 48 * inch},
	} {
		f := &plan.Fixture{Kind: plan.FixtureCounter, At: plan.OnFace("s", 40*inch), Width: 30 * inch, Depth: tt.deep, Height: tt.high, Bottom: tt.bottom}
		far := &plan.Fixture{Kind: plan.FixtureCounter, At: plan.OnFace("s", 400*inch), Width: 30 * inch, Depth: 90 * inch, Height: 36 * inch}
		s := index.SideView{Fixtures: []index.FixtureView{{Fixture: far}, {Fixture: f}}}
		high, ok := highest(s, &plan.Opening{At: plan.OnFace("s", tt.along)}, tt.centre)
		if ok != (tt.want > 0) || high != tt.want {
			t.Errorf("%s: %v, %v; want %v", tt.name, high, ok, tt.want)
		}
	}
}

// TestWhatALeafCovers: what of a wall lies straight behind it, from end to end, where it stands
// no farther off than told: of one aslant, at the middle of the box.
func TestWhatALeafCovers(t *testing.T) {
	wall := geom.Segment{B: geom.Point{X: 200 * inch}}
	s := &index.SideView{Line: wall, Frame: geom.FrameOf(wall), Length: 200 * inch}
	at := func(x, y unit.Length) geom.Point { return s.Frame.Point(x, y) }
	along := func(from, to, out unit.Length) leaf {
		return leaf{Segment: geom.Segment{A: at(from, out), B: at(to, out)}}
	}
	aslant := leaf{Segment: geom.Segment{A: at(20*inch, 5*inch), B: at(60*inch, 15*inch)}}
	back := leaf{Segment: geom.Segment{A: aslant.B, B: aslant.A}}
	const near, hair = 12 * inch, inch / 64
	for _, tt := range []struct {
		name        string
		leaf        leaf
		left, right unit.Length
		near        unit.Length
		want        bool
	}{
		{"within", along(20*inch, 50*inch, 10*inch), 30 * inch, 32 * inch, near, true},
		{"as far as told", along(20*inch, 50*inch, near), 30 * inch, 32 * inch, near, true},
		{"farther", along(20*inch, 50*inch, near+1), 30 * inch, 32 * inch, near, false},
		{"at the wall", along(20*inch, 50*inch, 0), 30 * inch, 32 * inch, near, true},
		{"behind the wall", along(20*inch, 50*inch, -1), 30 * inch, 32 * inch, near, false},
		{"ends where the leaf begins", along(20*inch, 50*inch, 10*inch), 18 * inch, 20 * inch, near, false},
		{"a hair farther", along(20*inch, 50*inch, 10*inch), 18*inch + 1, 20*inch + 1, near, true},
		{"begins where the leaf ends", along(20*inch, 50*inch, 10*inch), 50 * inch, 52 * inch, near, false},
		{"a hair before", along(20*inch, 50*inch, 10*inch), 50*inch - 1, 52*inch - 1, near, true},
		{"hinged at its right", along(50*inch, 20*inch, 10*inch), 30 * inch, 32 * inch, near, true},
		{"aslant: 39 to 41, 10 off", aslant, 39 * inch, 41 * inch, 10*inch + hair, true},
		{"and no nearer", aslant, 39 * inch, 41 * inch, 10*inch - hair, false},
		{"29 to 31, 7-1/2 off", aslant, 29 * inch, 31 * inch, 15*inch/2 + hair, true},
		{"and no nearer, the other way round", back, 29 * inch, 31 * inch, 15*inch/2 - hair, false},
		{"the other way round", back, 29 * inch, 31 * inch, 15*inch/2 + hair, true},
		{"its middle past the end: 15 off there", aslant, 59 * inch, 63 * inch, 15 * inch, true},
		{"and no nearer there", aslant, 59 * inch, 63 * inch, 15*inch - hair, false},
		{"its middle before the start: 5 off there", aslant, 17 * inch, 21 * inch, 5 * inch, true},
		{"and no nearer here", aslant, 17 * inch, 21 * inch, 5*inch - hair, false},
		{"aslant through the wall", leaf{Segment: geom.Segment{A: at(20*inch, -1), B: at(60*inch, 15*inch)}}, 39 * inch, 41 * inch, 100 * inch, false},
	} {
		if got := tt.leaf.covers(s, frame.Rect{Left: tt.left, Right: tt.right, Top: 10 * inch}, tt.near); got != tt.want {
			t.Errorf("%s: %v", tt.name, got)
		}
	}
}

// TestLightsBesideAThing: one at either hand within 3 ft of it (common practice); of more, and
// of what is no light or comes with its own housing, no pair.
func TestLightsBesideAThing(t *testing.T) {
	body := frame.Rect{Left: 60 * inch, Right: 90 * inch}
	box := func(kind string, at unit.Length) frame.Placed {
		return frame.Placed{Opening: &plan.Opening{Kind: kind}, Rect: frame.Rect{Left: at - inch, Right: at + inch}}
	}
	housed := box("wall-light", 96*inch)
	housed.IsHoused = true
	light := func(at unit.Length) frame.Placed { return box("wall-light", at) }
	for _, tt := range []struct {
		name  string
		boxes []frame.Placed
		want  bool
	}{
		{"one at either hand", []frame.Placed{light(50 * inch), light(100 * inch)}, true},
		{"as far as 3 ft", []frame.Placed{light(24 * inch), light(126 * inch)}, true},
		{"a hair farther at the left", []frame.Placed{light(24*inch - 1), light(126 * inch)}, false},
		{"a hair farther at the right", []frame.Placed{light(24 * inch), light(126*inch + 1)}, false},
		{"a hair beside it", []frame.Placed{light(60*inch - 1), light(90*inch + 1)}, true},
		{"over its left end", []frame.Placed{light(60 * inch), light(100 * inch)}, false},
		{"over its right end", []frame.Placed{light(50 * inch), light(90 * inch)}, false},
		{"two at the left", []frame.Placed{light(40 * inch), light(50 * inch), light(100 * inch)}, false},
		{"two at the right", []frame.Placed{light(50 * inch), light(100 * inch), light(110 * inch)}, false},
		{"one over it besides", []frame.Placed{light(50 * inch), light(75 * inch), light(100 * inch)}, true},
		{"one far off besides", []frame.Placed{light(10 * inch), light(50 * inch), light(100 * inch)}, true},
		{"a receptacle besides", []frame.Placed{light(50 * inch), box("duplex", 40*inch), light(100 * inch)}, true},
		{"of a kind nobody knows", []frame.Placed{light(50 * inch), box("own", 100*inch)}, false},
		{"with its own housing", []frame.Placed{light(50 * inch), housed}, false},
	} {
		w := &frame.Wall{}
		w.Boxes = tt.boxes
		left, right, ok := besides(w, body)
		if ok != tt.want || ok && (left.Centre() >= body.Left || right.Centre() <= body.Right || left.Centre() < 24*inch) {
			t.Errorf("%s: %v and %v, %v", tt.name, left.Rect, right.Rect, ok)
		}
	}
}
