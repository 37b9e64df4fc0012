package wire

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func TestSplices(t *testing.T) {
	for _, tt := range []struct {
		name     string
		contents string
		metal    bool
		want     int
		source   string
	}{
		{"nothing", "", false, 0, "empty"},
		{"the end of a run in plastic", "cable 12/2; device 12", false, 0, "one cable: every conductor ends on the device"},
		{"the same in steel", "cable 12/2; device 12", true, 1, "the ground screw's pigtail joins the grounds"},
		{"a receptacle that goes on", "cable 12/2 x2; device 12", false, 3, "hot, neutral and ground"},
		{"one cable to a light", "cable 14/2; fixture-wire 18 x2", false, 3, "hot, neutral and ground of the luminaire"},
		{"two of three wires", "cable 14/3 x2; device 14", false, 4, "each of three, and the grounds"},
		{"three-way", "cable 14/2; cable 14/3; device 14", false, 3, "two find a partner, and the grounds"},
	} {
		c, err := box.ParseContents(tt.contents)
		if err != nil {
			t.Fatal(err)
		}
		if got := Splices(c, tt.metal); got != tt.want {
			t.Errorf("%s: %d, want %d (%s)", tt.name, got, tt.want, tt.source)
		}
	}
}

// TestRunsByHand measures three runs with a tape laid on paper.
func TestRunsByHand(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 144, 120)
	low := r.Opening("duplex", r.On(0, 24))
	next := r.Opening("duplex", r.On(0, 96))
	across := r.Opening("duplex", r.On(1, 60))
	switchBox := r.Opening("switch", r.On(0, 120))
	light := r.Opening("ceiling-light", r.Ceiling(72, 60))
	ix := index.New(h.Made())
	for _, tt := range []struct {
		name     string
		from, to *plan.Opening
		want     unit.Length
		source   string
	}{
		{"along one wall", low, next, unit.FeetInches(9, 6, 0), "72 + 8 up + 8 down + 24 = 112 in = 9.33 ft"},
		{"round a corner", next, across, unit.FeetInches(12, 6, 0), "48 + 60 + 16 + 24 = 148 in = 12.33 ft"},
		{"to the ceiling", switchBox, light, unit.FeetInches(15, 6, 0), "48 + 60 level, 96 − 46 = 50 up, 24 = 182 in = 15.17 ft"},
	} {
		run, ok := Between(ix, tt.from.ID, tt.to.ID)
		if !ok || run.Total != tt.want {
			t.Errorf("%s: %v, want %v (%s)", tt.name, run.Total, tt.want, tt.source)
		}
	}
	if run, ok := RunOf(ix, &plan.Cable{From: low.ID, To: next.ID, Length: 20 * unit.Foot}); !ok || run.Total != 20*unit.Foot || !run.Measured {
		t.Errorf("a measured cable is %v", run)
	}
	if _, ok := Between(ix, low.ID, "o99999999"); ok {
		t.Error("a cable to nowhere has a length")
	}
}

// TestRunsPastDoors: a cable between low boxes is drilled through the studs of the shorter way
// round the room; where a door, a low window or a side without studs stands in it, it goes over
// the ceiling. Ceiling 96, boxes at 16: 80 up and 80 down.
func TestRunsPastDoors(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseLiving, 0, 0, 144, 120) // round: 528
	left := r.Opening("duplex", r.On(0, 24))
	right := r.Opening("duplex", r.On(0, 120))
	corner := r.Opening("duplex", r.On(1, 12))
	far := r.Opening("duplex", r.On(3, 100))
	high := r.Opening("duplex", r.On(0, 130), func(o *plan.Opening) { o.Height = plan.CentreAt(42 * unit.Inch) })
	r.Break(plan.BreakDoor, 0, 72, 32)
	ix := index.New(h.Made())
	for _, tt := range []struct {
		name     string
		from, to *plan.Opening
		drilled  bool
		past     bool
		want     unit.Length
	}{
		{"a door between", left, right, false, true, unit.FeetInches(23, 6, 0)},                   // 96 + 160 + 24 = 280
		{"none between", right, corner, true, false, unit.FeetInches(6, 6, 0)},                    // 24 + 12 + 16 + 24 = 76
		{"the shorter way has none", far, left, true, false, unit.FeetInches(7, 0, 0)},            // 24 + 20 + 16 + 24 = 84
		{"a high box goes over in any case", left, high, false, false, unit.FeetInches(22, 0, 0)}, // 106 + 80 + 54 + 24 = 264
	} {
		run, ok := Between(ix, tt.from.ID, tt.to.ID)
		if !ok || run.Drilled > 0 != tt.drilled || run.PastDoor != tt.past || run.Total != tt.want {
			t.Errorf("%s: %+v, %v, want %s", tt.name, run, ok, tt.want)
		}
	}
}

// TestRunsBetweenRooms: from one room into the next a cable is drilled where studs lead there
// through the wall that both share, and goes over the ceiling elsewhere. Two rooms of 144 by
// 120 in with a wall of 4-1/2 between them, a third beyond; ceilings 96, boxes at 16: 8 up and
// 8 down to the holes, 80 and 80 over the ceiling, a foot at each end.
func TestRunsBetweenRooms(t *testing.T) {
	for _, door := range []bool{false, true} {
		h := ruletest.New(t)
		a := h.Square(plan.UseLiving, 0, 0, 144, 120)
		b := h.Square(plan.UseBedroom, 148.5, 0, 144, 120)
		c := h.Square(plan.UseBedroom, 297, 0, 144, 120)
		if door { // 30 to 62 in from the wall at the top
			a.Break(plan.BreakDoor, 1, 30, 32)
		}
		top, right := a.Opening("duplex", a.On(0, 120)), a.Opening("duplex", a.On(1, 80))
		opposite := a.Opening("duplex", a.On(2, 24))
		beyond := b.Opening("duplex", b.On(0, 24))
		back, low := b.Opening("duplex", b.On(3, 40)), b.Opening("duplex", b.On(3, 20))
		third := c.Opening("duplex", c.On(0, 24))
		ix := index.New(h.Made())
		for _, tt := range []struct {
			name            string
			from, to        *plan.Opening
			drilled, past   bool
			want, withDoor  unit.Length
			drilledWithDoor bool
			pastWithDoor    bool
		}{
			{"round the end of the wall", top, beyond, true, false, 8 * unit.Foot, 8 * unit.Foot, true, false},                                    // 52-1/2 + 16 + 24 = 92-1/2
			{"back to back", right, back, true, false, 4 * unit.Foot, 4 * unit.Foot, true, false},                                                 // 4-1/2 + 16 + 24 = 44-1/2
			{"down the wall", top, low, true, false, unit.FeetInches(14, 6, 0), unit.FeetInches(26, 6, 0), false, true},                           // 28-1/2 + 100 + 16 + 24 = 168-1/2; past the door 128-1/2 + 160 + 24 = 312-1/2
			{"a wall away", top, third, false, false, unit.FeetInches(32, 6, 0), unit.FeetInches(32, 6, 0), false, false},                         // 201 + 160 + 24 = 385
			{"to the wall across, round the room", top, opposite, true, false, unit.FeetInches(17, 6, 0), unit.FeetInches(25, 6, 0), false, true}, // 24 + 120 + 24 + 16 + 24 = 208; over the ceiling 0 + 120 + 160 + 24 = 304
		} {
			drilled, past, want := tt.drilled, tt.past, tt.want
			if door {
				drilled, past, want = tt.drilledWithDoor, tt.pastWithDoor, tt.withDoor
			}
			for _, ends := range [][2]*plan.Opening{{tt.from, tt.to}, {tt.to, tt.from}} {
				run, ok := Between(ix, ends[0].ID, ends[1].ID)
				if !ok || run.Drilled > 0 != drilled || run.PastDoor != past || run.Total != want {
					t.Errorf("%s, with a door %v: %+v, %v, want %s", tt.name, door, run, ok, want)
				}
			}
		}
	}
}

// TestAWayRoundOnlyWhereItIsShorter: a door bars the short way; the long one is drilled where
// that takes less cable than the ceiling does. Round a room of 60 by 48 in: 216.
func TestAWayRoundOnlyWhereItIsShorter(t *testing.T) {
	h := ruletest.New(t)
	r := h.Square(plan.UseStorage, 0, 0, 60, 48)
	left, right := r.Opening("duplex", r.On(0, 6)), r.Opening("duplex", r.On(0, 54))
	r.Break(plan.BreakDoor, 0, 14, 32)
	run, _ := Between(index.New(h.Made()), left.ID, right.ID)
	// 168 + 16 + 24 = 208 round; 48 + 160 + 24 = 232 over
	if run.Drilled != Drilled || run.PastDoor || run.Total != unit.FeetInches(17, 6, 0) {
		t.Errorf("%+v, want 17 ft 6 in, drilled", run)
	}
}
