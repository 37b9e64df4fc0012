package spacing_test

import (
	"testing"

	"studbay/fill/filltest"
	"studbay/plan"
)

// TestWhatRemediesSayTheyAdd: how many receptacles, and how many of them in the floor.
func TestWhatRemediesSayTheyAdd(t *testing.T) {
	glass := func(t *testing.T, length float64) *filltest.Room {
		r := filltest.OneWall(t, length)
		r.Room.Sides[0].Kind = plan.SideGlass
		return r
	}
	for _, tt := range []struct {
		name string
		room *filltest.Room
		want string
	}{
		{"one in a wall", filltest.OneWall(t, 144), "Add a receptacle there"},
		{"two in a wall", filltest.OneWall(t, 145), "Add 2 receptacles there"},
		{"one before glass", glass(t, 144), "Add a floor receptacle there"},
		{"two before glass", glass(t, 288), "Add 2 receptacles, 2 in the floor"},
	} {
		found := reach(tt.room)
		if len(found) != 1 || len(found[0].Remedies) == 0 {
			t.Errorf("%s: %+v", tt.name, found)
			continue
		}
		if got := found[0].Remedies[0].Label.String(); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}
