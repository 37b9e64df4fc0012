package frame

import (
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// TestBareEnds goes round a room in the shape of an L, 8 ft by 8 ft less 4 ft by 4 ft, with
// half an inch of board on every wall but the first, which has an inch: at an inner corner the
// studs of a wall begin behind the board of the next, at the outer one they end before it
// (geometry).
func TestBareEnds(t *testing.T) {
	r := &plan.Room{ID: "raaaaaaaa"}
	for i, p := range [][2]int64{{0, 0}, {8, 0}, {8, 4}, {4, 4}, {4, 8}, {0, 8}} {
		thick := unit.Inch / 2
		if i == 0 {
			thick = unit.Inch
		}
		r.Sides = append(r.Sides, &plan.Side{
			Start: geom.Point{X: unit.Length(p[0]) * unit.Foot, Y: unit.Length(p[1]) * unit.Foot},
			Kind:  plan.SideWall, Finish: []plan.Layer{{Name: "board", Thickness: thick}},
		})
	}
	half := unit.Inch / 2
	for i, want := range [][2]unit.Length{{half, half}, {unit.Inch, half}, {half, -half}, {-half, half}, {half, half}, {half, unit.Inch}} {
		left, right := BareEnds(r, i)
		if left != want[0] || right != want[1] {
			t.Errorf("side %d: bare ends %v and %v farther out, want %v and %v", i, left, right, want[0], want[1])
		}
	}
	r.Sides[1].Kind = plan.SideOpen
	if _, right := BareEnds(r, 0); right != 0 {
		t.Errorf("nothing is put on an open side, and the studs end %v behind it", right)
	}
}
