package frame_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func wallOf(t *testing.T, h *walltest.House, side plan.ID) *frame.Wall {
	t.Helper()
	ref, _ := h.Plan.Side(side)
	view, _ := index.New(h.Plan).RoomView(ref.Room.ID)
	return frame.WallIn(&view.Sides[ref.At], view.Room)
}

// TestBoxesBehind: those of the other face as they lie when seen from this one, as far as
// the two stand back to back, ends included; heights above this room's finished floor.
func TestBoxesBehind(t *testing.T) {
	h := walltest.New(t)
	front := h.Room(0, 0, 100, 120, func(r *plan.Room) { r.Floor = []plan.Layer{{Name: "tile", Thickness: in(0.5)}} })
	// From 20 to 140 as seen in front: at s in front is at 140 - s behind.
	back := h.Room(20, -104.5, 140, -4.5, func(r *plan.Room) { r.Floor = []plan.Layer{{Name: "oak", Thickness: in(0.75)}} })
	var want []string
	for _, tt := range []struct {
		along  float64
		status plan.Status
		isSeen bool
	}{
		{40, plan.StatusNew, true}, {40 - 1.0/16, plan.StatusNew, false}, {120, plan.StatusNew, true}, {90, plan.StatusNew, true},
		{60, plan.StatusExisting, true}, {70, plan.StatusRemove, false},
	} {
		o := h.Box(back.Sides[2], "duplex", "PN1", tt.along, 16, func(o *plan.Opening) { o.Status = tt.status })
		if front := frame.FrontOf(o); tt.isSeen {
			middle := in(140 - tt.along)
			rect := frame.Rect{Left: middle - (front.Width - front.Width/2), Bottom: in(16.25) - front.Height/2}
			rect.Right, rect.Top = rect.Left+front.Width, rect.Bottom+front.Height
			want = append(want, fmt.Sprint(int64(rect.Left), " ", rect, o.ID))
		}
	}
	slices.Sort(want)
	var got []string
	last := unit.Length(-1 << 62)
	for _, b := range wallOf(t, h, front.Sides[0]).Behind {
		got = append(got, fmt.Sprint(int64(b.Left), " ", b.Rect, b.Opening.ID))
		if b.Left < last || b.Box == nil || b.Side.ID != back.Sides[2] {
			t.Errorf("%+v comes after one at %v", b, last)
		}
		last = b.Left
	}
	if slices.Sort(got); !slices.Equal(got, want) {
		t.Errorf("behind\n%q, want\n%q", got, want)
	}
}

// TestWhatABoxIsMadeFor, by its mounting.
func TestWhatABoxIsMadeFor(t *testing.T) {
	for _, b := range part.All().Boxes {
		p := frame.Placed{Box: b}
		if want := slices.Contains([]part.Mounting{"nail-on", "bracket", "screw"}, b.Mounting); p.WantsStud() != want {
			t.Errorf("%s, %s, wants a stud: %v", b.ID, b.Mounting, !want)
		}
		if want := !slices.Contains([]part.Mounting{"surface", "masonry", "raceway", "floor"}, b.Mounting); p.IsBuiltIn() != want {
			t.Errorf("%s, %s, is built in: %v", b.ID, b.Mounting, !want)
		}
	}
	if none := (frame.Placed{}); none.WantsStud() || none.IsBuiltIn() {
		t.Error("no box wants a stud or is built in")
	}
	for _, box := range part.All().Boxes {
		for _, gangs := range []int{1, 2} {
			o := &plan.Opening{Gangs: gangs, Assembly: plan.Assembly{Box: box.ID}}
			side := &plan.Side{Finish: walltest.Layers(0.625)}
			var want []unit.Length // 1/4 in behind the face at most, NEC 314.20, and not before it
			for _, add := range part.All().Adds {
				if add.Kind == part.Ring && add.FitsOn(box.Shape) && add.Gangs == gangs && add.Raise >= in(0.375) && add.Raise <= in(0.625) && !slices.Contains(want, add.Raise) {
					want = append(want, add.Raise)
				}
			}
			slices.Sort(want)
			if got := frame.RingsPassing(o, side, in(0.25)); !slices.Equal(got, want) {
				t.Errorf("%s, %d gangs: rings %v, want %v", box.ID, gangs, got, want)
			}
		}
	}
	if got := frame.RingsPassing(&plan.Opening{}, &plan.Side{}, in(0.25)); got != nil {
		t.Errorf("without a box: rings %v", got)
	}
}

// TestStudsInABox: of studs at 16, 32 ..., 1-1/2 in thick, the one that takes the most, none
// where it is touched by no more than 1/32 in.
func TestStudsInABox(t *testing.T) {
	h := walltest.New(t)
	face, _ := h.Partition(3.5)
	w := wallOf(t, h, face)
	box := func(left, right unit.Length) frame.Placed {
		return frame.Placed{Rect: frame.Rect{Left: left, Right: right, Bottom: in(14), Top: in(18)}}
	}
	for _, tt := range []struct {
		name string
		box  frame.Placed
		at   float64
		by   unit.Length
	}{
		{"against it", box(in(12), in(15.25)), 0, 0},
		{"touching it", box(in(12), in(15.25)+unit.Inch/32), 0, 0},
		{"a nanometer deeper", box(in(12), in(15.25)+unit.Inch/32+1), 16, unit.Inch/32 + 1},
		{"from the right", box(in(16.75)-unit.Inch/32-1, in(20)), 16, unit.Inch/32 + 1},
		{"round it", box(in(14), in(18)), 16, in(1.5)},
		{"more in the second", box(in(16.5), in(32)), 32, in(0.75)},
		{"more in the first", box(in(16), in(31.5)), 16, in(0.75)},
	} {
		if s, by := w.StudIn(tt.box); s.At != in(tt.at) || by != tt.by {
			t.Errorf("%s: %v of the stud at %v, want %v at %v", tt.name, by, s.At, tt.by, tt.at)
		}
		for _, to := range []float64{20, 60.5} {
			if moved := tt.box.MovedTo(in(to)); moved.Centre() != in(to) || moved.Right-moved.Left != tt.box.Right-tt.box.Left {
				t.Errorf("%s, moved to %v: %+v", tt.name, to, moved.Rect)
			}
		}
	}
	// A window from 36 to 72 with its rough opening from 35-3/4: the stud at 48 stays under its
	// sill, below 30 - 1/4 - 1-1/2 = 28-1/4, and over its header.
	h = walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	h.Plan.Levels[0].Breaks = h.Plan.Levels[0].Breaks.With(&plan.Break{ID: h.IDs.New(plan.KindBreak), Kind: plan.BreakWindow, At: plan.OnFace(room.Sides[0], in(36)), Width: in(36), Sill: in(30), Head: in(80)})
	w = wallOf(t, h, room.Sides[0])
	for top, want := range map[float64]unit.Length{28.25: in(1.5), 40: in(1.5)} {
		b := frame.Placed{Rect: frame.Rect{Left: in(46), Right: in(50), Bottom: in(top - 4), Top: in(top)}}
		if top == 40 {
			want = 0
			b.Bottom = in(28.25)
		}
		if _, by := w.StudIn(b); by != want {
			t.Errorf("up to %v: %v in it, want %v", top, by, want)
		}
	}
}

// TestTooDeep: behind 1/2 in of board a square box of 1-1/2 in and one of 2-1/8 take 3-5/8,
// 1/8 more than a 2×4 is deep; what lies on a wall takes nothing of it.
func TestTooDeep(t *testing.T) {
	for _, tt := range []struct {
		name        string
		framing     float64
		own, behind string
		off         float64 // of the other along the wall
		want        float64
	}{
		{"as deep as the wall", 3.625, "SQ2", "SQ4", 0, 0},
		{"1/8 in deeper", 3.5, "SQ2", "SQ4", 0, 0.125},
		{"beside one another", 3.5, "SQ2", "SQ4", 4, 0},
		{"met by a sixteenth", 3.5, "SQ2", "SQ4", 4 - 1.0/16, 0.125},
		{"on the surface", 3.5, "HB1", "SQ4", 0, 0},
		{"the other on the surface", 3.5, "SQ2", "HB1", 0, 0},
	} {
		codeOf := func(c string) string {
			if c != "HB1" {
				return c
			}
			for _, a := range part.All().Assemblies {
				if a.Box.Mounting == part.Surface {
					return a.Code
				}
			}
			t.Fatal("nothing is set on a surface")
			return ""
		}
		h := walltest.New(t)
		face, back := h.Partition(tt.framing)
		h.Box(face, "duplex", codeOf(tt.own), 72, 16, nil)
		h.Box(back, "duplex", codeOf(tt.behind), 72-tt.off, 16, nil)
		w := wallOf(t, h, face)
		if got := w.TooDeep(w.Boxes[0], w.Behind[0]); got != in(tt.want) {
			t.Errorf("%s: %v too deep, want %v", tt.name, got, tt.want)
		}
		fit, ok := w.FitOf(w.Boxes[0])
		if isOn := tt.own == "HB1"; ok == isOn || ok && (fit.Other != nil) != (tt.behind != "HB1" && tt.off < 4) {
			t.Errorf("%s: fits %+v, %v", tt.name, fit, ok)
		}
	}
	h := walltest.New(t)
	face, back := h.Partition(3.5)
	h.Box(face, "switch", "SQ4", 72, 16, func(o *plan.Opening) { o.Gangs = 1 })
	for i, code := range []string{"SQ2", "SQ8", "SQ4"} { // 1-1/2, 3 and 2-1/8 in
		h.Box(back, "duplex", code, 71+float64(i), 16, nil)
	}
	w := wallOf(t, h, face)
	if fit, ok := w.FitOf(w.Boxes[0]); !ok || fit.Other == nil || fit.Other.Opening.Assembly.Code != "SQ8" {
		t.Errorf("of three behind it the deepest counts: %+v", fit)
	}
	if _, ok := w.FitOf(frame.Placed{Opening: w.Boxes[0].Opening, Box: w.Boxes[0].Box, Side: w.Boxes[0].Side}); ok {
		t.Error("a box of no depth fits")
	}
	if left, known := (frame.Fit{Own: in(2)}).Remaining(); known {
		t.Errorf("of a wall of which nobody tells the depth %v remain", left)
	}
	if left, known := (frame.Fit{Framing: in(3.5), Own: in(1), Block: &frame.Block{}}).Remaining(); !known || left != -in(1) {
		t.Errorf("a block on edge takes 3-1/2 in: %v remain", left)
	}
}

// What the keys of plaster take of the studs is told apart from them: 1/2 in behind each plastered
// face (common practice), as far as a wall behind stands there.
func TestDepthThatKeysTake(t *testing.T) {
	lath := func(keys float64) []plan.Layer {
		return []plan.Layer{{Name: "plaster", Thickness: in(0.75), Lath: plan.WoodLath, Keys: in(keys)}}
	}
	h := newHouse(t)
	side := h.room(0, 0, 120, 120, func(s []*plan.Side) { s[0].Studs.Depth, s[0].Finish = in(3.625), lath(0) })[0]
	h.room(40, -104.5, 80, -4.5, func(s []*plan.Side) { s[2].Finish = lath(0.75) })
	f, _ := frame.FaceOf(index.New(h.p), side)
	for along, want := range map[float64]float64{20: 0.5, 60: 1.25, 100: 0.5} {
		if got := f.KeysAt(in(along)); got != in(want) {
			t.Errorf("at %v keys take %v, want %v", along, got, in(want))
		}
	}
}

// TestDepthOfTheFraming: plaster keys take 1/2 in behind either face (common practice), or
// what the user found them to, and
// a wall behind tells the depth as far as it stands there, ends included.
func TestDepthOfTheFraming(t *testing.T) {
	lath := func(s *plan.Side) {
		s.Finish = []plan.Layer{{Name: "plaster", Thickness: in(0.5), Lath: plan.WoodLath}}
	}
	keys := func(far float64) func(*plan.Side) {
		return func(s *plan.Side) { lath(s); s.Finish[0].Keys = in(far) }
	}
	at := func(front, back func(*plan.Side)) frame.Face {
		h := newHouse(t)
		side := h.room(0, 0, 120, 120, func(s []*plan.Side) {
			s[0].Studs.Depth = in(5.5)
			if front != nil {
				front(s[0])
			}
		})[0]
		h.room(40, -104.5, 80, -4.5, func(s []*plan.Side) {
			if back != nil {
				back(s[2])
			}
		})
		f, _ := frame.FaceOf(index.New(h.p), side)
		return f
	}
	for _, tt := range []struct {
		name        string
		front, back func(*plan.Side)
		there, free float64 // framing before the wall behind, and past it
	}{
		{"board", nil, nil, 3.5, 5.5},
		{"plaster here", lath, nil, 3, 5},
		{"plaster there", nil, lath, 3, 5.5},
		{"keys that were measured", keys(0.75), nil, 2.75, 4.75},
		{"keys shorter than usual", keys(0.25), nil, 3.25, 5.25},
		{"keys there", nil, keys(0.75), 2.75, 5.5},
		{"no keys without a lath", func(s *plan.Side) { keys(0.75)(s); s.Finish[0].Lath = plan.NoLath }, nil, 3.5, 5.5},
		{"plaster on both", lath, lath, 2.5, 5},
		{"glass behind", nil, func(s *plan.Side) { s.Kind = plan.SideGlass }, 5.5, 5.5},
		{"as thick as all", func(s *plan.Side) { s.Finish = walltest.Layers(4.5) }, nil, 0, 5.5},
		{"nobody tells the depth", func(s *plan.Side) { s.Studs.Depth = 0 }, nil, 3.5, 0},
		{"nor behind plaster", func(s *plan.Side) { s.Studs.Depth = 0; lath(s) }, nil, 3, 0},
	} {
		f := at(tt.front, tt.back)
		for along, want := range map[unit.Length]float64{in(39): tt.free, in(40) - 1: tt.free, in(40): tt.there, in(60): tt.there, in(80): tt.there, in(80) + 1: tt.free, in(100): tt.free} {
			if got := f.FramingAt(along); got != in(want) {
				t.Errorf("%s, at %v: %v, want %v", tt.name, along, got, want)
			}
		}
	}
}
