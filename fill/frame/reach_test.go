package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestEdgesOfRectsAndStuds: edge to edge nothing meets; a nanometer farther it does.
func TestEdgesOfRectsAndStuds(t *testing.T) {
	r := frame.Rect{Left: in(10), Right: in(20), Bottom: in(30), Top: in(40)}
	for _, tt := range []struct {
		name string
		off  [2]unit.Length // of another of the same size
		want bool
	}{
		{"upon itself", [2]unit.Length{}, true},
		{"to the right", [2]unit.Length{in(10)}, false}, {"less", [2]unit.Length{in(10) - 1}, true},
		{"to the left", [2]unit.Length{-in(10)}, false}, {"less", [2]unit.Length{1 - in(10)}, true},
		{"above", [2]unit.Length{0, in(10)}, false}, {"less", [2]unit.Length{0, in(10) - 1}, true},
		{"below", [2]unit.Length{0, -in(10)}, false}, {"less", [2]unit.Length{0, 1 - in(10)}, true},
	} {
		s := frame.Rect{Left: r.Left + tt.off[0], Right: r.Right + tt.off[0], Bottom: r.Bottom + tt.off[1], Top: r.Top + tt.off[1]}
		if r.Meets(s) != tt.want || s.Meets(r) != tt.want {
			t.Errorf("%s by %v: meets %v, want %v", tt.name, tt.off, !tt.want, tt.want)
		}
	}
	for _, tt := range []struct {
		stud        frame.Stud
		bottom, top unit.Length
		want        bool
	}{
		{frame.Stud{}, 0, in(96), true}, {frame.Stud{}, in(200), in(201), true},
		{frame.Stud{Bottom: in(82), Top: in(96)}, in(60), in(82), false}, {frame.Stud{Bottom: in(82), Top: in(96)}, in(60), in(82) + 1, true},
		{frame.Stud{Top: in(28)}, in(28), in(40), false}, {frame.Stud{Top: in(28)}, in(28) - 1, in(40), true},
	} {
		if got := tt.stud.IsBetween(tt.bottom, tt.top); got != tt.want {
			t.Errorf("%+v from %v to %v: %v", tt.stud, tt.bottom, tt.top, got)
		}
	}
	for _, tt := range []struct {
		mark        frame.Mark
		away, width float64
		want        float64
	}{{frame.Mark{At: in(100)}, 10, 4, 110}, {frame.Mark{At: in(100), IsRight: true}, 10, 4, 86}, {frame.Mark{At: in(100), IsRight: true}, 10, 0, 90}} {
		if got := tt.mark.AwayFrom(in(tt.away), in(tt.width)); got != in(tt.want) {
			t.Errorf("%v off %+v, %v wide: %v, want %v", tt.away, tt.mark, tt.width, got, tt.want)
		}
	}
}

// TestFreeOfStudsAndCabinets: a box is free up to the flank of a stud at 16 in and not a
// nanometer nearer where it is to stay clear of studs, and free of what stands at a wall for
// good, which is what encloses its wall, a counter, and what covers it for good.
func TestFreeOfStudsAndCabinets(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	o := plan.Opening{Kind: "duplex", Gangs: 1, At: plan.OnFace(room.Sides[0], 0), Height: plan.CentreAt(in(16)), Assembly: plan.Assembly{Code: "OW1"}}
	view, _ := index.New(h.Plan).RoomView(room.ID)
	width := frame.FrontOf(&o).Width
	half := width - width/2
	for _, tt := range []struct {
		at       unit.Length
		ofStuds  bool
		wantFree bool
	}{
		{in(15.25) - half, true, true}, {in(15.25) - half + 1, true, false}, {in(16), true, false}, {in(16.75) + half - 1, true, false}, {in(16.75) + half, true, true},
		{in(16), false, true}, {in(24), true, true},
	} {
		if got := frame.IsFree(&view.Sides[0], view.Room, &o, tt.at, frame.Clearance{OfStuds: tt.ofStuds}); got != tt.wantFree {
			t.Errorf("at %v, clear of studs %v: free %v", tt.at.Inches(64), tt.ofStuds, got)
		}
	}
	for _, id := range part.All().FixtureIDs() {
		kind := part.All().Fixture(id)
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		f := plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: id, At: plan.OnFace(room.Sides[0], in(40)), Width: in(40), Depth: in(24), Height: in(36)}
		if next, err := (edit.AddFixture{Fixture: f}).Apply(h.Plan); err != nil {
			continue // one that stands at no wall
		} else {
			h.Plan = next
		}
		view, _ := index.New(h.Plan).RoomView(room.ID)
		want := !(kind.Encloses || kind.FloorLine == part.CounterLine || kind.Covers == part.CoversFixed)
		if got := frame.IsFree(&view.Sides[0], view.Room, &o, in(60), frame.Clearance{}); got != want {
			t.Errorf("behind %s free %v, want %v", id, got, want)
		}
		if got := frame.IsFree(&view.Sides[0], view.Room, &o, in(60), frame.ClearOfAll); got && kind.Hides {
			t.Errorf("behind %s, which hides it, free", id)
		}
		if got := frame.IsFree(&view.Sides[0], view.Room, &o, in(120), frame.Clearance{}); !got {
			t.Errorf("far from %s not free", id)
		}
	}
}

// TestWhatComesWithItsOwn: a thing of no box brings a housing where it has one, but not where a
// box was named that nobody knows.
func TestWhatComesWithItsOwn(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	f := faceOf(t, h, room.Sides[0]).Framed()
	r, _ := h.Plan.Room(room.ID)
	for _, tt := range []struct {
		kind     string
		assembly plan.Assembly
		housed   bool
		want     frame.Way
	}{
		{"recessed", plan.Assembly{}, true, frame.ByItsOwn}, {"recessed", plan.Assembly{Code: "X1"}, false, ""}, {"recessed", plan.Assembly{Box: "x"}, false, ""},
		{"duplex", plan.Assembly{}, false, ""}, {"unheard-of", plan.Assembly{}, false, ""},
	} {
		for _, at := range []plan.Anchor{plan.OnFace(room.Sides[0], in(40)), plan.OnCeiling(room.ID, geom.Point{X: in(40), Y: in(40)})} {
			o := &plan.Opening{Kind: tt.kind, Gangs: 1, At: at, Height: plan.CentreAt(in(60)), Assembly: tt.assembly}
			got := frame.HoldIn(o, r).By
			if at.Part == plan.PartFace {
				got = f.HoldOn(o, r).By
			}
			if p := frame.PlacedIn(r.Sides[0], r, o); got != tt.want || p.IsHoused != tt.housed {
				t.Errorf("%s in %+v, %s: held by %q, housed %v; want %q, %v", tt.kind, tt.assembly, at.Part, got, p.IsHoused, tt.want, tt.housed)
			}
		}
	}
	// Joists at 16 in from the upper side: a box at one is held as far as it touches, 1/32 in.
	room2 := *r
	room2.Joists = plan.Joists{Along: room2.Sides[0].ID, Spacing: in(16)}
	o := &plan.Opening{Kind: "ceiling-light", Gangs: 1, Assembly: plan.Assembly{Code: "RD1"}}
	reach := frame.FrontOf(o).Width/2 + in(0.75) + unit.Inch/32
	for off, want := range map[unit.Length]frame.Way{0: frame.ByJoist, reach: frame.ByJoist, reach + 1: frame.ByBlock, -reach: frame.ByJoist, -reach - 1: frame.ByBlock} {
		o.At = plan.OnCeiling(room2.ID, geom.Point{X: in(60), Y: in(32) + off})
		if got := frame.HoldIn(o, &room2).By; got != want {
			t.Errorf("%v off a joist: %q, want %q", off, got, want)
		}
	}
}

// TestEndsOfAWall: a stud that is told by itself takes the place of the one at an end that it
// would overlap; a wall too short for two has one.
func TestEndsOfAWall(t *testing.T) {
	type upright struct {
		left float64
		kind frame.StudKind
	}
	const end, common = frame.EndStud, frame.CommonStud
	for _, tt := range []struct {
		name   string
		length float64
		places []float64
		want   []upright
	}{
		{"none by itself", 20, nil, []upright{{0, end}, {15.25, common}, {18.5, end}}},
		{"one over the left end", 20, []float64{1}, []upright{{0.25, common}, {18.5, end}}},
		{"one beside it", 20, []float64{2.25}, []upright{{0, end}, {1.5, common}, {18.5, end}}},
		{"one over the right end", 20, []float64{17.8125}, []upright{{0, end}, {17.0625, common}}},
		{"as long as two", 3, nil, []upright{{0, end}, {1.5, end}}},
		{"a sixteenth shorter", 2.9375, nil, []upright{{0, end}}},
	} {
		h := newHouse(t)
		side := h.room(0, 0, tt.length, 100, func(s []*plan.Side) {
			for _, at := range tt.places {
				s[0].Places = append(s[0].Places, plan.StudPlace{At: in(at), State: plan.StudStated})
			}
		})[0]
		f, _ := frame.FaceOf(index.New(h.p), side)
		var got []upright
		for _, s := range f.Uprights() {
			got = append(got, upright{float64(s.Left()) / float64(unit.Inch), s.Kind})
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// TestWhatWantsNoStick: what is outdoors, there already, without a box, or in a floor.
func TestWhatWantsNoStick(t *testing.T) {
	for name, tt := range map[string]struct {
		use    plan.Use
		status plan.Status
		code   string
		want   int
	}{
		"a new box":     {plan.UseBedroom, plan.StatusNew, "PN1", 1},
		"outdoors":      {plan.UseOutdoors, plan.StatusNew, "PN1", 0},
		"there already": {plan.UseBedroom, plan.StatusExisting, "PN1", 0},
		"without a box": {plan.UseBedroom, plan.StatusNew, "", 0},
		"a floor's box": {plan.UseBedroom, plan.StatusNew, floorBox(t), 0},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Use = tt.use })
		h.Box(room.Sides[0], "duplex", tt.code, 33.90625, 16, func(o *plan.Opening) { o.Status = tt.status })
		if got := frame.Sticks(index.New(h.Plan), h.Plan.Levels[0]); len(got) != tt.want {
			t.Errorf("%s: %+v, want %d", name, got, tt.want)
		}
	}
}

func floorBox(t *testing.T) string {
	for _, a := range part.All().Assemblies {
		if a.Box.Mounting == part.InFloor {
			return a.Code
		}
	}
	t.Fatal("no box is set in floors")
	return ""
}
