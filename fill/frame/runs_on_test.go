package frame

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// The corners are drawn by hand: a north wall in two sides, then the other three.
func TestAWallRunsOnWhereItsNextSideLiesInItsLine(t *testing.T) {
	ft := unit.Foot
	room := func(kinds ...plan.SideKind) *plan.Room {
		corners := geom.Polygon{{X: 0, Y: 0}, {X: 6 * ft, Y: 0}, {X: 10 * ft, Y: 0}, {X: 10 * ft, Y: 8 * ft}, {X: 0, Y: 8 * ft}}
		r := plan.NewRoom("room", "Room", "", corners, []plan.ID{"a", "b", "c", "d", "e"})
		for i, k := range kinds {
			r.Sides[i].Kind = k
		}
		return &r
	}
	walls := room(plan.SideWall, plan.SideWall, plan.SideWall, plan.SideWall, plan.SideWall)
	open := room(plan.SideWall, plan.SideOpen, plan.SideWall, plan.SideWall, plan.SideWall)
	for _, tt := range []struct {
		name string
		room *plan.Room
		side plan.ID
		want []bool
	}{
		{"the first of two in one line", walls, "a", []bool{false, true}},
		{"the second of them", walls, "b", []bool{true, false}},
		{"one that turns at both ends", walls, "d", []bool{false, false}},
		{"where what follows in line is open", open, "a", []bool{false, false}},
		{"an open one beside a wall", open, "b", []bool{false, false}},
		{"a side that is gone", walls, "z", []bool{false, false}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			left, right := RunsOn(tt.room, tt.side)
			if got := []bool{left, right}; !slices.Equal(got, tt.want) {
				t.Errorf("RunsOn(%s) = %v, want %v", tt.side, got, tt.want)
			}
		})
	}
}
