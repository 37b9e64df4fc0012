package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

func centres(f frame.Face) (at []unit.Length) {
	for _, s := range f.Studs() {
		at = append(at, s.At)
	}
	return at
}

func commons(f frame.Face) (at []unit.Length) {
	for _, s := range f.Studs() {
		if s.Kind == frame.CommonStud {
			at = append(at, s.At)
		}
	}
	return at
}

func inches(all ...float64) (lengths []unit.Length) {
	for _, l := range all {
		lengths = append(lengths, in(l))
	}
	return lengths
}

// Two rooms share a partition: the front one's face is 100 in long, the one behind begins 10
// in farther left and is as long as told. What is at s in front is at its length + (-10) - s
// behind.
func TestStudsOfAPartition(t *testing.T) {
	for _, tt := range []struct {
		name          string
		behind        float64 // length of the face behind
		change        func(front, back *plan.Side)
		front, theirs []unit.Length
		source        string
	}{
		{"the longer face holds", 120, nil,
			// Behind: 16, 32 ... 112 from its left end, which is at 110 in front: 110 - 16 n.
			inches(14, 30, 46, 62, 78, 94), inches(16, 32, 48, 64, 80, 96, 112), "its wall was framed in one piece"},
		{"a first stud said in front holds for both", 120,
			func(front, _ *plan.Side) { front.Studs.First = in(4) },
			// In front 4 + 16 n: 4 ... 84; at 100 the end stud stands. Seen from behind 110 - s;
			// where nothing is in front, its own.
			inches(4, 20, 36, 52, 68, 84), inches(26, 42, 58, 74, 90, 106, 112), "what one face states holds for the other"},
		{"one said behind holds for both", 90,
			func(_, back *plan.Side) { back.Studs.First = in(5) },
			// Behind 5 + 16 n: 5 ... 85, its left end at 80 in front: 80 - t.
			inches(11, 27, 43, 59, 75, 96), inches(5, 21, 37, 53, 69, 85), "and the front's own past its end"},
		{"no spacing in front", 120,
			func(front, _ *plan.Side) { front.Studs.Spacing = 0 },
			inches(14, 30, 46, 62, 78, 94), inches(16, 32, 48, 64, 80, 96, 112), "what one face states holds for the other"},
		{"glass behind", 120,
			func(_, back *plan.Side) { back.Kind = plan.SideGlass },
			inches(16, 32, 48, 64, 80, 96), nil, "glass has no studs and tells none"},
		{"no wall in front", 120,
			func(front, _ *plan.Side) { front.Kind = plan.SideOpen },
			nil, inches(16, 32, 48, 64, 80, 96, 112), "an open side has none"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := newHouse(t)
			var sides [2]*plan.Side
			change := tt.change
			if change == nil {
				change = func(_, _ *plan.Side) {}
			}
			h.room(0, 0, 100, 120, func(s []*plan.Side) { sides[0] = s[0]; change(s[0], &plan.Side{}) })
			h.room(-10, -104.5, tt.behind-10, -4.5, func(s []*plan.Side) { sides[1] = s[2]; change(&plan.Side{}, s[2]) })
			ix := index.New(h.p)
			for i, want := range [][]unit.Length{tt.front, tt.theirs} {
				f, ok := frame.FaceOf(ix, sides[i].ID)
				if got := commons(f); !ok || !slices.Equal(got, want) {
					t.Errorf("face %d: %v, want %v (%s)", i, got, want, tt.source)
				}
			}
		})
	}
}

// Wherever two faces stand back to back, the studs of the one are those of the other.
func TestBothFacesSeeTheSameStuds(t *testing.T) {
	random := plantest.NewIDs(7)
	p := plantest.House(3, 120)
	i := 0
	for r := range p.Levels[0].Rooms.All() {
		for _, s := range r.Sides {
			change := *s
			if i++; i%3 == 0 {
				change.Studs.First = unit.Length(random.New(plan.KindSide)[1]%16) * unit.Inch
			}
			next, err := edit.ChangeSide{Side: change}.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p = next
		}
	}
	ix := index.New(p)
	compared := 0
	for r := range p.Levels[0].Rooms.All() {
		for at, s := range r.Sides {
			here, _ := frame.FaceOf(ix, s.ID)
			line := geom.FrameOf(r.Segment(at))
			for _, b := range here.Behind {
				there, _ := frame.FaceOf(ix, b.Side.ID)
				back := geom.FrameOf(there.Line)
				for _, stud := range here.Studs() {
					if stud.At < b.From || stud.At > b.To {
						continue
					}
					along, _ := back.Project(line.Point(stud.At, 0))
					if !slices.Contains(centres(there), along) {
						t.Errorf("%s has a stud at %s, %s none at %s", s.ID, stud.At, b.Side.ID, along)
					}
					compared++
				}
			}
		}
	}
	if compared < 100 {
		t.Fatalf("%d studs compared: too few to say anything", compared)
	}
}

func baysOf(studs []frame.Stud, length unit.Length) []frame.Bay {
	return slices.Collect(frame.Bays(frame.Framed{All: studs}.Between(0, in(96)), length))
}

// A room 50 in wide with studs at 16 in: flanks at 3/4 in either side of 16 and 32, end
// studs from 0 to 1-1/2 and from 48-1/2 to 50, where the stud at 48 has no place.
func TestBays(t *testing.T) {
	h := newHouse(t)
	if len(baysOf(nil, 0)) != 0 {
		t.Error("a face of no length has a bay")
	}
	side := h.room(0, 0, 50, 120, nil)[0]
	f, _ := frame.FaceOf(index.New(h.p), side)
	bays := baysOf(f.Studs(), f.Length)
	want := [][2]unit.Length{{in(1.5), in(15.25)}, {in(16.75), in(31.25)}, {in(32.75), in(48.5)}}
	if len(bays) != len(want) {
		t.Fatalf("%d bays, want %d: %+v", len(bays), len(want), bays)
	}
	for i, b := range bays {
		if b.From != want[i][0] || b.To != want[i][1] {
			t.Errorf("bay %d from %s to %s, want %s to %s: 14-1/2 clear at 16 in", i, b.From, b.To, want[i][0], want[i][1])
		}
	}
	if last := bays[2]; last.Left == nil || last.Left.At != in(32) || last.Right == nil || last.Right.At != in(49.25) {
		t.Errorf("the last bay stands between %v and %v, want a stud at 32 and the end stud", last.Left, last.Right)
	}
	for _, tt := range []struct{ at, from float64 }{{0, 1.5}, {15, 1.5}, {15.9375, 1.5}, {16, 1.5}, {16.0625, 16.75}, {20, 16.75}, {50, 32.75}} {
		if b, ok := frame.BayAt(slices.Values(bays), in(tt.at)); !ok || b.From != in(tt.from) {
			t.Errorf("at %v: the bay from %s, want %v", tt.at, b.From, tt.from)
		}
	}
	if bays := baysOf(nil, in(30)); len(bays) != 1 || bays[0] != (frame.Bay{To: in(30)}) {
		t.Errorf("no studs: %+v, want the whole face", bays)
	}
}

// A box 4 in wide beside a stud at 32 in stands 4/2 + 1-1/2 / 2 = 2-3/4 from its centre.
func TestBoxesBesideAStud(t *testing.T) {
	if left, right := (frame.Stud{At: in(32)}).Beside(in(4)); left != in(29.25) || right != in(34.75) {
		t.Errorf("%s and %s, want 29-1/4 and 34-3/4", left, right)
	}
}
