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
