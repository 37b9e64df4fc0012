package clash_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
)

// Three of one height are a habit; more than 1/4 in off it is told (common practice). Any
// switch counts as one kind. A height to the bottom of the box from the subfloor is the same
// height: a nail-on of 3-3/4 at 14-1/8 is 16 at its middle.
func TestHeightOutlier(t *testing.T) {
	at := func(kind string, up float64) [2]any { return [2]any{kind, up} }
	for _, tt := range []struct {
		name  string
		boxes [][2]any
		want  []string
	}{
		{"all alike", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 16)}, nil},
		{"1/4 off", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 16), at("duplex", 16.25)}, nil},
		{"1/16 more", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 16), at("duplex", 16.3125)}, []string{`note: A4 is at 16-5/16", most of its kind here at 16"`}},
		{"two are no habit", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 18)}, nil},
		{"as many of either", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 16), at("duplex", 18), at("duplex", 18), at("duplex", 18)}, nil},
		{"switches of any kind", [][2]any{at("switch", 46), at("dimmer", 46), at("three-way", 46), at("timer", 48)}, []string{`note: A4 is at 48", most of its kind here at 46"`}},
		{"another kind", [][2]any{at("duplex", 16), at("duplex", 16), at("duplex", 16), at("tv-power", 60)}, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		for i, b := range tt.boxes {
			h.Box(room.Sides[i%2], b[0].(string), "PN1", 20+16*float64(i), b[1].(float64), nil)
		}
		if got := h.Said("height-outlier"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("height-outlier")
	}
}

func TestHeightOutlierByAnyLineOfTheBox(t *testing.T) {
	h := walltest.New(t)
	room := h.Room(0, 0, 144, 120, nil)
	for i := range 3 {
		h.Box(room.Sides[0], "duplex", "PN1", 20+16*float64(i), 16, nil)
	}
	h.Box(room.Sides[1], "duplex", "PN1", 20, 16, func(o *plan.Opening) {
		o.Height = plan.Height{Value: in(14.125), To: plan.BoxBottom, From: plan.FinishedFloor}
	})
	if got := h.Found("height-outlier"); len(got) > 0 {
		t.Error(got)
	}
}

// ADA 2010 308: 15 to 48 in to the part that is worked by hand; a rocker of 2-5/8 (2.630 to a
// tape's sixteenth) at 46-11/16 ends at 48. Over a counter 36 high and 25 deep 44 (42-11/16),
// over what is 34 high and 24 deep 46 (44-11/16), over 20 in 48; over 26 nothing.
func TestReach(t *testing.T) {
	const tooHigh = `warn: A1 is 1/16" too high to reach`
	for _, tt := range []struct {
		name       string
		asked      bool
		high, deep float64 // of what stands before it; 0: nothing
		centre     float64
		want       []string
	}{
		{"at the limit", true, 0, 0, 46.6875, nil},
		{"1/16 over", true, 0, 0, 46.75, []string{tooHigh}},
		{"1/16 over, not asked", false, 0, 0, 46.75, nil},
		{"low", true, 0, 0, 16.3125, nil},
		{"1/16 too low", true, 0, 0, 16.25, []string{`warn: A1 is 1/16" too low to reach`}},
		{"over a counter", true, 36, 25, 42.6875, nil},
		{"over a counter, 1/16 over", true, 36, 25, 42.75, []string{tooHigh}},
		{"over a low one", true, 34, 24, 44.6875, nil},
		{"over a low one, 1/16 over", true, 34, 24, 44.75, []string{tooHigh}},
		{"over 20 in", true, 36, 20, 46.6875, nil},
		{"over 26 in", true, 36, 26, 42, []string{"warn: A1: what stands before it is too deep to reach over"}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Reach = tt.asked })
		if tt.high > 0 {
			h.Do(edit.AddFixture{Fixture: plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: plan.FixtureCounter,
				At: plan.OnFace(room.Sides[0], in(20)), Width: in(60), Depth: in(tt.deep), Height: in(tt.high)}})
		}
		h.Box(room.Sides[0], "switch", "PN1", 40, tt.centre, nil)
		if got := h.Said("reach"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("reach")
	}
}

// Lights either side of a mirror from 60 to 90, its middle at 75: 20 off it at 55 and 95.
func TestPair(t *testing.T) {
	const off, level = "warn: A1 and A2 are not even about the mirror", "warn: A1 and A2 beside the mirror are not level"
	for _, tt := range []struct {
		name        string
		left, right float64
		up          float64 // of the right one; the left is at 63
		want        []string
	}{
		{"even", 55, 95, 63, nil},
		{"1/16 off", 55, 95.0625, 63, nil},
		{"1/8 off", 55, 95.125, 63, []string{off}},
		{"1/16 higher", 55, 95, 63.0625, nil},
		{"1/8 higher", 55, 95, 63.125, []string{level}},
		{"both", 55, 97, 66, []string{off, level}},
		{"one alone", 55, 0, 0, nil},
		{"far away is no pair", 55, 126.0625, 63, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		stand(h, room.Sides[0], plan.FixtureMirror, 60, 30, 42, 36, 0)
		round := func(o *plan.Opening) { o.Gangs = 0 }
		h.Box(room.Sides[0], "wall-light", "RD1", tt.left, 63, round)
		if tt.right > 0 {
			h.Box(room.Sides[0], "wall-light", "RD1", tt.right, tt.up, round)
		}
		if got := h.Said("pair"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("pair")
	}
}

// Bound about a basin in a cabinet from 30 to 90 whose middle is 20 in from the cabinet's
// left end, at 50: openings at 40 and 60 are 10 in off at either hand.
func TestABoundPair(t *testing.T) {
	const off = "warn: A1 and A2 are not even about the basin"
	for _, tt := range []struct {
		name        string
		left, right float64
		up          float64
		want        []string
	}{
		{"even", 40, 60, 44, nil},
		{"1/16 off", 40, 60.0625, 44, nil},
		{"1/8 off", 40, 60.125, 44, []string{off}},
		{"1/8 higher", 40, 60, 44.125, []string{"warn: A1 and A2 beside the basin are not level"}},
		{"on one side", 40, 45, 44, []string{off}},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) { r.Sides[0].Studs.Spacing = 0 })
		vanity := plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: plan.FixtureCabinet, At: plan.OnFace(room.Sides[0], in(30)), Width: in(60), Depth: in(21), Height: in(34)}
		basin := plan.Fixture{ID: h.IDs.New(plan.KindFixture), Kind: plan.FixtureBasin, At: plan.Anchor{Host: vanity.ID, Part: plan.PartTop, Along: in(20), Out: in(11)}, Width: in(17), Depth: in(15), Bottom: in(28), Height: in(6)}
		h.Do(edit.AddFixture{Fixture: vanity})
		h.Do(edit.AddFixture{Fixture: basin})
		one := h.Box(room.Sides[0], "duplex", "PN1", tt.left, 44, nil)
		other := h.Box(room.Sides[0], "duplex", "PN1", tt.right, tt.up, nil)
		h.Do(edit.Add{Thing: &plan.Pair{ID: h.IDs.New(plan.KindPair), One: one.ID, Other: other.ID, About: basin.ID}})
		if got := h.Said("pair"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		h.Cures("pair")
		h.Do(edit.MoveOpening{ID: other.ID, To: plan.OnFace(room.Sides[1], in(40))})
		parted := []string{"warn: A1 is bound in a pair with an opening that is not on its wall", "warn: A2 is bound in a pair with an opening that is not on its wall"}
		if got := h.Said("pair"); !slices.Equal(got, parted) {
			t.Errorf("%s, parted: %q", tt.name, got)
		}
		h.Cures("pair")
	}
}

// An old-work box in plaster on wood lath may be 7/8 in off the others, to sit on the middle of
// a lath (common practice).
func TestABoxMayMoveToALath(t *testing.T) {
	for _, tt := range []struct {
		lath plan.Lath
		code string
		up   float64
		want int
	}{
		{plan.WoodLath, "OW1", 16.875, 0}, {plan.WoodLath, "OW1", 15.125, 0}, {plan.WoodLath, "OW1", 16.9375, 1}, {plan.WoodLath, "OW1", 15.0625, 1},
		{plan.WoodLath, "PN1", 16.875, 1}, {plan.MetalLath, "OW1", 16.875, 1}, {plan.NoLath, "OW1", 16.875, 1},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, func(r *plan.Room) {
			for _, s := range r.Sides {
				s.Finish = []plan.Layer{{Name: "plaster", Thickness: walltest.In(0.75), Lath: tt.lath}}
			}
		})
		for i, up := range []float64{16, 16, 16, tt.up} {
			h.Box(room.Sides[0], "duplex", tt.code, 20+16*float64(i), up, nil)
		}
		if got := h.Said("height-outlier"); len(got) != tt.want {
			t.Errorf("%+v: %q, want %d", tt, got, tt.want)
		}
	}
}
