package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func (h *house) box(side plan.ID, along, centre float64, code string, gangs int) *plan.Opening {
	h.t.Helper()
	o := plan.Opening{ID: h.ids.New(plan.KindOpening), Kind: "duplex", Gangs: gangs, Status: plan.StatusNew,
		At: plan.OnFace(side, in(along)), Height: plan.CentreAt(in(centre)), Assembly: plan.Assembly{Code: code}}
	h.do(edit.AddOpening{Opening: o})
	return &o
}

// hold returns how a box is held in the plan as it stands.
func (h *house) hold(o *plan.Opening) frame.Hold {
	h.t.Helper()
	ix := index.New(h.p)
	f, ok := frame.FaceOf(ix, o.At.Host)
	if !ok {
		h.t.Fatal("no face")
	}
	ref, _ := ix.Side(o.At.Host)
	return f.Framed().HoldOn(o, ref.Room)
}

// Twelve feet of wall, studs at 16 in from the left. A door slab of 32 at 20: rough opening
// 19 to 53 (1 in more each side), jacks to 17-1/2 and 54-1/2, kings to 16 and 56. A window
// frame of 36 at 84: rough opening 83-3/4 to 120-1/4, jacks to 82-1/4 and 121-3/4, kings to
// 80-3/4 and 123-1/4. The stud at 16 (15-1/4 to 16-3/4) meets a king and goes; 32 and 48
// stay over the door, 96 and 112 over and under the window; 80 touches the king and stays.
func TestWallWithADoorAndAWindow(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 144, 120, nil)[0]
	h.door(side, 20, 32, 2.25)
	h.do(edit.AddBreak{Break: plan.Break{ID: h.ids.New(plan.KindBreak), Kind: plan.BreakWindow, At: plan.OnFace(side, in(84)), Width: in(36), Sill: in(32), Head: in(80)}})
	f, _ := frame.FaceOf(index.New(h.p), side)
	wall := f.Framed()
	for _, tt := range []struct {
		bottom, top float64
		want        []unit.Length
		source      string
	}{
		{14, 18, inches(0.75, 16.75, 18.25, 53.75, 55.25, 64, 80, 81.5, 83, 96, 112, 121, 122.5, 128, 143.25), "jacks and the cripples under the sill"},
		{40, 50, inches(0.75, 16.75, 18.25, 53.75, 55.25, 64, 80, 81.5, 83, 121, 122.5, 128, 143.25), "beside the window no cripple"},
		{90, 92, inches(0.75, 16.75, 32, 48, 55.25, 64, 80, 81.5, 96, 112, 122.5, 128, 143.25), "over the headers: cripples keep the layout, jacks end below"},
	} {
		var got []unit.Length
		for s := range wall.Between(in(tt.bottom), in(tt.top)) {
			got = append(got, s.At)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("from %v to %v: %v, want %v (%s)", tt.bottom, tt.top, got, tt.want, tt.source)
		}
	}
	for _, tt := range []struct {
		name         string
		along        float64
		code         string
		gangs        int
		by           frame.Way
		from, to     float64
		block, back  float64
		bottom, over float64
		hasBlock     bool
		farSide      float64
	}{
		// The king beyond the door ends at 56; a box 2-5/16 wide against it has its centre at 57-5/32.
		{name: "against the king", along: 57.15625, code: "PN2", gangs: 1, by: frame.ByNailLeft, from: 56, to: 63.25},
		{name: "1/16 off the king", along: 57.21875, code: "PN2", gangs: 1, by: frame.ByBlock, from: 56, to: 63.25, hasBlock: true, block: 7.25, back: 2.5, bottom: 14.25, over: 0.5},
		// 64-3/4 to 79-1/4 is 14-1/2 clear; a square box stands even with the studs: back 1-1/2; 1-1/2 + 1-1/2 - 3-1/2 = -1/2.
		{name: "square in the middle of a bay", along: 72, code: "SQ1", gangs: 1, by: frame.ByBlock, from: 64.75, to: 79.25, hasBlock: true, block: 14.5, back: 1.5, bottom: 14.25, over: -0.5},
		// 2-1/8 + 1-1/2 = 3-5/8, 1/8 more than a 2×4 has.
		{name: "deep square on a flat block", along: 72, code: "SQ4", gangs: 1, by: frame.ByBlock, from: 64.75, to: 79.25, hasBlock: true, block: 14.5, back: 2.125, bottom: 14.25, over: 0.125},
		// Its right edge is 79-1/4 with the centre at 77-1/4.
		{name: "square against the right stud", along: 77.25, code: "SQ1", gangs: 1, by: frame.ByBracket, from: 64.75, to: 79.25},
		// 3-1/2 less 1/2 of board.
		{name: "under the window", along: 104, code: "PN3", gangs: 1, by: frame.ByBlock, from: 96.75, to: 111.25, hasBlock: true, block: 14.5, back: 3, bottom: 14.25, over: 1},
		// Three gangs are 5-15/16 wide: against the left stud at 64-3/4 + 2-31/32; 14-1/2 - 5-15/16 = 8-9/16 at the far side.
		{name: "three gangs", along: 67.71875, code: "PN6", gangs: 3, by: frame.ByNailLeft, from: 64.75, to: 79.25, farSide: 8.5625},
		{name: "old work", along: 72, code: "OW1", gangs: 1, by: frame.ByBoard, from: 64.75, to: 79.25},
	} {
		o := h.box(side, 0, 16, tt.code, tt.gangs)
		o.At.Along = unit.Length(tt.along*32) * (unit.Inch / 32)
		got := h.hold(o)
		if got.By != tt.by || got.Bay.From != in(tt.from) || got.Bay.To != in(tt.to) || got.State != plan.StudAssumed || got.FarSide != in(tt.farSide) {
			t.Errorf("%s: %+v, want %s between %v and %v, far side %v", tt.name, got, tt.by, tt.from, tt.to, tt.farSide)
		}
		if (got.Block != nil) != tt.hasBlock {
			t.Errorf("%s: block %+v", tt.name, got.Block)
			continue
		}
		if want := (frame.Block{Length: in(tt.block), SetBack: in(tt.back), Flat: true, Bottom: in(tt.bottom), Top: in(tt.bottom + 3.5), Over: in(tt.over), KnowsDepth: true}); tt.hasBlock && *got.Block != want {
			t.Errorf("%s: %+v, want %+v", tt.name, *got.Block, want)
		}
	}
}

// At 400 the first stud's centre is at 400 from the left, at 600 at 600; a stud takes 38.1
// mm: 400 + 19.05 = 419.05 to 780.95, clear 361.9; 619.05 to 1180.95, clear 561.9.
func TestMetricLayouts(t *testing.T) {
	for _, tt := range []struct{ spacing, at, from, to, clear int64 }{
		{400, 600, 419_050_000, 780_950_000, 361_900_000},
		{600, 900, 619_050_000, 1_180_950_000, 561_900_000},
	} {
		h := newHouse(t)
		side := h.room(0, 0, 144, 120, func(s []*plan.Side) { s[0].Studs.Spacing = unit.Length(tt.spacing) * unit.Millimetre })[0]
		o := h.box(side, 12, 16, "SQ1", 1)
		o.At.Along = unit.Length(tt.at) * unit.Millimetre
		got := h.hold(o)
		if got.Bay.From != unit.Length(tt.from) || got.Bay.To != unit.Length(tt.to) || got.Block == nil || got.Block.Length != unit.Length(tt.clear) {
			t.Errorf("at %d mm: %+v, want a bay from %d to %d nm", tt.spacing, got, tt.from, tt.to)
		}
	}
}

// A wall 9-1/2 in long has its end studs and 6-1/2 between them.
func TestShortWall(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 9.5, 120, nil)[0]
	got := h.hold(h.box(side, 4.75, 16, "PN2", 1))
	if got.By != frame.ByBlock || got.Bay.From != in(1.5) || got.Bay.To != in(8) || got.Block.Length != in(6.5) {
		t.Errorf("%+v, want a block of 6-1/2 between 1-1/2 and 8", got)
	}
}

// A tape reads near edges 17, 32-3/4 and 49: centres 3/4 in farther.
func TestStudsTakenByTape(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 64, 120, func(s []*plan.Side) {
		s[0].Places = []plan.StudPlace{{At: in(17.75), State: plan.StudMeasured}, {At: in(33.5), State: plan.StudMeasured}, {At: in(49.75), State: plan.StudStated}}
	})[0]
	for _, tt := range []struct {
		at, from, to float64
		state        plan.StudState
	}{
		{25, 18.5, 32.75, plan.StudMeasured},
		{42, 34.25, 49, plan.StudStated}, // the less sure of the two
		{8, 1.5, 17, plan.StudMeasured},  // the end of the wall and a measured one
	} {
		got := h.hold(h.box(side, tt.at, 16, "SQ1", 1))
		if got.Bay.From != in(tt.from) || got.Bay.To != in(tt.to) || got.State != tt.state {
			t.Errorf("at %v: %+v, want %v to %v, %s", tt.at, got, tt.from, tt.to, tt.state)
		}
	}
}

// A wall laid out from its right end is the mirror image of one laid out from its left.
func TestMirroredLayouts(t *testing.T) {
	length := 131.25
	h := newHouse(t)
	left := h.room(0, 0, length, 120, func(s []*plan.Side) { s[0].Studs.First = in(7) })[0]
	h.door(left, 40, 30, 2.25)
	m := newHouse(t)
	right := m.room(0, 0, length, 120, func(s []*plan.Side) { s[0].Studs.First, s[0].Studs.FromRight = in(7), true })[0]
	m.door(right, length-70, 30, 2.25)
	for along := 3.0625; along < length-3; along += 1.25 { // never in the middle of a stud
		a, b := h.hold(h.box(left, along, 16, "SQ1", 1)), m.hold(m.box(right, length-along, 16, "SQ1", 1))
		if a.By != b.By || a.Bay.From != in(length)-b.Bay.To || a.Bay.To != in(length)-b.Bay.From || a.State != b.State {
			t.Errorf("at %v: %+v, mirrored %+v", along, a, b)
		}
	}
}

// A block is never longer than its bay, and never has a negative length.
func TestBlocksFitTheirBays(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 144, 120, nil)[0]
	h.door(side, 60, 32, 2.25)
	for along := 3.0; along < 141; along += 0.5 {
		got := h.hold(h.box(side, along, 16, "SQ1", 1))
		if got.Block != nil && (got.Block.Length != got.Bay.Clear() || got.Block.Length <= 0) {
			t.Errorf("at %v: a block of %s in a bay of %s", along, got.Block.Length, got.Bay.Clear())
		}
	}
}

// Joists run beside the upper wall, the first 16 in from it, then every 16; a box 4 in wide
// touches one while its centre is within 2 + 3/4 of the joist's.
func TestBoxesAtJoists(t *testing.T) {
	h := newHouse(t)
	sides := h.room(0, 0, 120, 120, nil)
	ref, _ := index.New(h.p).Side(sides[0])
	room := *ref.Room
	for _, tt := range []struct {
		out  float64
		code string
		want frame.Way
	}{
		{32, "RD1", frame.ByJoist}, {34.75, "RD1", frame.ByJoist}, {34.8125, "RD1", frame.ByBlock}, {40, "RD4", frame.ByBar}, {40, "OW4", frame.ByBoard},
	} {
		room.Joists = plan.Joists{Along: sides[0], Spacing: in(16), First: in(16)}
		o := plan.Opening{At: plan.OnCeiling(room.ID, geom.Point{X: in(40), Y: in(tt.out)}), Assembly: plan.Assembly{Code: tt.code}}
		if got := frame.HoldIn(&o, &room); got.By != tt.want {
			t.Errorf("%s at %v from the wall: %s, want %s", tt.code, tt.out, got.By, tt.want)
		}
	}
}

// Rings that pass by the layers of a face, as a table of finish stacks in trade practice
// works them out: not farther back than 1/4 in (314.20), not at all behind a combustible
// face, and not before it.
func TestRingsPassing(t *testing.T) {
	for _, tt := range []struct {
		name    string
		stack   []float64
		burning bool
		total   float64
		want    []unit.Length
	}{
		{"board", []float64{0.5}, false, 0.5, inches(0.25, 0.375, 0.5)},
		{"thinset 1/8, glass 1/4", []float64{0.5, 0.125, 0.25}, false, 0.875, inches(0.625, 0.75)},
		{"tile 3/8", []float64{0.5, 0.125, 0.375}, false, 1, inches(0.75, 1)},
		{"tile 1/2", []float64{0.5, 0.125, 0.5}, false, 1.125, inches(1)},
		{"backer 1/4 and tile 3/8", []float64{0.5, 0.25, 0.125, 0.375}, false, 1.25, inches(1, 1.25)},
		{"foam and boards", []float64{0.5, 0.75}, true, 1.25, inches(1.25)},
	} {
		s := &plan.Side{Kind: plan.SideWall}
		for _, l := range tt.stack {
			s.Finish = append(s.Finish, plan.Layer{Thickness: in(l), Combustible: tt.burning})
		}
		o := plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "SQ1"}}
		if got := frame.RingsPassing(&o, s, in(0.25)); frame.SetProud(s) != in(tt.total) || !slices.Equal(got, tt.want) {
			t.Errorf("%s: set %s proud, rings %v; want %v, %v", tt.name, frame.SetProud(s), got, tt.total, tt.want)
		}
	}
	if got := frame.RingsPassing(&plan.Opening{Gangs: 1, Assembly: plan.Assembly{Code: "PN2"}}, &plan.Side{}, in(0.25)); got != nil {
		t.Errorf("%v go on a plastic box", got)
	}
}

// How a box is held follows from how it is made to be mounted, whatever is beside it.
func TestBoxesNotHeldByStuds(t *testing.T) {
	h := newHouse(t)
	side := h.room(0, 0, 144, 120, nil)[0]
	o := h.box(side, 40, 16, "PN1", 1)
	for box, want := range map[string]frame.Way{
		"utl4-1.5": frame.OnSurface, "mas1-2.5": frame.InMasonry, "flr1-24": frame.ByFloor, "lb-8.8": frame.ByItsOwn, "ow1-14": frame.ByBoard,
	} {
		o.Assembly = plan.Assembly{Box: box}
		if got := h.hold(o).By; got != want {
			t.Errorf("%s: %q, want %q", box, got, want)
		}
	}
}

// Studs were taped at 16, 32 and 48 in: before the first and past the last of them no bay is
// known, until the wall is said to be built anew. A square of 4 in against the stud at 48 has
// its middle at 50-3/4 and is held by it all the same.
func TestNothingIsKnownPastTheReadings(t *testing.T) {
	for _, tt := range []struct {
		name      string
		along     float64
		code      string
		condition plan.Condition
		state     plan.StudState
		by        frame.Way
		hasBay    bool
	}{
		{"between two", 24, "SQ1", "", plan.StudMeasured, frame.ByBlock, true},
		{"before the first", 8, "SQ1", "", plan.StudMeasured, frame.NotHeld, false},
		{"past the last", 60, "SQ1", "", plan.StudMeasured, frame.NotHeld, false},
		{"old work past the last", 60, "OW1", "", plan.StudMeasured, frame.ByBoard, false},
		{"opened, past the last", 60, "SQ1", plan.ConditionOpened, plan.StudMeasured, frame.NotHeld, false},
		{"built anew, past the last", 60, "SQ1", plan.ConditionNew, plan.StudMeasured, frame.ByBlock, true},
		{"said, not taped", 60, "SQ1", "", plan.StudStated, frame.ByBlock, true},
		{"against the last", 50.75, "SQ1", "", plan.StudMeasured, frame.ByBracket, true},
		{"against the first", 13.25, "SQ1", "", plan.StudMeasured, frame.ByBracket, true},
		{"against the end, which nobody taped", 3.5, "SQ1", "", plan.StudMeasured, frame.NotHeld, false},
	} {
		h := newHouse(t)
		side := h.room(0, 0, 144, 120, func(sides []*plan.Side) {
			sides[0].Condition = tt.condition
			for _, at := range []float64{16, 32, 48} {
				sides[0].Places = append(sides[0].Places, plan.StudPlace{At: in(at), State: tt.state})
			}
		})[0]
		got := h.hold(h.box(side, tt.along, 16, tt.code, 1))
		if got.By != tt.by || got.HasBay != tt.hasBay || got.HasBay != (got.Bay != frame.Bay{}) {
			t.Errorf("%s: %q, bay %v %+v; want %q, %v", tt.name, got.By, got.HasBay, got.Bay, tt.by, tt.hasBay)
		}
	}
	h := newHouse(t)
	side := h.room(0, 0, 144, 120, func(sides []*plan.Side) {
		for _, at := range []float64{16, 32, 48} {
			sides[0].Places = append(sides[0].Places, plan.StudPlace{At: in(at), State: plan.StudMeasured})
		}
	})[0]
	wide := h.hold(h.box(side, 16.75+5.9375/2+32, 16, "PN6", 3)) // against the last
	if wide.By != frame.ByNailLeft || wide.FarSide != 0 {
		t.Errorf("three gangs against the last: %q, block of %v at a side that nobody knows", wide.By, wide.FarSide)
	}
	f, _ := frame.FaceOf(index.New(h.p), side)
	if first, last, ok := f.Framed().Taped(); !ok || first != in(16) || last != in(48) {
		t.Errorf("taped from %v to %v, %v", first, last, ok)
	}
}

// Studs of the face stand at 16, 32 and so on; a part from 40 to 100 in has its own at 24:
// at 64 and 88, and 48, 64, 80 and 96 of the face are none there.
func TestAPartOfAFaceHasStudsOfItsOwn(t *testing.T) {
	studs := func(change func(*plan.Side)) (at []unit.Length) {
		h := newHouse(t)
		side := h.room(0, 0, 144, 120, func(sides []*plan.Side) {
			sides[0].Zones = []plan.Zone{{From: in(40), To: in(100), Condition: plan.ConditionOpened, Spacing: in(24)}}
			change(sides[0])
		})[0]
		f, _ := frame.FaceOf(index.New(h.p), side)
		for _, s := range f.Framed().Studs() {
			if s.Kind == frame.CommonStud {
				at = append(at, s.At)
			}
		}
		return at
	}
	for _, tt := range []struct {
		name   string
		change func(*plan.Side)
		want   []unit.Length
	}{
		{"at 24", func(*plan.Side) {}, inches(16, 32, 64, 88, 112, 128)},
		{"as the face", func(s *plan.Side) { s.Zones[0].Spacing = 0 }, inches(16, 32, 48, 64, 80, 96, 112, 128)},
		{"a face that tells none", func(s *plan.Side) { s.Studs.Spacing = 0 }, inches(64, 88)},
		{"taped in it", func(s *plan.Side) { s.Places = []plan.StudPlace{{At: in(50), State: plan.StudMeasured}} }, inches(50)},
		{"taped beside it", func(s *plan.Side) { s.Places = []plan.StudPlace{{At: in(20), State: plan.StudMeasured}} }, inches(20, 64, 88)},
		{"past the end", func(s *plan.Side) { s.Zones[0].From, s.Zones[0].To = in(100), in(200) }, inches(16, 32, 48, 64, 80, 96, 124)},
	} {
		if got := studs(tt.change); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
