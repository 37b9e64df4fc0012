package wall_test

import (
	"slices"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/unit"
)

func TestBoxPlace(t *testing.T) {
	plug := func(r *filltest.Room, along, height float64) *plan.Opening {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(along)))
		o.Height, o.Assembly = plan.CentreAt(in(height)), plan.Assembly{Box: "sq4-1.5"} // 4 × 4 in
		return r.Opening(o)
	}
	const one, two = "oaaaaaaag", "oaaaaaaah"
	for _, tt := range []struct {
		name string
		put  func(r *filltest.Room)
		want []string
	}{
		{"clear", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 60, 16) }, nil},
		{"at the corner", func(r *filltest.Room) { plug(r, 2, 16) }, nil},
		{"past the corner", func(r *filltest.Room) { plug(r, 1.5, 16) }, []string{"stop: " + one + " runs past the corner by 1/2\""}},
		{"in a side of glass", func(r *filltest.Room) { plug(r, 20, 16); r.Room.Sides[0].Kind = plan.SideGlass }, []string{"stop: " + one + " is in glass"}},
		{"on the floor", func(r *filltest.Room) { plug(r, 20, 2) }, nil},
		{"in the floor", func(r *filltest.Room) { plug(r, 20, 1) }, []string{"stop: " + one + " runs into the floor by 1\""}},
		{"side by side, touching", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 24, 16) }, nil},
		{"an eighth into each other", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 23.875, 16) }, []string{"stop: " + one + " and " + two + " are in one place"}},
		{"one above the other, touching", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 20, 20) }, nil},
		{"one above the other, overlapping", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 21, 19) }, []string{"stop: " + one + " and " + two + " are in one place"}},
		{"one of them to be removed", func(r *filltest.Room) {
			plug(r, 20, 16)
			o := *plug(r, 21, 16)
			o.Status = plan.StatusRemove
			filltest.Put(&r.Level.Openings, &o)
		}, nil},
		{"three in one place", func(r *filltest.Room) { plug(r, 20, 16); plug(r, 21, 16); plug(r, 22, 16) }, []string{
			"stop: " + one + " and 2 other boxes are in one place", "stop: " + two + " and 2 other boxes are in one place", "stop: oaaaaaaai and 2 other boxes are in one place"}},
		{"a wide box over two that are clear of each other", func(r *filltest.Room) {
			o := plug(r, 20, 16)
			w := *o
			w.Assembly = plan.Assembly{Box: "pn4-60"}
			filltest.Put(&r.Level.Openings, &w)
			plug(r, 18, 16)
			plug(r, 23, 16)
		}, []string{"stop: " + one + " and 2 other boxes are in one place", "stop: " + two + " and " + one + " are in one place", "stop: oaaaaaaai and " + one + " are in one place"}},
		{"in a door", func(r *filltest.Room) { plug(r, 40, 16); r.Door(0, 30, 30) }, []string{"stop: " + one + " is in a door"}},
		{"touching its edge", func(r *filltest.Room) { plug(r, 28, 16); r.Door(0, 30, 30) }, nil},
		{"an eighth past its edge", func(r *filltest.Room) { plug(r, 28.125, 16); r.Door(0, 30, 30) }, []string{"stop: " + one + " is in a door"}},
		{"above it", func(r *filltest.Room) { plug(r, 40, 82); r.Door(0, 30, 30) }, nil},
		{"below a window", func(r *filltest.Room) {
			plug(r, 40, 16)
			b := r.Door(0, 30, 30)
			b.Kind, b.Sill = plan.BreakWindow, in(18)
		}, nil},
		{"in its sill", func(r *filltest.Room) {
			plug(r, 40, 16.125)
			b := r.Door(0, 30, 30)
			b.Kind, b.Sill = plan.BreakWindow, in(18)
		}, []string{"stop: " + one + " is in a window"}},
		{"in a door of the room behind", func(r *filltest.Room) {
			plug(r, 40, 16)
			next := r.Neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			r.Break(next.Sides[2].ID, plan.BreakDoor, 45, 30) // x 25 to 55
		}, []string{"stop: " + one + " is in a door"}},
		{"beside a fireplace of the room behind", func(r *filltest.Room) {
			plug(r, 40, 16)
			next := r.Neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			r.Break(next.Sides[2].ID, plan.BreakFireplace, 45, 30)
		}, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, 100)
			r.Room.Use = plan.UseHall
			tt.put(r)
			if got := filltest.Said(r.Found(wall.BoxPlace.ID)); !slices.Equal(got, tt.want) {
				t.Errorf("%q, want %q", got, tt.want)
			}
		})
	}
}

// One finding a box is what can be read, however many are in one place: common practice.
func TestManyBoxesInOnePlace(t *testing.T) {
	const many = 400
	r := filltest.OneWall(t, 100)
	r.Room.Use = plan.UseHall
	for range many {
		r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(50))))
	}
	found := r.Found(wall.BoxPlace.ID)
	if len(found) != many {
		t.Fatalf("%d findings of %d boxes", len(found), many)
	}
	told := map[plan.ID]bool{}
	for _, f := range found {
		if told[f.About] = true; f.Measured.Unit != rule.OfCount || f.Measured.Value != many-1 {
			t.Fatalf("%s meets %v others", f.About, f.Measured)
		}
	}
	if len(told) != many {
		t.Errorf("%d boxes are told of", len(told))
	}
}
