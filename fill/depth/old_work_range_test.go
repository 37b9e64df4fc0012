package depth_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
)

// The catalogue has from memory that the clamps of an old-work box grip 1/4 to 1 in.
func TestOldWorkRange(t *testing.T) {
	const unknown = "note: A1: it is not known how thick the finish is that its clamps grip"
	for _, tt := range []struct {
		layers []plan.Layer
		code   string
		want   []string
	}{
		{walltest.Layers(0.5), "OW1", nil},
		{walltest.Layers(0.25), "OW1", nil},
		{walltest.Layers(0.1875), "OW1", []string{`stop: A1: the finish is 1/16" too thin for its clamps`}},
		{walltest.Layers(0.5, 0.5), "OW1", nil},
		{walltest.Layers(0.5, 0.5625), "OW1", []string{`stop: A1: the finish is 1/16" too thick for its clamps`}},
		{walltest.Layers(0.75, 0.5), "OW3", []string{`stop: A1: the finish is 1/4" too thick for its clamps`}}, // plaster on lath under 1/2 of board
		{walltest.Layers(0.75, 0.5), "PN1", nil},
		{nil, "OW1", []string{unknown}},
		{[]plan.Layer{{Name: "tile", Thickness: in(2), Undecided: true}}, "OW1", []string{unknown}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Finish = tt.layers })
		h.Box(room.Sides[0], "duplex", tt.code, 40, 16, nil)
		if got := h.Said("old-work-range"); !slices.Equal(got, tt.want) {
			t.Errorf("%s in %v: %q, want %q", tt.code, tt.layers, got, tt.want)
		}
		h.Cures("old-work-range")
	}
}

// A plate that lies on a baseboard whole has that under its clamps too: 3/4 of plaster and 1/4 of
// wood are the 1 in that they grip. One that lies over its edge, or above it, has not. A plate is
// 4-1/2 high (trade.md, plates); a baseboard of unknown thickness adds nothing.
func TestOldWorkRangeOnABaseboard(t *testing.T) {
	const thick = `stop: A1: the finish is 1/16" too thick for its clamps`
	for _, tt := range []struct {
		centre, wood float64
		want         []string
	}{
		{4.75, 0.25, nil}, {4.75, 0.3125, []string{thick}}, {4.75, 0, nil},
		{2.25, 0.3125, []string{thick}}, {2.1875, 0.3125, nil}, // 0, and 1/16 below the floor
		{6.75, 0.3125, []string{thick}}, {6.8125, 0.3125, nil}, // its top at 9, and at 9-1/16
		{16, 0.3125, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			r.Sides[0].Finish = walltest.Layers(0.75)
			r.Sides[0].Trim = []plan.Trim{{Name: "baseboard", Height: in(9), Thick: in(tt.wood)}}
		})
		h.Box(room.Sides[0], "duplex", "OW1", 40, tt.centre, nil)
		if got := h.Said("old-work-range"); !slices.Equal(got, tt.want) {
			t.Errorf("center at %v in a baseboard of %v: %q, want %q", tt.centre, tt.wood, got, tt.want)
		}
	}
}

// In metric 25 mm is inside 1 in (25.4), 26 mm is not.
func TestOldWorkRangeInMetric(t *testing.T) {
	for layer, want := range map[float64]int{25: 0, 26: 1, 6.35: 0, 6: 1} {
		h := walltest.New(t)
		h.Metric()
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Finish = []plan.Layer{{Name: "plaster", Thickness: mm(layer)}} })
		h.Box(room.Sides[0], "duplex", "OW1", 40, 16, nil)
		if got := h.Found("old-work-range"); len(got) != want {
			t.Errorf("%v mm: %v", layer, got)
		}
	}
}
