package spacing_test

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// TestWhatServeTells: its sentence, the name of its step and the sum of each line; two serve
// up to 24 ft of wall (210.52(A)(1)) and 8 ft of counter (210.52(C)(1)).
func TestWhatServeTells(t *testing.T) {
	wall := func(length float64, at ...float64) func(h *ruletest.House) *ruletest.Room {
		return func(h *ruletest.House) *ruletest.Room {
			r := oneSide(h, plan.UseBedroom, length)
			for _, a := range at {
				r.Opening("duplex", r.On(0, a))
			}
			return r
		}
	}
	for _, tt := range []struct {
		name  string
		make  func(h *ruletest.House) *ruletest.Room
		text  string
		step  string
		lines []string
		left  unit.Length
	}{
		{name: "all is served", make: wall(100, 50), text: "bedroom: its walls and wall counters lack no receptacle"},
		{name: "one more", make: wall(100), text: "bedroom: one more receptacle is the fewest that serve it", step: "Serve bedroom by one more receptacle",
			lines: []string{`Wall space of 8' 4": each serves 12' 0" at most; there now: 0, fewest that serve the rest: 1`}},
		{name: "two more", make: wall(300, 60), text: "bedroom: 2 more receptacles are the fewest that serve it", step: "Serve bedroom by 2 more receptacles",
			lines: []string{`Wall space of 25' 0": each serves 12' 0" at most; there now: 1, fewest that serve the rest: 2`}},
		{name: "no box can be set", make: func(h *ruletest.House) *ruletest.Room {
			r := h.Square(plan.UseBedroom, 0, 0, 60, 1.5)
			r.Sides[0].Kind = plan.SideGlass
			for _, s := range r.Sides[1:] {
				s.Kind = plan.SideOpen
			}
			return r
		}, text: "bedroom: no receptacle can be set where it lacks one", left: ruletest.In(60),
			lines: []string{`Wall space of 5' 0": a part of it has no place for a receptacle`}},
		{name: "a counter", make: func(h *ruletest.House) *ruletest.Room {
			r := oneSide(h, plan.UsePantry, 100)
			r.Fixture(plan.FixtureCounter, 0, 0, 90)
			r.Opening("counter", r.On(0, 10))
			return r
		}, text: "pantry: 2 more receptacles are the fewest that serve it", step: "Serve pantry by 2 more receptacles",
			lines: []string{`Counter of 7' 6": each serves 4' 0" at most; there now: 1, fewest that serve the rest: 2`}},
		{name: "a counter before glass", make: func(h *ruletest.House) *ruletest.Room {
			r := oneSide(h, plan.UsePantry, 100)
			r.Sides[0].Kind = plan.SideGlass
			r.Fixture(plan.FixtureCounter, 0, 0, 40)
			return r
		}, text: "pantry: no receptacle can be set where it lacks one", left: ruletest.In(40),
			lines: []string{`Counter of 3' 4": a part of it has no place for a receptacle`}},
		{name: "a room that the section does not name", make: func(h *ruletest.House) *ruletest.Room { return oneSide(h, plan.UseBath, 200) },
			text: "bath: its walls and wall counters lack no receptacle"},
	} {
		h := ruletest.New(t)
		r := tt.make(h)
		s, after := serve(t, h.Made(), r.Room.ID)
		var lines []string
		count := 0
		for _, l := range s.Lines {
			lines = append(lines, l.Text().String())
			count += l.Added
			long := unit.Length(0)
			for _, part := range l.Stretches {
				long += part.Length()
			}
			if long != l.Length || l.IsCounter != strings.HasPrefix(l.Text().String(), "Counter") {
				t.Errorf("%s: a line of %v has stretches of %v", tt.name, l.Length, long)
			}
		}
		step := ""
		if s.Edit != nil {
			step = s.Edit.Name().String()
		}
		if len(s.Added) == 1 { // one edit has the name of its own
			step = tt.step
		}
		left := unit.Length(0)
		for _, part := range s.Left {
			left += part.Length()
		}
		if s.Text().String() != tt.text || !slices.Equal(lines, tt.lines) || step != tt.step || left != tt.left || count != len(s.Added) || s.Room != r.Room {
			t.Errorf("%s: %q, %q, %q, %v left", tt.name, s.Text(), lines, step, left)
		}
		if got := after.Levels[0].Openings.Len() - h.Made().Levels[0].Openings.Len(); got != len(s.Added) {
			t.Errorf("%s: %d come, %d are told", tt.name, got, len(s.Added))
		}
	}
}

// TestHowShortALineServeLooksAt: a wall space of 2 ft (210.52(A)(2)(1)) and a counter of 12 in
// (210.52(C)(1)) want one, shorter ones by more than rounding none.
func TestHowShortALineServeLooksAt(t *testing.T) {
	for over, want := range map[unit.Length]int{0: 1, rule.Grain: 1, rule.Grain + 1: 0} {
		h := ruletest.New(t)
		wall := oneSide(h, plan.UseBedroom, 24)
		for _, s := range wall.Sides[1:3] {
			s.Start.X -= over
		}
		if s, _ := serve(t, h.Made(), wall.Room.ID); len(s.Lines) != want {
			t.Errorf("24 in of wall less %v: %d lines, want %d", over, len(s.Lines), want)
		}
		h = ruletest.New(t)
		counter := oneSide(h, plan.UsePantry, 100)
		counter.Fixture(plan.FixtureCounter, 0, 20, 12).Width -= over
		if s, _ := serve(t, h.Made(), counter.Room.ID); len(s.Lines) != want {
			t.Errorf("12 in of counter less %v: %d lines, want %d", over, len(s.Lines), want)
		}
	}
}

// TestTheStepOfServing is named by the room and by how many it adds, of one as of two: undo
// tells it.
func TestTheStepOfServing(t *testing.T) {
	for long, want := range map[float64]string{
		140: "Serve living by one more receptacle",
		280: "Serve living by 2 more receptacles",
	} {
		r := filltest.OneWall(t, long)
		r.Room.Name = "living"
		s, _ := serve(t, r.Plan(), r.Room.ID)
		if s.Edit == nil || s.Edit.Name().String() != want {
			t.Errorf("%v in of wall: %v, want %q", long, s.Edit, want)
		}
	}
}
