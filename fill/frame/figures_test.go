package frame_test

import (
	"testing"

	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestPlates: standard plates are 4.49 in high and 2-3/4, 4-1/2, 6-3/8 and 8-3/16 wide
// (archtoolbox.com, electrical faceplate types and dimensions); each further gang adds
// 1-13/16. A canopy of 5 in is common practice.
func TestPlates(t *testing.T) {
	plate := func(wide float64) part.Outline {
		return part.Outline{Width: in(wide), Height: 449 * unit.Inch / 100}
	}
	canopy := part.Outline{Width: in(5), Height: in(5), IsRound: true}
	for _, tt := range []struct {
		name string
		o    plan.Opening
		want part.Outline
	}{
		{"one gang", plan.Opening{Kind: "duplex", Gangs: 1}, plate(2.75)},
		{"two", plan.Opening{Kind: "duplex", Gangs: 2}, plate(4.5)},
		{"three", plan.Opening{Kind: "duplex", Gangs: 3}, plate(6.375)},
		{"four", plan.Opening{Kind: "duplex", Gangs: 4}, plate(8.1875)},
		{"five", plan.Opening{Kind: "duplex", Gangs: 5}, plate(10)},
		{"seven", plan.Opening{Kind: "duplex", Gangs: 7}, plate(13.625)},
		{"a light", plan.Opening{Kind: "ceiling-light"}, canopy},
		{"a fan", plan.Opening{Kind: "fan-light"}, canopy},
		{"an alarm", plan.Opening{Kind: "smoke"}, canopy},
		{"a junction", plan.Opening{Kind: "junction", Assembly: plan.Assembly{Box: "sq4-1.5"}}, part.Outline{Width: in(4), Height: in(4)}},
		{"a housing of its own", plan.Opening{Kind: "recessed"}, part.Outline{Width: in(6.375), Height: in(6.375), IsRound: true}},
		{"no such kind", plan.Opening{Kind: "no such"}, part.Outline{Width: in(4), Height: in(4), IsRound: true}},
	} {
		if got := frame.PlateOf(&tt.o); got != tt.want {
			t.Errorf("%s: %+v, want %+v", tt.name, got, tt.want)
		}
	}
	o := plan.Opening{Kind: "duplex", Gangs: 1, At: plan.OnFace("", in(30)), Height: plan.CentreAt(in(16))}
	want := frame.Rect{Left: in(28.625), Right: in(31.375), Bottom: in(16) - 449*unit.Inch/200, Top: in(16) + 449*unit.Inch/200}
	if got := frame.PlacedIn(&plan.Side{}, nil, &o).Plate(); got != want {
		t.Errorf("a plate about (30, 16) covers %+v, want %+v", got, want)
	}
}

// TestCasings: trim stands as far off the clear size as the kind leaves, 1/8 in of gap and
// 3/16 of reveal at a door, and is as wide as told.
func TestCasings(t *testing.T) {
	door := func(sill, casing float64) index.Cut {
		b := &plan.Break{Kind: plan.BreakDoor, Width: in(30), Head: in(80), Sill: in(sill), Casing: in(casing)}
		return index.Cut{Break: b, Start: in(40), From: in(40), To: in(70)}
	}
	for _, tt := range []struct {
		name string
		cut  index.Cut
		want frame.Rect
		any  bool
	}{
		{"to the floor", door(0, 3), frame.Rect{Left: in(36.6875), Right: in(73.3125), Top: in(83.3125)}, true},
		{"over a sill", door(20, 3), frame.Rect{Left: in(36.6875), Right: in(73.3125), Bottom: in(16.6875), Top: in(83.3125)}, true},
		{"over a low sill", door(2, 3), frame.Rect{Left: in(36.6875), Right: in(73.3125), Top: in(83.3125)}, true},
		{"none", door(20, 0), frame.Rect{}, false},
	} {
		if got, any := frame.CasingOf(tt.cut); got != tt.want || any != tt.any {
			t.Errorf("%s: %+v, %v, want %+v", tt.name, got, any, tt.want)
		}
	}
	a := frame.Rect{Left: 0, Right: in(10), Bottom: 0, Top: in(10)}
	for _, tt := range []struct {
		b    frame.Rect
		want float64
	}{
		{frame.Rect{Left: in(8), Right: in(20), Bottom: 0, Top: in(10)}, 2},
		{frame.Rect{Left: in(-20), Right: in(3), Bottom: 0, Top: in(10)}, 3},
		{frame.Rect{Left: 0, Right: in(10), Bottom: in(9), Top: in(30)}, 1},
		{frame.Rect{Left: 0, Right: in(10), Bottom: in(-30), Top: in(4)}, 4},
		{frame.Rect{Left: in(10), Right: in(20), Bottom: 0, Top: in(10)}, 0},
		{frame.Rect{Left: 0, Right: in(10), Bottom: in(10), Top: in(12)}, 0},
	} {
		if got := a.OverlapOf(tt.b); got != in(tt.want) {
			t.Errorf("%+v laps by %v, want %v", tt.b, got, tt.want)
		}
	}
}

// TestRoughOpenings: as the kind has it unless the break says otherwise; a door of 30 by 80 has
// 1 in at each side and 2-1/2 over it (buildrefs.pages.dev; engineerfix.com).
func TestRoughOpenings(t *testing.T) {
	said := func(l float64) *unit.Length { v := in(l); return &v }
	for _, tt := range []struct {
		name string
		b    plan.Break
		want frame.Rect
		ok   bool
	}{
		{"a door", plan.Break{Kind: plan.BreakDoor}, frame.Rect{Left: in(39), Right: in(71), Top: in(82.5)}, true},
		{"its side said", plan.Break{Kind: plan.BreakDoor, Rough: plan.Rough{Side: said(2)}}, frame.Rect{Left: in(38), Right: in(72), Top: in(82.5)}, true},
		{"its top said", plan.Break{Kind: plan.BreakDoor, Rough: plan.Rough{Top: said(3)}}, frame.Rect{Left: in(39), Right: in(71), Top: in(83)}, true},
		{"a sill", plan.Break{Kind: plan.BreakDoor, Sill: in(20)}, frame.Rect{Left: in(39), Right: in(71), Bottom: in(19), Top: in(82.5)}, true},
		{"under it said", plan.Break{Kind: plan.BreakDoor, Sill: in(20), Rough: plan.Rough{Bottom: said(4)}}, frame.Rect{Left: in(39), Right: in(71), Bottom: in(16), Top: in(82.5)}, true},
		{"as the side said", plan.Break{Kind: plan.BreakDoor, Sill: in(20), Rough: plan.Rough{Side: said(2)}}, frame.Rect{Left: in(38), Right: in(72), Bottom: in(18), Top: in(82.5)}, true},
		{"not into the floor", plan.Break{Kind: plan.BreakDoor, Sill: in(2), Rough: plan.Rough{Bottom: said(4)}}, frame.Rect{Left: in(39), Right: in(71), Top: in(82.5)}, true},
		{"a fireplace", plan.Break{Kind: plan.BreakFireplace}, frame.Rect{}, false},
	} {
		tt.b.Width, tt.b.Head = in(30), in(80)
		if tt.name == "its top said" {
			tt.want.Top = in(83)
		}
		got, ok := frame.RoughOf(index.Cut{Break: &tt.b, Start: in(40)})
		if ok != tt.ok || got.Rect != tt.want || ok && got.Break != &tt.b {
			t.Errorf("%s: %+v, %v, want %+v", tt.name, got.Rect, ok, tt.want)
		}
	}
}

// TestWhatIsKnownBehindAFace: a probe without a top goes as high as anything can, one that
// found the wall clear blocks nothing; a rating is said of either face, of the one behind
// where that stands.
func TestWhatIsKnownBehindAFace(t *testing.T) {
	s := &plan.Side{Probes: []plan.Probe{
		{From: in(1), To: in(5), Bottom: in(10), Top: in(20)}, {From: in(8), To: in(9)}, {From: in(11), To: in(12), Clear: true},
	}}
	want := []frame.Rect{{Left: in(1), Right: in(5), Bottom: in(10), Top: in(20)}, {Left: in(8), Right: in(9), Top: plan.Reach}}
	if got := frame.Blocked(s); len(got) != 2 || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("blocked: %+v, want %+v", got, want)
	}
	own, other := plan.Rating{Assembly: "one"}, plan.Rating{Assembly: "two"}
	bare := &plan.Side{}
	view := func(side, behind *plan.Side) *index.SideView {
		return &index.SideView{Side: side, Behind: []index.Backing{{Side: bare, From: 0, To: in(100)}, {Side: behind, From: in(10), To: in(50)}}}
	}
	for _, tt := range []struct {
		name  string
		view  *index.SideView
		at    float64
		want  plan.Rating
		rated bool
	}{
		{"its own", view(&plan.Side{Rated: true, Rating: own}, &plan.Side{Rated: true, Rating: other}), 30, own, true},
		{"of the face behind", view(bare, &plan.Side{Rated: true, Rating: other}), 30, other, true},
		{"at its ends", view(bare, &plan.Side{Rated: true, Rating: other}), 10, other, true},
		{"at its other end", view(bare, &plan.Side{Rated: true, Rating: other}), 50, other, true},
		{"before it", view(bare, &plan.Side{Rated: true, Rating: other}), 9.9375, plan.Rating{}, false},
		{"past it", view(bare, &plan.Side{Rated: true, Rating: other}), 50.0625, plan.Rating{}, false},
		{"no rating", view(bare, &plan.Side{Rating: other}), 30, plan.Rating{}, false},
	} {
		if got, rated := frame.RatedAt(tt.view, in(tt.at)); got != tt.want || rated != tt.rated {
			t.Errorf("%s: %+v, %v, want %+v", tt.name, got, rated, tt.want)
		}
	}
}

// TestJoists: how far a place is from the nearest one, which run beside a side, begin where
// told and go on both ways.
func TestJoists(t *testing.T) {
	h := newHouse(t)
	sides := h.room(0, 0, 120, 120, nil)
	ref, _ := index.New(h.p).Side(sides[0])
	for _, tt := range []struct {
		spacing, first, out, want float64
		along                     plan.ID
		known                     bool
	}{
		{16, 16, 32, 0, sides[0], true},
		{16, 16, 20, 4, sides[0], true},
		{16, 16, 29, 3, sides[0], true},
		{16, 5, 40, 3, sides[0], true}, // 5, 21, 37, 53
		{16, 15, 2, 3, sides[0], true}, // -1, 15: before the first too
		{16, 40, 1, 7, sides[0], true}, // -8, 8
		{0, 16, 32, 0, sides[0], false},
		{16, 16, 32, 0, "s99999999", false},
	} {
		room := *ref.Room
		room.Joists = plan.Joists{Along: tt.along, Spacing: in(tt.spacing), First: in(tt.first)}
		o := plan.Opening{At: plan.OnCeiling(room.ID, geom.Point{X: in(40), Y: in(tt.out)})}
		if got, ok := frame.JoistOff(&room, &o); got != in(tt.want) || ok != tt.known {
			t.Errorf("%+v: %v, %v", tt, got, ok)
		}
	}
	if _, ok := frame.JoistOff(nil, &plan.Opening{}); ok {
		t.Error("joists of no room are known")
	}
	for _, tt := range []struct {
		name, kind string
		at         plan.Part
		assembly   plan.Assembly
		want       frame.Way
	}{
		{"a housing", "recessed", plan.PartCeiling, plan.Assembly{}, frame.ByItsOwn},
		{"a kind that wants a box", "ceiling-light", plan.PartCeiling, plan.Assembly{}, frame.NotHeld},
		{"a box nobody knows", "recessed", plan.PartCeiling, plan.Assembly{Box: "tin"}, frame.NotHeld},
		{"a code nobody knows", "recessed", plan.PartCeiling, plan.Assembly{Code: "ZZ1"}, frame.NotHeld},
		{"no such kind", "no such", plan.PartCeiling, plan.Assembly{}, frame.NotHeld},
		{"in a floor", "floor", plan.PartFloor, plan.Assembly{Code: "PN1"}, frame.ByFloor},
		{"in a cabinet", "duplex", plan.PartFront, plan.Assembly{Code: "PN1"}, frame.ByBoard},
		{"at joists nobody tells", "ceiling-light", plan.PartCeiling, plan.Assembly{Code: "RD1"}, frame.ByJoist},
	} {
		o := plan.Opening{Kind: tt.kind, At: plan.Anchor{Part: tt.at}, Assembly: tt.assembly}
		if got := frame.HoldIn(&o, ref.Room); got != (frame.Hold{By: tt.want, State: plan.StudAssumed}) {
			t.Errorf("%s: %+v, want %q", tt.name, got, tt.want)
		}
	}
}

// TestStaples: 8 in from a plastic box of one gang without clamps (NEC 314.17(B), exception),
// else 12 (NEC 334.30).
func TestStaples(t *testing.T) {
	for _, tt := range []struct {
		box  part.Box
		want float64
	}{
		{part.Box{Material: part.Plastic, Gangs: 1}, 8},
		{part.Box{Material: part.Plastic, Gangs: 1, Clamps: true}, 12},
		{part.Box{Material: part.Plastic, Gangs: 2}, 12},
		{part.Box{Material: part.Steel, Gangs: 1}, 12},
	} {
		if got := frame.StapleWithin(&tt.box); got != in(tt.want) {
			t.Errorf("%+v: %v, want %v", tt.box, got, tt.want)
		}
	}
}

// TestSetBackBehindWhatBurns: a ring may end as far back as the edition has it, but not behind a
// combustible face (NEC 314.20); what is under the face does not count.
func TestSetBackBehindWhatBurns(t *testing.T) {
	board, panel := plan.Layer{Name: "board", Thickness: in(0.5)}, plan.Layer{Name: "panel", Thickness: in(0.25), Combustible: true}
	for _, tt := range []struct {
		finish []plan.Layer
		want   float64
	}{{nil, 0.25}, {[]plan.Layer{board}, 0.25}, {[]plan.Layer{board, panel}, 0}, {[]plan.Layer{panel, board}, 0.25}} {
		if got := frame.AllowedSetBack(&plan.Side{Finish: tt.finish}, in(0.25)); got != in(tt.want) {
			t.Errorf("%+v: %v, want %v", tt.finish, got, tt.want)
		}
	}
	undecided := board
	undecided.Undecided = true
	if frame.IsUndecided(&plan.Side{Finish: []plan.Layer{board}}) || !frame.IsUndecided(&plan.Side{Finish: []plan.Layer{undecided, board}}) {
		t.Error("a layer that is not settled is told wrongly")
	}
}
