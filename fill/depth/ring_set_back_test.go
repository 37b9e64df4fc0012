package depth_test

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill/rule"
	"studbay/fill/walltest"
	"studbay/plan"
)

var in, mm = walltest.In, walltest.MM

// Rows of the finish stacks of common walls (sums of listed thicknesses): what each leaves
// of a ring raised 1/2, and of one that passes. 314.20: at most 1/4 in behind a surface
// that does not burn, none behind one that does.
func TestRingSetBack(t *testing.T) {
	const (
		half         = "ring4-1g-0.5"
		fiveEighths  = "ring4-1g-0.625"
		threeQuarter = "ring4-1g-0.75"
		one          = "ring4-1g-1"
	)
	wood := func(inches ...float64) []plan.Layer {
		layers := walltest.Layers(inches...)
		layers[len(layers)-1].Combustible = true
		return layers
	}
	for _, tt := range []struct {
		layers []plan.Layer
		ring   string
		want   []string
		source string
	}{
		{walltest.Layers(0.5), half, nil, "1/2 board: 1/2 − 1/2 = 0"},
		{walltest.Layers(0.5, 0.125, 0.25), half, []string{`stop: A1: the ring ends 3/8" behind the finish`}, "board, thinset, glass: 7/8 − 1/2 = 3/8"},
		{walltest.Layers(0.5, 0.125, 0.375), half, []string{`stop: A1: the ring ends 1/2" behind the finish`}, "board, thinset, tile: 1 − 1/2 = 1/2"},
		{walltest.Layers(0.5, 0.125, 0.375), threeQuarter, nil, "1 − 3/4 = 1/4, the most there may be"},
		{walltest.Layers(0.5, 0.125, 0.375), one, nil, "1 − 1 = 0"},
		{walltest.Layers(0.5, 0.125, 0.5), fiveEighths, []string{`stop: A1: the ring ends 1/2" behind the finish`}, "1-1/8 − 5/8 = 1/2"},
		{walltest.Layers(0.5, 0.25, 0.125, 0.375), one, nil, "1-1/4 − 1 = 1/4"},
		{wood(0.5, 0.75), one, []string{`stop: A1: the ring ends 1/4" behind the finish`}, "foam and boards that burn: 1-1/4 − 1 = 1/4, none may be"},
		{wood(0.5, 0.75), "ring4-1g-1.25", nil, "1-1/4 − 1-1/4 = 0"},
		{walltest.Layers(0.75), half, nil, "3/4 − 1/2 = 1/4"},
		{walltest.Layers(0.8125), half, []string{`stop: A1: the ring ends 5/16" behind the finish`}, "1/16 over: 13/16 − 1/2 = 5/16"},
		{walltest.Layers(0.6875), half, nil, "1/16 under: 11/16 − 1/2 = 3/16"},
		{wood(0.5625), half, []string{`stop: A1: the ring ends 1/16" behind the finish`}, "1/16 over behind wood"},
		{walltest.Layers(0.4375), half, []string{`warn: A1: the ring stands 1/16" out of the finish`}, "common practice: a plate lies on the wall"},
		{nil, half, nil, "no layer is told"},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Finish = tt.layers })
		h.Box(room.Sides[0], "duplex", "", 40, 16, func(o *plan.Opening) {
			o.Assembly = plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: tt.ring}}, Cover: "plate-1g"}
		})
		if got := h.Said("ring-set-back"); !slices.Equal(got, tt.want) {
			t.Errorf("%v with %s: %q, want %q (%s)", tt.layers, tt.ring, got, tt.want, tt.source)
		}
		h.Cures("ring-set-back")
	}
}

// What the finding of a ring 1/2 behind 1 in of tile says, and what it offers: of the rings
// to one gang on 4 in square boxes those of 3/4 and 1.
func TestRingSetBackTellsFiguresAndRings(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Finish = walltest.Layers(0.5, 0.125, 0.375) })
	o := h.Box(room.Sides[0], "duplex", "SQ1", 40, 16, nil)
	found := h.Found("ring-set-back")
	if len(found) != 1 {
		t.Fatal(found)
	}
	f := found[0]
	if f.Measured != rule.LengthOf(in(0.5)) || f.Limit != rule.LengthOf(in(0.25)) || f.Section != "NEC 2023 314.20" || f.Opening != o.ID {
		t.Errorf("%v of %v by %q on %s", f.Measured, f.Limit, f.Section, f.Opening)
	}
	var offers []string
	for _, r := range f.Remedies {
		offers = append(offers, r.Label.String())
	}
	if want := []string{`Use a ring raised 1"`, `Use a ring raised 3/4"`}; !slices.Equal(offers, want) {
		t.Errorf("offers %q, want %q", offers, want)
	}
}

// An undecided layer leaves no verdict: what has to be set now waits for it, be it a ring or a
// box that comes through the finish itself. One that adjusts waits for nothing (common practice,
// trade facts: plastic that comes through, "or an adjustable box"), nor one of old work.
func TestRingSetBackWaitsForTheFinish(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
		r.Sides[0].Finish = append(walltest.Board(), plan.Layer{Name: "tile", Thickness: in(0.5), Undecided: true})
	})
	h.Box(room.Sides[0], "duplex", "SQ1", 40, 16, nil)
	h.Box(room.Sides[0], "duplex", "PN1", 70, 16, nil)
	h.Box(room.Sides[0], "duplex", "AJ1", 90, 16, nil)
	h.Box(room.Sides[0], "duplex", "OW1", 105, 16, nil)
	h.Box(room.Sides[0], "duplex", "PN1", 120, 16, func(o *plan.Opening) { o.Status = plan.StatusExisting })
	if got, want := h.Said("ring-set-back"), []string{"note: A1: its ring waits for the finish", "note: A2: how far its box stands out waits for the finish"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// A plastic box comes through the finish itself: its ears let it stand out so far as the
// catalogue says from memory, 1 in.
func TestBoxWithoutARing(t *testing.T) {
	for _, tt := range []struct {
		layer float64
		want  int
	}{{0.9375, 0}, {1, 0}, {1.0625, 1}} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Finish = walltest.Layers(tt.layer) })
		h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
		if got := h.Found("ring-set-back"); len(got) != tt.want || len(got) > 0 && (got[0].Severity != rule.Warn || got[0].Section != "") {
			t.Errorf("%v in: %v", tt.layer, got)
		}
	}
}

// A metric plan: 12.5 mm of board and 10 mm of tile are 22.5; a ring of 1/2 in (12.7) ends
// 9.8 mm back, more than 1/4 in (6.35; 6 mm by the other figure of the pair). One of 5/8
// (15.875) ends 6.625 back, one of 3/4 (19.05) 3.45.
func TestRingSetBackInMetric(t *testing.T) {
	for _, tt := range []struct {
		ring string
		want []string
	}{
		{"ring4-1g-0.5", []string{"stop: A1: the ring ends 9.8 mm behind the finish"}},
		{"ring4-1g-0.625", []string{"stop: A1: the ring ends ≈ 7 mm behind the finish"}},
		{"ring4-1g-0.75", nil},
	} {
		h := walltest.New(t)
		h.Metric()
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			r.Sides[0].Finish = []plan.Layer{{Name: "board", Thickness: mm(12.5)}, {Name: "tile", Thickness: mm(10)}}
		})
		h.Box(room.Sides[0], "duplex", "", 40, 16, func(o *plan.Opening) {
			o.Assembly = plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: tt.ring}}}
		})
		var got []string
		for _, f := range h.Found("ring-set-back") {
			got = append(got, fmt.Sprintf("%s: %s", f.Severity, h.Say(f.Message)))
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.ring, got, tt.want)
		}
	}
}
