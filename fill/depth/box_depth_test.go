package depth_test

import (
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

// A box with a ring takes all of its depth, one without its depth less the layers (the ring
// stands even with the studs, the box itself comes through). Framing as entered: 3-1/2 a
// 2×4, 2-1/2 a 2×3, 1-1/2 a furring strip.
func TestBoxDepth(t *testing.T) {
	for _, tt := range []struct {
		code    string
		framing float64
		want    []string
		source  string
	}{
		{"PN3", 3.5, nil, "nail-on 3-1/2 deep: 3-1/2 − 1/2 = 3"},
		{"PN3", 3, nil, "as deep as the framing: 3 of 3"},
		{"PN3", 2.9375, []string{`stop: A1: the box is 1/16" deeper than the framing`}, "3 of 2-15/16"},
		{"PN3", 1.5, []string{`stop: A1: the box is 1-1/2" deeper than the framing`}, "3 of 1-1/2"},
		{"SQ3", 2.125, nil, "4 in square 2-1/8 with a ring: 2-1/8 of 2-1/8"},
		{"SQ3", 2.0625, []string{`stop: A1: the box is 1/16" deeper than the framing`}, "2-1/8 of 2-1/16"},
		{"SQ8", 2.9375, []string{`stop: A1: the box is 1/16" deeper than the framing`}, "1-1/2 with an extension of 1-1/2: 3 of 2-15/16"},
		{"OW1", 2.1875, []string{`stop: A1: the box is 1/16" deeper than the framing`}, "old-work 2-3/4: 2-1/4 of 2-3/16"},
		{"WP1", 1.5, nil, "on the surface it takes no framing"},
		{"PN3", 0, nil, "nobody tells the framing"},
		{"", 1.5, nil, "no box is chosen"},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Depth = in(tt.framing) })
		h.Box(room.Sides[0], "duplex", tt.code, 40, 16, nil)
		if got := h.Said("box-depth"); !slices.Equal(got, tt.want) {
			t.Errorf("%s in %v: %q, want %q (%s)", tt.code, tt.framing, got, tt.want, tt.source)
		}
	}
}

// Between two rooms the gap tells: faces 3-1/2 in apart with 1/2 in of board on each leave
// 2-1/2, whatever is entered.
func TestBoxDepthByTheGap(t *testing.T) {
	h := walltest.New(t)
	face, _ := h.Partition(2.5)
	o := h.Box(face, "duplex", "PN3", 40, 16, nil)
	found := h.Found("box-depth")
	if len(found) != 1 || found[0].Opening != o.ID || found[0].Measured != rule.LengthOf(in(3)) || found[0].Limit != rule.LengthOf(in(2.5)) {
		t.Errorf("%+v", found)
	}
}

// A nail-on box of 18.0 in³ is 2-3/4 deep and takes 2-1/4: 1/4 too deep in 2. Of one gang
// and no less volume the steel square of 1-1/2 (21.0) goes in, as it is and with a ring that
// is marked. A square of 2-1/8 (30.3) is 1/8 too deep, and nothing as roomy is shallower.
func TestBoxDepthOffersWhatFits(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Depth = in(2) })
	plastic := h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
	h.Box(room.Sides[0], "duplex", "SQ3", 80, 16, nil)
	for _, f := range h.Found("box-depth") {
		var offers, want []string
		for _, r := range f.Remedies {
			offers = append(offers, r.Label.String())
		}
		if f.Opening == plastic.ID {
			want = []string{"Use “Steel square 4 × 1-1/2, one-gang ring 1/2 without a mark”", "Use “Steel square 4 × 1-1/2, one-gang ring 1/2 marked 3.5”"}
		}
		if !slices.Equal(offers, want) {
			t.Errorf("%s offers %q, want %q", f.Message, offers, want)
		}
	}
	h.Cures("box-depth")
}

// In a wall that stays closed goes an old-work box, a smaller one too: behind 1/2 of board OW2
// (20.0 in³, 3 deep) takes 2-1/2 and PN3 3, OW1 (17.0, 2-3/4) takes 2-1/4 and goes in 2-3/8.
// Its clamps do not grip a finish of 2 in; of a finish that nobody tells that is not known.
func TestBoxDepthOffersASmallerOldWorkBox(t *testing.T) {
	for _, tt := range []struct {
		code    string
		framing float64
		layers  []plan.Layer
		want    []string
	}{
		{"OW2", 2.375, walltest.Board(), []string{"OW1"}},
		{"PN3", 2.375, walltest.Board(), []string{"OW1"}},
		{"OW2", 2.1875, walltest.Board(), nil},
		{"OW2", 0.875, walltest.Layers(2), nil},
		{"OW2", 2.875, nil, []string{"OW1"}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			s := r.Sides[0]
			s.Studs.Depth, s.Condition, s.Finish = in(tt.framing), plan.ConditionClosed, tt.layers
		})
		h.Box(room.Sides[0], "duplex", tt.code, 40, 16, nil)
		found := h.Found("box-depth")
		if len(found) != 1 {
			t.Fatalf("%s: %+v", tt.code, found)
		}
		var got []string
		for _, r := range found[0].Remedies {
			got = append(got, r.Edit.(edit.SetAssembly).Assembly.Code)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s in %v: %q, want %q", tt.code, tt.framing, got, tt.want)
		}
		h.Cures("box-depth")
	}
}
