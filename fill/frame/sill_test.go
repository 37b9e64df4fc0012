package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/index"
)

// TestSillsAndHeaders: a window's rough opening is 1/4 in more all round; under it lies a sill
// of 1-1/2 in where there is more than that, no farther than the face, and over it a header of
// 5-1/2 on jacks of 1-1/2.
func TestSillsAndHeaders(t *testing.T) {
	rect := func(left, right, bottom, top float64) frame.Rect {
		return frame.Rect{Left: in(left), Right: in(right), Bottom: in(bottom), Top: in(top)}
	}
	for _, tt := range []struct {
		name        string
		along, sill float64
		header      frame.Rect
		sills       []frame.Rect
	}{
		{"a window", 20, 30, rect(18.25, 57.75, 80.25, 85.75), []frame.Rect{rect(19.75, 56.25, 28.25, 29.75)}},
		{"just as high as a sill", 20, 1.75, rect(18.25, 57.75, 80.25, 85.75), nil},
		{"a sixteenth higher", 20, 1.8125, rect(18.25, 57.75, 80.25, 85.75), []frame.Rect{rect(19.75, 56.25, 0.0625, 1.5625)}},
		{"at the left end", 0, 30, rect(0, 37.75, 80.25, 85.75), []frame.Rect{rect(0, 36.25, 28.25, 29.75)}},
		{"at the right end", 84, 30, rect(82.25, 120, 80.25, 85.75), []frame.Rect{rect(83.75, 120, 28.25, 29.75)}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 120, 100, nil)
		l := *h.Plan.Levels[0]
		l.Breaks = l.Breaks.With(&plan.Break{ID: h.IDs.New(plan.KindBreak), Kind: plan.BreakWindow, At: plan.OnFace(room.Sides[0], in(tt.along)), Width: in(36), Sill: in(tt.sill), Head: in(80)})
		h.Plan = h.Plan.WithLevel(&l)
		r, _ := h.Plan.Room(room.ID)
		var headers, sills []frame.Rect
		for _, m := range faceOf(t, h, room.Sides[0]).Framed().Members(r) {
			switch m.Kind {
			case frame.Header:
				headers = append(headers, m.Rect)
			case frame.Sill:
				sills = append(sills, m.Rect)
			}
		}
		if !slices.Equal(headers, []frame.Rect{tt.header}) || !slices.Equal(sills, tt.sills) {
			t.Errorf("%s: headers %v, sills %v, want %v and %v", tt.name, headers, sills, tt.header, tt.sills)
		}
	}
}

// TestStudsTakenOverPastTheLeftEnd of the front: what is at s in front is at 60 - s behind,
// where the face goes on to 100.
func TestStudsTakenOverPastTheLeftEnd(t *testing.T) {
	at := func(inches ...float64) (all []plan.StudPlace) {
		for _, l := range inches {
			all = append(all, plan.StudPlace{At: in(l), State: plan.StudStated})
		}
		return all
	}
	h := newHouse(t)
	front := h.room(0, 0, 100, 120, nil)[0]
	back := h.room(-40, -104.5, 60, -4.5, func(s []*plan.Side) { s[2].Places = at(30, 60, 60.0625, 80) })[2]
	f, _ := frame.FaceOf(index.New(h.p), front)
	h.do(f.WithStuds(at(10, 60, 90)))
	if ref, _ := h.p.Side(back); !slices.Equal(ref.Side().Places, at(0, 50, 60.0625, 80)) {
		t.Errorf("behind %v, want those of the front up to 60, and its own past them", ref.Side().Places)
	}
}

// TestPartsOfAFace: a part with a finish of its own counts for what is behind it, on either
// face; seen from in front at s, it is at 80 - s behind.
func TestPartsOfAFace(t *testing.T) {
	h := newHouse(t)
	zone := func(from, to float64) []plan.Zone {
		return []plan.Zone{{From: in(from), To: in(to), Condition: plan.ConditionNew, Finish: walltest.Layers(1)}}
	}
	front := h.room(0, 0, 120, 120, func(s []*plan.Side) { s[0].Zones = zone(90, 110) })[0]
	h.room(40, -104.5, 80, -4.5, func(s []*plan.Side) { s[2].Zones = zone(10, 20) })
	f, _ := frame.FaceOf(index.New(h.p), front)
	for along, want := range map[float64]float64{50: 3.5, 59.9375: 3.5, 62: 3, 69: 3, 71: 3.5} {
		if got := f.FramingAt(in(along)); got != in(want) {
			t.Errorf("at %v: %v of framing, want %v", along, got, want)
		}
	}
	ref, _ := h.p.Side(front)
	for along, want := range map[float64]float64{80: 2.25, 100: 1.75} { // 2-3/4 less 1/2, less 1
		o := &plan.Opening{Kind: "duplex", Gangs: 1, At: plan.OnFace(front, in(along)), Assembly: plan.Assembly{Code: "PN1"}}
		if got := frame.PlacedIn(ref.Side(), ref.Room, o).InFraming(); got != in(want) {
			t.Errorf("at %v: %v in the framing, want %v", along, got, want)
		}
	}
}

// TestWideBoxesBetweenStuds: one at a stud wants a block at its far side, one that touches both
// studs of its bay none.
func TestWideBoxesBetweenStuds(t *testing.T) {
	o := &plan.Opening{Kind: "switch", Gangs: 3, Height: plan.CentreAt(in(46)), Assembly: plan.Assembly{Code: "PN5"}}
	width := frame.FrontOf(o).Width
	for _, over := range []float64{0, 1.0 / 16, 4} {
		h := newHouse(t)
		side := h.room(0, 0, 120, 120, func(s []*plan.Side) {
			s[0].Places = []plan.StudPlace{{At: in(20), State: plan.StudStated}, {At: in(21.5+over) + width, State: plan.StudStated}}
		})[0]
		o.At = plan.OnFace(side, in(20.75)+width/2)
		f, _ := frame.FaceOf(index.New(h.p), side)
		ref, _ := h.p.Side(side)
		if got := f.Framed().HoldOn(o, ref.Room); got.FarSide != in(over) || got.Block != nil || got.By != frame.ByNailLeft {
			t.Errorf("%v more than the box: held by %s, block %v, at the far side %v", over, got.By, got.Block, got.FarSide)
		}
	}
}
