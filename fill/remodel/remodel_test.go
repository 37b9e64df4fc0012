package remodel_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
)

var in = walltest.In

// A wall that is opened up to 48 in and stays closed past it takes a nail-on box before
// there, and past there only what holds on to the finish. The place is that of the box's
// middle (common practice: screws and nails are driven from the open side).
func TestClosedWall(t *testing.T) {
	const stop = "stop: A1: its box cannot be fixed in a wall that stays closed"
	for _, tt := range []struct {
		name   string
		face   plan.Condition
		zones  []plan.Zone
		along  float64
		code   string
		status plan.Status
		want   []string
	}{
		{"nothing said", "", nil, 40, "PN1", plan.StatusNew, nil},
		{"new", plan.ConditionNew, nil, 40, "PN1", plan.StatusNew, nil},
		{"opened", plan.ConditionOpened, nil, 40, "PN1", plan.StatusNew, nil},
		{"closed", plan.ConditionClosed, nil, 40, "PN1", plan.StatusNew, []string{stop}},
		{"a steel box with a ring", plan.ConditionClosed, nil, 40, "SQ1", plan.StatusNew, []string{stop}},
		{"old-work", plan.ConditionClosed, nil, 40, "OW1", plan.StatusNew, nil},
		{"there already", plan.ConditionClosed, nil, 40, "PN1", plan.StatusExisting, nil},
		{"before the end of the opened part", plan.ConditionClosed, []plan.Zone{{To: in(48), Condition: plan.ConditionOpened}}, 47.9375, "PN1", plan.StatusNew, nil},
		{"past it", plan.ConditionClosed, []plan.Zone{{To: in(48), Condition: plan.ConditionOpened}}, 48.0625, "PN1", plan.StatusNew, []string{stop}},
		{"a closed part of an open wall", "", []plan.Zone{{From: in(30), To: in(48), Condition: plan.ConditionClosed}}, 40, "PN1", plan.StatusNew, []string{stop}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Condition, r.Sides[0].Zones = tt.face, tt.zones })
		h.Box(room.Sides[0], "duplex", tt.code, tt.along, 16, func(o *plan.Opening) { o.Status = tt.status })
		if got := h.Said("closed-wall"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("closed-wall")
		if tt.want != nil && len(h.Found("closed-wall")[0].Remedies) == 0 {
			t.Errorf("%s: no old-work box is offered", tt.name)
		}
	}
}

// All faces and the ceiling of a room are marked in one step.
func TestClosedCeiling(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	h.Do(edit.AddOpening{Opening: plan.Opening{ID: h.IDs.New(plan.KindOpening), Kind: "ceiling-light", Status: plan.StatusNew,
		At: plan.OnCeiling(room.ID, geom.Point{X: in(72), Y: in(60)}), Assembly: plan.Assembly{Code: "RD1"}}})
	if got := h.Found("closed-wall"); len(got) != 0 {
		t.Errorf("an open ceiling: %v", got)
	}
	h.Do(edit.SetCondition{Rooms: []plan.ID{room.ID}, Condition: plan.ConditionClosed})
	if got := h.Said("closed-wall"); !slices.Equal(got, []string{"stop: A1: its box cannot be fixed in a ceiling that stays closed"}) || len(h.Found("closed-wall")[0].Remedies) == 0 {
		t.Errorf("a closed one: %q", got)
	}
	r, _ := h.Plan.Room(room.ID)
	for _, s := range r.Sides {
		if s.Condition != plan.ConditionClosed {
			t.Errorf("side %s is %q", s.ID, s.Condition)
		}
	}
}

// 314.27(C) (from memory): a fan hangs from a box that is listed for one, and no old-work box is.
func TestNoOldWorkBoxForAFan(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Overhead = plan.ConditionClosed })
	h.Do(edit.AddOpening{Opening: plan.Opening{ID: h.IDs.New(plan.KindOpening), Kind: "fan-light", Status: plan.StatusNew,
		At: plan.OnCeiling(room.ID, geom.Point{X: in(72), Y: in(60)}), Assembly: plan.Assembly{Code: "RD1"}}})
	if found := h.Found("closed-wall"); len(found) != 1 || len(found[0].Remedies) != 0 {
		t.Errorf("%+v", found)
	}
}

// A one-gang old-work box at 40 is 2-1/4 to 2-1/2 in wide by the catalogue; a fire block
// from 30 to 48 in along and from 44 to 46 in up is in the way of a box at 45 and not of
// one at 16 in.
func TestBlockedBay(t *testing.T) {
	block := plan.Probe{From: in(30), To: in(48), Bottom: in(44), Top: in(45.5), What: "fire block"}
	clear := plan.Probe{From: in(33), To: in(46), Clear: true}
	const stop, note = "stop: A1: the bay behind it is blocked", "note: A1: nobody has looked whether the bay behind it is clear"
	for _, tt := range []struct {
		name   string
		probes []plan.Probe
		code   string
		up     float64
		want   []string
	}{
		{"nobody looked", nil, "OW1", 16, []string{note}},
		{"blocked there", []plan.Probe{block}, "OW1", 45, []string{stop}},
		{"blocked above", []plan.Probe{block}, "OW1", 16, []string{note}},
		{"proven clear", []plan.Probe{clear}, "OW1", 16, nil},
		{"clear, yet blocked higher", []plan.Probe{clear, block}, "OW1", 16, nil},
		{"clear and blocked", []plan.Probe{clear, block}, "OW1", 45, []string{stop}},
		{"clear only in part", []plan.Probe{{From: in(40), To: in(46), Clear: true}}, "OW1", 16, []string{note}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Condition, r.Sides[0].Probes = plan.ConditionClosed, tt.probes })
		h.Box(room.Sides[0], "duplex", tt.code, 40, tt.up, nil)
		if got := h.Said("blocked-bay"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// A standard plate is 4-1/2 in high: one centered at 16 in goes from 13-3/4 to 18-1/4.
func TestTrimClash(t *testing.T) {
	for _, tt := range []struct {
		bottom, height float64
		want           int
	}{
		{0, 13.75, 0},   // a tall baseboard that it touches
		{0, 13.8125, 1}, // 1/16 higher
		{18.25, 3, 0},   // a rail that begins where it ends
		{18.1875, 3, 1}, // 1/16 lower
		{0, 60, 0},      // wainscot that it lies on whole
		{13.75, 4.5, 0}, // exactly
		{14, 4, 1},      // a rail behind its middle
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			r.Sides[0].Trim = []plan.Trim{{Name: "baseboard", Bottom: in(tt.bottom), Height: in(tt.height)}}
		})
		h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
		if got := h.Said("trim-clash"); len(got) != tt.want {
			t.Errorf("from %v, %v high: %q", tt.bottom, tt.height, got)
		}
	}
}

// Studs were taped at 13-1/2, 31 and 46-3/4: a box between them is between known studs, one
// past the last is not, whatever the spacing says.
func TestFindStud(t *testing.T) {
	for along, want := range map[float64]int{20: 0, 40: 0, 60: 1, 100: 1, 5: 1} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			for _, at := range []float64{13.5, 31, 46.75} {
				r.Sides[0].Places = append(r.Sides[0].Places, plan.StudPlace{At: in(at), State: plan.StudMeasured})
			}
		})
		h.Box(room.Sides[0], "duplex", "OW1", along, 16, nil)
		if got := h.Said("find-stud"); len(got) != want {
			t.Errorf("at %v: %q", along, got)
		}
	}
	// Against the stud at 46-3/4 a square of 4 in has its middle at 49-1/2: what holds it is known.
	// In a wall that is built anew the end is known too.
	for _, tt := range []struct {
		along     float64
		code      string
		condition plan.Condition
		want      int
	}{{49.5, "SQ1", plan.ConditionOpened, 0}, {49.625, "SQ1", plan.ConditionOpened, 1}, {49.5, "OW1", plan.ConditionOpened, 1}, {100, "SQ1", plan.ConditionNew, 0}} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			r.Sides[0].Condition = tt.condition
			for _, at := range []float64{13.5, 31, 46.75} {
				r.Sides[0].Places = append(r.Sides[0].Places, plan.StudPlace{At: in(at), State: plan.StudMeasured})
			}
		})
		h.Box(room.Sides[0], "duplex", tt.code, tt.along, 16, nil)
		if got := h.Said("find-stud"); len(got) != tt.want {
			t.Errorf("%s at %v in a wall that is %s: %q", tt.code, tt.along, tt.condition, got)
		}
	}
}

// Studs of 3-5/8 in plastered on both sides leave 2-5/8 behind the lath (common practice:
// keys of 1/2 in behind each).
func TestPlasterKeysTakeTheirPart(t *testing.T) {
	plaster := []plan.Layer{{Name: "plaster on wood lath", Thickness: in(0.75), Lath: plan.WoodLath}}
	h := walltest.New(t)
	upper := h.Room(0, 0, 144, 120, nil)
	lower := h.Room(0, 120+3.625+1.5, 144, 245, nil)
	for _, id := range []plan.ID{upper.Sides[2], lower.Sides[0]} {
		ref, _ := h.Plan.Side(id)
		s := *ref.Side()
		s.Finish, s.Studs.Depth = plaster, in(3.625)
		h.Do(edit.ChangeSide{Side: s})
	}
	view, _ := index.New(h.Plan).RoomView(lower.ID)
	if got := rule.SidesOf(view)[0].Wall().FramingAt(in(40)); got != in(2.625) {
		t.Errorf("the framing is %v deep, want 2-5/8 in", got)
	}
}

// What becomes of an old box is asked until it is said, and cables do not end in one that
// is gone.
func TestOldBoxAndCableEnd(t *testing.T) {
	for _, tt := range []struct {
		status    plan.Status
		fate      plan.Fate
		asks, end int
	}{
		{plan.StatusExisting, "", 0, 0},
		{plan.StatusRemove, "", 0, 1},
		{plan.StatusMoved, "", 1, 0},
		{plan.StatusMoved, plan.FateStays, 0, 0},
		{plan.StatusMoved, plan.FateEmptied, 0, 1},
		{plan.StatusMoved, plan.FateDead, 0, 0},
		{plan.StatusReplaced, "", 1, 0},
		{plan.StatusReplaced, plan.FateOut, 0, 1},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		old := h.Box(room.Sides[0], "duplex", "PN1", 40, 16, func(o *plan.Opening) { o.Status, o.Fate = tt.status, tt.fate })
		other := h.Box(room.Sides[0], "duplex", "PN1", 80, 16, nil)
		h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: old.ID, To: other.ID, Size: 14, Wires: 2, Ground: true}})
		if got := h.Said("old-box"); len(got) != tt.asks {
			t.Errorf("%s %s: %q", tt.status, tt.fate, got)
		}
		if got := h.Said("cable-end"); len(got) != tt.end {
			t.Errorf("%s %s: %q", tt.status, tt.fate, got)
		}
		h.Cures("old-box")
	}
}

// A new receptacle past an old two-wire cable has no ground (250.130(C), from memory),
// however well the new cable between them is made; a panel reached by grounding conductors
// settles it.
func TestOldGround(t *testing.T) {
	type run struct{ existing, ground, unseen bool }
	for _, tt := range []struct {
		name string
		feed run
		kind string
		want []string
	}{
		{"old cable without", run{existing: true}, "duplex", []string{"stop: A2: no grounding conductor reaches it"}},
		{"old cable nobody looked at", run{existing: true, unseen: true}, "duplex", []string{"note: A2: nobody has checked whether a grounding conductor reaches it"}},
		{"old cable with one", run{existing: true, ground: true}, "duplex", nil},
		{"a new feed", run{ground: true}, "duplex", nil},
		{"a light", run{existing: true}, "wall-light", nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		feed := h.Box(room.Sides[0], "junction", "RD1", 20, 16, func(o *plan.Opening) { o.Status = plan.StatusExisting })
		old := h.Box(room.Sides[0], tt.kind, "PN1", 40, 16, nil)
		h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: feed.ID, To: old.ID, Size: 14, Wires: 2, Existing: tt.feed.existing, Ground: tt.feed.ground, GroundUnseen: tt.feed.unseen}})
		if got := h.Said("old-ground"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		lights := 0
		if tt.kind == "wall-light" {
			lights = 1
		}
		if got := h.Said("old-supply"); len(got) != lights {
			t.Errorf("%s: lights %q", tt.name, got)
		}
		// One farther on, by a new cable with a ground, is no better off.
		far := h.Box(room.Sides[0], "duplex", "PN1", 80, 16, nil)
		h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: old.ID, To: far.ID, Size: 14, Wires: 2, Ground: true}})
		if got, isWeak := len(h.Found("old-ground")), tt.feed.existing && !tt.feed.ground; tt.kind == "duplex" && isWeak != (got == 2) {
			t.Errorf("%s: %d findings with one more receptacle", tt.name, got)
		}
	}
}

// An existing cable is asked anew whether it carries a ground.
func TestSetCableExisting(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	a, b := h.Box(room.Sides[0], "duplex", "PN1", 20, 16, nil), h.Box(room.Sides[0], "duplex", "PN1", 60, 16, nil)
	c := &plan.Cable{ID: h.IDs.New(plan.KindCable), From: a.ID, To: b.ID, Size: 14, Wires: 2, Ground: true}
	h.Do(edit.Add{Thing: c})
	h.Do(edit.SetCableExisting{ID: c.ID, Existing: true})
	if now, _ := h.Plan.Cables.Get(c.ID); now.Grounding() != plan.Unsaid {
		t.Errorf("its ground is %q", now.Grounding())
	}
	h.Do(edit.SetGrounding{ID: c.ID, Answer: plan.AnswerNo})
	if now, _ := h.Plan.Cables.Get(c.ID); now.Grounding() != plan.AnswerNo {
		t.Errorf("its ground is %q", now.Grounding())
	}
}

// What a remedy of a blocked bay, of one nobody looked behind, or of a trim does clears it;
// a box 1/16 in beside a blocked part is in nobody's way.
func TestRemediesInStandingWalls(t *testing.T) {
	for _, tt := range []struct {
		name  string
		side  func(*plan.Side)
		rule  string
		found int
	}{
		{"blocked", func(s *plan.Side) { s.Probes = []plan.Probe{{From: in(30), To: in(42)}} }, "blocked-bay", 1},
		{"nobody looked", func(*plan.Side) {}, "blocked-bay", 1},
		{"a rail across the plate", func(s *plan.Side) { s.Trim = []plan.Trim{{Name: "chair rail", Bottom: in(15), Height: in(3)}} }, "trim-clash", 1},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Condition = plan.ConditionClosed; tt.side(r.Sides[0]) })
		h.Box(room.Sides[0], "duplex", "OW1", 40, 16, nil)
		found := h.Found(tt.rule)
		if len(found) != tt.found || len(found[0].Remedies) == 0 {
			t.Errorf("%s: %v", tt.name, found)
		}
		h.Cures(tt.rule)
	}
	for off, want := range map[float64]int{0: 0, -0.0625: 1} { // of the blocked part's left edge from the box's right
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Condition = plan.ConditionClosed })
		o := h.Box(room.Sides[0], "duplex", "OW1", 40, 16, nil)
		r, _ := h.Plan.Room(room.ID)
		right := frame.PlacedIn(r.Sides[0], r, o).Right
		h.Do(edit.AddProbe{Side: room.Sides[0], Probe: plan.Probe{From: right + in(off), To: right + in(6)}})
		blocked := 0
		for _, f := range h.Found("blocked-bay") {
			if f.Severity == rule.Stop {
				blocked++
			}
		}
		if blocked != want {
			t.Errorf("%v in past the box's edge: %d stops, want %d", off, blocked, want)
		}
	}
}

// In metric a plate of 114 mm centered at 400 mm ends at 343: a baseboard of 342 mm passes,
// one of 344 does not.
func TestTrimClashInMetric(t *testing.T) {
	for high, want := range map[float64]int{342: 0, 344: 1} {
		h := walltest.New(t)
		h.Metric()
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Trim = []plan.Trim{{Name: "baseboard", Height: walltest.MM(high)}} })
		h.Box(room.Sides[0], "duplex", "PN1", 40, 16, func(o *plan.Opening) { o.Height = plan.CentreAt(walltest.MM(400)) })
		if got := h.Said("trim-clash"); len(got) != want {
			t.Errorf("%v mm: %q", high, got)
		}
	}
}
