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
