package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func faceOf(t *testing.T, h *walltest.House, side plan.ID) frame.Face {
	t.Helper()
	f, ok := frame.FaceOf(index.New(h.Plan), side)
	if !ok {
		t.Fatal("the face is gone")
	}
	return f
}

// A partition of 144 in at 16: studs at 16, 32 ... 128 as seen in one face, and at 144 less
// each in the other. One of a layout that is moved is stated; the others stay assumed.
func TestStudsAreThings(t *testing.T) {
	at := func(state plan.StudState, inches ...float64) (all []plan.StudPlace) {
		for _, l := range inches {
			all = append(all, plan.StudPlace{At: in(l), State: state})
		}
		return all
	}
	h := walltest.New(t)
	face, back := h.Partition(3.5)
	f := faceOf(t, h, face)
	if got, want := f.StudPlaces(), at(plan.StudAssumed, 16, 32, 48, 64, 80, 96, 112, 128, 144); !slices.Equal(got, want) {
		t.Fatalf("studs %v", got)
	}
	i, ok := f.StudAt(in(81), in(1))
	if _, none := f.StudAt(in(81), in(1)-1); !ok || i != 4 || none {
		t.Errorf("at 81 it finds %d, %v, and within less %v", i, ok, none)
	}
	h.Do(f.WithStudMoved(4, in(82.5)))
	want := slices.Concat(at(plan.StudAssumed, 16, 32, 48, 64), at(plan.StudStated, 82.5), at(plan.StudAssumed, 96, 112, 128, 144))
	if got := faceOf(t, h, face).StudPlaces(); !slices.Equal(got, want) {
		t.Errorf("moved: %v", got)
	}
	var behind []unit.Length
	for _, p := range faceOf(t, h, back).StudPlaces() {
		behind = append(behind, p.At)
	}
	if want := inches(0, 16, 32, 48, 61.5, 80, 96, 112, 128); !slices.Equal(behind, want) {
		t.Errorf("seen from behind: %v", behind)
	}
	h.Do(faceOf(t, h, face).WithoutStud(4))
	h.Do(faceOf(t, h, face).WithStud(in(20)))
	want = slices.Concat(at(plan.StudAssumed, 16), at(plan.StudStated, 20), at(plan.StudAssumed, 32, 48, 64, 96, 112, 128, 144))
	if got := faceOf(t, h, face).StudPlaces(); !slices.Equal(got, want) {
		t.Errorf("one out and one in: %v", got)
	}
	// Taped on the other face, both tell the same: 17, 32-3/4 and 49 are at 127, 111-1/4 and 95.
	h.Do(faceOf(t, h, back).Taped(inches(17, 32.75, 49)))
	if got, want := faceOf(t, h, face).StudPlaces(), at(plan.StudMeasured, 95, 111.25, 127); !slices.Equal(got, want) {
		t.Errorf("taped behind: %v", got)
	}
	if got := h.Found("stud-layouts"); len(got) > 0 {
		t.Errorf("the faces part: %v", got)
	}
	h.Do(faceOf(t, h, face).Taped(nil))
	if f := faceOf(t, h, face); f.IsPlaced() || f.LayoutState() != plan.StudAssumed {
		t.Error("emptied, the wall is not left to its spacing")
	}
}

// 10 ft wall of 8 ft: a door of 30 from 40 on and 80 high leaves a rough opening from 39 to 71
// and 82-1/2 high; the header lies on jacks of 1-1/2 at either hand and is 5-1/2 high.
func TestMembersOfAWall(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 120, 100, nil)
	h.Door(room.Sides[0], 40, 30, 0)
	r, _ := h.Plan.Room(room.ID)
	var got []frame.Rect
	kinds := map[frame.MemberKind]int{}
	for _, m := range faceOf(t, h, room.Sides[0]).Framed().Members(r) {
		got = append(got, m.Rect)
		kinds[m.Kind]++
	}
	rect := func(left, right, bottom, top float64) frame.Rect {
		return frame.Rect{Left: in(left), Right: in(right), Bottom: in(bottom), Top: in(top)}
	}
	want := []frame.Rect{
		rect(0, 39, 0, 1.5), rect(71, 120, 0, 1.5), // bottom plate, out at the door
		rect(0, 120, 94.5, 96), rect(0, 120, 93, 94.5), // two top plates
		rect(37.5, 72.5, 82.5, 88),
	}
	if !slices.Equal(got, want) || kinds[frame.Header] != 1 || kinds[frame.Sill] != 0 {
		t.Errorf("%v of %v, want %v", got, kinds, want)
	}
	h.Do(edit.AddBreak{Break: plan.Break{ID: h.IDs.New(plan.KindBreak), Kind: plan.BreakWindow, At: plan.OnFace(room.Sides[1], in(20)), Width: in(36), Sill: in(30), Head: in(80)}})
	for _, m := range faceOf(t, h, room.Sides[1]).Framed().Members(r) {
		// A window's rough opening is 1/4 in more all round: the sill lies under 29-3/4.
		if m.Kind == frame.Sill && m.Rect != rect(19.75, 56.25, 28.25, 29.75) {
			t.Errorf("the sill is at %v", m.Rect)
		}
	}
}

// Trade table 5d: in a 2×4 (3-1/2) a 4 in square of 1-1/2 against one of 1-1/2 leaves 1/2;
// against 2-1/8 it is 1/8 too deep. With a flat block of 1-1/2 behind it 1-1/2 leaves 1/2.
func TestWhatRemainsOfTheDepth(t *testing.T) {
	for _, tt := range []struct {
		name, own, other string
		along            float64
		want             float64
	}{
		{"alone at a stud", "SQ2", "", 66.75, 2},
		{"with a block", "SQ2", "", 72, 0.5},
		{"as deep behind", "SQ2", "SQ2", 66.75, 0.5},
		{"deeper behind", "SQ2", "SQ4", 66.75, -0.125},
	} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		o := h.Box(face, "duplex", tt.own, tt.along, 16, nil)
		if tt.other != "" {
			h.Box(back, "duplex", tt.other, 144-tt.along, 16, nil)
		}
		ref, _ := h.Plan.Side(face)
		view, _ := index.New(h.Plan).RoomView(ref.Room.ID)
		w := frame.WallIn(&view.Sides[ref.At], view.Room)
		fit, ok := w.FitOf(frame.PlacedIn(ref.Side(), ref.Room, o))
		left, known := fit.Remaining()
		if !ok || !known || left != in(tt.want) {
			t.Errorf("%s: %v, %v, %v; want %v in", tt.name, left, known, ok, tt.want)
		}
	}
}

// A room out of square: its right wall runs from the upper right corner 36 in back over 105 in
// down, so that it is √(36² + 105²) = 111 in long, whatever the sheet shows. At 16 in from its
// left its studs stand at 16 ... 96 and its end stud from 109-1/2 on: a square 4 in box at 103
// is in a bay of 109-1/2 − 96-3/4 = 12-3/4 in, one at 98-3/4 touches the stud at its left, as one
// at 107-1/2 does the end stud.
func TestAWallOutOfSquare(t *testing.T) {
	h := walltest.New(t)
	point := func(x, y float64) geom.Point { return geom.Point{X: walltest.In(x), Y: walltest.In(y)} }
	room := h.RoomOf(nil, point(0, 0), point(144, 0), point(108, 105), point(0, 105))
	side := room.Sides[1]
	f := faceOf(t, h, side)
	if f.Length != walltest.In(111) {
		t.Fatalf("the wall is %v long", f.Length)
	}
	ref, _ := h.Plan.Side(side)
	for _, tt := range []struct {
		along float64
		by    frame.Way
		block float64
	}{{103, frame.ByBlock, 12.75}, {98.75, frame.ByBracket, 0}, {107.5, frame.ByBracket, 0}, {98.75 + 1.0/16, frame.ByBlock, 12.75}, {107.5 - 1.0/16, frame.ByBlock, 12.75}} {
		o := &plan.Opening{Kind: "duplex", Gangs: 1, At: plan.OnFace(side, walltest.In(tt.along)), Height: plan.CentreAt(walltest.In(16)), Assembly: plan.Assembly{Code: "SQ1"}}
		got, block := f.Framed().HoldOn(o, ref.Room), walltest.In(0)
		if got.Block != nil {
			block = got.Block.Length
		}
		if got.By != tt.by || block != walltest.In(tt.block) || got.Bay.From != walltest.In(96.75) || got.Bay.To != walltest.In(109.5) {
			t.Errorf("at %v: held by %s, block %v, between %v and %v", tt.along, got.By, block, got.Bay.From, got.Bay.To)
		}
	}
}
