package wall_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

// A partition of two faces of 144 in: what is at a place from the left of one is at 144 less
// it from the left of the other. Studs at 20, 36 and 52 on one face are at 92, 108 and 124
// on the other.
func TestStudLayouts(t *testing.T) {
	places := func(inches ...float64) (all []plan.StudPlace) {
		for _, at := range inches {
			all = append(all, plan.StudPlace{At: in(at), State: plan.StudMeasured})
		}
		return all
	}
	const differ = "warn: The faces of the wall between Room 2 and Room 1 state different studs"
	for _, tt := range []struct {
		name        string
		face, other func(*plan.Side)
		want        []string
	}{
		{"neither states any", nil, nil, nil},
		{"one states them", func(s *plan.Side) { s.Places = places(20, 36, 52) }, nil, nil},
		{"both alike", func(s *plan.Side) { s.Places = places(20, 36, 52) }, func(s *plan.Side) { s.Places = places(92, 108, 124) }, nil},
		{"1/16 off", func(s *plan.Side) { s.Places = places(20, 36, 52) }, func(s *plan.Side) { s.Places = places(92, 108.0625, 124) }, nil},
		{"1/8 off", func(s *plan.Side) { s.Places = places(20, 36, 52) }, func(s *plan.Side) { s.Places = places(92, 108.125, 124) }, []string{differ}},
		{"one more", func(s *plan.Side) { s.Places = places(20, 36, 52) }, func(s *plan.Side) { s.Places = places(92, 108, 124, 130) }, []string{differ}},
		// From the left at 10 and 16 in on: 10, 26 ... 138; from the other's right end at 10 the same.
		{"one row from one end", func(s *plan.Side) { s.Studs.First = in(10) }, func(s *plan.Side) { s.Studs.First, s.Studs.FromRight = in(10), true }, nil},
		// From the other's left end at 10: 134, 118 ... from this one's.
		{"from either end", func(s *plan.Side) { s.Studs.First = in(10) }, func(s *plan.Side) { s.Studs.First = in(10) }, []string{differ}},
	} {
		h := walltest.New(t)
		face, back := h.Partition(3.5)
		for side, change := range map[plan.ID]func(*plan.Side){face: tt.face, back: tt.other} {
			if change == nil {
				continue
			}
			ref, _ := h.Plan.Side(side)
			now := *ref.Side()
			change(&now)
			h.Do(edit.ChangeSide{Side: now})
		}
		if got := h.Said("stud-layouts"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("stud-layouts")
	}
}
