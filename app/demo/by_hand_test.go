package demo_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/fill"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/index"
)

// TestARoomOfEachDemoByHand derives what a room takes on paper from the table of recipes (whose
// rows have their sources), from what the kinds assume in a box, and from the trial prices.
//
// Wire connectors are one for each conductor that finds another and one for grounds that meet; a
// staple is for each cable at a box in an open wall. A nail-on box takes 9 minutes to two gangs and
// 10 from three on, a block 6, an old-work box 30.
func TestARoomOfEachDemoByHand(t *testing.T) {
	for _, tt := range []struct {
		demo, room string
		lines      []string // quantity, part and cents
		cents      int64
		minutes    int
		why        string
	}{
		{"hillside", "Bedroom 3", []string{
			"5 pn1-20 350", "1 prd4-20 140", "12 staple 48", "19 wire-connector 171", "5 plate-1g 300", "5 duplex receptacle 925", "1 smoke alarm 0",
		}, 1934, 54, "five receptacles with two 12/2: 3 connectors and 2 staples each; an alarm with two 14/3 and its own wires: three and the grounds, 2 staples; six boxes at 9 minutes"},
		{"cottage", "Bath", []string{
			"1 pn1-22.5 80", "1 pn3-44 220", "3 prd4-20 420", "7.8125 block-2x4 37", "2 box-screw 12", "4 block-screw 24", "10 staple 40", "15 wire-connector 135",
			"1 plate-1g 60", "1 plate-3g 190", "1 ground-fault receptacle 1890", "3 one-pole switch 630", "3 luminaire 0", "1 exhaust fan with its own box 0",
		}, 3738, 52, "cables 2 + 1 + 1 to the lights, 2 to the receptacle, 4 to the switches; 3 connectors in each of the five boxes; a bay of 14-1/2 less a box of 6-11/16 is the block, 7.8125 of 96 in at 4.56, with two screws at each end and two through the box; 9 × 4 + 10 + 6 minutes"},
		{"rowhouse", "Dining room", []string{
			"1 ow1-17 210", "3 ow1-20 720", "12 wire-connector 108", "1 patch 350", "4 plate-1g 240", "1 dimmer 2150", "3 duplex receptacle 555",
		}, 4333, 120, "four boxes in closed walls at 30 minutes, without staples; a receptacle that goes leaves a hole to be patched; what stays costs nothing"},
		{"farmhouse", "Hall", nil, 0, 0, "all of it is there and stays: nothing is bought for it"},
	} {
		t.Run(tt.demo, func(t *testing.T) {
			p, err := demo.Find(tt.demo).Build()
			if err != nil {
				t.Fatal(err)
			}
			fig, err := fill.FiguresOf(p)
			if err != nil {
				t.Fatal(err)
			}
			var in []takeoff.Opening
			minutes := 0
			for _, o := range takeoff.NewTaker(index.New(p), fig, price.Trial()).Whole(p).Openings {
				if o.RoomName() == tt.room {
					in = append(in, o)
					minutes += o.Minutes
				}
			}
			var got []string
			sum := int64(0)
			for _, s := range takeoff.Parts(in) {
				got = append(got, fmt.Sprintf("%s %s %d", s.Quantity, s.Part.ID, s.Cost.Cents))
				sum += s.Cost.Cents
			}
			want := slices.Sorted(slices.Values(tt.lines))
			if slices.Sort(got); !slices.Equal(got, want) {
				t.Errorf("%s takes\n%s\nwant\n%s\n(%s)", tt.room, strings.Join(got, "\n"), strings.Join(want, "\n"), tt.why)
			}
			if len(in) == 0 || sum != tt.cents || minutes != tt.minutes {
				t.Errorf("%s: %d openings, %d cents, %d minutes; want %d and %d (%s)", tt.room, len(in), sum, minutes, tt.cents, tt.minutes, tt.why)
			}
		})
	}
}
