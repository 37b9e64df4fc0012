package frame_test

import (
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// What a tape reads is turned into middles of studs by hand: half a stud of 1-5/8 in is 13/16,
// and plaster of 3/4 in on the wall at the corner covers so much of the framing.
func TestReadingsOfATape(t *testing.T) {
	at := func(inches ...float64) (all []unit.Length) {
		for _, l := range inches {
			all = append(all, ruletest.In(l))
		}
		return all
	}
	read := at(13.5, 31, 46.75, 63)
	for _, tt := range []struct {
		name string
		tape plan.Tape
		want []unit.Length
	}{
		{"to centers", plan.Tape{}, read},
		{"to near edges", plan.Tape{Edge: plan.NearEdge}, at(14.3125, 31.8125, 47.5625, 63.8125)},
		{"to far edges", plan.Tape{Edge: plan.FarEdge}, at(12.6875, 30.1875, 45.9375, 62.1875)},
		{"from the right", plan.Tape{FromRight: true}, at(81, 97.25, 113, 130.5)},
		{"near edges from the right", plan.Tape{FromRight: true, Edge: plan.NearEdge}, at(80.1875, 96.4375, 112.1875, 129.6875)},
		{"from the framing", plan.Tape{Framing: true}, at(12.75, 30.25, 46, 62.25)},
		{"from the framing at the right", plan.Tape{Framing: true, FromRight: true}, at(81.5, 97.75, 113.5, 131)},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		r.Sides[0].Studs = plan.Studs{Spacing: ruletest.In(16), Thick: ruletest.In(1.625)}
		r.Sides[3].Finish = []plan.Layer{{Name: "plaster", Thickness: ruletest.In(0.75)}} // at its left corner
		r.Sides[1].Finish = []plan.Layer{{Name: "board", Thickness: ruletest.In(0.5)}}
		p := h.Made()
		tt.tape.At, tt.tape.Typed = read, "13-1/2, 31, 46-3/4, 63"
		p, err := frame.ByTape(index.New(p), r.Sides[0].ID, tt.tape).Apply(p)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		ref, _ := p.Side(r.Sides[0].ID)
		var got []unit.Length
		for _, s := range ref.Side().Places {
			got = append(got, s.At)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
		if kept := ref.Side().Tape; kept.Typed != tt.tape.Typed || !slices.Equal(kept.At, read) {
			t.Errorf("%s: kept as %+v", tt.name, kept)
		}
		ix := index.New(p)
		face, _ := frame.FaceOf(ix, r.Sides[0].ID)
		for _, s := range face.Studs() {
			if s.Kind == frame.CommonStud && !slices.Contains(tt.want, s.At) {
				t.Errorf("%s: a stud at %v that no tape read", tt.name, s.At)
			}
		}
		if next := frame.TapeOn(ix, r.Sides[2].ID); len(next.At) > 0 || next.Edge != tt.tape.Edge || next.FromRight != tt.tape.FromRight || next.Framing != tt.tape.Framing {
			t.Errorf("%s: the next wall of the room begins with %+v", tt.name, next)
		}
		p, err = frame.WithThick(ix, r.Sides[0].ID, ruletest.In(1.75)).Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		ref, _ = p.Side(r.Sides[0].ID)
		move := map[plan.TapeEdge]unit.Length{plan.NearEdge: unit.Inch / 16, plan.FarEdge: -unit.Inch / 16}[tt.tape.Edge]
		if tt.tape.FromRight {
			move = -move
		}
		if now := ref.Side().Places[0].At; now != tt.want[0]+move || ref.Side().Studs.Thick != ruletest.In(1.75) {
			t.Errorf("%s: with studs an eighth thicker the first is at %v, want %v", tt.name, now, tt.want[0]+move)
		}
		p, err = face.WithStudMoved(0, ruletest.In(20)).Apply(p)
		if ref, _ = p.Side(r.Sides[0].ID); err != nil || !ref.Side().Tape.IsZero() {
			t.Errorf("%s: a stud was moved by hand, and the readings are still %+v (%v)", tt.name, ref.Side().Tape, err)
		}
	}
}

// Past the last stud that was taped nobody knows where the next is: a bay there is not known.
func TestNothingIsKnownPastTheLastReading(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
	for _, at := range []float64{16, 32, 48} {
		r.Sides[0].Places = append(r.Sides[0].Places, plan.StudPlace{At: ruletest.In(at), State: plan.StudMeasured})
	}
	known, past, first := r.Opening("duplex", r.On(0, 40)), r.Opening("duplex", r.On(0, 60)), r.Opening("duplex", r.On(0, 8))
	ix := index.New(h.Made())
	if _, _, ok := frame.BayOf(ix, known); !ok {
		t.Error("the bay between two readings is not known")
	}
	if _, _, ok := frame.BayOf(ix, past); ok {
		t.Error("the bay past the last reading is known")
	}
	if _, _, ok := frame.BayOf(ix, first); !ok {
		t.Error("the bay from the corner where the tape began is not known")
	}
}

// Studs of 1-1/2 in at 32 and 48 in bound a bay from 32-3/4 to 47-1/4; the middle of a box at
// either end of it is in it yet.
func TestWhatIsInOneBay(t *testing.T) {
	for _, tt := range []struct {
		name string
		to   func(h *ruletest.House, r *ruletest.Room) plan.Anchor
		want bool
	}{
		{"at the left stud", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.On(0, 32.75) }, true},
		{"in it", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.On(0, 32.6875) }, false},
		{"at the right stud", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.On(0, 47.25) }, true},
		{"in that", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.On(0, 47.3125) }, false},
		{"behind", func(h *ruletest.House, _ *ruletest.Room) plan.Anchor {
			return h.Square(plan.UseDen, 0, -124.5, 144, 120).On(2, 144-36)
		}, true},
		{"behind the next", func(h *ruletest.House, _ *ruletest.Room) plan.Anchor {
			return h.Square(plan.UseDen, 0, -124.5, 144, 120).On(2, 36)
		}, false},
		{"another wall", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.On(2, 40) }, false},
		{"the ceiling", func(_ *ruletest.House, r *ruletest.Room) plan.Anchor { return r.Ceiling(40, 10) }, false},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		r.Sides[0].Studs = plan.Studs{Spacing: ruletest.In(16), Depth: ruletest.In(3.5)}
		a, b := r.Opening("duplex", r.On(0, 40)), r.Opening("duplex", tt.to(h, r))
		if got := frame.IsOneBay(index.New(h.Made()), a, b); got != tt.want {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// What a reading means is asked once in a room: a wall without readings begins with what another
// was read by, one with something said of its own keeps that.
func TestWhatATapeOnAWallMeans(t *testing.T) {
	far := plan.Tape{FromRight: true, Edge: plan.FarEdge, Framing: true}
	read := far
	read.At, read.Typed = []unit.Length{ruletest.In(16)}, "16"
	own := plan.Tape{Edge: plan.NearEdge}
	for _, tt := range []struct {
		name          string
		first, second plan.Tape
		want          plan.Tape
	}{
		{"nothing was read", plan.Tape{}, plan.Tape{}, plan.Tape{}},
		{"another was read", plan.Tape{}, read, far},
		{"another is to be read", plan.Tape{}, far, plan.Tape{}},
		{"something is said of it", own, read, own},
		{"it was read", read, plan.Tape{}, read},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		r.Sides[0].Tape, r.Sides[1].Tape = tt.first, tt.second
		got := frame.TapeOn(index.New(h.Made()), r.Sides[0].ID)
		if got.FromRight != tt.want.FromRight || got.Edge != tt.want.Edge || got.Framing != tt.want.Framing || got.Typed != tt.want.Typed || !slices.Equal(got.At, tt.want.At) {
			t.Errorf("%s: %+v, want %+v", tt.name, got, tt.want)
		}
	}
	if got := frame.TapeOn(index.New(ruletest.New(t).Made()), "sgone"); !got.IsZero() {
		t.Errorf("a wall that is gone: %+v", got)
	}
}

// TestNobodySawTheStudsAtTheEnds: a tape told the studs of a wall that stands, and not those at
// its ends; in a wall that is built anew, and where only a spacing is said, they are as sure as
// the rest.
func TestNobodySawTheStudsAtTheEnds(t *testing.T) {
	for _, tt := range []struct {
		name      string
		condition plan.Condition
		places    []plan.StudPlace
		want      plan.StudState
	}{
		{"taped, closed", plan.ConditionClosed, []plan.StudPlace{{At: ruletest.In(40), State: plan.StudMeasured}}, plan.StudAssumed},
		{"taped, opened", plan.ConditionOpened, []plan.StudPlace{{At: ruletest.In(40), State: plan.StudMeasured}}, plan.StudAssumed},
		{"taped, new", plan.ConditionNew, []plan.StudPlace{{At: ruletest.In(40), State: plan.StudMeasured}}, plan.StudMeasured},
		{"a layout is said, closed", plan.ConditionClosed, nil, plan.StudStated},
	} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		r.Sides[0].Condition, r.Sides[0].Places = tt.condition, tt.places
		if tt.places == nil {
			r.Sides[0].Studs = plan.Studs{Spacing: ruletest.In(16), First: ruletest.In(10)}
		}
		face, _ := frame.FaceOf(index.New(h.Made()), r.Sides[0].ID)
		ends := 0
		for _, s := range face.Framed().All {
			if s.Kind != frame.EndStud {
				continue
			}
			if ends++; s.State != tt.want {
				t.Errorf("%s: the stud at %v is %s, want %s", tt.name, s.At, s.State, tt.want)
			}
		}
		if ends != 2 {
			t.Errorf("%s: %d studs at the ends", tt.name, ends)
		}
	}
}
