package wall_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/wall"
	"studbay/plan"
)

// behind stands a bath behind the north wall of a room, so far away.
func backToBack(t *testing.T, gap float64, depth float64) (r *filltest.Room, north, south *plan.Side) {
	r = filltest.OneWall(t, 100)
	r.Room.Use = plan.UseHall
	next := r.Neighbour([2]float64{0, -100}, [2]float64{100, -100}, [2]float64{100, -gap}, [2]float64{0, -gap})
	north, south = r.Room.Sides[0], next.Sides[2]
	for _, s := range []*plan.Side{north, south} {
		s.Finish = []plan.Layer{{Name: "board", Thickness: in(0.5)}}
	}
	north.Studs.Depth = in(depth)
	return r, north, south
}

func TestPartitionDepth(t *testing.T) {
	for _, tt := range []struct {
		name       string
		gap, depth float64
		change     func(north, south *plan.Side)
		want       []string
		source     string
	}{
		{"as stated", 4.5, 3.5, nil, nil, "4-1/2 less twice 1/2 is a 2×4"},
		{"nothing stated", 6.5, 0, nil, nil, "the geometry tells"},
		{"an eighth more", 4.625, 3.5, nil, nil, "common practice: lumber varies by that much"},
		{"a quarter more", 4.75, 3.5, nil, []string{`note: The wall between Bedroom and Next is drawn 3-3/4" deep but entered as 3-1/2"`}, "beyond it"},
		{"a 2×6 drawn", 6.5, 3.5, nil, []string{`note: The wall between Bedroom and Next is drawn 5-1/2" deep but entered as 3-1/2"`}, "6-1/2 less twice 1/2"},
		{"tile on one face", 4.5, 3.5, func(north, _ *plan.Side) {
			north.Finish = append(north.Finish, plan.Layer{Name: "tile", Thickness: in(0.5)})
		}, []string{`note: The wall between Bedroom and Next is drawn 3" deep but entered as 3-1/2"`}, "every layer counts"},
		{"no gap", 0, 3.5, nil, []string{"warn: No framing is left between Bedroom and Next", "warn: No framing is left between Next and Bedroom"}, "rooms drawn face on face"},
		{"only finishes", 1, 0, nil, []string{"warn: No framing is left between Bedroom and Next", "warn: No framing is left between Next and Bedroom"}, "1 less twice 1/2"},
		{"a railing", 1, 3.5, func(north, _ *plan.Side) { north.Kind = plan.SideRailing }, nil, "no wall"},
		{"glass behind", 2, 3.5, func(_, south *plan.Side) { south.Kind = plan.SideGlass }, nil, "no wall"},
		{"farther than a partition", 16.125, 3.5, nil, nil, "two walls with something between"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r, north, south := backToBack(t, tt.gap, tt.depth)
			if tt.change != nil {
				tt.change(north, south)
			}
			found := r.Found(wall.PartitionDepth.ID)
			if got := filltest.Said(found); !slices.Equal(got, tt.want) {
				t.Fatalf("%q, want %q (%s)", got, tt.want, tt.source)
			}
			for _, f := range found {
				if f.Room == r.Room.ID && (f.About != north.ID || len(f.Stretches) != 1 || f.Stretches[0].Length() != in(100)) {
					t.Errorf("%+v", f)
				}
			}
		})
	}
}

func TestPartitionWithinARoom(t *testing.T) {
	r := filltest.RoomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{105, 60}, [2]float64{105, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
	r.Room.Use = plan.UseHall
	r.Room.Sides[1].Studs.Depth = in(3.5)
	want := []string{`note: A wall within Bedroom is drawn 5" deep but entered as 3-1/2"`}
	if got := filltest.Said(r.Found(wall.PartitionDepth.ID)); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
