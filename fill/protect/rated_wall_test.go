package protect_test

import (
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

var in = walltest.In

// rated makes a house of one room with a rated wall, 10 ft high and so long in inches. It
// has no studs, so that boxes may stand anywhere.
func rated(t *testing.T, long float64) (*walltest.House, plan.ID) {
	h := walltest.New(t)
	room := h.Room(0, 0, long, 120, func(r *plan.Room) {
		r.Ceiling = in(120)
		for _, s := range r.Sides {
			s.Rated, s.Studs.Spacing = true, 0
		}
	})
	return h, room.Sides[0]
}

// One-hour wall of 10 × 10 ft, derived from IRC R302.4.2: six steel boxes of 4 × 4 are 96 in²
// and pass, seven are 112; one of 4-11/16 square is 21.97 and too large alone.
func TestSteelInARatedWall(t *testing.T) {
	for n, want := range map[int][]string{6: nil, 7: {"stop: Metal boxes take 112 in² of 100 ft² of a rated wall"}} {
		h, side := rated(t, 120)
		for i := range n {
			h.Box(side, "duplex", "SQ1", 10+16*float64(i), 16, nil)
		}
		if got := h.Said("rated-wall"); !slices.Equal(got, want) {
			t.Errorf("%d boxes: %q, want %q", n, got, want)
		}
	}
	h, side := rated(t, 120)
	h.Box(side, "range", "SQ7", 30, 16, func(o *plan.Opening) { o.Gangs = 2 })
	if got, want := h.Said("rated-wall"), []string{"stop: A1: the box takes 21.97 in² of a rated wall"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// In a wall of 20 × 10 ft the part that is slid is 14400 in² / 120 in = 120 in wide. Six
// boxes between 10 and 100 and one whose left edge is at 129: of it 1 in lies within the
// 120 in from 10 on, 6 × 16 + 1 × 4 = 100 in², the most there may be. A 16th nearer it is
// 100.25. Tiles of 120 in from the wall's end would see neither.
func TestThePartOfTheWallIsSlid(t *testing.T) {
	for last, want := range map[float64]int{131: 0, 130.9375: 1} {
		h, side := rated(t, 240)
		for i := range 6 {
			h.Box(side, "duplex", "SQ1", 12+16*float64(i), 16, nil)
		}
		h.Box(side, "duplex", "SQ1", last, 16, nil)
		found := h.Found("rated-wall")
		if len(found) != want {
			t.Errorf("the last at %v: %v", last, found)
		}
		if want > 0 && (found[0].Limit != rule.AreaOf(unit.SquareInch.Mul(100)) || found[0].Stretches[0].From != in(10) && found[0].Stretches[0].To != in(132.9375)) {
			t.Errorf("%+v", found[0])
		}
	}
}

// Plastic wants a listing, and no box of the catalogue has one. A separation between a house
// and its garage is no rated wall.
func TestPlasticInARatedWall(t *testing.T) {
	for _, tt := range []struct {
		change func(*plan.Side)
		want   []string
	}{
		{func(s *plan.Side) { s.Rated = true }, []string{"stop: A1: the plastic box has no known listing for a rated wall"}},
		{func(s *plan.Side) { s.Separation = true }, nil},
		{func(*plan.Side) {}, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 120, 120, func(r *plan.Room) { tt.change(r.Sides[0]) })
		h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
		if got := h.Said("rated-wall"); !slices.Equal(got, tt.want) {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// Boxes of 4 in on opposite faces, batts between: 20 in apart fails, 24 passes, from edge to
// edge along the wall whatever their heights. Listed pads lift it; loose cellulose asks for
// the depth of the cavity, 3-1/2. Either face may tell the rating.
func TestOppositeFacesOfARatedWall(t *testing.T) {
	for _, tt := range []struct {
		name   string
		apart  float64 // from edge to edge
		up     float64 // of the second
		rating plan.Rating
		want   int
	}{
		{"20 in", 20, 16, plan.Rating{Cavity: "glass-fiber batts"}, 1},
		{"24 in", 24, 16, plan.Rating{Cavity: "glass-fiber batts"}, 0},
		{"1/16 less", 23.9375, 16, plan.Rating{}, 1},
		{"heights do not help", 20, 90, plan.Rating{}, 1},
		{"pads", 20, 16, plan.Rating{Putty: true}, 0},
		{"loose cellulose", 3.5, 16, plan.Rating{Cavity: "loose cellulose"}, 0},
		{"loose cellulose, 1/16 less", 3.4375, 16, plan.Rating{Cavity: "loose cellulose"}, 1},
	} {
		for _, first := range []bool{true, false} {
			h := walltest.New(t)
			face, back := h.Partition(3.5)
			for i, side := range []plan.ID{face, back} {
				ref, _ := h.Plan.Side(side)
				s := *ref.Side()
				s.Studs.Spacing = 0
				if (i == 0) == first {
					s.Rated, s.Rating = true, tt.rating
				}
				h.Do(edit.ChangeSide{Side: s})
			}
			h.Box(face, "duplex", "SQ1", 40, 16, nil)
			h.Box(back, "duplex", "SQ1", 144-44-tt.apart, tt.up, nil)
			got := h.Found("rated-wall")
			if len(got) != tt.want {
				t.Errorf("%s: %v", tt.name, got)
			}
			// Nobody tells the studs of this wall: the box moves all the same, and that is a cure.
			if tt.want > 0 && !slices.ContainsFunc(got[0].Remedies, func(r rule.Remedy) bool { _, is := r.Edit.(edit.MoveOpening); return is }) {
				t.Errorf("%s: no place is offered: %v", tt.name, got[0].Remedies)
			}
			h.Cures("rated-wall")
		}
	}
}

// A wall 20 ft long and 10 ft high, studs at 16 in: seven boxes of 16 in² in its first 10 ft are
// 112 in² (IRC R302.4.2 takes 100 in any 100 ft², a part 10 ft long). One moved so far that no
// 10 ft have seven makes it right; in a wall of 10 ft there is no such place.
func TestBoxesOfARatedWallAreSpread(t *testing.T) {
	for _, tt := range []struct {
		length float64
		offers bool
	}{{240, true}, {120, false}} {
		h := walltest.New(t)
		room := h.Room(0, 0, tt.length, 120, func(r *plan.Room) { r.Ceiling = in(120); r.Sides[0].Rated = true })
		for i := range 7 {
			h.Box(room.Sides[0], "duplex", "SQ1", 18.75+16*float64(i), 16, nil) // against the stud at its left
		}
		found := h.Found("rated-wall")
		if len(found) != 1 || (len(found[0].Remedies) > 0) != tt.offers {
			t.Errorf("%v long: %+v", tt.length, found)
			continue
		}
		var moved []string
		for _, r := range found[0].Remedies {
			o, _ := h.Plan.Opening(r.Edit.(edit.MoveOpening).ID)
			moved = append(moved, o.Tag)
		}
		if tt.offers && !slices.Equal(moved, []string{"A1", "A7"}) {
			t.Errorf("%v long: %v may be moved, want the first and the last", tt.length, moved)
		}
		h.Cures("rated-wall")
	}
}

// In place of a box of 4-11/16 in square, 21.97 in², one of 4 in square, 16 in², is offered,
// though it holds less.
func TestSmallerBoxesForARatedWall(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Rated = true })
	h.Box(room.Sides[0], "range", "SQ7", 40, 16, func(o *plan.Opening) { o.Gangs = 2 })
	found := h.Found("rated-wall")
	if len(found) != 1 || len(found[0].Remedies) == 0 {
		t.Fatalf("%+v", found)
	}
	for _, r := range found[0].Remedies {
		next, err := r.Edit.Apply(h.Plan)
		if err != nil {
			t.Fatal(err)
		}
		after := &walltest.House{T: t, Plan: next, IDs: h.IDs}
		if left := after.Found("rated-wall"); len(left) != 0 {
			t.Errorf("%s leaves %s", h.Say(r.Label), h.Say(left[0].Message))
		}
	}
}
