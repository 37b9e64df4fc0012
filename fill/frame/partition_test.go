package frame_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// told are the studs that a side tells along its length, by the words of the trade: each
// by itself, or from where they begin, from either end, one every spacing; where nobody says
// where they begin, the first one spacing from the left.
func told(s *plan.Side, length unit.Length) (all []plan.StudPlace) {
	if len(s.Places) > 0 {
		return s.Places
	}
	first, state := s.Studs.First, plan.StudAssumed
	if first > 0 || s.Studs.FromRight {
		state = plan.StudStated
	}
	if first == 0 {
		first = s.Studs.Spacing
	}
	for at := first; s.Studs.Spacing > 0 && at <= length; at += s.Studs.Spacing {
		from := at
		if s.Studs.FromRight {
			from = length - at
		}
		all = append(all, plan.StudPlace{At: from, State: state})
	}
	return all
}

// says ranks what a side tells: nothing, a spacing, where they begin, each by itself.
func says(s *plan.Side) int {
	switch {
	case len(s.Places) > 0:
		return 3
	case s.Studs.Spacing > 0 && (s.Studs.First > 0 || s.Studs.FromRight):
		return 2
	case s.Studs.Spacing > 0:
		return 1
	}
	return 0
}

// drawn is a side with where it lies along the front: its left end behind is its right end
// as seen in front.
type drawn struct {
	side     *plan.Side
	from, to unit.Length
}

// holds reports whether the studs of a side hold before those of another: the more said of
// them, else the longer, else the lower ID.
func (d drawn) holds(over drawn) bool {
	if a, b := says(d.side), says(over.side); a != b {
		return a > b
	}
	if a, b := d.to-d.from, over.to-over.from; a != b {
		return a > b
	}
	return d.side.ID < over.side.ID
}

// studsInFront asks of each stud that any side tells by itself whether it stands behind the
// front: one of the front's wherever no wall behind holds before it, one of a wall behind
// where that does and the front reaches.
func studsInFront(front drawn, behind []drawn) (all []plan.StudPlace) {
	if front.side.Kind != plan.SideWall {
		return nil
	}
	covers := func(d drawn, at unit.Length) bool {
		return d.side.Kind == plan.SideWall && max(d.from, 0) <= at && at <= min(d.to, front.to)
	}
	for _, p := range told(front.side, front.to) {
		isFirst := !slices.ContainsFunc(behind, func(d drawn) bool { return covers(d, p.At) && d.holds(front) })
		if isFirst && 0 <= p.At && p.At <= front.to {
			all = append(all, p)
		}
	}
	for _, d := range behind {
		for _, p := range told(d.side, d.to-d.from) {
			if at := d.to - p.At; covers(d, at) && d.holds(front) {
				all = append(all, plan.StudPlace{At: at, State: p.State})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b plan.StudPlace) int { return int((a.At - b.At) / unit.Nanometre) })
	return all
}

// parts is where two faces that both state their studs first differ, an end stud's
// thickness off the ends of what they share: by more than 1/16 in, or since one tells more.
func parts(front, back drawn) (at unit.Length, ok bool) {
	if says(front.side) < 2 || says(back.side) < 2 || front.side.Kind != plan.SideWall || back.side.Kind != plan.SideWall {
		return 0, false
	}
	from, to := max(back.from, 0)+frame.StudThick, min(back.to, front.to)-frame.StudThick
	var own, theirs []unit.Length
	for _, p := range told(front.side, front.to) {
		if from <= p.At && p.At <= to {
			own = append(own, p.At)
		}
	}
	for _, p := range told(back.side, back.to-back.from) {
		if l := back.to - p.At; from <= l && l <= to {
			theirs = append(theirs, l)
		}
	}
	slices.Sort(own)
	slices.Sort(theirs)
	for len(own) > 0 && len(theirs) > 0 {
		if (own[0] - theirs[0]).Abs() > unit.Inch/16 {
			return own[0], true
		}
		own, theirs = own[1:], theirs[1:]
	}
	for _, rest := range append(own, theirs...) {
		return rest, true
	}
	return 0, false
}

// TestStudsOfAPartitionAreThoseThatHold draws random faces with up to two rooms behind, in
// whole and half inches, so that studs come to stand at the ends of what they share.
func TestStudsOfAPartitionAreThoseThatHold(t *testing.T) {
	random := rand.New(rand.NewPCG(17, 18))
	pick := func(all ...float64) unit.Length { return in(all[random.IntN(len(all))]) }
	change := func(s *plan.Side, length unit.Length) {
		s.Studs = plan.Studs{Depth: in(3.5), Spacing: pick(0, 12, 16, 16, 24), First: pick(0, 0, 4, 8, 15.5, 16.0625, 16.125), FromRight: random.IntN(3) == 0}
		if random.IntN(5) == 0 {
			s.Kind = plan.SideGlass
		}
		if random.IntN(4) == 0 {
			for at := pick(0, 1.5, 10, 30); at <= length; at += pick(8, 16, 30) {
				s.Places = append(s.Places, plan.StudPlace{At: at, State: []plan.StudState{plan.StudAssumed, plan.StudStated, plan.StudMeasured}[random.IntN(3)]})
			}
		}
	}
	agree, part := 0, 0
	for range 500 {
		h := newHouse(t)
		front := drawn{to: in(float64(60 + 4*random.IntN(30)))}
		h.room(0, 0, front.to.Millimetres()/25.4, 120, func(s []*plan.Side) { change(s[0], front.to); front.side = s[0] })
		var behind []drawn
		from := in(float64(4*random.IntN(12) - 24))
		for range random.IntN(3) {
			b := drawn{from: from, to: from + in(float64(32+4*random.IntN(24)))}
			h.room(b.from.Millimetres()/25.4, -104.5, b.to.Millimetres()/25.4, -4.5, func(s []*plan.Side) { change(s[2], b.to-b.from); b.side = s[2] })
			if b.from < front.to {
				behind = append(behind, b)
			}
			from = b.to + pick(4.5, 20)
		}
		f, ok := frame.FaceOf(index.New(h.p), front.side.ID)
		if !ok || len(f.Behind) != len(behind) {
			t.Fatalf("%d faces behind, want %d", len(f.Behind), len(behind))
		}
		want := studsInFront(front, behind)
		if got := f.StudPlaces(); !slices.Equal(got, want) {
			t.Fatalf("front %+v, behind %+v:\n got %v\nwant %v", front, behind, got, want)
		}
		state, placed := plan.StudAssumed, false
		for _, p := range want {
			if p.State == plan.StudMeasured || p.State == plan.StudStated && state == plan.StudAssumed {
				state = p.State
			}
		}
		for _, d := range append(behind, front) {
			for _, p := range d.side.Places {
				at := p.At
				if d != front {
					at = d.to - p.At
				}
				placed = placed || slices.Contains(want, plan.StudPlace{At: at, State: p.State})
			}
		}
		if got := f.LayoutState(); got != state || f.Framed().State != state {
			t.Errorf("%v are %q, want %q", want, got, state)
		}
		if got := f.IsPlaced(); got != placed {
			t.Errorf("%v are told one by one: %v, want %v", want, got, placed)
		}
		for i, b := range behind {
			at, ok := parts(front, b)
			if got, differs := f.Disagreement(i); got != at || differs != ok {
				t.Fatalf("front %+v, behind %+v: part at %v, %v, want %v, %v", front, b, got, differs, at, ok)
			}
			if ok {
				part++
			} else if says(front.side) > 1 && says(b.side) > 1 {
				agree++
			}
		}
	}
	if agree < 5 || part < 20 {
		t.Errorf("%d agree, %d part: too few to say anything", agree, part)
	}
}

// TestStudsTakenOverBehind: where a face behind tells its studs one by one, it tells those of
// the front from then on as far as it stands there, both ends included, and its own elsewhere.
func TestStudsTakenOverBehind(t *testing.T) {
	at := func(inches ...float64) (all []plan.StudPlace) {
		for _, l := range inches {
			all = append(all, plan.StudPlace{At: in(l), State: plan.StudStated})
		}
		return all
	}
	for _, tt := range []struct {
		name        string
		theirs      []plan.StudPlace
		put, behind []plan.StudPlace
	}{
		// The front runs from 0 to 100, the face behind from 20 to 140 as seen from it: what is
		// at s in front is at 140 - s behind, and from 40 on it stands behind the front.
		{"all along", at(8, 24, 40, 60, 90, 120), at(16, 20, 48, 100), at(8, 24, 40, 92, 120)},
		{"past its end nothing changes", at(8, 24), at(19.9375), at(8, 24)},
		{"one at the very ends goes", at(39.9375, 40, 120), at(50), at(39.9375, 90)},
		{"it tells none one by one", nil, at(16, 48), nil},
	} {
		h := newHouse(t)
		front := h.room(0, 0, 100, 120, nil)[0]
		back := h.room(20, -104.5, 140, -4.5, func(s []*plan.Side) { s[2].Places = tt.theirs })[2]
		f, _ := frame.FaceOf(index.New(h.p), front)
		h.do(f.WithStuds(tt.put))
		own, _ := h.p.Side(front)
		theirs, _ := h.p.Side(back)
		if !slices.Equal(own.Side().Places, tt.put) || !slices.Equal(theirs.Side().Places, tt.behind) {
			t.Errorf("%s: %v and behind %v, want %v", tt.name, own.Side().Places, theirs.Side().Places, tt.behind)
		}
	}
	// Of two within reach the nearer, of two as near the first; past the last none is moved.
	h := newHouse(t)
	side := h.room(0, 0, 100, 120, func(s []*plan.Side) { s[0].Places = at(10, 20, 21, 30) })[0]
	f, _ := frame.FaceOf(index.New(h.p), side)
	for _, tt := range []struct {
		at, reach float64
		want      int
		ok        bool
	}{{20.25, 5, 1, true}, {20.75, 5, 2, true}, {20.5, 5, 1, true}, {29, 20, 3, true}, {12, 100, 0, true}, {12, 1.9375, 0, false}} {
		if got, ok := f.StudAt(in(tt.at), in(tt.reach)); ok != tt.ok || ok && got != tt.want {
			t.Errorf("at %v within %v: %d, %v, want %d", tt.at, tt.reach, got, ok, tt.want)
		}
	}
	for _, e := range []interface {
		Apply(plan.Plan) (plan.Plan, error)
	}{f.WithStudMoved(4, in(50)), f.WithoutStud(4)} {
		next, err := e.Apply(h.p)
		if ref, _ := next.Side(side); err != nil || !slices.Equal(ref.Side().Places, at(10, 20, 21, 30)) {
			t.Errorf("a stud that is not there: %v, %v", ref.Side().Places, err)
		}
	}
}
