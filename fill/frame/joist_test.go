package frame_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestBetweenJoists: boxes in a ceiling of 120 in whose joists run beside the upper wall. At 16
// in on center one stands at 32 in and the next at 48, so that their near faces are at 32-3/4
// and 47-1/4 in and the block between them is 16 − 1-1/2 = 14-1/2 in. A round box 4 in wide
// touches the one at 32 with its center at 32-3/4 + 2 = 34-3/4 in; 1/32 in off it touches still.
// At 24 in a block is 22-1/2 in. Taped joists leave what the tape says: 16-1/2 − 1-1/2 = 15 in.
func TestBetweenJoists(t *testing.T) {
	const top = 0
	taped := func(at ...float64) (j plan.Joists) {
		for _, l := range at {
			j.Places = append(j.Places, plan.StudPlace{At: in(l), State: plan.StudMeasured})
		}
		return j
	}
	said := plan.Joists{Spacing: in(16), First: in(16)}
	mixed := taped(32, 48)
	mixed.Places[1].State = plan.StudStated
	for _, tt := range []struct {
		name       string
		joists     plan.Joists
		code       string
		out        float64
		by         frame.Way
		from, to   float64
		block      float64 // 0: none
		state      plan.StudState
		first, end bool // a joist is at either hand
	}{
		{"in the middle", said, "RD1", 40, frame.ByBlock, 32.75, 47.25, 14.5, plan.StudStated, true, true},
		{"against the one before", said, "RD1", 34.75, frame.ByJoist, 32.75, 47.25, 0, plan.StudStated, true, true},
		{"a 16th off it", said, "RD1", 34.75 + 1.0/16, frame.ByBlock, 32.75, 47.25, 14.5, plan.StudStated, true, true},
		{"against the one after", said, "RD1", 45.25, frame.ByJoist, 32.75, 47.25, 0, plan.StudStated, true, true},
		{"a 16th short of it", said, "RD1", 45.25 - 1.0/16, frame.ByBlock, 32.75, 47.25, 14.5, plan.StudStated, true, true},
		{"on a bar", said, "RD4", 40, frame.ByBar, 32.75, 47.25, 0, plan.StudStated, true, true},
		{"24 in apart", plan.Joists{Spacing: in(24), First: in(24)}, "RD1", 36, frame.ByBlock, 24.75, 47.25, 22.5, plan.StudStated, true, true},
		{"only a spacing", plan.Joists{Spacing: in(16)}, "RD1", 40, frame.ByBlock, 32.75, 47.25, 14.5, plan.StudAssumed, true, true},
		{"taped", taped(15, 31.5, 48), "RD1", 40, frame.ByBlock, 32.25, 47.25, 15, plan.StudMeasured, true, true},
		{"one taped, one said", mixed, "RD1", 40, frame.ByBlock, 32.75, 47.25, 14.5, plan.StudStated, true, true},
		{"past the last that was taped", taped(16, 32), "RD1", 40, frame.ByBlock, 32.75, 40, 0, plan.StudMeasured, true, false},
		{"before the first", taped(64), "RD1", 40, frame.ByBlock, 40, 63.25, 0, plan.StudMeasured, false, true},
		{"against the last", taped(16, 32), "RD1", 34.75, frame.ByJoist, 32.75, 34.75, 0, plan.StudMeasured, true, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := newHouse(t)
			sides := h.room(0, 0, 120, 120, nil)
			ref, _ := index.New(h.p).Side(sides[top])
			room := *ref.Room
			room.Joists = tt.joists
			room.Joists.Along = sides[top]
			o := plan.Opening{Kind: "ceiling-light", Assembly: plan.Assembly{Code: tt.code}, At: plan.OnCeiling(room.ID, geom.Point{X: in(60), Y: in(tt.out)})}
			got := frame.HoldIn(&o, &room)
			want := fmt.Sprint(tt.by, " ", in(tt.from), " ", in(tt.to), " ", in(tt.block), " ", tt.state, " ", tt.first, tt.end)
			block := in(0)
			if got.Block != nil {
				block = got.Block.Length
				if !got.Block.IsOverhead {
					t.Error("the block is told as one in a wall")
				}
			}
			if said := fmt.Sprint(got.By, " ", got.Bay.From, " ", got.Bay.To, " ", block, " ", got.State, " ", got.Bay.Left != nil, got.Bay.Right != nil); said != want || !got.HasBay {
				t.Errorf("held %s, want %s", said, want)
			}
		})
	}
}

// TestJoistsAcrossTheSheet: joists beside the right wall count from it, and what of a box lies
// square to them is its width on the sheet. A box of one gang, 2-5/16 in wide and 3-3/4 high,
// touches a joist at 16 in with its center 16-3/4 + 1-5/32 in from that wall; under joists
// beside the upper wall it is 16-3/4 + 1-7/8 in.
func TestJoistsAcrossTheSheet(t *testing.T) {
	h := newHouse(t)
	sides := h.room(0, 0, 120, 120, nil)
	ref, _ := index.New(h.p).Side(sides[0])
	for _, tt := range []struct {
		side  int
		touch float64
		at    func(out float64) geom.Point
	}{
		{0, 16.75 + 1.875, func(out float64) geom.Point { return geom.Point{X: in(60), Y: in(out)} }},
		{1, 16.75 + 1.15625, func(out float64) geom.Point { return geom.Point{X: in(120) - in(out), Y: in(60)} }},
	} {
		room := *ref.Room
		room.Joists = plan.Joists{Along: sides[tt.side], Spacing: in(16), First: in(16)}
		o := plan.Opening{Kind: "duplex", Gangs: 1, Assembly: plan.Assembly{Code: "PN1"}}
		for _, x := range []struct {
			off  float64
			want frame.Way
		}{{0, frame.ByJoist}, {1.0 / 8, frame.ByBlock}} {
			o.At = plan.OnCeiling(room.ID, tt.at(tt.touch+x.off))
			if got := frame.HoldIn(&o, &room); got.By != x.want {
				t.Errorf("beside side %d, %v off: held by %q, want %q", tt.side, x.off, got.By, x.want)
			}
		}
	}
}

// TestTapedJoistsStay: what was taped is put down in its order, and emptied it leaves the joists
// to their spacing.
func TestTapedJoistsStay(t *testing.T) {
	h := newHouse(t)
	sides := h.room(0, 0, 120, 120, nil)
	ref, _ := index.New(h.p).Side(sides[0])
	room := *ref.Room
	room.Joists = plan.Joists{Along: sides[0], Spacing: in(16)}
	h.do(frame.JoistsTaped(room, inches(33, 17)))
	now, _ := h.p.Room(room.ID)
	if got := fmt.Sprint(now.Joists.Places); got != fmt.Sprint([]plan.StudPlace{{At: in(17), State: plan.StudMeasured}, {At: in(33), State: plan.StudMeasured}}) {
		t.Errorf("taped: %s", got)
	}
	if out, ok := frame.FromJoistWall(now, geom.Point{X: in(5), Y: in(40)}); out != in(40) || !ok {
		t.Errorf("a place is %v from the wall, %v", out, ok)
	}
	h.do(frame.JoistsTaped(*now, nil))
	if now, _ = h.p.Room(room.ID); len(now.Joists.Places) != 0 || now.Joists.Spacing != in(16) {
		t.Errorf("emptied: %+v", now.Joists)
	}
	now2 := *now
	now2.Joists.Places = []plan.StudPlace{{At: in(5), State: plan.StudMeasured}, {At: in(4), State: plan.StudMeasured}}
	if _, err := (edit.ChangeRoom{Room: now2}).Apply(h.p); err == nil {
		t.Error("joists out of their order are taken")
	}
}

// Joists at 16 in from a wall, the first at 10: …, −6, 10, 26, 42. Taped ones are what was taped.
func TestJoistsBetween(t *testing.T) {
	r := &plan.Room{Sides: []*plan.Side{{ID: "s1"}, {ID: "s2", Start: geom.Point{X: in(120)}}, {ID: "s3", Start: geom.Point{X: in(120), Y: in(100)}}}}
	for _, tt := range []struct {
		name     string
		joists   plan.Joists
		from, to unit.Length
		want     []unit.Length
	}{
		{"from the first on", plan.Joists{Along: "s1", Spacing: in(16), First: in(10)}, 0, in(42), inches(10, 26, 42)},
		{"just short", plan.Joists{Along: "s1", Spacing: in(16), First: in(10)}, in(10) + 1, in(42) - 1, inches(26)},
		{"on both sides of the wall", plan.Joists{Along: "s1", Spacing: in(16), First: in(10)}, in(-22), in(10), inches(-22, -6, 10)},
		{"past the first", plan.Joists{Along: "s1", Spacing: in(16), First: in(10)}, in(40), in(60), inches(42, 58)},
		{"the first not told", plan.Joists{Along: "s1", Spacing: in(24)}, 0, in(50), inches(0, 24, 48)},
		{"taped", plan.Joists{Along: "s1", Spacing: in(16), Places: []plan.StudPlace{{At: in(9)}, {At: in(20)}, {At: in(31)}}}, in(9), in(30), inches(9, 20)},
		{"taped, to the last", plan.Joists{Along: "s1", Places: []plan.StudPlace{{At: in(9)}, {At: in(20)}, {At: in(31)}}}, in(10), in(31), inches(20, 31)},
		{"not told", plan.Joists{Along: "s1"}, 0, in(50), nil},
		{"beside no wall", plan.Joists{Spacing: in(16)}, 0, in(50), nil},
	} {
		r.Joists = tt.joists
		if got := frame.JoistsBetween(r, tt.from, tt.to); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
