package fill

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// neighbour stands a room of the corners, in inches, beside the one under test.
func (r *room) neighbour(corners ...[2]float64) *plan.Room {
	other := &plan.Room{ID: r.ids.next(plan.KindRoom), Name: "Next", Use: plan.UseBath, Ceiling: 96 * unit.Inch}
	for _, c := range corners {
		other.Sides = append(other.Sides, &plan.Side{ID: r.ids.next(plan.KindSide), Kind: plan.SideWall, Start: geom.Point{X: in(c[0]), Y: in(c[1])}})
	}
	put(&r.level.Rooms, other)
	return other
}

// on puts a break on a side of another room.
func (r *room) on(side plan.ID, kind plan.BreakKind, along, width float64, panels ...plan.Panel) *plan.Break {
	b := &plan.Break{ID: r.ids.next(plan.KindBreak), Kind: kind, At: plan.OnFace(side, in(along)), Width: in(width), Head: in(80), Panels: panels}
	put(&r.level.Breaks, b)
	return b
}

// elbow is a room of two walls that meet at an outside corner in the middle of the
// sheet: 60 in down to it, 60 in to the right of it. All else is open.
func elbow(t *testing.T) *room {
	r := roomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{160, 60}, [2]float64{160, 160}, [2]float64{0, 160})
	// Sides: 1 runs down at x 100 with the room on its left hand side of the sheet, 2 to
	// the right at y 60 with the room below.
	for _, i := range []int{0, 3, 4, 5} {
		r.room.Sides[i].Kind = plan.SideOpen
	}
	return r
}

func TestWallReachAtCornersAndFaces(t *testing.T) {
	const fixed, moving = plan.PanelFixed, plan.PanelMoving
	for _, tt := range []struct {
		name   string
		make   func(*testing.T) *room
		want   []string
		source string
	}{
		{"a slider stored on the far face has its panels the other way round", func(t *testing.T) *room {
			r := oneWall(t, 100)
			next := r.neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			// The far face runs from right to left: its left end is at x 100.
			r.on(next.Sides[2].ID, plan.BreakSlider, 0, 100, fixed, moving)
			return r
		}, []string{`0:50"-100"`}, "210.52(A)(2)(2); what is fixed stays where it is, whoever looks"},
		{"one that reaches past the end of this face keeps its panels in place", func(t *testing.T) *room {
			r := oneWall(t, 60)
			next := r.neighbour([2]float64{-60, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{-60, -4})
			// 100 in wide from x 70 down to x −30, so that this face is all of it but for
			// its ends; its fixed half is x 20 to 70.
			r.on(next.Sides[2].ID, plan.BreakSlider, 30, 100, fixed, moving)
			return r
		}, []string{`0:20"-60"`}, "210.52(A)(2)(2) and arithmetic"},
		{"a passage through a stub wall ends the wall space of both its faces", func(t *testing.T) *room {
			r := roomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{105, 60}, [2]float64{105, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
			for _, i := range []int{0, 2, 4, 5, 6, 7} {
				r.room.Sides[i].Kind = plan.SideOpen
			}
			r.on(r.room.Sides[1].ID, plan.BreakPassage, 0, 40)
			return r
		}, nil, "210.52(A)(2)(1): 20 in is left of either face"},
		{"a side without length changes nothing", func(t *testing.T) *room {
			r := roomOf(t, [2]float64{0, 0}, [2]float64{0, 0}, [2]float64{72, 0}, [2]float64{72, 72}, [2]float64{0, 72})
			r.door(1, 0, 20)
			r.receptacle(2, 20)
			r.receptacle(4, 20)
			return r
		}, nil, "a ring of 24 ft less a door of 20 in; arithmetic"},
		{"at the very end of a wall", func(t *testing.T) *room {
			r := oneWall(t, 72)
			r.receptacle(0, 0)
			return r
		}, nil, "210.52(A)(1): 6 ft along"},
		{"at its other end", func(t *testing.T) *room {
			r := oneWall(t, 72.125)
			r.receptacle(0, 72.125)
			return r
		}, []string{`0:0"-1/8"`}, "210.52(A)(1): 6 ft along"},
		{"a door over the fixed panel of a slider", func(t *testing.T) *room {
			r := oneWall(t, 100)
			r.on(r.room.Sides[0].ID, plan.BreakSlider, 0, 100, fixed, fixed)
			r.door(0, 30, 40)
			return r
		}, []string{`0:0"-30"`, `0:70"-100"`}, "the worse of two breaks in one place"},
		{"a receptacle in the floor off an outside corner serves both walls", func(t *testing.T) *room {
			r := elbow(t)
			r.inFloor(90, 70)
			return r
		}, nil, "210.52(A)(3): 14.1 in from the corner, which is the nearest place of the wall"},
		{"one more than 18 in off it serves neither", func(t *testing.T) *room {
			r := elbow(t)
			r.inFloor(87, 73)
			return r
		}, []string{`1:0"-60" 2:0"-60"`}, "210.52(A)(3): √(13² + 13²) = 18.4 in"},
		{"one before a door beside the wall is in no wall space", func(t *testing.T) *room {
			r := oneWall(t, 60)
			r.door(0, 0, 30)
			r.inFloor(25, 3)
			return r
		}, []string{`0:30"-60"`}, "210.52(A)(1): from one in that wall space"},
		{"one beyond a stub wall does not serve what is before it", func(t *testing.T) *room {
			r := roomOf(t, [2]float64{0, 0}, [2]float64{8, 0}, [2]float64{8, 60}, [2]float64{12, 60}, [2]float64{12, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
			for i := range 7 {
				r.room.Sides[i].Kind = plan.SideOpen
			}
			r.inFloor(14, 30)
			return r
		}, []string{`7:0"-144"`}, "14 in from that wall, with another between"},
		{"one on an island serves no wall", func(t *testing.T) *room {
			r := oneWall(t, 60)
			f := r.fixture(plan.FixtureIsland, 0, 10, 40)
			r.opening(part.NewOpening(unit.Imperial, "duplex", plan.Anchor{Host: f.ID, Part: plan.PartFront, Along: in(20)}))
			return r
		}, []string{`0:0"-60"`}, "210.52(A)(4) and (C): neither serves the other"},
		{"one within an upper cabinet does not count", func(t *testing.T) *room {
			r := high(t, 60)
			r.fixture(plan.FixtureUpper, 0, 40, 30).Bottom = in(54)
			return r
		}, []string{`0:0"-100"`}, "210.52: within cabinets"},
		{"below it does", func(t *testing.T) *room {
			r := high(t, 50)
			r.fixture(plan.FixtureUpper, 0, 40, 30).Bottom = in(54)
			return r
		}, nil, "210.52: within cabinets"},
		{"a switch beside a wholly switched receptacle does not make it count", func(t *testing.T) *room {
			r := oneWall(t, 100)
			o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(50)))
			o.Gangs = 2
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: plan.WhollySwitched}, {Kind: "one-pole switch", Size: 12}}
			r.opening(o)
			return r
		}, []string{`0:0"-100"`}, "210.52: it is the room's lighting outlet"},
		{"one always on beside a wholly switched one counts", func(t *testing.T) *room {
			r := oneWall(t, 100)
			o := part.NewOpening(unit.Imperial, "quad", plan.OnFace(r.room.Sides[0].ID, in(50)))
			o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 12, Switched: plan.WhollySwitched}, {Kind: "duplex receptacle", Size: 12}}
			r.opening(o)
			return r
		}, nil, "common reading, from memory"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.make(t).missed(); fmt.Sprint(got) != fmt.Sprint(tt.want) {
				t.Errorf("not served: %q, want %q (%s)", got, tt.want, tt.source)
			}
		})
	}
}

// A wall of 12 ft that runs aslant is as long as its corners, rounded to the
// nanometre, let it be. Rounding is no fault of a plan.
func TestSlantedWallsAreNotFoundShortByRounding(t *testing.T) {
	slanted := func(angle float64, inches float64) (*room, unit.Length) {
		to := geom.Point{X: unit.Length(math.Round(math.Cos(angle) * float64(in(inches)))), Y: unit.Length(math.Round(math.Sin(angle) * float64(in(inches))))}
		r := roomOf(t, [2]float64{0, 0}, [2]float64{0, 0}, [2]float64{0, 400}, [2]float64{-400, 400})
		r.room.Sides[1].Start = to
		for _, s := range r.room.Sides[1:] {
			s.Kind = plan.SideOpen
		}
		return r, geom.Segment{B: to}.Length()
	}
	longer, shorter := 0, 0
	for i := range 200 {
		angle := 0.002 + float64(i)*0.007
		r, length := slanted(angle, 144)
		r.receptacle(0, 72)
		if length > in(144) {
			longer++
		}
		if got := r.missed(); got != nil {
			t.Fatalf("at %.3f rad, %d nm long: not served %q", angle, length, got)
		}
		r, length = slanted(angle, 24)
		if length < in(24) {
			shorter++
		}
		if got := r.missed(); len(got) != 1 {
			t.Fatalf("at %.3f rad: 24 in (%d nm) needs a receptacle, got %q", angle, length, got)
		}
		r, _ = slanted(angle, 60)
		at := geom.FrameOf(geom.Segment{B: r.room.Sides[1].Start}).Point(in(30), in(18))
		r.opening(part.NewOpening(unit.Imperial, "floor", plan.OnFloor(r.room.ID, at)))
		if got := r.missed(); got != nil {
			t.Fatalf("at %.3f rad: one 18 in off does not serve: %q", angle, got)
		}
	}
	if longer == 0 || shorter == 0 {
		t.Errorf("no wall was rounded up (%d) or down (%d): the test shows nothing", longer, shorter)
	}
}

// A dishwasher under a counter is the counter's, also where appliances end a wall space.
func TestADishwasherUnderACounter(t *testing.T) {
	r := oneWall(t, 100)
	r.room.Use = plan.UseKitchen
	r.fixture(plan.FixtureCounter, 0, 20, 60)
	r.fixture(plan.FixtureDishwasher, 0, 30, 24)
	found := r.reach()
	if len(found) != 1 || !found[0].IsOpen || found[0].Measured != rule.LengthOf(in(60)) {
		t.Errorf("a counter of 60 in with a dishwasher below: %+v", found)
	}
}

func TestFindingsOfWallsSayWhatTheyAreOf(t *testing.T) {
	r := oneWall(t, 300)
	r.receptacle(0, 72)
	found := r.reach()
	if len(found) != 1 {
		t.Fatalf("%+v", found)
	}
	f := found[0]
	if f.About != r.room.Sides[0].ID || f.Room != r.room.ID || f.Limit != rule.LengthOf(in(72)) || f.Measured != rule.LengthOf(in(228)) ||
		f.Section != "NEC 2023 210.52(A)(1)" {
		t.Errorf("%+v", f)
	}
	for _, text := range []string{f.Message.String(), f.Why.String()} {
		if strings.Contains(strings.ToLower(text), "compl") {
			t.Errorf("%q claims what no check can", text)
		}
	}
}
