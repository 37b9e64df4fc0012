package spacing_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// elbow is a room of two walls that meet at an outside corner in the middle of the
// sheet: 60 in down to it, 60 in to the right of it. All else is open.
func elbow(t *testing.T) *filltest.Room {
	r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{160, 60}, [2]float64{160, 160}, [2]float64{0, 160})
	// Sides: 1 runs down at x 100 with the room on its left hand side of the sheet, 2 to
	// the right at y 60 with the room below.
	for _, i := range []int{0, 3, 4, 5} {
		r.Room.Sides[i].Kind = plan.SideOpen
	}
	return r
}

func TestWallReachAtCornersAndFaces(t *testing.T) {
	const fixed, moving = plan.PanelFixed, plan.PanelMoving
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *filltest.Room
		want   []string
		source string
	}{
		{"a slider stored on the far face has its panels the other way round", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			next := r.Neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			// The far face runs from right to left: its left end is at x 100.
			r.Break(next.Sides[2].ID, plan.BreakSlider, 0, 100, fixed, moving)
			return r
		}, []string{`0:50"-100"`}, "210.52(A)(2)(2); what is fixed stays where it is, whoever looks"},
		{"one that reaches past the end of this face keeps its panels in place", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 60)
			next := r.Neighbour([2]float64{-60, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{-60, -4})
			// 100 in wide from x 70 down to x −30, so that this face is all of it but for
			// its ends; its fixed half is x 20 to 70.
			r.Break(next.Sides[2].ID, plan.BreakSlider, 30, 100, fixed, moving)
			return r
		}, []string{`0:20"-60"`}, "210.52(A)(2)(2) and arithmetic"},
		{"a passage through a stub wall ends the wall space of both its faces", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{105, 60}, [2]float64{105, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
			for _, i := range []int{0, 2, 4, 5, 6, 7} {
				r.Room.Sides[i].Kind = plan.SideOpen
			}
			r.Break(r.Room.Sides[1].ID, plan.BreakPassage, 0, 40)
			return r
		}, nil, "210.52(A)(2)(1): 20 in is left of either face"},
		{"a side without length changes nothing", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{0, 0}, [2]float64{72, 0}, [2]float64{72, 72}, [2]float64{0, 72})
			r.Door(1, 0, 20)
			r.Receptacle(2, 20)
			r.Receptacle(4, 20)
			return r
		}, nil, "a ring of 24 ft less a door of 20 in; arithmetic"},
		{"at the very end of a wall", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 72)
			r.Receptacle(0, 0)
			return r
		}, nil, "210.52(A)(1): 6 ft along"},
		{"at its other end", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 72.125)
			r.Receptacle(0, 72.125)
			return r
		}, []string{`0:0"-1/8"`}, "210.52(A)(1): 6 ft along"},
		{"a door over the fixed panel of a slider", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			r.Break(r.Room.Sides[0].ID, plan.BreakSlider, 0, 100, fixed, fixed)
			r.Door(0, 30, 40)
			return r
		}, []string{`0:0"-30"`, `0:70"-100"`}, "the worse of two breaks in one place"},
		{"a receptacle in the floor off an outside corner serves both walls", func(t *testing.T) *filltest.Room {
			r := elbow(t)
			r.InFloor(90, 70)
			return r
		}, nil, "210.52(A)(3): 14.1 in from the corner, which is the nearest place of the wall"},
		{"one more than 18 in off it serves neither", func(t *testing.T) *filltest.Room {
			r := elbow(t)
			r.InFloor(87, 73)
			return r
		}, []string{`1:0"-60" 2:0"-60"`}, "210.52(A)(3): √(13² + 13²) = 18.4 in"},
		{"one before a door beside the wall is in no wall space", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 60)
			r.Door(0, 0, 30)
			r.InFloor(25, 3)
			return r
		}, []string{`0:30"-60"`}, "210.52(A)(1): from one in that wall space"},
		{"one beyond a stub wall does not serve what is before it", func(t *testing.T) *filltest.Room {
			r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{8, 0}, [2]float64{8, 60}, [2]float64{12, 60}, [2]float64{12, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
			for i := range 7 {
				r.Room.Sides[i].Kind = plan.SideOpen
			}
			r.InFloor(14, 30)
			return r
		}, []string{`7:0"-144"`}, "14 in from that wall, with another between"},
		{"one on an island serves no wall", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 60)
			f := r.Fixture(plan.FixtureIsland, 0, 10, 40)
			r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.Anchor{Host: f.ID, Part: plan.PartFront, Along: in(20)}))
			return r
		}, []string{`0:0"-60"`}, "210.52(A)(4) and (C): neither serves the other"},
		{"one within an upper cabinet does not count", func(t *testing.T) *filltest.Room {
			r := high(t, 60)
			r.Fixture(plan.FixtureUpper, 0, 40, 30).Bottom = in(54)
			return r
		}, []string{`0:0"-100"`}, "210.52: within cabinets"},
		{"below it does", func(t *testing.T) *filltest.Room {
			r := high(t, 50)
			r.Fixture(plan.FixtureUpper, 0, 40, 30).Bottom = in(54)
			return r
		}, nil, "210.52: within cabinets"},
		{"a switch beside a wholly switched receptacle does not make it count", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50)))
			o.Gangs = 2
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: plan.WhollySwitched}, {Kind: "one-pole switch", Size: 12}}
			r.Opening(o)
			return r
		}, []string{`0:0"-100"`}, "210.52: it is the room's lighting outlet"},
		{"one always on beside a wholly switched one counts", func(t *testing.T) *filltest.Room {
			r := filltest.OneWall(t, 100)
			o := part.NewOpening(unit.Imperial, "quad", plan.OnFace(r.Room.Sides[0].ID, in(50)))
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: plan.WhollySwitched}, {Kind: "duplex receptacle", Size: 12}}
			r.Opening(o)
			return r
		}, nil, "common reading, from memory"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := missed(tt.make(t)); fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("not served: %q, want %q (%s)", got, tt.want, tt.source)
			}
		})
	}
}

// A wall of 12 ft that runs aslant is as long as its corners, rounded to the
// nanometre, let it be. Rounding is no fault of a plan.
func TestSlantedWallsAreNotFoundShortByRounding(t *testing.T) {
	slanted := func(angle float64, inches float64) (*filltest.Room, unit.Length) {
		to := geom.Point{X: unit.Length(math.Round(math.Cos(angle) * float64(in(inches)))), Y: unit.Length(math.Round(math.Sin(angle) * float64(in(inches))))}
		r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{0, 0}, [2]float64{0, 400}, [2]float64{-400, 400})
		r.Room.Sides[1].Start = to
		for _, s := range r.Room.Sides[1:] {
			s.Kind = plan.SideOpen
		}
		return r, geom.Segment{B: to}.Length()
	}
	longer, shorter := 0, 0
	for i := range 200 {
		angle := 0.002 + float64(i)*0.007
		r, length := slanted(angle, 144)
		r.Receptacle(0, 72)
		if length > in(144) {
			longer++
		}
		if got := missed(r); got != nil {
			t.Fatalf("at %.3f rad, %d nm long: not served %q", angle, length, got)
		}
		r, length = slanted(angle, 24)
		if length < in(24) {
			shorter++
		}
		if got := missed(r); len(got) != 1 {
			t.Fatalf("at %.3f rad: 24 in (%d nm) needs a receptacle, got %q", angle, length, got)
		}
		r, _ = slanted(angle, 60)
		at := geom.FrameOf(geom.Segment{B: r.Room.Sides[1].Start}).Point(in(30), in(18))
		r.Opening(part.NewOpening(unit.Imperial, "floor", plan.OnFloor(r.Room.ID, at)))
		if got := missed(r); got != nil {
			t.Fatalf("at %.3f rad: one 18 in off does not serve: %q", angle, got)
		}
	}
	if longer == 0 || shorter == 0 {
		t.Errorf("no wall was rounded up (%d) or down (%d): the test shows nothing", longer, shorter)
	}
}

// A dishwasher under a counter is the counter's, also where appliances end a wall space.
func TestADishwasherUnderACounter(t *testing.T) {
	r := filltest.OneWall(t, 100)
	r.Room.Use = plan.UseKitchen
	r.Fixture(plan.FixtureCounter, 0, 20, 60)
	r.Fixture(plan.FixtureDishwasher, 0, 30, 24)
	found := r.Found(spacing.CounterReach.ID)
	if len(found) != 1 || len(reach(r)) != 0 || found[0].Measured != rule.LengthOf(in(60)) {
		t.Errorf("a counter of 60 in with a dishwasher below: %+v", found)
	}
}

func TestFindingsOfWallsSayWhatTheyAreOf(t *testing.T) {
	r := filltest.OneWall(t, 300)
	r.Receptacle(0, 72)
	found := reach(r)
	if len(found) != 1 {
		t.Fatalf("%+v", found)
	}
	f := found[0]
	if f.About != r.Room.Sides[0].ID || f.Room != r.Room.ID || f.Limit != rule.LengthOf(in(72)) || f.Measured != rule.LengthOf(in(228)) ||
		f.Section != "NEC 2023 210.52(A)(1)" {
		t.Errorf("%+v", f)
	}
	for _, text := range []string{f.Message.String(), f.Why.String()} {
		if strings.Contains(strings.ToLower(text), "compl") {
			t.Errorf("%q claims what no check can", text)
		}
	}
}
