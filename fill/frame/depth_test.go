package frame_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
)

func TestBodies(t *testing.T) {
	for _, tt := range []struct {
		name     string
		assembly plan.Assembly
		want     frame.Body
		framing  float64 // behind 1/2 in of board
		source   string
	}{
		{"a nail-on box", plan.Assembly{Code: "PN1"}, frame.Body{Depth: in(2.75)}, 2.25, "comes through the board itself: 2-3/4 less 1/2"},
		{"a square box with a ring", plan.Assembly{Code: "SQ1"}, frame.Body{Depth: in(1.5), Raise: in(0.5), HasRing: true}, 1.5, "stands even with the stud"},
		{"with an extension", plan.Assembly{Code: "SQ8"}, frame.Body{Depth: in(3), Raise: in(0.5), HasRing: true}, 3, "1-1/2 + 1-1/2"},
		{"by hand", plan.Assembly{Box: "sq4-2.125", Parts: []plan.AssemblyPart{{Part: "ring4-1g-0.75"}}}, frame.Body{Depth: in(2.125), Raise: in(0.75), HasRing: true}, 2.125, "its own parts"},
		{"a blank cover", plan.Assembly{Code: "SQ9"}, frame.Body{Depth: in(2.125)}, 1.625, "no ring: 2-1/8 less 1/2"},
		{"a pan thinner than the board", plan.Assembly{Box: "pan4-4"}, frame.Body{Depth: in(0.5)}, 0, "1/2 less 1/2"},
	} {
		got, ok := frame.BodyOf(tt.assembly)
		if !ok || got != tt.want || got.InFraming(in(0.5)) != in(tt.framing) {
			t.Errorf("%s: %+v, %s in the framing; want %+v, %v (%s)", tt.name, got, got.InFraming(in(0.5)), tt.want, tt.framing, tt.source)
		}
	}
	for _, none := range []plan.Assembly{{}, {Box: "tin"}, {Code: "ZZ9"}} {
		if _, ok := frame.BodyOf(none); ok {
			t.Errorf("%+v has a body", none)
		}
	}
}

// Boxes back to back, as a table of trade practice works them out: a 2×4 wall is 3-1/2 deep,
// a 2×6 wall 5-1/2, both with 1/2 in of board; a square box with a ring takes its whole
// depth, a nail-on box its depth less the board.
func TestBoxesBackToBack(t *testing.T) {
	square := func(depth float64) frame.Body { return frame.Body{Depth: in(depth), HasRing: true} }
	nailOn := func(depth float64) frame.Body { return frame.Body{Depth: in(depth)} }
	for _, tt := range []struct {
		name          string
		framing       float64
		front, behind frame.Body
		want          float64
	}{
		{"square 1-1/2 and 1-1/2", 3.5, square(1.5), square(1.5), 0.5},
		{"square 1-1/2 and 2-1/8", 3.5, square(1.5), square(2.125), -0.125},
		{"square 2-1/8 and 2-1/8", 3.5, square(2.125), square(2.125), -0.75},
		{"nail-on 2-1/2 and 2-1/2", 3.5, nailOn(2.5), nailOn(2.5), -0.5},
		{"nail-on 2-7/8 and 2-7/8", 3.5, nailOn(2.875), nailOn(2.875), -1.25},
		{"square 2-1/8 and 2-1/8 in a 2×6", 5.5, square(2.125), square(2.125), 1.25},
		{"nail-on 3-1/2 and 3-1/2 in a 2×6", 5.5, nailOn(3.5), nailOn(3.5), -0.5},
	} {
		board := in(0.5)
		if got := frame.Spare(in(tt.framing), tt.front.InFraming(board), tt.behind.InFraming(board)); got != in(tt.want) {
			t.Errorf("%s: %s spare, want %v", tt.name, got, tt.want)
		}
	}
}

func TestFramingDepths(t *testing.T) {
	h := newHouse(t)
	// Faces 5 in apart for the first 60 in, nothing behind the rest.
	front := h.room(0, 0, 120, 120, func(s []*plan.Side) { s[0].Studs.Depth = in(5.5) })[0]
	h.room(0, -105, 60, -5, func(s []*plan.Side) {
		s[2].Finish = append(s[2].Finish, plan.Layer{Name: "tile", Thickness: in(0.375)})
	})
	f, ok := frame.FaceOf(index.New(h.p), front)
	if !ok {
		t.Fatal("no face")
	}
	for _, tt := range []struct {
		at, want float64
		source   string
	}{
		{30, 3.625, "5 less 1/2 and 7/8: the geometry tells, whatever is stated"},
		{90, 5.5, "nothing behind: as stated"},
	} {
		if got := f.FramingAt(in(tt.at)); got != in(tt.want) {
			t.Errorf("at %v: %s, want %v (%s)", tt.at, got, tt.want, tt.source)
		}
	}
}

func TestThicknesses(t *testing.T) {
	board := []plan.Layer{{Name: "board", Thickness: in(0.5)}, {Name: "tile", Thickness: in(0.375)}}
	for _, tt := range []struct {
		name            string
		side            plan.Side
		free, partition float64
		source          string
	}{
		{"nothing told", plan.Side{Kind: plan.SideWall}, 4.75, 4.5, "3-1/2 + 1-1/4; 3-1/2 + 2 × 1/2, common practice"},
		{"a 2×6 with tile", plan.Side{Kind: plan.SideWall, Studs: plan.Studs{Depth: in(5.5)}, Finish: board}, 7.625, 7.25, "7/8 + 5-1/2 + 1-1/4; 5-1/2 + 2 × 7/8"},
		{"glass", plan.Side{Kind: plan.SideGlass}, 0, 4.5, "no body of its own"},
	} {
		if free, both := frame.FreeThickness(&tt.side), frame.PartitionBehind(&tt.side); free != in(tt.free) || both != in(tt.partition) {
			t.Errorf("%s: %s and %s, want %v and %v (%s)", tt.name, free, both, tt.free, tt.partition, tt.source)
		}
	}
	if got := frame.SetProud(&plan.Side{Finish: board}); got != in(0.875) {
		t.Errorf("set proud by %s, want 7/8: 1/2 + 3/8", got)
	}
}
